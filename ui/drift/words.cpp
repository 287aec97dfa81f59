// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/words.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>

#include "core/care/words.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("arc::ui", text);
}

struct CareWord {
    std::string_view action;
    const char* name;
};
constexpr std::array careWords{
    CareWord{action::grooveClean, QT_TRANSLATE_NOOP("arc::ui", "groove clean")},
    CareWord{action::clampClean, QT_TRANSLATE_NOOP("arc::ui", "clamp clean")},
    CareWord{action::lensClean, QT_TRANSLATE_NOOP("arc::ui", "lens clean")},
    CareWord{action::arcCalibration, QT_TRANSLATE_NOOP("arc::ui", "calibration")},
    CareWord{action::electrodeReplace, QT_TRANSLATE_NOOP("arc::ui", "electrodes")},
    CareWord{action::stabilise, QT_TRANSLATE_NOOP("arc::ui", "stabilised")},
    CareWord{action::diagnostic, QT_TRANSLATE_NOOP("arc::ui", "diagnostics")},
    CareWord{action::cleaverClean, QT_TRANSLATE_NOOP("arc::ui", "cleaver clean")},
    CareWord{action::bladeClean, QT_TRANSLATE_NOOP("arc::ui", "blade clean")},
    CareWord{action::bladeRotate, QT_TRANSLATE_NOOP("arc::ui", "blade turned")},
    CareWord{action::bladeRaise, QT_TRANSLATE_NOOP("arc::ui", "blade raised")},
    CareWord{action::stripperClean, QT_TRANSLATE_NOOP("arc::ui", "stripper clean")},
    CareWord{action::environmentChange, QT_TRANSLATE_NOOP("arc::ui", "moved or weather")},
    CareWord{action::note, QT_TRANSLATE_NOOP("arc::ui", "note")},
};

}  // namespace

QString nameOf(const Tool& tool) {
    const QString label = text::words(tool.label);
    return tool.nickname.empty() ? label : QStringLiteral("%1 “%2”").arg(label, text::words(tool.nickname));
}

QString wordOf(drift::Cause cause) {
    switch (cause) {
        case drift::Cause::Groove:
            return tr("groove or clamp");
        case drift::Cause::Electrode:
            return tr("electrodes");
        case drift::Cause::Calibration:
            return tr("calibration");
        case drift::Cause::Cleaver:
            return tr("cleaver");
        case drift::Cause::Fibre:
            return tr("fibre lot");
        case drift::Cause::Unknown:
            return tr("not clear");
    }
    return {};
}

QString wordOf(drift::ChartKind chart, std::optional<int> channel) {
    switch (chart) {
        case drift::ChartKind::CommonLevel:
            return tr("all grooves together");
        case drift::ChartKind::SingleGroove:
            return channel ? tr("groove %1 alone").arg(*channel) : tr("each groove alone");
        case drift::ChartKind::Spread:
            return tr("spread");
        case drift::ChartKind::CleaveAngle:
            return tr("cleave angles");
        case drift::ChartKind::ResplicesRate:
            return tr("re-splice rate");
        case drift::ChartKind::LoneSplice:
            return tr("one splice alone");
        case drift::ChartKind::Difference:
            return tr("estimate against measurement");
    }
    return {};
}

QString wordOf(drift::SignalState state) {
    switch (state) {
        case drift::SignalState::Open:
            return tr("open");
        case drift::SignalState::Answered:
            return tr("care done, watching");
        case drift::SignalState::Recovered:
            return tr("recovered");
        case drift::SignalState::Dismissed:
            return tr("dismissed");
    }
    return {};
}

Mark markOf(drift::SignalState state) {
    switch (state) {
        case drift::SignalState::Open:
            return Mark::Drifting;
        case drift::SignalState::Answered:
            return Mark::Watch;
        case drift::SignalState::Recovered:
            return Mark::Recovered;
        case drift::SignalState::Dismissed:
            return Mark::Learning;
    }
    return Mark::Learning;
}

QString wordOf(drift::CareVerdict verdict) {
    switch (verdict) {
        case drift::CareVerdict::Recovered:
            return tr("it helped: recovered");
        case drift::CareVerdict::Better:
            return tr("it helped in part");
        case drift::CareVerdict::NoChange:
            return tr("no change");
        case drift::CareVerdict::Worse:
            return tr("worse since");
        case drift::CareVerdict::TooEarly:
            return tr("too early to say");
    }
    return {};
}

Mark markOf(drift::CareVerdict verdict) {
    switch (verdict) {
        case drift::CareVerdict::Recovered:
            return Mark::Recovered;
        case drift::CareVerdict::Better:
        case drift::CareVerdict::NoChange:
            return Mark::Watch;
        case drift::CareVerdict::Worse:
            return Mark::Drifting;
        case drift::CareVerdict::TooEarly:
            return Mark::Learning;
    }
    return Mark::Learning;
}

QString arcsWord(std::uint64_t arcs) {
    return arcs == 1 ? tr("1 arc") : tr("%1 arcs").arg(text::number(static_cast<std::int64_t>(arcs)));
}

QString careName(const ActionKey& action) {
    const auto* known = std::ranges::find(careWords, std::string_view(action), &CareWord::action);
    if (known != careWords.end()) return tr(known->name);
    return text::words(care::spaced(action));
}

QString careTitle(const ActionKey& action, const care::Deck* deck) {
    const care::Card* card = deck ? deck->find(action) : nullptr;
    return card ? text::fromCard(card->title) : careName(action);
}

QString beginOf(const drift::Signal& signal) {
    return tr("arc %1 (%2–%3)")
        .arg(text::number(static_cast<std::int64_t>(signal.beganAtArc)),
             text::number(static_cast<std::int64_t>(signal.beganLow)),
             text::number(static_cast<std::int64_t>(signal.beganHigh)));
}

}  // namespace arc::ui
