// SPDX-License-Identifier: GPL-3.0-or-later
// Logbook: the book itself. Its journal, handing over and taking in, which laptops are known, and its copies.
#pragma once
#include <vector>

#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

class QListWidget;
class QStackedWidget;

namespace arc::ui {

class Panel;

class LogbookPage : public Page {
    Q_OBJECT
  public:
    explicit LogbookPage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override;

  private:
    struct Part {
        QString name;
        Panel* panel;
    };
    /// `key`: its action is "logbook.KEY".
    void add(const char* key, const QString& name, const QString& icon, Panel* panel);
    void nameAll();
    [[nodiscard]] Panel* shown() const;

    Session& m_session;
    QListWidget* m_list;
    QStackedWidget* m_stack;
    std::vector<Part> m_parts;
};

}  // namespace arc::ui
