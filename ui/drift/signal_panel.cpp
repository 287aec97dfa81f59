// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/signal_panel.hpp"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <ranges>

#include "ui/drift/signal_card.hpp"
#include "ui/drift/signal_line.hpp"
#include "ui/drift/words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/widgets/comb.hpp"
#include "ui/widgets/life_bar.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr int effectsShown = 6;
constexpr int learningArcs = 60;

/// A mark with words beside it that wrap.
QHBoxLayout* markedLine(Mark mark, const QString& strong, const QString& soft, QWidget* parent) {
    const Theme theme = currentTheme();
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(10));
    row->addWidget(new StateMark(mark, parent), 0, Qt::AlignTop);
    auto* texts = new QVBoxLayout;
    texts->setSpacing(0);
    auto* first = words(strong, TextRole::Bold, parent);
    first->setWordWrap(true);
    texts->addWidget(first);
    if (!soft.isEmpty()) {
        auto* second = words(soft, TextRole::Small, parent);
        second->setWordWrap(true);
        texts->addWidget(second);
    }
    row->addLayout(texts, 1);
    return row;
}

}  // namespace

SignalPanel::SignalPanel(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(theme.px(10));
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setAccessibleName(tr("Signals"));
    m_content = new QWidget;
    m_content->setProperty("ground", QStringLiteral("none"));
    m_layout = new QVBoxLayout(m_content);
    m_layout->setContentsMargins(0, 0, theme.px(4), 0);
    m_layout->setSpacing(theme.px(Gap::Middle));
    m_card = new SignalCard(m_content);
    m_layout->addWidget(m_card);
    m_layout->addStretch(1);
    scroll->setWidget(m_content);
    outer->addWidget(scroll, 1);
    // What to do stays on the screen however long the evidence is.
    m_start = button({}, ButtonKind::Primary, this);
    m_start->setObjectName(QStringLiteral("start"));
    connect(m_start, &QPushButton::clicked, this, &SignalPanel::startAsked);
    m_dismiss = button(tr("Dismiss, with a reason…"), ButtonKind::Usual, this);
    m_dismiss->setObjectName(QStringLiteral("dismiss"));
    connect(m_dismiss, &QPushButton::clicked, this, &SignalPanel::dismissAsked);
    m_reopen = button(tr("Take it up again"), ButtonKind::Usual, this);
    m_reopen->setObjectName(QStringLiteral("reopen"));
    connect(m_reopen, &QPushButton::clicked, this, &SignalPanel::reopenAsked);
    m_readings = button(tr("Readings  R"), ButtonKind::Usual, this, QStringLiteral("table"));
    m_readings->setObjectName(QStringLiteral("readings"));
    connect(m_readings, &QPushButton::clicked, this, &SignalPanel::readingsAsked);
    outer->addWidget(m_start);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(10));
    row->addWidget(m_dismiss, 3);
    row->addWidget(m_reopen, 3);
    row->addWidget(m_readings, 2);
    outer->addLayout(row);
}

void SignalPanel::show(std::shared_ptr<const DriftView> view, const drift::SplicerReport* splicer,
                       const drift::StratumReport* report, const care::Deck* deck, Instant now) {
    m_view = std::move(view);
    m_splicer = splicer;
    m_report = report;
    m_deck = deck;
    m_now = now;
    choose(m_key);
}

const drift::Signal* SignalPanel::chosen() const {
    if (!m_report) return nullptr;
    const auto it = std::ranges::find(m_report->signals, m_key, &drift::Signal::key);
    return it == m_report->signals.end() ? nullptr : &*it;
}

void SignalPanel::choose(const std::string& key) {
    m_key.clear();
    if (m_report && !m_report->signals.empty()) {
        const auto& all = m_report->signals;
        const auto asked = std::ranges::find(all, key, &drift::Signal::key);
        if (asked != all.end()) {
            m_key = key;
        } else {
            const auto backwards = all | std::views::reverse;
            const auto open = std::ranges::find(backwards, drift::SignalState::Open, &drift::Signal::state);
            m_key = open != backwards.end() ? open->key : all.back().key;
        }
    }
    fill();
    Q_EMIT chosenChanged();
}

void SignalPanel::step(int by) {
    if (!m_report || m_report->signals.empty()) return;
    const auto& all = m_report->signals;
    const auto at = std::ranges::find(all, m_key, &drift::Signal::key) - all.begin();
    const auto next = std::clamp<std::ptrdiff_t>(at + by, 0, static_cast<std::ptrdiff_t>(all.size()) - 1);
    choose(all[static_cast<std::size_t>(next)].key);
}

void SignalPanel::fill() {
    if (m_rest) {
        // Later, because a click on one of its lines may have brought us here.
        m_rest->hide();
        m_rest->deleteLater();
    }
    m_rest = new QWidget(m_content);
    m_restLayout = new QVBoxLayout(m_rest);
    m_restLayout->setContentsMargins(0, 0, 0, 0);
    m_restLayout->setSpacing(currentTheme().px(Gap::Middle));
    m_layout->insertWidget(1, m_rest);
    const auto* signal = chosen();
    m_card->setVisible(signal != nullptr);
    const bool live = signal && (signal->state == drift::SignalState::Open ||
                                 signal->state == drift::SignalState::Answered);
    const bool care = live && !signal->action.empty() && signal->action != action::note;
    m_start->setVisible(care);
    if (care) {
        QString title = careTitle(signal->action, m_deck);
        title[0] = title[0].toLower();
        m_start->setText(tr("Start: %1").arg(title));
        m_start->setAccessibleName(m_start->text());
    }
    m_dismiss->setVisible(live);
    m_reopen->setVisible(signal && signal->state == drift::SignalState::Dismissed);
    m_readings->setVisible(m_report != nullptr);
    if (!m_report) return;
    if (signal)
        m_card->show(*signal, *m_report, m_now);
    else
        addCalm();
    addOthers();
    addEffects();
    addElectrodes();
    m_rest->show();
}

