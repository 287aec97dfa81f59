// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/card_runner.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

#include "core/care/record_check.hpp"
#include "core/care/rules.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/care/field_edit.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr int tickMs = 250;
constexpr int readableWidth = 900;

QLabel* wrapped(const QString& text, TextRole role, QWidget* parent) {
    auto* label = words(text, role, parent);
    label->setWordWrap(true);
    label->setMaximumWidth(currentTheme().px(readableWidth));
    return label;
}

/// "not_adequate" → "not adequate".
std::string spaced(std::string key) {
    std::ranges::replace(key, '_', ' ');
    return key;
}

/// "Arc power: adequate": by the card's own words; what the run adds itself has no label there.
QString fieldLine(const care::Card& card, const std::string& key, const std::string& value) {
    for (const auto& step : card.steps)
        if (const auto* record = std::get_if<care::RecordStep>(&step.what))
            if (const auto field = std::ranges::find(record->fields, key, &care::Field::key);
                field != record->fields.end())
                return QStringLiteral("%1: %2").arg(text::fromCard(field->label),
                                                    field->kind == care::FieldKind::Choice
                                                        ? text::fromCard(spaced(value))
                                                        : text::words(value));
    return QStringLiteral("%1: %2").arg(text::spoken(spaced(key)), text::spoken(spaced(value)));
}

}  // namespace

CardRunner::CardRunner(Session& session, care::Card card, Tool tool, CareRun run,
                       std::map<std::string, std::string> values, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_card(std::move(card)),
      m_tool(std::move(tool)),
      m_run(std::move(run)),
      m_values(std::move(values)) {
    setWindowTitle(QStringLiteral("%1, %2").arg(text::fromCard(m_card.title), text::words(m_tool.label)));
    setProperty("ground", QStringLiteral("paper"));
    setAccessibleName(windowTitle());
    setFocusPolicy(Qt::StrongFocus);
    build();
    m_tick.setInterval(tickMs);
    connect(&m_tick, &QTimer::timeout, this, &CardRunner::showTimer);
    refresh();
}

void CardRunner::build() {
    const Theme theme = currentTheme();
    m_outer = new QVBoxLayout(this);
    m_outer->setContentsMargins(theme.px(48), theme.px(28), theme.px(48), theme.px(32));
    m_outer->setSpacing(theme.px(14));
    auto* head = new QHBoxLayout;
    auto* names = new QVBoxLayout;
    names->setSpacing(theme.px(2));
    m_title = words(windowTitle(), TextRole::Title, this);
    m_title->setWordWrap(true);
    m_where = words(QString(), TextRole::Soft, this);
    names->addWidget(m_title);
    names->addWidget(m_where);
    head->addLayout(names, 1);
    m_back = button(tr("Back  B"), ButtonKind::Usual, this, QStringLiteral("back"));
    m_back->setFocusPolicy(Qt::NoFocus);
    connect(m_back, &QPushButton::clicked, this, [this] { put(care::Back{}); });
    auto* pause = button(tr("Pause  Esc"), ButtonKind::Usual, this);
    pause->setFocusPolicy(Qt::NoFocus);
    connect(pause, &QPushButton::clicked, this, &CardRunner::reject);
    auto* leave = button(tr("Give it up"), ButtonKind::Quiet, this);
    leave->setFocusPolicy(Qt::NoFocus);
    connect(leave, &QPushButton::clicked, this, &CardRunner::drop);
    for (auto* one : {m_back, pause, leave}) {
        one->setMinimumHeight(theme.px(Touch::Usual) + theme.px(4));
        head->addWidget(one, 0, Qt::AlignTop);
    }
    m_outer->addLayout(head);
    m_progress = new QProgressBar(this);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(tr("Steps done"));
    m_outer->addWidget(m_progress);
    m_scroll = new QScrollArea(this);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    auto* canvas = new QWidget;
    canvas->setProperty("ground", QStringLiteral("none"));
    m_body = new QVBoxLayout(canvas);
    m_body->setContentsMargins(0, theme.px(8), theme.px(12), 0);
    m_scroll->setWidget(canvas);
    m_outer->addWidget(m_scroll, 1);
    m_wrong = words(QString(), TextRole::Bold, this);
    m_wrong->setWordWrap(true);
    setState(m_wrong, QStringLiteral("drifting"));
    m_outer->addWidget(m_wrong);
}

void CardRunner::clearBody() {
    m_keys.clear();
    m_fields.clear();
    m_timerLabel = nullptr;
    m_timerBar = nullptr;
    m_timerDone = nullptr;
    m_tick.stop();
    if (m_bodyWidget) m_bodyWidget->deleteLater();
    if (m_buttons) m_buttons->deleteLater();
    if (m_bodyWidget) m_bodyWidget->hide();
    if (m_buttons) m_buttons->hide();
    const Theme theme = currentTheme();
    m_bodyWidget = new QWidget;
    m_bodyWidget->setProperty("ground", QStringLiteral("none"));
    auto* box = new QVBoxLayout(m_bodyWidget);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(14));
    m_body->addWidget(m_bodyWidget);
    m_buttons = new QWidget(this);
    auto* row = new QHBoxLayout(m_buttons);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.px(14));
    m_outer->addWidget(m_buttons);
}

