// SPDX-License-Identifier: GPL-3.0-or-later
// Follows one stratum arc by arc: learns the baseline, runs the charts, opens and closes signals. One arc
// costs O(channels), however long the logbook is; the whole history in one go gives the same state.
#pragma once
#include <cstdint>
#include <deque>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/analytics/case_file.hpp"
#include "core/analytics/chart_state.hpp"
#include "core/analytics/choices.hpp"
#include "core/analytics/model.hpp"
#include "core/analytics/recovery.hpp"

namespace arc::drift {

struct WatchSettings {
    std::string stratum;
    int grooves = 1;
    double budgetArcs = 1000;
    std::optional<BaselineChoice> baseline;
};

/// Level scores of a job, for comparing splicers on it.
struct JobLevel {
    int arcs = 0;
    double common = 0, shift = 0, db = 0;  ///< sums
};

class Watcher {
  public:
    static constexpr std::size_t windowRows = 640;  ///< arcs kept for finding the begin of a change
    static constexpr int selfStart = 60;            ///< baseline arcs before the charts signal alone
    static constexpr int baselineGoal = 400;

    explicit Watcher(WatchSettings settings);

    /// Next arc of the stratum; numbers ascend.
    void step(const RawArc& arc);
    /// Care on the splicer or its cleaver, in time order between the arcs.
    void care(const CareRecord& record);
    void answer(const SignalAnswer& answer);

    [[nodiscard]] bool learning() const { return !model_.has_value(); }
    [[nodiscard]] const Model* model() const { return model_ ? &*model_ : nullptr; }
    [[nodiscard]] const std::vector<Chart>& charts() const { return charts_; }
    [[nodiscard]] const std::vector<Case>& cases() const { return cases_; }
    /// What there is to say about each care; those that can never be judged are left out.
    [[nodiscard]] std::vector<CareEffect> effects() const;
    [[nodiscard]] const std::deque<Row>& window() const { return window_; }
    [[nodiscard]] const std::map<std::uint32_t, JobLevel>& jobs() const { return jobs_; }
    [[nodiscard]] std::uint64_t baselineFrom() const { return baselineFrom_; }
    [[nodiscard]] std::uint64_t baselineTo() const { return baselineTo_; }
    [[nodiscard]] std::uint64_t arcs() const { return arcs_; }
    /// Facts about a case as far as its arcs are known now.
    [[nodiscard]] CaseFacts facts(const Case& about) const;

  private:
    void learnMore(const RawArc& arc);
    void relearn();
    void raise(std::size_t chart);
    void followOpenCases(const Row& row);
    void close(Case& about, SignalState state);
    void judgeCare();
    [[nodiscard]] std::optional<Complaint> complaintFor(const ActionKey& action) const;
    [[nodiscard]] std::optional<Instant> nextCare(std::size_t index) const;
    [[nodiscard]] std::vector<Row> lately() const;
    [[nodiscard]] Case* covering(const Chart& chart);
    /// Whether an alarm in the family of an open signal is another problem that began after it.
    [[nodiscard]] bool isNew(const Case& known, const Case& next) const;
    /// Whether the known signal's level was gone before the new one began.
    [[nodiscard]] bool faded(const Case& known, const Case& next) const;
    /// The arcs from well before the case to as far after it as it is judged by.
    [[nodiscard]] std::vector<Row> recent(const Case& about) const;
    [[nodiscard]] double meanSince(const Chart& chart, std::uint64_t from) const;
    /// Level and noise of the raising statistic from an arc on.
    void measure(Case& about, std::uint64_t from) const;
    [[nodiscard]] Case* reopened(const Case& next, const Explanation& why);
    void emptyFamily(const Case& about);
    /// The level since `from` counts as known on the charts of the case that are of the kind that alarmed.
    void setOffsets(const Case& about, Statistic alarmed, std::uint64_t from);
    void settle(Case& about);
    void clearOffsets(const Case& about);
    void restart();
    [[nodiscard]] std::vector<Row> rows() const { return {window_.begin(), window_.end()}; }

    WatchSettings settings_;
    std::vector<RawArc> baseline_;
    std::vector<RawArc> candidate_;  ///< arcs that may join the baseline, or become a new one
    bool renewing_ = false;          ///< candidate_ becomes a new baseline
    std::optional<Model> model_;
    std::vector<Chart> charts_;
    std::deque<Row> window_;
    std::vector<Case> cases_;
    std::vector<CareEffect> effects_;
    struct CareFollowed {
        std::optional<Complaint> complaint;
        std::uint64_t arcsBefore = 0;  ///< arcs of the stratum when it was done
        bool settled = false;
    };
    std::vector<CareFollowed> cares_;  ///< beside effects_
    std::vector<CareRecord> events_;
    std::map<std::uint32_t, JobLevel> jobs_;
    int redone_ = 0;  ///< re-splices since the last scored arc
    std::uint64_t baselineFrom_ = 0, baselineTo_ = 0, arcs_ = 0, lastCareAt_ = 0;
};

}  // namespace arc::drift
