// SPDX-License-Identifier: GPL-3.0-or-later
// The comb: the V-groove block seen from its end, one notch a groove, a fibre in each. What a groove does
// alone, apart from the others, lifts its fibre out; what all do together lifts them all.
#pragma once
#include <QWidget>

#include <vector>

#include "core/analytics/drift.hpp"
#include "ui/theme/state_mark.hpp"

namespace arc::ui {

struct CombTooth {
    int channel = 1;
    double aloneDb = 0;   ///< apart from the other grooves; lifts the fibre
    double recentDb = 0;  ///< for the hover text
    double baselineDb = 0;
    int recent = 0;  ///< 0: nothing known, the fibre is drawn hollow
    Mark mark = Mark::Steady;
};

/// Teeth of a stratum with the marks its open signals give them.
std::vector<CombTooth> teethOf(const drift::StratumReport& report);

class Comb : public QWidget {
    Q_OBJECT
  public:
    explicit Comb(QWidget* parent = nullptr);
    void setTeeth(std::vector<CombTooth> teeth);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

  private:
    [[nodiscard]] QString sentence(const CombTooth& tooth) const;
    [[nodiscard]] double pitch() const;
    [[nodiscard]] double left() const;

    std::vector<CombTooth> m_teeth;
};

}  // namespace arc::ui
