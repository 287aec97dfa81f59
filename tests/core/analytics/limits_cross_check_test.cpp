// SPDX-License-Identifier: GPL-3.0-or-later
// The quick formula behind the charts' limits against the integral equation (normal scores) and the Markov
// chain (discrete scores), whose figures are checked against an outside library in tests/reference.
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

#include "core/analytics/discrete_cusum.hpp"
#include "core/analytics/limits.hpp"
#include "core/analytics/run_length.hpp"
#include "core/stats/gamma.hpp"

namespace arc::drift {
namespace {

TEST(LimitsCrossCheck, NormalScores) {
    for (const double k : {0.25, 0.5, 0.8})
        for (const double arl : {300.0, 1000.0, 5000.0, 20000.0}) {
            const double exact = *limitFor(CusumChart{.k = k, .sides = Sides::Upper}, arl);
            EXPECT_NEAR(cusumLimit(arl, k, {}) / exact, 1, 0.01) << k << ' ' << arl;
        }
}

// Losses of a gamma law shown in steps of 0.01 dB, standardised as they stand: skewed, few values.
TEST(LimitsCrossCheck, RoundedSkewedScores) {
    for (const double shape : {1.0, 2.0, 4.0}) {
        std::vector<double> losses, chances;
        double mean = 0, square = 0;
        for (int step = 0; step < 60; ++step) {
            const double low = step == 0 ? 0 : 0.01 * (step - 0.5), high = 0.01 * (step + 0.5);
            losses.push_back(0.01 * step);
            chances.push_back(stats::gammaCdf(high, shape, 0.03 / shape) -
                              stats::gammaCdf(low, shape, 0.03 / shape));
            mean += losses.back() * chances.back();
            square += losses.back() * losses.back() * chances.back();
        }
        const double sd = std::sqrt(square - mean * mean);
        std::vector<double> scores;
        for (const double loss : losses) scores.push_back(std::min(3.0, (loss - mean) / sd));
        double m = 0, s = 0;
        for (std::size_t i = 0; i < scores.size(); ++i) m += chances[i] * scores[i];
        for (std::size_t i = 0; i < scores.size(); ++i) s += chances[i] * (scores[i] - m) * (scores[i] - m);
        for (double& x : scores) x = (x - m) / std::sqrt(s);
        for (const double k : {0.25, 0.5}) {
            ScoreLaw law;
            law.tail = tailsOf({chances, scores, 0, 1, 1}, k, 0);
            const double exact = *discreteCusumLimit(scores, chances, k, 2000);
            EXPECT_NEAR(cusumLimit(2000, k, law) / exact, 1, 0.01) << shape << ' ' << k;
        }
    }
}

}  // namespace
}  // namespace arc::drift
