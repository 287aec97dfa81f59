// SPDX-License-Identifier: GPL-3.0-or-later
// How the window starts; the program fills it from its arguments and the device's settings.
#pragma once
#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "core/ports.hpp"
#include "core/result.hpp"
#include "ui/shell/screen.hpp"
#include "ui/text/language.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

/// Whether tone, text size, language and crew are remembered on this device (QSettings).
enum class Remember { Yes, No };

struct WindowOptions {
    std::optional<Tone> tone;                ///< none: as remembered, else Day
    std::optional<double> scale;             ///< 1-2; none: as remembered, else 1
    std::optional<text::Language> language;  ///< none: as remembered, else as the desktop's
    std::string crew;                        ///< none: as remembered
    Screen first = Screen::Today;
    Remember remember = Remember::Yes;
    std::string bookName;  ///< shown in the title bar
    /// Makes the demo logbook and opens a window on it; empty: there is no demo button.
    std::function<Result<void>(Progress&)> openDemo;
    /// When given, no window comes up: every screen in every theme and size is written there as a picture.
    std::optional<std::filesystem::path> screenshots;
};

}  // namespace arc::ui
