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

/// As in 0004_marks.sql.
struct Level {
    Loss above;
    const char* mark;
};
constexpr Level levels[] = {
    {Loss{100}, "\x02"}, {Loss{150}, "\x03"}, {Loss{200}, "\x04"}, {Loss{300}, "\x05"}, {Loss{500}, "\x06"}};

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

/// Reads names, note, loss and state from column `first` on.
void addReading(ArcWords& words, const Query& q, int first) {
    words.add(q.text(first), q.text(first + 1), q.text(first + 2),
              Loss{static_cast<std::int32_t>(q.integer(first + 3))},
              static_cast<ReadingState>(q.integer(first + 4)));
}

}  // namespace

std::string markOfVoided() {
    return "\x01";
}

std::optional<std::string> markAbove(Loss loss) {
    std::optional<std::string> mark;
    for (const Level& level : levels)
        if (level.above <= loss) mark = level.mark;
    return mark;
}

void ArcWords::add(std::string_view fibreA, std::string_view fibreB, std::string_view note, Loss loss,
                   ReadingState state) {
    worst = std::max(worst, loss);
    if (state == ReadingState::Voided) voided = state;
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
    worst = Loss{};
    voided = ReadingState::Good;
}

void ArcWords::each(const std::function<void(const std::string& text)>& use) const {
    if (!names.empty()) use(names);
    for (const std::string& note : notes)
        if (note != names) use(note);
    if (voided == ReadingState::Voided) use(markOfVoided());
    for (const Level& level : levels)
        if (worst > level.above) use(level.mark);
}

std::optional<ShownWords> shownWords(Connection& connection, std::int64_t arcKey) {
    std::optional<ShownWords> shown;
    Query q = connection.query(
        "SELECT a.at_ms, r.fibre_a, r.fibre_b, r.note, r.loss_mdb, r.state FROM arc a JOIN reading r ON "
        "r.arc = a.key AND r.live "
        "= 1 "
        "WHERE a.key = ? AND a.live = 1 ORDER BY r.channel");
    q.with(arcKey);
    while (q.step()) {
        if (!shown) shown.emplace().atMs = q.integer(0);
        addReading(shown->words, q, 1);
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
        "SELECT a.key, a.at_ms, r.fibre_a, r.fibre_b, r.note, r.loss_mdb, r.state FROM arc a JOIN reading r "
        "ON r.arc = a.key AND "
        "r.live = 1 WHERE a.live = 1 ORDER BY a.key, r.channel");
    while (q.step()) {
        if (q.integer(0) != arc) {
            check();
            if (!complete) return arc;
            arc = q.integer(0);
            atMs = q.integer(1);
        }
        addReading(words, q, 2);
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

MentionSearch::MentionSearch(Connection& connection, const SpliceFilter& filter, PageOrder order,
                             const std::optional<PageKey>& after)
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
}

MentionSearch::Texts MentionSearch::look(const std::string& pattern) {
    const bool up = order_ == PageOrder::OldestFirst;
    struct Source {
        const char* texts;
        const char* places;
    };
    for (const Source& source : {Source{"SELECT key FROM phrase WHERE text LIKE ?1 ESCAPE '\\' LIMIT ?2",
                                        up ? mentionsUp : mentionsDown},
                                 Source{"SELECT key FROM word WHERE text LIKE ?1 ESCAPE '\\' LIMIT ?2",
                                        up ? operatorsUp : operatorsDown}}) {
        std::vector<std::int64_t> keys;
        {
            Query q = connection_.query(source.texts);
            q.with(pattern).with(static_cast<std::int64_t>(manyTexts + 1));
            while (q.step()) keys.push_back(q.integer(0));
        }
        if (keys.size() > manyTexts) return Texts::Many;
        for (const std::int64_t key : keys) follow(source.places, key);
    }
    order();
    return Texts::Few;
}

void MentionSearch::look(const std::vector<std::string>& marks) {
    for (const std::string& mark : marks) {
        std::optional<std::int64_t> key;
        {
            Query q = connection_.query("SELECT key FROM phrase WHERE text = ?");
            if (q.with(mark).step()) key = q.integer(0);
        }
        if (key) follow(order_ == PageOrder::OldestFirst ? mentionsUp : mentionsDown, *key);
    }
    order();
}

void MentionSearch::follow(const char* places, std::int64_t text) {
    Trail trail{places, text, {}, firstStep, {}};
    refill(trail);
    if (!trail.ahead.empty()) trails_.push_back(std::move(trail));
}

void MentionSearch::order() {
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
