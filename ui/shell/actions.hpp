// SPDX-License-Identifier: GPL-3.0-or-later
// Every action of the window once: words, key, icon, screen. The command finder, the shortcut sheet and the
// tooltips are made from this list.
#pragma once
#include <QKeySequence>
#include <QObject>
#include <QPointer>

#include <functional>
#include <optional>
#include <vector>

#include "ui/shell/screen.hpp"

class QAction;
class QWidget;

namespace arc::ui {

struct ActionRow {
    QString id;                    ///< "drift.dismiss"
    QString text;                  ///< "Dismiss the signal with a reason"
    QKeySequence key;              ///< may be empty
    QString icon;                  ///< name in resources/icons, may be empty
    std::optional<Screen> screen;  ///< none: works everywhere
};

class Actions : public QObject {
    Q_OBJECT
  public:
    explicit Actions(QObject* parent = nullptr);

    /// The key works while `owner` or a child of it has the keyboard; for the main window: everywhere.
    /// The action goes with its owner.
    QAction* add(const ActionRow& row, QWidget* owner, std::function<void()> run);

    struct Known {
        ActionRow row;
        QPointer<QAction> action;
    };
    [[nodiscard]] const std::vector<Known>& all() const { return m_all; }
    /// Null when nobody added it.
    [[nodiscard]] QAction* find(const QString& id) const;

  private:
    std::vector<Known> m_all;
};

}  // namespace arc::ui
