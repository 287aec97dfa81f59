// SPDX-License-Identifier: GPL-3.0-or-later
// Beside the queues: what was done lately and whether it helped, and what is to be ordered.
#pragma once
#include <QFrame>

#include "ui/care/care_desk.hpp"
#include "ui/shell/drift_view.hpp"

class QGridLayout;

namespace arc::ui {

class DoneAside : public QFrame {
    Q_OBJECT
  public:
    explicit DoneAside(QWidget* parent = nullptr);
    void show(const CareLook* look, const DriftView* drift, Instant now);

  private:
    QGridLayout* m_grid;
};

class OrdersAside : public QFrame {
    Q_OBJECT
  public:
    explicit OrdersAside(QWidget* parent = nullptr);
    void show(const CareLook* look);
    /// The list as lines of text, for a message to the depot.
    [[nodiscard]] static QString asText(const CareLook& look);

  private:
    QGridLayout* m_grid;
    QString m_text;
};

}  // namespace arc::ui
