// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/migrations.hpp"

#include <algorithm>
#include <charconv>
#include <string>
#include <vector>

namespace arc::storage {
namespace {

int numberOf(const EmbeddedFile& file) {
    int number = 0;
    std::from_chars(file.name.data(), file.name.data() + std::min<std::size_t>(4, file.name.size()), number);
    return number;
}

std::vector<EmbeddedFile> inOrder(std::span<const EmbeddedFile> files) {
    std::vector<EmbeddedFile> sorted(files.begin(), files.end());
    std::sort(sorted.begin(), sorted.end(),
              [](const EmbeddedFile& a, const EmbeddedFile& b) { return numberOf(a) < numberOf(b); });
    return sorted;
}

}  // namespace

int newestSchema() {
    int newest = 0;
    for (const auto& file : embedded_migrations()) newest = std::max(newest, numberOf(file));
    return newest;
}

SchemaState schemaState(Connection& connection) {
    const std::int64_t application = connection.number("PRAGMA application_id");
    if (application != bookApplicationId) return SchemaState::NotALogbook;
    const std::int64_t version = connection.number("PRAGMA user_version");
    if (version > newestSchema()) return SchemaState::Newer;
    return version == newestSchema() ? SchemaState::Current : SchemaState::Older;
}

bool hasSchemaOfLogbook(Connection& connection) {
    const auto listOf = [](Connection& from) {
        std::vector<std::string> list;
        Query q =
            from.query("SELECT type || ' ' || name || ': ' || ifnull(sql, '') FROM sqlite_schema ORDER BY 1");
        while (q.step()) list.emplace_back(q.text(0));
        return list;
    };
    Connection model(":memory:", Access::Create);
    migrate(model, embedded_migrations());
    return listOf(model) == listOf(connection);
}

void migrate(Connection& connection, std::span<const EmbeddedFile> migrations) {
    for (const auto& file : inOrder(migrations)) {
        const int number = numberOf(file);
        WriteTransaction transaction(connection);
        if (connection.number("PRAGMA user_version") >= number) continue;
        connection.execute(std::string(file.text));
        connection.execute("PRAGMA user_version = " + std::to_string(number));
        connection.execute("PRAGMA application_id = " + std::to_string(bookApplicationId));
        transaction.commit();
    }
}

}  // namespace arc::storage
