// SPDX-License-Identifier: GPL-3.0-or-later
// arcw drift: is it drift or luck, since when, which part.
#include <charconv>
#include <ostream>

#include "app/command.hpp"
#include "app/drift_report.hpp"
#include "core/analytics/difference_signals.hpp"
#include "core/analytics/drift.hpp"
#include "core/logbook.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::app {

namespace {

constexpr double smallestBudget = 100, largestBudget = 1'000'000;

Result<double> budgetFrom(const std::optional<std::string>& text, Logbook& book) {
    auto given = text;
    if (!given) {
        auto setting = book.setting("drift.budget_arcs");
        if (!setting) return tl::unexpected(setting.error());
        given = *setting;
    }
    if (!given) return drift::Settings{}.budgetArcs;
    double budget = 0;
    const auto [end, error] = std::from_chars(given->data(), given->data() + given->size(), budget);
    if (error != std::errc() || end != given->data() + given->size() ||
        !(budget >= smallestBudget && budget <= largestBudget))
        return fail(ProblemCode::BadInput,
                    "the false-alarm budget \"" + *given + "\" is not a number of arcs from 100 to 1,000,000",
                    "--budget", "give, for example, --budget 1000 for one false signal per 1,000 arcs");
    return budget;
}

Result<std::vector<SplicerHistory>> histories(Logbook& book) {
    auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    std::vector<SplicerHistory> crew;
    for (const auto& tool : *tools) {
        if (!asSplicer(tool)) continue;
        auto history = book.history(tool.id, std::nullopt);
        if (!history) return tl::unexpected(history.error());
        if (!history->arcs.empty()) crew.push_back(std::move(*history));
    }
    return crew;
}

Exit runDrift(const Arguments& arguments, Environment& environment) {
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadOnly, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    auto budget = budgetFrom(arguments.maybe("--budget"), **book);
    if (!budget) return refuse(budget.error(), environment);
    auto crew = histories(**book);
    if (!crew) return refuse(crew.error(), environment);
    auto baselines = (*book)->baselineChoices();
    if (!baselines) return refuse(baselines.error(), environment);
    auto answers = (*book)->signalAnswers();
    if (!answers) return refuse(answers.error(), environment);

    // The whole crew is analysed even when one splicer is asked for: the others tell fibre from machine.
    auto reports = drift::analyse(*crew, {*budget, *baselines, *answers}, drift::Detail::VerdictsOnly);
    if (auto ok = drift::addDifferences(**book, *crew, reports, *answers); !ok)
        return refuse(ok.error(), environment);
    if (const auto label = arguments.maybe("--splicer")) {
        std::erase_if(reports, [&](const drift::SplicerReport& report) { return report.label != *label; });
        if (reports.empty())
            return refuse(
                Problem{ProblemCode::NotFound, "no splicer \"" + *label + "\" with splices in this logbook",
                        "--splicer", "leave --splicer out to see all of them"},
                environment);
    }
    if (arguments.format == Format::Json)
        environment.out << driftJson(reports, *budget);
    else
        writeDriftText(environment.out, reports, *budget);
    for (const auto& splicer : reports)
        for (const auto& stratum : splicer.strata)
            for (const auto& signal : stratum.signals)
                if (signal.state == drift::SignalState::Open) return Exit::SomethingToReport;
    return Exit::Done;
}

}  // namespace

std::vector<Command> driftCommands() {
    return {{"drift",
             "Which splicers drift, since when, and which part is likely at fault.",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"--splicer", "only this splicer's label", Takes::One, Needed::No},
              {"--budget", "arcs per false signal, all charts together (100 to 1000000)", Takes::One,
               Needed::No}},
             runDrift}};
}

}  // namespace arc::app
