// SPDX-License-Identifier: GPL-3.0-or-later
// The look as a value: tone, scale, type, spacing and touch sizes. It is set once for the application, as
// Qt's palette is, and widgets that paint themselves ask for it when they paint.
#pragma once
#include <QColor>
#include <QFont>
#include <QMetaType>

#include "ui/theme/palette.hpp"

class QApplication;

namespace arc::ui {

/// Sizes in pixels at scale 1 (96 dpi).
enum class Text {
    Tiny = 12,
    Small = 14,
    Body = 15,
    Strong = 17,
    Heading = 20,
    Title = 25,
    Digits = 27,
    Huge = 44
};
enum class Weight { Regular, Bold };

/// Distances in pixels at scale 1.
enum class Gap { Hair = 2, Small = 6, Middle = 12, Large = 24, Edge = 28 };

/// Smallest side of what a gloved finger must hit: 9 mm, and 15 mm on the entry pad (96 dpi).
enum class Touch { Usual = 36, Pad = 57 };

class Theme {
  public:
    Theme() = default;
    /// `scale` is held within 1-2; text and touch sizes grow with it.
    Theme(Tone tone, double scale);

    [[nodiscard]] Tone tone() const { return m_tone; }
    [[nodiscard]] double scale() const { return m_scale; }
    [[nodiscard]] QColor colour(Role role) const { return ui::colour(m_tone, role); }
    [[nodiscard]] QColor colour(Role role, double alpha) const;
    [[nodiscard]] QFont font(Text size, Weight weight = Weight::Regular) const;
    /// Pixels at scale 1 to pixels.
    [[nodiscard]] int px(double atScaleOne) const;
    [[nodiscard]] int px(Gap gap) const { return px(static_cast<double>(gap)); }
    [[nodiscard]] int px(Touch touch) const { return px(static_cast<double>(touch)); }

    bool operator==(const Theme&) const = default;

  private:
    Tone m_tone = Tone::Day;
    double m_scale = 1;
};

/// Sets palette, font and style sheet; every widget gets a StyleChange event.
void applyTheme(QApplication& application, const Theme& theme);

/// The theme in force; Day at scale 1 before applyTheme.
Theme currentTheme();

}  // namespace arc::ui

Q_DECLARE_METATYPE(arc::ui::Theme)
