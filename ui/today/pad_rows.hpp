// SPDX-License-Identifier: GPL-3.0-or-later
// The fibres of one tube or ribbon, each row tall enough for a gloved finger. What does not fit is one step
// of the current fibre away, and a strip below shows how all of them stand.
#pragma once
#include <QWidget>

#include <vector>

#include "ui/today/pad_row.hpp"

namespace arc::ui {

class PadRows : public QWidget {
    Q_OBJECT
  public:
    explicit PadRows(QWidget* parent = nullptr);

    /// At most 16 rows; `current` is the one that is kept in sight.
    void setViews(std::vector<PadRowView> views, std::size_t current);
    [[nodiscard]] const PadRow* currentRow() const;
    /// Rows that are in sight.
    [[nodiscard]] std::size_t inSight() const { return m_inSight; }
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] QSize sizeHint() const override;

  Q_SIGNALS:
    /// A row was hit; counted from the first fibre of the unit.
    void chosen(std::size_t inUnit);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void arrange();
    void paintStrip(QPainter& painter) const;

    std::vector<PadRow*> m_rows;
    std::vector<PadRowView> m_views;
    std::size_t m_current = 0;
    std::size_t m_first = 0;
    std::size_t m_inSight = 0;
};

}  // namespace arc::ui
