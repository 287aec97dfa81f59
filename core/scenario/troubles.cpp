// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/troubles.hpp"

#include <algorithm>
#include <utility>

namespace arc::scenario {
namespace {

bool cures(const ActionKey& action, drift::Cause cause) {
    switch (cause) {
        case drift::Cause::Groove:
            return action == action::grooveClean || action == action::clampClean;
        case drift::Cause::Calibration:
            return action == action::arcCalibration;
        case drift::Cause::Cleaver:
            return action == action::cleaverClean || action == action::bladeClean ||
                   action == action::bladeRotate || action == action::bladeRaise;
        case drift::Cause::Electrode:
            return action == action::electrodeReplace;
        case drift::Cause::Fibre:
        case drift::Cause::Unknown:
            break;
    }
    return false;
}

std::uint64_t count(const Uses& uses, const std::string& label) {
    const auto found = uses.find(label);
    return found == uses.end() ? 0 : found->second;
}

bool concerns(const FaultSetting& fault, const SimulatedArc& arc) {
    return fault.tool == arc.splicer || fault.tool == arc.cleaver;
}

}  // namespace

Troubles::Troubles(const Scenario& scenario) {
    for (const auto& fault : scenario.faults) faults_.push_back(Active{fault});
}

void Troubles::bear(const SimulatedArc& arc, const JobSetting& job, const Wear& worn, const Uses& uses,
                    Burden& burden) {
    begin(arc, uses);
    if (worn.extraDb > 0) noteElectrodes(arc, worn);
    if (job.badLot) noteLot(arc, job);
    for (const auto& fault : faults_) apply(fault, arc, job, uses, burden);
}

void Troubles::begin(const SimulatedArc& arc, const Uses& uses) {
    for (auto& fault : faults_) {
        if (fault.begun || !concerns(fault.setting, arc)) continue;
        const auto& when = fault.setting.begin;
        const std::uint64_t use = count(uses, fault.setting.tool);
        if ((when.at && arc.at < *when.at) || (when.arc && use < *when.arc)) continue;
        fault.begun = true;
        fault.beganAtUse = use;
        fault.truth = truth_.size();
        TrueFault truth;
        truth.cause = fault.setting.cause;
        truth.tool = fault.setting.tool;
        truth.channels = fault.setting.channels;
        if (fault.setting.cause != drift::Cause::Cleaver) truth.sizeDb = fault.setting.stepDb;
        truth_.push_back(std::move(truth));
    }
}

void Troubles::apply(const Active& fault, const SimulatedArc& arc, const JobSetting& job, const Uses& uses,
                     Burden& burden) {
    const auto& f = fault.setting;
    if (!fault.begun || fault.ended || !concerns(f, arc)) return;
    const auto since = static_cast<double>(count(uses, f.tool) - fault.beganAtUse);
    const double grown = f.rampArcs > 0 ? std::min(1.0, since / f.rampArcs) : 1.0;
    touch(fault.truth, arc);
    switch (f.cause) {
        case drift::Cause::Groove: {
            const double push = pushFor(f.stepDb, (job.modeFieldA + job.modeFieldB) / 4.0) * grown;
            for (const int channel : f.channels)
                if (channel >= 1 && channel <= arc.channels)
                    burden.pushUm[static_cast<std::size_t>(channel) - 1] += push;
            break;
        }
        case drift::Cause::Calibration:
            burden.common.extraDb += f.stepDb * grown;
            break;
        case drift::Cause::Cleaver:
            burden.common.angleSd *= 1.0 + f.angleGain * grown;
            break;
        case drift::Cause::Electrode:
        case drift::Cause::Fibre:
        case drift::Cause::Unknown:
            break;
    }
}

void Troubles::noteElectrodes(const SimulatedArc& arc, const Wear& worn) {
    const auto [place, isNew] = electrodes_.try_emplace(arc.splicer, truth_.size());
    if (isNew) {
        TrueFault truth;
        truth.cause = drift::Cause::Electrode;
        truth.tool = arc.splicer;
        truth_.push_back(std::move(truth));
    }
    truth_[place->second].sizeDb = worn.extraDb;
    touch(place->second, arc);
}

void Troubles::noteLot(const SimulatedArc& arc, const JobSetting& job) {
    const auto [place, isNew] = lots_.try_emplace(job.label, truth_.size());
    if (isNew) {
        TrueFault truth;
        truth.cause = drift::Cause::Fibre;
        truth.tool = job.label;
        truth.sizeDb = modeLossDb(0, job.modeFieldA / 2.0, job.modeFieldB / 2.0);
        truth.endedBy = "job change";
        truth_.push_back(std::move(truth));
    }
    touch(place->second, arc);
}

void Troubles::touch(std::size_t truth, const SimulatedArc& arc) {
    auto& touched = truth_[truth].touched;
    auto found =
        std::find_if(touched.begin(), touched.end(), [&](const auto& t) { return t.splicer == arc.splicer; });
    if (found == touched.end()) {
        touched.push_back({arc.splicer, arc.number, std::nullopt, arc.at, std::nullopt});
        found = touched.end() - 1;
    }
    found->endArc = arc.number;
    found->end = arc.at;
}

void Troubles::care(const CareSetting& care, Instant at) {
    if (care.action == action::electrodeReplace) {
        const auto worn = electrodes_.find(care.tool);
        if (worn != electrodes_.end()) {
            truth_[worn->second].endedBy = care.action;
            electrodes_.erase(worn);
        }
    }
    if (care.effect == Effect::Helps)
        for (auto& fault : faults_)
            if (fault.begun && !fault.ended && fault.setting.tool == care.tool &&
                cures(care.action, fault.setting.cause)) {
                fault.ended = true;
                truth_[fault.truth].endedBy = care.action;
            }
    if (care.brings) {
        Active fault{*care.brings};
        fault.setting.begin = {at, std::nullopt};
        faults_.push_back(std::move(fault));
    }
}

std::vector<TrueFault> Troubles::truth(const Uses& arcs) && {
    for (auto& truth : truth_) {
        const bool cured = !truth.endedBy.empty() && truth.cause != drift::Cause::Fibre;
        bool lasts = false;
        for (auto& t : truth.touched) {
            if (cured || *t.endArc < count(arcs, t.splicer)) continue;
            t.endArc.reset();
            t.end.reset();
            lasts = true;
        }
        if (lasts) truth.endedBy.clear();
    }
    return std::move(truth_);
}

}  // namespace arc::scenario
