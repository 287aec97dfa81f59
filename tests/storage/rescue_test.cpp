// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook with a damaged page: said at once when it is met, read as far as it goes, rescued into a new one.
#include "storage/rescue.hpp"

#include <fstream>
#include <gtest/gtest.h>

#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

class RescueTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = createLogbook(file(), clock_, random_).value();
        const auto kit = test::addKit(*book, clock_, random_);
        std::vector<Entry> entries;
        for (int i = 0; i < 400; ++i) {
            ids_.push_back(makeId<ArcId>(clock_, random_));
            entries.emplace_back(test::arcOf(kit, ids_.back(), 1'900'000'000'000 + i, 12));
        }
        ASSERT_TRUE(book->append(entries, test::testContext));
    }
    [[nodiscard]] std::filesystem::path file() const { return folder_ / "crew.arcbook"; }
    /// Overwrites one page; nobody has the book open.
    void damage(std::uintmax_t page) {
        std::fstream disk(file(), std::ios::in | std::ios::out | std::ios::binary);
        disk.seekp(static_cast<std::streamoff>(page * 4096));
        disk << std::string(4096, '\x5a');
    }
    std::size_t found(const std::filesystem::path& book) {
        return test::wholeArcs(book, ids_, clock_, random_);
    }
    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
    std::vector<ArcId> ids_;
};

TEST_F(RescueTest, ASoundBookComesAcrossWhole) {
    NoProgress unwatched;
    const auto rescued = rescueBook(file(), folder_ / "new.arcbook", clock_, random_, unwatched);
    ASSERT_TRUE(rescued) << rescued.error().sentence();
    EXPECT_EQ(rescued->partly + rescued->lost, 0u);
    EXPECT_EQ(found(folder_ / "new.arcbook"), ids_.size());
    const auto verdict = verifyBook(folder_ / "new.arcbook", unwatched);
    EXPECT_TRUE(verdict) << verdict.error().sentence();
}

TEST_F(RescueTest, WhateverPageIsDamagedTheRestIsRescuedAndVerifies) {
    NoProgress unwatched;
    const auto pages = std::filesystem::file_size(file()) / 4096;
    const auto pristine = folder_ / "pristine";
    std::filesystem::copy_file(file(), pristine);
    std::size_t tried = 0;
    std::size_t opened = 0;
    std::size_t most = 0;
    for (std::uintmax_t page = 5; page < pages; page += pages / 40 + 1) {
        std::filesystem::copy_file(pristine, file(), std::filesystem::copy_options::overwrite_existing);
        damage(page);
        ++tried;
        EXPECT_FALSE(verifyBook(file(), unwatched)) << "page " << page;
        const auto fresh = folder_ / ("rescued-" + std::to_string(page) + ".arcbook");
        const auto rescued = rescueBook(file(), fresh, clock_, random_, unwatched);
        if (!rescued) {
            EXPECT_EQ(rescued.error().code, ProblemCode::Damaged) << rescued.error().sentence();
            continue;
        }
        ++opened;
        const auto verdict = verifyBook(fresh, unwatched);
        EXPECT_TRUE(verdict) << "page " << page << ": " << verdict.error().sentence();
        most = std::max(most, found(fresh));
    }
    EXPECT_GE(opened + 1, tried);  // a page of the list of tables itself cannot be done without
    EXPECT_GT(most, ids_.size() * 9 / 10);
}

}  // namespace
}  // namespace arc::storage
