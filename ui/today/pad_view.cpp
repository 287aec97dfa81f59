// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/pad_view.hpp"

#include <QLocale>
#include <QStringList>

#include <algorithm>

#include "core/work/notes.hpp"
#include "ui/text/format.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/widgets/fibre_swatch.hpp"

namespace arc::ui {

namespace {

struct Shown {
    std::optional<Mark> mark;
    QString words;
};

Shown shown(Verdict verdict) {
    switch (verdict) {
        case Verdict::Accept:
            return {Mark::Steady, LossPad::tr("accept")};
        case Verdict::AcceptHigh:
            return {Mark::Watch, LossPad::tr("accept, high")};
        case Verdict::Resplice:
            return {Mark::Drifting, LossPad::tr("re-splice")};
        case Verdict::KeepBestWithNote:
            return {Mark::Drifting, LossPad::tr("high: note it")};
        case Verdict::OverCeiling:
            return {Mark::Drifting, LossPad::tr("over ceiling")};
    }
    return {};
}

Shown shown(pad::Standing standing) {
    switch (standing) {
        case pad::Standing::Waiting:
            return {};
        case pad::Standing::Noted:
            return {std::nullopt, LossPad::tr("Enter saves it")};
        case pad::Standing::Accepted:
            return shown(Verdict::Accept);
        case pad::Standing::AcceptedHigh:
            return shown(Verdict::AcceptHigh);
        case pad::Standing::TooHigh:
            return shown(Verdict::Resplice);
        case pad::Standing::Kept:
            return {Mark::Recovered, LossPad::tr("kept, noted")};
        case pad::Standing::OverCeiling:
            return shown(Verdict::OverCeiling);
    }
    return {};
}

void splitAtPoint(const QString& number, PadRowView& view) {
    const QString point = QLocale().decimalPoint();
    const auto at = number.indexOf(point);
    view.whole = at < 0 ? number : number.left(at);
    view.fraction = at < 0 ? QString() : number.mid(at + point.size());
}

/// The row without what else is known of its fibre.
PadRowView plainView(const pad::Pad& pad, std::size_t r, const pad::Preview& preview) {
    const pad::Row& row = pad.rows()[r];
    PadRowView view;
    view.number = row.fibre.number;
    view.look = row.fibre.look;
    view.colour = wordsOf(row.fibre.look);
    const bool current = r == pad.current();
    view.emphasis = current ? Emphasis::Current : Emphasis::None;
    QStringList earlier;
    const bool again = current && pad.typing() == pad::Typing::NextAttempt;
    for (std::size_t i = 0; i < row.attempts.size(); ++i)
        if (again || row.noted || i + 1 < row.attempts.size())
            earlier << text::loss(row.attempts[i].reading.loss);
    if (!earlier.isEmpty())
        view.earlier =
            LossPad::tr("after %1")
                .arg(earlier.mid(std::max<qsizetype>(0, earlier.size() - 2)).join(QStringLiteral(", ")));

    if (current && preview.typed.kind != pad::TypedKind::Empty) {
        if (preview.typed.loss)
            splitAtPoint(text::loss(*preview.typed.loss), view);
        else
            splitAtPoint(text::words(pad.typed())
                             .replace(QLatin1Char('.'), QLocale().decimalPoint())
                             .replace(QLatin1Char(','), QLocale().decimalPoint()),
                         view);
        view.attempt = QString::number(preview.attempt);
        if (preview.verdict) {
            const auto judged = shown(*preview.verdict);
            view.mark = judged.mark;
            view.verdict = judged.words;
        }
        if (preview.typed.kind == pad::TypedKind::Impossible) {
            view.mark = Mark::Drifting;
            view.verdict = LossPad::tr("cannot be");
        }
        return view;
    }
    if (row.noted) {
        splitAtPoint(text::loss(*row.noted), view);
        view.attempt = QString::number(row.attempts.empty() ? 1 : row.attempts.back().reading.attempt + 1);
        view.verdict = LossPad::tr("Enter saves it");
        return view;
    }
    if (again) {
        view.attempt = row.attempts.empty() ? QString() : QString::number(preview.attempt);
        view.verdict =
            row.attempts.empty() ? LossPad::tr("type digits, Enter") : LossPad::tr("re-splice, then digits");
        return view;
    }
    if (row.attempts.empty()) return view;
    const auto& last = row.attempts.back().reading;
    splitAtPoint(text::loss(last.loss), view);
    view.attempt = QString::number(last.attempt);
    const auto stands = shown(pad.standing(r));
    view.mark = stands.mark;
    view.verdict = stands.words;
    if (last.note.starts_with(note::clockBack)) view.verdict += LossPad::tr(", time steps back");
    return view;
}

}  // namespace

PadRowView viewOf(const pad::Pad& pad, std::size_t r, const pad::Preview& preview, const PadMarks& marks) {
    PadRowView view = plainView(pad, r, preview);
    const pad::Row& row = pad.rows()[r];
    const auto add = [&view](const QString& words) {
        view.verdict = view.verdict.isEmpty() ? words : view.verdict + QStringLiteral(", ") + words;
    };
    if (marks.twice(row)) {
        if (view.mark != Mark::Drifting) view.mark = Mark::Watch;
        add(LossPad::tr("edited twice"));
    }
    if (marks.oneWay(row)) add(LossPad::tr("one way"));
    return view;
}

QString usualHint(const pad::Pad& pad, const pad::Preview& preview, const PadMarks& marks) {
    if (pad.rows().empty()) return {};
    if (preview.typed.kind == pad::TypedKind::Impossible) return text::spoken(preview.typed.sentence);
    const QString average =
        preview.average == pad::AverageNow::Over
            ? LossPad::tr("Average so far %1 dB, over the %2 agreed.")
                  .arg(text::meanLoss(preview.averageDb), text::loss(pad.setUp().rule.average))
            : QString();
    const auto standing = pad.standing(pad.current());
    const bool high = standing == pad::Standing::TooHigh || standing == pad::Standing::OverCeiling;
    QString next;
    if (pad.typing() == pad::Typing::NextAttempt && !pad.rows()[pad.current()].attempts.empty()) {
        QStringList names;
        for (auto r = pad.unitFirst(pad.current()); r < pad.unitEnd(pad.current()); ++r)
            if (const auto s = pad.standing(r);
                s == pad::Standing::TooHigh || s == pad::Standing::OverCeiling)
                names << LossPad::tr("fibre %1 at %2")
                             .arg(pad.rows()[r].fibre.number)
                             .arg(text::loss(pad.rows()[r].attempts.back().reading.loss));
        if (pad.setUp().fibresPerArc > 1)
            next =
                names.isEmpty()
                    ? LossPad::tr("Re-splice the ribbon, then type all its fibres. Esc leaves it as it is.")
                    : LossPad::tr("%1: re-splice the ribbon and type it again, or K keeps it with a note.")
                          .arg(names.join(QStringLiteral(", ")));
        else
            next = LossPad::tr("Re-splice and type the new loss, or K keeps it with a note.");
    } else if (pad.typing() == pad::Typing::Correction) {
        next = high
                   ? LossPad::tr("Digits correct this reading. R begins a re-splice.")
                   : LossPad::tr("Digits correct this reading; R re-splice, V void, T it was another fibre.");
    } else if (!pad.noted().empty()) {
        next = LossPad::tr("%n noted. Enter saves them, Esc drops them.", nullptr,
                           static_cast<int>(pad.noted().size()));
    } else {
        next = pad.setUp().fibresPerArc > 1
                   ? LossPad::tr("4 is 0.04. Enter saves each fibre; or Space between them and one Enter.")
                   : LossPad::tr("4 is 0.04, 12 is 0.12. Enter saves.");
    }
    QStringList said{marks.sentence(pad.rows()[pad.current()]), average, next};
    said.removeAll(QString());
    return said.join(QLatin1Char(' '));
}

}  // namespace arc::ui
