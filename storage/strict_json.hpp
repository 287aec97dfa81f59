// SPDX-License-Identifier: GPL-3.0-or-later
// JSON without the two silent traps of the library: a key given twice, and a number that is none.
#pragma once
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

#include "core/result.hpp"

namespace arc::storage {

/// Parses UTF-8 JSON. `what` names the text in the Problem: "scenario file". Refuses duplicate keys.
Result<nlohmann::json> parseStrict(std::string_view text, const std::string& what);

}  // namespace arc::storage
