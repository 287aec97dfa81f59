// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/today_page.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "core/work/attempts.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/care/queue_row.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/import_panel.hpp"
#include "ui/today/job_sheet.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/machine_card.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/today/set_up_panel.hpp"
#include "ui/today/splice_search.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

struct JobSum {
    Loss sum;
    int count = 0;
};

/// Losses that stand elsewhere in the job, for the average so far.
Result<JobSum> standingElsewhere(Logbook& reader, JobId job, std::optional<ClosureId> here) {
    SpliceFilter filter;
    filter.job = job;
    auto rows = allRows(reader, filter);
    if (!rows) return tl::unexpected(rows.error());
    std::erase_if(*rows, [&](const SpliceRow& row) { return here && row.arc.closure == *here; });
    JobSum sum{};
    for (const auto& chain : attemptChains(*rows)) {
        if (!chain.standing) continue;
        sum.sum = sum.sum + (*rows)[*chain.standing].reading.loss;
        ++sum.count;
    }
    return sum;
}

QStringList overrideReasons() {
    return {TodayPage::tr("last ribbon of the closure"),
            TodayPage::tr("the client waits, looked at by the supervisor"),
            TodayPage::tr("done, not yet written down")};
}

}  // namespace

TodayPage::TodayPage(Session& session, QWidget* parent)
    : Page(parent), m_session(session), m_desk(CareDesk::of(session)), m_sitting(rememberedSitting()) {
    build();
    addActions();
    connect(&m_session, &Session::bookChanged, this, [this] {
        if (m_saving == Saving::Own) return;
        if (m_here)
            reloadPad();
        else
            load();
    });
    connect(&m_session, &Session::driftReady, this, &TodayPage::showMachine);
    connect(&m_desk, &CareDesk::changed, this, [this] {
        m_overridden.clear();
        showMachine();
        showQueues();
        showHold();
    });
    load();
}

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
    auto* kit = m_empty->addButton(tr("Put the splicers into the kit"), QStringLiteral("kit"));
    auto* job = m_empty->addButton(tr("Make a job"), QStringLiteral("add"));
    auto* log = m_empty->addButton(tr("Import a splice log"), QStringLiteral("import"));
    connect(kit, &QPushButton::clicked, this, [this] { m_session.go(Screen::Kit); });
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
    connect(m_jobSheet, &JobSheet::made, this, [this](JobId madeJob, ClosureId madeClosure) {
        m_sitting.job = madeJob;
        m_sitting.closure = madeClosure;
        remember(m_sitting);
        load();
        backToWork();
    });
    m_import = new ImportPanel(m_session, this);
    m_stack->addWidget(m_import);
    connect(m_import, &ImportPanel::left, this, &TodayPage::backToWork);
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

void TodayPage::addActions() {
    auto& actions = m_session.actions();
    actions.add({QStringLiteral("today.setup"),
                 tr("Set up: splicer, job, closure, mode"),
                 Qt::Key_S,
                 {},
                 Screen::Today},
                m_pad, [this] { openSetUp(); });
    actions.add({QStringLiteral("today.import"), tr("Import a splice log, events or measured losses"),
                 Qt::Key_I, QStringLiteral("import"), Screen::Today},
                m_pad, [this] { openImport(); });
    actions.add({QStringLiteral("today.search"), tr("Search all splices"), Qt::Key_Slash,
                 QStringLiteral("find"), Screen::Today},
                m_pad, [this] { openSearch(); });
    actions.add({QStringLiteral("today.job"), tr("Make a job, a cable or a closure"), Qt::Key_J,
                 QStringLiteral("add"), Screen::Today},
                m_pad, [this] { openJobSheet(); });
}

// --- reading -----------------------------------------------------------------------------------------------

void TodayPage::load() {
    auto sitting = completed(m_sitting, m_session.book());
    if (!sitting) return m_session.tell(sitting.error());
    m_sitting = *sitting;
    m_here.reset();
    if (!m_sitting.splicer || (!m_sitting.job && !m_sitting.closure)) {
        m_stack->setCurrentWidget(m_empty);
        showHead();
        return;
    }
    auto here = desk(m_sitting, m_session.book());
    if (!here) return m_session.tell(here.error());
    m_here = std::move(*here);
    m_pad->setPad(pad::Pad(m_here->setUp, m_here->fibres, m_here->arcs));
    m_pad->restore(rememberedDraft());
    if (m_stack->currentWidget() == m_empty) m_stack->setCurrentWidget(m_work);
    readJobAverage();
    showHead();
    showMachine();
    showQueues();
    showHold();
}

void TodayPage::reloadPad() {
    if (!m_here || !m_here->closure) return;
    SpliceFilter filter;
    filter.closure = m_here->closure->id;
    const auto rows = allRows(m_session.book(), filter);
    if (!rows) return m_session.tell(rows.error());
    m_pad->reload(arcsOf(*rows));
    readJobAverage();
}

