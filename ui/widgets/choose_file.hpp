// SPDX-License-Identifier: GPL-3.0-or-later
// File choice that never looks inside a file. Qt's own icon provider opens files to guess their kind, and
// closing such a handle on the logbook drops the database's locks; ours goes by name and directory only.
#pragma once
#include <QString>
#include <QStringList>

#include <functional>

class QFileDialog;
class QWidget;

namespace arc::ui {

/// Both show a dialog without blocking; `chosen` is called only when something was chosen.
QFileDialog* chooseFiles(QWidget* parent, const QString& title, const QStringList& nameFilters,
                         std::function<void(const QStringList&)> chosen);
QFileDialog* chooseFolder(QWidget* parent, const QString& title, const QString& start,
                          std::function<void(const QString&)> chosen);

}  // namespace arc::ui
