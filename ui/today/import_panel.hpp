// SPDX-License-Identifier: GPL-3.0-or-later
// Taking in files: what they hold, a bar while it runs, then counts and every row that was set aside with
// its reason. A stopped import leaves nothing.
#pragma once
#include <QStringList>
#include <QWidget>

#include <optional>

#include "core/workbench.hpp"
#include "ui/shell/session.hpp"

class QFrame;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;
class QTimer;

namespace arc::ui {

class SetAsideTable;

class ImportPanel : public QWidget {
    Q_OBJECT
  public:
    ImportPanel(Session& session, QWidget* parent = nullptr);
    void begin();
    /// As if these files had been chosen.
    void start(const QStringList& files);
    [[nodiscard]] bool busy() const { return m_job != 0; }
    [[nodiscard]] FileKind kind() const;

  Q_SIGNALS:
    void left();
    void finished();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    struct Done {
        ImportCount count;
        std::optional<Problem> problem;
        int files = 0;
    };
    void choose();
    void look();
    void showDone(const Done& done, int asked);

    Session& m_session;
    std::vector<QPushButton*> m_kinds;
    QPushButton* m_choose;
    QPushButton* m_stop;
    QPushButton* m_leave;
    QLabel* m_doing;
    QProgressBar* m_bar;
    QFrame* m_result;
    QLabel* m_said;
    QLabel* m_counts[4];
    SetAsideTable* m_rows;
    QTableView* m_table;
    QLabel* m_tableHead;
    int m_job = 0;
};

}  // namespace arc::ui
