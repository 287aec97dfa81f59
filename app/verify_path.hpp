// SPDX-License-Identifier: GPL-3.0-or-later
// Verifies whatever lies at a path: a logbook, a closeout folder or a satchel.
#pragma once
#include <filesystem>
#include <string>

#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::app {

/// The sentence says what was found to be in order; a Problem (Damaged) names the first thing that differs.
Result<std::string> verifyPath(const std::filesystem::path& path, Progress& progress);

}  // namespace arc::app
