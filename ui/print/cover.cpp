// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/closeout/cautions.hpp"
#include "ui/print/figures.hpp"
#include "ui/print/pages.hpp"
#include "ui/print/words.hpp"

namespace arc::print {
namespace {

using namespace closeout;

QString verdictSentence(const Tongue& in, const Record& record) {
    const std::size_t open = openExceptions(record), all = record.exceptions.size();
    switch (record.verdict) {
        case RecordVerdict::Accepted:
            return in.tr("Every splice is within the rule; nothing is out of order.");
        case RecordVerdict::AcceptedWithExceptions:
            return all == 1 ? in.tr("1 exception, decided on with name and reason.")
                            : in.tr("%1 exceptions, all decided on with name and reason.").arg(count(all));
        case RecordVerdict::Open:
            if (spliceCount(record) == 0) return in.tr("Nothing is spliced yet.");
            return open == 1 ? in.tr("1 exception waits for a decision.")
                             : in.tr("%1 exceptions wait for a decision.").arg(count(open));
        case RecordVerdict::NotAccepted:
            return in.tr("A splice is above the ceiling, or an exception was rejected.");
    }
    return {};
}

QString issueLine(const Tongue& in, const Record& record) {
    if (record.state == RecordState::Draft) return in.tr("Draft, not issued");
    const QString by = words(record.issuedBy);
    return record.supersedes ? in.tr("Record no. %1, issued by %2, supersedes no. %3")
                                   .arg(*record.number)
                                   .arg(by)
                                   .arg(*record.supersedes)
                             : in.tr("Record no. %1, issued by %2").arg(*record.number).arg(by);
}

QString grouped(const std::string& hex) {
    QString text;
    for (std::size_t i = 0; i < hex.size(); ++i) {
        if (i > 0 && i % 8 == 0) text += i % 32 == 0 ? QChar::LineSeparator : QChar(' ');
        text += QChar::fromLatin1(hex[i]);
    }
    return text;
}

/// Two columns of "name … value".
class Facts {
  public:
    Facts(Sheet& sheet, double top) : m_sheet(sheet), m_top(top) {}
    void add(const QString& name, const QString& value, const QString& more = {}) {
        constexpr double rowHeight = 13.5;
        const double half = m_sheet.width() / 2;
        const double x = m_sheet.left() + (m_count % 2) * half;
        const double y = m_top + (m_count / 2) * rowHeight;
        m_sheet.line(x, y, x + half - 8, y, ink::hairline(), 0.2);
        m_sheet.text(x, y + 4.2, half - 8, name, {7.5, Weight::Normal, ink::soft(), Face::Text});
        const Type big{12, Weight::Bold, ink::text(), Face::Text};
        m_sheet.text(x, y + 10, half - 8, value, big);
        const double after = m_sheet.textWidth(value, big) + 2.5;
        m_sheet.text(x + after, y + 10, half - 8 - after, more, {8, Weight::Normal, ink::soft(), Face::Text});
        ++m_count;
    }
    [[nodiscard]] double bottom() const { return m_top + (m_count + 1) / 2 * 13.5; }

