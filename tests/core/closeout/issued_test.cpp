// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/issued.hpp"

#include <gtest/gtest.h>

#include "tests/support/closeout_job.hpp"

namespace arc::closeout {
namespace {

IssuedRecord issued(int id, int number, std::optional<int> supersedes = {}) {
    IssuedRecord record;
    record.id = test::idOf<EntryId>(id);
    record.number = number;
    record.supersedes = supersedes;
    return record;
}

TEST(IssuedRecords, AreNumberedOneAfterTheOther) {
    EXPECT_EQ(nextNumber({}), 1);
    EXPECT_EQ(latestNumber({}), std::nullopt);
    const std::vector<IssuedRecord> two{issued(1, 1), issued(2, 2, 1)};
    EXPECT_EQ(nextNumber(two), 3);
    EXPECT_EQ(supersededBy(two[0], two), 2);
    EXPECT_EQ(supersededBy(two[1], two), std::nullopt);
    EXPECT_TRUE(numbersGivenTwice(two).empty());
}

// Two laptops issue without knowing of each other; the satchel brings both numbers into one logbook.
TEST(IssuedRecords, ANumberGivenTwiceIsSeenAndTheNextOneSupersedesBoth) {
    std::vector<IssuedRecord> clash{issued(1, 1), issued(2, 2, 1), issued(3, 2, 1)};
    EXPECT_EQ(numbersGivenTwice(clash), std::vector<int>{2});
    EXPECT_EQ(nextNumber(clash), 3);
    EXPECT_EQ(supersededBy(clash[1], clash), std::nullopt);
    clash.push_back(issued(4, 3, 2));
    EXPECT_EQ(supersededBy(clash[1], clash), 3);
    EXPECT_EQ(supersededBy(clash[2], clash), 3);
}

}  // namespace
}  // namespace arc::closeout
