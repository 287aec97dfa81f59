// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/typed_loss.hpp"

#include <gtest/gtest.h>

namespace arc::pad {
namespace {

struct Case {
    const char* text;
    TypedKind kind;
    int mdb;
};

class Typing : public testing::TestWithParam<Case> {};

TEST_P(Typing, IsReadAsAPersonMeansIt) {
    const auto typed = readTyped(GetParam().text);
    EXPECT_EQ(typed.kind, GetParam().kind) << typed.sentence;
    if (GetParam().kind == TypedKind::Loss || GetParam().kind == TypedKind::Doubtful) {
        ASSERT_TRUE(typed.loss);
        EXPECT_EQ(typed.loss->value, GetParam().mdb);
    } else {
        EXPECT_FALSE(typed.loss);
    }
    EXPECT_EQ(typed.sentence.empty(),
              GetParam().kind != TypedKind::Doubtful && GetParam().kind != TypedKind::Impossible);
}

INSTANTIATE_TEST_SUITE_P(
    Losses, Typing,
    testing::Values(Case{"", TypedKind::Empty, 0}, Case{"0", TypedKind::Loss, 0},
                    Case{"4", TypedKind::Loss, 40}, Case{"04", TypedKind::Loss, 40},
                    Case{"12", TypedKind::Loss, 120}, Case{"0.04", TypedKind::Loss, 40},
                    Case{"0,04", TypedKind::Loss, 40}, Case{",125", TypedKind::Loss, 125},
                    Case{".3", TypedKind::Loss, 300}, Case{"1.0", TypedKind::Loss, 1000},
                    Case{"100", TypedKind::Loss, 1000}, Case{"0.", TypedKind::Unfinished, 0},
                    Case{",", TypedKind::Unfinished, 0}, Case{"125", TypedKind::Doubtful, 1250},
                    Case{"1,25", TypedKind::Doubtful, 1250}, Case{"1000", TypedKind::Impossible, 0},
                    Case{"99999999", TypedKind::Impossible, 0}, Case{"-4", TypedKind::Impossible, 0},
                    Case{"0.0.4", TypedKind::Impossible, 0}, Case{"0.0412", TypedKind::Impossible, 0},
                    Case{"4x", TypedKind::Impossible, 0}));

TEST(TypedLoss, SaysHowToWriteThousandths) {
    EXPECT_NE(readTyped("125").sentence.find("0.125"), std::string::npos);
}

TEST(TypedLoss, AWholeRibbonIsReadInOneGo) {
    const auto losses = readTypedList(" 3 4\t2;0,05\r\n11 ");
    ASSERT_TRUE(losses);
    EXPECT_EQ(*losses, (std::vector<Loss>{{30}, {40}, {20}, {50}, {110}}));
}

TEST(TypedLoss, AListWithAMistakeIsRefusedWholeAndSaysWhere) {
    const auto losses = readTypedList("3 4 two 5");
    ASSERT_FALSE(losses);
    EXPECT_EQ(losses.error().where, "value 3");
    EXPECT_FALSE(readTypedList("  \n"));
}

}  // namespace
}  // namespace arc::pad
