// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/versions.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <tuple>

#include "storage/splice_rows.hpp"

namespace arc::storage {
namespace {

using Json = nlohmann::ordered_json;

constexpr const char* journalColumns =
    "d.id, j.seq, j.tick, j.hash, j.at_ms, j.offset_min, j.who, j.source, j.kind, j.text, d.name";
constexpr int journalColumnCount = 11;
constexpr const char* journalJoins = " JOIN device d ON d.key = j.device ";

Version versionFrom(const Query& q, int baseColumn) {
    Version v;
    v.device = q.uuid(0);
    v.seq = q.integer(1);
    v.tick = q.integer(2);
    const Bytes hash = q.bytes(3);
    std::copy_n(hash.begin(), std::min(hash.size(), v.hash.size()), v.hash.begin());
    v.at = {q.integer(4), static_cast<std::int16_t>(q.integer(5))};
    v.stamp = {
        std::string(q.text(6)), std::string(q.text(7)), std::string(q.text(8)), std::string(q.text(9)), {}};
    v.deviceName = q.text(10);
    if (!q.isNull(baseColumn)) v.bases.push_back(halfOf(q.bytes(baseColumn)));
    return v;
}

void readRecords(Connection& connection, const Uuid& id, std::vector<Version>& versions) {
    static const std::string sql = std::string("SELECT ") + journalColumns +
                                   ", r.base, r.kind, r.id, r.subject, r.at_ms, r.body FROM record r JOIN "
                                   "journal j ON j.row = r.journal" +
                                   journalJoins + "WHERE r.id = ? AND r.kind NOT IN ('book', 'device')";
    Query q = connection.query(sql);
    q.with(id);
    while (q.step()) {
        Version v = versionFrom(q, journalColumnCount);
        RecordRow row;
        row.kind = q.text(journalColumnCount + 1);
        row.id = q.uuid(journalColumnCount + 2);
        if (!q.isNull(journalColumnCount + 3)) row.subject = q.uuid(journalColumnCount + 3);
        row.atMs = q.maybeInteger(journalColumnCount + 4);
        row.body = q.text(journalColumnCount + 5);
        v.what = std::move(row);
        versions.push_back(std::move(v));
    }
}

void readArc(Connection& connection, const Uuid& id, std::vector<Version>& versions) {
    static const std::string arcSql = std::string("SELECT ") + journalColumns + ", a.base, " + arcColumns() +
                                      " FROM arc a JOIN journal j ON j.row = a.journal" + journalJoins +
                                      arcJoins() + "WHERE a.key = (SELECT key FROM identity WHERE id = ?)";
    static const std::string readingSql =
        std::string("SELECT ") + journalColumns + ", r.base, " + readingColumns() +
        " FROM reading r JOIN journal j ON j.row = r.journal" + journalJoins +
        "WHERE r.arc = (SELECT key FROM identity WHERE id = ?) ORDER BY r.channel";
    {
        Query q = connection.query(arcSql);
        q.with(id);
        while (q.step()) {
            Version v = versionFrom(q, journalColumnCount);
            v.what = arcFrom(q, journalColumnCount + 1);
            versions.push_back(std::move(v));
        }
    }
    Query q = connection.query(readingSql);
    q.with(id);
    while (q.step()) {
        Version v = versionFrom(q, journalColumnCount);
        v.what = readingFrom(q, journalColumnCount + 1);
        versions.push_back(std::move(v));
    }
}

/// What each entry that touched the record knew, from the earliest on.
void tellKnowledge(std::vector<Version>& versions) {
    std::map<Base::value_type, const std::map<Uuid, std::int64_t>*> byHash;
    std::map<Uuid, const std::map<Uuid, std::int64_t>*> byDevice;
    const auto learn = [](std::map<Uuid, std::int64_t>& known, const std::map<Uuid, std::int64_t>& more) {
        for (const auto& [device, seq] : more) known[device] = std::max(known[device], seq);
    };
    for (std::size_t from = 0; from < versions.size();) {
        std::size_t to = from;
        std::map<Uuid, std::int64_t> known{{versions[from].device, versions[from].seq}};
        for (; to < versions.size() && versions[to].hash == versions[from].hash; ++to)
            for (const Base& base : versions[to].bases)
                if (const auto parent = byHash.find(*base); parent != byHash.end())
                    learn(known, *parent->second);
        if (const auto before = byDevice.find(versions[from].device); before != byDevice.end())
            learn(known, *before->second);
        for (std::size_t i = from; i < to; ++i) versions[i].known = known;
        byHash[*versions[from].base()] = &versions[from].known;
        byDevice[versions[from].device] = &versions[from].known;
        from = to;
    }
}

}  // namespace

bool Version::knew(const Version& other) const {
    const auto last = known.find(other.device);
    return last != known.end() && last->second >= other.seq;
}

bool Version::isWithdrawal() const {
    const auto* const record = std::get_if<RecordRow>(&what);
    return record != nullptr && record->kind == "withdrawal";
}

std::string Version::kind() const {
    if (const auto* const record = std::get_if<RecordRow>(&what)) return record->kind;
    return std::holds_alternative<SpliceArc>(what) ? "arc" : "reading";
}

std::optional<int> Version::channel() const {
    const auto* const reading = std::get_if<Reading>(&what);
    return reading == nullptr ? std::nullopt : std::optional(reading->channel);
}

std::string Version::content() const {
    const auto maybe = [](Json& json, const char* name, const auto& quantity) {
        if (quantity) json[name] = quantity->value;
    };
    Json json;
    if (const auto* const record = std::get_if<RecordRow>(&what)) return record->body;
    if (const auto* const a = std::get_if<SpliceArc>(&what)) {
        const auto maybeId = [&json](const char* name, const auto& id) {
            if (id) json[name] = toText(id->uuid);
        };
        json = {{"at", toIso(a->at)}, {"splicer", toText(a->splicer.uuid)}, {"mode", a->mode}};
        maybeId("cleaver", a->cleaver);
        maybeId("job", a->job);
        maybeId("closure", a->closure);
        json["channels"] = a->channels;
        json["operator"] = a->operatorName;
        maybe(json, "counter_arcs", a->counter);
        maybe(json, "temperature_mk", a->ambient.temperature);
        maybe(json, "humidity_permille", a->ambient.humidity);
        maybe(json, "pressure_pa", a->ambient.pressure);
    } else if (const auto* const r = std::get_if<Reading>(&what)) {
        json = {{"loss_mdb", r->loss.value}, {"fibre_a", r->fibreA}, {"fibre_b", r->fibreB}};
        maybe(json, "cleave_left_cdeg", r->cleaveLeft);
        maybe(json, "cleave_right_cdeg", r->cleaveRight);
        json["attempt"] = r->attempt;
        json["void"] = r->state != ReadingState{};
        json["note"] = r->note;
    }
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::vector<Version> versionsOf(Connection& connection, const Uuid& id) {
    std::vector<Version> versions;
    readRecords(connection, id, versions);
    readArc(connection, id, versions);
    std::stable_sort(versions.begin(), versions.end(), [](const Version& a, const Version& b) {
        return std::tie(a.tick, a.device, a.seq) < std::tie(b.tick, b.device, b.seq);
    });
    tellKnowledge(versions);
    return versions;
}

}  // namespace arc::storage
