// SPDX-License-Identifier: GPL-3.0-or-later
// Where a cleaver's blade stands and where it may go next (see life.hpp). Common practice: 16 positions a
// height, all of them before the next height, which begins again at position 1.
#include <algorithm>
#include <string>

#include "core/care/run.hpp"
#include "core/kit/life.hpp"

namespace arc::kit {
namespace {

std::string said(BladePlace place) {
    return "height " + std::to_string(place.height) + ", position " + std::to_string(place.position);
}

}  // namespace

BladePlace bladeNow(const Cleaver& cleaver, std::span<const CareRecord> records) {
    std::vector<const CareRecord*> moves;
    for (const CareRecord& record : records)
        if (record.action == action::bladeRotate || record.action == action::bladeRaise)
            moves.push_back(&record);
    std::ranges::stable_sort(moves, {}, [](const CareRecord* r) { return r->at; });
    BladePlace now;
    for (const CareRecord* move : moves) {
        if (move->blade)
            now = *move->blade;
        else if (move->fields.contains(std::string(care::field::newBlade)))
            now = {};
        else if (move->action == action::bladeRaise)
            now = {std::min(now.height + 1, cleaver.heights), 1};
        else
            now = nextPlace(cleaver, now).value_or(now);
    }
    return now;
}

std::optional<BladePlace> nextPlace(const Cleaver& cleaver, BladePlace now) {
    if (now.position < cleaver.positions) return BladePlace{now.height, now.position + 1};
    if (now.height < cleaver.heights) return BladePlace{now.height + 1, 1};
    return std::nullopt;
}

Result<void> checkBladeMove(const Cleaver& cleaver, BladePlace now, std::string_view action, BladePlace to) {
    const auto next = nextPlace(cleaver, now);
    const auto refuse = [&](std::string what) -> Result<void> {
        return fail(ProblemCode::Refused, std::move(what), "the blade stands at " + said(now),
                    next ? "The next place is " + said(*next) : "Fit a new blade");
    };
    if (to.position < 1 || to.position > cleaver.positions || to.height < 1 || to.height > cleaver.heights)
        return refuse("this blade has " + std::to_string(cleaver.heights) + " heights of " +
                      std::to_string(cleaver.positions) + " positions");
    if (!next) return refuse("all places of this blade are used up");
    if (action == action::bladeRaise && next->height == now.height)
        return refuse("the blade is raised only after all " + std::to_string(cleaver.positions) +
                      " positions at this height");
    if (action == action::bladeRotate && next->height != now.height)
        return refuse("all " + std::to_string(cleaver.positions) +
                      " positions at this height are used, so the blade is raised");
    if (!(to == *next)) return refuse("a blade goes from place to place without skipping any");
    return {};
}

}  // namespace arc::kit
