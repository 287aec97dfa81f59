// SPDX-License-Identifier: GPL-3.0-or-later
// Taking in files: what they hold, a bar while it runs, then counts and every row that was set aside with
// its reason, to be mended. A table whose columns bear other names is matched first. A stopped import leaves
// nothing.
#pragma once
#include <QStringList>
#include <QWidget>

#include <map>
#include <optional>

#include "core/workbench.hpp"
#include "ui/shell/session.hpp"

class QFrame;
class QLabel;
class QProgressBar;
class QPushButton;

namespace arc::ui {

class ColumnKeySheet;
class MendSheet;

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
    /// The next file that waits; a table nobody has matched yet is shown to the person first.
    void next();
    void take(const std::filesystem::path& file, FileKind kind, std::optional<ColumnKey> key);
    void finish();
    void showDone();
    void showWaiting();
    enum class Asking { Files, Columns };
    void askFor(Asking what);

    Session& m_session;
    std::vector<std::filesystem::path> m_files;               ///< still to be taken in
    std::map<std::vector<std::string>, ColumnKey> m_matched;  ///< of this import, by header
    Done m_done;
    int m_asked = 0;
    QFrame* m_ask;
    ColumnKeySheet* m_key;
    MendSheet* m_mend;
    std::vector<QPushButton*> m_kinds;
    QPushButton* m_choose;
    QPushButton* m_stop;
    QPushButton* m_leave;
    QLabel* m_doing;
    QProgressBar* m_bar;
    QFrame* m_result;
    QLabel* m_said;
    QWidget* m_countsHome;
    QLabel* m_counts[4];
    int m_job = 0;
};

}  // namespace arc::ui
