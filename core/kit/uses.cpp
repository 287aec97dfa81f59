// SPDX-License-Identifier: GPL-3.0-or-later
// How often a tool was used (see life.hpp).
#include <algorithm>
#include <utility>

#include "core/care/queues.hpp"
#include "core/kit/life.hpp"

namespace arc::kit {
namespace {

/// A ribbon or fibre pair is stripped and cleaved on both sides.
constexpr std::uint32_t sides = 2;

std::vector<Pairing> inOrder(std::span<const Pairing> pairings) {
    std::vector<Pairing> order(pairings.begin(), pairings.end());
    std::ranges::stable_sort(order, {}, &Pairing::at);
    return order;
}

/// The counter as last seen; its differences are followed from there.
struct Seen {
    enum class What { Nothing, Counter } what = What::Nothing;
    std::uint32_t counter = 0;
};

/// Arcs fired outside the book move the counter on too; a counter that went back counts as one arc.
std::uint32_t arcsFrom(const Seen& before, const Seen& now) {
    const bool both = before.what == Seen::What::Counter && now.what == Seen::What::Counter;
    return both && now.counter > before.counter ? now.counter - before.counter : 1;
}

/// Reads the counter along arcs, corrections and care records in one order of time.
class CounterReader {
  public:
    CounterReader(const SplicerHistory& history, std::span<const CounterCorrection> corrections,
                  std::span<const CareRecord> records) {
        for (const CounterCorrection& correction : corrections)
            if (correction.tool == history.splicer) corrections_.push_back(correction);
        std::ranges::stable_sort(corrections_, {}, &CounterCorrection::at);
        for (const CareRecord& record : records)
            if (record.tool == history.splicer && record.counter)
                sightings_.emplace_back(record.at, record.counter->value);
        std::ranges::stable_sort(sightings_, {}, [](const auto& s) { return s.first; });
        uses_.reserve(history.arcs.size() + sightings_.size());
    }

    std::vector<UsePoint> along(std::span<const HistoryArc> arcs) {
        std::size_t next = 0;
        for (const HistoryArc& arc : arcs) {
            for (; next < sightings_.size() && sightings_[next].first < arc.at; ++next)
                sight(sightings_[next].first, sightings_[next].second);
            take(arc);
        }
        for (; next < sightings_.size(); ++next) sight(sightings_[next].first, sightings_[next].second);
        return std::move(uses_);
    }

  private:
    /// What the counter shows at an instant once corrections are taken in; a difference across a correction
    /// means nothing.
    Seen seenAt(Instant at, Seen shows) {
        for (; nextCorrection_ < corrections_.size() && corrections_[nextCorrection_].at <= at;
             ++nextCorrection_) {
            last_ = {};
            if (corrections_[nextCorrection_].at == at)
                shows = {Seen::What::Counter, corrections_[nextCorrection_].shows.value};
        }
        return shows;
    }

    void take(const HistoryArc& arc) {
        Seen shows;
        if (arc.counter) shows = {Seen::What::Counter, arc.counter->value};
        shows = seenAt(arc.at, shows);
        const std::uint32_t step = arcsFrom(last_, shows);
        push(arc.at, step, step - 1 + std::max<std::uint32_t>(1, arc.channels));
        if (shows.what == Seen::What::Counter) last_ = shows;
    }

    /// Somebody read the counter without firing an arc, at a care.
    void sight(Instant at, std::uint32_t counter) {
        const Seen shows = seenAt(at, {Seen::What::Counter, counter});
        const bool ahead = last_.what == Seen::What::Counter && shows.counter > last_.counter;
        const std::uint32_t step = ahead ? shows.counter - last_.counter : 0;
        push(at, step, step);
        last_ = shows;
    }

    void push(Instant at, std::uint32_t uses, std::uint32_t fibres) {
        now_.at = at;
        now_.total += uses;
        now_.fibres += fibres;
        uses_.push_back(now_);
    }

