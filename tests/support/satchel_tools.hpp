// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody with an accepted key can do to a satchel: change its content or its label and sign it again.
#pragma once
#include <filesystem>
#include <functional>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include "storage/satchel_file.hpp"
#include "tests/support/laptop.hpp"

namespace arc::test {

/// Runs SQL on a database file, past everything a logbook forbids.
inline void rawSql(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* db = nullptr;
    sqlite3_open(file.c_str(), &db);
    EXPECT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
    sqlite3_close(db);
}

/// Makes of a logbook what an older program would have made of the same entries.
inline constexpr const char* backToSchema2 =
    "DROP TABLE mention; DROP TABLE phrase; DROP INDEX arc_operator; PRAGMA user_version = 2";

/// The same satchel with another payload, and a label that says so, signed by the same laptop.
inline std::filesystem::path forged(Laptop& by, const std::filesystem::path& satchel,
                                    const std::function<void(const std::filesystem::path&)>& changePayload,
                                    const std::function<void(storage::SatchelLabel&)>& changeLabel = {}) {
    auto label = storage::readSatchelLabel(satchel).value();
    const auto payload = storage::openPayload(satchel, label, {}).value();
    changePayload(payload.path());
    if (changeLabel) changeLabel(label);
    const auto file = by.folder / ("forged-" + std::to_string(++by.packed) + ".satchel");
    const auto written = storage::writeSatchelFile(file, label, payload.path(), {}, by.key, by.random);
    EXPECT_TRUE(written) << written.error().sentence();
    return file;
}

}  // namespace arc::test
