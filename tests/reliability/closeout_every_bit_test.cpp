// SPDX-License-Identifier: GPL-3.0-or-later
// Every single bit of every file of a small closeout record: a change of any of them is found.
#include <gtest/gtest.h>

#include "tests/support/closeout_folder.hpp"
#include "tests/support/fakes.hpp"

namespace arc::storage {
namespace {

TEST(CloseoutEveryBit, OfASmallRecordIsGuarded) {
    test::TempFolder temporary;
    auto book = test::smallJob();
    book.arcList.resize(1);
    book.closureList[0].plan.clear();
    const auto folder = test::sealedFolder(test::recordOf(book), temporary / "record", temporary / "home");
    EXPECT_GT(test::flipBits(folder, test::Bits::All), 80'000u);
    NoProgress progress;
    EXPECT_TRUE(verifyCloseout(folder, progress));
}

}  // namespace
}  // namespace arc::storage
