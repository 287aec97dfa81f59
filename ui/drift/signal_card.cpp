// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/signal_card.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/drift/cause_bars.hpp"
#include "ui/drift/words.hpp"
#include "ui/text/format.hpp"
#include "ui/widgets/comb.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr std::size_t evidenceOfOthers = 1;
/// Evidence of a cause less likely than this would only distract.
constexpr double worthSaying = 0.02;

QLabel* wrapped(const QString& text, TextRole role, QWidget* parent) {
    auto* label = words(text, role, parent);
    label->setWordWrap(true);
    return label;
}

void clear(QLayout* layout) {
    while (auto* item = layout->takeAt(0)) {
        if (auto* widget = item->widget()) {
            // Later, because a click on one of them may have brought us here.
            widget->hide();
            widget->setObjectName({});
            widget->deleteLater();
        }
        if (item->layout()) clear(item->layout());
        delete item;
    }
}

}  // namespace

SignalCard::SignalCard(QWidget* parent) : QFrame(parent) {
    const Theme theme = currentTheme();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.px(18), theme.px(16), theme.px(18), theme.px(16));
    layout->setSpacing(theme.px(7));
    setProperty("ground", QStringLiteral("card"));
}

void SignalCard::show(const drift::Signal& signal, const drift::StratumReport& report, Instant now) {
    auto* layout = qobject_cast<QVBoxLayout*>(this->layout());
    clear(layout);
    const Theme theme = currentTheme();
    const Mark mark = markOf(signal.state);

    auto* head = new QHBoxLayout;
    head->setSpacing(theme.px(10));
    head->addWidget(new StateMark(mark, this), 0, Qt::AlignTop);
    auto* headline = wrapped(text::spoken(signal.headline), TextRole::Heading, this);
    setState(headline, stateName(mark));
    head->addWidget(headline, 1);
    layout->addLayout(head);
    setAccessibleName(text::spoken(signal.headline));

    const QString when =
        signal.state == drift::SignalState::Open ? QString() : QStringLiteral(" · ") + wordOf(signal.state);
    layout->addWidget(
        wrapped(tr("began %1, %2%3")
                    .arg(beginOf(signal),
                         text::moment(signal.beganAt, now).replace(QLatin1Char(' '), QChar::Nbsp), when),
                TextRole::Body, this));
    const auto later = signal.raisedAtArc >= signal.beganAtArc ? signal.raisedAtArc - signal.beganAtArc : 0;
    layout->addWidget(
        wrapped(tr("signal at arc %1, %2 later")
                    .arg(text::number(static_cast<std::int64_t>(signal.raisedAtArc)), arcsWord(later)),
                TextRole::Body, this));
    layout->addWidget(
        wrapped(tr("%1 dB since then, seen by the chart of %2")
                    .arg(text::signedNumber(signal.sizeDb, 3), wordOf(signal.chart, signal.channel)),
                TextRole::Small, this));
    if (!signal.answerReason.empty())
        layout->addWidget(
            wrapped(tr("reason: %1").arg(text::words(signal.answerReason)), TextRole::Bold, this));
    auto* comb = new Comb(this);
    comb->setTeeth(teethOf(report));
    layout->addWidget(comb);

    auto* bars = new CauseBars(this);
    bars->setCauses(signal.causes);
    layout->addWidget(bars);
    addEvidence(layout, signal);
    auto* advice = wrapped(text::spoken(signal.advice), TextRole::Bold, this);
    layout->addWidget(advice);
}

void SignalCard::addEvidence(QVBoxLayout* layout, const drift::Signal& signal) {
    for (std::size_t i = 0; i < signal.causes.size(); ++i) {
        const auto& cause = signal.causes[i];
        if (i > 0 && cause.weight < worthSaying) continue;
        const std::size_t shown =
            i == 0 ? cause.evidence.size() : std::min(evidenceOfOthers, cause.evidence.size());
        for (std::size_t line = 0; line < shown; ++line) {
            const QString said =
                text::spoken(cause.evidence[line]).replace(QLatin1String("->"), QStringLiteral("→"));
            layout->addWidget(
                wrapped(QStringLiteral("· ") + (i == 0 ? said : tr("%1: %2").arg(wordOf(cause.cause), said)),
                        i == 0 ? TextRole::Body : TextRole::Small, this));
        }
    }
}

}  // namespace arc::ui
