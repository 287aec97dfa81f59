// SPDX-License-Identifier: GPL-3.0-or-later
// One chart of a column: axes and limit from Qt Charts, the values painted by ourselves as one stroke a pixel
// column, because Qt Charts takes a second for what this takes six milliseconds. Direct labels, no legend.
#pragma once
#include <QChartView>

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "ui/widgets/arc_window.hpp"
#include "ui/widgets/plot_map.hpp"
#include "ui/widgets/pyramid.hpp"

QT_FORWARD_DECLARE_CLASS(QValueAxis)
QT_FORWARD_DECLARE_CLASS(QLineSeries)

namespace arc::ui {

/// What a chart shows. x is the splicer's arc number, ascending.
struct ChartData {
    enum class Style { Line, Dots };
    enum class Scale { ShareOfLimit, Number };  ///< whether y carries figures

    QString title;  ///< "all grooves together"
    QString now;    ///< the newest value in words, may be empty
    std::vector<double> arc;
    std::vector<float> value;
    Style style = Style::Line;
    Scale scale = Scale::ShareOfLimit;
    double top = 1;     ///< upper end of the y axis
    double step = 0.5;  ///< of the figures on the y axis
    int places = 2;     ///< of the figures
    QString unit;
    std::optional<double> limit;
    QString limitName;
    std::optional<double> level;  ///< a thin line, e.g. the baseline's mean; named in `now`
};

struct Stretch {
    double from, to;
    bool operator==(const Stretch&) const = default;
};

class ChartView : public QChartView {
    Q_OBJECT
  public:
    explicit ChartView(ArcWindow& window, QWidget* parent = nullptr);
    ~ChartView() override;

    void setData(std::shared_ptr<const ChartData> data);
    void setBaseline(std::optional<Stretch> baseline);
    [[nodiscard]] const ChartData* data() const { return m_data.get(); }
    /// Value at the arc, or the last one before it.
    [[nodiscard]] std::optional<float> valueAt(double arc) const;

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;

  private:
    class Ink;
    void place();

    ArcWindow& m_window;
    std::shared_ptr<const ChartData> m_data;
    Pyramid m_pyramid;
    std::optional<Stretch> m_baseline;
    QValueAxis* m_x;
    QValueAxis* m_y;
    QLineSeries* m_limit;
    QLineSeries* m_level;
    Ink* m_ink;
    std::optional<double> m_grabbed;
};

/// Wheel, drag and hover for anything that shows an ArcWindow; `x` in pixels of a plot with this map.
void wheelOn(ArcWindow& window, const PlotMap& map, double x, QPoint angleDelta,
             Qt::KeyboardModifiers modifiers);

}  // namespace arc::ui
