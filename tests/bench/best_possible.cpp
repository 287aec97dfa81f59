// SPDX-License-Identifier: GPL-3.0-or-later
// The best that is possible beside what the charts do: arc_best_possible [RUNS] [NAME PART]. A
// likelihood-ratio CUSUM is told the exact law of every reading before the fault and at every age after it,
// and that no other fault exists; its limit lets all of it alarm falsely as often as all our charts together.
// For a sudden change and independent readings nothing is faster in the worst case (G. V. Moustakides, Ann.
// Statist. 14, 1986); set-ups make readings hang together, so it is a yardstick here, not a proof.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <numbers>
#include <string>

#include "tests/bench/splice_logs.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

constexpr double budget = 1000;
constexpr int lossCells = 81, angleCells = 61;  ///< 0.01 dB and 0.1 degrees each, the last holds all above
constexpr int draws = 400'000;                  ///< per law
constexpr int longestFault = 1200;              ///< arcs
/// Given its cleave angles a loss is known better: classes of what the angles add to it.
constexpr std::array classEdges{0.001, 0.002, 0.003, 0.005, 0.008};
constexpr std::size_t classes = classEdges.size() + 1;

struct Seen {
    int loss = 0, left = 0, right = 0;
    std::size_t angleClass = 0;
};

Seen seenOf(double lossDb, double left, double right) {
    Seen seen;
    seen.loss = std::min(lossCells - 1, static_cast<int>(std::lround(std::max(0.0, lossDb) * 100)));
    seen.left = std::min(angleCells - 1, static_cast<int>(std::lround(left * 10)));
    seen.right = std::min(angleCells - 1, static_cast<int>(std::lround(right * 10)));
    const double adds = 0.006 * (seen.left * seen.left + seen.right * seen.right) / 100.0;
    while (seen.angleClass < classEdges.size() && adds > classEdges[seen.angleClass]) ++seen.angleClass;
    return seen;
}

using LossLaw = std::array<std::array<double, lossCells>, classes>;

