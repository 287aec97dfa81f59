// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/satchel.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "storage/batch_reader.hpp"
#include "storage/conflicts.hpp"
#include "storage/intake_parts.hpp"
#include "storage/migrations.hpp"
#include "storage/open_book.hpp"
#include "storage/place.hpp"
#include "storage/satchel_file.hpp"
#include "storage/verify.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

constexpr const char* shapeOfBook = "the content of the satchel does not have the form of a logbook";

/// First journal row of each device that goes along: the chain from there on is whole.
std::map<Uuid, std::int64_t> firstRows(Connection& connection, const std::optional<Instant>& since) {
    std::map<Uuid, std::int64_t> first;
    Query q = connection.query(
        "SELECT d.id, min(j.seq) FROM journal j JOIN device d ON d.key = j.device WHERE j.at_ms >= ? GROUP "
        "BY d.id");
    q.with(since ? since->ms : INT64_MIN);
    while (q.step()) first.emplace(q.uuid(0), q.integer(1));
    return first;
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

PackCount fill(Connection& book, Connection& inner, const std::optional<Instant>& since, Clock& clock,
               Random& random, Progress& progress) {
    migrate(inner, embedded_migrations());
    WriteTransaction transaction(inner);
    Ledger ledger(inner, clock, random);
    const auto first = firstRows(book, since);
    const auto names = deviceNames(book);
    BatchReader reader(book, 1);
    PackCount packed;
    packed.devices = first.size();
    while (reader.next()) {
        const JournalRow& row = reader.journal();
        const auto from = first.find(row.device);
        if (from == first.end() || row.seq < from->second) continue;
        copyContents(book, ledger, reader.batch());
        ledger.take(row, reader.batch(), names.at(row.device));
        ++packed.entries;
        if (packed.entries % 256 == 1) {
            progress.report(packed.entries, 0, "Packing");
            if (progress.stopRequested())
                throw IntakeStop{
                    {ProblemCode::Cancelled, "packing was stopped; nothing was left behind", "", ""}};
        }
    }
    transaction.commit();
    return packed;
}

/// Opens the payload as the foreign file it is.
Result<std::unique_ptr<Connection>> openInner(const fs::path& payload, const SatchelLabel& label,
                                              const fs::path& satchel) {
    if (label.schema > newestSchema())
        return fail(ProblemCode::Refused,
                    "the satchel was packed by a newer Arcwright (schema " + std::to_string(label.schema) +
                        ", this one knows " + std::to_string(newestSchema()) + "); nothing was taken in",
                    satchel.string(), "Install the newer program");
    auto inner = std::make_unique<Connection>(payload, Access::ReadOnly);
    if (schemaState(*inner) != SchemaState::Current || !hasSchemaOfLogbook(*inner))
        return fail(ProblemCode::Damaged, shapeOfBook, satchel.string(), "Ask for the satchel again");
    return inner;
}

/// Content of a stranger is held to the same rules as what a person types.
void checkContent(const JournalRow& row, Batch& batch) {
    const auto refuse = [&row](const std::string& why) {
        throw IntakeStop{{ProblemCode::Damaged, "the satchel holds an entry that cannot be taken in: " + why,
                          toIso(row.at) + ", " + showable(row.stamp.text, 80), "Nothing was taken in"}};
    };
    if (hashOf(row) != row.hash || digestOf(batch) != row.digest) refuse("it does not fit its hash");
    for (const auto& record : batch.records) {
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
    std::int64_t seq = 0;
    Digest hash{};
};
std::map<Uuid, Standing> standings(Connection& connection) {
    std::map<Uuid, Standing> list;
    Query q = connection.query("SELECT id, last_seq, last_hash FROM device");
    while (q.step()) {
        Standing standing{q.integer(1), {}};
        const Bytes hash = q.bytes(2);
        std::copy_n(hash.begin(), std::min(hash.size(), standing.hash.size()), standing.hash.begin());
        list.emplace(q.uuid(0), standing);
    }
    return list;
}

void checkKnownRow(Connection& connection, const JournalRow& row, const std::string& name) {
    Query q = connection.query(
        "SELECT j.hash FROM journal j JOIN device d ON d.key = j.device WHERE d.id = ? AND j.seq = ?");
    q.with(row.device).with(row.seq);
    if (!q.step() || !std::equal(row.hash.begin(), row.hash.end(), q.bytes(0).begin(), q.bytes(0).end()))
        throw IntakeStop{
            {ProblemCode::Conflict,
             "\"" + showable(name, 80) +
                 "\" has written two different histories; one of them was restored from an old copy",
             toIso(row.at), "Nothing was taken in; ask for the satchel of a logbook that verifies"}};
}

Unpacked mergeIn(Connection& book, Connection& inner, Clock& clock, Random& random, Progress& progress) {
    Unpacked result;
    Ledger ledger(book, clock, random);
    auto ours = standings(book);
    const auto names = deviceNames(inner);
    std::vector<Uuid> touched;
    BatchReader reader(inner, 1);
    while (reader.next()) {
        const JournalRow& row = reader.journal();
        const std::string& name = names.at(row.device);
        checkContent(row, reader.batch());
        Standing& standing = ours[row.device];
        if (row.seq <= standing.seq) {
            checkKnownRow(book, row, name);
            ++result.knownRows;
            continue;
        }
        if (row.seq != standing.seq + 1)
            throw IntakeStop{
                {ProblemCode::Refused,
                 "the satchel begins later than what this logbook has of \"" + showable(name, 80) + "\"",
                 toIso(row.at), "Nothing was taken in; ask for a satchel that begins earlier"}};
        if (row.prev != standing.hash) checkKnownRow(book, row, name);
        copyContents(inner, ledger, reader.batch());
        ledger.take(row, reader.batch(), name);
        standing = {row.seq, row.hash};
        for (const auto& record : reader.batch().records) touched.push_back(record.row.id);
        for (const auto& reading : reader.batch().readings) touched.push_back(reading.arc);
        ++result.newRows;
        if (result.newRows % 256 == 1) {
            progress.report(result.newRows, 0, "Taking in");
            if (progress.stopRequested())
                throw IntakeStop{
                    {ProblemCode::Cancelled, "taking in was stopped; nothing was changed", "", ""}};
        }
    }
    result.concurrent = concurrentEdits(book, touched);
    return result;
}

}  // namespace

Result<PackCount> packSatchel(const fs::path& book, const PackOrder& order, const DeviceKey& key,
                              Clock& clock, Random& random, Progress& progress) {
    if (order.job) return fail(ProblemCode::Unavailable, "a satchel of one job cannot be packed yet");
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    auto payload = PrivateFile::make();
    if (!payload) return tl::unexpected(payload.error());
    return guarded(order.satchel, [&]() -> Result<PackCount> {
        PackCount packed;
        try {
            open->connection->execute("BEGIN");
            Connection inner(payload->path(), Access::Create);
            packed = fill(*open->connection, inner, order.since, clock, random, progress);
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
    return guarded(request.satchel, [&]() -> Result<Unpacked> {
        auto inner = openInner(payload->path(), *label, request.satchel);
        if (!inner) return tl::unexpected(inner.error());
        try {
            WriteTransaction transaction(*open->connection);
            Unpacked result = mergeIn(*open->connection, **inner, clock, random, progress);
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
    return guarded(satchel, [&]() -> Result<std::string> {
        auto inner = openInner(payload->path(), *label, satchel);
        if (!inner) return tl::unexpected(inner.error());
        std::uint64_t rows = 0;
        std::map<Uuid, Standing> chains;
        BatchReader reader(**inner, 1);
        try {
            while (reader.next()) {
                const JournalRow& row = reader.journal();
                checkContent(row, reader.batch());
                Standing& chain = chains[row.device];
                if (chain.seq != 0 && (row.seq != chain.seq + 1 || row.prev != chain.hash))
                    return fail(ProblemCode::Damaged, "a row of the satchel is missing or out of order",
                                toIso(row.at), "Ask for the satchel again");
                chain = {row.seq, row.hash};
                if (++rows % 64 == 0) progress.report(rows, 0, "Checking the satchel");
            }
        } catch (const IntakeStop& stop) {
            return tl::unexpected(stop.problem);
        }
        return "The satchel verifies: " + grouped(rows) + " journal rows of " + grouped(chains.size()) +
               (chains.size() == 1 ? " device, " : " devices, ") + outside + ".";
    });
}

}  // namespace arc::storage
