// SPDX-License-Identifier: GPL-3.0-or-later
// On which line of a JSON text each value stands, and which keys are there twice: the parser of the library
// keeps neither.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace arc::storage {

struct JsonLines {
    std::map<std::string, int> lineOf;  ///< JSON pointer → line, from 1
    struct Twice {
        std::string key;
        int line = 1;
    };
    std::optional<Twice> firstDuplicate;

    /// The line of the value, or of the closest one around it.
    [[nodiscard]] int line(std::string pointer) const;
};

/// Of a text that parses; of a broken one, as far as it goes.
JsonLines jsonLines(std::string_view text);

}  // namespace arc::storage
