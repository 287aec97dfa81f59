// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/conflicts.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

#include "storage/canonical.hpp"
#include "storage/open_book.hpp"
#include "storage/versions.hpp"

namespace arc::storage {
namespace {

using Json = nlohmann::ordered_json;
using Group = std::vector<const Version*>;

bool saysTheSame(const Version& a, const Version& b) {
    if (a.isWithdrawal() || b.isWithdrawal()) return a.isWithdrawal() && b.isWithdrawal();
    return a.kind() == b.kind() && a.channel() == b.channel() && a.content() == b.content();
}

/// Versions of a group that no other one knew.
Group tipsOf(const Group& group) {
    Group tips;
    for (const Version* v : group) {
        const bool known = std::any_of(group.begin(), group.end(), [v](const Version* other) {
            return other->hash != v->hash && other->knew(*v);
        });
        if (!known) tips.push_back(v);
    }
    return tips;
}

/// Of versions that say the same the latest stands for all; what shows comes last.
Group apart(const Group& tips, const Version* showing) {
    Group list;
    for (auto v = tips.rbegin(); v != tips.rend(); ++v) {
        const bool said = saysTheSame(**v, *showing) ||
                          std::any_of(list.begin(), list.end(),
                                      [v](const Version* other) { return saysTheSame(**v, *other); });
        if (!said) list.push_back(*v);
    }
    std::reverse(list.begin(), list.end());
    list.push_back(showing);
    return list;
}

struct Clash {
    std::string kind;
    std::optional<int> channel;
    Group tips;   ///< all of them: settling has to write on top of each
    Group edits;  ///< what a person chooses between; the last one shows
};

void addIfApart(std::vector<Clash>& clashes, std::string kind, std::optional<int> channel, const Group& tips,
                const Version* showing) {
    Group edits = apart(tips, showing);
    if (edits.size() > 1) clashes.push_back({std::move(kind), channel, tips, std::move(edits)});
}

/// A reading that was corrected here while the arc was taken back there is an edit nobody sees: it belongs to
/// the arc's matter. Corrections of a reading alone are the reading's matter.
Group arcTips(const Group& arcs, const std::vector<Version>& versions) {
    Group all = arcs;
    for (const Version& v : versions)
        if (v.kind() == "reading" && !v.bases.empty()) all.push_back(&v);
    Group tips = tipsOf(all);
    const bool takenBack =
        std::any_of(tips.begin(), tips.end(), [](const Version* v) { return v->isWithdrawal(); });
    return takenBack ? tips : tipsOf(arcs);
}

std::vector<Clash> clashesOf(const std::vector<Version>& versions) {
    std::set<std::string> present;
    for (const Version& v : versions)
        if (!v.isWithdrawal() && !v.channel()) present.insert(v.kind());
    std::map<std::string, Group> kinds;
    std::map<int, Group> channels;
    for (const Version& v : versions) {
        if (const auto channel = v.channel()) {
            channels[*channel].push_back(&v);
        } else if (!v.isWithdrawal()) {
            kinds[v.kind()].push_back(&v);
        } else {
            // Of a finished run the care record is taken back, not the run.
            for (const auto& kind : present)
                if (kind != "care_run" || !present.contains("care")) kinds[kind].push_back(&v);
        }
    }
    std::vector<Clash> clashes;
    for (const auto& [kind, group] : kinds)
        addIfApart(clashes, kind, std::nullopt, kind == "arc" ? arcTips(group, versions) : tipsOf(group),
                   group.back());
    for (const auto& [channel, group] : channels)
        addIfApart(clashes, "reading", channel, tipsOf(group), group.back());
    return clashes;
}

void flatten(const Json& json, const std::string& name, std::map<std::string, std::string>& fields) {
    if (json.is_object()) {
        for (const auto& [key, value] : json.items())
            flatten(value, name.empty() ? key : name + " " + key, fields);
    } else if (json.is_array()) {
        std::size_t i = 0;
        for (const auto& value : json) flatten(value, name + " " + std::to_string(++i), fields);
    } else {
        fields[name] = json.is_string() ? json.get<std::string>()
                                        : json.dump(-1, ' ', false, Json::error_handler_t::replace);
    }
}

std::map<std::string, std::string> fieldsOf(const Version& version) {
    std::map<std::string, std::string> fields;
    const Json json = Json::parse(version.content(), nullptr, false);
    if (!json.is_discarded()) flatten(json, "", fields);
    return fields;
}

/// Only what differs between the edits, "nickname: old faithful".
std::vector<std::string> contentsOf(const Group& edits) {
    std::vector<std::map<std::string, std::string>> all;
    for (const Version* v : edits)
        all.push_back(v->isWithdrawal() ? std::map<std::string, std::string>() : fieldsOf(*v));
    std::set<std::string> names;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (const auto& [name, value] : all[i])
            for (std::size_t k = 0; k < all.size(); ++k) {
                if (edits[k]->isWithdrawal() || edits[k]->kind() != edits[i]->kind()) continue;
                const auto other = all[k].find(name);
                if (other == all[k].end() || other->second != value) names.insert(name);
            }
    std::vector<std::string> contents;
    for (std::size_t i = 0; i < all.size(); ++i) {
        std::string text = edits[i]->isWithdrawal() ? "taken back" : "";
        for (const auto& [name, value] : all[i])
            if (names.contains(name)) text += (text.empty() ? "" : "; ") + name + ": " + value;
        contents.push_back(text);
    }
    return contents;
}

std::string keyOf(const Version& v) {
    const Base half = v.base();
    const auto channel = v.channel();
    return toHex(*half) + "/" + v.kind() + (channel ? "/" + std::to_string(*channel) : "");
}

ConcurrentEdits forPeople(const Uuid& id, const Clash& clash) {
    ConcurrentEdits edits{id, clash.kind, clash.channel, {}};
    const auto contents = contentsOf(clash.edits);
    for (std::size_t i = 0; i < clash.edits.size(); ++i) {
        const Version& v = *clash.edits[i];
        edits.edits.push_back(
            {v.at, v.stamp.who, v.deviceName, v.stamp.source, v.stamp.text, contents[i], keyOf(v)});
    }
    return edits;
}

/// Everything that has a version which does not show.
std::vector<Uuid> severalVersions(Connection& connection) {
    std::vector<Uuid> ids;
    for (const char* sql :
         {"SELECT id FROM record WHERE kind NOT IN ('book', 'device') GROUP BY id HAVING count(*) > 1",
          "SELECT id FROM record WHERE kind = 'withdrawal' AND live = 1",
          "SELECT i.id FROM (SELECT DISTINCT key FROM arc WHERE live = 0) a JOIN identity i ON i.key = a.key",
          "SELECT i.id FROM (SELECT DISTINCT arc FROM reading WHERE live = 0) r JOIN identity i ON i.key = "
          "r.arc"}) {
        Query q = connection.query(sql);
        while (q.step()) ids.push_back(q.uuid(0));
    }
    return ids;
}

/// Writes a version once more, on top of itself.
std::int64_t writeAgain(Ledger& ledger, const Uuid& id, const Version& v, const Context& context,
                        const std::string& words) {
    Batch batch;
    if (const auto* record = std::get_if<RecordRow>(&v.what)) batch.records.push_back({*record, v.base()});
    if (const auto* spliceArc = std::get_if<SpliceArc>(&v.what)) batch.arcs.push_back({*spliceArc, v.base()});
    if (const auto* reading = std::get_if<Reading>(&v.what))
        batch.readings.push_back({id, *reading, v.base()});
    return ledger.write(batch, {context.who, context.source, v.stamp.kind, words + v.stamp.text, {}});
}

}  // namespace

std::vector<ConcurrentEdits> concurrentEdits(Connection& connection, std::vector<Uuid> ids) {
    std::sort(ids.begin(), ids.end());
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    std::vector<ConcurrentEdits> list;
    for (const Uuid& id : ids) {
        const auto versions = versionsOf(connection, id);
        if (versions.size() < 2) continue;
        for (const Clash& clash : clashesOf(versions)) list.push_back(forPeople(id, clash));
    }
    return list;
}

std::vector<ConcurrentEdits> concurrentEdits(Connection& connection) {
    return concurrentEdits(connection, severalVersions(connection));
}

std::vector<NumberClash> numberClashes(Connection& connection) {
    std::map<std::pair<Uuid, int>, NumberClash> byNumber;
    std::map<Uuid, std::vector<IssuedRecord>> byJob;
    {
        Query q = connection.query(
            "SELECT r.body, d.name, (SELECT json_extract(t.body, '$.label') FROM record t WHERE t.id = "
            "r.subject "
            "AND t.kind = 'job' ORDER BY t.live DESC LIMIT 1) FROM record r JOIN journal j ON j.row = "
            "r.journal "
            "JOIN device d ON d.key = j.device WHERE r.kind = 'issued_record' AND r.live = 1 "
            "ORDER BY j.tick, d.id");
        while (q.step()) {
            const auto issued = fromBody<IssuedRecord>(q.text(0));
            NumberClash& clash = byNumber[{issued.job.uuid, issued.number}];
            clash.job = issued.job;
            clash.jobLabel = q.text(2);
            clash.number = issued.number;
            clash.records.push_back(
                {issued.id, issued.by, std::string(q.text(1)), issued.manifestSha256, issued.at});
            byJob[issued.job.uuid].push_back(issued);
        }
    }
    std::vector<NumberClash> list;
    for (auto& [key, clash] : byNumber) {
        if (clash.records.size() < 2) continue;
        for (const IssuedRecord& later : byJob[key.first])
            if (later.number > clash.number && (!clash.supersededBy || later.number < *clash.supersededBy))
                clash.supersededBy = later.number;
        list.push_back(std::move(clash));
    }
    return list;
}

Result<SettledRows> settle(Connection& connection, Ledger& ledger, const ConcurrentEdits& edits,
                           std::size_t keep, const Context& context) {
    const auto versions = versionsOf(connection, edits.record);
    const auto clashes = clashesOf(versions);
    const auto clash = std::find_if(clashes.begin(), clashes.end(), [&edits](const Clash& c) {
        return c.kind == edits.kind && c.channel == edits.channel;
    });
    const auto asShown = [&] {
        return clash != clashes.end() && keep < edits.edits.size() &&
               std::equal(clash->edits.begin(), clash->edits.end(), edits.edits.begin(), edits.edits.end(),
                          [](const Version* v, const Edit& e) { return keyOf(*v) == e.versionKey; });
    };
    if (!asShown())
        return fail(ProblemCode::Conflict, "the record was edited or settled meanwhile", "",
                    "Look at the list again");
    const Version& kept = *clash->edits[keep];
    SettledRows rows;
    const auto write = [&](const Version& v, const std::string& words) {
        rows.last = writeAgain(ledger, edits.record, v, context, words);
        if (rows.first == 0) rows.first = rows.last;
    };
    for (const Version* v : clash->tips)
        if (v != &kept) write(*v, "Put aside: ");
    const bool shows = &kept == clash->edits.back();
    write(kept, shows ? "Kept: " : "Brought back: ");
    // A corrected reading shows only with its arc, which was taken back on the other side.
    if (clash->kind == "arc" && kept.kind() == "reading")
        for (auto v = versions.rbegin(); v != versions.rend(); ++v)
            if (v->kind() == "arc") {
                write(*v, "Brought back: ");
                break;
            }
    return rows;
}

Result<std::vector<ConcurrentEdits>> concurrentEditsOf(const std::filesystem::path& book) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    return guarded(book, [&]() -> Result<std::vector<ConcurrentEdits>> {
        open->connection->execute("BEGIN");
        return concurrentEdits(*open->connection);
    });
}

Result<std::vector<NumberClash>> numberClashesOf(const std::filesystem::path& book) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    return guarded(book,
                   [&]() -> Result<std::vector<NumberClash>> { return numberClashes(*open->connection); });
}

Result<Receipt> settleEdits(const WriteTo& to, const ConcurrentEdits& edits, std::size_t keep,
                            const Context& context, Clock& clock, Random& random) {
    auto open = openBook(to.book, to.mode);
    if (!open) return tl::unexpected(open.error());
    return guarded(to.book, [&]() -> Result<Receipt> {
        Connection& connection = *open->connection;
        WriteTransaction transaction(connection);
        Ledger ledger(connection, clock, random);
        const auto rows = settle(connection, ledger, edits, keep, context);
        if (!rows) return tl::unexpected(rows.error());
        transaction.commit();
        if (!connection.filesStillOurs())
            return fail(ProblemCode::Unavailable, "the logbook file was taken away or replaced meanwhile",
                        to.book.string(), "Open it again and look at the list once more");
        return Receipt{clock.now(), static_cast<std::uint64_t>(rows->first),
                       static_cast<std::uint64_t>(rows->last)};
    });
}

}  // namespace arc::storage
