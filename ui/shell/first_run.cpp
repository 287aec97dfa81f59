// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/first_run.hpp"

#include <QComboBox>
#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

struct Machine {
    const char* words;
    SplicerKind kind;
    int grooves;
};
constexpr Machine machines[] = {
    {QT_TRANSLATE_NOOP("arc::ui::FirstRun", "mass splicer, 12 grooves"), SplicerKind::MassFusion, 12},
    {QT_TRANSLATE_NOOP("arc::ui::FirstRun", "mass splicer, 4 grooves"), SplicerKind::MassFusion, 4},
    {QT_TRANSLATE_NOOP("arc::ui::FirstRun", "mass splicer, 16 grooves"), SplicerKind::MassFusion, 16},
    {QT_TRANSLATE_NOOP("arc::ui::FirstRun", "single-fibre splicer"), SplicerKind::SingleFibre, 1},
};
constexpr int cardWidth = 640;

const Machine& machineIn(const QComboBox& kind) {
    return machines[static_cast<std::size_t>(std::max(0, kind.currentIndex()))];
}

}  // namespace

bool isUntouched(Logbook& book) {
    const auto tools = book.tools();
    const auto jobs = book.jobs();
    return tools && jobs && tools->empty() && jobs->empty();
}

FirstRun::FirstRun(Session& session, Demo demo, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    setAccessibleName(tr("A new logbook"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setAccessibleName(tr("A new logbook"));
    outer->addWidget(scroll);
    auto* page = new QWidget;
    page->setProperty("ground", QStringLiteral("none"));
    scroll->setWidget(page);
    auto* column = new QVBoxLayout(page);
    column->setAlignment(Qt::AlignCenter);
    column->setContentsMargins(theme.px(Gap::Edge), theme.px(20), theme.px(Gap::Edge), theme.px(20));
    auto* sheet = card(page);
    sheet->setFixedWidth(theme.px(cardWidth));
    column->addWidget(sheet, 0, Qt::AlignHCenter);
    auto* layout = inside(sheet);
    layout->setContentsMargins(theme.px(36), theme.px(28), theme.px(36), theme.px(28));
    layout->setSpacing(theme.px(10));
    auto* head = new QHBoxLayout;
    head->addWidget(words(tr("A new logbook"), TextRole::Title, sheet), 1);
    for (const auto& row : text::languages()) {
        auto* choice = button(QString::fromUtf8(row.name), ButtonKind::Choice, sheet);
        choice->setAccessibleName(QString::fromUtf8(row.choice));
        choice->setCheckable(true);
        choice->setChecked(row.language == text::spokenLanguage());
        connect(choice, &QPushButton::clicked, this, [this, choice, language = row.language] {
            choice->setChecked(language == text::spokenLanguage());
            Q_EMIT languageAsked(language);
        });
        head->addWidget(choice);
    }
    layout->addLayout(head);
    auto* said =
        words(tr("Three questions and you can splice. Arcwright then watches the losses and says when a tool "
                 "wants care, and which."),
              TextRole::Soft, sheet);
    said->setWordWrap(true);
    layout->addWidget(said);

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(16));
    grid->setVerticalSpacing(theme.px(8));
    grid->setColumnStretch(1, 1);
    int row = 0;
    const auto ask = [&](int number, const QString& question, std::initializer_list<QWidget*> answers) {
        grid->addWidget(words(QString::number(number), TextRole::Digits, sheet), row, 0, Qt::AlignTop);
        auto* asked = words(question, TextRole::Strong, sheet);
        asked->setWordWrap(true);
        grid->addWidget(asked, row++, 1);
        for (auto* answer : answers) grid->addWidget(answer, row++, 1);
        grid->setRowMinimumHeight(row++, theme.px(6));
    };
    m_crew = new QLineEdit(sheet);
    m_crew->setAccessibleName(tr("Your crew label"));
    m_crew->setPlaceholderText(tr("a name or a crew label; may stay empty"));
    m_crew->setText(text::words(m_session.crew()));
    ask(1, tr("Who is at the keyboard?"), {m_crew});
    m_kind = new QComboBox(sheet);
    m_kind->setAccessibleName(tr("Kind of splicer"));
    for (const auto& machine : machines) m_kind->addItem(tr(machine.words));
    m_splicer = new QLineEdit(QStringLiteral("S-01"), sheet);
    m_splicer->setAccessibleName(tr("Label of the splicer"));
    m_splicer->setMaxLength(40);
    ask(2, tr("Which splicer do you work with, and what do you call it?"), {m_kind, m_splicer});
    m_job = new QLineEdit(sheet);
    m_job->setAccessibleName(tr("Label of the job"));
    m_job->setPlaceholderText(tr("for example HR-B; may stay empty"));
    m_job->setMaxLength(40);
    m_closure = new QLineEdit(QStringLiteral("C-01"), sheet);
    m_closure->setAccessibleName(tr("Label of the closure"));
    m_closure->setMaxLength(40);
    m_closure->setEnabled(false);
    ask(3, tr("What is the job called, and the closure on the table?"), {m_job, m_closure});
    layout->addLayout(grid);

    m_start = button(tr("Start the logbook"), ButtonKind::Primary, sheet, QStringLiteral("check"));
    m_start->setDefault(true);
    connect(m_start, &QPushButton::clicked, this, &FirstRun::write);
    layout->addWidget(m_start);
    auto* others = new QHBoxLayout;
    auto* show = button(tr("Look at a demo crew first"), ButtonKind::Usual, sheet, QStringLiteral("drift"));
    show->setVisible(demo == Demo::Offered);
    connect(show, &QPushButton::clicked, this, &FirstRun::demoAsked);
    auto* skip = button(tr("Skip, I will import a log"), ButtonKind::Usual, sheet, QStringLiteral("import"));
    connect(skip, &QPushButton::clicked, this, [this] {
        m_session.setCrew(text::utf8(m_crew->text().trimmed()));
        Q_EMIT importAsked();
    });
    others->addWidget(show, 1);
    others->addWidget(skip, 1);
    layout->addLayout(others);

    connect(m_crew, &QLineEdit::returnPressed, this, [this] { m_splicer->setFocus(); });
    connect(m_splicer, &QLineEdit::returnPressed, this, [this] { m_job->setFocus(); });
    connect(m_job, &QLineEdit::returnPressed, this, [this] {
        if (!m_closure->isEnabled()) return m_start->click();
        m_closure->setFocus();
        m_closure->selectAll();
    });
    connect(m_closure, &QLineEdit::returnPressed, m_start, &QPushButton::click);
    connect(m_job, &QLineEdit::textChanged, this,
            [this](const QString& label) { m_closure->setEnabled(!label.trimmed().isEmpty()); });
    connect(m_splicer, &QLineEdit::textChanged, this,
            [this](const QString& label) { m_start->setEnabled(!label.trimmed().isEmpty()); });
}

void FirstRun::begin() {
    m_crew->setFocus();
}

Tool FirstRun::splicer() const {
    const Machine& machine = machineIn(*m_kind);
    Tool tool;
    tool.id = m_session.newId<ToolId>();
    tool.label = text::utf8(m_splicer->text().trimmed());
    tool.traits = Splicer{machine.kind, machine.grooves, ArcControl::Manual};
    return tool;
}

Job FirstRun::job() const {
    Job made;
    made.id = m_session.newId<JobId>();
    made.label = text::utf8(m_job->text().trimmed());
    made.rule = sampleRuleFor(machineIn(*m_kind).grooves);
    return made;
}

/// Without a cable it has as many fibres as are spliced.
Closure FirstRun::closureOf(JobId job) const {
    Closure made;
    made.id = m_session.newId<ClosureId>();
    made.job = job;
    made.label = text::utf8(m_closure->text().trimmed());
    return made;
}

void FirstRun::write() {
    m_session.setCrew(text::utf8(m_crew->text().trimmed()));
    std::vector<Entry> entries{Entry(splicer())};
    if (!m_job->text().trimmed().isEmpty()) {
        const Job made = job();
        entries.emplace_back(made);
        if (!m_closure->text().trimmed().isEmpty()) entries.emplace_back(closureOf(made.id));
    }
    if (m_session.save(entries)) Q_EMIT finished();
}

}  // namespace arc::ui
