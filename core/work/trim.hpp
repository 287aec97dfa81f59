// SPDX-License-Identifier: GPL-3.0-or-later
// What people type has spaces around it.
#pragma once
#include <string_view>

namespace arc {

inline std::string_view trim(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

}  // namespace arc
