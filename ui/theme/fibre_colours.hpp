// SPDX-License-Identifier: GPL-3.0-or-later
// How a fibre colour looks on screen and paper. Fibre colours are a fact of the trade, not of the theme, and
// are always shown with their word.
#pragma once
#include <QColor>

#include "core/work/fibre.hpp"

namespace arc::ui {

QColor fibreColour(FibreColour colour);

}  // namespace arc::ui
