// SPDX-License-Identifier: GPL-3.0-or-later
// The ranked causes of a signal: word, bar, weight.
#pragma once
#include <QWidget>

#include <vector>

#include "core/analytics/drift.hpp"

namespace arc::ui {

class CauseBars : public QWidget {
    Q_OBJECT
  public:
    explicit CauseBars(QWidget* parent = nullptr);
    void setCauses(std::vector<drift::CauseWeight> causes);
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::vector<drift::CauseWeight> m_causes;
};

}  // namespace arc::ui
