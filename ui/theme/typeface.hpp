// SPDX-License-Identifier: GPL-3.0-or-later
// The house's typeface: B612, made for instrument panels (package fonts-b612), else DejaVu Sans.
#pragma once
#include <QByteArray>
#include <QString>

namespace arc::ui {

/// Family name to ask fonts for. Needs a QGuiApplication; the fonts are looked for once. GUI thread, or a
/// program without one.
QString typeface();

/// The font file with "B612" in its own names turned into "A612". The package's monospaced faces claim the
/// family B612 as well and win over the proportional ones; under a name of its own a face is found for sure.
/// Answers an empty array when the data is not a font file of that name.
QByteArray underOwnName(QByteArray font);

}  // namespace arc::ui
