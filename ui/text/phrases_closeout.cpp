// SPDX-License-Identifier: GPL-3.0-or-later
// Exceptions and what stands in a closeout record, see core/closeout and storage/closeout_folder.cpp.
#include <QtGlobal>

#include "ui/text/phrase_lists.hpp"

namespace arc::ui::text {
namespace {

constexpr const char* list[] = {
    QT_TRANSLATE_NOOP("phrases", "The mean of 1 splice is {#mean} dB, the limit is {#limit} dB"),
    QT_TRANSLATE_NOOP("phrases", "The mean of {#count} splices is {#mean} dB, the limit is {#limit} dB"),
    QT_TRANSLATE_NOOP("phrases", "{#count} of {#planned} planned splices is missing: {~which}"),
    QT_TRANSLATE_NOOP("phrases", "{#count} of {#planned} planned splices are missing: {~which}"),
    QT_TRANSLATE_NOOP("phrases", "nothing is spliced yet"),
    QT_TRANSLATE_NOOP("phrases", "fibre {numbers}"),
    QT_TRANSLATE_NOOP("phrases", "fibres {numbers}"),
    QT_TRANSLATE_NOOP("phrases", "1 splice is not in the splice plan"),
    QT_TRANSLATE_NOOP("phrases", "{#count} splices are not in the splice plan"),
    QT_TRANSLATE_NOOP("phrases", "1 splice was made while an arc calibration was owed ({~why})"),
    QT_TRANSLATE_NOOP("phrases", "{#count} splices were made while an arc calibration was owed ({~why})"),
    QT_TRANSLATE_NOOP("phrases", "1 splice was made on hold; {by}: {reason}"),
    QT_TRANSLATE_NOOP("phrases", "{#count} splices were made on hold; {by}: {reason}"),
    QT_TRANSLATE_NOOP("phrases", "1 fibre measured from one end only at {#nm} nm: {fibres}"),
    QT_TRANSLATE_NOOP("phrases", "{#count} fibres measured from one end only at {#nm} nm: {fibres}"),
    QT_TRANSLATE_NOOP("phrases",
                      "{#count} fibres measured from one end only at {#nm} nm: {fibres} and {#more} more"),
    QT_TRANSLATE_NOOP("phrases", "1 splice has no loss measured from both ends, though the rule asks for it"),
    QT_TRANSLATE_NOOP("phrases",
                      "{#count} splices have no loss measured from both ends, though the rule asks for it"),
    QT_TRANSLATE_NOOP("phrases", "A reading of fibre {~fibre} was corrected after the fact"),
    QT_TRANSLATE_NOOP("phrases", "A reading of fibre {~fibre} was corrected after the fact: {note}"),
    QT_TRANSLATE_NOOP("phrases", "A reading of groove {#groove} was corrected after the fact"),
    QT_TRANSLATE_NOOP("phrases", "A reading of groove {#groove} was corrected after the fact: {note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "{#count} first attempts of fibre {~fibre} are written down; the latest counts"),
    QT_TRANSLATE_NOOP("phrases",
                      "{#count} first attempts of groove {#groove} are written down; the latest counts"),
    QT_TRANSLATE_NOOP("phrases", "Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB"),
    QT_TRANSLATE_NOOP("phrases", "Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB"),
    QT_TRANSLATE_NOOP("phrases", "Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB; {note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB; kept: {note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; {note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; kept: "
                      "{note}"),
    QT_TRANSLATE_NOOP("phrases", "Groove {#groove}: {#loss} dB after 1 attempt, limit {#limit} dB"),
    QT_TRANSLATE_NOOP("phrases",
                      "Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB"),
    QT_TRANSLATE_NOOP("phrases",
                      "Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; {note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; kept: "
                      "{note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} "
                      "dB"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB; {note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB; kept: "
                      "{note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} "
                      "dB; {note}"),
    QT_TRANSLATE_NOOP("phrases",
                      "Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} "
                      "dB; kept: {note}"),
    QT_TRANSLATE_NOOP("phrases", "Over ceiling"),
    QT_TRANSLATE_NOOP("phrases", "Over limit"),
    QT_TRANSLATE_NOOP("phrases", "Mean over limit"),
    QT_TRANSLATE_NOOP("phrases", "Missing"),
    QT_TRANSLATE_NOOP("phrases", "Not in the plan"),
    QT_TRANSLATE_NOOP("phrases", "Calibration owed"),
    QT_TRANSLATE_NOOP("phrases", "Override used"),
    QT_TRANSLATE_NOOP("phrases", "One-way only"),
    QT_TRANSLATE_NOOP("phrases", "Corrected after the fact"),
    QT_TRANSLATE_NOOP("phrases", "Entered twice"),
    QT_TRANSLATE_NOOP("phrases", "No closure"),
    QT_TRANSLATE_NOOP("phrases", "accepted"),
    QT_TRANSLATE_NOOP("phrases", "rejected"),
    QT_TRANSLATE_NOOP("phrases", "Accepted"),
    QT_TRANSLATE_NOOP("phrases", "Accepted with exceptions"),
    QT_TRANSLATE_NOOP("phrases", "Open"),
    QT_TRANSLATE_NOOP("phrases", "Not accepted"),
    QT_TRANSLATE_NOOP("phrases", "No link budget: the length of cable {label} is not written down."),
    QT_TRANSLATE_NOOP("phrases", "No link budget: no cable of this job is written down."),
    QT_TRANSLATE_NOOP("phrases", "No link budget: nothing is spliced yet."),
    QT_TRANSLATE_NOOP("phrases", "No link budget: {~why}"),
    QT_TRANSLATE_NOOP("phrases", "One fibre through all cables and closures of the job in line."),
    QT_TRANSLATE_NOOP("phrases", "As spliced: mean estimated loss."),
    QT_TRANSLATE_NOOP("phrases", "Attenuation and connector loss are assumed values, not measured here."),
    QT_TRANSLATE_NOOP("phrases", "fibre"),
    QT_TRANSLATE_NOOP("phrases", "splices"),
    QT_TRANSLATE_NOOP("phrases", "connectors"),
    QT_TRANSLATE_NOOP("phrases", "pieces"),
    QT_TRANSLATE_NOOP("phrases", "Sample: single fibre"),
    QT_TRANSLATE_NOOP("phrases", "Sample: ribbon"),
    QT_TRANSLATE_NOOP("phrases", "Sample: two-way mean 0.10 dB"),
    QT_TRANSLATE_NOOP("phrases",
                      "Closeout record of job {job}, draft, made {date}: all {#files} files are as signed "
                      "by this device (key {key})."),
    QT_TRANSLATE_NOOP("phrases",
                      "Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files "
                      "are as signed by this device (key {key})."),
    QT_TRANSLATE_NOOP("phrases",
                      "Closeout record of job {job}, draft, made {date}: all {#files} files are as signed "
                      "by the known device {name} (key {key})."),
    QT_TRANSLATE_NOOP("phrases",
                      "Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files "
                      "are as signed by the known device {name} (key {key})."),
    QT_TRANSLATE_NOOP("phrases",
                      "Closeout record of job {job}, draft, made {date}: all {#files} files are as signed "
                      "by a device that is not in your list of known devices (key {key})."),
    QT_TRANSLATE_NOOP("phrases",
                      "Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files "
                      "are as signed by a device that is not in your list of known devices (key {key})."),
    QT_TRANSLATE_NOOP("phrases",
                      "The logbook verifies: {#rows} journal rows of 1 device, {#arcs} arcs, {#readings} "
                      "readings; journal head {head}."),
    QT_TRANSLATE_NOOP("phrases",
                      "The logbook verifies: {#rows} journal rows of {#devices} devices, {#arcs} arcs, "
                      "{#readings} readings; journal head {head}."),
    QT_TRANSLATE_NOOP("phrases", "reading splices"),
    QT_TRANSLATE_NOOP("phrases", "Checking the pages"),
    QT_TRANSLATE_NOOP("phrases", "Checking the journal"),
    QT_TRANSLATE_NOOP("phrases", "{#number} {~colour}"),
    QT_TRANSLATE_NOOP("phrases", "{#number} {~colour} with tracer"),
    QT_TRANSLATE_NOOP("phrases", "{#number} {~colour}, unit {#unit}"),
    QT_TRANSLATE_NOOP("phrases", "{#number} {~colour} with tracer, unit {#unit}"),
    QT_TRANSLATE_NOOP("phrases", "blue"),
    QT_TRANSLATE_NOOP("phrases", "orange"),
    QT_TRANSLATE_NOOP("phrases", "green"),
    QT_TRANSLATE_NOOP("phrases", "brown"),
    QT_TRANSLATE_NOOP("phrases", "slate"),
    QT_TRANSLATE_NOOP("phrases", "white"),
    QT_TRANSLATE_NOOP("phrases", "red"),
    QT_TRANSLATE_NOOP("phrases", "black"),
    QT_TRANSLATE_NOOP("phrases", "yellow"),
    QT_TRANSLATE_NOOP("phrases", "violet"),
    QT_TRANSLATE_NOOP("phrases", "rose"),
    QT_TRANSLATE_NOOP("phrases", "aqua"),
    QT_TRANSLATE_NOOP("phrases", "turquoise"),
    QT_TRANSLATE_NOOP("phrases", "natural"),
    QT_TRANSLATE_NOOP("phrases", "lime"),
    QT_TRANSLATE_NOOP("phrases", "grey"),
    QT_TRANSLATE_NOOP("phrases", "pink"),
    QT_TRANSLATE_NOOP("phrases", "unknown colour"),
};

}  // namespace

std::span<const char* const> closeoutPhrases() {
    return list;
}

}  // namespace arc::ui::text
