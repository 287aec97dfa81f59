// SPDX-License-Identifier: GPL-3.0-or-later
// A supervisor's own edition of a care card: the card's text, checked against the whole deck before it is
// adopted. Records keep the version they were done with.
#pragma once
#include <QDialog>

#include "core/care/card.hpp"
#include "ui/shell/session.hpp"

class QLabel;
class QPlainTextEdit;

namespace arc::ui {

class CardEditor : public QDialog {
    Q_OBJECT
  public:
    CardEditor(Session& session, const care::Card& card, QWidget* parent = nullptr);
    [[nodiscard]] QPlainTextEdit& edit() { return *m_edit; }
    /// What stands in the way; empty when nothing does.
    [[nodiscard]] QString said() const;

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void adopt();
    void tell(const Problem& problem);

    Session& m_session;
    QPlainTextEdit* m_edit;
    QLabel* m_said;
};

}  // namespace arc::ui
