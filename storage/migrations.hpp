// SPDX-License-Identifier: GPL-3.0-or-later
// Numbered SQL files, storage/migrations/NNNN_name.sql, one transaction each with user_version inside. A
// released file never changes; a new schema is a new file.
#pragma once
#include <functional>
#include <span>
#include <string_view>

#include "core/result.hpp"
#include "storage/connection.hpp"
#include "storage/embedded_files.hpp"

namespace arc::storage {

enum class SchemaState { Current, Older, Newer, NotALogbook };

/// Number of the newest schema this program knows.
int newestSchema();

/// Looks, changes nothing.
SchemaState schemaState(Connection& connection);

/// Whether tables and indices are exactly those that the migrations make.
bool hasSchemaOfLogbook(Connection& connection);

/// Runs what is missing. Each step is all or nothing; after a failed one the book is at the last good schema.
/// Throws SQLite::Exception.
void migrate(Connection& connection, std::span<const EmbeddedFile> migrations);

}  // namespace arc::storage
