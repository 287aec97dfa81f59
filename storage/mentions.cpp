// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/mentions.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace arc::storage {
namespace {

/// Above this many texts that hold a word, it stands in so many splices that a page fills at once.
constexpr std::size_t manyTexts = 2'000;
constexpr std::size_t firstStep = 4, longestStep = 256;

constexpr const char* mentionsDown =
    "SELECT at_ms, arc FROM mention WHERE phrase = ?1 AND (at_ms, arc) <= (?2, ?3) AND at_ms >= ?4 ORDER BY "
    "at_ms "
    "DESC, arc DESC LIMIT ?5";
constexpr const char* mentionsUp =
    "SELECT at_ms, arc FROM mention WHERE phrase = ?1 AND (at_ms, arc) >= (?2, ?3) AND at_ms < ?4 ORDER BY "
    "at_ms, "
    "arc LIMIT ?5";
constexpr const char* operatorsDown =
    "SELECT at_ms, key FROM arc WHERE live = 1 AND operator = ?1 AND (at_ms, key) <= (?2, ?3) AND at_ms >= "
    "?4 "
    "ORDER BY at_ms DESC, key DESC LIMIT ?5";
constexpr const char* operatorsUp =
    "SELECT at_ms, key FROM arc WHERE live = 1 AND operator = ?1 AND (at_ms, key) >= (?2, ?3) AND at_ms < ?4 "
    "ORDER BY at_ms, key LIMIT ?5";

}  // namespace

void ArcWords::add(std::string_view fibreA, std::string_view fibreB, std::string_view note) {
    const auto line = [this](std::string_view name) {
        if (name.empty()) return;
        if (!names.empty()) names += '\n';
        names += name;
    };
    line(fibreA);
    if (fibreB != fibreA) line(fibreB);
    if (!note.empty() && std::ranges::find(notes, note) == notes.end()) notes.emplace_back(note);
}

void ArcWords::clear() {
    names.clear();
    notes.clear();
}

void ArcWords::each(const std::function<void(const std::string& text)>& use) const {
    if (!names.empty()) use(names);
    for (const std::string& note : notes)
        if (note != names) use(note);
}

std::optional<ShownWords> shownWords(Connection& connection, std::int64_t arcKey) {
    std::optional<ShownWords> shown;
    Query q = connection.query(
        "SELECT a.at_ms, r.fibre_a, r.fibre_b, r.note FROM arc a JOIN reading r ON r.arc = a.key AND r.live "
        "= 1 "
        "WHERE a.key = ? AND a.live = 1 ORDER BY r.channel");
    q.with(arcKey);
    while (q.step()) {
        if (!shown) shown.emplace().atMs = q.integer(0);
        shown->words.add(q.text(1), q.text(2), q.text(3));
    }
    return shown;
}

std::optional<std::int64_t> firstWrongMention(Connection& connection) {
    std::int64_t due = 0, arc = 0, atMs = 0;
    bool complete = true;
    ArcWords words;
    const auto check = [&] {
        words.each([&](const std::string& text) {
            ++due;
            Query q = connection.query(
                "SELECT 1 FROM phrase p JOIN mention m ON m.phrase = p.key AND m.at_ms = ? AND m.arc = ? "
                "WHERE "
                "p.text = ?");
            complete = complete && q.with(atMs).with(arc).with(text).step();
        });
        words.clear();
    };
    Query q = connection.query(
        "SELECT a.key, a.at_ms, r.fibre_a, r.fibre_b, r.note FROM arc a JOIN reading r ON r.arc = a.key AND "
        "r.live = 1 WHERE a.live = 1 ORDER BY a.key, r.channel");
    while (q.step()) {
        if (q.integer(0) != arc) {
            check();
            if (!complete) return arc;
            arc = q.integer(0);
            atMs = q.integer(1);
        }
        words.add(q.text(2), q.text(3), q.text(4));
    }
    check();
    if (!complete) return arc;
    if (connection.number("SELECT count(*) FROM mention") != due ||
        connection.number("SELECT EXISTS (SELECT 1 FROM phrase p WHERE NOT EXISTS (SELECT 1 FROM mention m "
                          "WHERE m.phrase = p.key))") != 0)
        return 0;
    return std::nullopt;
}

