// SPDX-License-Identifier: GPL-3.0-or-later
// What the parts of the pad share.
#pragma once
#include <string>

#include "core/work/pad.hpp"

namespace arc::pad {

/// Asks for a re-splice.
inline bool tooHigh(Standing standing) {
    return standing == Standing::TooHigh || standing == Standing::OverCeiling;
}

/// "0.04", a third decimal only when there is one.
std::string plainLoss(Loss loss);

}  // namespace arc::pad
