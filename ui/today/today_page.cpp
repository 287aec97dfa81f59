// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/today_page.hpp"

#include <QPushButton>
#include <QStackedWidget>

#include <algorithm>
#include <set>

#include "core/work/attempts.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/text/format.hpp"
#include "ui/today/import_panel.hpp"
#include "ui/today/job_sheet.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/set_up_panel.hpp"
#include "ui/today/span_sheet.hpp"
#include "ui/today/splice_search.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"

namespace arc::ui {

namespace {

struct JobSum {
    Loss sum;
    int count = 0;
};

/// What the pad shows of the world around its closure.
struct Around {
    JobSum elsewhere;
    std::string span;  ///< label of the span the closure is on; may be empty
    PadMarks marks;
};

/// The closures that are accepted together with this one: its span, what is on no span, or the whole job.
struct Together {
    std::string span;
    std::set<ClosureId> mine, placed;
    [[nodiscard]] bool holds(const std::optional<ClosureId>& closure) const {
        return mine.empty() ? !closure || !placed.contains(*closure) : closure && mine.contains(*closure);
    }
};

Together acceptedTogether(const std::vector<Span>& spans, std::optional<ClosureId> here) {
    Together together;
    for (const auto& span : spans) {
        together.placed.insert(span.closures.begin(), span.closures.end());
        if (!together.mine.empty() || !here || std::ranges::find(span.closures, *here) == span.closures.end())
            continue;
        together.mine.insert(span.closures.begin(), span.closures.end());
        together.span = span.label;
    }
    return together;
}

/// Losses that stand elsewhere in the span, for the average so far.
Result<JobSum> standingElsewhere(Logbook& reader, JobId job, std::optional<ClosureId> here,
                                 const Together& together) {
    SpliceFilter filter;
    filter.job = job;
    auto rows = allRows(reader, filter);
    if (!rows) return tl::unexpected(rows.error());
    std::erase_if(*rows, [&](const SpliceRow& row) {
        return (here && row.arc.closure == *here) || !together.holds(row.arc.closure);
    });
    JobSum sum{};
    for (const auto& chain : attemptChains(*rows)) {
        if (!chain.standing) continue;
        sum.sum = sum.sum + (*rows)[*chain.standing].reading.loss;
        ++sum.count;
    }
    return sum;
}

Result<Around> lookAround(Logbook& reader, Workbench& workbench, JobId job, std::optional<ClosureId> here) {
    const auto spans = reader.spans(job);
    if (!spans) return tl::unexpected(spans.error());
    const auto together = acceptedTogether(*spans, here);
    auto sum = standingElsewhere(reader, job, here, together);
    if (!sum) return tl::unexpected(sum.error());
    Around around{*sum, together.span, {}};
    if (!here) return around;
    const auto losses = reader.measuredLosses(job);
    if (!losses) return tl::unexpected(losses.error());
    // A program that does not hand over has none.
    const auto edits = workbench.concurrentEdits();
    around.marks = padMarks(*here, *losses, edits ? *edits : std::vector<ConcurrentEdits>{});
    return around;
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
    connect(&m_session, &Session::crewChanged, this, [this] {
        if (!m_here || !m_sitting.operatorName.empty()) return;
        m_here->setUp.operatorName = m_session.crew();
        m_pad->changeSetUp(m_here->setUp);
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
    actions.add({QStringLiteral("today.spans"), tr("The job: spans, averages, link budget, closures"),
                 Qt::Key_L, QStringLiteral("find"), Screen::Today},
                m_pad, [this] { openSpans(); });
    actions.add({QStringLiteral("today.attach"), tr("Photos and notes of the splice or the closure"),
                 Qt::Key_A, QStringLiteral("add"), Screen::Today},
                m_pad, [this] { attach(); });
    // The empty page, where there is no pad, begins with them too.
    for (const char* id : {"today.setup", "today.import", "today.search", "today.job"})
        m_empty->addAction(actions.find(QLatin1String(id)));
}

// --- reading -----------------------------------------------------------------------------------------------

void TodayPage::load() {
    auto sitting = completed(m_sitting, m_session.book());
    if (!sitting) return m_session.tell(sitting.error());
    m_sitting = *sitting;
    m_here.reset();
    if (!m_sitting.splicer || (!m_sitting.job && !m_sitting.closure)) {
        m_toKit->setVisible(!m_sitting.splicer);
        // An import brings splices and no job: what came of it stays in sight.
        if (m_stack->currentWidget() == m_work) m_stack->setCurrentWidget(m_empty);
        showHead();
        return;
    }
    auto here = desk(m_sitting, m_session.book());
    if (!here) return m_session.tell(here.error());
    m_here = std::move(*here);
    if (m_here->setUp.operatorName.empty()) m_here->setUp.operatorName = m_session.crew();
    m_pad->setMarks({});
    m_pad->setPad(pad::Pad(m_here->setUp, m_here->fibres, m_here->arcs));
    m_pad->restore(rememberedDraft(m_here->setUp.closure));
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
    m_session.background().run<Result<Around>>(
        this, tr("Average of the job"),
        [&session = m_session, job = m_here->job->id,
         closure = m_sitting.closure](Progress&) -> Result<Around> {
            auto reader = session.reader();
            if (!reader) return tl::unexpected(reader.error());
            return lookAround(**reader, session.workbench(), job, closure);
        },
        [this, closure = m_sitting.closure](Result<Around> around) {
            --m_averageJobs;
            if (!around || !m_here || m_sitting.closure != closure) return;
            m_here->setUp.othersSum = around->elsewhere.sum;
            m_here->setUp.othersCount = around->elsewhere.count;
            m_here->span = around->span;
            m_here->twice = m_here->closure && around->marks.records.contains(m_here->closure->id.uuid);
            m_pad->setMarks(std::move(around->marks));
            m_pad->changeAverage(around->elsewhere.sum, around->elsewhere.count);
            showHead();
        },
        Shown::No);
}

// --- sheets ------------------------------------------------------------------------------------------------

void TodayPage::openSetUp() {
    const auto filled = m_setUp->fill(m_session.book(), m_sitting, m_session.crew(), m_session.clock().now());
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

void TodayPage::openSpans() {
    if (!m_here || !m_here->job) return;
    m_head->setTitle(tr("Job %1: spans and closures").arg(text::words(m_here->job->label)));
    m_head->setLine(
        tr("A span is accepted as one: its average, its link budget. A job without spans is one span"));
    m_stack->setCurrentWidget(m_spans);
    m_spans->begin(m_here->job->id);
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

std::optional<Subject> TodayPage::subject() {
    if (m_stack->currentWidget() == m_search) return m_search->subject();
    const auto& pad = m_pad->pad();
    if (m_stack->currentWidget() != m_work || !pad || pad->current() >= pad->rows().size())
        return std::nullopt;
    const auto& row = pad->rows()[pad->current()];
    if (row.attempts.empty()) return std::nullopt;
    return Subject{row.attempts.back().arc.uuid, tr("fibre %1").arg(text::words(row.fibre.nameA))};
}

bool TodayPage::settled() const {
    return !m_desk.pending() && m_averageJobs == 0 && m_search->settled() && m_spans->settled();
}

}  // namespace arc::ui
