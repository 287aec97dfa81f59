// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/closeout_page.hpp"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

#include <algorithm>

#include "core/closeout/build.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/closeout/exception_list.hpp"
#include "ui/closeout/histogram.hpp"
#include "ui/closeout/job_tree.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

/// Above this many readings in the book only the job that is looked at is worked out.
constexpr std::uint64_t allJobsUpTo = 200'000;

Mark markOf(closeout::RecordVerdict verdict) {
    switch (verdict) {
        case closeout::RecordVerdict::Accepted:
            return Mark::Steady;
        case closeout::RecordVerdict::AcceptedWithExceptions:
            return Mark::Recovered;
        case closeout::RecordVerdict::Open:
            return Mark::Watch;
        case closeout::RecordVerdict::NotAccepted:
            return Mark::Drifting;
    }
    return Mark::Watch;
}

QString verdictWords(closeout::RecordVerdict verdict) {
    switch (verdict) {
        case closeout::RecordVerdict::Accepted:
            return CloseoutPage::tr("accepted");
        case closeout::RecordVerdict::AcceptedWithExceptions:
            return CloseoutPage::tr("accepted, with exceptions");
        case closeout::RecordVerdict::Open:
            return CloseoutPage::tr("exceptions wait");
        case closeout::RecordVerdict::NotAccepted:
            return CloseoutPage::tr("not accepted");
    }
    return {};
}

using Built = std::vector<std::pair<JobId, Result<closeout::Record>>>;

QStringList usualReasons() {
    return {CloseoutPage::tr("agreed with the client"),
            CloseoutPage::tr("measured from both ends, within the limit"),
            CloseoutPage::tr("spare fibre, not in use"),
            CloseoutPage::tr("calibrated afterwards, losses unchanged")};
}

}  // namespace

CloseoutPage::CloseoutPage(Session& session, QWidget* parent)
    : Page(parent), m_session(session), m_desk(CareDesk::of(session)) {
    build();
    addActions();
    connect(&m_desk, &CareDesk::changed, this, &CloseoutPage::read);
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
    auto* summary = card(m_body);
    inside(summary)->setContentsMargins(theme.px(20), theme.px(12), theme.px(20), theme.px(10));
    auto* top = new QHBoxLayout;
    top->setSpacing(theme.px(12));
    m_mark = new StateMark(Mark::Watch, summary);
    m_mark->setFixedSize(theme.px(22), theme.px(22));
    m_verdict = words(QString(), TextRole::Heading, summary);
    m_rule = words(QString(), TextRole::Small, summary);
    top->addWidget(m_mark);
    top->addWidget(m_verdict);
    top->addStretch();
    top->addWidget(m_rule);
    inside(summary)->addLayout(top);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(26));
    const QString names[] = {tr("spliced"), tr("mean dB"), tr("median dB"), tr("worst dB"), tr("first time")};
    for (int i = 0; i < 5; ++i) {
        auto* one = new QVBoxLayout;
        one->setSpacing(0);
        m_figures[i] = words(QString(), TextRole::Heading, summary);
        m_figures[i]->setAccessibleName(names[i]);
        one->addWidget(m_figures[i]);
        one->addWidget(words(names[i], TextRole::Small, summary));
        one->addStretch();
        row->addLayout(one);
    }
    m_histogram = new Histogram(summary);
    row->addWidget(m_histogram, 1);
    inside(summary)->addLayout(row);
    right->addWidget(summary);

    auto* exceptions = card(m_body);
    inside(exceptions)->setContentsMargins(theme.px(8), theme.px(10), theme.px(8), theme.px(8));
    auto* headRow = new QHBoxLayout;
    headRow->setContentsMargins(theme.px(12), 0, theme.px(8), 0);
    m_exceptionHead = words(QString(), TextRole::Strong, exceptions);
    m_accept = button(tr("Accept  A"), ButtonKind::Usual, exceptions);
    m_reject = button(tr("Reject  X"), ButtonKind::Usual, exceptions);
    headRow->addWidget(m_exceptionHead, 1);
    headRow->addWidget(m_accept);
    headRow->addWidget(m_reject);
    inside(exceptions)->addLayout(headRow);
    m_list = new ExceptionList(this);
    m_view = new QListView(exceptions);
    m_view->setModel(m_list);
    m_view->setItemDelegate(new ExceptionDelegate(*m_list, m_view));
    m_view->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_view->setUniformItemSizes(true);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setAccessibleName(tr("Exceptions"));
    inside(exceptions)->addWidget(m_view, 1);
    m_prompt = new PromptBar(exceptions);
    inside(exceptions)->addWidget(m_prompt);
    right->addWidget(exceptions, 1);
    connect(m_accept, &QPushButton::clicked, this, [this] { decide(closeout::dispositionAccepted.data()); });
    connect(m_reject, &QPushButton::clicked, this, [this] { decide(closeout::dispositionRejected.data()); });
    connect(m_prompt, &PromptBar::closed, this, [this] { m_view->setFocus(); });

    auto* exports = new QHBoxLayout;
    exports->setSpacing(theme.px(10));
    m_final = button(tr("Issue the final record…"), ButtonKind::Primary, m_body, QStringLiteral("seal"));
    m_draft = button(tr("Write a draft…"), ButtonKind::Wide, m_body, QStringLiteral("export"));
    m_verify = button(tr("Verify a record…"), ButtonKind::Wide, m_body, QStringLiteral("check"));
    exports->addWidget(m_final);
    exports->addWidget(m_draft);
    exports->addWidget(m_verify);
    exports->addStretch();
    right->addLayout(exports);
    m_outcome = words(QString(), TextRole::Body, m_body);
    m_outcome->setWordWrap(true);
    m_outcome->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_outcome->hide();
    right->addWidget(m_outcome);
    connect(m_final, &QPushButton::clicked, this, [this] { askWhere(closeout::RecordState::Final); });
    connect(m_draft, &QPushButton::clicked, this, [this] { askWhere(closeout::RecordState::Draft); });
    connect(m_verify, &QPushButton::clicked, this, &CloseoutPage::askWhat);
}

