// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/satchel.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "storage/batch_reader.hpp"
#include "storage/conflicts.hpp"
#include "storage/intake_parts.hpp"
#include "storage/job_rows.hpp"
#include "storage/migrations.hpp"
#include "storage/open_book.hpp"
#include "storage/place.hpp"
#include "storage/satchel_file.hpp"
#include "storage/verify.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

constexpr const char* shapeOfBook = "the content of the satchel does not have the form of a logbook";

/// What of each device's chain goes along, by its own numbers.
struct Stretch {
    std::int64_t first = 1, last = 0;
};
struct Choice {
    std::map<Uuid, Stretch> stretches;
    /// Journal rows that go along with their content; nothing: all of the stretches.
    std::optional<std::set<std::int64_t>> whole;
};

/// From the first row at or after `since` the chain is whole.
Choice chooseSince(Connection& connection, const std::optional<Instant>& since) {
    Choice choice;
    Query q = connection.query(
        "SELECT d.id, min(j.seq) FROM journal j JOIN device d ON d.key = j.device WHERE j.at_ms >= ? GROUP "
        "BY d.id");
    q.with(since ? since->ms : INT64_MIN);
    while (q.step()) choice.stretches[q.uuid(0)] = {q.integer(1), INT64_MAX};
    return choice;
}

/// Of every device that wrote about the job: its chain from the beginning to its last row about it.
Choice chooseJob(Connection& connection, JobId job) {
    Choice choice;
    {
        Query q = connection.query("SELECT 1 FROM record WHERE id = ? AND kind = 'job'");
        if (!q.with(job.uuid).step())
            throw IntakeStop{{ProblemCode::NotFound, "there is no such job in this logbook", "", ""}};
    }
    choice.whole = journalRowsOfJob(connection, job);
    for (const auto row : *choice.whole) {
        Query q = connection.query(
            "SELECT d.id, j.seq, j.kind FROM journal j JOIN device d ON d.key = j.device WHERE j.row = ?");
        if (!q.with(row).step()) continue;
        Stretch& stretch = choice.stretches[q.uuid(0)];
        if (q.text(2) != "device") stretch.last = std::max(stretch.last, q.integer(1));
    }
    std::erase_if(choice.stretches, [](const auto& entry) { return entry.second.last == 0; });
    return choice;
}

void copyContents(Connection& from, Ledger& into, const Batch& batch) {
    for (const auto& record : batch.records) {
        if (record.row.kind != "attachment") continue;
        const std::string hex = attachmentHash(record.row.body);
        Query q = from.query("SELECT bytes FROM attachment WHERE lower(hex(sha256)) = ?");
        if (!q.with(hex).step()) throw std::runtime_error("the content of an attachment is missing");
        if (toHex(sha256(asText(q.bytes(0)))) != hex)
            throw std::runtime_error("the content of an attachment was changed");
        into.storeContent(asText(q.bytes(0)));
    }
}

PackCount fill(Connection& book, Connection& inner, const Choice& choice, Clock& clock, Random& random,
               Progress& progress) {
    migrate(inner, embedded_migrations());
    WriteTransaction transaction(inner);
    Ledger ledger(inner, clock, random);
    const auto names = deviceNames(book);
    BatchReader reader = choice.whole ? BatchReader(book, *choice.whole) : BatchReader(book, 1);
    PackCount packed;
    packed.devices = choice.stretches.size();
    while (reader.nextHeadline()) {
        const JournalRow& row = reader.journal();
        const auto stretch = choice.stretches.find(row.device);
        if (stretch == choice.stretches.end() || row.seq < stretch->second.first ||
            row.seq > stretch->second.last)
            continue;
        if (reader.isHeadline() || (choice.whole && !choice.whole->contains(row.row))) {
            ledger.takeHeadline(row, names.at(row.device));
            ++packed.headlines;
        } else {
            reader.readRows();
            copyContents(book, ledger, reader.batch());
            ledger.take(row, reader.batch(), names.at(row.device));
            ++packed.entries;
        }
        if ((packed.entries + packed.headlines) % 256 == 1) {
            progress.report(packed.entries + packed.headlines, 0, "Packing");
            if (progress.stopRequested())
                throw IntakeStop{
                    {ProblemCode::Cancelled, "packing was stopped; nothing was left behind", "", ""}};
        }
    }
    transaction.commit();
    return packed;
}

