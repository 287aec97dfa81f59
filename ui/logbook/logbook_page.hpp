// SPDX-License-Identifier: GPL-3.0-or-later
// Logbook: the book itself. Its journal, handing over and taking in, who may write into it, and its copies.
#pragma once
#include <vector>

#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

class QListWidget;
class QStackedWidget;

namespace arc::ui {

class PageHead;
class Panel;

class LogbookPage : public Page {
    Q_OBJECT
  public:
    explicit LogbookPage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override;
    /// By its place in the list.
    void showPanel(int index);
    [[nodiscard]] int panelCount() const { return static_cast<int>(m_panels.size()); }

  private:
    void add(const QString& name, const QString& icon, Panel* panel);
    void nameAll();
    [[nodiscard]] Panel* shown() const;

    Session& m_session;
    PageHead* m_head;
    QListWidget* m_list;
    QStackedWidget* m_stack;
    std::vector<Panel*> m_panels;
    std::vector<QString> m_names;
};

}  // namespace arc::ui
