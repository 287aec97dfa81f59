// SPDX-License-Identifier: GPL-3.0-or-later
// How the losses of a job spread, with its limit: bars with a line, no legend.
#pragma once
#include <QWidget>

#include "core/closeout/summary.hpp"

namespace arc::ui {

class Histogram : public QWidget {
    Q_OBJECT
  public:
    explicit Histogram(QWidget* parent = nullptr);
    void show(const closeout::Histogram& histogram, Loss limit);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    closeout::Histogram m_data;
    Loss m_limit{0};
};

}  // namespace arc::ui
