// SPDX-License-Identifier: GPL-3.0-or-later
// What a card shows: cautions, materials, each kind of step, the end (see card_runner.hpp).
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/care/record_check.hpp"
#include "core/care/rules.hpp"
#include "core/care/words.hpp"
#include "ui/care/card_runner.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/care/field_edit.hpp"
#include "ui/care/words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr int readableWidth = 900;

QLabel* wrapped(const QString& text, TextRole role, QWidget* parent) {
    auto* label = words(text, role, parent);
    label->setWordWrap(true);
    label->setMaximumWidth(currentTheme().px(readableWidth));
    return label;
}

/// A reason is as it was typed, keys are spoken.
QString valueWords(const std::string& key, const std::string& value) {
    if (key == care::field::skippedReason) return text::words(value);
    return text::fromCard(care::spaced(value));
}

/// What a field of the record is called; empty for what is said elsewhere on the screen.
QString fieldWords(const care::Card& card, const std::string& key) {
    for (const auto& step : card.steps)
        if (const auto* record = std::get_if<care::RecordStep>(&step.what))
            for (const auto& field : record->fields)
                if (field.key == key) return text::fromCard(field.label);
    if (key == care::field::swabEnds) return CardRunner::tr("Swab ends used");
    if (key == care::field::rounds) return CardRunner::tr("Rounds");
    if (key == care::field::covers) return CardRunner::tr("Done on the way");
    if (key == care::field::skippedGentler) return CardRunner::tr("Gentler care not tried first");
    if (key == care::field::skippedReason) return CardRunner::tr("Because");
    return {};
}

}  // namespace

void CardRunner::showCautions() {
    const Theme theme = currentTheme();
    auto* box = qobject_cast<QVBoxLayout*>(m_bodyWidget->layout());
    m_where->setText(tr("About %1 minutes. Read this first.").arg(m_card.minutes));
    box->addWidget(wrapped(text::fromCard(m_card.purpose), TextRole::Strong, m_bodyWidget));
    for (const auto& caution : m_card.cautions) {
        auto* frame = new QFrame(m_bodyWidget);
        frame->setProperty("ground", QStringLiteral("hold"));
        auto* row = new QHBoxLayout(frame);
        row->setContentsMargins(theme.px(16), theme.px(12), theme.px(16), theme.px(12));
        row->setSpacing(theme.px(16));
        auto* sign = new QLabel(frame);
        sign->setPixmap(iconPixmap(QStringLiteral("warning"), theme.px(30), theme.colour(Role::Drifting),
                                   devicePixelRatioF()));
        row->addWidget(sign, 0, Qt::AlignVCenter);
        QString said = text::fromCard(caution);
        const QString ending = text::fromCard(care::cautionEnding);
        if (said.endsWith(ending)) said.chop(ending.size());
        auto* words = wrapped(said.trimmed(), TextRole::Body, frame);
        words->setMaximumWidth(QWIDGETSIZE_MAX);
        words->setFont(theme.font(Text::Strong));
        row->addWidget(words, 1);
        box->addWidget(frame);
    }
    if (!m_card.cautions.empty())
        box->addWidget(words(text::fromCard(care::cautionEnding), TextRole::Bold, m_bodyWidget));
    addBig(
        tr("I have read this"), tr("Enter"), [this] { put(care::Acknowledge{}); }, true);
    m_keys = {{Qt::Key_Return, [this] { put(care::Acknowledge{}); }}};
}

