// SPDX-License-Identifier: GPL-3.0-or-later
// The machine now: its state with the comb, since when, and how long ago electrodes, grooves and calibration
// were seen to.
#pragma once
#include <QFrame>

#include "core/analytics/drift.hpp"
#include "core/kit/life.hpp"
#include "core/kit/tool.hpp"

class QGridLayout;
class QLabel;

namespace arc::ui {

class Comb;
class StateMark;

class MachineCard : public QFrame {
    Q_OBJECT
  public:
    explicit MachineCard(QWidget* parent = nullptr);
    /// Null report or life: not known yet. `stratum`: the one in use; the worst one when it has no report.
    void setMachine(const Tool& splicer, const drift::SplicerReport* report, const std::string& stratum,
                    const kit::ToolLife* life, Instant now);
    void clear();

  private:
    void setFact(int row, const QString& name, const QString& value, const QString& state);

    QLabel* m_title;
    StateMark* m_mark;
    QLabel* m_state;
    QLabel* m_since;
    Comb* m_comb;
    QLabel* m_names[3];
    QLabel* m_values[3];
};

}  // namespace arc::ui
