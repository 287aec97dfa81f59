// SPDX-License-Identifier: GPL-3.0-or-later
// A care card on the whole screen, made for gloves and keyboard: cautions, materials, one step at a time.
// Every input is in the logbook before the next screen shows, so that a run goes on at the same step after a
// crash.
#pragma once
#include <QDialog>
#include <QTimer>

#include <functional>
#include <map>
#include <optional>
#include <vector>

#include "core/care/card.hpp"
#include "core/care/run.hpp"
#include "ui/shell/session.hpp"

class QLabel;
class QProgressBar;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace arc::ui {

class FieldEdit;

class CardRunner : public QDialog {
    Q_OBJECT
  public:
    /// `values`: what is known beforehand, by field key; offered, not written down until it is confirmed.
    CardRunner(Session& session, care::Card card, Tool tool, CareRun run,
               std::map<std::string, std::string> values, QWidget* parent = nullptr);

    [[nodiscard]] const CareRun& run() const { return m_run; }
    [[nodiscard]] care::Screen screen() const { return care::screenOf(m_card, m_tool, m_run); }
    /// The sentence that says what is missing; empty when nothing is.
    [[nodiscard]] QString saidWrong() const;

  Q_SIGNALS:
    /// The record is in the logbook.
    void recorded(const arc::CareRecord& record);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void reject() override;

  private:
    void build();
    void refresh();
    void showCautions();
    void showMaterials();
    void showStep(const care::Screen& screen);
    void showFinished();
    void showTimer();
    void put(const care::Input& input);
    void writeDown();
    void goTo(std::size_t field);
    void finish();
    void drop();
    void addBig(const QString& text, const QString& key, std::function<void()> run, bool primary);
    void clearBody();
    void wrong(const Problem& problem);

    Session& m_session;
    care::Card m_card;
    Tool m_tool;
    CareRun m_run;
    std::map<std::string, std::string> m_values;

    QLabel* m_title;
    QLabel* m_where;
    QProgressBar* m_progress;
    QScrollArea* m_scroll;
    QVBoxLayout* m_body;
    QWidget* m_bodyWidget = nullptr;
    QVBoxLayout* m_outer;
    QWidget* m_buttons = nullptr;
    QLabel* m_wrong;
    QPushButton* m_back;
    std::vector<FieldEdit*> m_fields;
    QLabel* m_timerLabel = nullptr;
    QProgressBar* m_timerBar = nullptr;
    QPushButton* m_timerDone = nullptr;
    QTimer m_tick;
    struct Key {
        int key;
        std::function<void()> run;
    };
    std::vector<Key> m_keys;
};

}  // namespace arc::ui
