// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/words.hpp"

#include <QCoreApplication>

#include "core/care/words.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("arc::ui", text);
}

}  // namespace

QString careTitle(const care::Deck& deck, const ActionKey& action) {
    if (action == action::bladeRaise) return tr("Raise the blade to its next height");
    if (action == action::stabilise) return tr("Stabilise electrodes");
    if (const auto* card = deck.find(action)) return text::fromCard(card->title);
    QString said = text::spoken(care::spaced(action));
    if (!said.isEmpty()) said[0] = said[0].toUpper();
    return said;
}

QString verdictWords(drift::CareVerdict verdict) {
    switch (verdict) {
        case drift::CareVerdict::Recovered:
            return tr("helped");
        case drift::CareVerdict::Better:
            return tr("helped in part");
        case drift::CareVerdict::NoChange:
            return tr("no change");
        case drift::CareVerdict::Worse:
            return tr("worse since");
        case drift::CareVerdict::TooEarly:
            return tr("too early to tell");
    }
    return {};
}

const drift::CareEffect* effectOf(const DriftView* drift, CareId care) {
    if (!drift) return nullptr;
    for (const auto& report : drift->reports)
        for (const auto& stratum : report.strata)
            for (const auto& effect : stratum.effects)
                if (effect.care == care) return &effect;
    return nullptr;
}

}  // namespace arc::ui
