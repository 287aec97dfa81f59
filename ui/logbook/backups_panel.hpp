// SPDX-License-Identifier: GPL-3.0-or-later
// The rolling copies of the logbook: what there is, one more now, a new logbook out of one of them, and how
// often and how many.
#pragma once
#include <vector>

#include "core/handover.hpp"
#include "ui/logbook/panel.hpp"

class QGridLayout;
class QLabel;
class QListWidget;
class QPushButton;
class QSpinBox;

namespace arc::ui {

class Outcome;
class Session;

class BackupsPanel : public Panel {
    Q_OBJECT
  public:
    explicit BackupsPanel(Session& session, QWidget* parent = nullptr);
    void refresh() override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] bool settled() const override { return !m_working; }

    /// As if the folder had been chosen in the file dialog.
    void restoreInto(const QString& folder);
    [[nodiscard]] QString outcome() const;

  private:
    QSpinBox* add(QGridLayout* grid, int column, const QString& name, std::string_view key, int least,
                  int most, int usual);
    void make();
    void askWhere();
    void readSettings();
    [[nodiscard]] const BackupCopy* chosen() const;

    struct Bound {
        std::string_view key;
        int usual;
        QSpinBox* box;
    };

    Session& m_session;
    std::vector<BackupCopy> m_all;
    std::vector<Bound> m_bounds;
    bool m_working = false;
    QListWidget* m_list;
    QLabel* m_said;
    QPushButton* m_make;
    QPushButton* m_restore;
    Outcome* m_outcome;
};

}  // namespace arc::ui
