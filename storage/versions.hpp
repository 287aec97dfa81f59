// SPDX-License-Identifier: GPL-3.0-or-later
// All versions of one record, arc or reading with what each of them knew of. Inside storage only.
#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "storage/batch.hpp"
#include "storage/connection.hpp"
#include "storage/ledger.hpp"

namespace arc::storage {

struct Version {
    Uuid device;
    std::int64_t seq = 0, tick = 0;
    Digest hash{};  ///< of its journal row
    std::vector<Base> bases;
    Instant at;
    Stamp stamp;
    std::string deviceName;
    std::variant<RecordRow, SpliceArc, Reading> what;  ///< the arc without its readings
    /// Of each device the last entry that the writer of this version knew, itself included.
    std::map<Uuid, std::int64_t> known;

    [[nodiscard]] bool knew(const Version& other) const;
    [[nodiscard]] bool isWithdrawal() const;
    [[nodiscard]] Base base() const { return halfOf(hash); }
    /// "tool", "arc", "reading", …
    [[nodiscard]] std::string kind() const;
    [[nodiscard]] std::optional<int> channel() const;
    /// What it says, as JSON: equal texts say the same.
    [[nodiscard]] std::string content() const;
};

/// In the order that all laptops see.
std::vector<Version> versionsOf(Connection& connection, const Uuid& id);

}  // namespace arc::storage
