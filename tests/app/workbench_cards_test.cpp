// SPDX-License-Identifier: GPL-3.0-or-later
// Care cards as the windows get them: text, edition, version, and what was put aside.
#include <gtest/gtest.h>

#include "app/workbench.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/support/fakes.hpp"

namespace arc::app {
namespace {

class WorkbenchCards : public ::testing::Test {
  protected:
    void SetUp() override {
        book = storage::createLogbook(folder / "crew.arcbook", clock, random).value();
        workbench = makeWorkbench(folder / "crew.arcbook", clock, random);
    }
    static std::string replaced(std::string text, const std::string& from, const std::string& to) {
        const auto at = text.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        return text.replace(at, from.size(), to);
    }
    void adopt(const CardEdition& edition) {
        ASSERT_TRUE(book->append(Entry{edition}, {"supervisor", "test", std::nullopt}));
    }

    test::TempFolder folder;
    test::FakeClock clock;
    test::FakeRandom random;
    std::unique_ptr<Logbook> book;
    std::unique_ptr<Workbench> workbench;
};

TEST_F(WorkbenchCards, TheTextOfACardIsTheOneInForce) {
    const auto shipped = workbench->cardText(*book, "groove_clean");
    ASSERT_TRUE(shipped);
    EXPECT_NE(shipped->find("\"Clean V-grooves\""), std::string::npos);
    const auto edition =
        workbench->cardEdition(*book, replaced(*shipped, "Clean V-grooves", "Brush the grooves"));
    ASSERT_TRUE(edition);
    adopt(*edition);
    EXPECT_NE(workbench->cardText(*book, "groove_clean")->find("Brush the grooves"), std::string::npos);
    EXPECT_FALSE(workbench->cardText(*book, "dance"));
}

TEST_F(WorkbenchCards, AnEditionIsCheckedBeforeItIsAnswered) {
    const std::string shipped = *workbench->cardText(*book, "groove_clean");
    const auto broken = workbench->cardEdition(*book, replaced(shipped, "\"minutes\": 8", "\"minutes\": 0"));
    ASSERT_FALSE(broken);
    EXPECT_NE(broken.error().where.find("line 8"), std::string::npos) << broken.error().where;
    EXPECT_FALSE(workbench->cardEdition(*book, "{"));
    const auto good = workbench->cardEdition(*book, shipped);
    ASSERT_TRUE(good);
    EXPECT_EQ(good->action, "groove_clean");
    EXPECT_EQ(good->version, 2);
    EXPECT_TRUE(book->cardEditions()->empty()) << "it is in force only when it is appended";
    adopt(*good);
    EXPECT_EQ(workbench->cardEdition(*book, shipped)->version, 3);
}

TEST_F(WorkbenchCards, EveryVersionThatWasInForceCanBeHad) {
    const std::string shipped = *workbench->cardText(*book, "groove_clean");
    adopt(*workbench->cardEdition(*book, replaced(shipped, "Clean V-grooves", "Brush the grooves")));
    EXPECT_EQ(workbench->cardOfVersion(*book, "groove_clean", 1)->title, "Clean V-grooves");
    EXPECT_EQ(workbench->cardOfVersion(*book, "groove_clean", 2)->title, "Brush the grooves");
    EXPECT_FALSE(workbench->cardOfVersion(*book, "groove_clean", 3));
    EXPECT_FALSE(workbench->cardOfVersion(*book, "dance", 1));
}

TEST_F(WorkbenchCards, ABrokenEditionIsPutAsideAndTheShippedCardIsUsed) {
    EXPECT_TRUE(workbench->refusedCards(*book)->empty());
    const std::string shipped = *workbench->cardText(*book, "groove_clean");
    adopt({makeId<EntryId>(clock, random), "groove_clean", 2,
           replaced(shipped, "\"minutes\": 8", "\"minutes\": -1")});
    const auto refused = workbench->refusedCards(*book);
    ASSERT_TRUE(refused);
    ASSERT_EQ(refused->size(), 1U);
    EXPECT_NE(refused->front().where.find("line 8"), std::string::npos) << refused->front().where;
    EXPECT_EQ(workbench->cards(*book)->find("groove_clean")->version, 1);
}

}  // namespace
}  // namespace arc::app
