// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kit/tool_words.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("arc::ui", text);
}

/// From this share of a life on it is time to think of the next one.
constexpr double nearEnd = 0.85;

/// " for 12 fibres of G.652.D": a mass splicer's calibration is good for these alone; else empty.
QString calibratedFor(const kit::CalibrationLife& life) {
    if (!life.madeFor || life.madeFor->fibreCount < 2) return {};
    return tr(" for %1 fibres of %2").arg(life.madeFor->fibreCount).arg(text::words(life.madeFor->fibreType));
}

}  // namespace

QString kindWords(const Tool& tool) {
    if (const auto* splicer = asSplicer(tool)) {
        if (splicer->kind == SplicerKind::SingleFibre) return tr("single-fibre splicer");
        return tr("mass splicer, %1 grooves").arg(splicer->grooves);
    }
    return asCleaver(tool) ? tr("cleaver") : tr("ribbon stripper");
}

QString iconOf(const Tool& tool) {
    return asSplicer(tool)   ? QStringLiteral("splicer")
           : asCleaver(tool) ? QStringLiteral("cleaver")
                             : QStringLiteral("stripper");
}

BarWords barWords(const kit::LifeBar& bar) {
    BarWords said;
    const QString used = text::number(static_cast<std::int64_t>(bar.used));
    const QString unit = text::spoken(bar.unit);
    said.words =
        bar.limit
            ? tr("%1 of about %2 %3").arg(used, text::number(static_cast<std::int64_t>(*bar.limit)), unit)
            : tr("%1 %2").arg(used, unit);
    if (bar.certainty == kit::Certainty::AtLeast) said.words = tr("at least %1").arg(said.words);
    if (!bar.limit) return said;
    said.share = static_cast<double>(bar.used) / std::max<std::uint32_t>(1, *bar.limit);
    if (*said.share >= 1) {
        said.mark = Mark::Drifting;
        said.words += tr(", due");
    } else if (*said.share >= nearEnd) {
        said.mark = Mark::Watch;
    }
    return said;
}

StateWords calibrationWords(const kit::CalibrationLife& life, Instant now) {
    switch (life.state) {
        case care::CalibrationState::NeverDone:
            return {tr("none in the book"), Mark::Learning};
        case care::CalibrationState::Valid:
            if (life.control == ArcControl::SelfCalibrating)
                return {tr("adjusts itself; calibrated%1 %2")
                            .arg(calibratedFor(life), life.at ? text::ago(*life.at, now) : QString()),
                        Mark::Steady};
            return {
                tr("valid%1, %2").arg(calibratedFor(life), life.at ? text::ago(*life.at, now) : QString()),
                Mark::Steady};
        case care::CalibrationState::Unproved:
            return {life.at ? tr("done %1, results not written down").arg(text::ago(*life.at, now))
                            : tr("done, results not written down"),
                    Mark::Watch};
        case care::CalibrationState::Owed:
            return {life.owed && !life.owed->because.empty()
                        ? tr("owed: %1").arg(text::spoken(life.owed->because))
                        : tr("owed"),
                    Mark::Drifting};
    }
    return {};
}

StateWords bladeWords(const kit::BladeLife& blade) {
    const QString place = tr("height %1 of %2, position %3 of %4")
                              .arg(blade.now.height)
                              .arg(blade.heights)
                              .arg(blade.now.position)
                              .arg(blade.positions);
    switch (blade.standing) {
        case kit::BladeStanding::InUse:
            return {place, Mark::Steady};
        case kit::BladeStanding::LastHeight:
            return {tr("%1; last height, have a blade ready").arg(place), Mark::Watch};
        case kit::BladeStanding::Exhausted:
            return {tr("%1; used up, a new blade is due").arg(place), Mark::Drifting};
    }
    return {place, Mark::Steady};
}

}  // namespace arc::ui
