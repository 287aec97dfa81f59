// SPDX-License-Identifier: GPL-3.0-or-later
// The port: what core and the windows need from a store. Implemented by storage/sqlite_logbook.
// One Logbook object belongs to one thread; open another (read-only) for a worker.
#pragma once
#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/analytics/stream.hpp"
#include "core/entry.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"
#include "core/work/reading_verdict.hpp"

namespace arc {

/// Who writes, and from where.
struct Context {
    std::string who;               ///< crew label; "" = not given
    std::string source;            ///< "window", "arcw care record", "import monday.csv"
    std::optional<Uuid> retryKey;  ///< the same key twice is written once (a commit may be on disk though its
                                   ///< answer was lost)
};

/// Given only after the commit is on disk.
struct Receipt {
    Instant savedAt;
    std::uint64_t firstJournalRow = 0;
    std::uint64_t lastJournalRow = 0;
};

/// One line of the history of a record or of the book.
struct JournalLine {
    std::uint64_t row = 0;
    Instant at;
    std::string device;
    std::string who;
    std::string source;
    std::string kind;
    std::string text;
    std::string hashHex;
};

/// A splice row for lists, searches and closeout: one reading with its arc.
struct SpliceRow {
    SpliceArc arc;  ///< readings left empty
    Reading reading;
    int versions = 1;       ///< different losses or fibre names it has had; > 1: corrected after the fact
    std::uint64_t row = 0;  ///< for paging
};

/// Empty members do not filter.
struct SpliceFilter {
    std::optional<JobId> job;
    std::optional<ClosureId> closure;
    std::optional<ToolId> splicer;
    std::optional<std::int64_t> fromMs, toMs;  ///< [from, to)
    std::optional<Loss> lossAbove;
    std::string text;  ///< in fibre names, notes, operator
    std::optional<ToolId> cleaver;
    std::vector<ReadingVerdict> verdicts;  ///< any of these, by the rule of the job; no job: the first sample
};

enum class PageOrder { OldestFirst, NewestFirst };
struct PageKey {
    std::int64_t atMs = 0;
    std::uint64_t row = 0;
};

struct Totals {
    std::uint64_t arcs = 0, readings = 0, care = 0, journalRows = 0;
};

class Logbook {
  public:
    virtual ~Logbook() = default;

    /// The only way in: validates, then one transaction for all entries (rows and journal). All or nothing.
    virtual Result<Receipt> append(std::span<const Entry> entries, const Context& context) = 0;
    Result<Receipt> append(const Entry& entry, const Context& context) {
        return append(std::span(&entry, 1), context);
    }

    // Current versions, withdrawn ones left out. Order: label, or time where there is one.
    virtual Result<std::vector<Tool>> tools() = 0;
    virtual Result<std::vector<Pairing>> pairings() = 0;
    virtual Result<std::vector<CounterCorrection>> counterCorrections() = 0;
    virtual Result<std::vector<Job>> jobs() = 0;
    virtual Result<std::vector<Cable>> cables(JobId job) = 0;
    virtual Result<std::vector<Closure>> closures(JobId job) = 0;
    virtual Result<std::vector<Span>> spans(JobId job) = 0;
    virtual Result<std::vector<CareRecord>> careRecords(std::optional<ToolId> tool) = 0;
    virtual Result<std::vector<CareRun>> openCareRuns() = 0;
    virtual Result<std::vector<CardEdition>> cardEditions() = 0;
    virtual Result<std::vector<HoldOverride>> holdOverrides() = 0;
    virtual Result<std::vector<BaselineChoice>> baselineChoices() = 0;
    virtual Result<std::vector<SignalAnswer>> signalAnswers() = 0;
    virtual Result<std::vector<ExceptionDisposition>> dispositions(JobId job) = 0;
    virtual Result<std::vector<IssuedRecord>> issuedRecords(JobId job) = 0;
    virtual Result<std::vector<MeasuredLoss>> measuredLosses(std::optional<JobId> job) = 0;
    virtual Result<std::optional<std::string>> setting(std::string_view key) = 0;
    virtual Result<std::vector<Attachment>> attachments(const Uuid& of) = 0;

    // Splices.
    virtual Result<std::optional<SpliceArc>> arc(ArcId id) = 0;
    virtual Result<std::vector<SpliceRow>> splices(const SpliceFilter& filter, PageOrder order,
                                                   std::optional<PageKey> after, std::size_t limit) = 0;
    /// Whole history of one splicer for the charts; fromMs leaves out what is older.
    virtual Result<SplicerHistory> history(ToolId splicer, std::optional<std::int64_t> fromMs) = 0;
    /// Last arc of a splicer, without reading its history.
    virtual Result<std::optional<SpliceArc>> lastArc(ToolId splicer) = 0;
    /// Arcs of a splicer, or prepared with a cleaver, in [fromMs, toMs).
    virtual Result<std::uint64_t> countArcs(ToolId tool, std::int64_t fromMs, std::int64_t toMs) = 0;
    virtual Result<Totals> totals() = 0;

    // Journal.
    virtual Result<std::vector<JournalLine>> historyOf(const Uuid& record) = 0;
    virtual Result<std::vector<JournalLine>> journal(std::uint64_t beforeRow, std::size_t limit) = 0;
    /// The record a journal row is about; none when it is about several, as an import is. May take as long as
    /// reading all splices once, so ask from a worker.
    virtual Result<std::optional<Uuid>> recordBehind(std::uint64_t row) = 0;
    /// Hash over all devices' last journal hashes, lower-case hex; printed on the closeout.
    virtual Result<std::string> journalHead() = 0;

    /// Changes whenever anything was written, by us or by another program: cheap to ask, for caches.
    virtual Result<std::uint64_t> changeCount() = 0;
};

}  // namespace arc
