// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/care_view.hpp"

#include <algorithm>
#include <charconv>
#include <utility>

#include "core/analytics/difference_signals.hpp"
#include "storage/care_cards.hpp"

namespace arc::app {
namespace {

Result<drift::Settings> chartSettings(Logbook& book, Instant now) {
    drift::Settings settings;
    auto budget = book.setting("drift.budget_arcs");
    if (!budget) return tl::unexpected(budget.error());
    if (*budget) {
        double arcs = 0;
        const std::string& text = **budget;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), arcs);
        if (read.ec == std::errc{} && arcs >= 100 && arcs <= 1'000'000) settings.budgetArcs = arcs;
    }
    auto baselines = book.baselineChoices();
    if (!baselines) return tl::unexpected(baselines.error());
    settings.baselines = std::move(*baselines);
    auto answers = book.signalAnswers();
    if (!answers) return tl::unexpected(answers.error());
    settings.answers = std::move(*answers);
    std::erase_if(settings.answers, [&](const SignalAnswer& answer) { return answer.at > now; });
    return settings;
}

}  // namespace

Result<CareView> careView(Logbook& book, Instant now) {
    auto shelf = storage::cardsInForce(book);
    if (!shelf) return tl::unexpected(shelf.error());
    auto situation = care::gather(book, shelf->deck, now);
    if (!situation) return tl::unexpected(situation.error());
    const auto settings = chartSettings(book, now);
    if (!settings) return tl::unexpected(settings.error());
    CareView view;
    view.situation = std::move(*situation);
    std::vector<SplicerHistory> used;
    for (const SplicerHistory& history : view.situation.histories)
        if (!history.arcs.empty()) used.push_back(history);
    view.reports = drift::analyse(used, *settings, drift::Detail::VerdictsOnly);
    if (auto ok = drift::addDifferences(book, used, view.reports, settings->answers); !ok)
        return tl::unexpected(ok.error());
    view.due = care::dueItems(view.situation, view.reports);
    view.problems = std::move(shelf->refused);
    for (const Problem& problem : view.situation.problems) view.problems.push_back(problem);
    return view;
}

}  // namespace arc::app
