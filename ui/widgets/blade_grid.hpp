// SPDX-License-Identifier: GPL-3.0-or-later
// A cleaver's blade: positions across, heights down; how much each cell has cut, and where the blade stands.
#pragma once
#include <QWidget>

#include <optional>

#include "core/kit/life.hpp"

namespace arc::ui {

class BladeGrid : public QWidget {
    Q_OBJECT
  public:
    explicit BladeGrid(QWidget* parent = nullptr);
    /// `cleavesPerCell`: what a position is usually good for; a cell that reached it is drawn full.
    void setBlade(const kit::BladeLife& blade, std::uint32_t cleavesPerCell);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    bool event(QEvent* event) override;

  private:
    [[nodiscard]] QRectF cellRect(const BladePlace& place) const;
    [[nodiscard]] QString sentence(const kit::BladeCell& cell) const;

    std::optional<kit::BladeLife> m_blade;
    std::uint32_t m_perCell = 1;
};

}  // namespace arc::ui
