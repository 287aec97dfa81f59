// SPDX-License-Identifier: GPL-3.0-or-later
// The closeout record of one job as a value: every splice with its attempts, the state of the tools at the
// time, what is out of order, and the verdict. Made by closeout/build, written by storage/export_* and
// ui/print. A value only: it knows neither logbook nor clock.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/care/record.hpp"
#include "core/care/rules.hpp"
#include "core/closeout/exception.hpp"
#include "core/closeout/summary.hpp"
#include "core/kit/life.hpp"
#include "core/kit/tool.hpp"
#include "core/work/completeness.hpp"
#include "core/work/fibre.hpp"
#include "core/work/job.hpp"
#include "core/work/splice.hpp"

namespace arc::closeout {

/// One end of a splice. `number` counts in the cable, from 1; colours follow the cable's own order.
struct FibreEnd {
    std::string name;  ///< as written down; may be empty
    std::optional<int> number;
    std::optional<FibrePlace> place;  ///< tube or ribbon, position and their colours
};

enum class Correction { None, AfterTheFact };

/// One try at a fibre pair.
struct Attempt {
    ArcId arc;
    int channel = 1;
    int number = 1;  ///< as written down
    Instant at;
    Loss loss;  ///< estimated by the splicer
    std::optional<Angle> cleaveLeft, cleaveRight;
    std::uint32_t splicer = 0;  ///< index into Record::equipment
    std::optional<std::uint32_t> cleaver;
    int channels = 1;
    std::string mode;
    std::optional<ArcCount> counter;
    Ambient ambient;
    std::string operatorName;
    std::string note;
    Correction correction = Correction::None;
};

/// A measured loss of the pair. Both directions: the mean counts. One alone is a one-way value.
struct Measurement {
    EntryId id;
    int wavelengthNm = 1550;
    std::optional<Loss> aToB, bToA;
    Instant at;
    std::string instrument;
    std::string note;
    /// Half the sum of both directions, dB; none when one direction is missing. Procedure: IEC 60793-1-40
    /// annex C (from memory).
    [[nodiscard]] std::optional<double> twoWayDb() const;
};

enum class SpliceVerdict { Accepted, OverLimit, OverCeiling };
enum class JudgedBy { Estimate, TwoWayMean };

/// One fibre pair. The last attempt is the splice that lies in the tray: a re-splice cuts the earlier one
/// away, so it can never be "the best of three".
struct Splice {
    FibreEnd a, b;
    std::vector<Attempt> attempts;  ///< at least one, in order of time
    std::vector<Measurement> measured;
    SpliceVerdict verdict = SpliceVerdict::Accepted;
    JudgedBy judgedBy = JudgedBy::Estimate;
    double judgedDb = 0;
    std::vector<ExceptionKind> flags;  ///< kinds of the exceptions that concern this splice
    [[nodiscard]] const Attempt& final() const { return attempts.back(); }
};

/// Label of the section for splices without a closure.
inline constexpr std::string_view noClosure = "No closure";

struct ClosureSection {
    std::optional<ClosureId> closure;  ///< none: splices without a closure
    std::string label;
    std::string cableA, cableB;  ///< labels; may be empty
    std::string colourOrderA = "TIA-598", colourOrderB = "TIA-598";
    std::optional<Completeness> completeness;  ///< none: no plan
    Averages averages;
    std::vector<Splice> splices;  ///< by fibre number where known, else by time
    /// Measured losses of fibres that have no splice here.
    std::vector<std::pair<std::string, Measurement>> loose;
};

/// What was done to a tool, as far as it matters to this job.
struct CareLine {
    ActionKey action;
    Instant at;
    std::string by;
    std::string detail;  ///< results and notes in words
};

/// AtLeast: the care is older than the logbook, and the splicer's own counter is not known.
struct ArcsSince {
    std::uint64_t arcs = 0;
    kit::Certainty certainty = kit::Certainty::Exact;
    bool operator==(const ArcsSince&) const = default;
};

/// A tool and its care state at the time of the job.
struct Equipment {
    Tool tool;
    std::uint64_t splicesHere = 0;  ///< attempts of this job it took part in
    std::optional<Instant> firstUse, lastUse;
    std::optional<ArcCount> lastCounter;       ///< the splicer's own, at its last use here
    std::vector<CareLine> before;              ///< last of each action before its first use here
    std::vector<CareLine> during;              ///< between first and last use here
    std::optional<ArcsSince> sinceElectrodes;  ///< at its last use here; splicers only
    std::optional<ArcsSince> sinceGrooveClean;
    std::optional<ArcsSince> sinceCalibration;
    std::vector<care::OwedStretch> owed;  ///< overlapping its use here
};

/// A photo or note of the job, a file beside the record.
struct AttachedFile {
    std::string file;  ///< its name beside the record
    std::string name;  ///< as it was attached
    std::string mediaType;
    std::string where;  ///< "closure HR-17", "HR-17, splice of 2031-03-03T08:00:00+01:00 on S-01"
    std::uint64_t bytes = 0;
    std::string sha256;  ///< lower-case hex
};

/// Sums of Completeness over closures.
struct PlanTotals {
    int planned = 0;
    int spliced = 0;
    int unplanned = 0;
};

/// Where an exception of what is on no span is shown.
inline constexpr std::string_view noSpan = "On no span";

enum class SpanKind {
    WholeJob,  ///< the job has no spans and counts as one
    Named,
    Rest,  ///< closures and splices that are on no span, of a job that has some
};

/// What is accepted together: the average of the contract is over its splices, and it has a link budget.
struct SpanSection {
    SpanKind kind = SpanKind::WholeJob;
    std::string label;            ///< of a named span
    std::string from, to, cable;  ///< labels; of a named span
    std::optional<double> lengthKm;
    std::vector<std::size_t> sections;  ///< into Record::closures
    std::size_t splices = 0;
    std::optional<double> meanDb;     ///< of the losses that count by the rule
    std::vector<LinkBudget> budgets;  ///< one per wavelength; empty when a length is not known
    std::string budgetNote;           ///< why there is no budget, or what it assumes
};

/// Above the average of the contract, by more than its own rounding.
inline bool isOverAverage(const SpanSection& span, const AcceptanceRule& rule) {
    return span.meanDb && *span.meanDb > decibels(rule.average) + 1e-9;
}

enum class RecordState { Draft, Final };
/// Open: exceptions wait for a disposition. NotAccepted: over the ceiling, or somebody rejected an exception.
enum class RecordVerdict { Accepted, AcceptedWithExceptions, Open, NotAccepted };

struct Record {
    Job job;
    RecordState state = RecordState::Draft;
    std::optional<int> number;      ///< of a final record; counts up per job
    std::optional<int> supersedes;  ///< number of the record this one replaces
    std::string issuedBy;           ///< of a final record
    Instant madeAt;
    std::string journalHead;  ///< lower-case hex
    RecordVerdict verdict = RecordVerdict::Open;
    std::optional<Instant> firstSplice, lastSplice;
    Averages averages;
    Histogram histogram;
    std::optional<PlanTotals> plan;  ///< over the closures that have a plan; none: no plan
    std::size_t voided = 0;          ///< readings voided by somebody; left out above
    std::vector<ClosureSection> closures;
    std::vector<Equipment> equipment;
    std::vector<Exception> exceptions;
    std::vector<SpanSection> spans;         ///< at least one
    std::vector<AttachedFile> attachments;  ///< known once their files are written
};

std::string_view word(RecordState state);      ///< "draft", "final"
std::string_view word(RecordVerdict verdict);  ///< "accepted", "accepted_with_exceptions", …
std::string_view title(RecordVerdict verdict);
std::string_view word(SpliceVerdict verdict);  ///< "accepted", "over_limit", "over_ceiling"
std::string_view title(SpliceVerdict verdict);
std::string_view word(JudgedBy basis);

/// "7 red", "13 blue, unit 2", the name alone when it is no number, "" when nothing is known.
std::string words(const FibreEnd& end);

/// Exceptions nobody has decided on.
std::size_t openExceptions(const Record& record);
std::size_t spliceCount(const Record& record);

}  // namespace arc::closeout
