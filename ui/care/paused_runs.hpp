// SPDX-License-Identifier: GPL-3.0-or-later
// Cards that were begun and left: go on where they stood, or give them up.
#pragma once
#include <QWidget>

#include <vector>

#include "core/care/card.hpp"
#include "core/care/record.hpp"
#include "core/kit/tool.hpp"

class QVBoxLayout;

namespace arc::ui {

struct PausedRun {
    CareRun run;
    care::Card card;
    Tool tool;
};

class PausedRuns : public QWidget {
    Q_OBJECT
  public:
    explicit PausedRuns(QWidget* parent = nullptr);
    void show(const std::vector<PausedRun>& runs, Instant now);

  Q_SIGNALS:
    void goOnAsked(const arc::CareRun& run);
    void giveUpAsked(const arc::CareRun& run);

  private:
    QVBoxLayout* m_list;
};

}  // namespace arc::ui
