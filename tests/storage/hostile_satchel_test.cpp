// SPDX-License-Identifier: GPL-3.0-or-later
// Satchels of somebody whose key was accepted and who means no good: refused, or harmless.
#include <fstream>
#include <gtest/gtest.h>

#include "storage/batch_reader.hpp"
#include "storage/migrations.hpp"
#include "tests/support/satchel_tools.hpp"

namespace arc::storage {
namespace {

using test::forged;
using test::Laptop;
using test::rawSql;

class HostileSatchel : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = from_.open();
        kit_ = test::addKit(*book, from_.clock, from_.random);
        head_ = to_.head();
    }
    std::filesystem::path changed(const std::string& sql) {
        return forged(from_, from_.pack(), [&sql](const auto& payload) { rawSql(payload, sql); });
    }
    Problem refusal(const std::filesystem::path& satchel) {
        const auto answer = to_.take(satchel);
        EXPECT_FALSE(answer);
        EXPECT_EQ(to_.head(), head_);
        to_.expectSound();
        return answer ? Problem{} : answer.error();
    }
    Laptop from_{1}, to_{2};
    test::SmallKit kit_;
    std::string head_;
};

// Found by fuzzing: an empty payload could not even be put into a satchel, for want of "room".
TEST_F(HostileSatchel, AnEmptyPayloadIsRefusedAsDamaged) {
    const auto problem = refusal(
        forged(from_, from_.pack(), [](const auto& payload) { std::filesystem::resize_file(payload, 0); }));
    EXPECT_EQ(problem.code, ProblemCode::Damaged) << problem.sentence();
}

// Found by fuzzing: a length of 1e90 has no defined form as a whole number.
TEST_F(HostileSatchel, ALabelWithANumberBeyondEveryRangeIsRefusedAsDamaged) {
    const auto satchel = from_.pack();
    std::ifstream in(satchel, std::ios::binary);
    const std::string sound(std::istreambuf_iterator<char>(in), {});
    for (const std::string name : {"\"payload_bytes\":", "\"schema\":"}) {
        const auto at = sound.find(name) + name.size();
        ASSERT_LT(at, sound.size());
        std::string bytes = sound;
        bytes.replace(at, sound.find(',', at) - at, "1e90");
        std::ofstream(satchel, std::ios::binary | std::ios::trunc) << bytes;
        const auto problem = refusal(satchel);
        EXPECT_EQ(problem.code, ProblemCode::Damaged) << problem.sentence();
        EXPECT_NE(problem.sentence().find("label"), std::string::npos) << problem.sentence();
    }
}

TEST_F(HostileSatchel, StoredTriggersViewsAndTablesAreRefused) {
    for (const char* sql : {"CREATE TRIGGER spy AFTER INSERT ON record BEGIN DELETE FROM journal; END",
                            "CREATE VIEW more AS SELECT * FROM journal, journal, journal",
                            "CREATE TABLE extra(x)", "DROP INDEX record_id",
                            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = 'CREATE VIEW record "
                            "AS SELECT 1' WHERE name = "
                            "'headline'"}) {
        const Problem problem = refusal(changed(sql));
        EXPECT_EQ(problem.code, ProblemCode::Damaged) << sql << ": " << problem.sentence();
    }
}

TEST_F(HostileSatchel, SqlInLabelsIsText) {
    Tool tool = kit_.splicer;
    tool.label = "S'); DROP TABLE record; --";
    tool.nickname = "\" OR 1=1; DELETE FROM journal";
    from_.save(tool);
    from_.save(Setting{"k'; DROP TABLE word; --", "v'); DELETE FROM arc; --"});
    ASSERT_TRUE(to_.take(from_.pack()));
    to_.expectSound();
    EXPECT_EQ(to_.open()->tools(), from_.open()->tools());
}

TEST_F(HostileSatchel, ANameOfAnAttachmentIsNeverAPath) {
    const std::string name = "../../../../tmp/arcwright-was-here";
    from_.save(Attachment{makeId<EntryId>(from_.clock, from_.random), kit_.splicer.id.uuid, name,
                          "image/jpeg", "x"});
    ASSERT_TRUE(to_.take(from_.pack()));
    EXPECT_EQ(to_.open()->attachments(kit_.splicer.id.uuid)->front().name, name);
    EXPECT_FALSE(std::filesystem::exists("/tmp/arcwright-was-here"));
    for (const auto& entry : std::filesystem::directory_iterator(to_.folder.path))
        EXPECT_TRUE(entry.path().filename().string().starts_with("crew.arcbook")) << entry.path();
}

TEST_F(HostileSatchel, ASizeThatIsOnlyClaimedIsNotBelieved) {
    const auto satchel = from_.pack();
    std::ifstream in(satchel, std::ios::binary);
    const std::string good((std::istreambuf_iterator<char>(in)), {});
    const auto lineEnd = good.find('\n', good.find('\n') + 1) + 1;
    std::string lines = good.substr(0, lineEnd);
    const auto at = lines.find("\"payload_bytes\":") + 16;
    lines.replace(at, lines.find(',', at) - at, "9000000000000000000");
    const Signature signature = sign(from_.key, lines);
    const auto file = from_.folder / "claims.satchel";
    std::ofstream(file, std::ios::binary)
        << lines << std::string(reinterpret_cast<const char*>(signature.data()), signature.size())
        << good.substr(lineEnd + signature.size());
    const Problem problem = refusal(file);
    EXPECT_EQ(problem.code, ProblemCode::Damaged);
    EXPECT_NE(problem.what.find("cut off"), std::string::npos) << problem.sentence();
}

