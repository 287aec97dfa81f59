// SPDX-License-Identifier: GPL-3.0-or-later
// Every single bit of every file of a small closeout record, pages and workbook too, as the program writes
// it: a change of any of them is found. One test a file, so that they run side by side.
#include <cstdlib>
#include <gtest/gtest.h>

#include "app/closeout_report.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/support/closeout_folder.hpp"
#include "tests/support/fakes.hpp"

namespace arc::app {
namespace {

class CloseoutEveryBit : public testing::TestWithParam<const char*> {};

TEST_P(CloseoutEveryBit, OfASmallRecordIsGuarded) {
    test::TempFolder temporary;
    ::setenv("ARCWRIGHT_HOME", (temporary / "home").c_str(), 1);
    test::FakeClock clock;
    test::FakeRandom random;
    auto small = test::smallJob();
    small.arcList[0].closure.reset();
    auto book = storage::createLogbook(temporary / "crew.arcbook", clock, random).value();
    const std::vector<Entry> entries{small.toolList[0], small.toolList[1], small.jobList[0],
                                     small.arcList[0]};
    ASSERT_TRUE(book->append(entries, {"Ada", "test", {}}));
    CloseoutRequest request;
    request.job = small.jobList[0].id;
    request.folder = temporary / "record";
    NoProgress progress;
    const auto written = writeCloseoutFolder(*book, request, clock, random, progress);
    ASSERT_TRUE(written) << written.error().sentence();
    const auto file = written->folder / GetParam();
    std::size_t others = 0;
    for (const auto& entry : std::filesystem::directory_iterator(written->folder))
        others += entry.path() != file;
    if (!std::filesystem::exists(file)) GTEST_SKIP() << "this build makes no pages";
    EXPECT_LE(others, 5u) << "a file of the record of which no bits are flipped";
    EXPECT_EQ(test::flipBits(file, test::Bits::All), 8 * std::filesystem::file_size(file));
    EXPECT_TRUE(storage::verifyCloseout(written->folder, progress)) << "all was put back";
}

INSTANTIATE_TEST_SUITE_P(Of, CloseoutEveryBit,
                         testing::Values("record.pdf", "record.xlsx", "splices.csv", "record.json",
                                         "manifest.json", "manifest.sig"),
                         [](const auto& file) {
                             std::string name = file.param;
                             name[name.find('.')] = '_';
                             return name;
                         });

}  // namespace
}  // namespace arc::app
