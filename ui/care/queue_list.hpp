// SPDX-License-Identifier: GPL-3.0-or-later
// What is due as one list, queue by queue; up, down and Enter work it.
#pragma once
#include <QWidget>

#include <optional>
#include <vector>

#include "core/care/due.hpp"

class QVBoxLayout;

namespace arc::ui {

class QueueRow;

class QueueList : public QWidget {
    Q_OBJECT
  public:
    explicit QueueList(QWidget* parent = nullptr);

    /// Keeps the row that was chosen, if it is still there. Empty: nothing is known yet.
    void show(const std::optional<std::vector<care::DueItem>>& items);
    void choose(std::size_t index);
    /// Null when nothing is due.
    [[nodiscard]] const care::DueItem* chosen() const;
    [[nodiscard]] const std::vector<care::DueItem>& items() const { return m_items; }
    /// The chosen row, for the keyboard; null when nothing is due.
    [[nodiscard]] QWidget* row() const;

  Q_SIGNALS:
    void chosenChanged();
    void startAsked();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QVBoxLayout* m_list;
    std::vector<QueueRow*> m_rows;
    std::vector<care::DueItem> m_items;
    std::size_t m_chosen = 0;
};

}  // namespace arc::ui
