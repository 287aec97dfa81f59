// SPDX-License-Identifier: GPL-3.0-or-later
// From the false-alarm budget to the limit of a chart.
#pragma once

namespace arc::drift {

/// Limit h of a one-sided CUSUM of standard normal scores with reference value k whose in-control average run
/// length is `arl`. D. Siegmund's corrected diffusion approximation (Sequential Analysis, 1985), within 2 %.
double normalCusumLimit(double arl, double k);

}  // namespace arc::drift
