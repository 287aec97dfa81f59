// SPDX-License-Identifier: GPL-3.0-or-later
// Jobs with their closures, how much of the plan is spliced (a bar, and the same in words), and the final
// records that were issued.
#pragma once
#include <QTreeWidget>

#include <map>
#include <memory>
#include <optional>

#include "core/closeout/record.hpp"
#include "ui/shell/subject.hpp"

namespace arc::ui {

using IssuedByJob = std::map<JobId, std::vector<IssuedRecord>>;

class JobTree : public QTreeWidget {
    Q_OBJECT
  public:
    explicit JobTree(QWidget* parent = nullptr);
    /// `records`: those that are known by now.
    void show(const std::vector<Job>& jobs,
              const std::map<JobId, std::shared_ptr<const closeout::Record>>& records,
              const IssuedByJob& issued);
    [[nodiscard]] std::optional<JobId> job() const;
    /// The closure that is chosen; none: the whole job.
    [[nodiscard]] std::optional<ClosureId> closure() const;
    void choose(JobId job);
    /// The job, closure or issued record that is chosen.
    [[nodiscard]] std::optional<Subject> subject() const;

  Q_SIGNALS:
    void chosen();

  private:
    struct Done {
        int planned = 0, spliced = 0, open = 0;
    };
    void addIssued(QTreeWidgetItem* job, const std::vector<IssuedRecord>& issued);
    /// Without a plan only the splices are counted.
    void fill(QTreeWidgetItem* item, const std::optional<Done>& done, std::size_t splices);
};

}  // namespace arc::ui
