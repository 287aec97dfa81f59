// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.hpp"

#include <QAction>
#include <QApplication>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QScrollArea>
#include <QSettings>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/attachments/sheet.hpp"
#include "ui/history/history_sheet.hpp"
#include "ui/physics/what_if.hpp"
#include "ui/shell/book_bar.hpp"
#include "ui/shell/finder.hpp"
#include "ui/shell/first_run.hpp"
#include "ui/shell/help.hpp"
#include "ui/shell/help_pages.hpp"
#include "ui/shell/job_bar.hpp"
#include "ui/shell/keeper.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/page_list.hpp"
#include "ui/shell/rail.hpp"
#include "ui/shell/typed_words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/icons.hpp"
#include "ui/widgets/problem_bar.hpp"

namespace arc::ui {
namespace {

constexpr double scaleStep = 0.25;

void remember(const WindowOptions& options, const QString& key, const QVariant& value) {
    if (options.remember == Remember::Yes) QSettings().setValue(key, value);
}

}  // namespace

MainWindow::MainWindow(Session& session, WindowOptions options, QWidget* parent)
    : QMainWindow(parent),
      m_session(session),
      m_options(std::move(options)),
      m_keeper(new Keeper(session, this)) {
    setWindowTitle(m_options.bookName.empty()
                       ? QStringLiteral("Arcwright")
                       : tr("%1 - Arcwright").arg(QString::fromStdString(m_options.bookName)));
    setWindowIcon(applicationIcon());
    m_screen = m_options.first;
    build();
    connect(&m_session, &Session::goAsked, this, &MainWindow::go);
    connect(&m_session, &Session::saved, this, &MainWindow::showSaved);
    connect(&m_session, &Session::problemRaised, this,
            [this](const Problem& problem) { m_problem->show(problem); });
    connect(&m_session, &Session::crewChanged, this, [this] {
        m_rail->setCrew(QString::fromStdString(m_session.crew()));
        remember(m_options, QStringLiteral("crew"), QString::fromStdString(m_session.crew()));
    });
}

void MainWindow::build() {
    auto* whole = new QWidget;
    auto* row = new QHBoxLayout(whole);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    m_rail = new Rail(whole);
    row->addWidget(m_rail);
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    row->addLayout(column, 1);
    column->addWidget(new BookBar(m_session, *m_keeper, whole));
    m_problem = new ProblemBar(whole);
    column->addWidget(m_problem);
    m_stack = new QStackedWidget(whole);
    column->addWidget(m_stack, 1);
    m_jobs = new JobBar(m_session.background(), whole);
    column->addWidget(m_jobs);
    setCentralWidget(whole);
    // Actions belong to the widgets that were just replaced, or are added again by their id.
    addActions();
    for (const auto& entry : pageList()) {
        auto* made = entry.make(m_session, m_stack);
        made->setAccessibleName(titleOf(entry.screen));
        made->setObjectName(keyOf(entry.screen));
        m_pages[static_cast<std::size_t>(entry.screen)] = made;
        // On a small screen with large text a page scrolls; it never pushes the window off the screen.
        auto* frame = new QScrollArea(m_stack);
        frame->setWidgetResizable(true);
        frame->setFrameShape(QFrame::NoFrame);
        frame->setFocusPolicy(Qt::NoFocus);
        frame->setWidget(made);
        m_frames[static_cast<std::size_t>(entry.screen)] = frame;
        m_stack->addWidget(frame);
    }
    connect(m_rail, &Rail::screenChosen, this, [this](Screen screen) { go(screen); });
    connect(m_rail, &Rail::helpChosen, this, [this] { openHelp(); });
    connect(m_rail, &Rail::crewChosen, this, &MainWindow::askCrew);
    m_rail->setCrew(QString::fromStdString(m_session.crew()));
    showSaved();
    go(m_screen);
    offerFirstRun();
}

void MainWindow::offerFirstRun() {
    m_firstRun = nullptr;
    if (m_options.screenshots || !isUntouched(m_session.book())) return;
    m_firstRun = new FirstRun(m_session, m_options.openDemo ? Demo::Offered : Demo::None, m_stack);
    m_stack->addWidget(m_firstRun);
    m_stack->setCurrentWidget(m_firstRun);
    connect(m_firstRun, &FirstRun::finished, this, [this] { go(Screen::Today); });
    connect(m_firstRun, &FirstRun::importAsked, this, [this] {
        go(Screen::Today);
        if (auto* import = m_session.actions().find(QStringLiteral("today.import"))) import->trigger();
    });
    connect(m_firstRun, &FirstRun::demoAsked, this, &MainWindow::openDemo);
    // Queued: the window is made anew, this page with it.
    connect(m_firstRun, &FirstRun::languageAsked, this, &MainWindow::setLanguage, Qt::QueuedConnection);
    m_firstRun->begin();
}

void MainWindow::openDemo() {
    m_session.background().run<Result<void>>(this, tr("Making the demo logbook"), m_options.openDemo,
                                             [this](Result<void> done) {
                                                 if (!done) m_session.tell(done.error());
                                             });
}

void MainWindow::addActions() {
    qDeleteAll(actions());
    auto& all = m_session.actions();
    for (const auto& row : pageList())
        all.add({QStringLiteral("go.") + keyOf(row.screen), tr("Go to %1").arg(titleOf(row.screen)),
                 QKeySequence(row.key), QString::fromLatin1(row.icon), std::nullopt},
                this, [this, screen = row.screen] { go(screen); });
    all.add(
        {QStringLiteral("help"), tr("Help and keys"), QKeySequence(Qt::Key_F1), QStringLiteral("help"), {}},
        this, [this] { openHelp(); });
    const auto addHelp = [&](const QString& key, const QString& title) {
        all.add({QStringLiteral("help.") + key, tr("Help: %1").arg(title), {}, QStringLiteral("help"), {}},
                this, [this, key] { openHelp(key); });
    };
    for (const auto& page : helpPages()) addHelp(QString::fromLatin1(page.key), helpWords(page.title));
    addHelp(QStringLiteral("decides"), Help::tr("States and charts"));
    all.add({QStringLiteral("what-if"),
             tr("What would it lose? Offset, tilt, mode fields"),
             QKeySequence(Qt::CTRL | Qt::Key_W),
             {},
             {}},
            this, [this] {
                auto* sheet = new WhatIf(this);
                sheet->setAttribute(Qt::WA_DeleteOnClose);
                sheet->open();
            });
    all.add({QStringLiteral("find"),
             tr("Find an action, a tool, a job"),
             QKeySequence(Qt::CTRL | Qt::Key_K),
             QStringLiteral("find"),
             {}},
            this, [this] { openFinder(); });
    all.add({QStringLiteral("history"),
             tr("History of what is chosen: who wrote what, when, from where"),
             QKeySequence(Qt::CTRL | Qt::Key_H),
             QStringLiteral("logbook"),
             {}},
            this, [this] { openHistory(); });
    all.add({QStringLiteral("attach"),
             tr("Photos and notes of what is chosen"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_A),
             QStringLiteral("add"),
             {}},
            this, [this] { openPhotosAndNotes(); });
    all.add({QStringLiteral("undo"),
             tr("Undo the last entry"),
             QKeySequence(QKeySequence::Undo),
             QStringLiteral("undo"),
             {}},
            this, [this] { m_session.undo().undo(); });
    all.add({QStringLiteral("redo"),
             tr("Redo"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z),
             QStringLiteral("redo"),
             {}},
            this, [this] { m_session.undo().redo(); });
    all.add({QStringLiteral("look.tone"),
             tr("Change between Day and Night"),
             QKeySequence(Qt::CTRL | Qt::Key_L),
             QStringLiteral("night"),
             {}},
            this, [this] {
                const Theme now = currentTheme();
                setLook(Theme(now.tone() == Tone::Day ? Tone::Night : Tone::Day, now.scale()));
            });
    all.add({QStringLiteral("look.larger"), tr("Larger text"), QKeySequence(Qt::CTRL | Qt::Key_Plus), {}, {}},
            this, [this] { setLook(Theme(currentTheme().tone(), currentTheme().scale() + scaleStep)); });
    all.add(
        {QStringLiteral("look.smaller"), tr("Smaller text"), QKeySequence(Qt::CTRL | Qt::Key_Minus), {}, {}},
        this, [this] { setLook(Theme(currentTheme().tone(), currentTheme().scale() - scaleStep)); });
    all.add({QStringLiteral("language"),
             tr("Change the language"),
             QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L),
             QStringLiteral("language"),
             {}},
            this, [this] { setLanguage(text::nextLanguage(text::spokenLanguage())); });
    // Each in its own language, so that whoever needs it can read it.
    for (const auto& row : text::languages())
        all.add({QStringLiteral("language.") + QLatin1String(row.code),
                 QString::fromUtf8(row.choice),
                 {},
                 QStringLiteral("language"),
                 {}},
                this, [this, language = row.language] { setLanguage(language); });
    if (m_options.openDemo)
        all.add({QStringLiteral("demo"),
                 tr("Open the demo crew in a window of its own"),
                 {},
                 QStringLiteral("drift"),
                 {}},
                this, [this] { openDemo(); });
    all.add({QStringLiteral("crew"), tr("Say who is at the keyboard"), {}, QStringLiteral("people"), {}},
            this, [this] { askCrew(); });
    const auto nameUndo = [this](const char* id, const QString& text) {
        if (auto* action = m_session.actions().find(QString::fromLatin1(id))) action->setText(text);
    };
    // The stack keeps the words as they are in the journal.
    const auto nameUndoNow = [nameUndo](const QString& words) {
        nameUndo("undo",
                 words.isEmpty() ? tr("Undo the last entry") : tr("Undo: %1").arg(text::spoken(words)));
    };
    const auto nameRedoNow = [nameUndo](const QString& words) {
        nameUndo("redo", words.isEmpty() ? tr("Redo") : tr("Redo: %1").arg(text::spoken(words)));
    };
    connect(&m_session.undo(), &QUndoStack::undoTextChanged, this, nameUndoNow);
    connect(&m_session.undo(), &QUndoStack::redoTextChanged, this, nameRedoNow);
    nameUndoNow(m_session.undo().undoText());
    nameRedoNow(m_session.undo().redoText());
}