/// Opens the payload as the foreign file it is: a private copy, so that one of an older program can be
/// brought up to date.
Result<std::unique_ptr<Connection>> openInner(const fs::path& payload, const SatchelLabel& label,
                                              const fs::path& satchel) {
    if (label.schema > newestSchema())
        return fail(ProblemCode::Refused,
                    "the satchel was packed by a newer Arcwright (schema " + std::to_string(label.schema) +
                        ", this one knows " + std::to_string(newestSchema()) + "); nothing was taken in",
                    satchel.string(), "Install the newer program");
    auto inner = std::make_unique<Connection>(payload, Access::ReadOnly);
    if (schemaState(*inner) == SchemaState::Older) {
        inner = std::make_unique<Connection>(payload, Access::ReadWrite);
        migrate(*inner, embedded_migrations());
        inner = std::make_unique<Connection>(payload, Access::ReadOnly);
    }
    const auto sound = [&inner] {
        // A page that is hung into the tree many times over would be read many times over.
        Query q = inner->query("PRAGMA quick_check(1)");
        return q.step() && q.text(0) == "ok";
    };
    if (schemaState(*inner) != SchemaState::Current || !hasSchemaOfLogbook(*inner) || !sound())
        return fail(ProblemCode::Damaged, shapeOfBook, satchel.string(), "Ask for the satchel again");
    return inner;
}

/// Up to the year 9999, with room above.
bool isTime(std::int64_t ms) {
    return ms >= 0 && ms <= 253'402'300'799'999;
}

bool namesItself(const RecordRow& row, const Uuid& device, const std::string& name) {
    const auto body = nlohmann::json::parse(row.body, nullptr, false);
    return row.id == device && body.is_object() && body.value("id", nlohmann::json()) == toText(device) &&
           body.value("name", nlohmann::json()) == name;
}

[[noreturn]] void refuse(const JournalRow& row, const std::string& why) {
    throw IntakeStop{
        {ProblemCode::Damaged, "the satchel holds an entry that cannot be taken in: " + why,
         (isTime(row.at.ms) ? toIso(row.at) + ", " : std::string()) + showable(row.stamp.text, 80),
         "Nothing was taken in"}};
}

/// The journal row alone. A counter near the end of its range would leave no room for ours above it.
void checkHeadline(const JournalRow& row) {
    if (hashOf(row) != row.hash) refuse(row, "it does not fit its hash");
    if (row.seq < 1 || !isTime(row.tick) || !isTime(row.at.ms))
        refuse(row, "its time or number is out of range");
}

/// Content of a stranger is held to the same rules as what a person types.
void checkContent(const JournalRow& row, Batch& batch, const std::string& deviceName) {
    const auto refuse = [&row](const std::string& why) { storage::refuse(row, why); };
    if (digestOf(batch) != row.digest) refuse("it does not fit its hash");
    for (const auto& record : batch.records) {
        if (record.row.kind == "device" && !namesItself(record.row, row.device, deviceName))
            refuse("its device does not have the name it gave itself");
        if (record.row.kind == "book" || record.row.kind == "device") continue;
        const auto entry = entryFrom(record.row.kind, record.row.body);
        if (!entry) refuse("its kind \"" + showable(record.row.kind, 40) + "\" is not known");
        Entry checked = *entry;
        // The bytes of an attachment travel beside it and are checked against their hash.
        if (auto* const attachment = std::get_if<Attachment>(&checked)) attachment->bytes = "x";
        if (auto valid = validate(checked); !valid) refuse(valid.error().what);
        const RecordRow again = std::holds_alternative<Attachment>(*entry) ? record.row : toRecord(*entry);
        if (again.id != record.row.id || again.subject != record.row.subject || again.atMs != record.row.atMs)
            refuse("its columns and its content do not agree");
    }
    for (const auto& version : batch.arcs)
        if (auto valid = validate(version.arc); !valid && valid.error().where != "readings")
            refuse(valid.error().what);
    for (const auto& version : batch.readings)
        if (auto valid = validate(ReadingChange{ArcId{version.arc}, version.reading}); !valid)
            refuse(valid.error().what);
}