TEST_F(HostileSatchel, ALabelWithoutEndIsNotRead) {
    const auto file = from_.folder / "long.satchel";
    std::ofstream(file, std::ios::binary) << "arcwright satchel 1\n" << std::string(1 << 20, '{');
    EXPECT_EQ(refusal(file).code, ProblemCode::Damaged);
}

// One page hung into the tree at every place makes a small file of endless rows.
TEST_F(HostileSatchel, ARowBombIsRefused) {
    {
        auto book = from_.open();
        std::vector<Entry> entries;
        for (int i = 0; i < 3'000; ++i)
            entries.emplace_back(Setting{"key" + std::to_string(i), std::string(500, 'x')});
        ASSERT_TRUE(book->append(entries, test::testContext));
    }
    const auto bomb = forged(from_, from_.pack(), [](const auto& payload) {
        std::uint32_t root = 0;
        {
            Connection look(payload, Access::ReadOnly);
            root = static_cast<std::uint32_t>(
                look.number("SELECT rootpage FROM sqlite_schema WHERE name = 'record'"));
        }
        std::fstream file(payload, std::ios::in | std::ios::out | std::ios::binary);
        std::string page(4096, '\0');
        file.seekg((root - 1) * 4096);
        file.read(page.data(), 4096);
        ASSERT_EQ(page[0], 0x05) << "an inner page of a table, see SQLite's file format 1.6";
        const auto cells = static_cast<unsigned>(static_cast<unsigned char>(page[3])) * 256 +
                           static_cast<unsigned char>(page[4]);
        const auto cell = [&page](unsigned i) {
            return static_cast<std::size_t>(static_cast<unsigned char>(page[12 + 2 * i])) * 256 +
                   static_cast<unsigned char>(page[13 + 2 * i]);
        };
        for (unsigned i = 1; i < cells; ++i) page.replace(cell(i), 4, page.substr(cell(0), 4));
        file.seekp((root - 1) * 4096);
        file.write(page.data(), 4096);
    });
    EXPECT_EQ(refusal(bomb).code, ProblemCode::Damaged);
}

/// Gives the last journal row other columns and the hash that fits them.
std::filesystem::path withLastRow(Laptop& from, const std::function<void(JournalRow&)>& change) {
    return forged(from, from.pack(), [&change](const auto& payload) {
        Connection connection(payload, Access::ReadWrite);
        BatchReader reader(connection, 1);
        while (reader.next()) {
        }
        JournalRow row = reader.journal();
        change(row);
        row.hash = hashOf(row);
        WriteTransaction transaction(connection);
        connection.query("UPDATE journal SET seq = ?, tick = ?, at_ms = ?, hash = ? WHERE row = ?")
            .with(row.seq)
            .with(row.tick)
            .with(row.at.ms)
            .with(Bytes(row.hash))
            .with(row.row)
            .run();
        connection.query("UPDATE device SET last_seq = ?, last_tick = ?, last_hash = ?")
            .with(row.seq)
            .with(row.tick)
            .with(Bytes(row.hash))
            .run();
        transaction.commit();
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)");
    });
}

TEST_F(HostileSatchel, ACounterThatLeavesNoRoomIsRefused) {
    EXPECT_EQ(refusal(withLastRow(from_, [](JournalRow& row) { row.tick = INT64_MAX; })).code,
              ProblemCode::Damaged);
    EXPECT_EQ(refusal(withLastRow(from_, [](JournalRow& row) { row.tick = 1; })).code, ProblemCode::Damaged);
    EXPECT_EQ(refusal(withLastRow(from_, [](JournalRow& row) { row.at.ms = INT64_MIN; })).code,
              ProblemCode::Damaged);
    EXPECT_FALSE(refusal(withLastRow(from_, [](JournalRow& row) { row.seq += 1; })).what.empty());
}

TEST_F(HostileSatchel, ADeviceIsCalledWhatItCalledItself) {
    EXPECT_EQ(refusal(changed("UPDATE device SET name = 'the office'")).code, ProblemCode::Damaged);
}

TEST_F(HostileSatchel, OfANewerProgramIsRefusedWithASentence) {
    const auto newer = forged(
        from_, from_.pack(), [](const auto&) {},
        [](SatchelLabel& label) { label.schema = newestSchema() + 1; });
    const Problem problem = refusal(newer);
    EXPECT_EQ(problem.code, ProblemCode::Refused);
    EXPECT_NE(problem.sentence().find("newer Arcwright"), std::string::npos) << problem.sentence();
    EXPECT_NE(problem.sentence().find("Install"), std::string::npos);
}

TEST_F(HostileSatchel, OfAnOlderProgramIsTakenIn) {
    const auto older = forged(
        from_, from_.pack(),
        [](const auto& payload) {
            rawSql(payload,
                   std::string(test::backToSchema2) +
                       "; DROP TABLE headline; DROP INDEX arc_hidden; DROP INDEX reading_hidden; PRAGMA "
                       "user_version = 1");
        },
        [](SatchelLabel& label) { label.schema = 1; });
    const auto taken = to_.take(older);
    ASSERT_TRUE(taken) << taken.error().sentence();
    EXPECT_EQ(to_.open()->tools()->size(), 2u);
    to_.expectSound();
}

}  // namespace
}  // namespace arc::storage
