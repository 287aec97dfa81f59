// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/drift_view.hpp"

#include <algorithm>
#include <charconv>
#include <optional>

#include "core/analytics/difference_signals.hpp"

namespace arc::ui {
namespace {

template <class T>
const typename T::value_type* find(const T& all, ToolId id, ToolId T::value_type::*member) {
    const auto it = std::ranges::find(all, id, member);
    return it == all.end() ? nullptr : &*it;
}

std::optional<double> number(const std::optional<std::string>& text) {
    if (!text) return std::nullopt;
    double value = 0;
    const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), value);
    if (error != std::errc() || end != text->data() + text->size()) return std::nullopt;
    return value;
}

}  // namespace

const drift::SplicerReport* DriftView::reportOf(ToolId splicer) const {
    return find(reports, splicer, &drift::SplicerReport::splicer);
}

const SplicerHistory* DriftView::historyOf(ToolId splicer) const {
    return find(histories, splicer, &SplicerHistory::splicer);
}

const Tool* DriftView::toolOf(ToolId tool) const {
    return find(tools, tool, &Tool::id);
}

Result<DriftView> readDrift(Logbook& reader, Progress& progress) {
    DriftView view;
    auto tools = reader.tools();
    if (!tools) return tl::unexpected(tools.error());
    view.tools = std::move(*tools);
    auto baselines = reader.baselineChoices();
    if (!baselines) return tl::unexpected(baselines.error());
    auto answers = reader.signalAnswers();
    if (!answers) return tl::unexpected(answers.error());
    view.settings.baselines = std::move(*baselines);
    view.settings.answers = std::move(*answers);
    const auto budget = reader.setting("drift.budget_arcs");
    if (!budget) return tl::unexpected(budget.error());
    if (const auto asked = number(*budget)) view.settings.budgetArcs = std::clamp(*asked, 100.0, 1e6);
    for (const auto& tool : view.tools) {
        if (!asSplicer(tool)) continue;
        if (progress.stopRequested())
            return fail(ProblemCode::Cancelled, "the look at the charts was stopped");
        auto history = reader.history(tool.id, std::nullopt);
        if (!history) return tl::unexpected(history.error());
        view.histories.push_back(std::move(*history));
    }
    view.reports = drift::analyse(view.histories, view.settings, drift::Detail::WithTraces);
    const auto differences =
        drift::addDifferences(reader, view.histories, view.reports, view.settings.answers);
    if (!differences) return tl::unexpected(differences.error());
    return view;
}

}  // namespace arc::ui
