// SPDX-License-Identifier: GPL-3.0-or-later
// How often the cause can be named at best, and how near the begin be told: arc_best_cause [RUNS] [NAME
// PART]. At the very moment our cause is read (30 arcs after our signal, from a log that ends there) a judge
// names one as well, who is told the exact law of every reading under every fault of the benches, their
// sizes, that one of them has come (Bayes, causes equally likely), and what no one could know: how wide each
// set-up scatters and what each lot of fibre adds. Like ours the judge counts old electrodes as e times
// likelier, and knows that fibre changes with the job and that half of all calibrations go off with a change
// of temperature. Of the begin the judge is told the true fault as well. Who knows less names the cause less
// often, taken over all faults together.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <memory>
#include <string>

#include "tests/bench/told_laws.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

constexpr std::uint64_t lookOn = 30;
constexpr double budget = 1000;
constexpr std::size_t lookBack = 640;  ///< arcs that a begin may lie back
constexpr std::uint32_t oldElectrodes = 3000;

double logMean(const std::vector<double>& logs) {
    if (logs.empty()) return -1e9;
    const double top = *std::max_element(logs.begin(), logs.end());
    double sum = 0;
    for (const double x : logs) sum += std::exp(x - top);
    return top + std::log(sum / static_cast<double>(logs.size()));
}

/// Set-ups and lots in classes.
constexpr std::array gainPlaces{-2.0, -1.0, 0.0, 1.0, 2.0};          ///< standard deviations of its log
constexpr std::array lotPlaces{0.0, 0.0008, 0.0016, 0.0026, 0.004};  ///< dB

template <std::size_t n>
std::size_t nearest(const std::array<double, n>& places, double value) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < n; ++i)
        if (std::abs(places[i] - value) < std::abs(places[best] - value)) best = i;
    return best;
}

/// The arcs of a log that ends, as the judge sees them.
struct Evidence {
    const SplicerHistory* history = nullptr;
    std::vector<std::vector<Seen>> arcs;
    std::vector<std::size_t> made;  ///< class of set-up and lot, by arc
    std::size_t earliest = 1;       ///< arc (from 0) of the first begin that is thought of
};

Evidence evidenceOf(const Log& log, const SplicerHistory& cut, const LogSetting& setting) {
    Evidence evidence{&cut, {}, {}, cut.arcs.size() > lookBack ? cut.arcs.size() - lookBack : 1};
    for (std::size_t i = 0; i < cut.arcs.size(); ++i) {
        evidence.arcs.push_back(seenIn(cut, i));
        evidence.made.push_back(nearest(gainPlaces, std::log(log.setUpGain[i]) / setting.setUpSd) *
                                    lotPlaces.size() +
                                nearest(lotPlaces, log.lotDb[i]));
    }
    return evidence;
}

/// A fault with its laws by class of set-up and lot.
struct Known {
    LogSetting setting;
    std::vector<ToldRatios> told;

    explicit Known(const LogSetting& fault) : setting(fault) {
        for (const double gain : gainPlaces)
            for (const double lot : lotPlaces)
                told.emplace_back(setting, Circumstances{std::exp(setting.setUpSd * gain), lot});
    }
};

/// Log-likelihood ratio of each begin from `earliest` on; `groove` from 0, or all grooves.
std::vector<double> profile(const Evidence& evidence, const Known& fault, std::optional<std::size_t> groove) {
    std::vector<double> sums(evidence.arcs.size() - evidence.earliest, 0.0);
    const int every = fault.told.front().every();
    for (std::size_t i = evidence.earliest; i < evidence.arcs.size(); ++i) {
        const auto& told = fault.told[evidence.made[i]];
        double ratio = 0;
        for (std::size_t begin = i + 1; begin-- > evidence.earliest;) {
            const int age = static_cast<int>(i - begin);
            const bool changes =
                age == 0 || (told.grows() && age % every == 0 && age <= ToldRatios::longestFault);
            if (changes)
                ratio =
                    groove ? told.reading(evidence.arcs[i][*groove], age) : told.arc(evidence.arcs[i], age);
            sums[begin - evidence.earliest] += ratio;
        }
    }
    return sums;
}

std::vector<double> only(const std::vector<double>& sums, const std::vector<std::size_t>& begins,
                         std::size_t earliest) {
    std::vector<double> kept;
    for (const auto begin : begins)
        if (begin >= earliest && begin - earliest < sums.size()) kept.push_back(sums[begin - earliest]);
    return kept;
}

class Judge {
  public:
    explicit Judge(int grooves) : grooves_(grooves) {
        for (const auto& named : knownFaults())
            if (named.setting.grooves == grooves) faults_.emplace_back(named.setting);
    }

    struct Opinion {
        drift::Cause cause = drift::Cause::Unknown;
        std::size_t begin = 0;  ///< arc from 1, of the true fault
    };
    [[nodiscard]] Opinion judge(const Evidence& evidence, const LogSetting& truth) const {
        std::map<drift::Cause, std::vector<double>> weights;
        Opinion opinion;
        for (const auto& fault : faults_) {
            const auto [weight, begin] = weigh(evidence, fault);
            weights[causeOf(fault.setting.fault)].push_back(weight);
            if (fault.setting.fault == truth.fault && fault.setting.stepDb == truth.stepDb &&
                fault.setting.dirty == truth.dirty)
                opinion.begin = begin + 1;
        }
        double best = -1e300;
        for (const auto& [cause, logs] : weights)
            if (const double weight = logMean(logs); weight > best) best = weight, opinion.cause = cause;
        return opinion;
    }