struct Standing {
    std::int64_t seq = 0, tick = 0;
    Digest hash{};
};
std::map<Uuid, Standing> standings(Connection& connection) {
    std::map<Uuid, Standing> list;
    Query q = connection.query("SELECT id, last_seq, last_tick, last_hash FROM device");
    while (q.step()) {
        Standing standing{q.integer(1), q.integer(2), {}};
        const Bytes hash = q.bytes(3);
        std::copy_n(hash.begin(), std::min(hash.size(), standing.hash.size()), standing.hash.begin());
        list.emplace(q.uuid(0), standing);
    }
    return list;
}

/// Row number of a journal row in this file; its hash must be the same here and there.
std::int64_t knownRow(Connection& connection, const JournalRow& row, const std::string& name) {
    Query q = connection.query(
        "SELECT j.hash, j.row FROM journal j JOIN device d ON d.key = j.device WHERE d.id = ? AND j.seq = ?");
    q.with(row.device).with(row.seq);
    if (!q.step() || !std::equal(row.hash.begin(), row.hash.end(), q.bytes(0).begin(), q.bytes(0).end()))
        throw IntakeStop{
            {ProblemCode::Conflict,
             "\"" + showable(name, 80) +
                 "\" has written two different histories; one of them was restored from an old copy",
             toIso(row.at), "Nothing was taken in; ask for the satchel of a logbook that verifies"}};
    return q.integer(1);
}

/// Takes the rows of a satchel into a book. Of each device only what the book does not have is read with its
/// content; for the rest equal hashes say that all before them is equal too.
class Merger {
  public:
    Merger(Connection& book, Connection& inner, Clock& clock, Random& random)
        : book_(book),
          inner_(inner),
          ledger_(book, clock, random),
          ours_(standings(book)),
          names_(deviceNames(inner)),
          headlines_(headlinesOf(book)),
          reader_(inner, firstUnknown()) {}

    Unpacked run(Progress& progress) {
        while (reader_.nextHeadline()) {
            const JournalRow& row = reader_.journal();
            const auto named = names_.find(row.device);
            if (named == names_.end()) refuse(row, "its device is missing");
            checkHeadline(row);
            Standing& standing = ours_[row.device];
            if (row.seq <= standing.seq) {
                known(row, named->second);
            } else {
                follow(row, standing, named->second);
            }
            if (++seen_ % 256 == 1) {
                progress.report(seen_, 0, "Taking in");
                if (progress.stopRequested())
                    throw IntakeStop{
                        {ProblemCode::Cancelled, "taking in was stopped; nothing was changed", "", ""}};
            }
        }
        result_.knownRows += skipped_;
        result_.concurrent = concurrentEdits(book_, touched_);
        return std::move(result_);
    }

  private:
    /// First row of the satchel that has to be looked at. A headline of ours may be filled in by any row.
    std::int64_t firstUnknown() {
        if (!headlines_.empty()) return 1;
        std::int64_t first = INT64_MAX;
        for (const auto& [device, there] : standings(inner_)) {
            const auto here = ours_.find(device);
            const std::int64_t last = here == ours_.end() ? 0 : here->second.seq;
            // The last row both have is looked at, so that two histories are found.
            Query q = inner_.query(
                "SELECT min(j.row) FROM journal j JOIN device d ON d.key = j.device WHERE d.id = ? AND j.seq "
                ">= ?");
            q.with(device).with(std::min(last, there.seq));
            if (q.step() && !q.isNull(0)) first = std::min(first, q.integer(0));
        }
        Query q = inner_.query("SELECT count(*) FROM journal WHERE row < ?");
        q.with(first).step();
        skipped_ = static_cast<std::uint64_t>(q.integer(0));
        return first;
    }

