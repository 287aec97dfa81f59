// SPDX-License-Identifier: GPL-3.0-or-later
// The bytes of a text file as UTF-8, in pieces, whatever it was written in: byte-order marks are taken off,
// UTF-16 is turned into UTF-8. Other encodings are refused with what they look like.
#pragma once
#include <cstdint>
#include <filesystem>
#include <istream>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/result.hpp"

namespace arc::storage {

enum class TextForm { Utf8, Utf16Little, Utf16Big };

class CsvSource {
  public:
    /// Looks at the first 64 KiB.
    static Result<CsvSource> open(const std::filesystem::path& file);
    /// UTF-8 that is at hand, as if it lay in a file of that name.
    static CsvSource ofText(const std::filesystem::path& name, std::string text);
    /// The same from its beginning.
    [[nodiscard]] Result<CsvSource> again() const;

    /// Appends up to about `limit` bytes; false at the end of the file. Bytes that are no UTF-16 become
    /// U+FFFD, which the reader of the row refuses. Throws std::ios_base::failure when the disk does not
    /// answer.
    bool read(std::string& out, std::size_t limit);

    [[nodiscard]] std::uint64_t size() const { return size_; }
    [[nodiscard]] std::uint64_t done() const { return done_; }
    [[nodiscard]] TextForm form() const { return form_; }
    [[nodiscard]] const std::filesystem::path& file() const { return file_; }

  private:
    CsvSource(std::filesystem::path file, std::unique_ptr<std::istream> stream)
        : file_(std::move(file)), stream_(std::move(stream)) {}
    void appendUtf16(std::string& out, const std::string& raw);

    std::filesystem::path file_;
    std::unique_ptr<std::istream> stream_;
    std::optional<std::string> text_;  ///< of a source that is no file
    std::uint64_t size_ = 0, done_ = 0;
    TextForm form_ = TextForm::Utf8;
    std::string carry_;           ///< an odd byte of UTF-16
    std::uint16_t highHalf_ = 0;  ///< first half of a pair
};

/// Well-formed UTF-8 (RFC 3629).
bool isUtf8(std::string_view text);

}  // namespace arc::storage
