// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <stdexcept>
#include <unordered_map>

#include "storage/splice_rows.hpp"
#include "storage/sqlite_book.hpp"

namespace arc::storage {
namespace {

/// Which cleaver prepared the fibres of a splicer from when on, by the pairings.
struct PairedFrom {
    std::int64_t atMs;
    std::optional<ToolId> cleaver;
};
std::vector<PairedFrom> pairedCleavers(const std::vector<Pairing>& pairings, ToolId splicer) {
    std::vector<PairedFrom> timeline;
    for (const Pairing& p : pairings) {
        if (p.splicer == splicer) {
            timeline.push_back({p.at.ms, p.cleaver});
        } else if (!timeline.empty() && timeline.back().cleaver == p.cleaver) {
            // The cleaver went to another splicer.
            timeline.push_back({p.at.ms, std::nullopt});
        }
    }
    return timeline;
}

std::optional<ToolId> cleaverAt(const std::vector<PairedFrom>& timeline, std::int64_t atMs) {
    const auto after = std::upper_bound(timeline.begin(), timeline.end(), atMs,
                                        [](std::int64_t ms, const PairedFrom& p) { return ms < p.atMs; });
    return after == timeline.begin() ? std::nullopt : std::prev(after)->cleaver;
}

/// Gives each thing the next number when it is first met.
template <class Key, class T>
class Numbering {
  public:
    template <class Make>
    std::uint32_t of(const Key& key, std::vector<T>& list, Make&& make) {
        const auto [entry, isNew] = numbers_.try_emplace(key, static_cast<std::uint32_t>(list.size()));
        if (isNew) list.push_back(make());
        return entry->second;
    }