void CloseoutPage::addActions() {
    auto& actions = m_session.actions();
    const auto add = [&](const char* id, const QString& text, const QKeySequence& key, QWidget* owner,
                         std::function<void()> run) {
        actions.add({QString::fromLatin1(id), text, key, {}, Screen::Closeout}, owner, std::move(run));
    };
    add("closeout.accept", tr("Accept the chosen exceptions, with a reason"), Qt::Key_A, m_view,
        [this] { decide(closeout::dispositionAccepted.data()); });
    add("closeout.reject", tr("Reject the chosen exceptions, with a reason"), Qt::Key_X, m_view,
        [this] { decide(closeout::dispositionRejected.data()); });
    add("closeout.draft", tr("Write a draft of the closeout record"), QKeySequence(Qt::CTRL | Qt::Key_D),
        this, [this] { askWhere(closeout::RecordState::Draft); });
    add("closeout.issue", tr("Issue the final closeout record"), QKeySequence(Qt::CTRL | Qt::Key_I), this,
        [this] { askWhere(closeout::RecordState::Final); });
    add("closeout.verify", tr("Verify a closeout record"), QKeySequence(Qt::CTRL | Qt::Key_R), this,
        [this] { askWhat(); });
}

// --- reading -----------------------------------------------------------------------------------------------

void CloseoutPage::read() {
    auto jobs = m_session.take(m_session.book().jobs());
    if (!jobs) return;
    m_jobs = std::move(*jobs);
    m_body->setVisible(!m_jobs.empty());
    m_empty->setVisible(m_jobs.empty());
    m_head->setLine(m_jobs.empty()
                        ? QString()
                        : tr("What is complete, what is out of order, and the record for the client"));
    for (const auto& job : m_jobs) m_stale.insert(job.id);
    m_tree->show(m_jobs, m_records);
    if (m_wanted) {
        m_tree->choose(*m_wanted);
        m_wanted.reset();
    }
    work();
    showJob();
}

