// SPDX-License-Identifier: GPL-3.0-or-later
// What lies where on the Today page.
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/care/care_desk.hpp"
#include "ui/care/queue_row.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/import_panel.hpp"
#include "ui/today/job_sheet.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/machine_card.hpp"
#include "ui/today/set_up_panel.hpp"
#include "ui/today/span_sheet.hpp"
#include "ui/today/splice_search.hpp"
#include "ui/today/today_page.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

void TodayPage::build() {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(Gap::Edge), theme.px(18), theme.px(Gap::Edge), theme.px(24));
    box->setSpacing(theme.px(12));
    m_head = new PageHead(this);
    auto* setUp = button(tr("Set-up  S"), ButtonKind::Usual, m_head);
    auto* import = button(tr("Import  I"), ButtonKind::Usual, m_head, QStringLiteral("import"));
    auto* search = button(tr("All splices  /"), ButtonKind::Usual, m_head, QStringLiteral("find"));
    for (auto* one : {setUp, import, search}) m_head->addControl(one);
    connect(setUp, &QPushButton::clicked, this, &TodayPage::openSetUp);
    connect(import, &QPushButton::clicked, this, &TodayPage::openImport);
    connect(search, &QPushButton::clicked, this, &TodayPage::openSearch);
    box->addWidget(m_head);
    m_stack = new QStackedWidget(this);
    box->addWidget(m_stack, 1);
    m_work = makeWork();
    m_stack->addWidget(m_work);

    m_empty = new EmptyState(
        QStringLiteral("today"), tr("Nothing to splice yet"),
        tr("A job tells which fibres meet in which closure and what loss its contract accepts. "
           "Make one, or import a splice log that a splicer exported."),
        this);
    auto* job = m_empty->addButton(tr("Make a job"), QStringLiteral("add"));
    auto* log = m_empty->addButton(tr("Import a splice log"), QStringLiteral("import"));
    m_toKit = m_empty->addButton(tr("Put the splicers into the kit"), QStringLiteral("kit"));
    connect(m_toKit, &QPushButton::clicked, this, [this] { m_session.go(Screen::Kit); });
    connect(job, &QPushButton::clicked, this, &TodayPage::openJobSheet);
    connect(log, &QPushButton::clicked, this, &TodayPage::openImport);
    m_stack->addWidget(m_empty);

    m_setUp = new SetUpPanel(this);
    m_stack->addWidget(m_setUp);
    connect(m_setUp, &SetUpPanel::left, this, &TodayPage::backToWork);
    connect(m_setUp, &SetUpPanel::newJobAsked, this, &TodayPage::openJobSheet);
    connect(m_setUp, &SetUpPanel::accepted, this, [this](const Sitting& sitting) {
        m_sitting = sitting;
        remember(m_sitting);
        load();
        backToWork();
    });
    m_jobSheet = new JobSheet(m_session, this);
    m_stack->addWidget(m_jobSheet);
    connect(m_jobSheet, &JobSheet::left, this, &TodayPage::backToWork);
    connect(m_jobSheet, &JobSheet::made, this, [this](JobId madeJob, std::optional<ClosureId> madeClosure) {
        if (madeClosure || m_sitting.job != madeJob) m_sitting.closure = madeClosure;
        m_sitting.job = madeJob;
        remember(m_sitting);
        load();
        backToWork();
    });
    m_import = new ImportPanel(m_session, this);
    m_stack->addWidget(m_import);
    connect(m_import, &ImportPanel::left, this, &TodayPage::backToWork);
    m_spans = new SpanSheet(m_session, this);
    m_stack->addWidget(m_spans);
    connect(m_spans, &SpanSheet::left, this, [this] {
        readJobAverage();
        backToWork();
    });
    m_search = new SpliceSearch(m_session, this);
    m_stack->addWidget(m_search);
    connect(m_search, &SpliceSearch::left, this, &TodayPage::backToWork);
}

QWidget* TodayPage::makeWork() {
    const Theme theme = currentTheme();
    auto* work = new QWidget(this);
    auto* columns = new QHBoxLayout(work);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(theme.px(Gap::Large));
    auto* left = new QVBoxLayout;
    left->setSpacing(theme.px(10));
    columns->addLayout(left, 8);

    m_hold = new QFrame(work);
    m_hold->setProperty("ground", QStringLiteral("hold"));
    auto* hold = new QHBoxLayout(m_hold);
    hold->setContentsMargins(theme.px(16), theme.px(8), theme.px(10), theme.px(8));
    hold->setSpacing(theme.px(12));
    auto* mark = new StateMark(Mark::Drifting, m_hold);
    mark->setFixedSize(theme.px(22), theme.px(22));
    hold->addWidget(mark);
    auto* said = new QVBoxLayout;
    said->setSpacing(0);
    m_holdTitle = words(QString(), TextRole::Strong, m_hold);
    m_holdWhy = words(QString(), TextRole::Small, m_hold);
    m_holdWhy->setWordWrap(true);
    said->addWidget(m_holdTitle);
    said->addWidget(m_holdWhy);
    hold->addLayout(said, 1);
    auto* start = button(tr("Start the care"), ButtonKind::Usual, m_hold);
    connect(start, &QPushButton::clicked, this, [this] {
        const auto look = m_desk.look();
        if (!look || !m_sitting.splicer) return;
        const auto holds = look->openHolds(*m_sitting.splicer);
        if (!holds.empty()) care(holds.front());
    });
    hold->addWidget(start);
    left->addWidget(m_hold);
    m_hold->hide();

    m_pad = new LossPad(m_session, work);
    left->addWidget(m_pad, 1);
    connect(m_pad, &LossPad::writeAsked, this, &TodayPage::write);
    connect(m_pad, &LossPad::typedChanged, this, &TodayPage::saveDraft);
    connect(m_pad, &LossPad::moved, this, &TodayPage::showHead);
    connect(m_pad, &LossPad::closureAsked, this, &TodayPage::openJobSheet);

    auto* right = new QVBoxLayout;
    right->setSpacing(theme.px(14));
    columns->addLayout(right, 5);
    m_machine = new MachineCard(work);
    right->addWidget(m_machine);
    auto* queues = new QFrame(work);
    queues->setProperty("ground", QStringLiteral("card"));
    queues->setAccessibleName(tr("Queues"));
    auto* list = new QVBoxLayout(queues);
    list->setContentsMargins(theme.px(8), theme.px(8), theme.px(8), theme.px(8));
    list->setSpacing(theme.px(2));
    for (int i = 0; i < 4; ++i) {
        if (i > 0) list->addWidget(line(queues));
        auto* row = new QueueRow(queues);
        connect(row, &QueueRow::clicked, this, [this, i] {
            for (const auto& item : m_top)
                if (static_cast<int>(item.queue) == i) return care(item);
        });
        m_queues.push_back(row);
        list->addWidget(row, 1);
    }
    right->addWidget(queues, 1);
    showQueues();
    return work;
}

}  // namespace arc::ui