    std::vector<CounterCorrection> corrections_;
    std::vector<std::pair<Instant, std::uint32_t>> sightings_;
    std::size_t nextCorrection_ = 0;
    Seen last_;
    UsePoint now_;
    std::vector<UsePoint> uses_;
};

std::vector<UsePoint> cumulated(std::vector<UsePoint> single) {
    std::ranges::stable_sort(single, {}, &UsePoint::at);
    for (std::size_t i = 1; i < single.size(); ++i) {
        single[i].total += single[i - 1].total;
        single[i].fibres += single[i - 1].fibres;
    }
    return single;
}

/// Since when a splicer has had which cleaver, in order of time.
std::vector<std::pair<Instant, std::optional<ToolId>>> cleaversOf(std::span<const Pairing> ordered,
                                                                  ToolId splicer) {
    std::vector<std::pair<Instant, std::optional<ToolId>>> spans;
    std::optional<ToolId> now;
    for (const Pairing& pairing : ordered) {
        const std::optional<ToolId> before = now;
        if (pairing.splicer == splicer)
            now = pairing.cleaver;
        else if (now == pairing.cleaver)
            now.reset();  // it went to another splicer
        if (now != before) spans.emplace_back(pairing.at, now);
    }
    return spans;
}

std::vector<UsePoint> cleaverUses(const care::Situation& situation, ToolId cleaver) {
    const std::vector<Pairing> pairings = inOrder(situation.pairings);
    std::vector<UsePoint> uses;
    for (const SplicerHistory& history : situation.histories) {
        const auto spans = cleaversOf(pairings, history.splicer);
        std::size_t span = 0;
        std::optional<ToolId> paired;
        for (const HistoryArc& arc : history.arcs) {
            for (; span < spans.size() && spans[span].first <= arc.at; ++span) paired = spans[span].second;
            const bool named = arc.cleaver && *arc.cleaver < history.cleavers.size();
            if ((named ? std::optional(history.cleavers[*arc.cleaver]) : paired) == cleaver)
                uses.push_back({arc.at, sides, sides * std::max<std::uint32_t>(1, arc.channels)});
        }
    }
    return cumulated(std::move(uses));
}

std::vector<UsePoint> stripperUses(const care::Situation& situation) {
    std::vector<UsePoint> uses;
    for (const SplicerHistory& history : situation.histories)
        for (const HistoryArc& arc : history.arcs)
            if (arc.channels > 1) uses.push_back({arc.at, sides, sides * std::uint32_t{arc.channels}});
    uses = cumulated(std::move(uses));
    const auto strippers =
        static_cast<std::uint32_t>(std::ranges::count_if(situation.tools, [](const Tool& tool) {
            return asCleaver(tool) == nullptr && asSplicer(tool) == nullptr && tool.service == Service::InUse;
        }));
    for (UsePoint& point : uses) {
        point.total = (point.total + strippers - 1) / std::max(1U, strippers);
        point.fibres = (point.fibres + strippers - 1) / std::max(1U, strippers);
    }
    return uses;
}

}  // namespace

std::vector<UsePoint> usesOf(const care::Situation& situation, ToolId id) {
    const auto tool = std::ranges::find(situation.tools, id, &Tool::id);
    if (tool == situation.tools.end()) return {};
    switch (care::kindOf(*tool)) {
        case care::ToolKind::Cleaver:
            return cleaverUses(situation, id);
        case care::ToolKind::Stripper:
            return stripperUses(situation);
        case care::ToolKind::Splicer:
            break;
    }
    const auto history = std::ranges::find(situation.histories, id, &SplicerHistory::splicer);
    if (history == situation.histories.end()) return {};
    return CounterReader(*history, situation.corrections, situation.records).along(history->arcs);
}

std::uint32_t usesBetween(std::span<const UsePoint> uses, std::int64_t afterMs, std::int64_t untilMs,
                          care::Per per) {
    const auto upTo = [&](std::int64_t ms) -> std::uint32_t {
        const auto after = std::ranges::upper_bound(uses, ms, {}, [](const UsePoint& p) { return p.at.ms; });
        if (after == uses.begin()) return 0;
        const UsePoint& last = *std::prev(after);
        return per == care::Per::Use ? last.total : last.fibres;
    };
    const std::uint32_t begin = upTo(afterMs);
    const std::uint32_t end = upTo(untilMs);
    return end > begin ? end - begin : 0;
}

std::optional<ToolId> pairedCleaver(std::span<const Pairing> pairings, ToolId splicer, Instant at) {
    std::optional<ToolId> now;
    for (const auto& [from, cleaver] : cleaversOf(inOrder(pairings), splicer))
        if (from <= at) now = cleaver;
    return now;
}

std::optional<ToolId> pairedSplicer(std::span<const Pairing> pairings, ToolId cleaver, Instant at) {
    std::optional<ToolId> now;
    for (const Pairing& pairing : inOrder(pairings)) {
        if (pairing.at > at) break;
        if (pairing.cleaver == cleaver)
            now = pairing.splicer;
        else if (now == pairing.splicer)
            now.reset();
    }
    return now;
}

}  // namespace arc::kit