void CloseoutPage::work() {
    if (m_working || m_stale.empty() || !m_desk.look()) return;
    std::vector<JobId> ids;
    const auto now = m_tree->job();
    if (now && m_stale.contains(*now)) ids.push_back(*now);
    const auto totals = m_session.book().totals();
    if (totals && totals->readings <= allJobsUpTo)
        for (const auto& id : m_stale)
            if (id != now) ids.push_back(id);
    if (ids.empty()) return;
    m_working = true;
    m_stale.clear();
    m_session.background().run<Built>(
        this, tr("Looking at the jobs"),
        [&session = m_session, ids, look = m_desk.look(), at = m_session.clock().now()](Progress& progress) {
            Built built;
            auto reader = session.reader();
            for (const auto& id : ids) {
                if (progress.stopRequested()) break;
                if (!reader) {
                    built.emplace_back(id, tl::unexpected(reader.error()));
                    break;
                }
                closeout::BuildSettings settings;
                settings.madeAt = at;
                settings.owed =
                    [look](const closeout::Equipment& splicer,
                           const std::vector<CareRecord>&) -> Result<std::vector<care::OwedStretch>> {
                    std::vector<care::OwedStretch> stretches;
                    for (const auto& stretch : look->owed)
                        if (stretch.splicer == splicer.tool.id) stretches.push_back(stretch);
                    return stretches;
                };
                built.emplace_back(id, closeout::build(**reader, id, settings, progress));
            }
            return built;
        },
        [this](Built built) {
            m_working = false;
            for (auto& [id, record] : built) {
                if (record)
                    m_records[id] = std::make_shared<const closeout::Record>(std::move(*record));
                else if (record.error().code != ProblemCode::Cancelled)
                    m_session.tell(record.error());
            }
            m_tree->show(m_jobs, m_records);
            showJob();
            work();
        },
        Shown::No);
}

// --- showing -----------------------------------------------------------------------------------------------

const closeout::Record* CloseoutPage::chosen() const {
    const auto job = m_tree->job();
    if (!job) return nullptr;
    const auto it = m_records.find(*job);
    return it == m_records.end() ? nullptr : it->second.get();
}

void CloseoutPage::showJob() {
    const auto* record = chosen();
    if (!record) {
        m_verdict->setText(m_jobs.empty() ? QString() : tr("looking…"));
        m_mark->setMark(Mark::Learning);
        m_list->show({});
        m_exceptionHead->clear();
        for (auto* figure : m_figures) figure->clear();
        m_histogram->show({}, Loss{0});
        for (auto* one : {m_accept, m_reject, m_draft, m_final}) one->setEnabled(false);
        work();
        return;
    }
    showSummary(*record);
    auto exceptions = record->exceptions;
    if (const auto closure = m_tree->closure()) {
        // Those of one closure; what concerns the whole job or a tool stays with the job.
        std::string label;
        for (const auto& section : record->closures)
            if (section.closure == closure) label = section.label;
        std::erase_if(exceptions, [&](const closeout::Exception& e) { return e.where != label; });
    }
    const auto open = static_cast<std::int64_t>(
        std::ranges::count_if(exceptions, [](const auto& e) { return !closeout::isDecided(e); }));
    m_exceptionHead->setText(
        exceptions.empty() ? tr("No exceptions")
        : open == 0
            ? tr("%1 exceptions, all decided").arg(text::number(static_cast<std::int64_t>(exceptions.size())))
            : tr("%1 exceptions, %2 wait for a disposition")
                  .arg(text::number(static_cast<std::int64_t>(exceptions.size())), text::number(open)));
    const int row = m_view->currentIndex().row();
    m_list->show(std::move(exceptions));
    if (m_list->rowCount() > 0)
        m_view->setCurrentIndex(m_list->index(std::clamp(row, 0, m_list->rowCount() - 1)));
    const bool some = m_list->rowCount() > 0;
    m_accept->setEnabled(some);
    m_reject->setEnabled(some);
    m_draft->setEnabled(true);
    m_final->setEnabled(closeout::openExceptions(*record) == 0);
    m_final->setToolTip(m_final->isEnabled() ? QString() : tr("Every exception needs a disposition first"));
}

