// SPDX-License-Identifier: GPL-3.0-or-later
// What every page gets: the book, the outside, the clock, who is at the keyboard, and the charts' verdicts,
// which a worker keeps up to date with its own reader. Lives on the window's thread.
#pragma once
#include <QObject>
#include <QTimer>
#include <QUndoStack>

#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/logbook.hpp"
#include "core/workbench.hpp"
#include "ui/shell/actions.hpp"
#include "ui/shell/background.hpp"
#include "ui/shell/drift_view.hpp"
#include "ui/shell/screen.hpp"

namespace arc::ui {

/// Whether the person may take it back with Undo.
enum class Undo { Offered, No };

class Session : public QObject {
    Q_OBJECT
  public:
    /// `lookAtDrift` runs on a worker thread; tests give their own.
    Session(Logbook& book, Workbench& workbench, Clock& clock, Random& random, QObject* parent = nullptr,
            DriftReader lookAtDrift = readDrift);
    ~Session() override;

    Logbook& book() { return m_book; }
    Workbench& workbench() { return m_workbench; }
    Clock& clock() { return m_clock; }
    Random& random() { return m_random; }
    Actions& actions() { return m_actions; }
    Background& background() { return m_background; }
    QUndoStack& undo() { return m_undo; }

    template <class AnyId>
    AnyId newId() {
        return makeId<AnyId>(m_clock, m_random);
    }

    /// Crew label of who is at the keyboard; "" = not given.
    [[nodiscard]] const std::string& crew() const { return m_crew; }
    void setCrew(std::string crew);

    /// Writes; true only after the commit. On failure the sentence goes to `problem` and false comes back.
    /// With Undo::Offered, `back` takes it back (left empty: withdrawals of the new records), `words` names
    /// it (left empty: the first entry's own text).
    bool save(const std::vector<Entry>& entries, Undo undo = Undo::Offered, std::vector<Entry> back = {},
              const QString& words = {});
    bool save(const Entry& entry, Undo undo = Undo::Offered) { return save(std::vector<Entry>{entry}, undo); }
    /// When the last entry of this sitting was on disk.
    [[nodiscard]] std::optional<Instant> savedAt() const { return m_savedAt; }

    /// The latest verdicts; null until the first look is finished.
    [[nodiscard]] std::shared_ptr<const DriftView> drift() const { return m_drift; }
    /// True while the verdicts do not yet cover what the book holds.
    [[nodiscard]] bool driftPending() const { return m_driftRunning || m_driftStale; }

    /// A reader for a worker; several may ask at the same time.
    Result<std::unique_ptr<Logbook>> reader();

    /// Takes what a Result carries, or tells the person and answers nothing.
    template <class T>
    std::optional<T> take(Result<T> result) {
        if (result) return std::move(*result);
        tell(result.error());
        return std::nullopt;
    }
    void tell(const Problem& problem);

    void go(Screen screen, const Target& target = {});

    /// Work of this window that does not go through save (an import, a satchel, a record) is on disk.
    void noteWork();
    /// The file was changed by somebody else: pages read again.
    void noteChange();

  Q_SIGNALS:
    void bookChanged();
    void saved();
    void driftReady();
    void problemRaised(const arc::Problem& problem);
    void goAsked(arc::ui::Screen screen, const arc::ui::Target& target);
    void crewChanged();

  private:
    friend class SavedCommand;
    bool append(const std::vector<Entry>& entries);
    void noteSaved(Instant at);
    void lookForChanges();
    void startDrift();

    Logbook& m_book;
    Workbench& m_workbench;
    Clock& m_clock;
    Random& m_random;
    DriftReader m_lookAtDrift;
    std::mutex m_readerMutex;
    Actions m_actions;
    QUndoStack m_undo;
    std::string m_crew;
    std::optional<Instant> m_savedAt;
    std::optional<std::uint64_t> m_seenChange;
    std::shared_ptr<const DriftView> m_drift;
    bool m_driftRunning = false;
    bool m_driftStale = true;
    QTimer m_poll;
    QTimer m_driftSoon;
    Background m_background;  ///< last: its jobs use the members above
};

}  // namespace arc::ui