void TodayPage::readJobAverage() {
    if (!m_here || !m_here->job) return;
    ++m_averageJobs;
    m_session.background().run<Result<JobSum>>(
        this, tr("Average of the job"),
        [&session = m_session, job = m_here->job->id,
         closure = m_sitting.closure](Progress&) -> Result<JobSum> {
            auto reader = session.reader();
            if (!reader) return tl::unexpected(reader.error());
            return standingElsewhere(**reader, job, closure);
        },
        [this, closure = m_sitting.closure](Result<JobSum> sum) {
            --m_averageJobs;
            if (!sum || !m_here || m_sitting.closure != closure) return;
            m_here->setUp.othersSum = sum->sum;
            m_here->setUp.othersCount = sum->count;
            m_pad->changeAverage(sum->sum, sum->count);
        },
        Shown::No);
}

// --- showing -----------------------------------------------------------------------------------------------

void TodayPage::showHead() {
    if (m_stack->currentWidget() != m_work && m_stack->currentWidget() != m_empty) return;
    if (!m_here || !m_pad->pad()) {
        m_head->setTitle(tr("Today"));
        m_head->setLine({});
        return;
    }
    const auto& pad = *m_pad->pad();
    QStringList title, line;
    if (m_here->closure) title << tr("Closure %1").arg(text::words(m_here->closure->label));
    if (!pad.rows().empty()) {
        const auto index = static_cast<int>(pad.current());
        if (m_here->closure && m_here->closure->trays > 1 && m_here->closure->perTray > 0)
            title << tr("tray %1").arg(index / m_here->closure->perTray + 1);
        const int number = pad.rows()[pad.current()].fibre.number;
        const int size = m_here->cableA ? m_here->cableA->unitSize : 12;
        const bool ribbon =
            m_here->cableA ? m_here->cableA->unit == FibreUnit::Ribbon : pad.setUp().fibresPerArc > 1;
        title << (ribbon ? tr("ribbon %1") : tr("tube %1")).arg((number - 1) / size + 1);
    }
    if (title.isEmpty()) title << tr("No closure chosen");
    m_head->setTitle(title.join(QStringLiteral(" · ")));
    if (m_here->job)
        line << (m_here->job->title.empty()
                     ? tr("Job %1").arg(text::words(m_here->job->label))
                     : QStringLiteral("%1 → %2").arg(text::words(m_here->job->title),
                                                     tr("job %1").arg(text::words(m_here->job->label))));
    line << tr("%1 fibres, %2 done").arg(pad.rows().size()).arg(pad.done());
    if (pad.open() > 0)
        line << tr("%n to re-splice", nullptr, static_cast<int>(pad.open()))
                    .replace(QLatin1String("%n"), QString::number(pad.open()));
    line << tr("limit %1 dB, average %2")
                .arg(text::loss(pad.setUp().rule.perSplice), text::loss(pad.setUp().rule.average));
    m_head->setLine(line.join(QStringLiteral(" · ")));
}

void TodayPage::showMachine() {
    if (!m_here) return m_machine->clear();
    const auto drift = m_session.drift();
    const auto look = m_desk.look();
    m_machine->setMachine(m_here->splicer, drift ? drift->reportOf(m_here->splicer.id) : nullptr,
                          stratumKey(m_sitting.mode, m_here->setUp.fibresPerArc),
                          look ? look->lifeOf(m_here->splicer.id) : nullptr, m_session.clock().now());
}

void TodayPage::showQueues() {
    m_top.clear();
    const auto look = m_desk.look();
    for (std::size_t q = 0; q < m_queues.size(); ++q) {
        const auto queue = static_cast<care::Queue>(q);
        std::vector<const care::DueItem*> items;
        if (look)
            for (const auto& item : look->items)
                if (item.queue == queue) items.push_back(&item);
        // What concerns the tools in hand comes first.
        std::ranges::stable_partition(items, [&](const care::DueItem* item) {
            return item->tool == m_sitting.splicer || item->tool == m_sitting.cleaver;
        });
        if (items.empty()) {
            m_queues[q]->setEmpty(queue);
            continue;
        }
        m_top.push_back(*items.front());
        m_queues[q]->setItem(*items.front(), static_cast<int>(items.size()) - 1);
    }
}

void TodayPage::showHold() {
    const auto look = m_desk.look();
    std::vector<care::DueItem> holds;
    if (look && m_sitting.splicer) holds = look->openHolds(*m_sitting.splicer);
    std::erase_if(holds, [this](const care::DueItem& item) { return m_overridden.contains(item.key); });
    m_hold->setVisible(!holds.empty());
    if (holds.empty()) return;
    m_holdTitle->setText(tr("Hold: %1").arg(text::spoken(holds.front().title)));
    QString why = text::spoken(holds.front().why);
    if (!holds.front().otherwise.empty()) why += QStringLiteral(". ") + text::spoken(holds.front().otherwise);
    m_holdWhy->setText(why);
}

