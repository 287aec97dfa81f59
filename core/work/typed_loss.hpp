// SPDX-License-Identifier: GPL-3.0-or-later
// What a person types for a loss, read while it is typed. Digits alone are hundredths of a dB, because that
// is what splicers show: "4" is 0.04, "12" is 0.12. With a comma or a point the number is dB as written.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/result.hpp"
#include "core/units/quantity.hpp"

namespace arc::pad {

/// Above this a value is asked for twice: a splicer shows it rarely, a slip of the finger often.
inline constexpr Loss doubtfulAbove{1'000};
/// Above this no estimate of a splicer is believed.
inline constexpr Loss impossibleAbove{9'990};

enum class TypedKind { Empty, Unfinished, Loss, Doubtful, Impossible };

struct Typed {
    TypedKind kind = TypedKind::Empty;
    std::optional<Loss> loss;  ///< of Loss and Doubtful
    std::string sentence;      ///< of Doubtful and Impossible: what is wrong, what to do
};

Typed readTyped(std::string_view text);

/// Several values in one go, apart by spaces, semicolons or line ends: "3 4 2 5 11". The Problem names the
/// place.
Result<std::vector<Loss>> readTypedList(std::string_view text);

}  // namespace arc::pad
