// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a column key, laid over any table: the key up to a line "---", then header and rows. A key is
// refused in a sentence; each row is read as our columns or comes with a reason.
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "storage/column_key.hpp"

namespace {

std::vector<std::string_view> split(std::string_view text, char at) {
    std::vector<std::string_view> parts;
    for (;;) {
        const auto end = text.find(at);
        parts.push_back(text.substr(0, end));
        if (end == std::string_view::npos) return parts;
        text.remove_prefix(end + 1);
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace arc::storage;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto cut = text.find("\n---\n");
    const auto key = readColumnKey(text.substr(0, cut), "fuzz.json");
    if (!key) {
        if (key.error().what.empty()) std::abort();
        return 0;
    }
    if (cut == std::string_view::npos) return 0;
    const auto lines = split(text.substr(cut + 5), '\n');
    std::vector<std::string> header;
    for (const auto name : split(lines[0], ',')) header.emplace_back(name);
    const auto translation = Translation::over(*key, header, "fuzz.csv");
    if (!translation) {
        if (translation.error().what.empty()) std::abort();
        return 0;
    }
    for (std::size_t line = 1; line < lines.size(); ++line) {
        auto fields = split(lines[line], ',');
        if (fields.size() != header.size()) continue;  // the reader of the file sets such a row aside
        const auto rows = translation->rows(fields);
        if (!rows && rows.error().reason.empty()) std::abort();
        if (!rows) continue;
        for (const auto& row : *rows)
            if (row.size() != translation->header().size()) std::abort();
    }
    return 0;
}
