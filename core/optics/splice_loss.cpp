// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/optics/splice_loss.hpp"

#include <cmath>
#include <numbers>
#include <string>

#include "core/stats/plain_number.hpp"

namespace arc::optics {
namespace {

constexpr double decibelsPerNeper = 4.342944819032518;  // 10 / ln 10
constexpr double radiansPerDegree = std::numbers::pi / 180;

double radius(const ModeField& fibre) {
    return fibre.diameterUm / 2;
}

tl::unexpected<Problem> outOfRange(const char* what, double value, const char* next) {
    return fail(ProblemCode::BadInput, std::string("the ") + what + " is out of range",
                stats::plainNumber(value), next);
}

bool within(double value, double low, double high) {
    return value >= low && value <= high;
}

Result<void> check(const ModeField& fibre) {
    if (!within(fibre.diameterUm, 1, 100))
        return outOfRange("mode-field diameter", fibre.diameterUm, "give 1 to 100 micrometres");
    if (!within(fibre.wavelengthUm, 0.4, 2.5))
        return outOfRange("wavelength", fibre.wavelengthUm, "give 0.4 to 2.5 micrometres");
    if (!within(fibre.phaseIndex, 1, 4)) return outOfRange("phase index", fibre.phaseIndex, "give 1 to 4");
    return {};
}

/// Tilt in radians times this over 1 / radius is the exponent's root: the phase front runs out of step.
double tiltFactor(const ModeField& fibre) {
    return std::numbers::pi * fibre.phaseIndex / fibre.wavelengthUm;
}

}  // namespace

ModeField typicalAt1310() {
    return {9.2, 1.31, 1.4468};
}

ModeField typicalAt1550() {
    return {10.4, 1.55, 1.4440};
}

Result<LossParts> spliceLossParts(const ModeField& a, const ModeField& b, const Misalignment& meeting) {
    if (auto ok = check(a); !ok) return tl::unexpected(ok.error());
    if (auto ok = check(b); !ok) return tl::unexpected(ok.error());
    if (a.wavelengthUm != b.wavelengthUm)
        return fail(ProblemCode::BadInput, "both mode fields must be given at one wavelength");
    if (!within(meeting.offsetUm, 0, 1000))
        return outOfRange("offset", meeting.offsetUm, "give 0 to 1000 micrometres");
    if (!within(meeting.tiltDeg, 0, 10)) return outOfRange("tilt", meeting.tiltDeg, "give 0 to 10 degrees");
    const double wa = radius(a), wb = radius(b), squares = wa * wa + wb * wb;
    const double overlap = 2 * wa * wb / squares;
    const double tilt = tiltFactor(a) * wa * wb * meeting.tiltDeg * radiansPerDegree;
    return LossParts{-20 * std::log10(overlap),
                     decibelsPerNeper * 2 * meeting.offsetUm * meeting.offsetUm / squares,
                     decibelsPerNeper * 2 * tilt * tilt / squares};
}

Result<double> spliceLossDb(const ModeField& a, const ModeField& b, const Misalignment& meeting) {
    return spliceLossParts(a, b, meeting).map([](const LossParts& parts) { return parts.totalDb(); });
}

Result<double> gapLossDb(const ModeField& fibre, double gapUm, double mediumIndex) {
    if (auto ok = check(fibre); !ok) return tl::unexpected(ok.error());
    if (!within(gapUm, 0, 10000)) return outOfRange("gap", gapUm, "give 0 to 10000 micrometres");
    if (!within(mediumIndex, 1, 4)) return outOfRange("index of the gap", mediumIndex, "give 1 to 4");
    const double rayleigh =
        std::numbers::pi * mediumIndex * radius(fibre) * radius(fibre) / fibre.wavelengthUm;
    const double spread = gapUm / (2 * rayleigh);
    return 10 * std::log10(1 + spread * spread);
}

Result<double> offsetForLossUm(const ModeField& fibre, double db) {
    if (auto ok = check(fibre); !ok) return tl::unexpected(ok.error());
    if (!within(db, 0, 30)) return outOfRange("loss", db, "give 0 to 30 dB");
    return radius(fibre) * std::sqrt(db / decibelsPerNeper);
}

Result<double> tiltForLossDeg(const ModeField& fibre, double db) {
    if (auto ok = check(fibre); !ok) return tl::unexpected(ok.error());
    if (!within(db, 0, 30)) return outOfRange("loss", db, "give 0 to 30 dB");
    return std::sqrt(db / decibelsPerNeper) / (tiltFactor(fibre) * radius(fibre)) / radiansPerDegree;
}

double oneWayReadingDb(double trueLossDb, const ModeField& from, const ModeField& to) {
    return trueLossDb + 10 * std::log10(to.diameterUm / from.diameterUm);
}

std::optional<Measured> measuredLoss(std::optional<Loss> aToB, std::optional<Loss> bToA) {
    if (aToB && bToA) return Measured{0.5 * (decibels(*aToB) + decibels(*bToA)), Ways::Two};
    if (aToB) return Measured{decibels(*aToB), Ways::One};
    if (bToA) return Measured{decibels(*bToA), Ways::One};
    return std::nullopt;
}

std::optional<Measured> measuredLoss(const MeasuredLoss& measured) {
    return measuredLoss(measured.aToB, measured.bToA);
}

Result<LinkBudget> linkBudget(const Link& link) {
    if (!(link.lengthKm >= 0) || link.splices < 0 || link.connections < 0)
        return fail(ProblemCode::BadInput, "a link has no negative length or number of parts");
    if (!(link.fibreDbPerKm >= 0) || !(link.spliceDb >= 0) || !(link.connectionDb >= 0))
        return fail(ProblemCode::BadInput, "a part of a link cannot gain light", "",
                    "give losses of 0 or more");
    return LinkBudget{link.lengthKm * link.fibreDbPerKm, link.splices * link.spliceDb,
                      link.connections * link.connectionDb};
}

}  // namespace arc::optics
