// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/background.hpp"

#include <QElapsedTimer>
#include <QRunnable>

#include <algorithm>
#include <atomic>
#include <mutex>

namespace arc::ui {

class Background::Watch final : public Progress {
  public:
    void report(std::uint64_t done, std::uint64_t total, std::string_view doing) override {
        const std::scoped_lock lock(m_mutex);
        m_share = total == 0 ? -1 : static_cast<double>(done) / static_cast<double>(total);
        m_doing.assign(doing);
    }
    [[nodiscard]] bool stopRequested() const override { return m_stop.load(); }
    void stop() { m_stop.store(true); }
    [[nodiscard]] std::pair<double, std::string> look() const {
        const std::scoped_lock lock(m_mutex);
        return {m_share, m_doing};
    }

  private:
    mutable std::mutex m_mutex;
    double m_share = -1;
    std::string m_doing;
    std::atomic<bool> m_stop = false;
};

struct Background::Job {
    int id = 0;
    QString title;
    QPointer<QObject> context;
    Shown shown = Shown::Yes;
    Watch watch;
    QElapsedTimer since;
    Work work;
    std::function<void()> deliver;
    std::atomic<bool> done = false;
};

/// A job on its way through the pool. The job itself is born and dies on the window's thread. Qt passes tasks
/// and calls from thread to thread by locks of its own; the flags say the same to checkers of threads, which
/// cannot see into Qt.
class Background::Task final : public QRunnable {
  public:
    Task(Background& home, Job& job) : m_home(home), m_job(job) {}
    void made() { m_made.store(true, std::memory_order_release); }
    void run() override {
        static_cast<void>(m_made.load(std::memory_order_acquire));
        m_job.deliver = m_job.work(m_job.watch);
        m_job.done.store(true, std::memory_order_release);
        QMetaObject::invokeMethod(&m_home, "collect", Qt::QueuedConnection);
        m_home.m_left.fetch_add(1, std::memory_order_release);
    }

  private:
    std::atomic<bool> m_made = false;
    Background& m_home;
    Job& m_job;
};

Background::Background(QObject* parent) : QObject(parent) {
    m_pool.setMaxThreadCount(2);
    m_tick.setInterval(100);
    connect(&m_tick, &QTimer::timeout, this, &Background::changed);
}

Background::~Background() {
    for (const auto& job : m_jobs) job->watch.stop();
    m_pool.clear();
    m_pool.waitForDone();
    static_cast<void>(m_left.load(std::memory_order_acquire));
}

int Background::start(QObject* context, const QString& title, Work work, Shown shown) {
    auto job = std::make_shared<Job>();
    job->id = m_nextId++;
    job->title = title;
    job->context = context;
    job->shown = shown;
    job->since.start();
    m_jobs.push_back(job);
    m_tick.start();
    job->work = std::move(work);
    auto task = std::make_unique<Task>(*this, *job);
    task->made();
    m_pool.start(task.release());
    return job->id;
}

void Background::collect() {
    const auto it = std::ranges::find_if(
        m_jobs, [](const auto& job) { return job->done.load(std::memory_order_acquire); });
    if (it == m_jobs.end()) return;
    const auto job = *it;
    m_jobs.erase(it);
    if (m_jobs.empty()) m_tick.stop();
    if (job->context) job->deliver();
    Q_EMIT changed();
}

void Background::cancel(int id) {
    for (const auto& job : m_jobs)
        if (job->id == id) job->watch.stop();
}

std::vector<JobState> Background::jobs() const {
    std::vector<JobState> states;
    for (const auto& job : m_jobs) {
        if (job->shown == Shown::No) continue;
        const auto [share, doing] = job->watch.look();
        states.push_back({job->id, job->title, QString::fromStdString(doing), share, job->since.elapsed()});
    }
    return states;
}

}  // namespace arc::ui