void SignalPanel::addCalm() {
    auto* frame = card(m_rest);
    const Mark mark = markOf(m_report->standing);
    QString soft;
    if (m_report->standing == drift::Standing::Learning)
        soft = tr("%1 arcs so far. From %2 on there is a baseline to compare with, and the charts can speak.")
                   .arg(m_report->arcs)
                   .arg(learningArcs);
    else if (m_report->standing == drift::Standing::Watch)
        soft = tr("A chart is filling up but has not reached its limit. Nothing has to stop.");
    else
        soft = tr("No chart has signalled. Losses now %1, baseline %2.")
                   .arg(text::meanLoss(m_report->recentMeanDb, text::Unit::Shown),
                        text::meanLoss(m_report->baselineMeanDb, text::Unit::Shown));
    auto* row = new QHBoxLayout;
    row->setSpacing(currentTheme().px(10));
    row->addWidget(new StateMark(mark, frame));
    auto* word = words(wordOf(mark), TextRole::Heading, frame);
    setState(word, stateName(mark));
    row->addWidget(word, 1);
    inside(frame)->addLayout(row);
    auto* label = words(soft, TextRole::Body, frame);
    label->setWordWrap(true);
    inside(frame)->addWidget(label);
    auto* comb = new Comb(frame);
    comb->setTeeth(teethOf(*m_report));
    inside(frame)->addWidget(comb);
    m_restLayout->addWidget(frame);
}

void SignalPanel::addOthers() {
    const auto& all = m_report->signals;
    if (all.size() < 2) return;
    auto* frame = card(m_rest);
    inside(frame)->setSpacing(currentTheme().px(4));
    inside(frame)->addWidget(words(tr("All signals, N and P go through them"), TextRole::Small, frame));
    for (const auto& signal : all | std::views::reverse) {
        auto* choice = new SignalLine(
            markOf(signal.state), text::spoken(signal.headline),
            QStringLiteral("%1 · %2").arg(text::moment(signal.raisedAt, m_now), wordOf(signal.state)), frame);
        choice->setChecked(signal.key == m_key);
        connect(
            choice, &SignalLine::clicked, this, [this, key = signal.key] { choose(key); },
            Qt::QueuedConnection);
        inside(frame)->addWidget(choice);
    }
    m_restLayout->addWidget(frame);
}

void SignalPanel::addEffects() {
    if (m_report->effects.empty()) return;
    auto* frame = card(m_rest);
    inside(frame)->addWidget(words(tr("Did the care help?"), TextRole::Strong, frame));
    int shown = 0;
    for (const auto& effect : m_report->effects | std::views::reverse) {
        if (shown++ == effectsShown) break;
        const QString what = tr("%1, %2: %3")
                                 .arg(careTitle(effect.action, m_deck), text::moment(effect.at, m_now),
                                      wordOf(effect.verdict));
        const QString numbers =
            effect.verdict == drift::CareVerdict::TooEarly
                ? tr("%1 since").arg(arcsWord(static_cast<std::uint64_t>(effect.after)))
                : tr("%1 dB (%2 … %3), %4 arcs before, %5 after")
                      .arg(text::signedNumber(effect.shiftDb, 3), text::signedNumber(effect.low, 3),
                           text::signedNumber(effect.high, 3))
                      .arg(effect.before)
                      .arg(effect.after);
        inside(frame)->addLayout(markedLine(markOf(effect.verdict), what, numbers, frame));
    }
    m_restLayout->addWidget(frame);
}

void SignalPanel::addElectrodes() {
    if (!m_splicer) return;
    const auto& life = m_splicer->electrodes;
    if (!life.arcsSince && !life.arcsLeft) return;
    auto* frame = card(m_rest);
    auto* bar = new LifeBar(frame);
    const double used = life.arcsSince ? *life.arcsSince : 0.0;
    const double left = life.arcsLeft.value_or(life.plainRuleLeft);
    const double share = used + left > 0 ? used / (used + std::max(0.0, left)) : 1.0;
    const Mark mark = share > 0.97 ? Mark::Drifting : share > 0.85 ? Mark::Watch : Mark::Steady;
    bar->set(tr("electrodes"), tr("%1 arcs").arg(text::number(static_cast<std::int64_t>(used))), share, mark);
    inside(frame)->addWidget(bar);
    const auto round = [](double value) { return text::number(static_cast<std::int64_t>(value)); };
    QString soft = life.arcsLeft && life.arcsLeftLow && life.arcsLeftHigh
                       ? tr("about %1 arcs left (%2–%3, 80 %)")
                             .arg(round(*life.arcsLeft), round(*life.arcsLeftLow), round(*life.arcsLeftHigh))
                       : tr("too early for a forecast");
    soft += QStringLiteral("; ") +
            tr("plain rule of about 5,000 arcs: %1 left").arg(round(std::max(0.0, life.plainRuleLeft)));
    auto* label = words(soft, TextRole::Small, frame);
    label->setWordWrap(true);
    inside(frame)->addWidget(label);
    m_restLayout->addWidget(frame);
}

}  // namespace arc::ui
