// SPDX-License-Identifier: GPL-3.0-or-later
// Rows that were set aside, mended in place: choose a row, correct its cells, see at once what comes of it,
// take the mended ones in. Rows that are not touched stay in the logbook until somebody mends or leaves out
// each of them.
#pragma once
#include <QWidget>

#include <map>
#include <optional>
#include <vector>

#include "core/workbench.hpp"
#include "ui/shell/session.hpp"

class QFrame;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace arc::ui {

class SetAsideTable;

class MendSheet : public QWidget {
    Q_OBJECT
  public:
    MendSheet(Session& session, QWidget* parent = nullptr);
    /// Reads the open rows again. `others` are shown when the logbook keeps none.
    void begin(std::vector<SetAsideRow> others = {});
    [[nodiscard]] int open() const;
    [[nodiscard]] QTableView* table() const { return m_table; }

  Q_SIGNALS:
    void left();
    void taken();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Place {
        std::size_t sheet = 0, row = 0;
    };
    void showRows();
    /// The row as it is shown, read from the logbook when it comes in sight.
    [[nodiscard]] SetAsideRow shown(int at);
    void readAround(const Place& place);
    void bringBack();
    void forget(const std::string& name);
    void edit(int at);
    void read();
    void closeEditor();
    void takeMended();
    void leaveOut();
    [[nodiscard]] std::string nameOf(const Place& place) const;
    [[nodiscard]] int current() const;

    Session& m_session;
    std::vector<SetAsideSheet> m_sheets;
    std::vector<Place> m_places;
    /// What was typed, by sheet and row; kept on this laptop until it is taken in.
    std::map<std::string, MendedRow> m_mended;
    std::optional<Place> m_editing;
    SetAsideTable* m_rows;
    QTableView* m_table;
    QLabel* m_head;
    QFrame* m_editor;
    QLabel* m_which;
    QGridLayout* m_grid;
    QWidget* m_cellsHome = nullptr;
    std::vector<QLineEdit*> m_cells;
    QLabel* m_verdict;
    QPushButton* m_take;
    QPushButton* m_out;
};

}  // namespace arc::ui
