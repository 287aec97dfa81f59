// SPDX-License-Identifier: GPL-3.0-or-later
// A table of journal lines with the chosen line in full below it.
#pragma once
#include <QWidget>

class QLabel;
class QTableView;

namespace arc::ui {

class JournalTable;

class JournalView : public QWidget {
    Q_OBJECT
  public:
    explicit JournalView(QWidget* parent = nullptr);
    [[nodiscard]] JournalTable& model() { return *m_model; }
    [[nodiscard]] QTableView& table() { return *m_table; }
    /// Index of the chosen line; below 0: none.
    [[nodiscard]] int chosen() const;
    void choose(int row);

  Q_SIGNALS:
    /// Enter on a line.
    void entered();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void showLine();

    JournalTable* m_model;
    QTableView* m_table;
    QLabel* m_line;
};

}  // namespace arc::ui