void CloseoutPage::showSummary(const closeout::Record& record) {
    m_mark->setMark(markOf(record.verdict));
    m_verdict->setText(
        QStringLiteral("%1 · %2").arg(text::words(record.job.label), verdictWords(record.verdict)));
    setState(m_verdict, stateName(markOf(record.verdict)));
    const auto& rule = record.job.rule;
    const auto issued = m_session.book().issuedRecords(record.job.id);
    m_head->setLine(issued && !issued->empty()
                        ? tr("Final record no. %1 was issued on %2 by %3; a later one supersedes it")
                              .arg(issued->back().number)
                              .arg(text::dayAndClock(issued->back().at), text::words(issued->back().by))
                        : tr("What is complete, what is out of order, and the record for the client"));
    m_rule->setText(tr("limit %1 dB, average %2, ceiling %3")
                        .arg(text::loss(rule.perSplice), text::loss(rule.average), text::loss(rule.ceiling)));
    const closeout::Averages* averages = &record.averages;
    int planned = record.plan ? record.plan->planned : 0;
    int spliced = record.plan ? record.plan->spliced : 0;
    if (const auto closure = m_tree->closure())
        for (const auto& section : record.closures)
            if (section.closure == closure) {
                averages = &section.averages;
                planned = section.completeness ? section.completeness->planned : 0;
                spliced = section.completeness ? section.completeness->spliced : 0;
            }
    const QString none = QStringLiteral("–");
    m_figures[0]->setText(
        planned > 0
            ? tr("%1 of %2").arg(text::number(std::int64_t{spliced}), text::number(std::int64_t{planned}))
            : text::number(static_cast<std::int64_t>(averages->splices)));
    m_figures[1]->setText(averages->meanDb ? text::meanLoss(*averages->meanDb) : none);
    m_figures[2]->setText(averages->medianDb ? text::meanLoss(*averages->medianDb) : none);
    m_figures[3]->setText(averages->worst ? text::loss(*averages->worst) : none);
    m_figures[4]->setText(averages->splices == 0
                              ? none
                              : tr("%1 %").arg(text::number(100.0 * static_cast<double>(averages->firstTime) /
                                                                static_cast<double>(averages->splices),
                                                            1)));
    setState(m_figures[1], averages->meanDb && *averages->meanDb > decibels(rule.average)
                               ? QStringLiteral("drifting")
                               : QString());
    m_histogram->show(record.histogram, rule.perSplice);
}

// --- deciding ----------------------------------------------------------------------------------------------

void CloseoutPage::decide(const char* disposition) {
    const auto* record = chosen();
    if (!record || m_list->rowCount() == 0) return;
    std::vector<closeout::Exception> picked;
    for (const auto& index : m_view->selectionModel()->selectedIndexes())
        picked.push_back(m_list->at(index.row()));
    if (picked.empty()) return finished(tr("Choose the exceptions first."), "watch");
    const bool reject = disposition == closeout::dispositionRejected;
    const QString what =
        picked.size() == 1 ? text::spoken(picked.front().what) : tr("%1 exceptions").arg(picked.size());
    m_prompt->ask(reject ? tr("Reject: %1").arg(what) : tr("Accept: %1").arg(what),
                  {{tr("Name"), text::words(m_session.crew()), {}}, {tr("Reason"), {}, usualReasons()}},
                  reject ? tr("Reject") : tr("Accept"),
                  [this, picked, job = record->job.id,
                   word = std::string(disposition)](const QStringList& answers) -> QString {
                      std::vector<Entry> entries;
                      const Instant now = m_session.clock().now();
                      for (const auto& exception : picked)
                          entries.emplace_back(
                              ExceptionDisposition{m_session.newId<EntryId>(), job, exception.key, word,
                                                   text::utf8(answers[1]), text::utf8(answers[0]), now});
                      if (!m_session.save(entries)) return tr("Not saved. Press Enter to try again.");
                      return {};
                  });
}