void MainWindow::go(Screen screen, const Target& target) {
    m_screen = screen;
    m_rail->setScreen(screen);
    auto& shown = page(screen);
    m_stack->setCurrentWidget(m_frames[static_cast<std::size_t>(screen)]);
    shown.open(target);
    if (auto* first = shown.firstFocus()) first->setFocus(Qt::OtherFocusReason);
}

bool MainWindow::settled() const {
    return m_session.drift() && !m_session.driftPending() &&
           m_pages[static_cast<std::size_t>(m_screen)]->settled();
}

bool MainWindow::losesWords(const QString& next) {
    const QString field = unsavedWords(*this);
    if (field.isEmpty()) return false;
    m_session.tell(Problem{ProblemCode::Refused, text::utf8(tr("what is typed would be lost")),
                           text::utf8(field), text::utf8(next)});
    return true;
}

void MainWindow::setLook(const Theme& theme) {
    if (theme == currentTheme() || losesWords(tr("Finish it or clear it, then change the look"))) return;
    applyTheme(*qApp, theme);
    remember(m_options, QStringLiteral("tone"),
             theme.tone() == Tone::Day ? QStringLiteral("day") : QStringLiteral("night"));
    remember(m_options, QStringLiteral("scale"), theme.scale());
    disconnect(&m_session.undo(), nullptr, this, nullptr);
    build();
}