  private:
    Sheet& m_sheet;
    double m_top;
    int m_count = 0;
};

/// The job's label as large as it fits; answers where what follows may begin.
double jobLabel(Sheet& sheet, const QString& label) {
    const Type large{34, Weight::Bold, ink::text(), Face::Text};
    if (sheet.textWidth(label, large) <= sheet.width()) {
        sheet.text(sheet.left(), 64, sheet.width(), label, large);
        return 70;
    }
    constexpr double top = 53;
    const QString shown = label.size() > 120 ? label.left(120) + "…" : label;
    return top + 3 +
           sheet.paragraph(sheet.left(), top, sheet.width(), shown,
                           {20, Weight::Bold, ink::text(), Face::Text});
}

/// What begins where, in three columns; closures only while there is room for all of them.
void drawContents(Sheet& sheet, double top, const std::vector<Beginning>& contents) {
    constexpr int columns = 3;
    constexpr double lineHeight = 4.6, gap = 8;
    const auto rows = static_cast<std::size_t>(std::max(0.0, (sheet.bottom() - 32 - top - 6) / lineHeight));
    std::vector<Beginning> shown = contents;
    if (shown.size() > rows * columns)
        std::erase_if(shown, [](const Beginning& b) { return b.rank == Rank::Closure; });
    if (shown.empty() || shown.size() > rows * columns) return;
    const std::size_t perColumn = std::max<std::size_t>((shown.size() + columns - 1) / columns, 3);
    const double width = (sheet.width() - (columns - 1) * gap) / columns;
    sheet.text(sheet.left(), top + 3, sheet.width(), sheet.tr("In this record"),
               {7.5, Weight::Normal, ink::soft(), Face::Text});
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const double x = sheet.left() + static_cast<double>(i / perColumn) * (width + gap);
        const double base = top + 8 + static_cast<double>(i % perColumn) * lineHeight;
        const bool isClosure = shown[i].rank == Rank::Closure;
        const Type type{8.5, Weight::Normal, isClosure ? ink::soft() : ink::text(), Face::Text};
        sheet.text(x + (isClosure ? 3 : 0), base, width - 12, shown[i].title, type);
        sheet.text(x + width - 12, base, 12, QString::number(shown[i].page), type, Across::Right);
    }
}

}  // namespace

QString nameOf(const Tongue& in, const Record& record) {
    const QString job = words(record.job.label);
    return record.number ? in.tr("%1 no. %2").arg(job).arg(*record.number) : in.tr("%1, draft").arg(job);
}

void coverPage(Sheet& sheet, const Record& record, const std::vector<Beginning>& contents) {
    const double x = sheet.left(), w = sheet.width();
    drawComb(sheet, QRectF(x, 20, 66, 11));
    sheet.text(x, 49, w, sheet.tr("Closeout record"), {11, Weight::Bold, ink::accent(), Face::Text});
    double y = jobLabel(sheet, words(record.job.label));
    y += sheet.paragraph(x, y, w, words(record.job.title).left(160),
                         {12, Weight::Normal, ink::soft(), Face::Text});
    y += 4;
    sheet.text(x, y + 4, w, issueLine(sheet.tongue(), record), {10, Weight::Bold, ink::text(), Face::Text});
    sheet.text(x, y + 9.5, w, sheet.tr("Made %1").arg(words(toIso(record.madeAt))),
               {8.5, Weight::Normal, ink::soft(), Face::Text});
    y += 19;

    sheet.box(QRectF(x, y, w, 23), ink::wash());
    sheet.box(QRectF(x, y, 1.6, 23), colourOf(record.verdict));
    drawVerdictMark(sheet, QRectF(x + 8, y + 6.5, 10, 10), record.verdict);
    sheet.text(x + 25, y + 10, w - 30, sheet.tongue().spoken(title(record.verdict)),
               {17, Weight::Bold, colourOf(record.verdict), Face::Text});
    sheet.text(x + 25, y + 17, w - 30, verdictSentence(sheet.tongue(), record),
               {9, Weight::Normal, ink::text(), Face::Text});
    y += 33;

    const AcceptanceRule& rule = record.job.rule;
    const Averages& a = record.averages;
    const int places = lossPlaces(record);
    Facts facts(sheet, y);
    facts.add(sheet.tr("Splices"), count(a.splices),
              record.plan ? sheet.tr("%1 of %2 planned are there")
                                .arg(count(static_cast<std::uint64_t>(record.plan->spliced)),
                                     count(static_cast<std::uint64_t>(record.plan->planned)))
                          : sheet.tr("no splice plan, completeness not known"));
    facts.add(
        sheet.tr("Right the first time"), count(a.firstTime),
        a.splices > 0
            ? sheet.tr("%1 %, %2 attempts in all")
                  .arg(100.0 * static_cast<double>(a.firstTime) / static_cast<double>(a.splices), 0, 'f', 1)
                  .arg(count(a.attempts))
            : QString());
    facts.add(sheet.tr("Mean estimated loss"), loss(a.meanDb, 3) + (a.meanDb ? " dB" : ""),
              sheet.tr("limit %1 dB").arg(loss(rule.average, 2)));
    facts.add(sheet.tr("Worst estimated loss"), a.worst ? loss(*a.worst, places) + " dB" : QString("–"),
              sheet.tr("limit %1, ceiling %2 dB").arg(loss(rule.perSplice, 2), loss(rule.ceiling, 2)));
    facts.add(sheet.tr("First splice"), when(record.firstSplice));
    facts.add(sheet.tr("Last splice"), when(record.lastSplice));
    facts.add(sheet.tr("Acceptance rule"), words(rule.name),
              rule.origin == RuleOrigin::Sample ? sheet.tr("a sample, not a contract's")
                                                : sheet.tr("of the contract"));
    facts.add(
        sheet.tr("Judged by"),
        rule.directions == Directions::TwoWay ? sheet.tr("two-way mean") : sheet.tr("splicer's estimate"),
        record.voided > 0 ? sheet.tr("%1 voided readings left out").arg(count(record.voided)) : QString());
    y = facts.bottom() + 4;
    drawContents(sheet, y, contents);

    const double foot = sheet.bottom() - 24;
    y = std::max(y, foot);
    sheet.text(x, y, w, sheet.tr("Journal head"), {7.5, Weight::Normal, ink::soft(), Face::Text});
    sheet.paragraph(x, y + 1.8, w * 0.5, grouped(record.journalHead),
                    {8, Weight::Normal, ink::text(), Face::Mono});
    sheet.paragraph(
        x + w * 0.54, y - 2.4, w * 0.46,
        sheet.tr(
            "This paper belongs to a folder with the same record as data. manifest.json holds the SHA-256 of "
            "each file, manifest.sig the Ed25519 signature of the device that made it. \"arcw verify\" "
            "checks "
            "both; so do sha256sum and openssl."),
        {7.5, Weight::Normal, ink::soft(), Face::Text});
}

