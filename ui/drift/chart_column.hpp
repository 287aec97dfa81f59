// SPDX-License-Identifier: GPL-3.0-or-later
// The charts of one stratum one below the other, sharing one axis of arcs: level, groove strip, then as many
// of the others as there is room for.
#pragma once
#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/care/rules.hpp"
#include "ui/shell/drift_view.hpp"
#include "ui/widgets/arc_window.hpp"

class QFrame;
class QLabel;
class QVBoxLayout;

namespace arc::ui {

class ChartMarks;
class ChartView;
class GrooveStrip;

class ChartColumn : public QWidget {
    Q_OBJECT
  public:
    explicit ChartColumn(QWidget* parent = nullptr);

    /// The view is kept alive as long as it is shown.
    void show(std::shared_ptr<const DriftView> view, const drift::StratumReport* report,
              const SplicerHistory* history);
    void showSignal(const drift::Signal* signal);
    /// Stretches in which an arc calibration was owed, of any splicer.
    void setOwed(std::vector<care::OwedStretch> owed);
    /// While the ends are being moved, before they are written.
    void previewBaseline(double from, double to);
    void showMore();  ///< the next ones of the lower charts
    [[nodiscard]] ArcWindow& window() { return m_window; }
    [[nodiscard]] bool hasMore() const;
    /// What the charts show, in words: for the read-out line and for screen readers.
    [[nodiscard]] QString readout(double arc) const;
    [[nodiscard]] std::vector<ChartView*> charts() const;
    /// The visible stretch: arc, time, mean loss, calibration owed or not, then what each chart holds; RFC
    /// 4180, point-decimal.
    [[nodiscard]] QString csv() const;
    /// Charts that find no room are left out, so that the column never pushes the window.
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// As many charts as there is room for: the page asks for no more because of them.
    [[nodiscard]] QSize sizeHint() const override { return minimumSizeHint(); }

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void arrange();
    void placeMarks();
    void say();
    /// Parts that find no room are left out from the end, whole.
    void sayWhatFits(const QString& parts);

    ArcWindow m_window;
    std::shared_ptr<const DriftView> m_view;
    const drift::StratumReport* m_report = nullptr;
    const SplicerHistory* m_history = nullptr;
    QVBoxLayout* m_layout;
    QFrame* m_levelCard;
    ChartView* m_level;
    QFrame* m_stripCard;
    GrooveStrip* m_strip;
    struct Lower {
        QFrame* card;
        ChartView* chart;
    };
    std::vector<Lower> m_lower;
    std::size_t m_lowerCount = 0;  ///< how many of them have data
    std::size_t m_lowerFirst = 0;
    std::size_t m_lowerShown = 0;
    std::vector<care::OwedStretch> m_owed;
    ChartMarks* m_marks;
    QLabel* m_readout;
};

}  // namespace arc::ui