  private:
    struct Weighed {
        double weight = 0;
        std::size_t begin = 0;
    };

    static std::size_t median(const std::vector<double>& sums, std::size_t earliest) {
        const double top = *std::max_element(sums.begin(), sums.end());
        double all = 0, below = 0;
        for (const double x : sums) all += std::exp(x - top);
        for (std::size_t i = 0; i < sums.size(); ++i)
            if ((below += std::exp(sums[i] - top)) >= all / 2) return earliest + i;
        return earliest;
    }

    [[nodiscard]] Weighed weigh(const Evidence& evidence, const Known& fault) const {
        const auto& arcs = evidence.history->arcs;
        switch (fault.setting.fault) {
            case Fault::Groove:
                return weighGrooves(evidence, fault);
            case Fault::Calibration: {
                const auto sums = profile(evidence, fault, std::nullopt);
                std::vector<std::size_t> jumps;
                for (std::size_t i = evidence.earliest; i < evidence.arcs.size(); ++i)
                    if (arcs[i].temperature != arcs[i - 1].temperature) jumps.push_back(i);
                return {logMean({logMean(sums), logMean(only(sums, jumps, evidence.earliest))}),
                        median(sums, evidence.earliest)};
            }
            case Fault::Fibre: {
                const auto sums = profile(evidence, fault, std::nullopt);
                std::vector<std::size_t> starts;
                for (std::size_t i = evidence.earliest; i < evidence.arcs.size(); ++i)
                    if (arcs[i].job != arcs[i - 1].job) starts.push_back(i);
                return {logMean(only(sums, starts, evidence.earliest)), median(sums, evidence.earliest)};
            }
            case Fault::Electrode: {
                const auto sums = profile(evidence, fault, std::nullopt);
                const bool old = arcs[evidence.arcs.size() - 1].counter->value >= oldElectrodes;
                return {logMean(sums) + (old ? 1 : 0), median(sums, evidence.earliest)};
            }
            case Fault::Cleaver:
            case Fault::None:
                break;
        }
        const auto sums = profile(evidence, fault, std::nullopt);
        return {logMean(sums), median(sums, evidence.earliest)};
    }

    [[nodiscard]] Weighed weighGrooves(const Evidence& evidence, const Known& fault) const {
        std::vector<std::vector<double>> own;
        for (int c = 0; c < grooves_; ++c)
            own.push_back(profile(evidence, fault, static_cast<std::size_t>(c)));
        const auto together = fault.setting.dirty.size();
        std::vector<double> logs, truth;
        for (std::size_t first = 0; first + together <= own.size(); ++first) {
            auto sums = own[first];
            for (std::size_t more = 1; more < together; ++more)
                for (std::size_t i = 0; i < sums.size(); ++i) sums[i] += own[first + more][i];
            logs.push_back(logMean(sums));
            if (static_cast<int>(first) + 1 == fault.setting.dirty.front()) truth = sums;
        }
        return {logMean(logs), median(truth, evidence.earliest)};
    }

    int grooves_;
    std::vector<Known> faults_;
};

double median(std::vector<double> values) {
    if (values.empty()) return 0;
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2),
                     values.end());
    return values[values.size() / 2];
}

void compare(const NamedSetting& named, const Judge& judge, int runs) {
    int ours = 0, best = 0, n = 0;
    std::vector<double> ourErrors, bestErrors;
    for (int run = 1; run <= runs; ++run) {
        const auto log = makeLog(named.setting, static_cast<std::uint64_t>(run));
        const auto change = static_cast<std::uint64_t>(log.change);
        const auto signals = signalsOf(log.history, budget);
        const auto* late = firstFrom(signals, change);
        if (late == nullptr) continue;
        const auto cut = upTo(log.history, late->raisedAtArc + lookOn);
        const auto soon = signalsOf(cut, budget);
        const auto* seen = firstFrom(soon, change);
        const auto& signal = seen != nullptr ? *seen : *late;
        const auto evidence = evidenceOf(log, cut, named.setting);
        const auto opinion = judge.judge(evidence, named.setting);
        const auto off = [&](std::uint64_t begin) {
            return std::abs(static_cast<double>(begin) - static_cast<double>(change));
        };
        ++n;
        ours += signal.cause == causeOf(named.setting.fault) ? 1 : 0;
        best += opinion.cause == causeOf(named.setting.fault) ? 1 : 0;
        ourErrors.push_back(off(signal.beganAtArc));
        bestErrors.push_back(off(opinion.begin));
    }
    std::printf("| %s | %.0f %% | %.0f %% | %.1f | %.1f |\n", named.name.c_str(), 100.0 * best / n,
                100.0 * ours / n, median(bestErrors), median(ourErrors));
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
    const int runs = argc > 1 ? std::atoi(argv[1]) : 100;
    const std::string part = argc > 2 ? argv[2] : "";
    std::printf(
        "| fault (%d logs) | cause: best possible | ours | error of begin, arcs: best possible | ours |\n"
        "|---|---|---|---|---|\n",
        runs);
    std::map<int, std::unique_ptr<Judge>> judges;
    for (const auto& named : knownFaults()) {
        if (named.name.find(part) == std::string::npos) continue;
        auto& judge = judges[named.setting.grooves];
        if (!judge) judge = std::make_unique<Judge>(named.setting.grooves);
        compare(named, *judge, runs);
    }
    return 0;
}
