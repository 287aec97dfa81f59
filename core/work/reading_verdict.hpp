// SPDX-License-Identifier: GPL-3.0-or-later
// How one reading stands under the rule of its job: what lists show and filters ask for.
#pragma once
#include "core/work/acceptance.hpp"
#include "core/work/splice.hpp"

namespace arc {

enum class ReadingVerdict { Accept, AcceptHigh, Resplice, NoteMissing, Kept, OverCeiling, Voided };

ReadingVerdict verdictOf(const AcceptanceRule& rule, const Reading& reading);

}  // namespace arc
