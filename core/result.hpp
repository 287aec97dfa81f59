// SPDX-License-Identifier: GPL-3.0-or-later
// Errors as values. A Problem is one clear sentence for a person: what happened, where, what to do next.
#pragma once
#include <string>
#include <tl/expected.hpp>

namespace arc {

enum class ProblemCode {
    BadInput,     ///< what was given cannot be read or is out of range
    NotFound,     ///< the named thing is not in the logbook
    Refused,      ///< a rule forbids it (read-only, newer schema, held tool)
    Conflict,     ///< somebody else's later entry depends on it
    Damaged,      ///< stored data does not verify
    Unavailable,  ///< disk full, file gone, locked
    Cancelled,    ///< the person stopped it; nothing was changed
    Internal,     ///< our fault
};

struct Problem {
    ProblemCode code = ProblemCode::Internal;
    std::string what;   ///< "the loss is negative"
    std::string where;  ///< "row 17, column loss_db"; may be empty
    std::string next;   ///< "correct the row and import it again"; may be empty

    bool operator==(const Problem&) const = default;
    /// "what (where). next." with the empty parts left out.
    [[nodiscard]] std::string sentence() const;
};

template <class T>
using Result = tl::expected<T, Problem>;

/// tl::unexpected with less typing: return fail(ProblemCode::NotFound, "no splicer S-09", "", "…");
[[nodiscard]] tl::unexpected<Problem> fail(ProblemCode code, std::string what, std::string where = {},
                                           std::string next = {});

}  // namespace arc
