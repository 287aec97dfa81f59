// SPDX-License-Identifier: GPL-3.0-or-later
// A prepared statement in use. Over the C interface and not over the wrapper's Statement, because every row
// of an import passes here: binding does not copy, statements are kept, and the end of a Query resets its
// statement, so that no forgotten read holds the log back. Errors throw SQLite::Exception.
#pragma once
#include <cstdint>
#include <optional>
#include <span>
#include <sqlite3.h>
#include <string_view>
#include <utility>

#include "core/units/id.hpp"

namespace arc::storage {

using Bytes = std::span<const std::uint8_t>;

class Query {
  public:
    explicit Query(sqlite3_stmt* statement) : statement_(statement) {}
    Query(Query&& other) noexcept
        : statement_(std::exchange(other.statement_, nullptr)), next_(other.next_) {}
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;
    Query& operator=(Query&&) = delete;
    ~Query();

    /// The next value goes to parameter `index` (from 1).
    Query& at(int index) {
        next_ = index;
        return *this;
    }
    // Binds the next parameter. Text and bytes must live until the Query ends.
    Query& with(std::int64_t value);
    Query& with(int value) { return with(static_cast<std::int64_t>(value)); }
    Query& with(std::uint64_t value) { return with(static_cast<std::int64_t>(value)); }
    Query& with(std::string_view value);
    Query& with(Bytes value);
    Query& with(const std::string& value) { return with(std::string_view(value)); }
    Query& with(const char*) = delete;
    Query& with(const Uuid& value) { return with(Bytes(value.bytes)); }
    Query& withNothing();
    template <class T>
    Query& with(const std::optional<T>& value) {
        return value ? with(*value) : withNothing();
    }

    /// True while there is a row.
    bool step();
    /// For statements without rows: runs and makes it ready for the next set of values.
    void run();

    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::optional<std::int64_t> maybeInteger(int column) const;
    /// Valid until the next step.
    [[nodiscard]] std::string_view text(int column) const;
    [[nodiscard]] Bytes bytes(int column) const;
    /// Throws std::runtime_error when the column does not hold 16 bytes.
    [[nodiscard]] Uuid uuid(int column) const;

  private:
    void check(int code) const;
    sqlite3_stmt* statement_;
    int next_ = 1;
};

}  // namespace arc::storage
