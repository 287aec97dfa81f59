// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/result.hpp"

#include <utility>

namespace arc {

std::string Problem::sentence() const {
    std::string text = what;
    if (!where.empty()) text += " (" + where + ")";
    text += ".";
    if (next.empty()) return text;
    text += " " + next + ".";
    char& first = text[text.size() - next.size() - 1];
    if (first >= 'a' && first <= 'z') first = static_cast<char>(first - 'a' + 'A');
    return text;
}

tl::unexpected<Problem> fail(ProblemCode code, std::string what, std::string where, std::string next) {
    return tl::unexpected(Problem{code, std::move(what), std::move(where), std::move(next)});
}

}  // namespace arc
