// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/care/words.hpp"
#include "ui/print/figures.hpp"
#include "ui/print/pages.hpp"
#include "ui/print/table.hpp"
#include "ui/print/words.hpp"

namespace arc::print {
namespace {

using namespace closeout;

const Type body{8.5, Weight::Normal, QColor(0x17, 0x19, 0x1C), Face::Text};

/// Keys of care actions come as data, so their words do too.
QString actionWords(const Tongue& in, const ActionKey& action) {
    QString text = in.spoken(care::spaced(action));
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

QString kindOf(const Tongue& in, const Tool& tool) {
    if (asCleaver(tool) != nullptr) return in.tr("Cleaver");
    if (asStripper(tool) != nullptr) return in.tr("Stripper");
    const Splicer* splicer = asSplicer(tool);
    return splicer != nullptr && splicer->kind == SplicerKind::MassFusion ? in.tr("Mass splicer")
                                                                          : in.tr("Single-fibre splicer");
}

void figureTitle(Sheet& sheet, const QString& title) {
    sheet.text(sheet.left(), sheet.y + 3.5, sheet.width(), title,
               {9.5, Weight::Bold, ink::text(), Face::Text});
    sheet.y += 6.5;
}

void careTable(Sheet& sheet, const Equipment& item) {
    if (item.before.empty() && item.during.empty()) {
        sheet.text(sheet.left(), sheet.y + 3.4, sheet.width(), sheet.tr("No care of this tool is recorded."),
                   {8, Weight::Normal, ink::soft(), Face::Text});
        sheet.y += 6;
        return;
    }
    Table table(sheet, "",
                {{sheet.tr("Care"), 33, Across::Left, Fit::Wrap},
                 {sheet.tr("When"), 30},
                 {"", 24},
                 {sheet.tr("By"), 17},
                 {sheet.tr("Result"), sheet.width() - 104, Across::Left, Fit::Wrap}},
                7.5);
    const QString before = sheet.tr("before the job"), during = sheet.tr("during the job");
    const auto row = [&](const CareLine& line, const QString& phase) {
        table.row({{actionWords(sheet.tongue(), line.action)},
                   {when(line.at)},
                   {phase, ink::soft()},
                   {words(line.by)},
                   {sheet.tongue().spoken(line.detail)}});
    };
    for (const CareLine& line : item.before) row(line, before);
    // A long job sees the same care day by day: the last of them tell the state.
    constexpr std::size_t most = 24;
    const std::size_t skipped = item.during.size() > most ? item.during.size() - most : 0;
    for (std::size_t i = skipped; i < item.during.size(); ++i) row(item.during[i], during);
    if (skipped > 0)
        table.row({{sheet.tr("%1 earlier ones").arg(count(skipped)), ink::soft()},
                   {},
                   {during, ink::soft()},
                   {},
                   {sheet.tr("listed in record.json and record.xlsx"), ink::soft()}});
}

QString flagWords(const Tongue& in, const Splice& splice) {
    QString text;
    for (const ExceptionKind kind : splice.flags) {
        if (kind == ExceptionKind::OverCeiling || kind == ExceptionKind::OverLimit) continue;
        if (!text.isEmpty()) text += "; ";
        text += in.spoken(title(kind)).toLower();
    }
    if (!splice.final().note.empty()) text += (text.isEmpty() ? "" : "; ") + words(splice.final().note);
    return text;
}

QColor colourOf(SpliceVerdict verdict) {
    return verdict == SpliceVerdict::Accepted ? ink::text() : ink::drifting();
}

void fibreCells(const Tongue& in, std::vector<Cell>& row, const FibreEnd& end) {
    row.push_back({end.number ? QString::number(*end.number) : words(end.name)});
    if (!end.place) {
        row.push_back({});
        return;
    }
    const QString colour = in.colour(end.place->fibreLook.colour);
    row.push_back({end.place->fibreLook.tracerMarks > 0 ? in.tr("%1 + tracer").arg(colour) : colour,
                   {},
                   end.place->fibreLook});
}

/// The cells before the remark.
void spliceCells(const Tongue& in, std::vector<Cell>& row, const Record& record, const Splice& splice,
                 int places) {
    const Attempt& made = splice.final();
    const bool isBad = splice.verdict != SpliceVerdict::Accepted;
    fibreCells(in, row, splice.a);
    fibreCells(in, row, splice.b);
    row.push_back(
        {loss(made.loss, places), colourOf(splice.verdict), {}, isBad ? Weight::Bold : Weight::Normal});
    row.push_back({QString::number(splice.attempts.size())});
    row.push_back({words(record.equipment[made.splicer].tool.label)});
    row.push_back({when(made.at), ink::soft()});
}

void measuredTable(Sheet& sheet, const ClosureSection& section) {
    const bool hasAny = !section.loose.empty() || std::ranges::any_of(section.splices, [](const Splice& s) {
        return !s.measured.empty();
    });
    if (!hasAny) return;
    Table table(sheet, sheet.tr("%1: measured losses, dB").arg(words(section.label)),
                {{sheet.tr("Fibre"), 13, Across::Right},
                 {sheet.tr("Colour"), 22},
                 {"nm", 14, Across::Right},
                 {sheet.tr("A to B"), 16, Across::Right},
                 {sheet.tr("B to A"), 16, Across::Right},
                 {sheet.tr("Two-way mean"), 22, Across::Right},
                 {"", 20},
                 {sheet.tr("When"), 30},
                 {sheet.tr("Instrument"), sheet.width() - 153}});
    const auto row = [&](const FibreEnd& fibre, const Measurement& m) {
        const auto mean = m.twoWayDb();
        std::vector<Cell> cells;
        fibreCells(sheet.tongue(), cells, fibre);
        cells.push_back({QString::number(m.wavelengthNm)});
        cells.push_back({m.aToB ? loss(*m.aToB, 3) : QString("–")});
        cells.push_back({m.bToA ? loss(*m.bToA, 3) : QString("–")});
        cells.push_back({loss(mean, 4)});
        cells.push_back({mean ? QString() : sheet.tr("one-way only"), ink::drifting()});
        cells.push_back({when(m.at)});
        cells.push_back({words(m.instrument)});
        table.row(cells);
    };
    for (const Splice& splice : section.splices)
        for (const Measurement& m : splice.measured) row(splice.a.name.empty() ? splice.b : splice.a, m);
    for (const auto& [name, m] : section.loose) row(FibreEnd{name, {}, {}}, m);
    table.end();
}

}  // namespace

void summaryPart(Sheet& sheet, const Record& record) {
    sheet.section(sheet.tr("Summary"), 60);
    const int places = lossPlaces(record);
    Table table(sheet, "",
                {{sheet.tr("Closure"), 22},
                 {sheet.tr("Cables"), 45},
                 {sheet.tr("Planned"), 15, Across::Right},
                 {sheet.tr("Spliced"), 15, Across::Right},
                 {sheet.tr("Re-spliced"), 17, Across::Right},
                 {sheet.tr("Mean, dB"), 16, Across::Right},
                 {sheet.tr("Worst, dB"), 16, Across::Right},
                 {"", sheet.width() - 146}});
    for (const ClosureSection& section : record.closures) {
        const auto over = std::ranges::count_if(
            section.splices, [](const Splice& s) { return s.verdict != SpliceVerdict::Accepted; });
        const int missing = section.completeness ? static_cast<int>(section.completeness->missing.size()) : 0;
        QString note;
        if (over > 0) note = sheet.tr("%1 over").arg(count(static_cast<std::uint64_t>(over)));
        if (missing > 0)
            note += (note.isEmpty() ? "" : ", ") +
                    sheet.tr("%1 missing").arg(count(static_cast<std::uint64_t>(missing)));
        QString cables = words(section.cableA);
        if (!section.cableB.empty() && section.cableB != section.cableA)
            cables = sheet.tr("%1 to %2").arg(cables, words(section.cableB));
        const Averages& a = section.averages;
        table.row({{words(section.label), {}, {}, Weight::Bold},
                   {cables},
                   {section.completeness ? count(static_cast<std::uint64_t>(section.completeness->planned))
                                         : QString("–")},
                   {count(a.splices)},
                   {count(a.splices - a.firstTime)},
                   {loss(a.meanDb, 3)},
                   {a.worst ? loss(*a.worst, places) : QString("–")},
                   {note, ink::drifting()}});
    }
    const Averages& a = record.averages;
    table.row({{sheet.tr("All"), {}, {}, Weight::Bold},
               {},
               {record.plan ? count(static_cast<std::uint64_t>(record.plan->planned)) : QString("–"),
                {},
                {},
                Weight::Bold},
               {count(a.splices), {}, {}, Weight::Bold},
               {count(a.splices - a.firstTime), {}, {}, Weight::Bold},
               {loss(a.meanDb, 3), {}, {}, Weight::Bold},
               {a.worst ? loss(*a.worst, places) : QString("–"), {}, {}, Weight::Bold},
               {}});
    table.end();
    if (a.splices == 0) return;
    sheet.need(70);
    figureTitle(sheet, sheet.tr("Losses: mean %1, median %2, standard deviation %3 dB")
                           .arg(loss(a.meanDb, 3), loss(a.medianDb, 3), loss(a.sdDb, 3)));
    drawHistogram(sheet, QRectF(sheet.left(), sheet.y, sheet.width(), 56), record);
    sheet.y += 62;
    sheet.need(70);
    figureTitle(sheet, sheet.tr("Losses in the order they were made"));
    drawRunChart(sheet, QRectF(sheet.left(), sheet.y, sheet.width(), 56), record);
    sheet.y += 58;
}

void exceptionsPart(Sheet& sheet, const Record& record) {
    sheet.section(sheet.tr("Exceptions"));
    if (record.exceptions.empty()) {
        sheet.text(sheet.left(), sheet.y + 3.4, sheet.width(), sheet.tr("None."), body);
        sheet.y += 6;
        return;
    }
    Table table(sheet, "",
                {{sheet.tr("Kind"), 29, Across::Left, Fit::Wrap},
                 {sheet.tr("Where"), 24},
                 {sheet.tr("What"), sheet.width() - 53 - 60, Across::Left, Fit::Wrap},
                 {sheet.tr("Disposition"), 60, Across::Left, Fit::Wrap}});
    for (const Exception& exception : record.exceptions) {
        Cell disposition{sheet.tr("open"), ink::drifting(), {}, Weight::Bold};
        if (exception.disposition) {
            const ExceptionDisposition& d = *exception.disposition;
            const bool isRejected = d.disposition == dispositionRejected;
            disposition = {sheet.tongue().spoken(d.disposition) + ": " + words(d.reason) + " (" +
                               words(d.by) + ", " + when(d.at) + ")",
                           isRejected ? ink::drifting() : ink::text()};
        }
        table.row({{sheet.tongue().spoken(title(exception.kind)), {}, {}, Weight::Bold},
                   {sheet.tongue().spoken(exception.where)},
                   {sheet.tongue().spoken(exception.what)},
                   disposition});
    }
    table.end();
}

void equipmentPart(Sheet& sheet, const Record& record) {
    sheet.section(sheet.tr("Tools and their care"), 40);
    for (const Equipment& item : record.equipment) {
        sheet.need(24);
        QString name = words(item.tool.label);
        if (!item.tool.nickname.empty()) name += " \"" + words(item.tool.nickname) + "\"";
        const Type bold{9.5, Weight::Bold, ink::text(), Face::Text};
        sheet.text(sheet.left(), sheet.y + 3.6, sheet.width(), name, bold);
        sheet.text(sheet.left() + sheet.textWidth(name, bold) + 3, sheet.y + 3.6, sheet.width() - 40,
                   sheet.tr("%1, %2 attempts here, %3 to %4")
                       .arg(kindOf(sheet.tongue(), item.tool), count(item.splicesHere), when(item.firstUse),
                            when(item.lastUse)),
                   {8, Weight::Normal, ink::soft(), Face::Text});
        sheet.y += 5.4;
        if (asSplicer(item.tool) != nullptr) {
            const auto since = [&sheet](const std::optional<ArcsSince>& arcs) {
                if (!arcs) return sheet.tr("not recorded");
                const QString number = count(arcs->arcs);
                return arcs->certainty == kit::Certainty::AtLeast ? sheet.tr("at least %1").arg(number)
                                                                  : number;
            };
            sheet.y +=
                sheet.paragraph(
                    sheet.left(), sheet.y, sheet.width(),
                    sheet
                        .tr("Arcs at last use since electrodes: %1, since V-groove clean: %2, since arc "
                            "calibration: %3")
                        .arg(since(item.sinceElectrodes), since(item.sinceGrooveClean),
                             since(item.sinceCalibration)),
                    body) +
                1;
        }
        for (const care::OwedStretch& stretch : item.owed) {
            sheet.y += sheet.paragraph(
                           sheet.left(), sheet.y, sheet.width(),
                           sheet.tr("Calibration owed from %1 to %2: %3")
                               .arg(when(stretch.from), stretch.to ? when(*stretch.to) : sheet.tr("the end"),
                                    sheet.tongue().spoken(stretch.because)),
                           {8.5, Weight::Bold, ink::drifting(), Face::Text}) +
                       1;
        }
        careTable(sheet, item);
        sheet.y += 4;
    }
}

namespace {

void budgetTable(Sheet& sheet, const SpanSection& span) {
    Table table(sheet, "",
                {{sheet.tr("Wavelength, nm"), 30},
                 {"", 34},
                 {sheet.tr("Fibre, dB"), 24, Across::Right},
                 {sheet.tr("Splices, dB"), 24, Across::Right},
                 {sheet.tr("Connectors, dB"), 26, Across::Right},
                 {sheet.tr("Total, dB"), sheet.width() - 138, Across::Right}});
    const auto row = [&](int wavelength, const QString& what, const std::vector<BudgetLine>& lines,
                         double total) {
        std::vector<Cell> cells{{wavelength > 0 ? QString::number(wavelength) : QString()}, {what}};
        for (const BudgetLine& line : lines) cells.push_back({loss(line.totalDb, 2)});
        cells.push_back({loss(total, 2), {}, {}, Weight::Bold});
        table.row(cells);
    };
    for (const LinkBudget& budget : span.budgets) {
        row(budget.wavelengthNm, sheet.tr("allowed"), budget.allowed, budget.allowedDb);
        row(0, sheet.tr("as spliced"), budget.asSpliced, budget.asSplicedDb);
    }
}

/// What the budget is made of, and how much of it was measured.
QString budgetParts(const Sheet& sheet, const SpanSection& span) {
    QStringList said;
    const std::vector<BudgetLine>& lines = span.budgets.front().allowed;
    if (lines.size() == 3)
        said << sheet.tr("%1 km of fibre, splices: %2, connectors: %3.")
                    .arg(lines[0].quantity, 0, 'f', 2)
                    .arg(lines[1].quantity, 0, 'f', 0)
                    .arg(lines[2].quantity, 0, 'f', 0);
    for (const LinkBudget& budget : span.budgets)
        said << sheet.tr("At %1 nm, splices measured in both directions: %2, estimated: %3.")
                    .arg(budget.wavelengthNm)
                    .arg(budget.measured)
                    .arg(budget.estimated);
    return said.join(' ');
}

/// Which span, and how its average stands to the one agreed.
QString spanHead(const Sheet& sheet, const Record& record, const SpanSection& span) {
    const QString name =
        span.kind == SpanKind::Named
            ? sheet.tr("Span %1, %2 to %3").arg(words(span.label), words(span.from), words(span.to))
            : sheet.tongue().spoken(noSpan);
    QString line = sheet.tr("%1. Splices: %2.").arg(name).arg(span.splices);
    if (span.meanDb)
        line += ' ' + sheet.tr("Average %1 dB, agreed %2 dB.")
                          .arg(loss(*span.meanDb, 3), loss(record.job.rule.average, 2));
    return line;
}

}  // namespace

void budgetPart(Sheet& sheet, const Record& record) {
    sheet.section(sheet.tr("Link budget"), 34);
    for (const SpanSection& span : record.spans) {
        if (span.kind != SpanKind::WholeJob)
            sheet.y += sheet.paragraph(sheet.left(), sheet.y, sheet.width(), spanHead(sheet, record, span),
                                       {8.5, Weight::Bold, ink::text(), Face::Text}) +
                       1;
        if (!span.budgets.empty()) {
            budgetTable(sheet, span);
            sheet.y += 2;
            sheet.y += sheet.paragraph(sheet.left(), sheet.y, sheet.width(), budgetParts(sheet, span), body);
        }
        sheet.y += sheet.paragraph(sheet.left(), sheet.y, sheet.width(),
                                   sheet.tongue().spoken(span.budgetNote), body) +
                   2;
    }
}

void attachmentsPart(Sheet& sheet, const Record& record) {
    if (record.attachments.empty()) return;
    constexpr std::size_t shownOfHash = 16;
    sheet.section(sheet.tr("Photos and notes"), 30);
    Table table(sheet, "",
                {{sheet.tr("File beside this paper"), 62},
                 {sheet.tr("Belongs to"), sheet.width() - 62 - 20 - 32, Across::Left, Fit::Wrap},
                 {sheet.tr("SHA-256 begins"), 32},
                 {sheet.tr("Bytes"), 20, Across::Right}},
                7.5);
    for (const AttachedFile& file : record.attachments)
        table.row({{words(file.file)},
                   {sheet.tongue().spoken(file.where)},
                   {words(file.sha256.substr(0, shownOfHash))},
                   {count(file.bytes)}});
    table.end();
}

bool closureTables(Sheet& sheet, const Record& record, Progress& progress) {
    const int places = lossPlaces(record);
    const std::size_t total = spliceCount(record);
    std::size_t done = 0;
    bool isFirst = true;
    for (const ClosureSection& section : record.closures) {
        if (section.splices.empty() && section.loose.empty()) continue;
        if (isFirst) {
            sheet.newPage();
            sheet.section(sheet.tr("Every splice"), 50);
            isFirst = false;
        }
        QString caption = words(section.label);
        if (!section.cableA.empty())
            caption += ": A " + words(section.cableA) +
                       (section.cableB.empty() ? QString() : ", B " + words(section.cableB));
        sheet.need(30);
        sheet.begins(words(section.label), Rank::Closure);
        Table table(sheet, caption,
                    {{sheet.tr("Fibre A"), 14, Across::Right},
                     {sheet.tr("Colour"), 24},
                     {sheet.tr("Fibre B"), 14, Across::Right},
                     {sheet.tr("Colour"), 24},
                     {sheet.tr("Loss, dB"), 15, Across::Right},
                     {sheet.tr("Tries"), 10, Across::Right},
                     {sheet.tr("Splicer"), 16},
                     {sheet.tr("When"), 30},
                     {sheet.tr("Remark"), sheet.width() - 147, Across::Left, Fit::Wrap}},
                    7.8);
        int unit = section.splices.empty() || !section.splices.front().a.place
                       ? 0
                       : section.splices.front().a.place->unit;
        for (const Splice& splice : section.splices) {
            if (progress.stopRequested()) return false;
            if (splice.a.place && splice.a.place->unit != unit) {
                unit = splice.a.place->unit;
                table.gap();
            }
            QString remark = flagWords(sheet.tongue(), splice);
            const bool isBad = splice.verdict != SpliceVerdict::Accepted;
            if (isBad)
                remark = sheet.tongue().spoken(title(splice.verdict)).toLower() +
                         (remark.isEmpty() ? QString() : "; " + remark);
            // For the count only the remark matters: it alone can make a row higher.
            std::vector<Cell> row(sheet.pass() == Pass::Counting ? 8 : 0);
            if (row.empty()) spliceCells(sheet.tongue(), row, record, splice, places);
            row.push_back({remark, colourOf(splice.verdict)});
            table.row(row);
            if (++done % 256 == 0) progress.report(done, total, "writing pages");
        }
        table.end();
        measuredTable(sheet, section);
        sheet.y += 3;
    }
    return true;
}

}  // namespace arc::print
