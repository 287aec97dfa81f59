// SPDX-License-Identifier: GPL-3.0-or-later
// Rolling backups: made when due, bounded in number, age and size, and every one of them can be restored.
#include "storage/rolling_backup.hpp"

#include <fstream>
#include <gtest/gtest.h>

#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

constexpr std::int64_t hour = 3'600'000;

class RollingBackupTest : public ::testing::Test {
  protected:
    void SetUp() override {
        book_ = createLogbook(file(), clock_, random_).value();
        test::addKit(*book_, clock_, random_);
    }
    [[nodiscard]] std::filesystem::path file() const { return folder_ / "crew.arcbook"; }
    void save(const Entry& entry) { ASSERT_TRUE(book_->append(entry, test::testContext)); }
    bool madeOne() {
        NoProgress unwatched;
        const auto made = addBackupIfDue(file(), clock_, unwatched);
        EXPECT_TRUE(made) << made.error().sentence();
        return made && made->has_value();
    }
    std::vector<BackupCopy> copies() { return backupsOf(file(), backupPlan(file()).value()); }
    /// A day passes and something is written.
    void dayOfWork(int day) {
        clock_.at.ms += 25 * hour;
        save(Setting{"day", std::to_string(day)});
    }
    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
    std::unique_ptr<Logbook> book_;
};

TEST_F(RollingBackupTest, IsMadeWhenTheNewestIsTooOldAndSomethingWasWritten) {
    EXPECT_FALSE(madeOne()) << "the logbook is of today";
    clock_.at.ms += 25 * hour;
    EXPECT_TRUE(madeOne());
    EXPECT_FALSE(madeOne());
    clock_.at.ms += 25 * hour;
    EXPECT_FALSE(madeOne()) << "nothing was written since";
    save(Setting{"a", "1"});
    EXPECT_TRUE(madeOne());
    const auto list = copies();
    ASSERT_EQ(list.size(), 2u);
    EXPECT_GT(list[0].madeAt, list[1].madeAt);
    EXPECT_GT(list[0].bytes, 0u);
    EXPECT_EQ(list[0].file.parent_path(), file().string() + ".backups");
}

TEST_F(RollingBackupTest, SettingsSayHowOftenWhereAndNotAtAll) {
    save(Setting{std::string(backup_setting::everyHours), "off"});
    clock_.at.ms += 1'000 * hour;
    EXPECT_FALSE(madeOne());
    save(Setting{std::string(backup_setting::everyHours), "2"});
    save(Setting{std::string(backup_setting::folder), (folder_ / "elsewhere").string()});
    EXPECT_TRUE(madeOne());
    EXPECT_EQ(copies().front().file.parent_path(), folder_ / "elsewhere");
    save(Setting{std::string(backup_setting::everyHours), "often"});
    EXPECT_EQ(backupPlan(file())->everyHours, 24) << "what makes no sense is the default";
}

TEST_F(RollingBackupTest, NumberAgeAndSizeAreBounded) {
    save(Setting{std::string(backup_setting::keepCopies), "3"});
    for (int day = 0; day < 6; ++day) {
        dayOfWork(day);
        EXPECT_TRUE(madeOne());
    }
    ASSERT_EQ(copies().size(), 3u);
    const auto newest = copies()[0].madeAt;
    save(Setting{std::string(backup_setting::keepDays), "1"});
    dayOfWork(7);
    EXPECT_TRUE(madeOne());
    ASSERT_EQ(copies().size(), 1u) << "the others are older than a day";
    EXPECT_GT(copies()[0].madeAt, newest);
    save(Setting{std::string(backup_setting::keepDays), "60"});
    save(Setting{std::string(backup_setting::keepMegabytes), "1"});
    std::string photo(700'000, 'x');
    save(Attachment{makeId<EntryId>(clock_, random_), book_->tools()->front().id.uuid, "a.jpg", "image/jpeg",
                    photo});
    for (int day = 8; day < 11; ++day) {
        dayOfWork(day);
        EXPECT_TRUE(madeOne());
    }
    EXPECT_EQ(copies().size(), 1u) << "two of them are more than a megabyte";
}

TEST_F(RollingBackupTest, OtherFilesInTheFolderAreLeftAlone) {
    save(Setting{std::string(backup_setting::keepCopies), "2"});
    const auto folder = std::filesystem::path(file().string() + ".backups");
    std::filesystem::create_directory(folder);
    for (const char* name : {"holiday.jpg", "crew-20200101T000000Z.arcbook.old", "crew-first.arcbook",
                             "other-20200101T000000Z.arcbook"})
        std::ofstream(folder / name) << "x";
    for (int day = 0; day < 4; ++day) {
        dayOfWork(day);
        madeOne();
    }
    EXPECT_EQ(copies().size(), 2u);
    for (const char* name : {"holiday.jpg", "crew-20200101T000000Z.arcbook.old", "crew-first.arcbook",
                             "other-20200101T000000Z.arcbook"})
        EXPECT_TRUE(std::filesystem::exists(folder / name)) << name;
}

TEST_F(RollingBackupTest, ACopyIsRestoredUnderANewName) {
    save(Setting{"a", "then"});
    clock_.at.ms += 25 * hour;
    ASSERT_TRUE(madeOne());
    const std::string head = book_->journalHead().value();
    save(Setting{"a", "now"});
    NoProgress unwatched;
    const auto restored = folder_ / "restored.arcbook";
    ASSERT_TRUE(restoreBackup(copies().front().file, restored, unwatched));
    auto again = openLogbook(restored, OpenMode::ReadWrite, clock_, random_).value();
    EXPECT_EQ(again->setting("a").value(), "then");
    EXPECT_EQ(again->journalHead(), head);
    ASSERT_TRUE(again->append(Setting{"a", "and on"}, test::testContext));
    again.reset();
    EXPECT_EQ(verifyBook(restored, unwatched)->devices, 2u) << "it goes on with a chain of its own";
    EXPECT_EQ(restoreBackup(copies().front().file, restored, unwatched).error().code, ProblemCode::Refused);
    EXPECT_EQ(book_->setting("a").value(), "now") << "the book in use is left as it is";
}

TEST_F(RollingBackupTest, ADamagedCopyIsNotRestored) {
    clock_.at.ms += 25 * hour;
    ASSERT_TRUE(madeOne());
    {
        std::fstream copy(copies().front().file, std::ios::in | std::ios::out | std::ios::binary);
        copy.seekp(9 * 4096);
        copy << std::string(4096, '\x5a');
    }
    NoProgress unwatched;
    const auto answer = restoreBackup(copies().front().file, folder_ / "restored.arcbook", unwatched);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::Damaged);
    EXPECT_FALSE(std::filesystem::exists(folder_ / "restored.arcbook"));
}

TEST_F(RollingBackupTest, AFolderThatCannotBeWrittenIsToldAndSavesNothingLess) {
    std::ofstream(file().string() + ".backups") << "a file in the way";
    clock_.at.ms += 25 * hour;
    NoProgress unwatched;
    EXPECT_FALSE(addBackupIfDue(file(), clock_, unwatched));
    save(Setting{"a", "1"});
}

}  // namespace
}  // namespace arc::storage
