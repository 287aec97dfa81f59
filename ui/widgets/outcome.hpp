// SPDX-License-Identifier: GPL-3.0-or-later
// What the last thing somebody asked for came to, in one sentence below its buttons. Hidden until there is
// one.
#pragma once
#include <QLabel>

#include <string_view>

#include "core/result.hpp"
#include "ui/theme/state_mark.hpp"

namespace arc::ui {

class Outcome : public QLabel {
    Q_OBJECT
  public:
    explicit Outcome(QWidget* parent = nullptr);
    /// Mark::Learning: it is being worked on.
    void say(const QString& sentence, Mark mark);
    /// What a Problem says; stopped by the person is no alarm.
    void say(const Problem& problem);
    void quiet();
};

/// A sentence of core begins small; a line of its own begins with a capital. In the language of the window.
QString asLine(std::string_view sentence);
QString asLine(const Problem& problem);

}  // namespace arc::ui
