// SPDX-License-Identifier: GPL-3.0-or-later
// arcw limits: the crew's own limits of care, shown and changed.
#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
#include "core/care/queues.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::app {
namespace {

using nlohmann::ordered_json;

/// The change that is asked for; none when the limits are only to be shown.
Result<std::optional<Setting>> changeAsked(const Arguments& arguments) {
    const auto key = arguments.maybe("--key");
    const auto value = arguments.maybe("--value");
    const bool shipped = arguments.has("--as-shipped");
    if (!key && !value && !shipped) return std::optional<Setting>{};
    if (!key || (value.has_value() == shipped))
        return fail(ProblemCode::BadInput, "a change names a limit and its value, or --as-shipped", "--key",
                    "For example: --key care.idle_days --value 21");
    const auto known = care::settingKeys();
    if (std::ranges::find(known, *key) == known.end())
        return fail(ProblemCode::NotFound, "there is no limit \"" + *key + "\"", "--key",
                    "See the list: arcw limits BOOK");
    if (shipped) return std::optional(Setting{*key, ""});
    if (const auto good = care::withSetting({}, *key, *value); !good) return tl::unexpected(good.error());
    return std::optional(Setting{*key, *value});
}

Exit runLimits(const Arguments& arguments, Environment& environment) {
    const auto change = changeAsked(arguments);
    if (!change) return refuse(change.error(), environment);
    auto book = storage::openLogbook(arguments.one("BOOK"),
                                     *change ? storage::OpenMode::ReadWrite : storage::OpenMode::ReadOnly,
                                     environment.clock, environment.random);
    if (!book) return refuse(book.error(), environment);
    if (*change) {
        const auto receipt = (*book)->append(
            Entry{**change}, Context{arguments.maybe("--by").value_or(""), "arcw limits", std::nullopt});
        if (!receipt) return refuse(receipt.error(), environment);
    }
    const auto read = care::settingsOf(**book);
    if (!read) return refuse(read.error(), environment);
    for (const Problem& problem : read->problems) environment.err << "arcw: " << problem.sentence() << '\n';
    auto list = ordered_json::array();
    for (const std::string_view key : care::settingKeys()) {
        const std::string value = care::valueOf(read->settings, key);
        const std::string shipped = care::valueOf({}, key);
        list.push_back({{"key", key}, {"value", value}, {"shipped", shipped}});
        if (arguments.format == Format::Json) continue;
        environment.out << key << "  " << (value.empty() ? "as the card says" : value);
        if (value != shipped)
            environment.out << "  (shipped: " << (shipped.empty() ? "as the card says" : shipped) << ")";
        environment.out << '\n';
    }
    if (arguments.format == Format::Json) environment.out << ordered_json{{"limits", list}}.dump(2) << '\n';
    return read->problems.empty() ? Exit::Done : Exit::SomethingToReport;
}

}  // namespace

std::vector<Command> limitsCommands() {
    return {{"limits",
             "The limits of care of this logbook: when an arc calibration is owed, when parts are ordered.",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"--key", "a limit to change: care.idle_days, …", Takes::One, Needed::No},
              {"--value", "its new value", Takes::One, Needed::No},
              {"--by", "who changes it", Takes::One, Needed::No},
              {"--as-shipped", "takes a changed limit back", Takes::Nothing, Needed::No}},
             runLimits}};
}

}  // namespace arc::app
