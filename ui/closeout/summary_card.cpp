// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/summary_card.hpp"

#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/closeout/histogram.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

Mark markOf(closeout::RecordVerdict verdict) {
    switch (verdict) {
        case closeout::RecordVerdict::Accepted:
            return Mark::Steady;
        case closeout::RecordVerdict::AcceptedWithExceptions:
            return Mark::Recovered;
        case closeout::RecordVerdict::Open:
            return Mark::Watch;
        case closeout::RecordVerdict::NotAccepted:
            return Mark::Drifting;
    }
    return Mark::Watch;
}

QString verdictWords(closeout::RecordVerdict verdict) {
    switch (verdict) {
        case closeout::RecordVerdict::Accepted:
            return SummaryCard::tr("accepted");
        case closeout::RecordVerdict::AcceptedWithExceptions:
            return SummaryCard::tr("accepted, with exceptions");
        case closeout::RecordVerdict::Open:
            return SummaryCard::tr("exceptions wait");
        case closeout::RecordVerdict::NotAccepted:
            return SummaryCard::tr("not accepted");
    }
    return {};
}

}  // namespace

SummaryCard::SummaryCard(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    box->addWidget(sheet);
    inside(sheet)->setContentsMargins(theme.px(20), theme.px(12), theme.px(20), theme.px(10));
    auto* top = new QHBoxLayout;
    top->setSpacing(theme.px(12));
    m_mark = new StateMark(Mark::Watch, sheet);
    m_mark->setFixedSize(theme.px(22), theme.px(22));
    m_verdict = words(QString(), TextRole::Heading, sheet);
    m_rule = words(QString(), TextRole::Small, sheet);
    top->addWidget(m_mark);
    top->addWidget(m_verdict);
    top->addStretch();
    top->addWidget(m_rule);
    inside(sheet)->addLayout(top);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(26));
    const QString names[] = {tr("spliced"), tr("mean dB"), tr("median dB"), tr("worst dB"), tr("first time")};
    for (int i = 0; i < 5; ++i) {
        auto* one = new QVBoxLayout;
        one->setSpacing(0);
        m_figures[i] = words(QString(), TextRole::Heading, sheet);
        m_figures[i]->setAccessibleName(names[i]);
        one->addWidget(m_figures[i]);
        one->addWidget(words(names[i], TextRole::Small, sheet));
        one->addStretch();
        row->addLayout(one);
    }
    m_histogram = new Histogram(sheet);
    row->addWidget(m_histogram, 1);
    inside(sheet)->addLayout(row);
    m_budget = words(QString(), TextRole::Small, sheet);
    m_budget->setAccessibleName(tr("Link budget"));
    m_budget->setWordWrap(true);
    inside(sheet)->addWidget(m_budget);
}

void SummaryCard::showNothing(const QString& said) {
    m_verdict->setText(said);
    setState(m_verdict, QString());
    m_mark->setMark(Mark::Learning);
    m_rule->clear();
    for (auto* figure : m_figures) figure->clear();
    m_histogram->show({}, Loss{0});
    m_budget->clear();
}

void SummaryCard::show(const closeout::Record& record, std::optional<ClosureId> closure) {
    m_mark->setMark(markOf(record.verdict));
    m_verdict->setText(
        QStringLiteral("%1 · %2").arg(text::words(record.job.label), verdictWords(record.verdict)));
    setState(m_verdict, stateName(markOf(record.verdict)));
    const auto& rule = record.job.rule;
    m_rule->setText(tr("limit %1 dB, average %2, ceiling %3")
                        .arg(text::loss(rule.perSplice), text::loss(rule.average), text::loss(rule.ceiling)));
    const closeout::Averages* averages = &record.averages;
    int planned = record.plan ? record.plan->planned : 0;
    int spliced = record.plan ? record.plan->spliced : 0;
    if (closure)
        for (const auto& section : record.closures)
            if (section.closure == closure) {
                averages = &section.averages;
                planned = section.completeness ? section.completeness->planned : 0;
                spliced = section.completeness ? section.completeness->spliced : 0;
            }
    const QString none = QStringLiteral("–");
    m_figures[0]->setText(
        planned > 0
            ? tr("%1 of %2").arg(text::number(std::int64_t{spliced}), text::number(std::int64_t{planned}))
            : text::number(static_cast<std::int64_t>(averages->splices)));
    m_figures[1]->setText(averages->meanDb ? text::meanLoss(*averages->meanDb) : none);
    m_figures[2]->setText(averages->medianDb ? text::meanLoss(*averages->medianDb) : none);
    m_figures[3]->setText(averages->worst ? text::loss(*averages->worst) : none);
    m_figures[4]->setText(averages->splices == 0
                              ? none
                              : tr("%1 %").arg(text::number(100.0 * static_cast<double>(averages->firstTime) /
                                                                static_cast<double>(averages->splices),
                                                            1)));
    setState(m_figures[1], averages->meanDb && *averages->meanDb > decibels(rule.average)
                               ? QStringLiteral("drifting")
                               : QString());
    m_histogram->show(record.histogram, rule.perSplice);
    showBudget(record);
}

void SummaryCard::showBudget(const closeout::Record& record) {
    QStringList lines, notes;
    for (const auto& span : record.spans) {
        QStringList parts;
        for (const auto& budget : span.budgets)
            parts << tr("%1 nm %2 of %3 dB")
                         .arg(budget.wavelengthNm)
                         .arg(text::number(budget.asSplicedDb, 2), text::number(budget.allowedDb, 2));
        const QString name = text::words(span.label);
        const QString budget = parts.join(QStringLiteral(" · "));
        const QString note = text::spoken(span.budgetNote);
        if (parts.isEmpty())
            lines << (name.isEmpty() ? note : QStringLiteral("%1: %2").arg(name, note));
        else
            lines << (name.isEmpty()
                          ? tr("Link budget, as spliced of allowed: %1").arg(budget)
                          : tr("Link budget of span %1, as spliced of allowed: %2").arg(name, budget));
        notes << note;
    }
    m_budget->setText(lines.join(QLatin1Char('\n')));
    m_budget->setToolTip(notes.join(QLatin1Char('\n')));
}

}  // namespace arc::ui
