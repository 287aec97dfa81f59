// SPDX-License-Identifier: GPL-3.0-or-later
// The port for handing over and keeping safe: satchels, edits that did not know of each other, known devices,
// backups, a damaged logbook. A Workbench is one; without an implementation every function is Unavailable.
// Threads as for Workbench: from any one, never two at the same time.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc {

// --- satchels
// ------------------------------------------------------------------------------------------------

/// What goes into a satchel: everything, or from a time on, or one job with all that is needed to read it.
struct PackOrder {
    std::filesystem::path satchel;  ///< must not exist
    std::optional<Instant> since;   ///< not together with job
    std::optional<JobId> job;
    std::optional<std::string> passphrase;  ///< seals the content
};
struct PackCount {
    std::uint64_t entries = 0;    ///< journal rows with their content
    std::uint64_t headlines = 0;  ///< journal rows of which only the line itself goes along (one job)
    std::uint64_t devices = 0;
};

enum class DeviceStanding { ThisOne, Accepted, Unknown };
/// A laptop as the signature of its satchels and records names it.
struct Device {
    std::string key;          ///< public key, base64; names the device in acceptDevice
    std::string fingerprint;  ///< "3f9a 07c2 11de 84b0", to compare by phone
    std::string name;         ///< given by whoever accepted it; of an unknown one: what it calls itself
    DeviceStanding standing = DeviceStanding::Unknown;
};

struct TakenIn {
    Device from;
    std::uint64_t newEntries = 0;
    std::uint64_t knownEntries = 0;
    std::uint64_t toLookAt = 0;  ///< records in it that were edited here and there, see concurrentEdits
};
/// A satchel of an unknown device: kept beside the logbook, nothing of it taken in.
struct WaitingSatchel {
    std::filesystem::path file;
    Device from;
    Instant madeAt;
    bool sealed = false;  ///< opens with a passphrase
    bool operator==(const WaitingSatchel& other) const { return file == other.file; }
};
using SatchelAnswer = std::variant<TakenIn, WaitingSatchel>;

// --- edits that did not know of each other
// ---------------------------------------------------------------------

/// One version of a record that no later edit knew of.
struct Edit {
    Instant at;
    std::string who, device, source;
    std::string words;       ///< as in the history
    std::string content;     ///< what this version says, for people; "taken back" for a withdrawal
    std::string versionKey;  ///< of this version, the same on every laptop
};
/// A record that was edited here and there. It stays in the list until somebody settles it.
struct ConcurrentEdits {
    Uuid record;
    std::string kind;            ///< as in the journal: "tool", "arc", "reading", …
    std::optional<int> channel;  ///< of a reading
    std::vector<Edit> edits;     ///< two or more, in the order all laptops see; the last one shows
    [[nodiscard]] const Edit& showing() const { return edits.back(); }
};

/// Final records of one job that bear the same number: issued on laptops that did not know of each other.
struct NumberClash {
    JobId job;
    std::string jobLabel;
    int number = 0;
    struct Record {
        EntryId id;
        std::string by, device, manifestSha256;
        Instant at;
    };
    std::vector<Record> records;      ///< two or more
    std::optional<int> supersededBy;  ///< number of a later record that replaces them
};

// --- keeping safe
// ----------------------------------------------------------------------------------------------

/// Keys of the logbook's settings for the rolling backups. Values: whole numbers; "off" for every hours;
/// folder: a path, empty for the folder "NAME.backups" beside the logbook.
namespace backup_setting {
inline constexpr std::string_view everyHours = "backup.every_hours";  ///< default 24
inline constexpr std::string_view keepCopies = "backup.keep_copies";  ///< default 10, at least 2
inline constexpr std::string_view keepDays = "backup.keep_days";      ///< default 60
inline constexpr std::string_view keepMegabytes = "backup.keep_mb";   ///< default 2000
inline constexpr std::string_view folder = "backup.folder";
}  // namespace backup_setting

