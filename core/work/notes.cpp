// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/notes.hpp"

#include <algorithm>

namespace arc::note {

std::string joined(std::string words, const std::string& before) {
    if (before.empty()) return words;
    return std::move(words) + " (" + before + ")";
}

bool keeps(std::string_view note) {
    return !note.empty() && std::none_of(std::begin(ours), std::end(ours),
                                         [&](std::string_view words) { return note.starts_with(words); });
}

}  // namespace arc::note
