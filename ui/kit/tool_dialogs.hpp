// SPDX-License-Identifier: GPL-3.0-or-later
// The small questions of the Kit screen: a new tool, which cleaver, what the counter shows. None of them
// stops the window.
#pragma once
#include <QWidget>

#include <functional>
#include <span>

#include "core/kit/tool.hpp"

namespace arc::ui {

/// What was typed for a new tool; the id is given by the caller.
struct NewTool {
    std::string label;
    std::string nickname;
    decltype(Tool::traits) traits;
};
/// `taken`: labels that are in the kit already.
void askNewTool(QWidget* parent, std::vector<std::string> taken,
                std::function<void(const NewTool&)> answered);

/// Choose one of several tools.
void askTool(QWidget* parent, const QString& title, const QString& explain, std::span<const Tool> tools,
             std::function<void(ToolId)> answered);

/// What the tool's own counter shows now, and why it is corrected.
void askCounter(QWidget* parent, const QString& tool, std::optional<ArcCount> shows,
                std::function<void(ArcCount, const QString& reason)> answered);

}  // namespace arc::ui
