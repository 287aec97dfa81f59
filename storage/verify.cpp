// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/verify.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <vector>

#include "storage/batch_reader.hpp"
#include "storage/intake_parts.hpp"
#include "storage/mentions.hpp"
#include "storage/migrations.hpp"
#include "storage/open_book.hpp"

namespace arc::storage {
namespace {

/// Leaves the walk at the first difference.
struct Difference {
    std::string what;
    std::string where;
};

std::string rowName(const JournalRow& row, const std::map<Uuid, std::string>& names) {
    const auto name = names.find(row.device);
    return "journal row " + std::to_string(row.row) + " (" + toIso(row.at) + ", " +
           (name == names.end() ? "unknown device" : name->second) + ": " + showable(row.stamp.text, 80) +
           ")";
}

void checkPages(Connection& connection) {
    Query q = connection.query("PRAGMA integrity_check(1)");
    if (q.step() && q.text(0) != "ok")
        throw Difference{"a page or index of the file is damaged: " + showable(q.text(0), 200), ""};
    Query keys = connection.query("PRAGMA foreign_key_check");
    if (keys.step())
        throw Difference{"a row of the table " + std::string(keys.text(0)) + " refers to a row of " +
                             std::string(keys.text(2)) + " that is not there",
                         keys.isNull(1) ? "" : "row " + std::to_string(keys.integer(1))};
}

/// The tables and indices must be exactly those the migrations make: a missing constraint or an added trigger
/// is a change too.
void checkSchema(Connection& connection) {
    if (!hasSchemaOfLogbook(connection))
        throw Difference{"the tables of the file are not those of a logbook", "schema"};
}

struct Chain {
    std::int64_t seq = 0, tick = 0;
    Digest hash{};
};

BookVerdict walkJournal(Connection& connection, Progress& progress) {
    BookVerdict verdict;
    const auto names = deviceNames(connection);
    std::map<Uuid, Chain> chains;
    const auto total = static_cast<std::uint64_t>(connection.number("SELECT max(row) FROM journal"));
    BatchReader reader(connection, 1);
    std::int64_t expected = 0;
    while (reader.next()) {
        const JournalRow& row = reader.journal();
        const std::string where = rowName(row, names);
        if (row.row != ++expected)
            throw Difference{"journal row " + std::to_string(expected) + " is missing", "before " + where};
        Chain& chain = chains[row.device];
        if (row.seq != chain.seq + 1 || row.prev != chain.hash)
            throw Difference{
                "the row does not follow on the last one of its device: a row was removed, added or put "
                "elsewhere",
                where};
        if (row.tick <= chain.tick) throw Difference{"the counter of the device runs backwards", where};
        if (hashOf(row) != row.hash) throw Difference{"the journal row was changed", where};
        if (reader.isHeadline()) {
            ++verdict.headlines;
            if (!reader.batch().empty() || row.seq == 1)
                throw Difference{"a row that came as a headline only has content, or names a device", where};
        } else if (digestOf(reader.batch()) != row.digest)
            throw Difference{"what was written under the row was changed, removed or added to", where};
        chain = {row.seq, row.tick, row.hash};
        if (expected % 64 == 0) {
            progress.report(static_cast<std::uint64_t>(expected), total, "Checking the journal");
            if (progress.stopRequested()) throw Difference{"", ""};
        }
    }
    std::uint64_t devices = 0;
    Query q = connection.query("SELECT id, last_seq, last_tick, last_hash, name FROM device ORDER BY key");
    while (q.step()) {
        ++devices;
        const Chain chain = chains[q.uuid(0)];
        const Bytes last = q.bytes(3);
        if (q.integer(1) != chain.seq || q.integer(2) != chain.tick ||
            !std::equal(last.begin(), last.end(), chain.hash.begin(), chain.hash.end()))
            throw Difference{"the last journal rows of a device are missing, or its end was changed",
                             "device " + showable(q.text(4), 80)};
    }
    verdict.devices = devices;
    verdict.journalRows = static_cast<std::uint64_t>(expected);
    return verdict;
}

void expectNone(Connection& connection, const char* sql, const char* what) {
    Query q = connection.query(sql);
    if (q.step()) throw Difference{what, "row " + std::string(q.text(0))};
}

void expectSame(Connection& connection, const char* sql, const char* what) {
    if (connection.number(sql) != 1) throw Difference{what, ""};
}

/// What is worked out from the versions must be what is stored.
void checkDerived(Connection& connection) {
    expectNone(
        connection,
        "SELECT a.key FROM arc a JOIN journal j ON j.row = a.journal JOIN device d ON d.key = j.device "
        "WHERE a.live = (EXISTS (SELECT 1 FROM arc b JOIN journal k ON k.row = b.journal JOIN device e ON "
        "e.key = k.device WHERE b.key = a.key AND b.journal <> a.journal AND (k.tick, e.id) > (j.tick, "
        "d.id)) "
        "OR EXISTS (SELECT 1 FROM identity i JOIN record w ON w.id = i.id AND w.kind = 'withdrawal' "
        "JOIN journal k ON k.row = w.journal JOIN device e ON e.key = k.device "
        "WHERE i.key = a.key AND (k.tick, e.id) > (j.tick, d.id))) LIMIT 1",
        "a splice shows another version than its latest");
    expectNone(
        connection,
        "SELECT r.arc FROM reading r JOIN journal j ON j.row = r.journal JOIN device d ON d.key = j.device "
        "WHERE r.live = EXISTS (SELECT 1 FROM reading b JOIN journal k ON k.row = b.journal JOIN device e ON "
        "e.key = k.device WHERE b.arc = r.arc AND b.channel = r.channel AND b.journal <> r.journal AND "
        "(k.tick, e.id) > (j.tick, d.id)) LIMIT 1",
        "a reading shows another version than its latest");
    expectNone(
        connection,
        "SELECT r.row FROM record r JOIN journal j ON j.row = r.journal JOIN device d ON d.key = j.device "
        "WHERE r.live = (EXISTS (SELECT 1 FROM record b JOIN journal k ON k.row = b.journal JOIN device e ON "
        "e.key = k.device WHERE b.id = r.id AND b.kind = r.kind AND (k.tick, e.id) > (j.tick, d.id)) "
        "OR (r.kind <> 'withdrawal' AND NOT (r.kind = 'care_run' AND EXISTS (SELECT 1 FROM record c WHERE "
        "c.id = r.id AND c.kind = 'care')) AND EXISTS (SELECT 1 FROM record w JOIN journal k ON "
        "k.row = w.journal JOIN device e ON e.key = k.device WHERE w.id = r.id AND w.kind = 'withdrawal' "
        "AND (k.tick, e.id) > (j.tick, d.id)))) LIMIT 1",
        "a record shows another version than its latest");
    expectSame(
        connection,
        "SELECT (SELECT count(*) FROM total) = 1 AND "
        "(SELECT arcs FROM total) = (SELECT count(*) FROM arc WHERE live = 1) AND "
        "(SELECT readings FROM total) = (SELECT count(*) FROM arc a JOIN reading r ON r.arc = a.key AND "
        "r.live = 1 WHERE a.live = 1) AND "
        "(SELECT care FROM total) = (SELECT count(*) FROM record WHERE kind = 'care' AND live = 1)",
        "the counted totals are not what the logbook holds");
    for (const char* sql :
         {"SELECT ifnull(max(row), 0) = count(*) AND ifnull(min(row), 1) = 1 FROM record",
          "SELECT ifnull(max(row), 0) = count(*) AND ifnull(min(row), 1) = 1 FROM set_aside",
          "SELECT ifnull(max(row), 0) = count(*) AND ifnull(min(row), 1) = 1 FROM attachment",
          "SELECT ifnull(max(key), 0) = count(*) AND ifnull(min(key), 1) = 1 FROM identity",
          "SELECT ifnull(max(key), 0) = count(*) AND ifnull(min(key), 1) = 1 FROM word",
          "SELECT ifnull(max(key), 0) = count(*) AND ifnull(min(key), 1) = 1 FROM device"})
        expectSame(connection, sql, "the numbers of rows have a gap: a row was removed or moved");
}

/// Contents of attachments and of set-aside rows against their hashes; every content is somebody's.
void checkContents(Connection& connection) {
    {
        Query q = connection.query("SELECT row, sha256, bytes FROM attachment");
        while (q.step()) {
            const Digest digest = sha256(asText(q.bytes(2)));
            const Bytes said = q.bytes(1);
            if (!std::equal(said.begin(), said.end(), digest.begin(), digest.end()))
                throw Difference{"the content of an attachment was changed",
                                 "attachment " + std::to_string(q.integer(0))};
        }
    }
    expectNone(
        connection,
        "SELECT r.row FROM record r WHERE r.kind = 'attachment' AND NOT EXISTS (SELECT 1 FROM attachment a "
        "WHERE lower(hex(a.sha256)) = json_extract(r.body, '$.sha256')) LIMIT 1",
        "the content of an attachment is missing");
    expectSame(
        connection,
        "SELECT (SELECT count(*) FROM attachment) = (SELECT count(DISTINCT json_extract(body, '$.sha256')) "
        "FROM record WHERE kind = 'attachment')",
        "there is content that belongs to no attachment");
    Query q = connection.query("SELECT row, kind, line, text, sha256 FROM set_aside");
    while (q.step()) {
        const Digest digest =
            setAsideKey({std::string(q.text(1)), "", static_cast<std::uint64_t>(q.integer(2)), "", "",
                         std::string(q.text(3))});
        const Bytes said = q.bytes(4);
        if (!std::equal(said.begin(), said.end(), digest.begin(), digest.end()))
            throw Difference{"a row that was set aside was changed",
                             "set-aside row " + std::to_string(q.integer(0))};
    }
}

/// The book's own row and the names of devices against what the journal says of them.
void checkIdentity(Connection& connection) {
    if (sealOf(connection) != storedSeal(connection))
        throw Difference{"the logbook's own description was changed", "book"};
    {
        Query q = connection.query(
            "SELECT count(*) FROM book b JOIN record r ON r.kind = 'book' AND r.id = b.id AND r.at_ms = "
            "b.made_ms");
        q.step();
        if (q.integer(0) != 1)
            throw Difference{"the logbook's identity is not the one in its journal", "book"};
    }
    Query q = connection.query(
        "SELECT d.name FROM device d WHERE NOT EXISTS (SELECT 1 FROM record r WHERE r.kind = 'device' AND "
        "r.id = d.id "
        "AND json_extract(r.body, '$.name') = d.name)");
    if (q.step())
        throw Difference{"a device does not have the name it gave itself",
                         "device " + showable(q.text(0), 80)};
}

}  // namespace

std::string BookVerdict::sentence() const {
    return "The logbook verifies: " + grouped(journalRows) + " journal rows of " + grouped(devices) +
           (devices == 1 ? " device, " : " devices, ") + grouped(arcs) + " arcs, " + grouped(readings) +
           " readings; journal head " + head + "." +
           (headlines == 0 ? std::string()
                           : " Of " + grouped(headlines) +
                                 " journal rows only the headline is here: they came with satchels of one "
                                 "job.");
}

Result<BookVerdict> verifyBook(const std::filesystem::path& book, Progress& progress) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    const std::string file = book.string();
    return guarded(book, [&]() -> Result<BookVerdict> {
        Connection& connection = *open->connection;
        try {
            // One moment of the book, however long the walk takes.
            connection.execute("BEGIN");
            progress.report(0, 0, "Checking the pages");
            checkPages(connection);
            checkSchema(connection);
            BookVerdict verdict = walkJournal(connection, progress);
            checkIdentity(connection);
            checkDerived(connection);
            if (const auto wrong = firstWrongMention(connection))
                throw Difference{"what can be searched for is not what the logbook holds",
                                 *wrong == 0 ? "" : "arc " + std::to_string(*wrong)};
            checkContents(connection);
            const auto count = [&](const char* sql) {
                return static_cast<std::uint64_t>(connection.number(sql));
            };
            verdict.arcs = count("SELECT arcs FROM total");
            verdict.readings = count("SELECT readings FROM total");
            verdict.head = journalHeadOf(connection);
            return verdict;
        } catch (const Difference& difference) {
            if (difference.what.empty()) return fail(ProblemCode::Cancelled, "the check was stopped", file);
            return fail(ProblemCode::Damaged, difference.what,
                        file + (difference.where.empty() ? "" : ": " + difference.where),
                        "Take a backup that verifies, or rescue what is readable into a new logbook");
        }
    });
}

}  // namespace arc::storage
