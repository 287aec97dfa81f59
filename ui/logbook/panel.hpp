// SPDX-License-Identifier: GPL-3.0-or-later
// What the Logbook screen asks of each of its parts.
#pragma once
#include <QWidget>

#include <optional>
#include <utility>

#include "ui/shell/subject.hpp"

class QLabel;
class QVBoxLayout;

namespace arc::ui {

class Panel : public QWidget {
    Q_OBJECT
  public:
    using QWidget::QWidget;
    /// Reads what it shows; called each time it comes on the screen and when the book changed under it.
    virtual void refresh() {}
    [[nodiscard]] virtual QWidget* firstFocus() { return nullptr; }
    [[nodiscard]] virtual std::optional<Subject> subject() { return std::nullopt; }
    [[nodiscard]] virtual bool settled() const { return true; }
    /// A word beside its name in the list: "2"; empty: none.
    [[nodiscard]] virtual QString count() const { return {}; }
    /// Whether it ever has such a word.
    [[nodiscard]] virtual bool counts() const { return false; }

  Q_SIGNALS:
    void countChanged();

  protected:
    /// The layout of the part, and the soft words on top of it.
    std::pair<QVBoxLayout*, QLabel*> begin(const QString& said = {});
};

}  // namespace arc::ui
