// SPDX-License-Identifier: GPL-3.0-or-later
// What is drawn through all charts of a column at once: when a change began with its span, when it was
// signalled, care actions with their names at the foot, and the cursor. Lies above them, lets the mouse
// through.
#pragma once
#include <QWidget>

#include <optional>
#include <vector>

#include "ui/theme/theme.hpp"
#include "ui/widgets/arc_window.hpp"
#include "ui/widgets/plot_map.hpp"

class QPainter;

namespace arc::ui {

struct SinceMark {
    double began = 0, low = 0, high = 0;
    double raised = 0;
};

struct CareMark {
    enum class Of { Splicer, Cleaver };
    double arc = 0;
    QString name;
    Of of = Of::Splicer;
};

/// Arcs made while an arc calibration was owed.
struct OwedMark {
    double from = 0, to = 0;
};

/// A vertical stretch of the column, in its pixels.
struct PlotSpan {
    int top, bottom;
};

class ChartMarks : public QWidget {
    Q_OBJECT
  public:
    /// `foot` pixels at the bottom are kept for the names.
    ChartMarks(ArcWindow& window, QWidget* parent);
    void setSince(std::optional<SinceMark> since);
    void setCare(std::vector<CareMark> care);
    void setOwed(std::vector<OwedMark> owed);
    /// Where the plots are: care marks are drawn there and leave the titles alone.
    void setPlots(std::vector<PlotSpan> plots);
    /// Lines of names the foot needs, in pixels.
    [[nodiscard]] static int footHeight();
    /// Where charts begin inside the column, in pixels from its left edge (the card's frame).
    void setInset(int inset);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paintArcs(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom) const;
    struct Foot;
    void paintOwed(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom,
                   Foot& foot) const;
    void paintCare(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom,
                   Foot& foot) const;
    void paintSince(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom) const;

    ArcWindow& m_window;
    std::optional<SinceMark> m_since;
    std::vector<CareMark> m_care;
    std::vector<OwedMark> m_owed;
    std::vector<PlotSpan> m_plots;
    int m_inset = 0;
};

}  // namespace arc::ui
