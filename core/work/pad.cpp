// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pad.hpp"

#include <algorithm>
#include <utility>

#include "core/work/notes.hpp"
#include "core/work/pad_parts.hpp"

namespace arc::pad {

Pad::Pad(SetUp setUp, std::vector<Fibre> fibres, const std::vector<SpliceArc>& arcs)
    : setUp_(std::move(setUp)) {
    rows_.reserve(fibres.size());
    for (auto& fibre : fibres) rows_.push_back(Row{std::move(fibre), {}, {}});
    for (const auto& arc : arcs) apply(arc);
    current_ = rows_.empty() ? 0 : rows_.size() - 1;
    goOn();
}

void Pad::changeSetUp(SetUp setUp) {
    setUp_ = std::move(setUp);
    unanswered_.reset();
    arrive(current_);
}

void Pad::changeAverage(Loss othersSum, int othersCount) {
    setUp_.othersSum = othersSum;
    setUp_.othersCount = othersCount;
}

void Pad::reload(const std::vector<SpliceArc>& arcs) {
    std::vector<std::vector<Attempt>> before;
    for (auto& row : rows_) before.push_back(std::exchange(row.attempts, {}));
    arcs_.clear();
    for (const auto& arc : arcs) apply(arc);
    unanswered_.reset();
    if (!typed_.empty() || !noted().empty()) return;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        const auto same = [](const Attempt& x, const Attempt& y) {
            return x.arc == y.arc && x.reading == y.reading;
        };
        if (std::ranges::equal(before[r], rows_[r].attempts, same)) continue;
        if (!last(r)) return arrive(r);
        current_ = r;
        return goOn();
    }
}

std::size_t Pad::unitFirst(std::size_t row) const {
    const auto size = static_cast<std::size_t>(std::max(1, setUp_.unitSize));
    return row / size * size;
}

std::size_t Pad::unitEnd(std::size_t row) const {
    return std::min(rows_.size(), unitFirst(row) + static_cast<std::size_t>(std::max(1, setUp_.unitSize)));
}

std::size_t Pad::arcFirst(std::size_t row, int size) const {
    const auto fibres = static_cast<std::size_t>(std::max(1, size));
    const auto unit = unitFirst(row);
    return unit + (row - unit) / fibres * fibres;
}

std::size_t Pad::arcEnd(std::size_t row, int size) const {
    return std::min(unitEnd(row), arcFirst(row, size) + static_cast<std::size_t>(std::max(1, size)));
}

int Pad::channelOf(std::size_t row) const {
    return static_cast<int>(row - arcFirst(row)) + 1;
}

const Attempt* Pad::last(std::size_t row) const {
    return rows_[row].attempts.empty() ? nullptr : &rows_[row].attempts.back();
}

bool Pad::inArc(std::size_t row, const ArcId& arc) const {
    const auto& attempts = rows_[row].attempts;
    return std::any_of(attempts.begin(), attempts.end(), [&](const Attempt& a) { return a.arc == arc; });
}

const Pad::KnownArc* Pad::openArc(std::size_t row) const {
    if (setUp_.fibresPerArc <= 1) return nullptr;
    const KnownArc* newest = nullptr;
    for (const auto& arc : arcs_) {
        if (arc.splicer != setUp_.splicer || arc.channels != setUp_.fibresPerArc) continue;
        bool here = false;
        for (auto r = arcFirst(row); r < arcEnd(row) && !here; ++r) here = inArc(r, arc.id);
        if (here) newest = &arc;  // arcs_ is in book order
    }
    return newest;
}

Standing Pad::standing(std::size_t row) const {
    if (rows_[row].noted) return Standing::Noted;
    const Attempt* attempt = last(row);
    if (!attempt) return Standing::Waiting;
    switch (judge(setUp_.rule, attempt->reading.loss, attempt->reading.attempt)) {
        case Verdict::Accept:
            return Standing::Accepted;
        case Verdict::AcceptHigh:
            return Standing::AcceptedHigh;
        case Verdict::OverCeiling:
            return Standing::OverCeiling;
        case Verdict::KeepBestWithNote:
            return note::keeps(attempt->reading.note) ? Standing::Kept : Standing::TooHigh;
        case Verdict::Resplice:
            break;
    }
    return Standing::TooHigh;
}

Typing Pad::typing() const {
    if (rows_.empty() || !last(current_) || redo_ == Redo::Asked) return Typing::NextAttempt;
    if (setUp_.fibresPerArc <= 1) return Typing::Correction;
    const KnownArc* arc = openArc(current_);
    return arc && inArc(current_, arc->id) ? Typing::Correction : Typing::NextAttempt;
}

int Pad::nextAttempt(std::size_t row) const {
    return last(row) ? last(row)->reading.attempt + 1 : 1;
}

Preview Pad::preview() const {
    Preview preview;
    preview.typed = readTyped(typed_);
    if (rows_.empty()) return preview;
    preview.attempt =
        typing() == Typing::Correction ? last(current_)->reading.attempt : nextAttempt(current_);
    std::int64_t sum = setUp_.othersSum.value;
    int count = setUp_.othersCount;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        std::optional<Loss> loss = rows_[r].noted;
        if (r == current_ && preview.typed.loss) loss = preview.typed.loss;
        if (!loss && last(r)) loss = last(r)->reading.loss;
        if (!loss) continue;
        sum += loss->value;
        ++count;
    }
    if (count > 0) preview.averageDb = static_cast<double>(sum) / count / 1000.0;
    if (count > 0 && sum > static_cast<std::int64_t>(setUp_.rule.average.value) * count)
        preview.average = AverageNow::Over;
    if (preview.typed.loss) preview.verdict = judge(setUp_.rule, *preview.typed.loss, preview.attempt);
    return preview;
}

std::size_t Pad::done() const {
    return static_cast<std::size_t>(
        std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return !row.attempts.empty(); }));
}

std::size_t Pad::open() const {
    std::size_t count = 0;
    for (std::size_t r = 0; r < rows_.size(); ++r) count += tooHigh(standing(r)) ? 1 : 0;
    return count;
}

std::vector<Loss> Pad::noted() const {
    std::vector<Loss> losses;
    for (const auto& row : rows_)
        if (row.noted) losses.push_back(*row.noted);
    return losses;
}

}  // namespace arc::pad
