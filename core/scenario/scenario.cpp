// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/scenario.hpp"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace arc::scenario {
namespace {

Result<void> wrong(std::string what, std::string where) {
    return fail(ProblemCode::BadInput, std::move(what), std::move(where), "Correct the scenario file");
}

/// Fills `labels` and refuses a label twice or an empty one.
template <class List>
Result<void> collect(const List& list, std::set<std::string>& labels, const std::string& where) {
    for (const auto& item : list) {
        if (item.label.empty()) return wrong("a label is missing", where);
        if (!labels.insert(item.label).second) return wrong("\"" + item.label + "\" is there twice", where);
    }
    return {};
}

Result<void> known(const std::set<std::string>& labels, const std::string& label, const std::string& where) {
    if (labels.contains(label)) return {};
    return wrong("nothing is called \"" + label + "\"", where);
}

Result<void> moment(const When& when, const std::string& where) {
    if (when.at.has_value() == when.arc.has_value())
        return wrong("give either a time or an arc, not both", where);
    return {};
}

Result<void> fault(const FaultSetting& f, const std::set<std::string>& splicers,
                   const std::set<std::string>& cleavers, const std::string& where) {
    switch (f.cause) {
        case drift::Cause::Groove:
            if (f.channels.empty()) return wrong("a dirty groove needs its channels", where);
            [[fallthrough]];
        case drift::Cause::Calibration:
            return known(splicers, f.tool, where);
        case drift::Cause::Cleaver:
            return known(cleavers, f.tool, where);
        case drift::Cause::Electrode:
        case drift::Cause::Fibre:
        case drift::Cause::Unknown:
            break;
    }
    return wrong(
        "a fault is groove, calibration or cleaver; electrodes wear by themselves and a bad lot "
        "belongs to its job",
        where);
}

constexpr int longestDays = 40'000;
constexpr double latestMinute = 20 * 60;

struct Labels {
    std::set<std::string> splicers, cleavers, tools, jobs, closures;
};

Result<void> checkMachines(const Scenario& s) {
    for (const auto& m : s.splicers) {
        const std::string where = "splicer " + m.label;
        static constexpr std::array sizes{1, 2, 4, 8, 12, 16};
        if (std::find(sizes.begin(), sizes.end(), m.traits.grooves) == sizes.end())
            return wrong("a splicer joins 1, 2, 4, 8, 12 or 16 fibres", where);
        if (m.traits.kind == SplicerKind::SingleFibre && m.traits.grooves != 1)
            return wrong("a single-fibre splicer has one groove", where);
        if (m.resolutionDb < 0.001 || m.resolutionDb > 0.1)
            return wrong("the display step is not between 0.001 and 0.1 dB", where);
        if (m.setupArcs < 1 || m.minutesPerArc <= 0 || m.wearScale <= 0)
            return wrong("set-up arcs, minutes per arc and wear scale must be above 0", where);
    }
    return {};
}

Result<void> checkJobs(const Scenario& s, Labels& labels) {
    for (const auto& job : s.jobs) {
        const std::string where = "job " + job.label;
        std::set<std::string> cables;
        if (auto r = collect(job.cables, cables, where); !r) return r;
        if (auto r = collect(job.closures, labels.closures, where); !r) return r;
        if (job.modeFieldA <= 0 || job.modeFieldB <= 0)
            return wrong("a mode-field diameter must be above 0", where);
        for (const auto& closure : job.closures) {
            if (auto r = known(cables, closure.cableA, where + ", closure " + closure.label); !r) return r;
            if (auto r = known(cables, closure.cableB, where + ", closure " + closure.label); !r) return r;
        }
    }
    return {};
}

Result<void> checkWork(const Scenario& s, const Labels& labels) {
    for (std::size_t i = 0; i < s.work.size(); ++i) {
        const auto& a = s.work[i];
        const std::string where = "work, row " + std::to_string(i + 1);
        if (auto r = known(labels.splicers, a.splicer, where); !r) return r;
        if (auto r = known(labels.cleavers, a.cleaver, where); !r) return r;
        if (auto r = known(labels.jobs, a.job, where); !r) return r;
        if (a.fromDay < 0 || a.toDay < a.fromDay) return wrong("the days are not in order", where);
        if (a.toDay > longestDays) return wrong("a scenario lasts at most 40,000 days", where);
        if (a.arcsPerDay < 1) return wrong("a day has at least one arc", where);
        const auto machine = std::find_if(s.splicers.begin(), s.splicers.end(),
                                          [&](const auto& m) { return m.label == a.splicer; });
        if (a.startHour < 0 || a.startHour * 60 + a.arcsPerDay * machine->minutesPerArc > latestMinute)
            return wrong("the arcs of a day do not fit between its start and 20 o'clock", where);
        const auto job =
            std::find_if(s.jobs.begin(), s.jobs.end(), [&](const auto& j) { return j.label == a.job; });
        for (const auto& label : a.closures)
            if (std::none_of(job->closures.begin(), job->closures.end(),
                             [&](const auto& c) { return c.label == label; }))
                return wrong("job " + a.job + " has no closure \"" + label + "\"", where);
        for (std::size_t k = 0; k < i; ++k)
            if (s.work[k].splicer == a.splicer && s.work[k].toDay >= a.fromDay &&
                s.work[k].fromDay <= a.toDay)
                return wrong("splicer " + a.splicer + " is in two places on one day", where);
    }
    return {};
}

Result<void> checkEvents(const Scenario& s, const Labels& labels) {
    for (std::size_t i = 0; i < s.faults.size(); ++i) {
        const std::string where = "faults, row " + std::to_string(i + 1);
        if (auto r = fault(s.faults[i], labels.splicers, labels.cleavers, where); !r) return r;
        if (auto r = moment(s.faults[i].begin, where); !r) return r;
    }
    for (std::size_t i = 0; i < s.care.size(); ++i) {
        const auto& care = s.care[i];
        const std::string where = "care, row " + std::to_string(i + 1);
        if (auto r = known(labels.tools, care.tool, where); !r) return r;
        if (auto r = moment(care.at, where); !r) return r;
        if (care.effect == Effect::Worse && !care.brings)
            return wrong("a care that made it worse must say what it brings", where);
        if (care.brings)
            if (auto r = fault(*care.brings, labels.splicers, labels.cleavers, where); !r) return r;
    }
    for (std::size_t i = 0; i < s.routine.size(); ++i) {
        const std::string where = "routine, row " + std::to_string(i + 1);
        if (auto r = known(labels.tools, s.routine[i].tool, where); !r) return r;
        if (s.routine[i].everyDays <= 0 && s.routine[i].everyUses == 0)
            return wrong("give the days or the uses after which it is done", where);
        if (s.routine[i].effect == Effect::Worse) return wrong("a habit helps or does nothing", where);
    }
    for (std::size_t i = 0; i < s.measuring.size(); ++i) {
        const std::string where = "measuring, row " + std::to_string(i + 1);
        if (auto r = known(labels.closures, s.measuring[i].closure, where); !r) return r;
        if (s.measuring[i].day < 0 || s.measuring[i].day > longestDays)
            return wrong("a scenario lasts at most 40,000 days", where);
    }
    return {};
}

}  // namespace

Result<void> check(const Scenario& s) {
    Labels labels;
    std::set<std::string> strippers;
    if (auto r = collect(s.splicers, labels.splicers, "splicers"); !r) return r;
    if (auto r = collect(s.cleavers, labels.cleavers, "cleavers"); !r) return r;
    if (auto r = collect(s.strippers, strippers, "strippers"); !r) return r;
    if (auto r = collect(s.jobs, labels.jobs, "jobs"); !r) return r;
    for (const auto* set : {&labels.splicers, &labels.cleavers, &strippers})
        for (const auto& label : *set)
            if (!labels.tools.insert(label).second)
                return wrong("two tools are called \"" + label + "\"", "tools");
    if (auto r = checkMachines(s); !r) return r;
    if (auto r = checkJobs(s, labels); !r) return r;
    if (auto r = checkWork(s, labels); !r) return r;
    return checkEvents(s, labels);
}

}  // namespace arc::scenario
