// SPDX-License-Identifier: GPL-3.0-or-later
// The facade of the charts: histories in, standings and signals out. A cause is "likely", never "is"; every
// signal carries its false-alarm budget, its begin with an interval, and evidence a supervisor can check by
// hand.
#pragma once
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/analytics/choices.hpp"
#include "core/analytics/stream.hpp"

namespace arc::drift {

enum class ChartKind {
    CommonLevel,
    SingleGroove,
    Spread,
    CleaveAngle,
    ResplicesRate,
    LoneSplice,
    Difference
};
enum class Cause { Groove, Electrode, Calibration, Cleaver, Fibre, Unknown };
enum class SignalState { Open, Answered, Recovered, Dismissed };
/// Learning: fewer than 60 baseline arcs, charts do not signal alone yet.
enum class Standing { Learning, Steady, Watch, Drifting, Recovered };
enum class CareVerdict { Recovered, Better, NoChange, Worse, TooEarly };

/// Lower-case words as files and the command line use them: "common_level", "groove", "open", "drifting", …
std::string_view word(ChartKind kind);
std::string_view word(Cause cause);
std::string_view word(SignalState state);
std::string_view word(Standing standing);
std::string_view word(CareVerdict verdict);

struct CauseWeight {
    Cause cause = Cause::Unknown;
    double weight = 0;                  ///< 0-1; all causes of a signal add up to 1
    std::vector<std::string> evidence;  ///< lines to check by hand
};

/// Arc numbers count all arcs of the splicer in the book, from 1.
struct Signal {
    std::string key;  ///< stable name: stratum, chart, channel and instant
    std::string stratum;
    ChartKind chart = ChartKind::CommonLevel;
    std::optional<int> channel;
    std::vector<int> channels;  ///< every groove that stands out; empty when all rise together
    std::uint64_t raisedAtArc = 0;
    Instant raisedAt;
    std::uint64_t beganAtArc = 0, beganLow = 0, beganHigh = 0;
    Instant beganAt;
    double sizeDb = 0;  ///< rise since the begin, dB
    Cause cause = Cause::Unknown;
    std::vector<CauseWeight> causes;  ///< by weight, highest first
    SignalState state = SignalState::Open;
    ActionKey action;          ///< the care to do first
    ToolId actionTool;         ///< the splicer, or its cleaver
    std::string headline;      ///< "Groove 5 is dirty, likely"
    std::string advice;        ///< one sentence: what to do and why this first
    std::string answerReason;  ///< of a dismissal
};

/// Did a care action help: the next arcs against the ones before.
struct CareEffect {
    CareId care;
    ActionKey action;
    Instant at;
    std::uint64_t atArc = 0;  ///< first arc after it
    CareVerdict verdict = CareVerdict::TooEarly;
    double shiftDb = 0, low = 0, high = 0;  ///< change of the loss with its 95 % interval; negative is better
    int before = 0, after = 0;              ///< arcs compared
    std::string signalKey;                  ///< of the signal it was to cure; empty when there was none
};

/// A statistic per arc for drawing. x is the splicer's arc number.
struct Trace {
    ChartKind chart = ChartKind::CommonLevel;
    std::optional<int> channel;
    std::string title;
    std::vector<std::uint64_t> arc;
    std::vector<float> value;
    std::optional<double> limit;
};

/// Where one groove stands now against its baseline.
struct GrooveNow {
    int channel = 1;
    double baselineDb = 0;
    double recentDb = 0;  ///< mean of the last readings
    int recent = 0;       ///< how many
    double aloneDb = 0;   ///< what it does apart from the other grooves
};

/// Electrode life ahead, with the plain rule beside it.
struct ElectrodeForecast {
    std::optional<std::uint32_t> arcsSince;                     ///< since they were new
    std::optional<double> arcsLeft, arcsLeftLow, arcsLeftHigh;  ///< 80 % interval; empty while too early
    double plainRuleLeft = 0;                                   ///< about 5,000 arcs (common practice)
};

struct StratumReport {
    std::string stratum;
    std::string mode;
    int channels = 1;
    std::uint64_t arcs = 0;
    Standing standing = Standing::Learning;
    std::uint64_t baselineFrom = 0, baselineTo = 0;  ///< arc numbers
    double baselineMeanDb = 0, recentMeanDb = 0;
    std::vector<Signal> signals;  ///< oldest first
    std::vector<CareEffect> effects;
    std::vector<GrooveNow> grooves;
    std::vector<Trace> traces;  ///< only with Detail::WithTraces
};

struct SplicerReport {
    ToolId splicer;
    std::string label;
    Standing standing = Standing::Learning;  ///< the worst of its strata in use
    std::vector<StratumReport> strata;
    ElectrodeForecast electrodes;
};

enum class Detail { VerdictsOnly, WithTraces };

struct Settings {
    double budgetArcs = 1000;  ///< one false signal per this many arcs, all charts together; 100-1,000,000
    std::vector<BaselineChoice> baselines;
    std::vector<SignalAnswer> answers;
};

/// All splicers that worked together, so that a fault in the fibre can be told from one in a machine.
/// Pure: the same histories give the same report. Cost O(readings).
std::vector<SplicerReport> analyse(std::span<const SplicerHistory> crew, const Settings& settings,
                                   Detail detail);

}  // namespace arc::drift
