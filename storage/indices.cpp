// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/indices.hpp"

#include "storage/migrations.hpp"

namespace arc::storage {

std::vector<std::string> dropIndices(Connection& connection, const std::string& table) {
    if (!hasSchemaOfLogbook(connection)) return {};
    std::vector<std::string> names, made;
    {
        Query q = connection.query(
            "SELECT name, sql FROM sqlite_schema WHERE type = 'index' AND tbl_name = ? "
            "AND sql IS NOT NULL ORDER BY rowid");
        q.with(table);
        while (q.step()) {
            names.emplace_back(q.text(0));
            made.emplace_back(q.text(1));
        }
    }
    for (const auto& name : names) connection.execute("DROP INDEX " + name);
    return made;
}

}  // namespace arc::storage
