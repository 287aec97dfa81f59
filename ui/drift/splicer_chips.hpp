// SPDX-License-Identifier: GPL-3.0-or-later
// Which splicer, and which of its strata: a chip each with the state's shape, or a list when the fleet is
// big.
#pragma once
#include <QWidget>

#include <vector>

#include "core/analytics/drift.hpp"
#include "core/kit/tool.hpp"

class QComboBox;
class QHBoxLayout;

namespace arc::ui {

class SplicerChips : public QWidget {
    Q_OBJECT
  public:
    explicit SplicerChips(QWidget* parent = nullptr);
    void show(const std::vector<drift::SplicerReport>& reports, std::size_t splicer, std::size_t stratum);

  Q_SIGNALS:
    void splicerChosen(int index);
    void stratumChosen(int index);

  private:
    QHBoxLayout* m_layout;
    QWidget* m_chips = nullptr;
};

}  // namespace arc::ui
