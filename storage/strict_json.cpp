// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/strict_json.hpp"

#include <nlohmann/json.hpp>

#include "storage/json_lines.hpp"

namespace arc::storage {

Result<nlohmann::json> parseStrict(std::string_view text, const std::string& what) {
    try {
        auto parsed = nlohmann::json::parse(text);
        if (const auto twice = jsonLines(text).firstDuplicate)
            return fail(ProblemCode::BadInput, "the key \"" + twice->key + "\" is there twice",
                        what + ", line " + std::to_string(twice->line), "Keep one of the two");
        return parsed;
    } catch (const nlohmann::json::parse_error& error) {
        return fail(ProblemCode::BadInput, "this is not JSON", what + ", byte " + std::to_string(error.byte),
                    "Check the brackets, commas and quotes there");
    } catch (const nlohmann::json::exception&) {
        // "1e999" is well formed and still no number.
        return fail(ProblemCode::BadInput, "a number is beyond every range", what, "Correct the number");
    }
}

}  // namespace arc::storage