// --- searching --------------------------------------------------------------------------------------------

MentionSearch::MentionSearch(Connection& connection, const std::string& pattern, const SpliceFilter& filter,
                             PageOrder order, const std::optional<PageKey>& after)
    : connection_(connection), order_(order) {
    const bool up = order == PageOrder::OldestFirst;
    start_ = up ? Place{filter.fromMs.value_or(INT64_MIN), INT64_MIN}
                : Place{filter.toMs.value_or(INT64_MAX), INT64_MAX};
    end_ = up ? filter.toMs.value_or(INT64_MAX) : filter.fromMs.value_or(INT64_MIN);
    if (after) {
        // The arc at which the last page ended may have more.
        const Place last{after->atMs, static_cast<std::int64_t>(after->row / 32)};
        if (before(start_, last)) start_ = last;
    }
    const auto add = [&](const char* texts, const char* places) {
        std::vector<std::int64_t> keys;
        {
            Query q = connection.query(texts);
            q.with(pattern).with(static_cast<std::int64_t>(manyTexts + 1));
            while (q.step()) keys.push_back(q.integer(0));
        }
        if (keys.size() > manyTexts) found_ = Texts::Many;
        for (const std::int64_t key : keys) {
            if (found_ == Texts::Many) return;
            Trail trail{places, key, {}, firstStep, {}};
            refill(trail);
            if (!trail.ahead.empty()) trails_.push_back(std::move(trail));
        }
    };
    add("SELECT key FROM phrase WHERE text LIKE ?1 ESCAPE '\\' LIMIT ?2", up ? mentionsUp : mentionsDown);
    add("SELECT key FROM word WHERE text LIKE ?1 ESCAPE '\\' LIMIT ?2", up ? operatorsUp : operatorsDown);
    std::ranges::make_heap(trails_, [this](const Trail& a, const Trail& b) { return later(a, b); });
}

bool MentionSearch::before(const Place& a, const Place& b) const {
    const auto less = std::tie(a.atMs, a.arc) <=> std::tie(b.atMs, b.arc);
    return order_ == PageOrder::OldestFirst ? less < 0 : less > 0;
}

bool MentionSearch::later(const Trail& a, const Trail& b) const {
    return before(b.ahead.back(), a.ahead.back());
}

/// More of the trail, always more at a time: of most texts only the first few are needed.
void MentionSearch::refill(Trail& trail) {
    const Place from = trail.last.value_or(start_);
    Query q = connection_.query(trail.sql);
    q.with(trail.text).with(from.atMs).with(from.arc).with(end_).with(static_cast<std::int64_t>(trail.step));
    while (q.step()) {
        const Place place{q.integer(0), q.integer(1)};
        if (trail.last != place) trail.ahead.push_back(place);
    }
    if (!trail.ahead.empty()) trail.last = trail.ahead.back();
    std::ranges::reverse(trail.ahead);
    trail.step = std::min(trail.step * 2, longestStep);
}

std::vector<std::int64_t> MentionSearch::next(std::size_t count) {
    const auto order = [this](const Trail& a, const Trail& b) { return later(a, b); };
    std::vector<std::int64_t> arcs;
    while (arcs.size() < count && !trails_.empty()) {
        std::ranges::pop_heap(trails_, order);
        Trail& first = trails_.back();
        const Place place = first.ahead.back();
        first.ahead.pop_back();
        if (given_ != place) arcs.push_back(place.arc);
        given_ = place;
        if (first.ahead.empty()) refill(first);
        if (first.ahead.empty()) {
            trails_.pop_back();
        } else {
            std::ranges::push_heap(trails_, order);
        }
    }
    return arcs;
}

}  // namespace arc::storage