/// Log probability of a loss given its angles, with set-ups and lots as they come.
std::unique_ptr<LossLaw> lossLaw(const LogSetting& setting, int age) {
    auto law = std::make_unique<LossLaw>();
    for (auto& row : *law) row.fill(0.5);
    scenario::Randomness random(1, "laws");
    const auto fault = faultNow(setting, age);
    for (int i = 0; i < draws; ++i) {
        const double gain = std::exp(setting.setUpSd * random.normal());
        const double lot = std::abs(setting.lotDb * random.normal());
        const auto splice = drawSplice(setting, fault, gain, lot, false, random);
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

using AngleLaw = std::array<double, angleCells>;
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

/// Log-likelihood ratios by the age of the fault.
class Told {
  public:
    explicit Told(const LogSetting& setting) {
        growing_ = setting.fault == Fault::Electrode || setting.fault == Fault::Cleaver;
        every_ = setting.fault == Fault::Electrode ? 20 : 1;
        const int ages = !growing_ ? 1 : setting.fault == Fault::Electrode ? longestFault / every_ : 151;
        const auto before = lossLaw(setting, -1);
        const auto anglesBefore = angleLaw(1);
        for (int a = 0; a < ages; ++a) {
            const int age = a * every_ + every_ / 2;
            if (setting.fault == Fault::Cleaver) {
                // The angles tell all: given them, the loss knows nothing of the cleaver.
                auto after = angleLaw(faultNow(setting, a).angleScatter);
                for (std::size_t q = 0; q < after.size(); ++q) after[q] -= anglesBefore[q];
                angles_.push_back(after);
                continue;
            }
            auto after = lossLaw(setting, age);
            for (std::size_t c = 0; c < classes; ++c)
                for (std::size_t q = 0; q < lossCells; ++q) (*after)[c][q] -= (*before)[c][q];
            losses_.push_back(std::move(after));
        }
    }

    /// Largest sum over all begins, per arc; empties itself after an alarm at `limit`.
    std::vector<double> path(const SplicerHistory& history, double limit) const {
        std::vector<double> most;
        std::vector<Begin> begins;
        double step = 0;
        for (std::size_t i = 0; i < history.arcs.size(); ++i) {
            const auto seen = arcOf(history, i);
            double now = 0;
            if (growing_) {
                if (i % static_cast<std::size_t>(every_) == 0) begins.push_back({i, 0});
                for (auto& begin : begins) {
                    begin.sum += ratio(seen, static_cast<int>(i - begin.at));
                    now = std::max(now, begin.sum);
                }
                std::erase_if(begins, [&](const Begin& b) {
                    return i - b.at >= longestFault || (b.sum < now - 15 && i - b.at > 100);
                });
            } else {
                step = std::max(0.0, step + ratio(seen, 0));
                now = step;
            }
            most.push_back(now);
            if (now >= limit) {
                begins.clear();
                step = 0;
            }
        }
        return most;
    }

  private:
    struct Begin {
        std::size_t at = 0;
        double sum = 0;
    };

    static std::vector<Seen> arcOf(const SplicerHistory& history, std::size_t i) {
        std::vector<Seen> seen;
        const auto& arc = history.arcs[i];
        for (std::size_t r = 0; r < arc.readingCount; ++r) {
            const auto& reading = history.readings[arc.firstReading + r];
            seen.push_back(
                seenOf(decibels(reading.loss), degrees(*reading.cleaveLeft), degrees(*reading.cleaveRight)));
        }
        return seen;
    }

    double ratio(const std::vector<Seen>& arc, int age) const {
        double sum = 0;
        if (!angles_.empty()) {
            const auto& law =
                angles_[std::min<std::size_t>(static_cast<std::size_t>(age), angles_.size() - 1)];
            for (const auto& seen : arc)
                sum += law[static_cast<std::size_t>(seen.left)] + law[static_cast<std::size_t>(seen.right)];
            return sum;
        }
        const auto& law =
            *losses_[std::min<std::size_t>(static_cast<std::size_t>(age / every_), losses_.size() - 1)];
        for (const auto& seen : arc) sum += law[seen.angleClass][static_cast<std::size_t>(seen.loss)];
        return sum;
    }

    bool growing_ = false;
    int every_ = 1;
    std::vector<std::unique_ptr<LossLaw>> losses_;
    std::vector<AngleLaw> angles_;
};

/// The limit at which healthy logs alarm once in a budget's arcs, counted to the first alarm of each.
double limitOf(const Told& told, LogSetting setting, int runs) {
    setting.fault = Fault::None;
    std::vector<std::vector<double>> paths;
    for (int run = 1; run <= runs; ++run)
        paths.push_back(told.path(makeLog(setting, 50'000 + static_cast<std::uint64_t>(run)).history, 1e9));
    double low = 0, high = 100;
    for (int round = 0; round < 40; ++round) {
        const double limit = (low + high) / 2;
        double alarms = 0, arcs = 0;
        for (const auto& path : paths) {
            const auto first =
                std::find_if(path.begin(), path.end(), [limit](double sum) { return sum >= limit; });
            alarms += first != path.end() ? 1 : 0;
            arcs += static_cast<double>(first - path.begin()) + (first != path.end() ? 1 : 0);
        }
        (alarms / arcs > 1 / budget ? low : high) = limit;
    }
    return high;
}

struct Delays {
    double sum = 0;
    int seen = 0, missed = 0;
    void add(std::uint64_t raised, int change) {
        sum += static_cast<double>(raised) - change + 1;
        ++seen;
    }
    [[nodiscard]] double mean() const { return seen > 0 ? sum / seen : 0; }
};

void compare(const NamedSetting& named, int runs) {
    const Told told(named.setting);
    const double limit = limitOf(told, named.setting, std::max(runs, 200));
    Delays best, ours;
    for (int run = 1; run <= runs; ++run) {
        const auto log = makeLog(named.setting, static_cast<std::uint64_t>(run));
        const auto path = told.path(log.history, limit);
        const auto first = std::find_if(path.begin() + log.change - 1, path.end(),
                                        [limit](double sum) { return sum >= limit; });
        if (first == path.end())
            ++best.missed;
        else
            best.add(static_cast<std::uint64_t>(first - path.begin()) + 1, log.change);
        const auto signals = signalsOf(log.history, budget);
        const auto late = std::find_if(signals.begin(), signals.end(), [&](const auto& s) {
            return s.raisedAtArc >= static_cast<std::uint64_t>(log.change);
        });
        if (late == signals.end())
            ++ours.missed;
        else
            ours.add(late->raisedAtArc, log.change);
    }
    std::printf("| %s | %.1f (%d missed) | %.1f (%d missed) | %.2f |\n", named.name.c_str(), best.mean(),
                best.missed, ours.mean(), ours.missed, ours.mean() / best.mean());
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
    const int runs = argc > 1 ? std::atoi(argv[1]) : 200;
    const std::string part = argc > 2 ? argv[2] : "";
    std::printf(
        "| fault (%d logs) | best possible, arcs | all our charts, arcs | ratio |\n|---|---|---|---|\n",
        runs);
    for (const auto& named : knownFaults())
        if (named.setting.fault != Fault::Groove && named.name.find(part) != std::string::npos)
            compare(named, runs);
    return 0;
}
