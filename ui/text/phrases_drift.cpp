// SPDX-License-Identifier: GPL-3.0-or-later
// Signals, their evidence and advice, see core/analytics/cause_words.cpp and causes.cpp.
#include <QtGlobal>

#include "ui/text/phrase_lists.hpp"

namespace arc::ui::text {
namespace {

constexpr const char* list[] = {
    QT_TRANSLATE_NOOP("phrases",
                      "all grooves together: {#before} -> {#after} dB since arc {#arc} ({#arcs} arcs)"),
    QT_TRANSLATE_NOOP("phrases", "grows: {#per} dB per 100 arcs since about arc {#arc}"),
    QT_TRANSLATE_NOOP("phrases",
                      "groove {#groove}: {#before} -> {#after} dB (n = {#n}), the others {#others} dB"),
    QT_TRANSLATE_NOOP("phrases", "cleave angles: mean {#before} -> {#after} degrees since arc {#arc}"),
    QT_TRANSLATE_NOOP("phrases",
                      "temperature {#before} -> {#after} degrees C at arc {#arc}, where the step is"),
    QT_TRANSLATE_NOOP("phrases", "{#hours} hours idle before arc {#arc}, where the step is"),
    QT_TRANSLATE_NOOP("phrases", "step at arc {#arc}, right after {~action}"),
    QT_TRANSLATE_NOOP("phrases", "no job began near here"),
    QT_TRANSLATE_NOOP("phrases", "began with the job's first splice, arc {#arc}: {#before} -> {#after} dB"),
    QT_TRANSLATE_NOOP("phrases", "{#arcs} arcs since the electrodes were new"),
    QT_TRANSLATE_NOOP("phrases", "the splicer's counter stood at {#arcs} arcs: the electrodes are not older"),
    QT_TRANSLATE_NOOP("phrases", "{label}, with the same cleaver: {#rise} dB (n = {#n})"),
    QT_TRANSLATE_NOOP("phrases", "{label}, on the same job, is up too: {#rise} dB (n = {#n})"),
    QT_TRANSLATE_NOOP("phrases", "{label}, on the same job, is not clearly up: {#rise} dB (n = {#n})"),
    QT_TRANSLATE_NOOP("phrases", "no cleave angles were logged"),
    QT_TRANSLATE_NOOP("phrases", "it was gone after {~action}"),
    QT_TRANSLATE_NOOP("phrases", "Grooves {#one} and {#other} are dirty, likely"),
    QT_TRANSLATE_NOOP("phrases", "Groove {#groove} is dirty, likely"),
    QT_TRANSLATE_NOOP("phrases", "The V-groove or a clamp is dirty, likely"),
    QT_TRANSLATE_NOOP("phrases", "The electrodes are worn, likely"),
    QT_TRANSLATE_NOOP("phrases", "The arc calibration is off, likely"),
    QT_TRANSLATE_NOOP("phrases", "The cleaver cuts badly, likely"),
    QT_TRANSLATE_NOOP("phrases", "The fibre of this job differs, likely"),
    QT_TRANSLATE_NOOP("phrases", "Something may have changed; no cause leads clearly yet"),
    QT_TRANSLATE_NOOP("phrases", "Watch the next 25 arcs: this may have been luck."),
    QT_TRANSLATE_NOOP("phrases", "No clear lead, so the gentlest first. {~advice}"),
    QT_TRANSLATE_NOOP("phrases", "Clean the V-grooves and clamps: quick, and it undoes nothing."),
    QT_TRANSLATE_NOOP("phrases", "Replace the electrodes, stabilise them, then calibrate the arc."),
    QT_TRANSLATE_NOOP("phrases", "Calibrate the arc until power and position are both adequate."),
    QT_TRANSLATE_NOOP("phrases",
                      "Clean the cleaver's pads and anvil, then the blade; rotate the blade only if that "
                      "does not help."),
    QT_TRANSLATE_NOOP("phrases",
                      "Leave the splicer alone: make a few splices of this fibre on another splicer to be "
                      "sure."),
    QT_TRANSLATE_NOOP("phrases", "measured against estimated"),
    QT_TRANSLATE_NOOP("phrases", "the look at the charts was stopped"),
    QT_TRANSLATE_NOOP("phrases", "groove_clean"),
    QT_TRANSLATE_NOOP("phrases", "clamp_clean"),
    QT_TRANSLATE_NOOP("phrases", "lens_clean"),
    QT_TRANSLATE_NOOP("phrases", "arc_calibration"),
    QT_TRANSLATE_NOOP("phrases", "electrode_replace"),
    QT_TRANSLATE_NOOP("phrases", "stabilise"),
    QT_TRANSLATE_NOOP("phrases", "diagnostic"),
    QT_TRANSLATE_NOOP("phrases", "cleaver_clean"),
    QT_TRANSLATE_NOOP("phrases", "blade_clean"),
    QT_TRANSLATE_NOOP("phrases", "blade_rotate"),
    QT_TRANSLATE_NOOP("phrases", "blade_raise"),
    QT_TRANSLATE_NOOP("phrases", "stripper_clean"),
    QT_TRANSLATE_NOOP("phrases", "environment_change"),
    QT_TRANSLATE_NOOP("phrases", "note"),
    QT_TRANSLATE_NOOP("phrases", "common level"),
    QT_TRANSLATE_NOOP("phrases", "single groove"),
    QT_TRANSLATE_NOOP("phrases", "spread"),
    QT_TRANSLATE_NOOP("phrases", "cleave angle"),
    QT_TRANSLATE_NOOP("phrases", "resplice rate"),
    QT_TRANSLATE_NOOP("phrases", "lone splice"),
    QT_TRANSLATE_NOOP("phrases", "difference"),
};

}  // namespace

std::span<const char* const> driftPhrases() {
    return list;
}

}  // namespace arc::ui::text