// --- exports -----------------------------------------------------------------------------------------------

QString CloseoutPage::outcome() const {
    return m_outcome->text();
}

void CloseoutPage::finished(const QString& words, const char* state) {
    m_outcome->setText(words);
    setState(m_outcome, QString::fromLatin1(state));
    m_outcome->show();
}

void CloseoutPage::askWhere(closeout::RecordState state) {
    const auto* record = chosen();
    if (!record) return;
    if (state == closeout::RecordState::Final && closeout::openExceptions(*record) > 0)
        return finished(tr("Every exception needs a disposition first: choose it, then A or X."), "watch");
    if (state == closeout::RecordState::Final && m_session.crew().empty()) {
        m_prompt->ask(tr("A final record carries the name of who issues it."), {{tr("Name"), {}, {}}},
                      tr("Go on"), [this, state](const QStringList& answers) -> QString {
                          m_session.setCrew(text::utf8(answers[0]));
                          askWhere(state);
                          return {};
                      });
        return;
    }
    chooseFolder(this, tr("Folder in which the record is made"),
                 QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                 [this, state](const QString& folder) { writeTo(folder, state); });
}

void CloseoutPage::writeTo(const QString& folder, closeout::RecordState state) {
    const auto* record = chosen();
    if (!record) return;
    // A label may hold what a folder name may not.
    QString name = text::words(record->job.label);
    for (auto& c : name)
        if (!c.isLetterOrNumber() && c != QLatin1Char('-') && c != QLatin1Char('_')) c = QLatin1Char('_');
    const auto issued = m_session.book().issuedRecords(record->job.id);
    name = state == closeout::RecordState::Draft
               ? QStringLiteral("closeout-%1-draft").arg(name)
               : QStringLiteral("closeout-%1-no%2").arg(name).arg(issued ? issued->size() + 1 : 1);
    const std::filesystem::path target(QDir(folder).filePath(name).toStdU16String());
    for (auto* one : {m_draft, m_final}) one->setEnabled(false);
    finished(tr("Writing the record…"), "learning");
    using Answer = Result<std::filesystem::path>;
    m_session.background().run<Answer>(
        this,
        state == closeout::RecordState::Final ? tr("Issuing the closeout record") : tr("Writing the draft"),
        [&session = m_session, id = record->job.id, target, state,
         by = m_session.crew()](Progress& progress) -> Answer {
            auto& bench = session.workbench();
            return state == closeout::RecordState::Final ? bench.issueCloseout(id, target, by, progress)
                                                         : bench.writeCloseout(id, target, progress);
        },
        [this](Answer answer) {
            if (answer) {
                finished(tr("Written: %1. A stranger can verify it.")
                             .arg(QString::fromStdString(answer->string())),
                         "steady");
                m_session.noteChange();
            } else {
                QString said = text::spoken(answer.error());
                if (!said.isEmpty()) said[0] = said[0].toUpper();
                finished(said, answer.error().code == ProblemCode::Cancelled ? "watch" : "drifting");
            }
            showJob();
        });
}

void CloseoutPage::askWhat() {
    chooseFolder(this, tr("Closeout record to verify"),
                 QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                 [this](const QString& folder) { verifyAt(folder); });
}

void CloseoutPage::verifyAt(const QString& path) {
    finished(tr("Verifying…"), "learning");
    using Answer = Result<std::string>;
    m_session.background().run<Answer>(
        this, tr("Verifying"),
        [&session = m_session, place = std::filesystem::path(path.toStdU16String())](
            Progress& progress) -> Answer { return session.workbench().verify(place, progress); },
        [this](Answer answer) {
            QString said = answer ? text::spoken(*answer) : text::spoken(answer.error());
            if (!said.isEmpty()) said[0] = said[0].toUpper();
            finished(said, answer ? "steady" : "drifting");
        });
}

// --- page --------------------------------------------------------------------------------------------------

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

bool CloseoutPage::settled() const {
    return !m_working && !m_desk.pending() && (m_stale.empty() || m_jobs.empty() || chosen());
}

}  // namespace arc::ui