// --- writing -----------------------------------------------------------------------------------------------

void TodayPage::write(const pad::Write& write) {
    if (!m_hold->isHidden()) return askOverride(write);
    m_saving = Saving::Own;
    const bool saved = m_session.save(write.entries, Undo::Offered, write.opposite, text::words(write.text));
    m_saving = Saving::No;
    if (!saved) {
        m_pad->tell(Problem{ProblemCode::Unavailable, "not saved; what you typed is still here", "",
                            "Press Enter to try again"});
        return;
    }
    m_pad->written(write);
}

void TodayPage::askOverride(const pad::Write& write) {
    const auto look = m_desk.look();
    if (!look || !m_sitting.splicer) return;
    const auto holds = look->openHolds(*m_sitting.splicer);
    m_pad->askPrompt(
        tr("%1. Going on is written into the record. Who goes on, and why?").arg(m_holdTitle->text()),
        {{tr("Name"),
          text::words(m_sitting.operatorName.empty() ? m_session.crew() : m_sitting.operatorName),
          {}},
         {tr("Reason"), {}, overrideReasons()}},
        tr("Go on"), [this, holds, write](const QStringList& answers) -> QString {
            std::vector<Entry> entries;
            for (const auto& item : holds) {
                if (m_overridden.contains(item.key)) continue;
                entries.emplace_back(HoldOverride{m_session.newId<EntryId>(), item.tool, item.key,
                                                  text::utf8(answers[0]), text::utf8(answers[1]),
                                                  m_session.clock().now()});
            }
            m_saving = Saving::Own;
            const bool saved = m_session.save(entries, Undo::No);
            m_saving = Saving::No;
            if (!saved) return tr("Not saved. Press Enter to try again.");
            for (const auto& item : holds) m_overridden.insert(item.key);
            showHold();
            this->write(write);
            return {};
        });
}

void TodayPage::saveDraft() {
    if (m_here) remember(m_pad->draft());
}

void TodayPage::care(const care::DueItem& item) {
    Target target;
    target.tool = item.tool;
    target.action = item.action;
    target.answers = {item.key};
    m_session.go(Screen::Care, target);
}

// --- sheets ------------------------------------------------------------------------------------------------

void TodayPage::openSetUp() {
    const auto filled = m_setUp->fill(m_session.book(), m_sitting, m_session.clock().now());
    if (!filled) return m_session.tell(filled.error());
    m_head->setTitle(tr("Set-up"));
    m_head->setLine(tr("Job, closure, tools and the air around: every reading carries them"));
    m_stack->setCurrentWidget(m_setUp);
    m_setUp->begin();
}

void TodayPage::openJobSheet() {
    m_head->setTitle(tr("Make a job"));
    m_head->setLine(tr("A job has cables and closures; the splice plan says which fibre meets which"));
    m_jobSheet->begin(m_sitting.job);
    m_stack->setCurrentWidget(m_jobSheet);
}

void TodayPage::openImport() {
    m_head->setTitle(tr("Import"));
    m_head->setLine(
        tr("Every row lands or is set aside with its reason; the same file twice changes nothing"));
    m_import->begin();
    m_stack->setCurrentWidget(m_import);
}

void TodayPage::openSearch() {
    m_head->setTitle(tr("All splices"));
    m_head->setLine({});
    m_stack->setCurrentWidget(m_search);
    m_search->begin();
}

void TodayPage::backToWork() {
    if (!m_here) load();
    m_stack->setCurrentWidget(m_here ? m_work : static_cast<QWidget*>(m_empty));
    showHead();
    if (m_here) m_pad->setFocus(Qt::OtherFocusReason);
}

void TodayPage::open(const Target& target) {
    if (target.job || target.closure || target.tool) {
        if (target.job) m_sitting.job = target.job;
        if (target.job) m_sitting.closure = target.closure;
        if (target.tool && target.tool != m_sitting.splicer) {
            const auto arc = m_session.book().lastArc(*target.tool);
            m_sitting.splicer = target.tool;
            m_sitting.cleaver.reset();
            if (arc && *arc) {
                m_sitting.mode = (*arc)->mode;
                m_sitting.fibresPerArc = (*arc)->channels;
            }
        }
        load();
    }
    backToWork();
}

QWidget* TodayPage::firstFocus() {
    return m_here ? static_cast<QWidget*>(m_pad) : m_empty;
}

bool TodayPage::settled() const {
    return !m_desk.pending() && m_averageJobs == 0;
}

}  // namespace arc::ui
