// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/pad_marks.hpp"

#include <QStringList>

#include <algorithm>

#include "core/optics/splice_loss.hpp"
#include "ui/text/format.hpp"
#include "ui/today/loss_pad.hpp"

namespace arc::ui {

const std::vector<MeasuredLoss>* PadMarks::of(const pad::Row& row) const {
    // A measured fibre is named by its side A; side B only helps where A says nothing.
    for (const auto* name : {&row.fibre.nameA, &row.fibre.nameB})
        if (const auto found = measured.find(*name); found != measured.end()) return &found->second;
    return nullptr;
}

bool PadMarks::twice(const pad::Row& row) const {
    return std::ranges::any_of(row.attempts, [this](const pad::Attempt& attempt) {
        return arcs.contains(attempt.arc) || readings.contains({attempt.arc, attempt.reading.channel});
    });
}

bool PadMarks::oneWay(const pad::Row& row) const {
    const auto* losses = of(row);
    return losses && std::ranges::none_of(*losses, [](const MeasuredLoss& m) { return m.aToB && m.bToA; });
}

QString PadMarks::sentence(const pad::Row& row) const {
    QStringList said;
    if (twice(row)) said << LossPad::tr("Edited on two laptops: choose on Logbook, F7, which one shows.");
    const auto decibels = [](Loss loss) { return text::signedNumber(arc::decibels(loss), 3); };
    if (const auto* losses = of(row))
        for (const auto& loss : *losses) {
            const auto found = optics::measuredLoss(loss);
            if (!found) continue;
            said << (found->ways == optics::Ways::Two
                         ? LossPad::tr("Measured at %1 nm: %2 and %3, mean %4 dB.")
                               .arg(loss.wavelengthNm)
                               .arg(decibels(*loss.aToB), decibels(*loss.bToA), text::meanLoss(found->db))
                         : LossPad::tr("Measured at %1 nm one way only, %2 dB: no splice loss yet.")
                               .arg(loss.wavelengthNm)
                               .arg(decibels(loss.aToB ? *loss.aToB : *loss.bToA)));
        }
    return said.join(QLatin1Char(' '));
}

PadMarks padMarks(ClosureId closure, const std::vector<MeasuredLoss>& losses,
                  const std::vector<ConcurrentEdits>& edits) {
    PadMarks marks;
    for (const auto& loss : losses)
        if (loss.closure == closure) marks.measured[loss.fibre].push_back(loss);
    for (const auto& edit : edits) {
        marks.records.insert(edit.record);
        if (edit.channel)
            marks.readings.emplace(ArcId{edit.record}, *edit.channel);
        else
            marks.arcs.insert(ArcId{edit.record});
    }
    return marks;
}

}  // namespace arc::ui
