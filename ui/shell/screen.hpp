// SPDX-License-Identifier: GPL-3.0-or-later
// The screens, and what a jump to one of them is about.
#pragma once
#include <QMetaType>
#include <QString>

#include <optional>
#include <string>
#include <vector>

#include "core/care/record.hpp"
#include "core/units/id.hpp"

namespace arc::ui {

enum class Screen { Today, Kit, Care, Drift, Closeout, Logbook };
inline constexpr int screenCount = 6;

/// Name for files and settings: "today", …
QString keyOf(Screen screen);
/// Name for people, translated.
QString titleOf(Screen screen);

/// What a page should show when it opens; empty members say nothing.
struct Target {
    std::optional<ToolId> tool;
    std::optional<JobId> job;
    std::optional<ClosureId> closure;
    ActionKey action;                  ///< Care: the card to start for `tool`
    std::vector<std::string> answers;  ///< keys of due items and signals it is done for
    std::string signalKey;             ///< Drift: the signal to show

    bool operator==(const Target&) const = default;
};

}  // namespace arc::ui

Q_DECLARE_METATYPE(arc::ui::Target)
