// SPDX-License-Identifier: GPL-3.0-or-later
// Right of the charts: the chosen signal in full, the other signals as lines, whether care helped, and the
// electrodes' life ahead.
#pragma once
#include <QWidget>

#include <memory>
#include <string>

#include "core/care/card.hpp"
#include "ui/shell/drift_view.hpp"

class QPushButton;
class QVBoxLayout;

namespace arc::ui {

class SignalCard;

class SignalPanel : public QWidget {
    Q_OBJECT
  public:
    explicit SignalPanel(QWidget* parent = nullptr);
    void show(std::shared_ptr<const DriftView> view, const drift::SplicerReport* splicer,
              const drift::StratumReport* report, const care::Deck* deck, Instant now);
    /// An empty or unknown key chooses the newest open signal, else the newest.
    void choose(const std::string& key);
    /// +1 the next newer, -1 the next older.
    void step(int by);
    [[nodiscard]] const drift::Signal* chosen() const;

  Q_SIGNALS:
    void chosenChanged();
    void startAsked();
    void dismissAsked();
    void reopenAsked();
    void readingsAsked();

  private:
    void fill();
    void addCalm();
    void addOthers();
    void addEffects();
    void addElectrodes();

    std::shared_ptr<const DriftView> m_view;
    const drift::SplicerReport* m_splicer = nullptr;
    const drift::StratumReport* m_report = nullptr;
    const care::Deck* m_deck = nullptr;
    Instant m_now;
    std::string m_key;
    QVBoxLayout* m_layout;
    QWidget* m_content;
    SignalCard* m_card;
    QPushButton *m_start, *m_dismiss, *m_reopen, *m_readings;
    QWidget* m_rest = nullptr;
    QVBoxLayout* m_restLayout = nullptr;
};

}  // namespace arc::ui
