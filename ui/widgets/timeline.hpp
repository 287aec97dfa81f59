// SPDX-License-Identifier: GPL-3.0-or-later
// What happened to a tool, newest first, on a line with dots.
#pragma once
#include <QListWidget>

#include <vector>

namespace arc::ui {

struct TimelineEntry {
    QString when;
    QString what;
    QString who;
    enum class Weight { Care, Other } weight = Weight::Care;
};

class Timeline : public QListWidget {
    Q_OBJECT
  public:
    explicit Timeline(QWidget* parent = nullptr);
    void setEntries(const std::vector<TimelineEntry>& entries);
};

}  // namespace arc::ui