void CardRunner::addBig(const QString& text, const QString& key, std::function<void()> run, bool primary) {
    const Theme theme = currentTheme();
    auto* made = button(key.isEmpty() ? text : QStringLiteral("%1   %2").arg(text, key),
                        primary ? ButtonKind::Primary : ButtonKind::Wide, m_buttons);
    made->setAccessibleName(text);
    made->setMinimumHeight(theme.px(Touch::Pad) + theme.px(7));
    made->setMinimumWidth(theme.px(260));
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, run);
    m_buttons->layout()->addWidget(made);
}

QString CardRunner::saidWrong() const {
    return m_wrong->text();
}

void CardRunner::wrong(const Problem& problem) {
    QString said = text::spoken(problem);
    if (!said.isEmpty()) said[0] = said[0].toUpper();
    m_wrong->setText(said);
    m_wrong->show();
}

// --- screens -----------------------------------------------------------------------------------------------

void CardRunner::refresh() {
    m_wrong->clear();
    m_wrong->hide();
    clearBody();
    const auto now = screen();
    const int steps = static_cast<int>(m_card.steps.size());
    const int done = now.kind == care::ScreenKind::Cautions    ? 0
                     : now.kind == care::ScreenKind::Materials ? 1
                     : now.kind == care::ScreenKind::Step      ? now.number + 1
                                                               : steps + 2;
    m_progress->setRange(0, steps + 2);
    m_progress->setValue(done);
    m_back->setEnabled(now.kind != care::ScreenKind::Cautions);
    switch (now.kind) {
        case care::ScreenKind::Cautions:
            showCautions();
            break;
        case care::ScreenKind::Materials:
            showMaterials();
            break;
        case care::ScreenKind::Step:
            showStep(now);
            break;
        case care::ScreenKind::Finished:
            showFinished();
            break;
    }
    qobject_cast<QVBoxLayout*>(m_bodyWidget->layout())->addStretch();
    // A layout shows what is added to it only later; the keyboard needs a place now.
    m_bodyWidget->show();
    m_buttons->show();
    if (!m_fields.empty())
        goTo(0);
    else if (const auto all = m_buttons->findChildren<QPushButton*>(); all.size() == 1)
        all.front()->setFocus(Qt::OtherFocusReason);
    else
        setFocus(Qt::OtherFocusReason);  // a look is answered on purpose, never by one Enter too many
}

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
    for (const auto& [key, value] : m_run.fields)
        if (!key.starts_with("timer_started.")) kept << fieldLine(m_card, key, value);
    if (!kept.isEmpty())
        box->addWidget(wrapped(kept.join(QStringLiteral("\n")), TextRole::Strong, m_bodyWidget));
    if (!m_card.obligations.empty() && effect != care::Effect::NotReached) {
        QStringList next;
        for (const auto& key : m_card.obligations) next << text::spoken(spaced(key));
        box->addWidget(
            wrapped(tr("Now compulsory: %1. It is in the queue.").arg(next.join(QStringLiteral(", "))),
                    TextRole::Strong, m_bodyWidget));
    }
    addBig(
        tr("Write the record"), tr("Enter"), [this] { finish(); }, true);
    m_keys = {{Qt::Key_Return, [this] { finish(); }}};
}

