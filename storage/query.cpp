// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/query.hpp"

#include <SQLiteCpp/Exception.h>
#include <algorithm>
#include <stdexcept>

namespace arc::storage {

Query::~Query() {
    if (statement_ == nullptr) return;
    sqlite3_reset(statement_);
    sqlite3_clear_bindings(statement_);
}

void Query::check(int code) const {
    if (code != SQLITE_OK) throw SQLite::Exception(sqlite3_db_handle(statement_), code);
}

Query& Query::with(std::int64_t value) {
    check(sqlite3_bind_int64(statement_, next_++, value));
    return *this;
}

Query& Query::with(std::string_view value) {
    // A view without storage would be bound as NULL.
    const char* const data = value.data() != nullptr ? value.data() : "";
    check(sqlite3_bind_text64(statement_, next_++, data, value.size(), SQLITE_STATIC, SQLITE_UTF8));
    return *this;
}

Query& Query::with(Bytes value) {
    const void* const data = value.data() != nullptr ? static_cast<const void*>(value.data()) : "";
    check(sqlite3_bind_blob64(statement_, next_++, data, value.size(), SQLITE_STATIC));
    return *this;
}

Query& Query::withNothing() {
    check(sqlite3_bind_null(statement_, next_++));
    return *this;
}

bool Query::step() {
    const int code = sqlite3_step(statement_);
    if (code == SQLITE_ROW) return true;
    if (code == SQLITE_DONE) return false;
    throw SQLite::Exception(sqlite3_db_handle(statement_), code);
}

void Query::run() {
    step();
    sqlite3_reset(statement_);
    next_ = 1;
}

bool Query::isNull(int column) const {
    return sqlite3_column_type(statement_, column) == SQLITE_NULL;
}

std::int64_t Query::integer(int column) const {
    return sqlite3_column_int64(statement_, column);
}

std::optional<std::int64_t> Query::maybeInteger(int column) const {
    if (isNull(column)) return std::nullopt;
    return integer(column);
}

std::string_view Query::text(int column) const {
    const auto* const data = reinterpret_cast<const char*>(sqlite3_column_text(statement_, column));
    if (data == nullptr) return {};
    return {data, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column))};
}

Bytes Query::bytes(int column) const {
    const auto* const data = static_cast<const std::uint8_t*>(sqlite3_column_blob(statement_, column));
    if (data == nullptr) return {};
    return {data, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column))};
}

Uuid Query::uuid(int column) const {
    const Bytes raw = bytes(column);
    Uuid uuid;
    if (raw.size() != uuid.bytes.size()) throw std::runtime_error("an identity of the wrong length");
    std::copy(raw.begin(), raw.end(), uuid.bytes.begin());
    return uuid;
}

}  // namespace arc::storage
