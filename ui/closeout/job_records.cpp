// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/job_records.hpp"

#include "core/closeout/build.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/shell/session.hpp"

namespace arc::ui {

namespace {

/// Above this many readings in the book only the job that is looked at is worked out.
constexpr std::uint64_t allJobsUpTo = 200'000;

using Built = std::vector<std::pair<JobId, Result<closeout::Record>>>;

Built buildAll(Session& session, const std::vector<JobId>& ids, const std::shared_ptr<const CareLook>& look,
               Instant at, Progress& progress) {
    Built built;
    auto reader = session.reader();
    for (const auto& id : ids) {
        if (progress.stopRequested()) break;
        if (!reader) {
            built.emplace_back(id, tl::unexpected(reader.error()));
            break;
        }
        closeout::BuildSettings settings;
        settings.madeAt = at;
        settings.owed = [look](const closeout::Equipment& splicer,
                               const std::vector<CareRecord>&) -> Result<std::vector<care::OwedStretch>> {
            std::vector<care::OwedStretch> stretches;
            for (const auto& stretch : look->owed)
                if (stretch.splicer == splicer.tool.id) stretches.push_back(stretch);
            return stretches;
        };
        built.emplace_back(id, closeout::build(**reader, id, settings, progress));
    }
    return built;
}

}  // namespace

JobRecords::JobRecords(Session& session, CareDesk& desk, QObject* parent)
    : QObject(parent), m_session(session), m_desk(desk) {}

const closeout::Record* JobRecords::of(JobId job) const {
    const auto it = m_known.find(job);
    return it == m_known.end() ? nullptr : it->second.get();
}

void JobRecords::renew(const std::vector<Job>& jobs) {
    m_stale.clear();
    for (const auto& job : jobs) m_stale.insert(job.id);
    std::erase_if(m_known, [this](const auto& one) { return !m_stale.contains(one.first); });
}

void JobRecords::work(std::optional<JobId> first) {
    if (m_working || m_stale.empty() || !m_desk.look()) return;
    std::vector<JobId> ids;
    if (first && m_stale.contains(*first)) ids.push_back(*first);
    const auto totals = m_session.book().totals();
    if (totals && totals->readings <= allJobsUpTo)
        for (const auto& id : m_stale)
            if (id != first) ids.push_back(id);
    if (ids.empty()) return;
    m_working = true;
    for (const auto& id : ids) m_stale.erase(id);
    m_session.background().run<Built>(
        this, tr("Looking at the jobs"),
        [&session = m_session, ids, look = m_desk.look(), at = m_session.clock().now()](Progress& progress) {
            return buildAll(session, ids, look, at, progress);
        },
        [this](Built built) {
            m_working = false;
            for (auto& [id, record] : built) {
                if (record)
                    m_known[id] = std::make_shared<const closeout::Record>(std::move(*record));
                else if (record.error().code != ProblemCode::Cancelled)
                    m_session.tell(record.error());
            }
            Q_EMIT changed();
        },
        Shown::No);
}

}  // namespace arc::ui
