// SPDX-License-Identifier: GPL-3.0-or-later
// The closeout records of all jobs as they stand now, worked out by a worker and kept until the book changes.
#pragma once
#include <QObject>

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <vector>

#include "core/closeout/record.hpp"

namespace arc::ui {

class CareDesk;
class Session;

class JobRecords : public QObject {
    Q_OBJECT
  public:
    using Known = std::map<JobId, std::shared_ptr<const closeout::Record>>;
    JobRecords(Session& session, CareDesk& desk, QObject* parent);

    /// All jobs are worked out anew; what is known stays until its successor is there.
    void renew(const std::vector<Job>& jobs);
    /// Works on; `first` goes first.
    void work(std::optional<JobId> first);
    [[nodiscard]] const Known& known() const { return m_known; }
    [[nodiscard]] const closeout::Record* of(JobId job) const;
    [[nodiscard]] bool working() const { return m_working; }
    /// A job that is known may still be worked out anew.
    [[nodiscard]] bool stale() const { return !m_stale.empty(); }

  Q_SIGNALS:
    void changed();

  private:
    Session& m_session;
    CareDesk& m_desk;
    Known m_known;
    std::set<JobId> m_stale;
    bool m_working = false;
};

}  // namespace arc::ui
