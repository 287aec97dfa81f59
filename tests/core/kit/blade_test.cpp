// SPDX-License-Identifier: GPL-3.0-or-later
// Check values, common practice: 16 positions at a height, all of them before the next height, which begins
// again at position 1; after the last place a new blade.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/care/record_check.hpp"
#include "core/care/run.hpp"
#include "tests/support/care_bench.hpp"

namespace arc::kit {
namespace {

using namespace arc::test;

TEST(Blade, GoesThroughAllPositionsBeforeItIsRaised) {
    const Cleaver blade{16, 3};
    BladePlace place;
    for (int position = 2; position <= 16; ++position) {
        EXPECT_FALSE(checkBladeMove(blade, place, action::bladeRaise, {2, 1})) << position;
        place = *nextPlace(blade, place);
        EXPECT_EQ(place, (BladePlace{1, position}));
    }
    EXPECT_TRUE(checkBladeMove(blade, place, action::bladeRaise, {2, 1}));
    EXPECT_FALSE(checkBladeMove(blade, place, action::bladeRotate, {2, 1}));
    EXPECT_FALSE(checkBladeMove(blade, place, action::bladeRaise, {3, 1}));
    EXPECT_FALSE(checkBladeMove(blade, place, action::bladeRaise, {2, 2}));
    EXPECT_EQ(*nextPlace(blade, place), (BladePlace{2, 1}));
}

TEST(Blade, SkipsNoPosition) {
    const Cleaver blade{16, 3};
    EXPECT_TRUE(checkBladeMove(blade, {1, 4}, action::bladeRotate, {1, 5}));
    EXPECT_FALSE(checkBladeMove(blade, {1, 4}, action::bladeRotate, {1, 6}));
    EXPECT_FALSE(checkBladeMove(blade, {1, 4}, action::bladeRotate, {1, 3}));
    EXPECT_FALSE(checkBladeMove(blade, {1, 4}, action::bladeRotate, {1, 17}));
    EXPECT_FALSE(checkBladeMove(blade, {1, 4}, action::bladeRotate, {4, 1}));
}

TEST(Blade, HasNoPlaceAfterTheLast) {
    const Cleaver blade{16, 3};
    EXPECT_FALSE(nextPlace(blade, {3, 16}));
    EXPECT_FALSE(checkBladeMove(blade, {3, 16}, action::bladeRotate, {3, 16}));
    EXPECT_TRUE(nextPlace(blade, {3, 15}));
}

TEST(Blade, RecordFillsInTheNextPlaceAndRefusesARaiseTooEarly) {
    care::Situation situation = situationAt(10);
    auto first = care::checkedRecord(situation, careOf(cleaver(), "blade_rotate", 1));
    ASSERT_TRUE(first);
    EXPECT_EQ(first->blade, (BladePlace{1, 2}));
    EXPECT_FALSE(care::checkedRecord(situation, careOf(cleaver(), "blade_raise", 1)));
    CareRecord last = careOf(cleaver(), "blade_rotate", 1);
    last.blade = BladePlace{1, 16};
    situation.records = {last};
    auto raise = care::checkedRecord(situation, careOf(cleaver(), "blade_raise", 2));
    ASSERT_TRUE(raise);
    EXPECT_EQ(raise->blade, (BladePlace{2, 1}));
    EXPECT_FALSE(care::checkedRecord(situation, careOf(cleaver(), "blade_rotate", 2)));
    last.blade = BladePlace{3, 16};
    situation.records = {last};
    EXPECT_FALSE(care::checkedRecord(situation, careOf(cleaver(), "blade_rotate", 2)));
    CareRecord fresh = careOf(cleaver(), "blade_rotate", 2);
    fresh.fields[std::string(care::field::newBlade)] = "yes";
    ASSERT_TRUE(care::checkedRecord(situation, fresh));
    EXPECT_EQ(care::checkedRecord(situation, fresh)->blade, (BladePlace{1, 1}));
}

RC_GTEST_PROP(Blade, VisitsEveryPlaceOnceInOrder, ()) {
    const Cleaver blade{*rc::gen::inRange(1, 25), *rc::gen::inRange(1, 10)};
    BladePlace place;
    int places = 1;
    while (const auto next = nextPlace(blade, place)) {
        RC_ASSERT(std::pair(place.height, place.position) < std::pair(next->height, next->position));
        RC_ASSERT(next->height == place.height || place.position == blade.positions);
        place = *next;
        ++places;
    }
    RC_ASSERT(places == blade.positions * blade.heights);
}

TEST(BladeGrid, CountsFibresPerPlaceAndStartsAnewWithANewBlade) {
    care::Situation situation = situationAt(10);
    addArcs(situation.histories[0], 0, 1, 10, 12);
    addArcs(situation.histories[0], 2, 3, 5, 12);
    CareRecord turn = careOf(cleaver(), "blade_rotate", 1.5);
    situation.records = {turn};
    auto life = *lifeOf(situation, cleaver().id);
    ASSERT_TRUE(life.blade);
    EXPECT_EQ(life.blade->cells.size(), 48U);
    EXPECT_EQ(life.blade->cells[0].cleaves, 10U * 12 * 2);
    EXPECT_EQ(life.blade->cells[0].state, CellState::Spent);
    EXPECT_EQ(life.blade->cells[1].cleaves, 5U * 12 * 2);
    EXPECT_EQ(life.blade->cells[1].state, CellState::Now);
    EXPECT_EQ(life.blade->cells[2].state, CellState::Untouched);
    EXPECT_EQ(life.pairedWith, mass().id);
    CareRecord fresh = careOf(cleaver(), "blade_rotate", 4);
    fresh.blade = BladePlace{1, 1};
    fresh.fields[std::string(care::field::newBlade)] = "yes";
    situation.records.push_back(fresh);
    life = *lifeOf(situation, cleaver().id);
    EXPECT_EQ(life.blade->cells[0].cleaves, 0U);
    EXPECT_EQ(life.blade->cells[0].state, CellState::Now);
    EXPECT_EQ(life.blade->fitted, at(4));
}

}  // namespace
}  // namespace arc::kit
