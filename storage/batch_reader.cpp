// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/batch_reader.hpp"

#include <algorithm>
#include <stdexcept>

#include "storage/splice_rows.hpp"

namespace arc::storage {
namespace {

Digest digestFrom(Bytes bytes) {
    Digest digest{};
    if (bytes.size() != digest.size()) throw std::runtime_error("a hash of the wrong length");
    std::copy(bytes.begin(), bytes.end(), digest.begin());
    return digest;
}

Base baseFrom(const Query& q, int column) {
    if (q.isNull(column)) return std::nullopt;
    return halfOf(q.bytes(column));
}

}  // namespace

BatchReader::BatchReader(Connection& connection, Splices) : connection_(connection), row_(0) {
    // A temporary table is not the book; the connection itself may still be open for reading only.
    connection_.execute("PRAGMA query_only = OFF");
    connection_.execute("DROP TABLE IF EXISTS temp.by_journal");
    connection_.execute(
        "CREATE TEMP TABLE by_journal(journal INTEGER, key INTEGER, PRIMARY KEY (journal, key)) WITHOUT "
        "ROWID");
}

BatchReader::BatchReader(Connection& connection, std::int64_t fromRow)
    : BatchReader(connection, Splices::Given) {
    headlines_ = headlinesOf(connection);
    row_ = fromRow - 1;
    connection_.query("INSERT OR IGNORE INTO temp.by_journal SELECT journal, key FROM arc WHERE journal >= ?")
        .with(fromRow)
        .run();
    connection_
        .query("INSERT OR IGNORE INTO temp.by_journal SELECT journal, arc FROM reading WHERE journal >= ?")
        .with(fromRow)
        .run();
}

BatchReader::BatchReader(Connection& connection, const std::set<std::int64_t>& rows)
    : BatchReader(connection, Splices::Given) {
    headlines_ = headlinesOf(connection);
    connection_.execute("DROP TABLE IF EXISTS temp.wanted");
    connection_.execute("CREATE TEMP TABLE wanted(journal INTEGER PRIMARY KEY)");
    for (const auto row : rows) connection_.query("INSERT INTO temp.wanted VALUES (?)").with(row).run();
    for (const char* sql :
         {"INSERT OR IGNORE INTO temp.by_journal SELECT journal, key FROM arc WHERE journal IN temp.wanted",
          "INSERT OR IGNORE INTO temp.by_journal SELECT journal, arc FROM reading WHERE journal IN "
          "temp.wanted"})
        connection_.query(sql).run();
}

void BatchReader::giveSplice(std::int64_t journal, std::int64_t key) {
    connection_.query("INSERT OR IGNORE INTO temp.by_journal VALUES (?, ?)").with(journal).with(key).run();
}

namespace {

constexpr const char* journalAfter =
    "SELECT j.row, d.id, j.seq, j.tick, j.at_ms, j.offset_min, j.who, j.source, j.kind, j.text, j.retry_key, "
    "j.digest, j.prev, j.hash FROM journal j JOIN device d ON d.key = j.device WHERE j.row > ? "
    "ORDER BY j.row LIMIT 1";
constexpr const char* journalAt =
    "SELECT j.row, d.id, j.seq, j.tick, j.at_ms, j.offset_min, j.who, j.source, j.kind, j.text, j.retry_key, "
    "j.digest, j.prev, j.hash FROM journal j JOIN device d ON d.key = j.device WHERE j.row = ?";

}  // namespace

bool BatchReader::readJournal(const char* sql) {
    Query q = connection_.query(sql);
    if (!q.with(row_).step()) return false;
    row_ = q.integer(0);
    journal_ = JournalRow{};
    journal_.row = row_;
    journal_.device = q.uuid(1);
    journal_.seq = q.integer(2);
    journal_.tick = q.integer(3);
    journal_.at = {q.integer(4), static_cast<std::int16_t>(q.integer(5))};
    journal_.stamp.who = q.text(6);
    journal_.stamp.source = q.text(7);
    journal_.stamp.kind = q.text(8);
    journal_.stamp.text = q.text(9);
    if (!q.isNull(10)) journal_.stamp.retryKey = q.uuid(10);
    journal_.digest = digestFrom(q.bytes(11));
    journal_.prev = digestFrom(q.bytes(12));
    journal_.hash = digestFrom(q.bytes(13));
    return true;
}

bool BatchReader::next() {
    if (!nextHeadline()) return false;
    readRows();
    return true;
}

bool BatchReader::nextHeadline() {
    batch_.clear();
    return readJournal(journalAfter);
}

void BatchReader::readRows() {
    readRecords();
    readSplices();
    readSetAside();
}

BatchReader::Extent BatchReader::tryRow(std::int64_t row) {
    row_ = row;
    batch_.clear();
    try {
        if (!readJournal(journalAt)) return Extent::Nothing;
    } catch (const std::exception&) {
        return Extent::Nothing;
    }
    Extent extent = Extent::Whole;
    for (const auto part :
         {&BatchReader::readRecords, &BatchReader::readSplices, &BatchReader::readSetAside}) {
        try {
            (this->*part)();
        } catch (const std::exception&) {
            extent = Extent::Part;
        }
    }
    return extent;
}

void BatchReader::readRecords() {
    Query q = connection_.query("SELECT kind, id, subject, at_ms, body, base FROM record WHERE journal = ?");
    q.with(row_);
    while (q.step()) {
        RecordVersion version;
        version.row.kind = q.text(0);
        version.row.id = q.uuid(1);
        if (!q.isNull(2)) version.row.subject = q.uuid(2);
        version.row.atMs = q.maybeInteger(3);
        version.row.body = q.text(4);
        version.base = baseFrom(q, 5);
        batch_.records.push_back(std::move(version));
    }
}

void BatchReader::readSplices() {
    static const std::string arcSql =
        "SELECT " + arcColumns() + ", a.base FROM arc a" + arcJoins() + "WHERE a.key = ? AND a.journal = ?";
    static const std::string readingSql = "SELECT " + readingColumns() +
                                          ", r.base, i.id FROM reading r JOIN identity i ON i.key = r.arc "
                                          "WHERE r.arc = ? AND r.journal = ?";
    Query keys = connection_.query("SELECT key FROM temp.by_journal WHERE journal = ?");
    keys.with(row_);
    while (keys.step()) {
        const std::int64_t key = keys.integer(0);
        Query q = connection_.query(arcSql);
        if (q.with(key).with(row_).step()) batch_.arcs.push_back({arcFrom(q), baseFrom(q, arcColumnCount)});
        Query r = connection_.query(readingSql);
        r.with(key).with(row_);
        while (r.step())
            batch_.readings.push_back(
                {r.uuid(readingColumnCount + 1), readingFrom(r, 0), baseFrom(r, readingColumnCount)});
    }
}

void BatchReader::readSetAside() {
    Query q = connection_.query(
        "SELECT kind, file, line, column_name, reason, text FROM set_aside WHERE journal = ? ORDER BY row");
    q.with(row_);
    while (q.step())
        batch_.setAside.push_back({std::string(q.text(0)), std::string(q.text(1)),
                                   static_cast<std::uint64_t>(q.integer(2)), std::string(q.text(3)),
                                   std::string(q.text(4)), std::string(q.text(5))});
}

std::set<std::int64_t> headlinesOf(Connection& connection) {
    std::set<std::int64_t> rows;
    Query q = connection.query("SELECT journal FROM headline");
    while (q.step()) rows.insert(q.integer(0));
    return rows;
}

std::map<Uuid, std::string> deviceNames(Connection& connection) {
    std::map<Uuid, std::string> names;
    Query q = connection.query("SELECT id, name FROM device");
    while (q.step()) names.emplace(q.uuid(0), std::string(q.text(1)));
    return names;
}

}  // namespace arc::storage
