// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/attachments.hpp"

#include <algorithm>
#include <array>

namespace arc {
namespace {

constexpr std::size_t longestName = 120;

/// Cuts at the beginning of a UTF-8 character.
std::string_view cut(std::string_view text, std::size_t most) {
    if (text.size() <= most) return text;
    while (most > 0 && (static_cast<unsigned char>(text[most]) & 0xc0) == 0x80) --most;
    return text.substr(0, most);
}

bool isDeviceName(std::string_view stem) {
    std::string upper(stem);
    std::ranges::transform(upper, upper.begin(), [](char c) {
        return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    });
    constexpr std::array names{"CON", "PRN", "AUX", "NUL"};
    if (std::ranges::find(names, upper) != names.end()) return true;
    return upper.size() == 4 && (upper.starts_with("COM") || upper.starts_with("LPT")) && upper[3] >= '0' &&
           upper[3] <= '9';
}

}  // namespace

Result<std::string> photoType(std::string_view fileName, std::string_view bytes) {
    if (bytes.starts_with("\xff\xd8\xff")) return "image/jpeg";
    if (bytes.starts_with(std::string_view("\x89PNG\r\n\x1a\n", 8))) return "image/png";
    return fail(ProblemCode::BadInput, "this is not a JPEG or PNG picture", std::string(fileName),
                "Choose a photo, or write a note");
}

Result<void> fitsAsAttachment(std::string_view fileName, std::uint64_t bytes) {
    if (bytes == 0)
        return fail(ProblemCode::BadInput, "the file is empty", std::string(fileName), "Choose another");
    if (bytes > attachmentLimit)
        return fail(ProblemCode::BadInput,
                    "the file is larger than " + std::to_string(attachmentLimit >> 20) + " MB",
                    std::string(fileName), "Take the photo smaller and add it again");
    return {};
}

std::string harmlessFileName(std::string_view name) {
    if (const auto slash = name.find_last_of("/\\"); slash != std::string_view::npos)
        name.remove_prefix(slash + 1);
    std::string plain;
    for (const char c : name) {
        const bool control = static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
        if (!control) plain += std::string_view("<>:\"|?*").find(c) == std::string_view::npos ? c : '_';
    }
    // A leading dot hides a file, trailing dots and spaces are dropped by some file systems.
    const auto first = plain.find_first_not_of(". ");
    const auto last = plain.find_last_not_of(". ");
    plain = first == std::string::npos ? "attachment" : plain.substr(first, last - first + 1);
    const auto dot = plain.rfind('.');
    std::string stem = plain.substr(0, dot);
    const std::string suffix(dot == std::string::npos ? std::string_view()
                                                      : cut(std::string_view(plain).substr(dot), 12));
    if (isDeviceName(stem)) stem += "_";
    return std::string(cut(stem, longestName - suffix.size())) + suffix;
}

}  // namespace arc
