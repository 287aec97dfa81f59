// SPDX-License-Identifier: GPL-3.0-or-later
// One tool at a glance: who it is, how it stands, how much of its lives is used.
#pragma once
#include <QFrame>

#include "core/analytics/drift.hpp"
#include "core/kit/life.hpp"

namespace arc::ui {

class ToolCard : public QFrame {
    Q_OBJECT
  public:
    /// `report` may be null: not a splicer, or nothing spliced yet. `partner` may be empty.
    ToolCard(const kit::ToolLife& life, const drift::SplicerReport* report, const QString& partner,
             Instant now, QWidget* parent = nullptr);
    [[nodiscard]] ToolId tool() const { return m_tool; }
    void setChosen(bool chosen);

  Q_SIGNALS:
    void picked();

  protected:
    void focusInEvent(QFocusEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void addHead(const kit::ToolLife& life, const drift::SplicerReport* report, const QString& partner);

    ToolId m_tool;
    bool m_chosen = false;
};

}  // namespace arc::ui
