// SPDX-License-Identifier: GPL-3.0-or-later
// The port for everything the windows ask of the outside beyond the logbook: files in, files out, a second
// reader; handing over and keeping safe are in core/handover.hpp. Implemented in app/ over storage/ and
// ui/print. From any worker thread; none twice at a time but those that only list: each opens the book itself.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/care/card.hpp"
#include "core/handover.hpp"
#include "core/intake/set_aside.hpp"
#include "core/intake/table_preview.hpp"
#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc {

struct ImportCount {
    std::uint64_t read = 0;   ///< rows below the header
    std::uint64_t added = 0;  ///< new in the logbook
    std::uint64_t known = 0;  ///< were there already
    std::uint64_t setAside = 0;
    std::vector<SetAsideRow> rows;   ///< the set-aside rows, at most the first 1,000
    std::vector<std::string> notes;  ///< what a person should know: "read with decimal comma"
    std::string setAsideTable;  ///< when asked for: header and set-aside rows as they stood, to be mended
};

class Workbench : public Handover {
  public:
    /// A read-only view of the same logbook for another thread.
    virtual Result<std::unique_ptr<Logbook>> reader() = 0;
    /// The care cards in force: the shipped ones and the crew's own editions in this logbook.
    virtual Result<care::Deck> cards(Logbook& book) = 0;
    /// Editions that were put aside for the shipped card, each with file, line and reason.
    virtual Result<std::vector<Problem>> refusedCards(Logbook&) { return std::vector<Problem>{}; }
    /// The card an open run or an old record was done with.
    virtual Result<care::Card> cardOfVersion(Logbook&, std::string_view, int) { return noCards(); }
    /// A card in force as the text a supervisor edits.
    virtual Result<std::string> cardText(Logbook&, std::string_view) { return noCards(); }
    /// Checks an edited card against the whole deck; appending the answer brings it into force.
    virtual Result<CardEdition> cardEdition(Logbook&, std::string_view) { return noCards(); }
    /// All or nothing; the same file twice changes nothing.
    virtual Result<ImportCount> import(const std::filesystem::path& file, FileKind kind,
                                       Progress& progress) = 0;
    /// The same through a column key.
    virtual Result<ImportCount> importWith(const std::filesystem::path&, const ColumnKey&, Progress&) {
        return noTables();
    }
    /// The first rows of a table as they would be read; nothing is changed. Without a key only the header and
    /// the raw rows are looked at. Cheap enough for every key press.
    virtual Result<TablePreview> preview(const TableQuestion&) { return noTables(); }
    /// The saved column keys, by name.
    virtual Result<std::vector<ColumnKey>> columnKeys() { return std::vector<ColumnKey>{}; }
    /// What saves a key under its name when it is appended.
    virtual Result<Setting> columnKeySetting(const ColumnKey&) { return noTables(); }
    /// A key as a JSON file; refuses to overwrite.
    virtual Result<void> writeColumnKey(const ColumnKey&, const std::filesystem::path&) { return noTables(); }
    virtual Result<ColumnKey> readColumnKey(const std::filesystem::path&) { return noTables(); }
    /// Rows of imports that wait to be mended, the newest import first; all of them, each by its key alone.
    virtual Result<std::vector<SetAsideSheet>> setAside() { return std::vector<SetAsideSheet>{}; }
    /// Reads rows [from, from + count) of a sheet; until then only their keys are there.
    virtual Result<void> readSetAside(SetAsideSheet&, std::size_t /*from*/, std::size_t /*count*/) {
        return {};
    }
    /// What mended rows would do (one answer a row), or takes in those that can be read. Rows that still
    /// cannot stay where they are.
    virtual Result<std::vector<MendedRow>> mend(const SetAsideSheet&, const std::vector<MendedRow>&,
                                                MendPurpose) {
        return noTables();
    }
    /// What settles rows that are to be left out when it is appended.
    virtual std::vector<Setting> leftOut(const SetAsideSheet&, const std::vector<std::size_t>&) { return {}; }
    /// Writes the closeout record folder; answers the folder.
    virtual Result<std::filesystem::path> writeCloseout(JobId job, const std::filesystem::path& folder,
                                                        Progress& progress) = 0;
    /// The same as a final record: numbered, entered in the logbook, refused while an exception waits for a
    /// disposition.
    virtual Result<std::filesystem::path> issueCloseout(JobId /*job*/, const std::filesystem::path& folder,
                                                        const std::string& /*by*/, Progress& /*progress*/) {
        return fail(ProblemCode::Refused, "this program does not issue final records", folder.string(),
                    "Write a draft");
    }
    /// Consistent copy while in use.
    virtual Result<void> backup(const std::filesystem::path& destination, Progress& progress) = 0;
    /// Logbook, closeout folder or satchel; the sentence says what was found, a Problem names the first
    /// difference.
    virtual Result<std::string> verify(const std::filesystem::path& path, Progress& progress) = 0;

  private:
    static tl::unexpected<Problem> noCards() {
        return fail(ProblemCode::Unavailable, "care cards cannot be read or changed here");
    }
    static tl::unexpected<Problem> noTables() {
        return fail(ProblemCode::Unavailable, "tables cannot be read here");
    }
};

}  // namespace arc
