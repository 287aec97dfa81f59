// SPDX-License-Identifier: GPL-3.0-or-later
// A tool and its life in words for people.
#pragma once
#include <QString>

#include "core/kit/life.hpp"
#include "ui/theme/state_mark.hpp"

namespace arc::ui {

/// "mass splicer, 12 grooves", "cleaver", "ribbon stripper"
QString kindWords(const Tool& tool);
QString iconOf(const Tool& tool);

/// A life bar's words, share and mark.
struct BarWords {
    QString words;
    std::optional<double> share;
    Mark mark = Mark::Steady;
};
BarWords barWords(const kit::LifeBar& bar);

struct StateWords {
    QString words;
    Mark mark = Mark::Steady;
};
/// "valid, 2 h ago", "owed: electrodes replaced and not calibrated since"
StateWords calibrationWords(const kit::CalibrationLife& life, Instant now);
/// "height 2 of 3, position 7 of 16"
StateWords bladeWords(const kit::BladeLife& blade);

}  // namespace arc::ui
