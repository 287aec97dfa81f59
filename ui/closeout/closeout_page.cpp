// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/closeout_page.hpp"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/closeout/issued.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/closeout/exception_panel.hpp"
#include "ui/closeout/record_bar.hpp"
#include "ui/closeout/summary_card.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

CloseoutPage::CloseoutPage(Session& session, QWidget* parent)
    : Page(parent),
      m_session(session),
      m_desk(CareDesk::of(session)),
      m_records(session, CareDesk::of(session), this) {
    build();
    connect(&m_desk, &CareDesk::changed, this, &CloseoutPage::read);
    connect(&m_records, &JobRecords::changed, this, [this] {
        m_tree->show(m_jobs, m_records.known(), m_issued);
        showJob();
    });
    read();
}

void CloseoutPage::build() {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(Gap::Edge), theme.px(18), theme.px(Gap::Edge), theme.px(24));
    box->setSpacing(theme.px(12));
    m_head = new PageHead(this);
    m_head->setTitle(tr("Closeout"));
    box->addWidget(m_head);
    m_body = new QWidget(this);
    box->addWidget(m_body, 1);
    m_empty = new EmptyState(
        QStringLiteral("closeout"), tr("No job yet"),
        tr("A job that was spliced is closed out here: what is complete, what is out of order and who "
           "decided about it, and the record a stranger can verify."),
        this);
    auto* toToday = m_empty->addButton(tr("Make a job on Today"), QStringLiteral("today"));
    connect(toToday, &QPushButton::clicked, this, [this] { m_session.go(Screen::Today); });
    box->addWidget(m_empty, 1);

    auto* columns = new QHBoxLayout(m_body);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(theme.px(Gap::Large));
    auto* trees = card(m_body);
    inside(trees)->setContentsMargins(theme.px(6), theme.px(8), theme.px(6), theme.px(8));
    m_tree = new JobTree(trees);
    inside(trees)->addWidget(m_tree);
    columns->addWidget(trees, 5);
    connect(m_tree, &JobTree::chosen, this, &CloseoutPage::showJob);

    auto* right = new QVBoxLayout;
    right->setSpacing(theme.px(14));
    columns->addLayout(right, 9);
    m_summary = new SummaryCard(m_body);
    right->addWidget(m_summary);
    m_exceptions = new ExceptionPanel(m_session, m_body);
    right->addWidget(m_exceptions, 1);
    m_bar = new RecordBar(m_session, m_body);
    m_bar->addActions(this);
    right->addWidget(m_bar);
}

void CloseoutPage::read() {
    auto jobs = m_session.take(m_session.book().jobs());
    if (!jobs) return;
    m_jobs = std::move(*jobs);
    m_issued.clear();
    for (const auto& job : m_jobs)
        if (auto issued = m_session.take(m_session.book().issuedRecords(job.id)))
            m_issued[job.id] = std::move(*issued);
    m_body->setVisible(!m_jobs.empty());
    m_empty->setVisible(m_jobs.empty());
    m_records.renew(m_jobs);
    m_tree->show(m_jobs, m_records.known(), m_issued);
    if (m_wanted) {
        m_tree->choose(*m_wanted);
        m_wanted.reset();
    }
    showJob();
}

void CloseoutPage::showJob() {
    const auto job = m_tree->job();
    std::shared_ptr<const closeout::Record> record;
    if (job)
        if (const auto it = m_records.known().find(*job); it != m_records.known().end()) record = it->second;
    if (record)
        m_summary->show(*record, m_tree->closure());
    else
        m_summary->showNothing(m_jobs.empty() ? QString() : tr("looking…"));
    m_exceptions->show(record, m_tree->closure());
    m_bar->show(record);
    sayHead();
    // A record of a big job takes long; on another page nobody waits for it.
    if (isVisible()) m_records.work(job);
}

void CloseoutPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    m_records.work(m_tree->job());
}

void CloseoutPage::sayHead() {
    const auto job = m_tree->job();
    const auto found = job ? m_issued.find(*job) : m_issued.end();
    if (m_jobs.empty()) return m_head->setLine({});
    if (found == m_issued.end() || found->second.empty())
        return m_head->setLine(tr("What is complete, what is out of order, and the record for the client"));
    const auto& issued = found->second;
    const int latest = *closeout::latestNumber(issued);
    const auto twice = closeout::numbersGivenTwice(issued);
    if (!twice.empty() && twice.back() == latest)
        return m_head->setLine(
            tr("Record no. %1 was issued twice, on two laptops. Issue the record again: it gets no. %2 and "
               "supersedes both.")
                .arg(latest)
                .arg(latest + 1));
    for (const auto& one : issued)
        if (one.number == latest)
            m_head->setLine(tr("Final record no. %1 was issued on %2 by %3; a later one supersedes it")
                                .arg(latest)
                                .arg(text::dayAndClock(one.at), text::words(one.by)));
}

void CloseoutPage::open(const Target& target) {
    if (!target.job) return;
    m_wanted = target.job;
    if (!m_jobs.empty()) {
        m_tree->choose(*target.job);
        m_wanted.reset();
    }
}

QWidget* CloseoutPage::firstFocus() {
    return m_jobs.empty() ? static_cast<QWidget*>(m_empty) : m_tree;
}

std::optional<Subject> CloseoutPage::subject() {
    if (auto chosen = m_exceptions->subject()) return chosen;
    return m_tree->subject();
}

bool CloseoutPage::settled() const {
    const auto job = m_tree->job();
    return !m_records.working() && !m_desk.pending() &&
           (m_jobs.empty() || !m_records.stale() || (job && m_records.of(*job)));
}

}  // namespace arc::ui