// --- inputs ------------------------------------------------------------------------------------------------

void CardRunner::put(const care::Input& input) {
    auto next = care::advance(m_card, m_tool, m_run, input);
    if (!next) return wrong(next.error());
    if (!m_session.save(Entry{*next}, Undo::No))
        return wrong(
            Problem{ProblemCode::Unavailable, "not saved; this step is still here", "", "Try again"});
    m_run = std::move(*next);
    refresh();
}

void CardRunner::goTo(std::size_t field) {
    m_fields[field]->takeFocus();
    m_scroll->ensureWidgetVisible(m_fields[field]);
}

void CardRunner::writeDown() {
    care::WriteDown down;
    std::vector<Entry> photos;
    for (const auto* edit : m_fields) {
        if (const auto value = edit->value(); !value.empty()) down.fields[edit->field().key] = value;
        if (!edit->photo().isEmpty()) {
            const bool png = edit->value().ends_with("png") || edit->value().ends_with("PNG");
            photos.emplace_back(Attachment{m_session.newId<EntryId>(), m_run.id.uuid, edit->value(),
                                           png ? "image/png" : "image/jpeg", edit->photo().toStdString()});
        }
    }
    auto next = care::advance(m_card, m_tool, m_run, down);
    if (!next) {
        wrong(next.error());
        for (std::size_t i = 0; i < m_fields.size(); ++i)
            if (m_fields[i]->field().key == next.error().where) goTo(i);
        return;
    }
    photos.emplace_back(*next);
    if (!m_session.save(photos, Undo::No))
        return wrong(
            Problem{ProblemCode::Unavailable, "not saved; this step is still here", "", "Try again"});
    m_run = std::move(*next);
    refresh();
}

void CardRunner::finish() {
    auto record = care::recordOf(m_card, m_tool, m_run, m_session.clock().now(), std::nullopt);
    // The same gate as on the command line; before the first look at the book there is nothing to judge it
    // by.
    if (const auto look = CareDesk::of(m_session).look(); record && look)
        record = care::checkedRecord(look->situation, std::move(*record));
    if (!record) return wrong(record.error());
    CareRun closed = m_run;
    closed.state = RunState::Finished;
    if (!m_session.save({Entry{*record}, Entry{closed}}, Undo::No))
        return wrong(Problem{ProblemCode::Unavailable, "the record was not saved", "", "Try again"});
    m_run = closed;
    Q_EMIT recorded(*record);
    accept();
}

void CardRunner::drop() {
    // Nothing was written before the cautions were read.
    if (screen().kind != care::ScreenKind::Cautions &&
        !m_session.save(Entry{care::abandoned(m_run)}, Undo::No))
        return;
    QDialog::reject();
}

void CardRunner::reject() {
    QDialog::reject();
}

void CardRunner::keyPressEvent(QKeyEvent* event) {
    int key = event->key();
    if (key == Qt::Key_Enter) key = Qt::Key_Return;
    const bool typing = std::ranges::any_of(m_fields, &FieldEdit::hasKeyboard);
    if (key == Qt::Key_B && !typing && m_back->isEnabled()) return put(care::Back{});
    if (key == Qt::Key_Return && m_fields.empty()) {
        // The button that has the keyboard wins over the usual answer.
        if (auto* pressed = qobject_cast<QPushButton*>(focusWidget());
            pressed && pressed->isEnabled() && m_buttons->isAncestorOf(pressed))
            return pressed->click();
    }
    for (const auto& known : m_keys)
        if (known.key == key && !typing) {
            const auto run = known.run;
            return run();
        }
    QDialog::keyPressEvent(event);
}

}  // namespace arc::ui
