// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/chains.hpp"

#include <algorithm>
#include <limits>
#include <map>

namespace arc::closeout {
namespace {

const Cable* find(const std::vector<Cable>& cables, const std::optional<CableId>& id) {
    if (!id) return nullptr;
    const auto found = std::ranges::find(cables, *id, &Cable::id);
    return found == cables.end() ? nullptr : &*found;
}

Attempt attemptOf(const SpliceRow& row, const EquipmentIndex& equipment) {
    Attempt attempt;
    attempt.arc = row.arc.id;
    attempt.channel = row.reading.channel;
    attempt.number = row.reading.attempt;
    attempt.at = row.arc.at;
    attempt.loss = row.reading.loss;
    attempt.cleaveLeft = row.reading.cleaveLeft;
    attempt.cleaveRight = row.reading.cleaveRight;
    attempt.splicer = equipment(row.arc.splicer, row.arc.at, row.arc.counter);
    if (row.arc.cleaver) attempt.cleaver = equipment(*row.arc.cleaver, row.arc.at, std::nullopt);
    attempt.channels = row.arc.channels;
    attempt.mode = row.arc.mode;
    attempt.counter = row.arc.counter;
    attempt.ambient = row.arc.ambient;
    attempt.operatorName = row.arc.operatorName;
    attempt.note = row.reading.note;
    attempt.correction = row.versions > 1 ? Correction::AfterTheFact : Correction::None;
    return attempt;
}

/// The readings of one chain that stand; more than one group only without a closure.
std::vector<std::vector<std::size_t>> groups(const AttemptChain& chain, const std::vector<SpliceRow>& rows) {
    std::vector<std::vector<std::size_t>> result;
    for (const std::size_t index : chain.readings) {
        const Reading& reading = rows[index].reading;
        if (reading.state == ReadingState::Voided) continue;
        if (result.empty() || (!chain.closure && reading.attempt <= 1)) result.emplace_back();
        result.back().push_back(index);
    }
    return result;
}

void addSplices(ClosureSection& section, const std::vector<SpliceRow>& rows, const Cable* a, const Cable* b,
                const EquipmentIndex& equipment) {
    for (const AttemptChain& chain : attemptChains(rows)) {
        for (const std::vector<std::size_t>& group : groups(chain, rows)) {
            Splice splice;
            splice.a = fibreEnd(chain.fibreA, a);
            splice.b = fibreEnd(chain.fibreB, b);
            for (const std::size_t index : group)
                splice.attempts.push_back(attemptOf(rows[index], equipment));
            section.splices.push_back(std::move(splice));
        }
    }
    std::ranges::stable_sort(section.splices, {}, [](const Splice& splice) {
        return std::pair(splice.a.number.value_or(std::numeric_limits<int>::max()), splice.final().at.ms);
    });
}

}  // namespace

FibreEnd fibreEnd(std::string_view name, const Cable* cable) {
    FibreEnd end;
    end.name = std::string(name);
    end.number = fibreNumber(name);
    if (!end.number) return end;
    const Result<ColourOrder> order = colourOrderNamed(cable != nullptr ? cable->colourOrder : "TIA-598");
    // A cable whose colour order we do not know keeps its numbers: a wrong colour is worse than none.
    if (!order) return end;
    const int unitSize = cable != nullptr && cable->unitSize > 0 ? cable->unitSize : 12;
    end.place = placeInCable(*order, unitSize, *end.number);
    return end;
}

std::vector<ClosureSection> sections(const Job& job, const std::vector<Closure>& closures,
                                     const std::vector<Cable>& cables, std::deque<SpliceRow> rows,
                                     const EquipmentIndex& equipment) {
    std::map<ClosureId, std::vector<SpliceRow>> byClosure;
    std::vector<SpliceRow> unplaced;
    for (const Closure& closure : closures) byClosure[closure.id];
    // Each row leaves the one place as it comes to the other: a big job is in memory once.
    for (; !rows.empty(); rows.pop_front()) {
        SpliceRow& row = rows.front();
        const auto found = row.arc.closure ? byClosure.find(*row.arc.closure) : byClosure.end();
        if (found != byClosure.end()) {
            found->second.push_back(std::move(row));
        } else {
            row.arc.closure.reset();
            unplaced.push_back(std::move(row));
        }
    }
    std::vector<ClosureSection> result;
    for (const Closure& closure : closures) {
        ClosureSection section;
        section.closure = closure.id;
        section.label = closure.label;
        const Cable* a = find(cables, closure.cableA);
        const Cable* b = find(cables, closure.cableB);
        if (a != nullptr) section.cableA = a->label, section.colourOrderA = a->colourOrder;
        if (b != nullptr) section.cableB = b->label, section.colourOrderB = b->colourOrder;
        const std::vector<SpliceRow> own = std::move(byClosure[closure.id]);
        addSplices(section, own, a, b, equipment);
        if (!closure.plan.empty()) section.completeness = completeness(closure, own, job.rule);
        result.push_back(std::move(section));
    }
    if (!unplaced.empty()) {
        ClosureSection section;
        section.label = std::string(noClosure);
        addSplices(section, unplaced, nullptr, nullptr, equipment);
        result.push_back(std::move(section));
    }
    return result;
}

}  // namespace arc::closeout
