// SPDX-License-Identifier: GPL-3.0-or-later
// What the program calls: chooses the language, builds the window over a book and runs it until it is closed.
#pragma once
#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/workbench.hpp"
#include "ui/shell/window_options.hpp"

class QApplication;

namespace arc::ui {

/// The language that is asked for, else as remembered, else as the desktop's. Before anything is said.
void applyLanguage(QApplication& application, const WindowOptions& options);

/// Answers the exit code of the program: 0, or 2 when pictures were asked for and could not be written.
int runWindow(QApplication& application, Logbook& book, Workbench& workbench, Clock& clock, Random& random,
              const WindowOptions& options);

}  // namespace arc::ui
