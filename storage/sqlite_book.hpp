// SPDX-License-Identifier: GPL-3.0-or-later
// The class behind createLogbook and openLogbook; not for use outside storage. sqlite_logbook.cpp writes,
// sqlite_reads.cpp reads records and the journal, sqlite_splices.cpp reads splices.
#pragma once
#include <memory>
#include <string>
#include <vector>

#include "core/logbook.hpp"
#include "storage/damage.hpp"
#include "storage/ledger.hpp"
#include "storage/open_book.hpp"
#include "storage/record_json.hpp"

namespace arc::storage {

/// The acceptance rules of all jobs, for a search by verdict; read again when something was written.
struct JobRules {
    std::uint64_t change = 0;
    std::string table;                  ///< of a statement
    std::vector<AcceptanceRule> every;  ///< the same as values, and the one of splices without a job
    AcceptanceRule common;              ///< of the jobs that the table leaves out
};

class SqliteBook final : public Logbook {
  public:
    SqliteBook(OpenBook book, Clock& clock, Random& random);
    ~SqliteBook() override;

    Result<Receipt> append(std::span<const Entry> entries, const Context& context) override;

    Result<std::vector<Tool>> tools() override;
    Result<std::vector<Pairing>> pairings() override;
    Result<std::vector<CounterCorrection>> counterCorrections() override;
    Result<std::vector<Job>> jobs() override;
    Result<std::vector<Cable>> cables(JobId job) override;
    Result<std::vector<Closure>> closures(JobId job) override;
    Result<std::vector<Span>> spans(JobId job) override;
    Result<std::vector<CareRecord>> careRecords(std::optional<ToolId> tool) override;
    Result<std::vector<CareRun>> openCareRuns() override;
    Result<std::vector<CardEdition>> cardEditions() override;
    Result<std::vector<HoldOverride>> holdOverrides() override;
    Result<std::vector<BaselineChoice>> baselineChoices() override;
    Result<std::vector<SignalAnswer>> signalAnswers() override;
    Result<std::vector<ExceptionDisposition>> dispositions(JobId job) override;
    Result<std::vector<IssuedRecord>> issuedRecords(JobId job) override;
    Result<std::vector<MeasuredLoss>> measuredLosses(std::optional<JobId> job) override;
    Result<std::optional<std::string>> setting(std::string_view key) override;
    Result<std::vector<Attachment>> attachments(const Uuid& of) override;

    Result<std::optional<SpliceArc>> arc(ArcId id) override;
    Result<std::vector<SpliceRow>> splices(const SpliceFilter& filter, PageOrder order,
                                           std::optional<PageKey> after, std::size_t limit) override;
    Result<SplicerHistory> history(ToolId splicer, std::optional<std::int64_t> fromMs) override;
    Result<std::optional<SpliceArc>> lastArc(ToolId splicer) override;
    Result<std::uint64_t> countArcs(ToolId tool, std::int64_t fromMs, std::int64_t toMs) override;
    Result<Totals> totals() override;

    Result<std::vector<JournalLine>> historyOf(const Uuid& record) override;
    Result<std::vector<JournalLine>> journal(std::uint64_t beforeRow, std::size_t limit) override;
    Result<std::optional<Uuid>> recordBehind(std::uint64_t row) override;
    Result<std::string> journalHead() override;
    Result<std::uint64_t> changeCount() override;

  private:
    struct Rows {
        std::int64_t firstRow = 0, lastRow = 0;
    };
    std::optional<Receipt> writtenBefore(const Uuid& retryKey);
    Rows writeAll(std::span<const Entry> entries, const Context& context, const Uuid& retryKey);
    Batch batchFor(const Entry& entry);
    void addArc(const SpliceArc& arc, Batch& batch);
    void addReading(const Uuid& arc, const Reading& reading, Batch& batch);
    /// Throws Problem when the entry does not fit what is in the book.
    void checkAgainstBook(const Entry& entry);
    void needTool(ToolId id, const std::string& what);
    void needRecord(std::string_view kind, const Uuid& id, const std::string& what);
    Base baseOfRecord(const RecordRow& row, std::string& latestBody);
    std::optional<SpliceArc> headOf(std::int64_t arcKey);
    std::vector<Reading> readingsOf(std::int64_t arcKey);
    std::optional<SpliceArc> whole(std::int64_t arcKey);
    HistoryClosure closureWorked(ClosureId id);
    Result<const JobRules*> jobRules();

    template <class T>
    std::vector<T> all(std::string_view kind);
    template <class T>
    std::vector<T> about(std::string_view kind, const Uuid& subject);
    template <class Work>
    auto read(Work&& work) -> decltype(work()) {
        auto answer = guarded(book_.connection->file(), std::forward<Work>(work));
        if (!answer && isPageDamage(answer.error()))
            markDamaged(book_.connection->file(), "a page could not be read");
        return answer;
    }

    OpenBook book_;
    Clock& clock_;
    Random& random_;
    std::unique_ptr<Ledger> ledger_;
    std::optional<JobRules> jobRules_;
    Uuid id_;
};

}  // namespace arc::storage
