// SPDX-License-Identifier: GPL-3.0-or-later
// One signal in full: what is likely, since when, how sure, the evidence to check, and what to do.
#pragma once
#include <QFrame>

#include "core/analytics/drift.hpp"
#include "core/units/instant.hpp"

class QVBoxLayout;

namespace arc::ui {

class SignalCard : public QFrame {
    Q_OBJECT
  public:
    explicit SignalCard(QWidget* parent = nullptr);
    void show(const drift::Signal& signal, const drift::StratumReport& report, Instant now);

  private:
    void addEvidence(QVBoxLayout* layout, const drift::Signal& signal);
};

}  // namespace arc::ui