  private:
    std::map<Key, std::uint32_t> numbers_;
};

}  // namespace

std::optional<SpliceArc> SqliteBook::headOf(std::int64_t arcKey) {
    static const std::string sql =
        "SELECT " + arcColumns() + " FROM arc a" + arcJoins() + "WHERE a.key = ? AND a.live = 1";
    Query q = book_.connection->query(sql);
    q.with(arcKey);
    if (!q.step()) return std::nullopt;
    return arcFrom(q);
}

std::vector<Reading> SqliteBook::readingsOf(std::int64_t arcKey) {
    static const std::string sql =
        "SELECT " + readingColumns() + " FROM reading r WHERE r.arc = ? AND r.live = 1 ORDER BY r.channel";
    Query q = book_.connection->query(sql);
    q.with(arcKey);
    std::vector<Reading> readings;
    while (q.step()) readings.push_back(readingFrom(q, 0));
    return readings;
}

std::optional<SpliceArc> SqliteBook::whole(std::int64_t arcKey) {
    auto found = headOf(arcKey);
    if (found) found->readings = readingsOf(arcKey);
    return found;
}

Result<std::optional<SpliceArc>> SqliteBook::arc(ArcId id) {
    return read([this, id]() -> Result<std::optional<SpliceArc>> {
        const auto key = ledger_->findIdentity(id.uuid);
        return key ? whole(*key) : std::nullopt;
    });
}

Result<std::optional<SpliceArc>> SqliteBook::lastArc(ToolId splicer) {
    return read([this, splicer]() -> Result<std::optional<SpliceArc>> {
        std::optional<std::int64_t> key;
        {
            Query q = book_.connection->query(
                "SELECT key FROM arc WHERE splicer = (SELECT key FROM identity WHERE id = ?) AND live = 1 "
                "ORDER BY at_ms DESC, counter_arcs DESC, key DESC LIMIT 1");
            if (q.with(splicer.uuid).step()) key = q.integer(0);
        }
        return key ? whole(*key) : std::nullopt;
    });
}

HistoryClosure SqliteBook::closureWorked(ClosureId id) {
    HistoryClosure worked{id, {}};
    const auto bodyOf = [this](const Uuid& record, std::string_view kind) -> std::optional<std::string> {
        Query q = book_.connection->query(
            "SELECT body FROM record WHERE id = ? AND kind = ? ORDER BY live DESC LIMIT 1");
        if (!q.with(record).with(kind).step()) return std::nullopt;
        return std::string(q.text(0));
    };
    const auto body = bodyOf(id.uuid, "closure");
    if (!body) return worked;
    const auto closure = fromBody<Closure>(*body);
    for (const auto& side : {closure.cableA, closure.cableB})
        if (const auto cable = side ? bodyOf(side->uuid, "cable") : std::nullopt)
            worked.cables.push_back(fromBody<Cable>(*cable));
    return worked;
}

Result<SplicerHistory> SqliteBook::history(ToolId splicer, std::optional<std::int64_t> fromMs) {
    return read([&]() -> Result<SplicerHistory> {
        SplicerHistory history;
        history.splicer = splicer;
        const auto tool = ledger_->findIdentity(splicer.uuid);
        {
            Query q = book_.connection->query(
                "SELECT body FROM record WHERE id = ? AND kind = 'tool' AND live = 1");
            if (q.with(splicer.uuid).step()) history.label = fromBody<Tool>(q.text(0)).label;
        }
        const auto timeline = pairedCleavers(all<Pairing>("pairing"), splicer);
        std::vector<std::int64_t> jobKeys, modeKeys, closureKeys;
        Numbering<std::int64_t, std::int64_t> jobs, modes, closures;
        Numbering<ToolId, ToolId> cleavers;
        std::unordered_map<std::int64_t, ToolId> cleaverIds;
        const auto identityOf = [this](std::int64_t key) {
            Query q = book_.connection->query("SELECT id FROM identity WHERE key = ?");
            if (!q.with(key).step()) throw std::runtime_error("a key without an identity");
            return q.uuid(0);
        };
        Query q = book_.connection->query(
            "SELECT a.key, a.at_ms, a.offset_min, a.counter_arcs, a.job, a.cleaver, a.mode, a.temp_mk, "
            "a.pressure_pa, a.channels, a.closure, r.channel, r.loss_mdb, r.cleave_left_cdeg, "
            "r.cleave_right_cdeg, "
            "r.attempt "
            "FROM arc a LEFT JOIN reading r ON r.arc = a.key AND r.live = 1 AND r.state = 0 "
            "WHERE a.splicer = ? AND a.live = 1 AND a.at_ms >= ? "
            "ORDER BY a.at_ms, a.counter_arcs, a.key, r.channel");
        q.with(tool.value_or(0)).with(fromMs.value_or(INT64_MIN));
        std::int64_t current = 0;
        while (q.step()) {
            if (q.integer(0) != current) {
                current = q.integer(0);
                HistoryArc a;
                a.at = {q.integer(1), static_cast<std::int16_t>(q.integer(2))};
                a.counter = maybe<ArcCount>(q, 3);
                if (const auto job = q.maybeInteger(4)) a.job = jobs.of(*job, jobKeys, [&] { return *job; });
                std::optional<ToolId> cleaver;
                if (const auto key = q.maybeInteger(5)) {
                    const auto known = cleaverIds.find(*key);
                    cleaver = known != cleaverIds.end()
                                  ? known->second
                                  : cleaverIds.emplace(*key, ToolId{identityOf(*key)}).first->second;
                } else {
                    cleaver = cleaverAt(timeline, a.at.ms);
                }
                if (cleaver) a.cleaver = cleavers.of(*cleaver, history.cleavers, [&] { return *cleaver; });
                a.mode = modes.of(q.integer(6), modeKeys, [&] { return q.integer(6); });
                a.temperature = maybe<Temperature>(q, 7);
                a.pressure = maybe<Pressure>(q, 8);
                a.channels = static_cast<std::uint8_t>(q.integer(9));
                if (const auto closure = q.maybeInteger(10))
                    a.closure = closures.of(*closure, closureKeys, [&] { return *closure; });
                a.firstReading = history.readings.size();
                history.arcs.push_back(a);
            }
            if (q.isNull(11)) continue;
            HistoryReading r;
            r.channel = static_cast<std::uint8_t>(q.integer(11));
            r.loss.value = static_cast<std::int32_t>(q.integer(12));
            r.cleaveLeft = maybe<Angle>(q, 13);
            r.cleaveRight = maybe<Angle>(q, 14);
            r.attempt = static_cast<std::uint8_t>(q.integer(15));
            history.readings.push_back(r);
            ++history.arcs.back().readingCount;
        }
        for (const auto key : jobKeys) {
            const JobId id{identityOf(key)};
            history.jobs.push_back(id);
            Query label = book_.connection->query(
                "SELECT body FROM record WHERE id = ? AND kind = 'job' ORDER BY live DESC LIMIT 1");
            history.jobLabels.push_back(label.with(id.uuid).step() ? fromBody<Job>(label.text(0)).label : "");
        }
        for (const auto key : closureKeys) history.closures.push_back(closureWorked({identityOf(key)}));
        for (const auto key : modeKeys) {
            Query word = book_.connection->query("SELECT text FROM word WHERE key = ?");
            if (!word.with(key).step()) throw std::runtime_error("a key without a word");
            history.modes.emplace_back(word.text(0));
        }
        history.events = about<CareRecord>("care", splicer.uuid);
        for (const ToolId& cleaver : history.cleavers) {
            auto more = about<CareRecord>("care", cleaver.uuid);
            history.events.insert(history.events.end(), more.begin(), more.end());
        }
        std::stable_sort(history.events.begin(), history.events.end(),
                         [](const CareRecord& a, const CareRecord& b) { return a.at < b.at; });
        return history;
    });
}

Result<std::uint64_t> SqliteBook::countArcs(ToolId tool, std::int64_t fromMs, std::int64_t toMs) {
    return read([&]() -> Result<std::uint64_t> {
        const auto key = ledger_->findIdentity(tool.uuid);
        const auto pairings = all<Pairing>("pairing");
        std::int64_t count = 0;
        const auto add = [&](const char* sql, std::int64_t of, std::int64_t from, std::int64_t to) {
            if (from >= to) return;
            Query q = book_.connection->query(sql);
            q.with(of).with(from).with(to).step();
            count += q.integer(0);
        };
        if (key) {
            add("SELECT count(*) FROM arc WHERE splicer = ? AND live = 1 AND at_ms >= ? AND at_ms < ?", *key,
                fromMs, toMs);
            add("SELECT count(*) FROM arc WHERE cleaver = ? AND live = 1 AND at_ms >= ? AND at_ms < ?", *key,
                fromMs, toMs);
        }
        // Arcs that do not name their cleaver belong to the one that was paired with their splicer then.
        std::vector<ToolId> splicers;
        for (const Pairing& p : pairings)
            if (p.cleaver == tool && std::find(splicers.begin(), splicers.end(), p.splicer) == splicers.end())
                splicers.push_back(p.splicer);
        for (const ToolId& splicer : splicers) {
            const auto splicerKey = ledger_->findIdentity(splicer.uuid);
            if (!splicerKey) continue;
            const auto timeline = pairedCleavers(pairings, splicer);
            for (std::size_t i = 0; i < timeline.size(); ++i) {
                if (timeline[i].cleaver != tool) continue;
                const std::int64_t until = i + 1 < timeline.size() ? timeline[i + 1].atMs : toMs;
                add("SELECT count(*) FROM arc WHERE splicer = ? AND live = 1 AND at_ms >= ? AND at_ms < ? "
                    "AND "
                    "cleaver IS NULL",
                    *splicerKey, std::max(fromMs, timeline[i].atMs), std::min(toMs, until));
            }
        }
        return static_cast<std::uint64_t>(count);
    });
}

}  // namespace arc::storage
