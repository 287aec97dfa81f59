// SPDX-License-Identifier: GPL-3.0-or-later
// Grooves down, arcs across: the darker a cell, the fuller the chart of that groove. Painted by hand into a
// picture of one column a pixel, so that a million arcs cost no more than a thousand.
#pragma once
#include <QImage>
#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

#include "ui/widgets/arc_window.hpp"
#include "ui/widgets/chart_view.hpp"
#include "ui/widgets/pyramid.hpp"

namespace arc::ui {

struct StripRow {
    int channel = 1;
    std::vector<double> arc;
    std::vector<float> value;  ///< share of the limit, 0 and up
    bool loud = false;         ///< an open signal names it
};

class GrooveStrip : public QWidget {
    Q_OBJECT
  public:
    explicit GrooveStrip(ArcWindow& window, QWidget* parent = nullptr);
    void setRows(std::vector<StripRow> rows);
    void setBaseline(std::optional<Stretch> baseline);
    [[nodiscard]] std::size_t rowCount() const { return m_rows.size(); }
    /// Share of the limit of a groove at an arc.
    [[nodiscard]] std::optional<float> valueAt(int channel, double arc) const;
    /// The fullest groove at an arc.
    [[nodiscard]] std::optional<std::pair<int, float>> fullestAt(double arc) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

  private:
    void redraw();

    ArcWindow& m_window;
    std::vector<StripRow> m_rows;
    std::vector<Pyramid> m_pyramids;
    bool m_oneAxis = true;  ///< all rows have the same arcs: one look-up serves them all
    std::optional<Stretch> m_baseline;
    QImage m_cells;  ///< one pixel row a groove
    std::optional<double> m_grabbed;
};

}  // namespace arc::ui
