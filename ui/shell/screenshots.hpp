// SPDX-License-Identifier: GPL-3.0-or-later
// Every screen in both tones and at three sizes as pictures, for the README and for looking them over.
#pragma once
#include <filesystem>

#include "core/result.hpp"
#include "ui/shell/window_options.hpp"

namespace arc::ui {

class Session;

/// Files are named SCREEN-TONE-WIDTHxHEIGHT.png. Answers how many were written.
Result<int> writeScreenshots(Session& session, const std::filesystem::path& folder,
                             const WindowOptions& options);

}  // namespace arc::ui
