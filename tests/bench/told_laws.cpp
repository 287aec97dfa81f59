// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/told_laws.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace arc::bench {

namespace {

/// Of a law that holds however an arc was made, and of each of the many by set-up and lot.
constexpr int manyDraws = 400'000, draws = 60'000;
constexpr int grooveGrows = 40;                                      ///< arcs
constexpr int cleaverGrows = 150;                                    ///< arcs
constexpr std::array classEdges{0.001, 0.002, 0.003, 0.005, 0.008};  ///< dB
static_assert(classEdges.size() + 1 == angleClasses);

std::unique_ptr<LossLaw> lossLaw(const LogSetting& setting, const Circumstances& made, int age) {
    auto law = std::make_unique<LossLaw>();
    for (auto& row : *law) row.fill(0.5);
    scenario::Randomness random(1, "laws");
    const auto fault = faultNow(setting, age);
    const int count = made.setUpGain ? draws : manyDraws;
    for (int i = 0; i < count; ++i) {
        const double gain = made.setUpGain.value_or(std::exp(setting.setUpSd * random.normal()));
        const double lot = made.lotDb.value_or(std::abs(setting.lotDb * random.normal()));
        const auto splice = drawSplice(setting, fault, gain, lot, setting.fault == Fault::Groove, random);
        const auto seen = seenOf(splice.lossDb, splice.left, splice.right);
        ++(*law)[seen.angleClass][static_cast<std::size_t>(seen.loss)];
    }
    for (auto& row : *law) {
        double sum = 0;
        for (const double n : row) sum += n;
        for (double& n : row) n = std::log(n / sum);
    }
    return law;
}

AngleLaw angleLaw(double scatter) {
    AngleLaw law{};
    double below = 0;
    for (int q = 0; q < angleCells; ++q) {
        const double upTo =
            q + 1 == angleCells ? 1 : std::erf((q + 0.5) / 10 / (0.45 * scatter) / std::numbers::sqrt2);
        law[static_cast<std::size_t>(q)] = std::log(std::max(upTo - below, 1e-12));
        below = upTo;
    }
    return law;
}

/// Arcs after which a fault no longer changes, and arcs of age to one law.
struct Ages {
    int until = 1, every = 1;
};
Ages agesOf(Fault fault) {
    switch (fault) {
        case Fault::Groove:
            return {grooveGrows + 1, 4};
        case Fault::Cleaver:
            return {cleaverGrows + 1, 1};
        case Fault::Electrode:
            return {ToldRatios::longestFault, 40};
        case Fault::None:
        case Fault::Calibration:
        case Fault::Fibre:
            break;
    }
    return {};
}

template <class Laws>
const auto& atAge(const Laws& laws, int age, int every) {
    return laws[std::min(static_cast<std::size_t>(age / every), laws.size() - 1)];
}

}  // namespace

Seen seenOf(double lossDb, double left, double right) {
    Seen seen;
    seen.loss = std::min(lossCells - 1, static_cast<int>(std::lround(std::max(0.0, lossDb) * 100)));
    seen.left = std::min(angleCells - 1, static_cast<int>(std::lround(left * 10)));
    seen.right = std::min(angleCells - 1, static_cast<int>(std::lround(right * 10)));
    const double adds = 0.006 * (seen.left * seen.left + seen.right * seen.right) / 100.0;
    while (seen.angleClass < classEdges.size() && adds > classEdges[seen.angleClass]) ++seen.angleClass;
    return seen;
}

std::vector<Seen> seenIn(const SplicerHistory& history, std::size_t arc) {
    std::vector<Seen> seen;
    const auto& made = history.arcs[arc];
    for (std::size_t r = 0; r < made.readingCount; ++r) {
        const auto& reading = history.readings[made.firstReading + r];
        seen.push_back(
            seenOf(decibels(reading.loss), degrees(*reading.cleaveLeft), degrees(*reading.cleaveRight)));
    }
    return seen;
}

ToldRatios::ToldRatios(const LogSetting& setting, const Circumstances& made) {
    const auto ages = agesOf(setting.fault);
    grows_ = ages.until > 1;
    every_ = ages.every;
    if (setting.fault == Fault::Cleaver) {
        const auto before = angleLaw(1);
        for (int age = 0; age < ages.until; ++age) {
            auto after = angleLaw(faultNow(setting, age).angleScatter);
            for (std::size_t q = 0; q < after.size(); ++q) after[q] -= before[q];
            angles_.push_back(after);
        }
        return;
    }
    auto healthy = setting;
    healthy.fault = Fault::None;
    const auto before = lossLaw(healthy, made, -1);
    for (int age = 0; age < ages.until; age += every_) {
        auto after = lossLaw(setting, made, age + every_ / 2);
        for (std::size_t c = 0; c < angleClasses; ++c)
            for (std::size_t q = 0; q < lossCells; ++q) (*after)[c][q] -= (*before)[c][q];
        losses_.push_back(std::move(after));
    }
}

double ToldRatios::reading(const Seen& seen, int age) const {
    if (!angles_.empty()) {
        const auto& law = atAge(angles_, age, every_);
        return law[static_cast<std::size_t>(seen.left)] + law[static_cast<std::size_t>(seen.right)];
    }
    return (*atAge(losses_, age, every_))[seen.angleClass][static_cast<std::size_t>(seen.loss)];
}

double ToldRatios::arc(const std::vector<Seen>& readings, int age) const {
    double sum = 0;
    for (const auto& seen : readings) sum += reading(seen, age);
    return sum;
}

}  // namespace arc::bench