void signaturePart(Sheet& sheet, const Record& record) {
    sheet.section(sheet.tr("Cautions"), 30);
    for (const std::string_view caution : cautions) {
        const double x = sheet.left();
        sheet.text(x, sheet.y + 3.4, 4, "–", {9, Weight::Bold, ink::drifting(), Face::Text});
        sheet.y += sheet.paragraph(x + 4.5, sheet.y, sheet.width() - 5, sheet.tongue().spoken(caution),
                                   {8.5, Weight::Normal, ink::text(), Face::Text}) +
                   1.2;
    }
    sheet.section(sheet.tr("Signatures"), 40);
    sheet.y +=
        sheet.paragraph(sheet.left(), sheet.y, sheet.width(),
                        sheet
                            .tr("Signing says: the splices of %1 were made as listed, and the exceptions and "
                                "their dispositions were read.")
                            .arg(nameOf(sheet.tongue(), record)),
                        {8.5, Weight::Normal, ink::text(), Face::Text});
    const double gap = 8, w = (sheet.width() - 2 * gap) / 3;
    const double top = sheet.y + 17;
    const QString roles[] = {sheet.tr("Crew: name and signature"),
                             sheet.tr("Quality assurance: name and signature"),
                             sheet.tr("Customer: name and signature")};
    for (int i = 0; i < 3; ++i) {
        const double x = sheet.left() + i * (w + gap);
        sheet.line(x, top, x + w, top, ink::text(), 0.25);
        sheet.text(x, top + 4, w, roles[i], {7.5, Weight::Normal, ink::soft(), Face::Text});
        sheet.line(x, top + 15, x + w * 0.6, top + 15, ink::text(), 0.25);
        sheet.text(x, top + 19, w, sheet.tr("Date"), {7.5, Weight::Normal, ink::soft(), Face::Text});
    }
    sheet.y = top + 22;
}

}  // namespace arc::print
