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
