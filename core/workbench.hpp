// SPDX-License-Identifier: GPL-3.0-or-later
// The port for everything the windows ask of the outside beyond the logbook: files in, files out, a second
// reader; handing over and keeping safe are in core/handover.hpp. Implemented in app/ over storage/ and
// ui/print. Each function may be called from a worker thread; none may be called twice at the same time.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/care/card.hpp"
#include "core/handover.hpp"
#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc {

/// A row of a file that could not be read: kept with the reason, never dropped.
struct SetAsideRow {
    std::string file;
    std::uint64_t line = 0;  ///< 1-based line in the file
    std::string column;      ///< may be empty
    std::string reason;
    std::string text;  ///< the raw row
};

struct ImportCount {
    std::uint64_t read = 0;   ///< rows below the header
    std::uint64_t added = 0;  ///< new in the logbook
    std::uint64_t known = 0;  ///< were there already
    std::uint64_t setAside = 0;
    std::vector<SetAsideRow> rows;   ///< the set-aside rows, at most the first 1,000
    std::vector<std::string> notes;  ///< what a person should know: "read with decimal comma"
};

enum class FileKind { SpliceLog, Events, MeasuredLosses };

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
};

}  // namespace arc
