// SPDX-License-Identifier: GPL-3.0-or-later
// Where splice loss comes from, what an OTDR shows of it, and what a link may lose. Gaussian modes, no
// Fresnel reflection. Source: D. Marcuse, Bell Syst. Tech. J. 56(5), 1977. All losses are in dB as double:
// physics, not readings.
#pragma once
#include <optional>

#include "core/result.hpp"
#include "core/units/quantity.hpp"
#include "core/work/splice.hpp"

namespace arc::optics {

/// What the light sees of a fibre at one wavelength.
struct ModeField {
    double diameterUm = 9.2;     ///< mode-field diameter, > 0
    double wavelengthUm = 1.31;  ///< > 0
    double phaseIndex = 1.4468;  ///< not the group index, which belongs to distances; >= 1
};
/// Usual single-mode fibre (ITU-T G.652) at 1310 nm: 9.2 um; at 1550 nm: 10.4 um.
[[nodiscard]] ModeField typicalAt1310();
[[nodiscard]] ModeField typicalAt1550();

/// How two fibre ends meet. Units are in the names; all >= 0.
struct Misalignment {
    double offsetUm = 0;  ///< of the axes
    double tiltDeg = 0;   ///< of the axes; a cleave angle is not an axis tilt
};

/// What each part of a meeting loses, dB. Without a gap they add.
struct LossParts {
    double mismatchDb = 0, offsetDb = 0, tiltDb = 0;
    [[nodiscard]] double totalDb() const { return mismatchDb + offsetDb + tiltDb; }
};

/// Loss of equal or unequal mode fields meeting with offset and tilt and no gap. BadInput when a number is
/// out of range (offsets up to 1 mm, tilts up to 10 degrees) or the wavelengths differ.
[[nodiscard]] Result<LossParts> spliceLossParts(const ModeField& a, const ModeField& b,
                                                const Misalignment& meeting);
[[nodiscard]] Result<double> spliceLossDb(const ModeField& a, const ModeField& b,
                                          const Misalignment& meeting);

/// Loss of equal mode fields `gapUm` apart in a medium of index `mediumIndex` (1 for air, the fibre's for
/// gel).
[[nodiscard]] Result<double> gapLossDb(const ModeField& fibre, double gapUm, double mediumIndex);

/// The offset alone, or the tilt alone, that would lose `db` (0 to 30) between equal fibres.
[[nodiscard]] Result<double> offsetForLossUm(const ModeField& fibre, double db);
[[nodiscard]] Result<double> tiltForLossDeg(const ModeField& fibre, double db);

/// What an OTDR on the side of `from` shows of a splice that loses `trueLossDb`: the step in backscatter of
/// unlike mode fields comes on top, so the reading may be negative (IEC 60793-1-40, annex C).
[[nodiscard]] double oneWayReadingDb(double trueLossDb, const ModeField& from, const ModeField& to);

enum class Ways { One, Two };

/// A measured splice loss and from how many ends it was seen. A one-way value is labelled so wherever it
/// appears.
struct Measured {
    double db = 0;
    Ways ways = Ways::One;
};
/// Mean of both directions, or the one there is; empty when there is neither.
[[nodiscard]] std::optional<Measured> measuredLoss(std::optional<Loss> aToB, std::optional<Loss> bToA);
[[nodiscard]] std::optional<Measured> measuredLoss(const MeasuredLoss& measured);

/// What a link is made of and what each part may lose.
struct Link {
    double lengthKm = 0;
    int splices = 0;
    int connections = 0;
    double fibreDbPerKm = 0.4;
    double spliceDb = 0.15;
    double connectionDb = 0.5;
};
struct LinkBudget {
    double fibreDb = 0, splicesDb = 0, connectionsDb = 0;
    [[nodiscard]] double totalDb() const { return fibreDb + splicesDb + connectionsDb; }
};
/// BadInput when a part is negative.
[[nodiscard]] Result<LinkBudget> linkBudget(const Link& link);

}  // namespace arc::optics
