// SPDX-License-Identifier: GPL-3.0-or-later
// What the windows ask of the outside beyond the logbook, for the book that this program has open.
#pragma once
#include <filesystem>
#include <memory>

#include "core/workbench.hpp"

namespace arc::app {

/// `clock` and `random` must outlive the answer and be callable from worker threads. The program keeps the
/// book open for writing meanwhile (imports write beside it); a program that only reads gets Refused for
/// imports.
std::unique_ptr<Workbench> makeWorkbench(std::filesystem::path book, Clock& clock, Random& random);

}  // namespace arc::app