    void known(const JournalRow& row, const std::string& name) {
        const std::int64_t here = knownRow(book_, row, name);
        if (!headlines_.contains(here) || reader_.isHeadline()) {
            ++result_.knownRows;
            return;
        }
        read(row, name);
        ledger_.fillIn(here, reader_.batch());
        headlines_.erase(here);
        ++result_.newRows;
    }

    void follow(const JournalRow& row, Standing& standing, const std::string& name) {
        if (row.seq != standing.seq + 1)
            throw IntakeStop{
                {ProblemCode::Refused,
                 "the satchel begins later than what this logbook has of \"" + showable(name, 80) + "\"",
                 toIso(row.at), "Nothing was taken in; ask for a satchel that begins earlier"}};
        if (row.prev != standing.hash) knownRow(book_, row, name);
        if (row.tick <= standing.tick) refuse(row, "the counter of its device runs backwards");
        if (reader_.isHeadline()) {
            if (row.seq == 1) refuse(row, "the name of its device is missing");
            ledger_.takeHeadline(row, name);
        } else {
            read(row, name);
            ledger_.take(row, reader_.batch(), name);
            ++result_.newRows;
        }
        standing = {row.seq, row.tick, row.hash};
    }

    void read(const JournalRow& row, const std::string& name) {
        reader_.readRows();
        Batch& batch = reader_.batch();
        checkContent(row, batch, name);
        copyContents(inner_, ledger_, batch);
        for (const auto& record : batch.records) touched_.push_back(record.row.id);
        for (const auto& version : batch.arcs) touched_.push_back(version.arc.id.uuid);
        for (const auto& reading : batch.readings) touched_.push_back(reading.arc);
    }

    Connection& book_;
    Connection& inner_;
    Ledger ledger_;
    std::map<Uuid, Standing> ours_;
    std::map<Uuid, std::string> names_;
    std::set<std::int64_t> headlines_;
    std::uint64_t skipped_ = 0, seen_ = 0;
    BatchReader reader_;
    std::vector<Uuid> touched_;
    Unpacked result_;
};

/// What only SQLite finds wrong with a foreign file is the file's fault, not the program's.
template <class Work>
auto readingIn(const fs::path& satchel, Work&& work) -> decltype(work()) {
    auto answer = guarded(satchel, std::forward<Work>(work));
    if (answer || answer.error().code != ProblemCode::Internal) return answer;
    return fail(ProblemCode::Damaged, "the satchel cannot be read", satchel.string(),
                "Ask for the satchel again");
}

}  // namespace

Result<PackCount> packSatchel(const fs::path& book, const PackOrder& order, const DeviceKey& key,
                              Clock& clock, Random& random, Progress& progress) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    auto payload = PrivateFile::make();
    if (!payload) return tl::unexpected(payload.error());
    return guarded(order.satchel, [&]() -> Result<PackCount> {
        PackCount packed;
        try {
            open->connection->execute("BEGIN");
            Connection inner(payload->path(), Access::Create);
            Connection& from = *open->connection;
            const Choice choice = order.job ? chooseJob(from, *order.job) : chooseSince(from, order.since);
            packed = fill(from, inner, choice, clock, random, progress);
            inner.execute("PRAGMA journal_mode = DELETE");
        } catch (const IntakeStop& stop) {
            return tl::unexpected(stop.problem);
        }
        SatchelLabel label;
        label.madeBy = machineName();
        label.madeAt = clock.now();
        label.schema = newestSchema();
        auto written = writeSatchelFile(order.satchel, label, payload->path(), order.passphrase, key, random);
        if (!written) return tl::unexpected(written.error());
        return packed;
    });
}

