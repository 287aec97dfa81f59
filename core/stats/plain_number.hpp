// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers inside the sentences of core, with a decimal point whatever the system's locale. Shown results are
// made in app and ui/text.
#pragma once
#include <string>

namespace arc::stats {

/// As short as reads back the same: "0.25", "1e+300", "nan".
[[nodiscard]] std::string plainNumber(double value);

/// With so many decimals (0-17): "0.040".
[[nodiscard]] std::string fixedNumber(double value, int places);
/// The same, always with its sign: "+0.040", "-0.040".
[[nodiscard]] std::string signedNumber(double value, int places);

}  // namespace arc::stats
