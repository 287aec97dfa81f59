// SPDX-License-Identifier: GPL-3.0-or-later
// The closure as the book has it, and which fibre is next.
#include <algorithm>

#include "core/work/pad_parts.hpp"

namespace arc::pad {

std::optional<std::size_t> Pad::rowOf(const Reading& reading) const {
    for (std::size_t r = 0; r < rows_.size(); ++r)
        if (rows_[r].fibre.nameA == reading.fibreA &&
            (reading.fibreB.empty() || rows_[r].fibre.nameB == reading.fibreB))
            return r;
    return std::nullopt;
}

void Pad::addReading(const KnownArc& arc, const Reading& reading) {
    // The groove may have been written to another fibre before.
    for (auto& other : rows_)
        std::erase_if(other.attempts, [&](const Attempt& a) {
            return a.arc == arc.id && a.reading.channel == reading.channel;
        });
    const auto row = rowOf(reading);
    if (!row) return;
    auto& attempts = rows_[*row].attempts;
    std::erase_if(attempts, [&](const Attempt& a) { return a.arc == arc.id; });
    if (reading.state == ReadingState::Voided) return;
    attempts.push_back({arc.id, arc.at, reading});
    std::stable_sort(attempts.begin(), attempts.end(), [](const Attempt& a, const Attempt& b) {
        return a.reading.attempt < b.reading.attempt;
    });
}

void Pad::apply(const Entry& entry) {
    if (const auto* arc = std::get_if<SpliceArc>(&entry)) {
        std::erase_if(arcs_, [&](const KnownArc& known) { return known.id == arc->id; });
        arcs_.push_back({arc->id, arc->at, arc->splicer, arc->channels});
        for (const auto& reading : arc->readings) addReading(arcs_.back(), reading);
    } else if (const auto* change = std::get_if<ReadingChange>(&entry)) {
        for (const auto& known : arcs_)
            if (known.id == change->arc) addReading(known, change->reading);
    } else if (const auto* withdrawal = std::get_if<Withdrawal>(&entry)) {
        std::erase_if(arcs_, [&](const KnownArc& known) { return known.id.uuid == withdrawal->of; });
        for (auto& row : rows_)
            std::erase_if(row.attempts, [&](const Attempt& a) { return a.arc.uuid == withdrawal->of; });
    }
}

void Pad::goOn() {
    if (rows_.empty()) return;
    const std::size_t from = current_;
    if (setUp_.fibresPerArc <= 1) {
        if (tooHigh(standing(from))) return arrive(from);
    } else if (const KnownArc* arc = openArc(from)) {
        std::optional<std::size_t> high;
        for (auto r = arcFirst(from); r < arcEnd(from); ++r) {
            if (!inArc(r, arc->id)) return arrive(r);
            if (tooHigh(standing(r)) && !high) high = r;
        }
        if (high) {
            arrive(arcFirst(from));
            redo_ = Redo::Asked;
            return;
        }
    }
    for (std::size_t step = 1; step <= rows_.size(); ++step) {
        const auto r = (from + step) % rows_.size();
        if (!last(r)) return arrive(r);
    }
    arrive(from);
}

}  // namespace arc::pad
