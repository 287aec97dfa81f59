// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/session.hpp"

#include <QUndoCommand>

#include <ranges>

namespace arc::ui {
namespace {

constexpr int pollMs = 2000;
/// Readings typed one after the other are looked at together.
constexpr int driftDelayMs = 250;

std::vector<Entry> oppositesOf(const std::vector<Entry>& entries) {
    std::vector<Entry> back;
    for (const auto& entry : entries | std::views::reverse) back.push_back(opposite(entry, std::nullopt));
    return back;
}

}  // namespace

/// A step on the undo stack: entries that are in the book, and what takes them back.
class SavedCommand final : public QUndoCommand {
  public:
    SavedCommand(Session& session, const QString& words, std::vector<Entry> forward, std::vector<Entry> back)
        : QUndoCommand(words), m_session(session), m_forward(std::move(forward)), m_back(std::move(back)) {}

    void undo() override {
        if (!m_session.append(m_back)) setObsolete(true);
    }
    void redo() override {
        // The stack runs a command as it is pushed; the entries are in the book by then.
        if (m_pushed && !m_session.append(m_forward)) setObsolete(true);
        m_pushed = true;
    }

  private:
    Session& m_session;
    std::vector<Entry> m_forward, m_back;
    bool m_pushed = false;
};

Session::Session(Logbook& book, Workbench& workbench, Clock& clock, Random& random, QObject* parent,
                 DriftReader lookAtDrift)
    : QObject(parent),
      m_book(book),
      m_workbench(workbench),
      m_clock(clock),
      m_random(random),
      m_lookAtDrift(std::move(lookAtDrift)) {
    if (const auto count = m_book.changeCount()) m_seenChange = *count;
    connect(&m_poll, &QTimer::timeout, this, &Session::lookForChanges);
    m_poll.start(pollMs);
    m_driftSoon.setSingleShot(true);
    m_driftSoon.setInterval(driftDelayMs);
    connect(&m_driftSoon, &QTimer::timeout, this, &Session::startDrift);
    QTimer::singleShot(0, this, &Session::startDrift);
}

Session::~Session() = default;

void Session::setCrew(std::string crew) {
    if (crew == m_crew) return;
    m_crew = std::move(crew);
    Q_EMIT crewChanged();
}

bool Session::save(const std::vector<Entry>& entries, Undo undo, std::vector<Entry> back,
                   const QString& words) {
    if (entries.empty()) return true;
    if (!append(entries)) return false;
    if (undo == Undo::Offered) {
        if (back.empty()) back = oppositesOf(entries);
        const QString named = words.isEmpty() ? QString::fromStdString(text(entries.front())) : words;
        m_undo.push(new SavedCommand(*this, named, entries, std::move(back)));
    }
    return true;
}

bool Session::append(const std::vector<Entry>& entries) {
    const auto receipt = m_book.append(entries, Context{m_crew, "window", std::nullopt});
    if (!receipt) {
        tell(receipt.error());
        return false;
    }
    noteSaved(receipt->savedAt);
    return true;
}

void Session::noteSaved(Instant at) {
    m_savedAt = at;
    if (m_savedAt->offsetMinutes == 0) m_savedAt->offsetMinutes = m_clock.now().offsetMinutes;
    Q_EMIT saved();
    noteChange();
}

void Session::noteWork() {
    noteSaved(m_clock.now());
}

void Session::noteChange() {
    if (const auto count = m_book.changeCount()) m_seenChange = *count;
    m_driftStale = true;
    m_driftSoon.start();
    Q_EMIT bookChanged();
}

void Session::lookForChanges() {
    const auto count = m_book.changeCount();
    if (count && m_seenChange != *count) noteChange();
}

void Session::startDrift() {
    if (m_driftRunning) return;
    m_driftRunning = true;
    m_driftStale = false;
    m_background.run<Result<DriftView>>(
        this, tr("Looking at the losses"),
        [this](Progress& progress) -> Result<DriftView> {
            auto own = reader();
            if (!own) return tl::unexpected(own.error());
            return m_lookAtDrift(**own, progress);
        },
        [this](Result<DriftView> view) {
            m_driftRunning = false;
            if (view) {
                m_drift = std::make_shared<const DriftView>(std::move(*view));
            } else if (view.error().code != ProblemCode::Cancelled) {
                tell(view.error());
            }
            if (m_driftStale && !m_driftSoon.isActive()) m_driftSoon.start();
            Q_EMIT driftReady();
        },
        Shown::No);
}

Result<std::unique_ptr<Logbook>> Session::reader() {
    const std::scoped_lock lock(m_readerMutex);
    return m_workbench.reader();
}

void Session::tell(const Problem& problem) {
    Q_EMIT problemRaised(problem);
}

void Session::go(Screen screen, const Target& target) {
    Q_EMIT goAsked(screen, target);
}

}  // namespace arc::ui
