// SPDX-License-Identifier: GPL-3.0-or-later
// The words of an entry for menu, journal and history.
#include <cstdlib>
#include <variant>

#include "core/care/words.hpp"
#include "core/entry.hpp"

namespace arc {
namespace {

/// "0.04 dB", a third decimal only when there is one.
std::string words(Loss loss) {
    const int size = std::abs(loss.value);
    const int digits = size % 10 == 0 ? 2 : 3;
    std::string fraction = std::to_string(digits == 2 ? size % 1000 / 10 : size % 1000);
    fraction.insert(0, static_cast<std::size_t>(digits) - fraction.size(), '0');
    return std::string(loss.value < 0 ? "-" : "") + std::to_string(size / 1000) + "." + fraction + " dB";
}

std::string count(std::size_t number, const std::string& one, const std::string& many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

std::string by(const std::string& who) {
    return who.empty() ? "" : " by " + who;
}

std::string reason(const std::string& why) {
    return why.empty() ? "" : ": " + why;
}

std::string title(const ActionKey& action) {
    return action.empty() ? "Care" : care::titled(action);
}

std::string fibreOf(const Reading& r) {
    if (!r.fibreA.empty()) return "fibre " + r.fibreA;
    if (!r.fibreB.empty()) return "fibre " + r.fibreB;
    return "groove " + std::to_string(r.channel);
}

std::string one(const Tool& t) {
    const std::string kind = asSplicer(t) ? "Splicer " : asCleaver(t) ? "Cleaver " : "Stripper ";
    return kind + t.label + (t.nickname.empty() ? "" : " \"" + t.nickname + "\"") +
           (t.service == Service::OutOfService ? " taken out of service" : "");
}
std::string one(const Pairing&) {
    return "Cleaver paired with a splicer";
}
std::string one(const CounterCorrection& k) {
    return "Counter set to " + std::to_string(k.shows.value) + reason(k.reason);
}
std::string one(const Job& j) {
    return "Job " + j.label + (j.title.empty() ? "" : ", " + j.title);
}
std::string one(const Cable& k) {
    return "Cable " + k.label + " of " + count(static_cast<std::size_t>(k.fibreCount), "fibre", "fibres");
}
std::string one(const Closure& k) {
    return "Closure " + k.label +
           (k.plan.empty() ? "" : ", " + count(k.plan.size(), "splice", "splices") + " planned");
}
std::string one(const Span& s) {
    return "Span " + s.label + " with " + count(s.closures.size(), "closure", "closures");
}
std::string one(const SpliceArc& a) {
    if (a.readings.empty()) return "Arc without a reading";
    if (a.readings.size() == 1) {
        const auto& r = a.readings[0];
        return std::string(r.attempt > 1 ? "Re-splice of " : "Splice of ") + fibreOf(r) + ": " +
               words(r.loss);
    }
    const auto [low, high] = std::minmax_element(
        a.readings.begin(), a.readings.end(), [](const auto& x, const auto& y) { return x.loss < y.loss; });
    const bool again =
        std::all_of(a.readings.begin(), a.readings.end(), [](const auto& r) { return r.attempt > 1; });
    return std::string(again ? "Re-splice of " : "Splice of ") + std::to_string(a.readings.size()) +
           " fibres: " + words(low->loss) + " to " + words(high->loss);
}
std::string one(const ReadingChange& r) {
    if (r.reading.state == ReadingState::Voided)
        return "Voided " + fibreOf(r.reading) + reason(r.reading.note);
    return "Reading of " + fibreOf(r.reading) + ": " + words(r.reading.loss);
}
std::string one(const MeasuredLoss& m) {
    std::string said = "Measured fibre " + m.fibre + " at " + std::to_string(m.wavelengthNm) + " nm: ";
    if (m.aToB && m.bToA) return said + words(*m.aToB) + " and " + words(*m.bToA) + ", both directions";
    return said + (m.aToB ? words(*m.aToB) : m.bToA ? words(*m.bToA) : "nothing") + ", one way";
}
std::string one(const CareRecord& r) {
    std::string said = title(r.action);
    if (r.calibration)
        said += r.calibration->power == Adequacy::Adequate && r.calibration->position == Adequacy::Adequate
                    ? ", adequate"
                    : ", not adequate";
    if (r.blade)
        said +=
            ", height " + std::to_string(r.blade->height) + " position " + std::to_string(r.blade->position);
    return said + reason(r.detail);
}
std::string one(const CareRun& r) {
    switch (r.state) {
        case RunState::Open:
            return title(r.action) + " under way, step " + std::to_string(r.step + 1);
        case RunState::Finished:
            return title(r.action) + " finished";
        case RunState::Abandoned:
            break;
    }
    return title(r.action) + " left off at step " + std::to_string(r.step + 1);
}
std::string one(const CardEdition& e) {
    return "Care card " + title(e.action) + ", version " + std::to_string(e.version);
}
std::string one(const HoldOverride& h) {
    return "Hold overridden" + by(h.by) + reason(h.reason);
}
std::string one(const BaselineChoice& b) {
    return "Baseline moved for " + b.stratum + reason(b.reason);
}
std::string one(const SignalAnswer& a) {
    return (a.kind == SignalAnswerKind::Dismissed ? "Signal dismissed" : "Signal taken up again") +
           reason(a.reason);
}
std::string one(const ExceptionDisposition& d) {
    return "Exception " + d.exceptionKey + " " + d.disposition + by(d.by) + reason(d.reason);
}
std::string one(const IssuedRecord& r) {
    return "Closeout record " + std::to_string(r.number) + " issued" + by(r.by) +
           (r.supersedes ? ", supersedes " + std::to_string(*r.supersedes) : "");
}
std::string one(const Setting& s) {
    if (constexpr std::string_view key = "column_key/"; s.key.starts_with(key))
        return "Column key " + s.key.substr(key.size()) + (s.value.empty() ? " removed" : " saved");
    if (s.key.starts_with("set_aside.settled/"))
        return s.value.empty() ? "Set-aside row opened again" : "Set-aside row " + s.value;
    return s.value.empty() ? "Setting " + s.key + " emptied" : "Setting " + s.key + ": " + s.value;
}
std::string one(const Attachment& a) {
    return "Attachment " + a.name;
}
std::string one(const Withdrawal& w) {
    return "Taken back" + reason(w.reason);
}

}  // namespace

std::string text(const Entry& entry) {
    return std::visit([](const auto& e) { return one(e); }, entry);
}

}  // namespace arc
