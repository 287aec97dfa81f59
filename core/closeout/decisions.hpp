// SPDX-License-Identifier: GPL-3.0-or-later
// What QA decides on a closeout: a disposition per exception, and that a record was issued.
#pragma once
#include <optional>
#include <string>

#include "core/units/id.hpp"
#include "core/units/instant.hpp"

namespace arc {

struct ExceptionDisposition {
    EntryId id;
    JobId job;
    std::string exceptionKey;  ///< stable key of the exception, see closeout/record
    std::string disposition;   ///< what was decided
    std::string reason;
    std::string by;
    Instant at;
    bool operator==(const ExceptionDisposition&) const = default;
};

/// A final record went out. Never changed; a later one may supersede it.
struct IssuedRecord {
    EntryId id;
    JobId job;
    int number = 1;                 ///< counts up per job
    std::string manifestSha256;     ///< of the manifest file, lower-case hex
    std::optional<int> supersedes;  ///< number of the record this one replaces
    std::string by;
    Instant at;
    bool operator==(const IssuedRecord&) const = default;
};

}  // namespace arc
