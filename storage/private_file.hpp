// SPDX-License-Identifier: GPL-3.0-or-later
// A file in the folder for temporary files that only its owner can read; gone with the object, and the side
// files of SQLite with it.
#pragma once
#include <filesystem>
#include <utility>

#include "core/result.hpp"

namespace arc::storage {

class PrivateFile {
  public:
    static Result<PrivateFile> make();
    ~PrivateFile();
    PrivateFile(PrivateFile&& other) noexcept;
    PrivateFile& operator=(PrivateFile&&) = delete;
    PrivateFile(const PrivateFile&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    explicit PrivateFile(std::filesystem::path path) : path_(std::move(path)) {}
    std::filesystem::path path_;
};

}  // namespace arc::storage
