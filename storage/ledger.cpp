// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/ledger.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <stdexcept>
#include <tuple>

#include "storage/place.hpp"

namespace arc::storage {
namespace {

/// Words are few (modes, operators); a hostile file may bring a new one in each row.
constexpr std::size_t rememberedLimit = 50'000;

Digest digestFrom(Bytes bytes) {
    Digest digest{};
    if (bytes.size() != digest.size()) throw std::runtime_error("a hash of the wrong length");
    std::copy(bytes.begin(), bytes.end(), digest.begin());
    return digest;
}

template <class Q>
std::optional<std::int64_t> plain(const std::optional<Q>& quantity) {
    if (!quantity) return std::nullopt;
    return static_cast<std::int64_t>(quantity->value);
}

std::optional<Bytes> plain(const Base& base) {
    if (!base) return std::nullopt;
    return Bytes(*base);
}

}  // namespace

Digest hashOf(const JournalRow& row) {
    Canonical c;
    c.text("arcbook journal 1").bytes(row.prev).uuid(row.device).integer(row.seq).integer(row.tick);
    c.integer(row.at.ms).integer(row.at.offsetMinutes).text(row.stamp.who).text(row.stamp.source);
    c.text(row.stamp.kind).text(row.stamp.text).maybe(row.stamp.retryKey).bytes(row.digest);
    return sha256(c.view());
}

Base halfOf(std::span<const std::uint8_t> hash) {
    Base base(std::in_place);
    if (hash.size() < base->size()) throw std::runtime_error("a hash of the wrong length");
    std::copy_n(hash.begin(), base->size(), base->begin());
    return base;
}

Ledger::Ledger(Connection& connection, Clock& clock, Random& random)
    : connection_(connection), clock_(clock), random_(random) {}

void Ledger::forget() {
    identities_.clear();
    words_.clear();
    phrases_.clear();
    arcsAdded_ = readingsAdded_ = careAdded_ = 0;
}

// --- keys
// -----------------------------------------------------------------------------------------------------

std::optional<std::int64_t> Ledger::findIdentity(const Uuid& id) {
    Query q = connection_.query("SELECT key FROM identity WHERE id = ?");
    q.with(id);
    if (!q.step()) return std::nullopt;
    return q.integer(0);
}

std::int64_t Ledger::identityKey(const Uuid& id) {
    if (const auto known = identities_.find(id); known != identities_.end()) return known->second;
    std::int64_t key = 0;
    if (const auto found = findIdentity(id)) {
        key = *found;
    } else {
        connection_.query("INSERT INTO identity(id) VALUES (?)").with(id).run();
        key = sqlite3_last_insert_rowid(connection_.database().getHandle());
    }
    if (identities_.size() < rememberedLimit) identities_.emplace(id, key);
    return key;
}

std::int64_t Ledger::keyOf(Keys& known, const std::string& text, const char* find, const char* add) {
    if (const auto it = known.find(text); it != known.end()) return it->second;
    std::int64_t key = 0;
    {
        Query q = connection_.query(find);
        q.with(text);
        if (q.step()) key = q.integer(0);
    }
    if (key == 0) {
        connection_.query(add).with(text).run();
        key = sqlite3_last_insert_rowid(connection_.database().getHandle());
    }
    if (known.size() < rememberedLimit) known.emplace(text, key);
    return key;
}

std::int64_t Ledger::wordKey(const std::string& word) {
    return keyOf(words_, word, "SELECT key FROM word WHERE text = ?", "INSERT INTO word(text) VALUES (?)");
}

// --- chain
// ----------------------------------------------------------------------------------------------------

void Ledger::begin() {
    const Uuid id = makeUuid7(clock_.now(), random_);
    const std::int64_t madeMs = clock_.now().ms;
    const Digest unsealed{};
    connection_.query("INSERT INTO book(one, id, made_ms, seal) VALUES (1, ?, ?, ?)")
        .with(id)
        .with(madeMs)
        .with(Bytes(unsealed))
        .run();
    Batch batch;
    batch.records.push_back(
        {{"book", id, std::nullopt, madeMs, nlohmann::json{{"id", toText(id)}, {"made_ms", madeMs}}.dump()},
         {}});
    writeAs(startChain(), batch, {"", "", "book", "Made this logbook", {}});
}

Ledger::Writer Ledger::startChain() {
    const Uuid id = makeUuid7(clock_.now(), random_);
    const std::string name = machineName();
    const Digest zero{};
    connection_.query("INSERT INTO device(id, name, last_seq, last_tick, last_hash) VALUES (?, ?, 0, 0, ?)")
        .with(id)
        .with(name)
        .with(Bytes(zero))
        .run();
    const std::int64_t key = sqlite3_last_insert_rowid(connection_.database().getHandle());
    const Digest place = placeOf(connection_.file());
    connection_.query("UPDATE book SET writer = ?, place = ?").with(key).with(Bytes(place)).run();
    sealBook();
    Batch batch;
    batch.records.push_back({{"device", id, std::nullopt, std::nullopt,
                              nlohmann::json{{"id", toText(id)}, {"name", name}}.dump()},
                             {}});
    writeAs({key, id, 0, zero}, batch, {"", "", "device", "First entry from " + name, {}});
    return writer();
}

Digest sealOf(Connection& connection) {
    Canonical c;
    Query q = connection.query(
        "SELECT b.id, b.made_ms, d.id, b.place FROM book b LEFT JOIN device d ON d.key = b.writer");
    if (!q.step()) throw std::runtime_error("the logbook's own row is missing");
    c.bytes(q.bytes(0)).integer(q.integer(1));
    for (const int column : {2, 3}) {
        if (q.isNull(column)) {
            c.nothing();
        } else {
            c.bytes(q.bytes(column));
        }
    }
    return sha256(c.view());
}

Digest storedSeal(Connection& connection) {
    Query q = connection.query("SELECT seal FROM book");
    if (!q.step()) throw std::runtime_error("the logbook's own row is missing");
    return digestFrom(q.bytes(0));
}

std::string journalHeadOf(Connection& connection) {
    Canonical c;
    Query ends = connection.query("SELECT id, last_hash FROM device ORDER BY id");
    while (ends.step()) c.bytes(ends.bytes(0)).bytes(ends.bytes(1));
    Query headlines = connection.query(
        "SELECT d.id, j.seq FROM headline h JOIN journal j ON j.row = h.journal JOIN device d ON d.key = "
        "j.device ORDER BY d.id, j.seq");
    while (headlines.step()) c.bytes(headlines.bytes(0)).integer(headlines.integer(1));
    return toHex(sha256(c.view()));
}

void Ledger::sealBook() {
    const Digest seal = sealOf(connection_);
    connection_.query("UPDATE book SET seal = ?").with(Bytes(seal)).run();
}

Ledger::Writer Ledger::writer() {
    const Digest here = placeOf(connection_.file());
    {
        Query q = connection_.query(
            "SELECT d.key, d.id, d.last_seq, d.last_hash, b.place FROM book b JOIN device d ON d.key = "
            "b.writer");
        if (q.step()) {
            const Bytes place = q.bytes(4);
            if (std::equal(place.begin(), place.end(), here.begin(), here.end()))
                return {q.integer(0), q.uuid(1), q.integer(2), digestFrom(q.bytes(3))};
        }
    }
    return startChain();
}

std::int64_t Ledger::write(Batch& batch, const Stamp& stamp) {
    return writeAs(writer(), batch, stamp);
}

std::int64_t Ledger::writeAs(const Writer& writer, Batch& batch, const Stamp& stamp) {
    JournalRow row;
    row.device = writer.id;
    row.seq = writer.seq + 1;
    row.at = clock_.now();
    row.tick = std::max(row.at.ms, connection_.number("SELECT max(last_tick) FROM device") + 1);
    row.stamp = stamp;
    row.prev = writer.hash;
    row.digest = digestOf(batch);
    row.hash = hashOf(row);
    insertJournal(row, writer.key);
    const std::int64_t number = sqlite3_last_insert_rowid(connection_.database().getHandle());
    insertRows(batch, number);
    addTotals();
    return number;
}

std::int64_t Ledger::insertForeign(const JournalRow& foreign, const std::string& deviceName) {
    connection_
        .query(
            "INSERT INTO device(id, name, last_seq, last_tick, last_hash) VALUES (?, ?, 0, 0, zeroblob(32)) "
            "ON CONFLICT(id) DO NOTHING")
        .with(foreign.device)
        .with(deviceName)
        .run();
    std::int64_t key = 0;
    {
        Query q = connection_.query("SELECT key FROM device WHERE id = ?");
        q.with(foreign.device).step();
        key = q.integer(0);
    }
    insertJournal(foreign, key);
    return sqlite3_last_insert_rowid(connection_.database().getHandle());
}

std::int64_t Ledger::take(const JournalRow& foreign, Batch& batch, const std::string& deviceName) {
    const std::int64_t number = insertForeign(foreign, deviceName);
    insertRows(batch, number);
    addTotals();
    return number;
}

std::int64_t Ledger::takeHeadline(const JournalRow& foreign, const std::string& deviceName) {
    const std::int64_t number = insertForeign(foreign, deviceName);
    connection_.query("INSERT INTO headline(journal) VALUES (?)").with(number).run();
    return number;
}

void Ledger::fillIn(std::int64_t journal, Batch& batch) {
    connection_.query("DELETE FROM headline WHERE journal = ?").with(journal).run();
    insertRows(batch, journal);
    addTotals();
}

void Ledger::insertJournal(const JournalRow& row, std::int64_t deviceKey) {
    connection_
        .query(
            "INSERT INTO journal(device, seq, tick, at_ms, offset_min, who, source, kind, text, retry_key, "
            "digest, prev, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .with(deviceKey)
        .with(row.seq)
        .with(row.tick)
        .with(row.at.ms)
        .with(static_cast<int>(row.at.offsetMinutes))
        .with(row.stamp.who)
        .with(row.stamp.source)
        .with(row.stamp.kind)
        .with(row.stamp.text)
        .with(row.stamp.retryKey)
        .with(Bytes(row.digest))
        .with(Bytes(row.prev))
        .with(Bytes(row.hash))
        .run();
    const std::int64_t number = sqlite3_last_insert_rowid(connection_.database().getHandle());
    connection_.query("UPDATE device SET last_seq = ?, last_tick = ?, last_hash = ? WHERE key = ?")
        .with(row.seq)
        .with(row.tick)
        .with(Bytes(row.hash))
        .with(deviceKey)
        .run();
    sqlite3_set_last_insert_rowid(connection_.database().getHandle(), number);
}

// --- rows
// -----------------------------------------------------------------------------------------------------

void Ledger::insertRows(const Batch& batch, std::int64_t journal) {
    // Phrases go again, unlike words; another connection may have removed some.
    if (const auto others = connection_.number("PRAGMA data_version"); others != othersWrote_) {
        phrases_.clear();
        othersWrote_ = others;
    }
    std::set<std::pair<std::string, Uuid>> changed;
    std::set<Uuid> withdrawn;
    for (const auto& version : batch.records) {
        connection_
            .query(
                "INSERT INTO record(journal, kind, id, subject, at_ms, body, base, live) "
                "VALUES (?, ?, ?, ?, ?, ?, ?, 0)")
            .with(journal)
            .with(version.row.kind)
            .with(version.row.id)
            .with(version.row.subject)
            .with(version.row.atMs)
            .with(version.row.body)
            .with(plain(version.base))
            .run();
        changed.emplace(version.row.kind, version.row.id);
        if (version.row.kind == "withdrawal") withdrawn.insert(version.row.id);
        // A finished run and its care record share an identity: which of them a withdrawal takes back depends
        // on both.
        if (version.row.kind == "care") changed.emplace("care_run", version.row.id);
    }
    insertSplices(batch, journal);
    for (const auto& row : batch.setAside) insertSetAside(row, journal);
    for (const Uuid& id : withdrawn) {
        Query q = connection_.query("SELECT DISTINCT kind FROM record WHERE id = ?");
        q.with(id);
        while (q.step()) changed.emplace(std::string(q.text(0)), id);
    }
    for (const auto& [kind, id] : changed) showLatestRecord(kind, id);
    for (const Uuid& id : withdrawn) {
        const auto key = findIdentity(id);
        if (!key) continue;
        const KnownArc arc{id, *key};
        dropMentions(arc);
        showLatestArc(id);
        addMentions(arc);
    }
}

/// Both lists are sorted by arc: each arc is followed by its readings.
void Ledger::insertSplices(const Batch& batch, std::int64_t journal) {
    auto reading = batch.readings.begin();
    ArcWords words;
    const auto readingsOf = [&](const KnownArc& arc) {
        words.clear();
        for (; reading != batch.readings.end() && reading->arc == arc.id; ++reading) {
            insertReading(*reading, journal, arc);
            const Reading& r = reading->reading;
            words.add(r.fibreA, r.fibreB, r.note, r.loss, r.state);
        }
    };
    const auto readingsBefore = [&](const Uuid* limit) {
        while (reading != batch.readings.end() && (limit == nullptr || reading->arc < *limit)) {
            const KnownArc arc = findArc(reading->arc);
            dropMentions(arc);
            readingsOf(arc);
            addMentions(arc);
        }
    };
    const auto withdrawals =
        connection_.number("SELECT EXISTS (SELECT 1 FROM record WHERE kind = 'withdrawal' AND live = 1)") != 0
            ? Withdrawals::Some
            : Withdrawals::None;
    for (const auto& version : batch.arcs) {
        readingsBefore(&version.arc.id.uuid);
        const Uuid& id = version.arc.id.uuid;
        const KnownArc arc = batch.novelty == Novelty::AllArcsNew ? newArc(id) : findArc(id);
        const bool fresh = arc.readings == Readings::None;
        if (!fresh) dropMentions(arc);
        const KnownArc written = insertArc(version, journal, arc, withdrawals);
        readingsOf(written);
        if (!fresh) {
            addMentions(arc);
        } else if (written.shows == Shows::Yes) {
            mention(version.arc.at.ms, written.key, words);
        }
    }
    readingsBefore(nullptr);
}

Ledger::KnownArc Ledger::findArc(const Uuid& id) {
    KnownArc arc{id, 0, Shows::No, Readings::Perhaps};
    if (const auto found = findIdentity(id)) {
        arc.key = *found;
        Query q = connection_.query("SELECT 1 FROM arc WHERE key = ? AND live = 1");
        if (q.with(arc.key).step()) arc.shows = Shows::Yes;
        return arc;
    }
    return newArc(id);
}

Ledger::KnownArc Ledger::newArc(const Uuid& id) {
    connection_.query("INSERT INTO identity(id) VALUES (?)").with(id).run();
    return {id, sqlite3_last_insert_rowid(connection_.database().getHandle()), Shows::No, Readings::None};
}

Ledger::KnownArc Ledger::insertArc(const ArcVersion& version, std::int64_t journal, KnownArc arc,
                                   Withdrawals withdrawals) {
    const SpliceArc& a = version.arc;
    const auto key = [this](const auto& id) -> std::optional<std::int64_t> {
        if (!id) return std::nullopt;
        return identityKey(id->uuid);
    };
    const bool fresh = arc.readings == Readings::None;
    if (fresh) {
        // A withdrawal may have come before the arc, from another laptop.
        arc.shows = Shows::Yes;
        if (withdrawals == Withdrawals::Some) {
            Query q = connection_.query("SELECT 1 FROM record WHERE id = ? AND kind = 'withdrawal'");
            if (q.with(arc.id).step()) arc.shows = Shows::No;
        }
    }
    connection_
        .query(
            "INSERT INTO arc(key, journal, live, at_ms, offset_min, splicer, cleaver, job, closure, mode, "
            "channels, counter_arcs, temp_mk, humidity_permille, pressure_pa, operator, origin, base) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .with(arc.key)
        .with(journal)
        .with(fresh && arc.shows == Shows::Yes ? 1 : 0)
        .with(a.at.ms)
        .with(static_cast<int>(a.at.offsetMinutes))
        .with(identityKey(a.splicer.uuid))
        .with(key(a.cleaver))
        .with(key(a.job))
        .with(key(a.closure))
        .with(wordKey(a.mode))
        .with(a.channels)
        .with(plain(a.counter))
        .with(plain(a.ambient.temperature))
        .with(plain(a.ambient.humidity))
        .with(plain(a.ambient.pressure))
        .with(wordKey(a.operatorName))
        .with(static_cast<int>(a.origin))
        .with(plain(version.base))
        .run();
    if (fresh && arc.shows == Shows::Yes) {
        ++arcsAdded_;
        return arc;
    }
    showLatestArc(arc.id);
    Query q = connection_.query("SELECT 1 FROM arc WHERE key = ? AND live = 1");
    arc.shows = q.with(arc.key).step() ? Shows::Yes : Shows::No;
    return arc;
}

void Ledger::insertReading(const ReadingVersion& version, std::int64_t journal, const KnownArc& arc) {
    const Reading& r = version.reading;
    const bool fresh = arc.readings == Readings::None;
    connection_
        .query(
            "INSERT INTO reading(arc, channel, journal, live, loss_mdb, cleave_left_cdeg, cleave_right_cdeg, "
            "fibre_a, fibre_b, attempt, state, note, base) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
        .with(arc.key)
        .with(r.channel)
        .with(journal)
        .with(fresh ? 1 : 0)
        .with(static_cast<std::int64_t>(r.loss.value))
        .with(plain(r.cleaveLeft))
        .with(plain(r.cleaveRight))
        .with(r.fibreA)
        .with(r.fibreB)
        .with(r.attempt)
        .with(static_cast<int>(r.state))
        .with(r.note)
        .with(plain(version.base))
        .run();
    if (!fresh) {
        showLatestReading(arc, r.channel);
    } else if (arc.shows == Shows::Yes) {
        ++readingsAdded_;
    }
}

std::int64_t Ledger::phraseKey(const std::string& text) {
    return keyOf(phrases_, text, "SELECT key FROM phrase WHERE text = ?",
                 "INSERT INTO phrase(text) VALUES (?)");
}

void Ledger::mention(std::int64_t atMs, std::int64_t arcKey, const ArcWords& words) {
    words.each([&](const std::string& text) {
        connection_.query("INSERT INTO mention(phrase, at_ms, arc) VALUES (?, ?, ?)")
            .with(phraseKey(text))
            .with(atMs)
            .with(arcKey)
            .run();
    });
}

void Ledger::dropMentions(const KnownArc& arc) {
    const auto shown = shownWords(connection_, arc.key);
    if (!shown) return;
    shown->words.each([&](const std::string& text) {
        const std::int64_t phrase = phraseKey(text);
        connection_.query("DELETE FROM mention WHERE phrase = ? AND at_ms = ? AND arc = ?")
            .with(phrase)
            .with(shown->atMs)
            .with(arc.key)
            .run();
        connection_
            .query(
                "DELETE FROM phrase WHERE key = ?1 AND NOT EXISTS (SELECT 1 FROM mention WHERE phrase = ?1)")
            .with(phrase)
            .run();
        phrases_.erase(text);
    });
}

void Ledger::addMentions(const KnownArc& arc) {
    if (const auto shown = shownWords(connection_, arc.key)) mention(shown->atMs, arc.key, shown->words);
}

void Ledger::insertSetAside(const SetAsideVersion& row, std::int64_t journal) {
    const Digest key = setAsideKey(row);
    connection_
        .query(
            "INSERT INTO set_aside(journal, kind, file, line, column_name, reason, text, sha256) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?)")
        .with(journal)
        .with(row.kind)
        .with(row.file)
        .with(row.line)
        .with(row.column)
        .with(row.reason)
        .with(row.text)
        .with(Bytes(key))
        .run();
}

void Ledger::storeContent(std::string_view bytes) {
    const Digest hash = sha256(bytes);
    connection_.query("INSERT INTO attachment(sha256, bytes) VALUES (?, ?) ON CONFLICT(sha256) DO NOTHING")
        .with(Bytes(hash))
        .with(Bytes(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()))
        .run();
}

// --- which version shows
// --------------------------------------------------------------------------------------

namespace {

/// Place of a version in the order of all edits, the same on every laptop.
struct Order {
    std::int64_t tick = 0;
    Uuid device;
    std::int64_t key = 0;  ///< row or journal number of the version
    [[nodiscard]] bool before(const Order& other) const {
        return std::tie(tick, device) < std::tie(other.tick, other.device);
    }
};

std::optional<Order> firstOrder(Query q) {
    if (!q.step()) return std::nullopt;
    return Order{q.integer(0), q.uuid(1), q.integer(2)};
}

std::optional<Order> latestRecord(Connection& connection, std::string_view kind, const Uuid& id) {
    Query q = connection.query(
        "SELECT j.tick, d.id, r.row FROM record r JOIN journal j ON j.row = r.journal "
        "JOIN device d ON d.key = j.device WHERE r.id = ? AND r.kind = ? ORDER BY j.tick DESC, d.id DESC "
        "LIMIT 1");
    q.with(id).with(kind);
    return firstOrder(std::move(q));
}

bool takenBack(Connection& connection, const Uuid& id, const Order& latest) {
    const auto withdrawal = latestRecord(connection, "withdrawal", id);
    return withdrawal && latest.before(*withdrawal);
}

}  // namespace

void Ledger::showLatestRecord(const std::string& kind, const Uuid& id) {
    const auto latest = latestRecord(connection_, kind, id);
    if (!latest) return;
    bool shows = kind == "withdrawal" || !takenBack(connection_, id, *latest);
    if (kind == "care_run" && latestRecord(connection_, "care", id)) shows = true;
    const auto liveCount = [&] {
        Query q = connection_.query("SELECT count(*) FROM record WHERE id = ? AND kind = ? AND live = 1");
        q.with(id).with(kind).step();
        return q.integer(0);
    };
    const std::int64_t before = liveCount();
    connection_.query("UPDATE record SET live = (row = ? AND ?) WHERE id = ? AND kind = ?")
        .with(latest->key)
        .with(shows ? 1 : 0)
        .with(id)
        .with(kind)
        .run();
    if (kind == "care") careAdded_ += liveCount() - before;
}

void Ledger::showLatestArc(const Uuid& id) {
    const auto key = findIdentity(id);
    if (!key) return;
    std::optional<Order> latest;
    {
        Query q = connection_.query(
            "SELECT j.tick, d.id, a.journal FROM arc a JOIN journal j ON j.row = a.journal "
            "JOIN device d ON d.key = j.device WHERE a.key = ? ORDER BY j.tick DESC, d.id DESC LIMIT 1");
        q.with(*key);
        latest = firstOrder(std::move(q));
    }
    if (!latest) return;
    const bool shows = !takenBack(connection_, id, *latest);
    const auto count = [&](const char* sql) {
        Query q = connection_.query(sql);
        q.with(*key).step();
        return q.integer(0);
    };
    const bool showed = count("SELECT count(*) FROM arc WHERE key = ? AND live = 1") > 0;
    connection_.query("UPDATE arc SET live = (journal = ? AND ?) WHERE key = ?")
        .with(latest->key)
        .with(shows ? 1 : 0)
        .with(*key)
        .run();
    if (shows == showed) return;
    const std::int64_t readings = count("SELECT count(*) FROM reading WHERE arc = ? AND live = 1");
    arcsAdded_ += shows ? 1 : -1;
    readingsAdded_ += shows ? readings : -readings;
}

void Ledger::showLatestReading(const KnownArc& arc, int channel) {
    std::optional<Order> latest;
    {
        Query q = connection_.query(
            "SELECT j.tick, d.id, r.journal FROM reading r JOIN journal j ON j.row = r.journal "
            "JOIN device d ON d.key = j.device WHERE r.arc = ? AND r.channel = ? "
            "ORDER BY j.tick DESC, d.id DESC LIMIT 1");
        q.with(arc.key).with(channel);
        latest = firstOrder(std::move(q));
    }
    if (!latest) return;
    Query q = connection_.query("SELECT count(*) FROM reading WHERE arc = ? AND channel = ? AND live = 1");
    q.with(arc.key).with(channel).step();
    if (q.integer(0) == 0 && arc.shows == Shows::Yes) ++readingsAdded_;
    connection_.query("UPDATE reading SET live = (journal = ?) WHERE arc = ? AND channel = ?")
        .with(latest->key)
        .with(arc.key)
        .with(channel)
        .run();
}

void Ledger::addTotals() {
    connection_.query("UPDATE total SET arcs = arcs + ?, readings = readings + ?, care = care + ?")
        .with(arcsAdded_)
        .with(readingsAdded_)
        .with(careAdded_)
        .run();
    arcsAdded_ = readingsAdded_ = careAdded_ = 0;
}

}  // namespace arc::storage
