// SPDX-License-Identifier: GPL-3.0-or-later
// The help as data: short pages, one a subject, each with a picture of ours from resources/pictures/help.
// How a page is added: its lines and its row in help_pages.cpp, its drawing (see help_picture.hpp), and the
// translations.
#pragma once
#include <QString>

#include <span>

namespace arc::ui {

enum class HelpKind { Text, Heading, Item, Caution };

struct HelpLine {
    HelpKind kind;
    const char* english;
};

struct HelpPage {
    const char* key;    ///< "pad"; name of the picture and of the action "help.pad"
    const char* title;  ///< English
    std::span<const HelpLine> lines;
};

/// In reading order.
std::span<const HelpPage> helpPages();
/// A title or line in the language of the window.
QString helpWords(const char* english);

}  // namespace arc::ui
