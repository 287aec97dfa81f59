// SPDX-License-Identifier: GPL-3.0-or-later
// Every colour of the window by its role. No other file names a colour, except the fibre colours, which are a
// fact of the trade. Day is made for sun (text contrast at least 7:1), Night for a dark van (at least 4.5:1).
#pragma once
#include <QColor>

#include <span>

namespace arc::ui {

enum class Tone { Day, Night };

enum class Role {
    Paper,       ///< the page
    Card,        ///< a sheet on the page
    Line,        ///< hairlines and card edges; never carries meaning
    Edge,        ///< borders of things that can be used, at least 3:1
    Ink,         ///< text
    Soft,        ///< lesser text
    Accent,      ///< the one accent: what can be done, what is chosen
    OnAccent,    ///< text on a filled accent
    AccentWash,  ///< ground of the chosen row
    Steady,
    Watch,
    Drifting,
    Recovered,
    OnDrifting,  ///< text on a filled warning
    Shade,       ///< the baseline stretch, empty part of a bar
    Rail,
    RailInk,
    RailSoft,
};
inline constexpr int roleCount = static_cast<int>(Role::RailSoft) + 1;

QColor colour(Tone tone, Role role);

/// A text role and a ground it is used on.
struct TextPair {
    Role text;
    Role ground;
};
/// Every pair the window uses; the contrast test walks it.
std::span<const TextPair> textPairs();

/// WCAG 2.1 contrast ratio, 1-21.
double contrast(const QColor& a, const QColor& b);

}  // namespace arc::ui
