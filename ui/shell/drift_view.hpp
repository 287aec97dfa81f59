// SPDX-License-Identifier: GPL-3.0-or-later
// One finished look at the whole crew's charts: shared between pages, never changed.
#pragma once
#include <functional>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/logbook.hpp"

namespace arc::ui {

struct DriftView {
    std::vector<SplicerHistory> histories;
    std::vector<drift::SplicerReport> reports;  ///< same order
    drift::Settings settings;
    std::vector<Tool> tools;

    [[nodiscard]] const drift::SplicerReport* reportOf(ToolId splicer) const;
    [[nodiscard]] const SplicerHistory* historyOf(ToolId splicer) const;
    [[nodiscard]] const Tool* toolOf(ToolId tool) const;
};

using DriftReader = std::function<Result<DriftView>(Logbook& reader, Progress& progress)>;

/// Reads everything the charts need and works them out; any thread, with its own reader.
Result<DriftView> readDrift(Logbook& reader, Progress& progress);

}  // namespace arc::ui