void CardRunner::showMaterials() {
    const Theme theme = currentTheme();
    auto* box = qobject_cast<QVBoxLayout*>(m_bodyWidget->layout());
    m_where->setText(tr("Have these at hand"));
    for (const auto& material : m_card.materials) {
        auto* row = new QHBoxLayout;
        row->setSpacing(theme.px(14));
        auto* mark = new QLabel(m_bodyWidget);
        mark->setPixmap(iconPixmap(QStringLiteral("check"), theme.px(26), theme.colour(Role::Accent),
                                   devicePixelRatioF()));
        row->addWidget(mark, 0, Qt::AlignTop);
        row->addWidget(wrapped(text::fromCard(material.name), TextRole::Heading, m_bodyWidget), 1);
        box->addLayout(row);
    }
    addBig(
        tr("All at hand"), tr("Enter"), [this] { put(care::Acknowledge{}); }, true);
    m_keys = {{Qt::Key_Return, [this] { put(care::Acknowledge{}); }}};
}

void CardRunner::showStep(const care::Screen& screen) {
    const Theme theme = currentTheme();
    auto* box = qobject_cast<QVBoxLayout*>(m_bodyWidget->layout());
    QString where = tr("Step %1 of %2").arg(screen.number).arg(screen.of);
    if (screen.rounds > 1) where += tr(" · round %1 of at most %2").arg(screen.round).arg(screen.rounds);
    m_where->setText(where);
    const auto& step = *screen.step;
    auto* say = wrapped(text::fromCard(step.text), TextRole::Title, m_bodyWidget);
    box->addSpacing(theme.px(8));
    box->addWidget(say);
    if (!step.hint.empty()) {
        auto* hint = wrapped(text::fromCard(step.hint), TextRole::Soft, m_bodyWidget);
        hint->setFont(theme.font(Text::Strong));
        box->addWidget(hint);
    }
    if (screen.swabEnd > 0) {
        const int swab = (screen.swabEnd + 1) / 2;
        const QString end = screen.swabEnd % 2 == 1 ? tr("its first end") : tr("its other end");
        box->addWidget(wrapped(tr("Swab %1, %2. A used end is never used again.").arg(swab).arg(end),
                               TextRole::Accent, m_bodyWidget));
    }
    const auto done = [this] { put(care::Done{m_session.clock().now()}); };
    const auto good = [this] { put(care::Answer{care::Outcome::Good}); };
    const auto notYet = [this] { put(care::Answer{care::Outcome::NotYet}); };
    const auto ask = [&](const std::string& question) {
        box->addSpacing(theme.px(10));
        auto* asked = wrapped(text::fromCard(question), TextRole::Heading, m_bodyWidget);
        box->addWidget(asked);
        addBig(tr("Yes, good"), tr("Y"), good, false);
        addBig(tr("Not yet"), tr("N"), notYet, false);
        m_keys = {{Qt::Key_Y, good}, {Qt::Key_N, notYet}};
    };
    if (const auto* inspect = std::get_if<care::InspectStep>(&step.what)) {
        ask(inspect->question);
    } else if (const auto* repeat = std::get_if<care::RepeatStep>(&step.what)) {
        ask(repeat->question);
    } else if (const auto* record = std::get_if<care::RecordStep>(&step.what)) {
        for (const auto& field : record->fields) {
            const auto written = m_run.fields.find(field.key);
            const auto known = m_values.find(field.key);
            const std::string value = written != m_run.fields.end() ? written->second
                                      : known != m_values.end()     ? known->second
                                                                    : std::string();
            auto* edit = new FieldEdit(field, value, m_bodyWidget);
            const std::size_t index = m_fields.size();
            connect(edit, &FieldEdit::done, this, [this, index] {
                if (index + 1 < m_fields.size())
                    goTo(index + 1);
                else
                    writeDown();
            });
            m_fields.push_back(edit);
            box->addWidget(edit);
        }
        addBig(
            tr("Write it down"), tr("Enter"), [this] { writeDown(); }, true);
    } else if (std::holds_alternative<care::TimerStep>(step.what)) {
        m_timerLabel = words(QString(), TextRole::Huge, m_bodyWidget);
        m_timerBar = new QProgressBar(m_bodyWidget);
        m_timerBar->setTextVisible(false);
        m_timerBar->setRange(0, screen.timerMinutes * 60);
        m_timerBar->setMaximumWidth(theme.px(readableWidth));
        m_timerBar->setAccessibleName(tr("Time gone by"));
        box->addSpacing(theme.px(10));
        box->addWidget(m_timerLabel);
        box->addWidget(m_timerBar);
        if (!screen.timerEnd) {
            const auto begin = [this] { put(care::StartTimer{m_session.clock().now()}); };
            addBig(tr("Start %1 minutes").arg(screen.timerMinutes), tr("Enter"), begin, true);
            m_keys = {{Qt::Key_Return, begin}};
        } else {
            addBig(tr("Time is over, go on"), tr("Enter"), done, true);
            m_timerDone = m_buttons->findChild<QPushButton*>();
            m_keys = {{Qt::Key_Return, done}};
            m_tick.start();
        }
        showTimer();
    } else {
        addBig(tr("Done"), tr("Enter"), done, true);
        m_keys = {{Qt::Key_Return, done}};
    }
}