Result<Unpacked> unpackSatchel(const UnpackRequest& request, Clock& clock, Random& random,
                               Progress& progress) {
    auto label = readSatchelLabel(request.satchel);
    if (!label) return tl::unexpected(label.error());
    if (std::find(request.accepted.begin(), request.accepted.end(), label->signer) == request.accepted.end())
        return fail(ProblemCode::Refused,
                    "the satchel comes from a device that is not accepted yet: \"" +
                        showable(label->madeBy, 80) + "\", key " + fingerprint(label->signer),
                    request.satchel.string(),
                    "Compare the key with its owner, then accept the device; nothing was taken in");
    auto payload = openPayload(request.satchel, *label, request.passphrase);
    if (!payload) return tl::unexpected(payload.error());
    auto open = openBook(request.book, request.mode);
    if (!open) return tl::unexpected(open.error());
    return readingIn(request.satchel, [&]() -> Result<Unpacked> {
        auto inner = openInner(payload->path(), *label, request.satchel);
        if (!inner) return tl::unexpected(inner.error());
        try {
            WriteTransaction transaction(*open->connection);
            Unpacked result = Merger(*open->connection, **inner, clock, random).run(progress);
            result.from = label->madeBy;
            transaction.commit();
            if (!open->connection->filesStillOurs())
                return fail(ProblemCode::Unavailable, "the logbook file was taken away or replaced meanwhile",
                            request.book.string(), "Take the satchel in once more; nothing is doubled");
            return result;
        } catch (const IntakeStop& stop) {
            return tl::unexpected(stop.problem);
        }
    });
}

Result<std::string> verifySatchel(const fs::path& satchel, const std::optional<std::string>& passphrase,
                                  Progress& progress) {
    auto label = readSatchelLabel(satchel);
    if (!label) return tl::unexpected(label.error());
    const std::string outside = "from \"" + showable(label->madeBy, 80) + "\", made " + toIso(label->madeAt) +
                                ", key " + fingerprint(label->signer);
    if (!label->salt.empty() && !passphrase)
        return "The satchel's signature and seal hold (" + outside +
               "); its content opens with the passphrase only.";
    auto payload = openPayload(satchel, *label, passphrase);
    if (!payload) return tl::unexpected(payload.error());
    return readingIn(satchel, [&]() -> Result<std::string> {
        auto inner = openInner(payload->path(), *label, satchel);
        if (!inner) return tl::unexpected(inner.error());
        std::uint64_t rows = 0, headlines = 0;
        std::map<Uuid, Standing> chains;
        const auto names = deviceNames(**inner);
        BatchReader reader(**inner, 1);
        try {
            while (reader.next()) {
                const JournalRow& row = reader.journal();
                checkHeadline(row);
                if (reader.isHeadline()) {
                    ++headlines;
                    if (!reader.batch().empty()) refuse(row, "it has content and says that it has none");
                } else {
                    checkContent(row, reader.batch(), names.at(row.device));
                }
                Standing& chain = chains[row.device];
                if (chain.seq != 0 && (row.seq != chain.seq + 1 || row.prev != chain.hash))
                    return fail(ProblemCode::Damaged, "a row of the satchel is missing or out of order",
                                toIso(row.at), "Ask for the satchel again");
                chain = {row.seq, row.tick, row.hash};
                if (++rows % 64 == 0) progress.report(rows, 0, "Checking the satchel");
            }
        } catch (const IntakeStop& stop) {
            return tl::unexpected(stop.problem);
        }
        return "The satchel verifies: " + grouped(rows) + " journal rows of " + grouped(chains.size()) +
               (chains.size() == 1 ? " device, " : " devices, ") +
               (headlines > 0 ? grouped(headlines) + " of them as headlines only, " : std::string()) +
               outside + ".";
    });
}

}  // namespace arc::storage
