// SPDX-License-Identifier: GPL-3.0-or-later
// Gentle before drastic: says which gentler care was not tried and why it comes first. Taking that one up is
// one key away; going on all the same takes a reason, which goes into the record.
#pragma once
#include <QDialog>

#include <vector>

#include "core/care/card.hpp"
#include "core/care/record_check.hpp"

class QLineEdit;
class QPushButton;

namespace arc::ui {

class GentlerFirst : public QDialog {
    Q_OBJECT
  public:
    GentlerFirst(const care::Card& card, const Tool& tool, const care::Deck& deck,
                 const std::vector<care::GentlerCare>& skipped, QWidget* parent);

  Q_SIGNALS:
    void gentlerChosen(const arc::ActionKey& action);
    void goOnAsked(const QString& reason);

  private:
    QLineEdit* m_reason;
    QPushButton* m_goOn;
};

}  // namespace arc::ui
