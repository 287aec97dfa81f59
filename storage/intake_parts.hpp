// SPDX-License-Identifier: GPL-3.0-or-later
// What the readers of the three kinds of CSV files share. Inside storage only.
#pragma once
#include <array>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/workbench.hpp"
#include "storage/column_key.hpp"
#include "storage/csv_reader.hpp"
#include "storage/csv_values.hpp"
#include "storage/intake.hpp"
#include "storage/ledger.hpp"

namespace arc::storage {

/// Why a row cannot be taken.
struct RowFault {
    std::string column;
    std::string reason;
};

/// Thrown to leave the whole import with a Problem; the transaction rolls back.
struct IntakeStop {
    Problem problem;
};

/// Labels of the book and the tools, jobs and closures behind them; unknown ones are made. Identities are
/// computed from the labels, so that the same log on two laptops makes the same tool.
class KitFinder {
  public:
    KitFinder(Connection& connection, Ledger& ledger);

    /// A RowFault when the label belongs to a tool of another kind.
    tl::expected<ToolId, RowFault> splicer(const std::string& label, int channels);
    tl::expected<ToolId, RowFault> cleaver(const std::string& label);
    /// For a care action: the tool of that label, else one of the kind the action is for.
    tl::expected<ToolId, RowFault> toolFor(const std::string& label, const std::string& action);
    /// A new job takes the sample rule for single fibres or for ribbons.
    tl::expected<JobId, RowFault> job(const std::string& label, int channels);
    tl::expected<ClosureId, RowFault> closure(JobId job, const std::string& label);
    struct Place {
        JobId job;
        ClosureId closure;
    };
    /// A closure by its label, in the named job or wherever there is only one.
    tl::expected<Place, RowFault> knownClosure(const std::string& jobLabel, const std::string& label);

    /// Journals what was made or changed since the last call.
    void writeNew(const Stamp& stamp);
    std::vector<std::string> takeNotes();

  private:
    struct KnownTool {
        Tool tool;
        bool unwritten = false;
    };
    tl::expected<ToolId, RowFault> make(const std::string& column, Tool tool);
    void loadClosures();

    Connection& connection_;
    Ledger& ledger_;
    std::unordered_map<std::string, KnownTool> tools_;
    std::unordered_map<std::string, JobId> jobs_;
    std::map<std::pair<JobId, std::string>, ClosureId> closures_;
    std::vector<Entry> unwritten_;
    std::vector<std::string> notes_;
};

/// A record in a journal row of its own, as the new version of what shows now; nothing when nothing changes.
void writeRecord(Connection& connection, Ledger& ledger, const Entry& entry, Stamp stamp);

/// One file on its way in.
struct IntakeFile {
    IntakeFile(CsvSource& source, Connection& connection, Ledger& ledger, KitFinder& kit, Progress& progress,
               const IntakeRequest& request);

    /// Reads the header, through the key when there is one; throws IntakeStop when it is none.
    void readHeader(const ColumnKey* key);
    /// Where each of `names` stands in the header, -1 where it does not. Throws IntakeStop when one of the
    /// first `needed` is missing or one is there twice; notes the columns that nobody reads.
    std::vector<int> place(const std::vector<const char*>& names, std::size_t needed);

    /// Next row; counts it; sets aside the ones that cannot be split. False at the end. Throws IntakeStop
    /// when the person asked to stop.
    bool nextRow();
    [[nodiscard]] std::string_view field(int column) const {
        return column < 0 ? std::string_view() : record.fields[static_cast<std::size_t>(column)];
    }
    void setAside(std::uint64_t line, std::string_view raw, RowFault fault);
    void setAside(RowFault fault) { setAside(record.line, record.raw, std::move(fault)); }

    /// Writes what has gathered, under one journal row.
    void write(Batch& batch, std::string_view kind, std::string text);
    /// After the last row.
    void finish();
    [[nodiscard]] std::string name() const { return source.file().filename().string(); }
    [[nodiscard]] Stamp stamp(std::string_view kind, std::string text) const;
    void note(std::string text) { count.notes.push_back(std::move(text)); }

    CsvSource& source;
    Connection& connection;
    Ledger& ledger;
    KitFinder& kit;
    Progress& progress;
    const IntakeRequest& request;
    CsvRecord record;
    std::vector<std::string> header;
    DecimalMark mark = DecimalMark::Point;
    FileKind fileKind = FileKind::SpliceLog;
    ImportCount count;

  private:
    void keepSetAside();
    void keepSheet();
    void show(const Translation::Row& row);
    /// One row of theirs that may be several of ours.
    bool translate();
    char delimiter_ = ',';
    std::string headerLine_;
    std::uint64_t lastSetAside_ = 0;
    std::size_t theirColumns_ = 0;
    std::optional<Translation> translation_;
    std::vector<Translation::Row> translated_;
    std::size_t nextTranslated_ = 0;
    std::optional<CsvReader> reader_;
    std::vector<SetAsideVersion> unkept_;
    std::set<Digest> keys_;
    std::vector<std::string> sheetRows_;  ///< identities of set-aside rows that no sheet names yet
};

/// Told from the names of our columns; none when they say nothing.
std::optional<FileKind> kindOf(const std::vector<std::string>& header);
/// "splices", "events", "measured"
std::string_view wordOf(FileKind kind);

// One function per kind, in csv_splices.cpp, csv_events.cpp and csv_measured.cpp.
void takeSplices(IntakeFile& file);
void takeEvents(IntakeFile& file);
void takeMeasured(IntakeFile& file);

/// "1,234"
std::string grouped(std::uint64_t number);

}  // namespace arc::storage