struct BackupCopy {
    std::filesystem::path file;
    Instant madeAt;
    std::uint64_t bytes = 0;
};

enum class BookAccess {
    Writing,
    OtherProgramWrites,  ///< or the medium cannot be written to: reading only
    Damaged,             ///< reading only; a rescue gives a sound logbook
};
/// How the logbook is open, and what can be read of a damaged one.
struct BookState {
    BookAccess access = BookAccess::Writing;
    std::string sentence;               ///< for people; empty when all is well
    std::vector<std::string> readable;  ///< "arcs: 1,200 of 1,310", one line a table; of a damaged book only
};

struct RescueCount {
    std::uint64_t whole = 0;   ///< entries as they were
    std::uint64_t partly = 0;  ///< written anew, perhaps in part
    std::uint64_t lost = 0;
    std::vector<std::string> losses;  ///< the first 100 that are not whole, with time and words
};

class Handover {
  public:
    virtual ~Handover() = default;

    virtual Result<PackCount> packSatchel(const PackOrder&, Progress&) { return none(); }
    /// All or nothing, any number of times, in any order. Of an unknown device the satchel is kept beside the
    /// logbook and waits; a wrong or missing passphrase and a damaged satchel are Problems.
    virtual Result<SatchelAnswer> takeSatchel(const std::filesystem::path&,
                                              const std::optional<std::string>& /*passphrase*/, Progress&) {
        return none();
    }
    /// Satchels that wait for their device to be accepted. After acceptDevice take them in by their file.
    virtual Result<std::vector<WaitingSatchel>> waitingSatchels() { return none(); }
    /// Throws a waiting satchel away; refused for any other file.
    virtual Result<void> discardSatchel(const WaitingSatchel&) { return none(); }

    /// This laptop first, then the accepted ones by name, then those that wait.
    virtual Result<std::vector<Device>> devices() { return none(); }
    /// From now on satchels of this key are taken in and its records called by this name.
    virtual Result<void> acceptDevice(const std::string& /*key*/, const std::string& /*name*/) {
        return none();
    }

    virtual Result<std::vector<ConcurrentEdits>> concurrentEdits() { return none(); }
    /// Journals a decision: `keep` (index into edits) shows from now on, as a new version when it did not;
    /// the others are put aside by name. A Conflict when somebody edited the record meanwhile: ask for the
    /// list anew.
    virtual Result<Receipt> settle(const ConcurrentEdits&, std::size_t /*keep*/, const Context&) {
        return none();
    }
    virtual Result<std::vector<NumberClash>> numberClashes() { return none(); }

    /// Newest first.
    virtual Result<std::vector<BackupCopy>> backups() { return none(); }
    /// A copy into the rolling set, now; what is beyond the bounds goes.
    virtual Result<BackupCopy> makeBackup(Progress&) { return none(); }
    /// The same if the newest copy is older than the setting says and something was written since; else
    /// nothing. For after a save, on a worker.
    virtual Result<std::optional<BackupCopy>> makeBackupIfDue(Progress&) { return none(); }
    /// Checks the copy and makes a logbook of it under a new name; nothing is overwritten.
    virtual Result<void> restoreBackup(const std::filesystem::path& /*copy*/,
                                       const std::filesystem::path& /*newBook*/, Progress&) {
        return none();
    }

    virtual Result<BookState> bookState() { return none(); }
    /// Walks all pages of the logbook; when one is damaged, the book is for reading only from then on, here
    /// and in every program that opens it. For a worker after opening.
    virtual Result<BookState> checkBook(Progress&) { return none(); }
    /// What is readable, into a new logbook.
    virtual Result<RescueCount> rescueInto(const std::filesystem::path& /*newBook*/, Progress&) {
        return none();
    }

  private:
    static tl::unexpected<Problem> none() {
        return fail(ProblemCode::Unavailable, "this program does not hand over or keep copies");
    }
};

}  // namespace arc
