// SPDX-License-Identifier: GPL-3.0-or-later
// The splice log: rows that share time, splicer and arc_count are one arc, wherever they stand in the file.
#include <algorithm>
#include <numeric>

#include "storage/intake_parts.hpp"
#include "storage/plain_arc.hpp"
#include "storage/splice_rows.hpp"

namespace arc::storage {
namespace {

enum Column : std::size_t {
    TimeColumn,
    SplicerColumn,
    LossColumn,  // the ones above are needed
    JobColumn,
    ClosureColumn,
    ModeColumn,
    ChannelsColumn,
    ChannelColumn,
    FibreAColumn,
    FibreBColumn,
    CleaveLeftColumn,
    CleaveRightColumn,
    ArcCountColumn,
    TemperatureColumn,
    HumidityColumn,
    PressureColumn,
    OperatorColumn,
    AttemptColumn,
    CleaverColumn
};
const std::vector<const char*> columnNames{
    "time",      "splicer",       "loss_db",      "job",          "closure",         "mode",
    "channels",  "channel",       "fibre_a",      "fibre_b",      "cleave_left_deg", "cleave_right_deg",
    "arc_count", "temperature_c", "humidity_pct", "pressure_hpa", "operator",        "attempt",
    "cleaver"};
constexpr std::size_t neededColumns = 3;
constexpr std::size_t arcsPerJournalRow = 1'000;
constexpr std::size_t rowsOfOneArc = 10'000;
constexpr const char* unassigned = "unassigned";

/// Field names of core as the file calls them.
std::string columnFor(const std::string& field) {
    static const std::map<std::string, std::string> names{{"loss", "loss_db"},
                                                          {"cleaveLeft", "cleave_left_deg"},
                                                          {"cleaveRight", "cleave_right_deg"},
                                                          {"fibreA", "fibre_a"},
                                                          {"fibreB", "fibre_b"},
                                                          {"counter", "arc_count"},
                                                          {"temperature", "temperature_c"},
                                                          {"humidity", "humidity_pct"},
                                                          {"pressure", "pressure_hpa"},
                                                          {"operatorName", "operator"},
                                                          {"at", "time"}};
    const std::string last = field.substr(field.rfind('.') + 1);
    const auto found = names.find(last);
    return found == names.end() ? last : found->second;
}

/// One row of the file that became a reading; its text is kept until it is written.
struct PendingRow {
    Reading reading;
    std::uint64_t line = 0;
    std::size_t rawAt = 0, rawLength = 0;
};
struct PendingArc {
    SpliceArc arc;
    std::vector<PendingRow> rows;
};

class SpliceTaker {
  public:
    explicit SpliceTaker(IntakeFile& file) : file_(file), places_(file.place(columnNames, neededColumns)) {}

    void run() {
        while (file_.nextRow())
            if (auto fault = takeRow()) file_.setAside(std::move(*fault));
        flush();
        if (backwards_ > 0)
            file_.note(grouped(backwards_) + " rows step back in time (first: line " +
                       std::to_string(firstBackwards_) + "); they were put where their time belongs");
        if (incomplete_ > 0)
            file_.note(grouped(incomplete_) + (incomplete_ == 1 ? " arc has" : " arcs have") +
                       " fewer readings than fibres (first: line " + std::to_string(firstIncomplete_) + ")");
        if (commas_ > 0) file_.note("numbers are read with a decimal comma");
    }

  private:
    [[nodiscard]] std::string_view value(Column column) const { return file_.field(places_[column]); }
    [[nodiscard]] bool given(Column column) const { return !value(column).empty(); }

    std::optional<RowFault> takeRow();
    std::optional<RowFault> readTime(Instant& at);
    std::optional<RowFault> readArc(SpliceArc& arc);
    std::optional<RowFault> readReading(Reading& reading);
    std::optional<RowFault> number(Column column, int places, std::optional<std::int64_t>& into);
    std::optional<RowFault> whole(Column column, std::optional<std::int64_t>& into);
    void watchOrder(const SpliceArc& arc);

