// SPDX-License-Identifier: GPL-3.0-or-later
// What the drift charts can be trusted with, as measured on simulated logs (tests/bench/delays, 100 logs
// each; the table of the README, which a test compares).
#pragma once
#include <QWidget>

#include <array>

namespace arc::ui {

struct MeasuredFault {
    const char* key;      ///< its row in the README
    const char* english;  ///< for tr() in the context "Help"
    double meanArcs;      ///< from the fault to the signal
    int causePercent;     ///< of signals whose cause is named right 30 arcs later
};

inline constexpr std::array measuredFaults{
    MeasuredFault{"groove 0.02", QT_TRANSLATE_NOOP("Help", "Dirt in one groove of 12, +0.02 dB, growing in"),
                  133.9, 79},
    MeasuredFault{"groove 0.04", QT_TRANSLATE_NOOP("Help", "The same, +0.04 dB"), 69.1, 95},
    MeasuredFault{"groove 0.08", QT_TRANSLATE_NOOP("Help", "The same, +0.08 dB"), 45.5, 99},
    MeasuredFault{"calibration 0.01", QT_TRANSLATE_NOOP("Help", "Arc calibration off by 0.01 dB, 12 fibres"),
                  9.9, 99},
    MeasuredFault{"single, calibration 0.01", QT_TRANSLATE_NOOP("Help", "The same, single fibre"), 20.2, 91},
    MeasuredFault{"cleaver", QT_TRANSLATE_NOOP("Help", "A cleaver that cuts worse and worse, 12 fibres"),
                  23.5, 98},
    MeasuredFault{"fibre 0.015", QT_TRANSLATE_NOOP("Help", "A lot of fibre that splices 0.015 dB worse"), 5.4,
                  98},
    MeasuredFault{"electrode", QT_TRANSLATE_NOOP("Help", "Electrodes past their best, 12 fibres"), 233.2, 77},
    MeasuredFault{"single, electrode", QT_TRANSLATE_NOOP("Help", "The same, single fibre"), 331.8, 91},
};

/// The table, with its headings.
QWidget* measuredTable(QWidget* parent);

}  // namespace arc::ui