void MainWindow::setLanguage(text::Language language) {
    if (language == text::spokenLanguage() ||
        losesWords(tr("Finish it or clear it, then change the language")))
        return;
    text::speak(*qApp, language);
    remember(m_options, QStringLiteral("language"), text::codeOf(language));
    disconnect(&m_session.undo(), nullptr, this, nullptr);
    build();
}

void MainWindow::showSaved() {
    const auto at = m_session.savedAt();
    if (!at) {
        m_rail->setSaved({});
        return;
    }
    const CalendarTime c = calendar(*at);
    m_rail->setSaved(tr("saved %1:%2:%3")
                         .arg(c.hour, 2, 10, QLatin1Char('0'))
                         .arg(c.minute, 2, 10, QLatin1Char('0'))
                         .arg(c.second, 2, 10, QLatin1Char('0')));
}

void MainWindow::openFinder() {
    auto* finder = new Finder(m_session, this);
    finder->setAttribute(Qt::WA_DeleteOnClose);
    finder->popup();
}

void MainWindow::openHistory() {
    if (const auto subject = page(m_screen).subject()) return showHistory(m_session, *subject, this);
    go(Screen::Logbook);
}

void MainWindow::openPhotosAndNotes() {
    const auto subject = page(m_screen).subject();
    const auto* record = subject ? std::get_if<Uuid>(&subject->of) : nullptr;
    const auto takes = record ? takesAttachments(m_session.book(), *record) : Result<bool>(false);
    if (!takes) return m_session.tell(takes.error());
    if (!*takes)
        return m_session.tell(Problem{ProblemCode::Refused,
                                      "photos and notes belong to a splice, a closure or a care record", "",
                                      "Choose one first"});
    openAttachments(m_session, {{*record, subject->name}}, this);
}

void MainWindow::openHelp(const QString& page) {
    auto* help = new Help(m_session.actions(), page, this);
    help->setAttribute(Qt::WA_DeleteOnClose);
    help->open();
}

void MainWindow::askCrew() {
    auto* dialog = new QInputDialog(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(tr("Who is at the keyboard?"));
    dialog->setLabelText(tr("Your crew label. It is written beside every entry you make."));
    dialog->setTextValue(QString::fromStdString(m_session.crew()));
    connect(dialog, &QInputDialog::textValueSelected, this,
            [this](const QString& crew) { m_session.setCrew(crew.trimmed().toStdString()); });
    dialog->open();
}

}  // namespace arc::ui
