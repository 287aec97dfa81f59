// SPDX-License-Identifier: GPL-3.0-or-later
// The window: rail, page stack, and above and below the page what went wrong and what is being worked on.
#pragma once
#include <QMainWindow>

#include <array>

#include "ui/shell/screen.hpp"
#include "ui/shell/session.hpp"
#include "ui/shell/window_options.hpp"

class QScrollArea;
class QStackedWidget;

namespace arc::ui {

class FirstRun;
class JobBar;
class Keeper;
class Page;
class ProblemBar;
class Rail;

class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    MainWindow(Session& session, WindowOptions options, QWidget* parent = nullptr);

    void go(Screen screen, const Target& target = {});
    [[nodiscard]] Screen screen() const { return m_screen; }
    [[nodiscard]] Page& page(Screen screen) { return *m_pages[static_cast<std::size_t>(screen)]; }
    /// Nothing is being worked out for the page that is open.
    [[nodiscard]] bool settled() const;

    // Both at once; the pages are made anew. Refused with a sentence while something typed would be lost.
    void setLook(const Theme& theme);
    void setLanguage(text::Language language);

  public Q_SLOTS:
    void openFinder();
    void openHelp(const QString& page = {});
    void askCrew();
    /// Of what is chosen on the page that is open; without a choice: the whole journal.
    void openHistory();
    void openPhotosAndNotes();

  private:
    void build();
    /// Whether making the pages anew would lose typed words; then it says so, and what to do `next`.
    bool losesWords(const QString& next);
    void addActions();
    void showSaved();
    void offerFirstRun();
    void openDemo();

    Session& m_session;
    WindowOptions m_options;
    Screen m_screen = Screen::Today;
    Keeper* m_keeper;
    Rail* m_rail = nullptr;
    ProblemBar* m_problem = nullptr;
    JobBar* m_jobs = nullptr;
    QStackedWidget* m_stack = nullptr;
    std::array<Page*, screenCount> m_pages{};
    std::array<QScrollArea*, screenCount> m_frames{};
    FirstRun* m_firstRun = nullptr;  ///< while its questions are open
};

}  // namespace arc::ui
