// SPDX-License-Identifier: GPL-3.0-or-later
// Long work away from the window: one job at a time each on a worker thread, with progress, cancel, and an
// answer that is dropped when the one who asked is gone.
#pragma once
#include <QObject>
#include <QPointer>
#include <QString>
#include <QThreadPool>
#include <QTimer>

#include <atomic>
#include <functional>
#include <memory>
#include <vector>

#include "core/ports.hpp"

namespace arc::ui {

/// How a job stands, for the bar.
struct JobState {
    int id = 0;
    QString title;
    QString doing;
    double share = -1;   ///< 0-1; below 0: not known
    qint64 sinceMs = 0;  ///< how long it has been running
};

enum class Shown { Yes, No };  ///< whether the bar tells of the job

class Background : public QObject {
    Q_OBJECT
  public:
    explicit Background(QObject* parent = nullptr);
    /// Asks every job to stop and waits for it.
    ~Background() override;

    /// `work` runs on a worker thread, `done` afterwards on the window's thread, unless `context` is gone.
    template <class T>
    int run(QObject* context, const QString& title, std::function<T(Progress&)> work,
            std::function<void(T)> done, Shown shown = Shown::Yes) {
        return start(
            context, title,
            [work = std::move(work), done = std::move(done)](Progress& progress) -> std::function<void()> {
                auto answer = std::make_shared<T>(work(progress));
                return [answer, done] { done(std::move(*answer)); };
            },
            shown);
    }

    void cancel(int id);
    [[nodiscard]] bool busy() const { return !m_jobs.empty(); }
    [[nodiscard]] std::vector<JobState> jobs() const;

  Q_SIGNALS:
    /// A job began, moved on or ended; at most ten times a second.
    void changed();

  private:
    class Watch;
    class Task;
    struct Job;
    using Work = std::function<std::function<void()>(Progress&)>;
    int start(QObject* context, const QString& title, Work work, Shown shown);
    /// Ends one job that is done and hands its answer over.
    Q_INVOKABLE void collect();

    QThreadPool m_pool;
    QTimer m_tick;
    std::vector<std::shared_ptr<Job>> m_jobs;
    int m_nextId = 1;
    std::atomic<unsigned> m_left = 0;  ///< tasks that have left their thread
};

}  // namespace arc::ui
