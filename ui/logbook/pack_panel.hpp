// SPDX-License-Identifier: GPL-3.0-or-later
// Handing over: a satchel of everything, of what was written since a day, or of one job.
#pragma once
#include <vector>

#include "core/work/job.hpp"
#include "ui/logbook/panel.hpp"

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;

namespace arc::ui {

class Outcome;
class Session;

class PackPanel : public Panel {
    Q_OBJECT
  public:
    explicit PackPanel(Session& session, QWidget* parent = nullptr);
    void refresh() override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] bool settled() const override { return !m_working; }

    /// As if the folder had been chosen in the file dialog.
    void packInto(const QString& folder);
    [[nodiscard]] QString outcome() const;

  private:
    enum What { Everything, SinceDay, OneJob };
    void showWhat();
    void ask();
    [[nodiscard]] QString fileName() const;

    Session& m_session;
    std::vector<Job> m_jobs;
    bool m_working = false;
    QComboBox* m_what;
    QLabel* m_sinceName;
    QDateEdit* m_since;
    QLabel* m_jobName;
    QComboBox* m_job;
    QLineEdit* m_passphrase;
    QLineEdit* m_again;
    QPushButton* m_pack;
    Outcome* m_outcome;
};

}  // namespace arc::ui
