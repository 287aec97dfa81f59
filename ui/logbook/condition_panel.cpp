// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/condition_panel.hpp"

#include <QDir>
#include <QFileInfo>
#include <QFrame>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

Mark markOf(BookAccess access) {
    switch (access) {
        case BookAccess::Writing:
            return Mark::Steady;
        case BookAccess::OtherProgramWrites:
            return Mark::Watch;
        case BookAccess::Damaged:
            return Mark::Drifting;
    }
    return Mark::Watch;
}

QString verdictWords(BookAccess access) {
    switch (access) {
        case BookAccess::Writing:
            return ConditionPanel::tr("open for writing");
        case BookAccess::OtherProgramWrites:
            return ConditionPanel::tr("open for reading only");
        case BookAccess::Damaged:
            return ConditionPanel::tr("damaged, open for reading only");
    }
    return {};
}

}  // namespace

ConditionPanel::ConditionPanel(Session& session, QWidget* parent) : Panel(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(10));
    auto* sheet = card(this);
    auto* top = new QHBoxLayout;
    m_mark = new StateMark(Mark::Learning, sheet);
    m_mark->setFixedSize(theme.px(22), theme.px(22));
    m_verdict = words(QString(), TextRole::Heading, sheet);
    top->addWidget(m_mark);
    top->addWidget(m_verdict, 1);
    inside(sheet)->addLayout(top);
    m_sentence = words(QString(), TextRole::Body, sheet);
    m_sentence->setWordWrap(true);
    inside(sheet)->addWidget(m_sentence);
    m_lines = new QPlainTextEdit(sheet);
    m_lines->setReadOnly(true);
    m_lines->setTabChangesFocus(true);
    m_lines->setAccessibleName(tr("What is readable"));
    inside(sheet)->addWidget(m_lines, 1);
    auto* row = new QHBoxLayout;
    m_check = button(tr("Check the whole logbook"), ButtonKind::Wide, sheet, QStringLiteral("check"));
    m_rescue = button(tr("Rescue what is readable into a new logbook…"), ButtonKind::Wide, sheet,
                      QStringLiteral("logbook"));
    row->addWidget(m_check);
    row->addWidget(m_rescue);
    row->addStretch(1);
    inside(sheet)->addLayout(row);
    box->addWidget(sheet);
    m_outcome = new Outcome(this);
    box->addWidget(m_outcome);
    box->addStretch(1);
    connect(m_check, &QPushButton::clicked, this, &ConditionPanel::check);
    connect(m_rescue, &QPushButton::clicked, this, &ConditionPanel::askWhere);
}

void ConditionPanel::refresh() {
    const auto state = m_session.workbench().bookState();
    if (!state) return m_outcome->say(state.error());
    show(*state);
}

void ConditionPanel::show(const BookState& state) {
    m_mark->setMark(markOf(state.access));
    m_verdict->setText(verdictWords(state.access));
    setState(m_verdict, stateName(markOf(state.access)));
    m_sentence->setText(
        state.sentence.empty()
            ? tr("A check walks through every page of the file, and through the journal with its "
                 "hashes; it may take a while and can be stopped.")
            : asLine(state.sentence));
    QStringList lines;
    for (const auto& line : state.readable) lines << text::spoken(line);
    m_lines->setPlainText(lines.join(QLatin1Char('\n')));
    m_lines->setVisible(!lines.isEmpty());
    m_rescue->setVisible(state.access == BookAccess::Damaged);
}

QWidget* ConditionPanel::firstFocus() {
    return m_rescue->isHidden() ? m_check : m_rescue;
}

QString ConditionPanel::outcome() const {
    return m_outcome->text();
}

void ConditionPanel::check() {
    if (m_working) return;
    m_working = true;
    m_check->setEnabled(false);
    m_outcome->say(tr("Checking…"), Mark::Learning);
    using Answer = Result<BookState>;
    m_session.background().run<Answer>(
        this, tr("Checking the logbook"),
        [&session = m_session](Progress& progress) -> Answer {
            return session.workbench().checkBook(progress);
        },
        [this](Answer answer) {
            m_working = false;
            m_check->setEnabled(true);
            if (!answer) return m_outcome->say(answer.error());
            show(*answer);
            if (answer->access == BookAccess::Damaged)
                m_outcome->say(tr("Damage was found. Nothing more is written into this logbook."),
                               Mark::Drifting);
            else
                m_outcome->say(tr("Every page is whole."), Mark::Steady);
            Q_EMIT stateChanged();
        });
}

void ConditionPanel::askWhere() {
    if (m_working) return;
    chooseFolder(this, tr("Folder for the rescued logbook"),
                 QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                 [this](const QString& folder) { rescueInto(folder); });
}

void ConditionPanel::rescueInto(const QString& folder) {
    if (m_working) return;
    QString name = QStringLiteral("rescued.arcbook");
    for (int i = 2; QFileInfo::exists(QDir(folder).filePath(name)); ++i)
        name = QStringLiteral("rescued-%1.arcbook").arg(i);
    const std::filesystem::path target(QDir(folder).filePath(name).toStdU16String());
    m_working = true;
    m_rescue->setEnabled(false);
    m_outcome->say(tr("Rescuing…"), Mark::Learning);
    using Answer = Result<RescueCount>;
    m_session.background().run<Answer>(
        this, tr("Rescuing the logbook"),
        [&session = m_session, target](Progress& progress) -> Answer {
            return session.workbench().rescueInto(target, progress);
        },
        [this, target](Answer answer) {
            m_working = false;
            m_rescue->setEnabled(true);
            if (!answer) return m_outcome->say(answer.error());
            rescued(target, *answer);
        });
}

void ConditionPanel::rescued(const std::filesystem::path& book, const RescueCount& count) {
    const auto number = [](std::uint64_t n) { return text::number(static_cast<std::int64_t>(n)); };
    m_outcome->say(
        tr("Rescued into %1: %2 entries as they were, %3 in part, %4 lost. Open it with arcwright; the "
           "damaged one was not touched.")
            .arg(QString::fromStdString(book.string()), number(count.whole), number(count.partly),
                 number(count.lost)),
        count.lost == 0 && count.partly == 0 ? Mark::Steady : Mark::Watch);
    if (count.losses.empty()) return;
    QStringList lines{tr("Not whole:")};
    for (const auto& line : count.losses) lines << text::spoken(line);
    m_lines->setPlainText(lines.join(QLatin1Char('\n')));
    m_lines->show();
}

}  // namespace arc::ui
