// SPDX-License-Identifier: GPL-3.0-or-later
// What taking in a file says: notes, rows set aside and why, see storage/csv_*.cpp and storage/intake*.cpp.
#include <QtGlobal>

#include "ui/text/phrase_lists.hpp"

namespace arc::ui::text {
namespace {

constexpr const char* list[] = {
    QT_TRANSLATE_NOOP("phrases",
                      "{#rows} rows step back in time (first: line {#line}); they were put where their "
                      "time belongs"),
    QT_TRANSLATE_NOOP("phrases", "{#arcs} arc has fewer readings than fibres (first: line {#line})"),
    QT_TRANSLATE_NOOP("phrases", "{#arcs} arcs have fewer readings than fibres (first: line {#line})"),
    QT_TRANSLATE_NOOP("phrases", "numbers are read with a decimal comma"),
    QT_TRANSLATE_NOOP("phrases", "the time is missing"),
    QT_TRANSLATE_NOOP("phrases",
                      "\"{text}\" is not a number; in a file with commas between columns the decimal mark "
                      "is a point"),
    QT_TRANSLATE_NOOP("phrases", "\"{text}\" is not a whole number"),
    QT_TRANSLATE_NOOP("phrases", "the loss is missing"),
    QT_TRANSLATE_NOOP("phrases", "the splicer is missing"),
    QT_TRANSLATE_NOOP("phrases", "the rows of this arc do not agree: {~why}"),
    QT_TRANSLATE_NOOP("phrases", "it is there with another {column}"),
    QT_TRANSLATE_NOOP("phrases", "this splice is there with another {column}"),
    QT_TRANSLATE_NOOP("phrases", "another row of the file has the same splice with another {column}"),
    QT_TRANSLATE_NOOP("phrases", "the logbook has this arc: {~why}"),
    QT_TRANSLATE_NOOP("phrases", "the logbook has this splice with another {column}; correct it there"),
    QT_TRANSLATE_NOOP("phrases", "Imported {#fibres} fibre splice of {#arcs} arc from {file}"),
    QT_TRANSLATE_NOOP("phrases", "Imported {#fibres} fibre splices of {#arcs} arc from {file}"),
    QT_TRANSLATE_NOOP("phrases", "Imported {#fibres} fibre splices of {#arcs} arcs from {file}"),
    QT_TRANSLATE_NOOP("phrases", "Imported {#count} measured loss from {file}"),
    QT_TRANSLATE_NOOP("phrases", "Imported {#count} measured losses from {file}"),
    QT_TRANSLATE_NOOP("phrases", "Set aside {#count} row of {file}"),
    QT_TRANSLATE_NOOP("phrases", "Set aside {#count} rows of {file}"),
    QT_TRANSLATE_NOOP("phrases", "the equipment is missing"),
    QT_TRANSLATE_NOOP("phrases", "the action \"{name}\" is not known"),
    QT_TRANSLATE_NOOP("phrases", "the fibre is missing"),
    QT_TRANSLATE_NOOP("phrases", "the wavelength is missing or no whole number of nanometres"),
    QT_TRANSLATE_NOOP("phrases", "the closure is missing"),
    QT_TRANSLATE_NOOP("phrases", "this measurement is there with other values; correct it there"),
    QT_TRANSLATE_NOOP("phrases", "the file is not UTF-8"),
    QT_TRANSLATE_NOOP("phrases", "the file is not UTF-8; it looks like {guess}"),
    QT_TRANSLATE_NOOP("phrases", "Save it as UTF-8 and import that"),
    QT_TRANSLATE_NOOP("phrases", "the line is longer than 64 KiB"),
    QT_TRANSLATE_NOOP("phrases", "a quotation mark is opened and never closed"),
    QT_TRANSLATE_NOOP("phrases", "a quotation mark stands where none may stand"),
    QT_TRANSLATE_NOOP("phrases", "the row is not UTF-8 text"),
    QT_TRANSLATE_NOOP("phrases", "read as UTF-16"),
    QT_TRANSLATE_NOOP("phrases", "columns are separated by semicolons"),
    QT_TRANSLATE_NOOP("phrases", "columns are separated by tabs"),
    QT_TRANSLATE_NOOP("phrases", "the file has no column \"{name}\"; it has: {columns}"),
    QT_TRANSLATE_NOOP("phrases", "Name the column so, or give a column key"),
    QT_TRANSLATE_NOOP("phrases", "the column \"{name}\" is there twice"),
    QT_TRANSLATE_NOOP("phrases", "Remove one of them"),
    QT_TRANSLATE_NOOP("phrases", "columns that are not read: {columns}"),
    QT_TRANSLATE_NOOP("phrases", "Reading {file}"),
    QT_TRANSLATE_NOOP("phrases", "not one of the first 1,000 rows can be read; the first: {~why}"),
    QT_TRANSLATE_NOOP("phrases", "Check that this is the right file; nothing was changed"),
    QT_TRANSLATE_NOOP("phrases", "the row has {#fields} fields, the header names {#named}"),
    QT_TRANSLATE_NOOP("phrases",
                      "the row has {#fields} fields, the header names {#named}; a decimal comma without "
                      "quotes does that"),
    QT_TRANSLATE_NOOP("phrases", "the logbook file was taken away or replaced during the import"),
    QT_TRANSLATE_NOOP("phrases", "Import the files once more; what is known is not doubled"),
    QT_TRANSLATE_NOOP("phrases", "\"{label}\" is a {~kind} in the kit, not a {~wanted}"),
    QT_TRANSLATE_NOOP("phrases",
                      "{label} splices {#count} fibres in one arc; the kit said {#old} and was brought up "
                      "to date"),
    QT_TRANSLATE_NOOP("phrases", "\"{label}\" is a {~kind}; {action} is not for it"),
    QT_TRANSLATE_NOOP("phrases",
                      "there is no tool called \"{label}\" in the kit and the action does not tell its kind"),
    QT_TRANSLATE_NOOP("phrases", "there is no closure called \"{label}\"; import the splice log first"),
    QT_TRANSLATE_NOOP("phrases", "several jobs have a closure called \"{label}\"; add a column \"job\""),
    QT_TRANSLATE_NOOP("phrases", "date and time"),
    QT_TRANSLATE_NOOP("phrases", "estimated loss"),
    QT_TRANSLATE_NOOP("phrases", "groove number"),
    QT_TRANSLATE_NOOP("phrases", "fibres in the arc"),
    QT_TRANSLATE_NOOP("phrases", "arc counter of the splicer"),
    QT_TRANSLATE_NOOP("phrases", "fibre on side A"),
    QT_TRANSLATE_NOOP("phrases", "fibre on side B"),
    QT_TRANSLATE_NOOP("phrases", "splice mode"),
    QT_TRANSLATE_NOOP("phrases", "cleave angle left, degrees"),
    QT_TRANSLATE_NOOP("phrases", "cleave angle right, degrees"),
    QT_TRANSLATE_NOOP("phrases", "who spliced"),
    QT_TRANSLATE_NOOP("phrases", "tool"),
    QT_TRANSLATE_NOOP("phrases", "what was done"),
    QT_TRANSLATE_NOOP("phrases", "detail"),
    QT_TRANSLATE_NOOP("phrases", "who did it"),
    QT_TRANSLATE_NOOP("phrases", "loss from A to B"),
    QT_TRANSLATE_NOOP("phrases", "loss from B to A"),
    QT_TRANSLATE_NOOP("phrases", "tables cannot be read here"),
    QT_TRANSLATE_NOOP("phrases", "there is no column \"{name}\" of ours"),
    QT_TRANSLATE_NOOP("phrases", "\"header\" is not a list"),
    QT_TRANSLATE_NOOP("phrases", "the file cannot be read any further"),
    QT_TRANSLATE_NOOP("phrases", "the column key has no name"),
    QT_TRANSLATE_NOOP("phrases", "Give it one, like \"Crew B\""),
    QT_TRANSLATE_NOOP("phrases", "left out"),
    QT_TRANSLATE_NOOP("phrases", "mended"),
};

}  // namespace

std::span<const char* const> intakePhrases() {
    return list;
}

}  // namespace arc::ui::text
