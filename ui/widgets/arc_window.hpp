// SPDX-License-Identifier: GPL-3.0-or-later
// Which stretch of arcs all charts of a page show, and the arc under the cursor. One object for all of them,
// so that they move together.
#pragma once
#include <QObject>

#include <optional>

namespace arc::ui {

class ArcWindow : public QObject {
    Q_OBJECT
  public:
    explicit ArcWindow(QObject* parent = nullptr) : QObject(parent) {}

    /// The arcs there are, [first, last]; shows all of them.
    void setWhole(double first, double last);
    [[nodiscard]] double first() const { return m_first; }
    [[nodiscard]] double last() const { return m_last; }
    [[nodiscard]] double from() const { return m_from; }
    [[nodiscard]] double to() const { return m_to; }

    void show(double from, double to);
    void showAll() { show(m_first, m_last); }
    /// factor < 1 comes nearer; `about` stays where it is.
    void zoom(double factor, double about);
    /// By a share of what is shown; positive is later.
    void pan(double share);

    [[nodiscard]] std::optional<double> cursor() const { return m_cursor; }
    void setCursor(std::optional<double> arc);

  Q_SIGNALS:
    void changed();
    void cursorChanged();

  private:
    double m_first = 1, m_last = 2, m_from = 1, m_to = 2;
    std::optional<double> m_cursor;
};

}  // namespace arc::ui
