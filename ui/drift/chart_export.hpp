// SPDX-License-Identifier: GPL-3.0-or-later
// A column of charts as a picture: SVG keeps lines and words, PNG keeps what was on the screen.
#pragma once
#include <QString>

#include "core/result.hpp"

class QWidget;

namespace arc::ui {

/// By the name's ending: ".svg" or ".png". Overwrites.
Result<void> saveCharts(QWidget& charts, const QString& file);

}  // namespace arc::ui
