// SPDX-License-Identifier: GPL-3.0-or-later
// The one Boost.Math policy of the house. Include it in .cpp files only: the Boost headers behind it cost
// seconds.
#pragma once
#include <boost/math/policies/policy.hpp>

namespace arc::stats {

/// Staying in double is faster (a gamma quantile 3.5 x) and, with the packaged 1.74, safer: the promoted path
/// throws for innocent beta and gamma arguments. Errors still throw; callers catch them at the module's edge.
using MathPolicy =
    boost::math::policies::policy<boost::math::policies::promote_double<false>,
                                  boost::math::policies::promote_float<false>,
                                  boost::math::policies::discrete_quantile<boost::math::policies::real>>;

}  // namespace arc::stats
