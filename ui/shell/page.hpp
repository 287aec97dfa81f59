// SPDX-License-Identifier: GPL-3.0-or-later
// What the window asks of a page. A page is made once with the Session, reads the book through it, and shows
// what it finds; it never blocks: long reads go through Session::background.
//
// How a page is built: constructor `explicit XPage(Session& session, QWidget* parent = nullptr)`; its row in
// ui/shell/page_list names it. It listens to Session::bookChanged (read again) and Session::driftReady, and
// adds its actions to Session::actions().
#pragma once
#include <QWidget>

#include <optional>

#include "ui/shell/screen.hpp"
#include "ui/shell/subject.hpp"

namespace arc::ui {

class Page : public QWidget {
    Q_OBJECT
  public:
    explicit Page(QWidget* parent = nullptr) : QWidget(parent) {}

    /// The page comes on the screen because somebody went there by key, rail or finder.
    virtual void open(const Target& target) { Q_UNUSED(target) }
    /// Where the keyboard starts; null: the first control in tab order.
    [[nodiscard]] virtual QWidget* firstFocus() { return nullptr; }
    /// The record that is chosen, whose history one key opens; none: the key opens the whole journal.
    [[nodiscard]] virtual std::optional<Subject> subject() { return std::nullopt; }
    /// True while nothing the page shows is still being worked out (used for screenshots and tests).
    [[nodiscard]] virtual bool settled() const { return true; }
};

}  // namespace arc::ui
