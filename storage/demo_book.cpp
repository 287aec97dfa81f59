// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/demo_book.hpp"

#include "core/scenario/entries.hpp"
#include "core/scenario/simulate.hpp"
#include "storage/embedded_files.hpp"
#include "storage/scenario_json.hpp"

namespace arc::storage {

Result<scenario::Scenario> harrowRidge() {
    for (const auto& file : embedded_scenarios())
        if (file.name == "harrow-ridge.json") return scenarioFromJson(file.text);
    return fail(ProblemCode::Internal, "the scenario Harrow Ridge is not in this program");
}

Result<Receipt> fillWithHarrowRidge(Logbook& book, Instant now) {
    const auto settings = harrowRidge();
    if (!settings) return tl::unexpected(settings.error());
    const auto log = scenario::simulate(*settings, settings->seed);
    if (!log) return tl::unexpected(log.error());
    auto entries = scenario::entriesOf(*settings, *log, scenario::shiftToPresent(*log, now));
    entries.emplace_back(Setting{"book.about", settings->name + ". " + settings->about});
    return book.append(entries, Context{"", "arcw demo", std::nullopt});
}

}  // namespace arc::storage
