// SPDX-License-Identifier: GPL-3.0-or-later
// One writing program per logbook. The lock is on a file of its own beside the book ("NAME.arcbook.lock"),
// never on the book itself. It goes away with the program, whatever ends it.
#pragma once
#include <filesystem>

#include "core/result.hpp"

namespace arc::storage {

class WriterLock {
  public:
    /// Refused with who holds it when another program writes.
    static Result<WriterLock> take(const std::filesystem::path& book);
    /// True when this very process holds the lock of that book.
    static bool heldByThisProcess(const std::filesystem::path& book);

    WriterLock(WriterLock&& other) noexcept;
    WriterLock& operator=(WriterLock&& other) noexcept;
    WriterLock(const WriterLock&) = delete;
    WriterLock& operator=(const WriterLock&) = delete;
    ~WriterLock();

  private:
    WriterLock(std::filesystem::path file, int descriptor)
        : file_(std::move(file)), descriptor_(descriptor) {}
    std::filesystem::path file_;
    int descriptor_ = -1;
};

}  // namespace arc::storage
