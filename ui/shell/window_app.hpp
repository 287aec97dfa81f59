// SPDX-License-Identifier: GPL-3.0-or-later
// What the program calls: chooses language and looks, builds the window over a book and runs it until it is
// closed.
#pragma once
#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/workbench.hpp"
#include "ui/shell/window_options.hpp"

class QApplication;

namespace arc::ui {

/// Language and looks that are asked for, else as remembered, else as the desktop's and Day. Before anything
/// is said or shown.
void prepare(QApplication& application, const WindowOptions& options);

/// Answers the exit code of the program: 0, or 2 when pictures were asked for and could not be written.
int runWindow(Logbook& book, Workbench& workbench, Clock& clock, Random& random,
              const WindowOptions& options);

}  // namespace arc::ui
