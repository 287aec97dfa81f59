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
#include <string_view>
#include <vector>

#include "core/analytics/case_file.hpp"
#include "core/analytics/chart_state.hpp"
#include "core/analytics/choices.hpp"
#include "core/analytics/model.hpp"
#include "core/analytics/recovery.hpp"
#include "core/result.hpp"

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

/// What a care is judged by.
struct CareFollowed {
    std::optional<Complaint> complaint;
    std::uint64_t arcsBefore = 0;  ///< arcs of the stratum when it was done
    bool settled = false;
};

/// Everything a watcher knows. Bounded: the window and the baseline have fixed sizes, signals and jobs are
/// few.
struct WatchState {
    std::vector<RawArc> baseline;
    std::vector<RawArc> candidate;  ///< arcs that may join the baseline, or become a new one
    bool renewing = false;          ///< candidate becomes a new baseline
    std::optional<Model> model;
    std::vector<Chart> charts;
    std::deque<Row> window;
    std::vector<Case> cases;
    std::vector<CareEffect> effects;
    std::vector<CareFollowed> cares;  ///< beside effects
    std::vector<CareRecord> events;
    std::map<std::uint32_t, JobLevel> jobs;
    int redone = 0;  ///< re-splices since the last scored arc
    std::uint64_t baselineFrom = 0, baselineTo = 0, arcs = 0, lastArc = 0, lastCareAt = 0;
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

    [[nodiscard]] bool learning() const { return !state_.model.has_value(); }
    [[nodiscard]] const Model* model() const { return state_.model ? &*state_.model : nullptr; }
    [[nodiscard]] const std::vector<Chart>& charts() const { return state_.charts; }
    [[nodiscard]] const std::vector<Case>& cases() const { return state_.cases; }
    /// What there is to say about each care; those that can never be judged are left out.
    [[nodiscard]] std::vector<CareEffect> effects() const;
    [[nodiscard]] const std::deque<Row>& window() const { return state_.window; }
    [[nodiscard]] const std::map<std::uint32_t, JobLevel>& jobs() const { return state_.jobs; }
    [[nodiscard]] std::uint64_t baselineFrom() const { return state_.baselineFrom; }
    [[nodiscard]] std::uint64_t baselineTo() const { return state_.baselineTo; }
    [[nodiscard]] std::uint64_t arcs() const { return state_.arcs; }
    /// The whole state as bytes, with the last arc seen; restore() goes on from there. The settings are not
    /// part of it. A Problem when the bytes are not a state of this version.
    [[nodiscard]] std::string save() const;
    static Result<Watcher> restore(WatchSettings settings, std::string_view bytes);
    [[nodiscard]] std::uint64_t lastArc() const { return state_.lastArc; }
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
    /// What the chart's statistic has surely risen by since an arc.
    [[nodiscard]] double levelSince(const Chart& chart, std::uint64_t from) const;
    /// Level and noise of the raising statistic from an arc on.
    void measure(Case& about, std::uint64_t from) const;
    [[nodiscard]] Case* reopened(const Case& next, const Explanation& why);
    void emptyFamily(const Case& about);
    /// The level since `from` counts as known on the charts of the case that are of the kind that alarmed.
    void setOffsets(const Case& about, Statistic alarmed, std::uint64_t from);
    void settle(Case& about);
    void clearOffsets(const Case& about);
    void restart();

    WatchSettings settings_;
    WatchState state_;
};

}  // namespace arc::drift
