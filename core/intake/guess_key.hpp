// SPDX-License-Identifier: GPL-3.0-or-later
// A first column key for a table nobody has matched yet: from the words of its header and from what its first
// rows look like. A proposal for a person to look over; what the rows do not decide stays open.
#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/intake/column_key.hpp"

namespace arc {

/// What only a person can say. DayOrMonth: every date fits day first and month first alike. Offset: the times
/// do not say how far they are from UTC. LossUnit: the losses are large whole numbers.
enum class OpenQuestion { DayOrMonth, Offset, LossUnit };

struct KeyGuess {
    ColumnKey key;
    std::vector<OpenQuestion> open;
    [[nodiscard]] bool asks(OpenQuestion question) const;
};

/// `header` as written in the file; `rows` as many as are at hand (a thousand is plenty), each with as many
/// cells as the header; others are passed over. `separator` is the one they were split by.
KeyGuess guessKey(FileKind kind, std::span<const std::string> header,
                  std::span<const std::vector<std::string>> rows, char separator);

/// The questions a key leaves open for these rows, whoever made it.
std::vector<OpenQuestion> openQuestions(const ColumnKey& key, std::span<const std::string> header,
                                        std::span<const std::vector<std::string>> rows);

}  // namespace arc
