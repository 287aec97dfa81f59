// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers inside the sentence of a Problem. Shown results are made in app and ui/text.
#pragma once
#include <string>

namespace arc::stats {

/// As short as reads back the same: "0.25", "1e+300", "nan".
[[nodiscard]] std::string plainNumber(double value);

}  // namespace arc::stats
