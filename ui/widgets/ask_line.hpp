// SPDX-License-Identifier: GPL-3.0-or-later
// Asks for one line of words without stopping the window: a reason, a name.
#pragma once
#include <QDialog>

#include <functional>

namespace arc::ui {

struct LineQuestion {
    QString title;
    QString explain;
    QString field;       ///< accessible name of the entry
    QString given;       ///< what stands in it at first
    QString accept;      ///< the button: "Dismiss"
    QStringList offers;  ///< ready answers, one click each
    enum class Empty { Refused, Allowed } empty = Empty::Refused;
};

/// Opens over `parent`; `answered` is called once with the trimmed words, never when it is closed without.
void askLine(QWidget* parent, const LineQuestion& question, std::function<void(const QString&)> answered);

}  // namespace arc::ui