    void flush();
    void mergeRepeatedArcs();
    void land(PendingArc& pending, Batch& batch);
    void landOnKnownArc(PendingArc& pending, std::int64_t key, Batch& batch);
    std::optional<RowFault> differs(const SpliceArc& row, const SpliceArc& known) const;
    std::optional<RowFault> differs(const Reading& row, const Reading& known) const;
    void setAside(const PendingRow& row, RowFault fault) {
        file_.setAside(row.line, std::string_view(raw_).substr(row.rawAt, row.rawLength), std::move(fault));
    }

    IntakeFile& file_;
    std::vector<int> places_;
    std::vector<PendingArc> pending_;
    std::string raw_;  ///< the text of the pending rows
    std::string timeText_;
    Instant time_;
    std::unordered_map<std::string, std::int64_t> newest_;
    Entry candidate_ = SpliceArc{};
    std::uint64_t backwards_ = 0, firstBackwards_ = 0, incomplete_ = 0, firstIncomplete_ = 0, commas_ = 0;
};

std::optional<RowFault> SpliceTaker::readTime(Instant& at) {
    const std::string_view text = value(TimeColumn);
    // The rows of an arc share their time.
    if (text != timeText_) {
        if (text.empty()) return RowFault{"time", "the time is missing"};
        const auto parsed = parseInstant(text);
        if (!parsed) return RowFault{"time", parsed.error().what};
        timeText_ = text;
        time_ = *parsed;
    }
    at = time_;
    return std::nullopt;
}

std::optional<RowFault> SpliceTaker::number(Column column, int places, std::optional<std::int64_t>& into) {
    const std::string_view text = value(column);
    into.reset();
    if (text.empty()) return std::nullopt;
    into = fixedPoint(text, places, DecimalMark::Point);
    if (into) return std::nullopt;
    const bool comma = fixedPoint(text, places, DecimalMark::Comma).has_value();
    if (comma && file_.mark == DecimalMark::Comma) {
        ++commas_;
        into = fixedPoint(text, places, DecimalMark::Comma);
        return std::nullopt;
    }
    return RowFault{columnNames[column],
                    "\"" + showable(text, 60) + "\" is not a number" +
                        (comma ? "; in a file with commas between columns the decimal mark is a point" : "")};
}

std::optional<RowFault> SpliceTaker::whole(Column column, std::optional<std::int64_t>& into) {
    const std::string_view text = value(column);
    into.reset();
    if (text.empty()) return std::nullopt;
    into = wholeNumber(text);
    if (into && *into <= UINT32_MAX) return std::nullopt;
    return RowFault{columnNames[column], "\"" + showable(text, 60) + "\" is not a whole number"};
}

std::optional<RowFault> SpliceTaker::readArc(SpliceArc& arc) {
    std::optional<std::int64_t> n;
    if (auto fault = readTime(arc.at)) return fault;
    if (auto fault = whole(ChannelsColumn, n)) return fault;
    arc.channels = static_cast<int>(std::min<std::int64_t>(n.value_or(1), 1'000));
    if (auto fault = whole(ArcCountColumn, n)) return fault;
    arc.counter = n ? std::optional(ArcCount{static_cast<std::uint32_t>(*n)}) : std::nullopt;
    const auto bounded = [](std::int64_t v) {
        return static_cast<std::int32_t>(std::clamp<std::int64_t>(v, -2'000'000'000, 2'000'000'000));
    };
    if (auto fault = number(TemperatureColumn, 3, n)) return fault;
    arc.ambient.temperature = n ? std::optional(Temperature{bounded(*n + 273'150)}) : std::nullopt;
    if (auto fault = number(HumidityColumn, 1, n)) return fault;
    arc.ambient.humidity = n ? std::optional(Humidity{bounded(*n)}) : std::nullopt;
    if (auto fault = number(PressureColumn, 2, n)) return fault;
    arc.ambient.pressure = n ? std::optional(Pressure{bounded(*n)}) : std::nullopt;
    arc.mode = value(ModeColumn);
    arc.operatorName = value(OperatorColumn);
    arc.origin = Origin::Imported;
    return std::nullopt;
}

std::optional<RowFault> SpliceTaker::readReading(Reading& reading) {
    std::optional<std::int64_t> n;
    if (auto fault = whole(ChannelColumn, n)) return fault;
    reading.channel = static_cast<int>(std::min<std::int64_t>(n.value_or(1), 1'000));
    if (auto fault = number(LossColumn, 3, n)) return fault;
    if (!n) return RowFault{"loss_db", "the loss is missing"};
    reading.loss.value =
        static_cast<std::int32_t>(std::clamp<std::int64_t>(*n, -2'000'000'000, 2'000'000'000));
    const auto angle = [](std::optional<std::int64_t> v) -> std::optional<Angle> {
        if (!v) return std::nullopt;
        return Angle{static_cast<std::int32_t>(std::clamp<std::int64_t>(*v, -1'000'000, 1'000'000))};
    };
    if (auto fault = number(CleaveLeftColumn, 2, n)) return fault;
    reading.cleaveLeft = angle(n);
    if (auto fault = number(CleaveRightColumn, 2, n)) return fault;
    reading.cleaveRight = angle(n);
    if (auto fault = whole(AttemptColumn, n)) return fault;
    reading.attempt = static_cast<int>(std::min<std::int64_t>(n.value_or(1), 1'000));
    reading.fibreA = value(FibreAColumn);
    reading.fibreB = value(FibreBColumn);
    return std::nullopt;
}

std::optional<RowFault> SpliceTaker::takeRow() {
    auto& row = std::get<SpliceArc>(candidate_);
    row.readings.resize(1);
    row.readings.front() = Reading{};
    row.cleaver.reset();
    row.job.reset();
    row.closure.reset();
    if (auto fault = readArc(row)) return fault;
    if (auto fault = readReading(row.readings.front())) return fault;
    if (!given(SplicerColumn)) return RowFault{"splicer", "the splicer is missing"};
    const Reading& reading = row.readings.front();
    if (reading.channel > row.channels)
        return RowFault{"channel", "channel " + std::to_string(reading.channel) + " is beyond the " +
                                       std::to_string(row.channels) + " fibres of this arc"};
    // Ranges before labels: a row with a wild number must not make a tool.
    static const ToolId notKnownYet{namedUuid("not known yet")};
    row.splicer = notKnownYet;
    row.id = ArcId{row.splicer.uuid};
    if (!plainlyFine(row))
        if (auto valid = validate(candidate_); !valid)
            return RowFault{columnFor(valid.error().where), valid.error().what};
    const auto splicer = file_.kit.splicer(std::string(value(SplicerColumn)), row.channels);
    if (!splicer) return splicer.error();
    row.splicer = *splicer;
    row.id = importedArcId(row.splicer, row.at, row.counter);
    if (given(CleaverColumn)) {
        const auto cleaver = file_.kit.cleaver(std::string(value(CleaverColumn)));
        if (!cleaver) return cleaver.error();
        row.cleaver = *cleaver;
    }
    if (given(JobColumn) || given(ClosureColumn)) {
        const auto job =
            file_.kit.job(given(JobColumn) ? std::string(value(JobColumn)) : unassigned, row.channels);
        if (!job) return job.error();
        row.job = *job;
        if (given(ClosureColumn)) {
            const auto closure = file_.kit.closure(*job, std::string(value(ClosureColumn)));
            if (!closure) return closure.error();
            row.closure = *closure;
        }
    }
    if (!pending_.empty() && pending_.back().arc.id == row.id) {
        if (auto fault = differs(row, pending_.back().arc)) {
            fault->reason = "the rows of this arc do not agree: " + fault->reason;
            return fault;
        }
    } else {
        if (pending_.size() >= arcsPerJournalRow) flush();
        watchOrder(row);
        pending_.emplace_back();
        std::vector<Reading> readings = std::exchange(row.readings, {});
        pending_.back().arc = row;
        row.readings = std::move(readings);
    }
    pending_.back().rows.push_back(
        {row.readings.front(), file_.record.line, raw_.size(), file_.record.raw.size()});
    raw_ += file_.record.raw;
    // A file that says one splice over and over must not fill the memory.
    if (pending_.back().rows.size() >= rowsOfOneArc) flush();
    return std::nullopt;
}

void SpliceTaker::watchOrder(const SpliceArc& arc) {
    auto& newest = newest_[std::string(value(SplicerColumn))];
    if (arc.at.ms < newest) {
        ++backwards_;
        if (firstBackwards_ == 0) firstBackwards_ = file_.record.line;
    } else {
        newest = arc.at.ms;
    }
}

/// What the row says that the logbook has otherwise. Columns without a value say nothing.
std::optional<RowFault> SpliceTaker::differs(const SpliceArc& row, const SpliceArc& known) const {
    const auto fault = [](const char* column) {
        return RowFault{column, std::string("it is there with another ") + column};
    };
    if (row.channels != known.channels) return fault("channels");
    if (!row.mode.empty() && row.mode != known.mode) return fault("mode");
    if (row.job && row.job != known.job) return fault("job");
    if (row.closure && row.closure != known.closure) return fault("closure");
    if (row.cleaver && row.cleaver != known.cleaver) return fault("cleaver");
    if (!row.operatorName.empty() && row.operatorName != known.operatorName) return fault("operator");
    if (row.ambient.temperature && row.ambient.temperature != known.ambient.temperature)
        return fault("temperature_c");
    if (row.ambient.humidity && row.ambient.humidity != known.ambient.humidity) return fault("humidity_pct");
    if (row.ambient.pressure && row.ambient.pressure != known.ambient.pressure) return fault("pressure_hpa");
    return std::nullopt;
}

std::optional<RowFault> SpliceTaker::differs(const Reading& row, const Reading& known) const {
    const auto fault = [](const char* column) {
        return RowFault{column, std::string("this splice is there with another ") + column};
    };
    if (row.loss != known.loss) return fault("loss_db");
    if (row.cleaveLeft && row.cleaveLeft != known.cleaveLeft) return fault("cleave_left_deg");
    if (row.cleaveRight && row.cleaveRight != known.cleaveRight) return fault("cleave_right_deg");
    if (!row.fibreA.empty() && row.fibreA != known.fibreA) return fault("fibre_a");
    if (!row.fibreB.empty() && row.fibreB != known.fibreB) return fault("fibre_b");
    if (places_[AttemptColumn] >= 0 && row.attempt != known.attempt) return fault("attempt");
    return std::nullopt;
}

/// Rows of one arc may stand apart in the file.
void SpliceTaker::mergeRepeatedArcs() {
    const auto byId = [](const PendingArc& a, const PendingArc& b) { return a.arc.id < b.arc.id; };
    if (!std::is_sorted(pending_.begin(), pending_.end(), byId))
        std::stable_sort(pending_.begin(), pending_.end(), byId);
    for (std::size_t i = 1; i < pending_.size(); ++i) {
        // Walk back to the first of the run that has this id.
        std::size_t first = i;
        while (first > 0 && pending_[first - 1].arc.id == pending_[i].arc.id) --first;
        if (first == i) continue;
        for (auto& row : pending_[i].rows) {
            if (auto fault = differs(pending_[i].arc, pending_[first].arc)) {
                fault->reason = "the rows of this arc do not agree: " + fault->reason;
                setAside(row, std::move(*fault));
            } else {
                pending_[first].rows.push_back(std::move(row));
            }
        }
        pending_[i].rows.clear();
    }
}

void SpliceTaker::flush() {
    mergeRepeatedArcs();
    Batch batch;
    batch.novelty = Novelty::AllArcsNew;
    for (auto& pending : pending_)
        if (!pending.rows.empty()) land(pending, batch);
    const auto arcs = batch.arcs.size();
    const auto readings = batch.readings.size();
    file_.count.added += readings;
    file_.write(batch, "arcs",
                "Imported " + grouped(readings) +
                    (readings == 1 ? " fibre splice of " : " fibre splices of ") + grouped(arcs) +
                    (arcs == 1 ? " arc from " : " arcs from ") + file_.name());
    pending_.clear();
    raw_.clear();
}

void SpliceTaker::land(PendingArc& pending, Batch& batch) {
    if (const auto key = file_.ledger.findIdentity(pending.arc.id.uuid)) {
        landOnKnownArc(pending, *key, batch);
        return;
    }
    // A file may say the same twice; it must not say two things.
    std::size_t landed = 0;
    for (auto& row : pending.rows) {
        const auto same =
            std::find_if(pending.rows.begin(), pending.rows.begin() + static_cast<std::ptrdiff_t>(landed),
                         [&row](const PendingRow& r) { return r.reading.channel == row.reading.channel; });
        if (same != pending.rows.begin() + static_cast<std::ptrdiff_t>(landed)) {
            if (auto fault = differs(row.reading, same->reading)) {
                setAside(row, {fault->column,
                               "another row of the file has the same splice with another " + fault->column});
            } else {
                ++file_.count.known;
            }
            continue;
        }
        batch.readings.push_back({pending.arc.id.uuid, row.reading, {}});
        if (&pending.rows[landed] != &row) pending.rows[landed] = row;
        ++landed;
    }
    if (landed < static_cast<std::size_t>(pending.arc.channels)) {
        ++incomplete_;
        if (firstIncomplete_ == 0) firstIncomplete_ = pending.rows.front().line;
    }
    batch.arcs.push_back({std::move(pending.arc), {}});
}

/// Compared with every version: a file that was corrected in the logbook afterwards is known, not new.
void SpliceTaker::landOnKnownArc(PendingArc& pending, std::int64_t key, Batch& batch) {
    std::optional<RowFault> fault;
    {
        static const std::string sql =
            "SELECT " + arcColumns() + " FROM arc a" + arcJoins() + "WHERE a.key = ?";
        Query q = file_.connection.query(sql);
        q.with(key);
        bool any = false;
        bool fits = false;
        while (!fits && q.step()) {
            any = true;
            fault = differs(pending.arc, arcFrom(q));
            fits = !fault;
        }
        if (!any) {
            batch.novelty = Novelty::Unknown;
            batch.arcs.push_back({pending.arc, {}});
            fault.reset();
        } else if (fault) {
            fault->reason = "the logbook has this arc: " + fault->reason;
        }
    }
    std::vector<Reading> known;
    {
        static const std::string sql = "SELECT " + readingColumns() + " FROM reading r WHERE r.arc = ?";
        Query q = file_.connection.query(sql);
        q.with(key);
        while (q.step()) known.push_back(readingFrom(q, 0));
    }
    for (const auto& row : pending.rows) {
        if (fault) {
            setAside(row, *fault);
            continue;
        }
        std::optional<RowFault> difference;
        bool met = false;
        bool fits = false;
        for (const Reading& version : known) {
            if (version.channel != row.reading.channel) continue;
            met = true;
            difference = differs(row.reading, version);
            fits = !difference;
            if (fits) break;
        }
        if (fits) {
            ++file_.count.known;
        } else if (met) {
            setAside(row, {difference->column, "the logbook has this splice with another " +
                                                   difference->column + "; correct it there"});
        } else {
            batch.readings.push_back({pending.arc.id.uuid, row.reading, {}});
            known.push_back(row.reading);
        }
    }
}

}  // namespace

void takeSplices(IntakeFile& file) {
    SpliceTaker(file).run();
}

}  // namespace arc::storage
