// SPDX-License-Identifier: GPL-3.0-or-later
// Words of care: what a care is called, what came of it.
#pragma once
#include <QString>

#include "core/care/card.hpp"
#include "ui/shell/drift_view.hpp"

namespace arc::ui {

/// "groove_clean" → the card's title, else the key in words.
QString careTitle(const care::Deck& deck, const ActionKey& action);
QString verdictWords(drift::CareVerdict verdict);  ///< "helped", "no change"
/// What the charts say of a care; null when they have not looked at it.
const drift::CareEffect* effectOf(const DriftView* drift, CareId care);

}  // namespace arc::ui