void CardRunner::showTimer() {
    if (!m_timerLabel) return;
    const auto now = screen();
    if (!now.timerEnd) {
        m_timerLabel->setText(text::countdown(std::int64_t{now.timerMinutes} * 60));
        m_timerBar->setValue(0);
        return;
    }
    const std::int64_t left = (now.timerEnd->ms - m_session.clock().now().ms + 999) / 1000;
    m_timerLabel->setText(left > 0 ? text::countdown(left) : tr("time is over"));
    m_timerBar->setValue(static_cast<int>(now.timerMinutes * 60 - std::max<std::int64_t>(0, left)));
    if (m_timerDone && m_timerDone->isEnabled() != (left <= 0)) {
        m_timerDone->setEnabled(left <= 0);
        if (left <= 0) m_timerDone->setFocus();
    }
    if (left <= 0) m_tick.stop();
}

void CardRunner::showFinished() {
    auto* box = qobject_cast<QVBoxLayout*>(m_bodyWidget->layout());
    m_where->setText(tr("All steps are through"));
    auto record = care::recordOf(m_card, m_tool, m_run, m_session.clock().now(), std::nullopt);
    // The same gate as on the command line; before the first look at the book there is nothing to judge it
    // by.
    if (const auto look = CareDesk::of(m_session).look(); record && look)
        record = care::checkedRecord(look->situation, std::move(*record));
    if (!record) return wrong(record.error());
    const auto effect = care::effectOf(*record);
    auto* verdict = wrapped(effect == care::Effect::NotReached
                                ? tr("Tried, not reached. What comes next stays in the queue.")
                                : tr("Reached what it was for."),
                            TextRole::Title, m_bodyWidget);
    setState(verdict,
             effect == care::Effect::NotReached ? QStringLiteral("watch") : QStringLiteral("steady"));
    box->addWidget(verdict);
    QStringList kept;
    for (const auto& [key, value] : record->fields)
        if (const QString name = fieldWords(m_card, key); !name.isEmpty())
            kept << QStringLiteral("%1: %2").arg(name, valueWords(key, value));
    if (!kept.isEmpty())
        box->addWidget(wrapped(kept.join(QStringLiteral("\n")), TextRole::Strong, m_bodyWidget));
    if (!m_card.obligations.empty() && effect != care::Effect::NotReached) {
        QStringList next;
        const auto look = CareDesk::of(m_session).look();
        for (const auto& key : m_card.obligations)
            if (!care::covers(*record, key))
                next << (look ? careTitle(look->situation.deck, key) : text::spoken(care::spaced(key)));
        if (!next.isEmpty())
            box->addWidget(
                wrapped(tr("Now compulsory: %1. It is in the queue.").arg(next.join(QStringLiteral(", "))),
                        TextRole::Strong, m_bodyWidget));
    }
    addBig(
        tr("Write the record"), tr("Enter"), [this] { finish(); }, true);
    m_keys = {{Qt::Key_Return, [this] { finish(); }}};
}

}  // namespace arc::ui
