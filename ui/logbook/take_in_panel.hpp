// SPDX-License-Identifier: GPL-3.0-or-later
// Taking in: what a satchel says about itself and who signed it, before anything of it is taken; and the
// satchels of unknown laptops, which wait until somebody has compared the fingerprint and given them a name.
#pragma once
#include <filesystem>
#include <optional>
#include <vector>

#include "core/handover.hpp"
#include "ui/logbook/panel.hpp"

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace arc::ui {

class Outcome;
class PromptBar;
class Session;

class TakeInPanel : public Panel {
    Q_OBJECT
  public:
    explicit TakeInPanel(Session& session, QWidget* parent = nullptr);
    void refresh() override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] bool settled() const override { return !m_working; }
    [[nodiscard]] QString count() const override;
    [[nodiscard]] bool counts() const override { return true; }

    /// As if the file had been chosen in the file dialog: shows what it is, takes nothing yet.
    void look(const QString& file);
    [[nodiscard]] QString outcome() const;

  Q_SIGNALS:
    /// Records were edited here and there.
    void editsFound();

  private:
    void choose();
    void take(const std::filesystem::path& file);
    void taken(const TakenIn& answer);
    void showWaiting();
    void accept();
    void discard();
    [[nodiscard]] const WaitingSatchel* chosen() const;

    Session& m_session;
    bool m_working = false;
    std::optional<std::filesystem::path> m_file;
    std::filesystem::path m_toDiscard;  ///< asked for once
    std::vector<WaitingSatchel> m_all;
    QPushButton* m_choose;
    QWidget* m_preview;
    QLabel* m_name;
    QLabel* m_says;
    QLineEdit* m_passphrase;
    QPushButton* m_take;
    Outcome* m_outcome;
    QWidget* m_waitingCard;
    QListWidget* m_waiting;
    QPushButton* m_accept;
    QPushButton* m_discard;
    PromptBar* m_prompt;
};

}  // namespace arc::ui
