// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/drift_page.hpp"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/care/care_desk.hpp"
#include "ui/drift/baseline_bar.hpp"
#include "ui/drift/chart_column.hpp"
#include "ui/drift/chart_export.hpp"
#include "ui/drift/chart_list.hpp"
#include "ui/drift/readings_table.hpp"
#include "ui/drift/signal_panel.hpp"
#include "ui/drift/splicer_chips.hpp"
#include "ui/drift/words.hpp"
#include "ui/text/format.hpp"
#include "ui/widgets/ask_line.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr int panelWidth = 366;

/// The stratum a person most likely wants: the worst one, then the one used most.
std::size_t likelyStratum(const drift::SplicerReport& report) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < report.strata.size(); ++i) {
        const auto& a = report.strata[i];
        const auto& b = report.strata[best];
        const bool aLoud = a.standing == drift::Standing::Drifting;
        const bool bLoud = b.standing == drift::Standing::Drifting;
        if (aLoud != bLoud ? aLoud : a.arcs > b.arcs) best = i;
    }
    return best;
}

}  // namespace

DriftPage::DriftPage(Session& session, QWidget* parent) : Page(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* layout = pageLayout(this);
    m_head = new PageHead(this);
    m_chips = new SplicerChips(this);
    m_head->addControl(m_chips);
    layout->addWidget(m_head);
    m_baseline = new BaselineBar(this);
    layout->addWidget(m_baseline);
    m_stack = new QStackedWidget(this);
    layout->addWidget(m_stack, 1);

    m_empty = new EmptyState(
        QStringLiteral("drift"), tr("No losses to look at yet"),
        tr("Enter splices on Today, or import a splice log: after 60 arcs of a splicer its charts "
           "begin to speak. They compare every machine with its own past."),
        this);
    connect(m_empty->addButton(tr("Go to Today")), &QPushButton::clicked, this,
            [this] { m_session.go(Screen::Today); });
    m_stack->addWidget(m_empty);

    auto* both = new QWidget(this);
    m_sides = new QBoxLayout(QBoxLayout::LeftToRight, both);
    m_sides->setContentsMargins(0, 0, 0, 0);
    m_sides->setSpacing(theme.px(20));
    m_charts = new ChartColumn(both);
    m_sides->addWidget(m_charts, 1);
    m_panel = new SignalPanel(both);
    m_sides->addWidget(m_panel);
    m_stack->addWidget(both);

    connect(m_chips, &SplicerChips::splicerChosen, this,
            [this](int index) { chooseSplicer(static_cast<std::size_t>(index)); });
    connect(m_chips, &SplicerChips::stratumChosen, this, [this](int index) {
        m_stratum = splicer()->strata[static_cast<std::size_t>(index)].stratum;
        showChosen();
    });
    connect(m_panel, &SignalPanel::chosenChanged, this, [this] { m_charts->showSignal(m_panel->chosen()); });
    connect(m_panel, &SignalPanel::startAsked, this, &DriftPage::startCare);
    connect(m_panel, &SignalPanel::dismissAsked, this, &DriftPage::askDismissal);
    connect(m_panel, &SignalPanel::reopenAsked, this, [this] {
        if (const auto* signal = m_panel->chosen())
            answer(*signal, SignalAnswerKind::Reopened, tr("taken up again"));
    });
    connect(m_panel, &SignalPanel::readingsAsked, this, &DriftPage::openReadings);
    connect(m_baseline, &BaselineBar::moved, m_charts, &ChartColumn::previewBaseline);
    connect(m_baseline, &BaselineBar::writeAsked, this, &DriftPage::writeBaseline);
    connect(m_baseline, &BaselineBar::left, this, [this] {
        m_baseline->hide();
        showChosen();
        m_charts->setFocus();
    });
    // A page that is not on the screen reads when it comes there.
    connect(&m_session, &Session::driftReady, this, [this] {
        if (isVisible()) readAgain();
    });
    connect(&CareDesk::of(m_session), &CareDesk::changed, this, [this] {
        const bool first = !m_care;
        m_care = CareDesk::of(m_session).look();
        if (m_care) m_charts->setOwed(m_care->owed);
        if (first && isVisible()) showChosen();
    });
    m_care = CareDesk::of(m_session).look();
    if (m_care) m_charts->setOwed(m_care->owed);
    addActions();
    readAgain();
}

void DriftPage::addActions() {
    auto& actions = m_session.actions();
    const auto add = [&](const char* id, const QString& text, const QKeySequence& key, const char* icon,
                         auto run) {
        actions.add({QString::fromLatin1(id), text, key, QString::fromLatin1(icon), Screen::Drift}, this,
                    run);
    };
    const auto move = [this](int by) {
        if (!m_view || m_view->reports.empty()) return;
        const auto count = static_cast<int>(m_view->reports.size());
        const auto* now = splicer();
        const int at = now ? static_cast<int>(now - m_view->reports.data()) : 0;
        chooseSplicer(static_cast<std::size_t>((at + by + count) % count));
    };
    add("drift.next_splicer", tr("Next splicer"), QKeySequence(Qt::CTRL | Qt::Key_PageDown), "forward",
        [move] { move(1); });
    add("drift.previous_splicer", tr("Previous splicer"), QKeySequence(Qt::CTRL | Qt::Key_PageUp), "back",
        [move] { move(-1); });
    add("drift.next_signal", tr("Go to the next signal"), QKeySequence(Qt::Key_N), "forward",
        [this] { m_panel->step(1); });
    add("drift.previous_signal", tr("Go to the signal before"), QKeySequence(Qt::Key_P), "back",
        [this] { m_panel->step(-1); });
    add("drift.start", tr("Start the care the signal calls for"), QKeySequence(Qt::Key_S), "care",
        [this] { startCare(); });
    add("drift.dismiss", tr("Dismiss the signal with a reason"), QKeySequence(Qt::Key_D), "close",
        [this] { askDismissal(); });
    add("drift.readings", tr("Show the readings behind the charts"), QKeySequence(Qt::Key_R), "table",
        [this] { openReadings(); });
    add("drift.baseline", tr("Move the baseline"), QKeySequence(Qt::Key_B), "drift",
        [this] { openBaseline(); });
    add("drift.more", tr("Show the other charts"), QKeySequence(Qt::Key_M), "drift",
        [this] { m_charts->showMore(); });
    add("drift.save", tr("Save the charts as pictures"), QKeySequence(Qt::CTRL | Qt::Key_S), "export",
        [this] { saveCharts(); });
    add("drift.copy", tr("Copy the numbers of the charts as CSV"), QKeySequence(Qt::CTRL | Qt::Key_C),
        "table", [this] { copyNumbers(); });
    add("drift.all", tr("Show all arcs"), QKeySequence(Qt::Key_A), "drift",
        [this] { m_charts->window().showAll(); });
}

void DriftPage::open(const Target& target) {
    if (target.tool) {
        m_splicer = target.tool;
        m_stratum.clear();
        showChosen();
    }
    if (!target.signalKey.empty()) {
        if (const auto* report = splicer()) {
            for (const auto& one : report->strata)
                if (std::ranges::find(one.signals, target.signalKey, &drift::Signal::key) !=
                    one.signals.end())
                    m_stratum = one.stratum;
            showChosen();
        }
        m_panel->choose(target.signalKey);
    }
}

QWidget* DriftPage::firstFocus() {
    return m_stack->currentWidget() == m_empty ? nullptr : m_charts;
}

std::optional<Subject> DriftPage::subject() {
    const auto* report = splicer();
    if (!report) return std::nullopt;
    return Subject{report->splicer.uuid, text::words(report->label)};
}

bool DriftPage::settled() const {
    return m_view && m_view == m_session.drift();
}

const drift::SplicerReport* DriftPage::splicer() const {
    return m_view && m_splicer ? m_view->reportOf(*m_splicer) : nullptr;
}

const drift::StratumReport* DriftPage::stratum() const {
    const auto* report = splicer();
    if (!report) return nullptr;
    const auto it = std::ranges::find(report->strata, m_stratum, &drift::StratumReport::stratum);
    return it == report->strata.end() ? nullptr : &*it;
}

const SplicerHistory* DriftPage::history() const {
    return m_view && m_splicer ? m_view->historyOf(*m_splicer) : nullptr;
}

const care::Deck* DriftPage::deck() const {
    return m_care ? &m_care->situation.deck : nullptr;
}

void DriftPage::readAgain() {
    // Pointers into the old view are let go of before it is.
    const auto old = std::exchange(m_view, m_session.drift());
    showChosen();
}

void DriftPage::chooseSplicer(std::size_t index) {
    if (!m_view || index >= m_view->reports.size()) return;
    m_splicer = m_view->reports[index].splicer;
    m_stratum.clear();
    showChosen();
}

void DriftPage::showChosen() {
    const bool any = m_view && std::ranges::any_of(m_view->reports,
                                                   [](const auto& report) { return !report.strata.empty(); });
    m_stack->setCurrentIndex(any ? 1 : 0);
    m_chips->setVisible(any);
    if (!any) {
        m_head->setTitle(tr("Drift"));
        m_head->setLine(m_view ? QString() : tr("Looking at the losses…"));
        m_charts->show(nullptr, nullptr, nullptr);
        m_panel->show(nullptr, nullptr, nullptr, nullptr, {});
        return;
    }
    if (!splicer() || splicer()->strata.empty()) {
        // The first one that has something to say, else the first with arcs.
        const auto& all = m_view->reports;
        auto it = std::ranges::find(all, drift::Standing::Drifting, &drift::SplicerReport::standing);
        if (it == all.end())
            it = std::ranges::find_if(all, [](const auto& report) { return !report.strata.empty(); });
        m_splicer = it->splicer;
        m_stratum.clear();
    }
    if (!stratum()) m_stratum = splicer()->strata[likelyStratum(*splicer())].stratum;
    const auto* report = splicer();
    const auto* one = stratum();
    m_chips->show(m_view->reports, static_cast<std::size_t>(report - m_view->reports.data()),
                  static_cast<std::size_t>(one - report->strata.data()));
    sayHead();
    m_charts->show(m_view, one, history());
    m_panel->show(m_view, report, one, deck(), m_session.clock().now());
}

void DriftPage::sayHead() {
    const auto* one = stratum();
    const auto* tool = m_view->toolOf(*m_splicer);
    QStringList title{tool ? nameOf(*tool) : text::words(splicer()->label)};
    if (!one->mode.empty()) title << text::words(one->mode);
    title << (one->channels == 1 ? tr("one groove") : tr("%1 grooves").arg(one->channels));
    m_head->setTitle(title.join(QStringLiteral(" · ")));
    QStringList line{tr("one false signal per %1 arcs, all charts together")
                         .arg(text::number(static_cast<std::int64_t>(m_view->settings.budgetArcs)))};
    if (one->baselineTo > one->baselineFrom)
        line << tr("baseline arcs %1–%2, shaded")
                    .arg(text::number(static_cast<std::int64_t>(one->baselineFrom)),
                         text::number(static_cast<std::int64_t>(one->baselineTo)));
    else
        line << tr("no baseline yet");
    m_head->setLine(line.join(QStringLiteral(" · ")));
}

void DriftPage::startCare() {
    const auto* signal = m_panel->chosen();
    if (!signal || signal->action.empty()) return;
    Target target;
    target.tool = signal->actionTool;
    target.action = signal->action;
    target.answers = {signal->key};
    m_session.go(Screen::Care, target);
}

void DriftPage::askDismissal() {
    const auto* signal = m_panel->chosen();
    if (!signal || signal->state == drift::SignalState::Dismissed) return;
    LineQuestion question;
    question.title = tr("Dismiss: %1").arg(text::spoken(signal->headline));
    question.explain =
        tr("The signal is put aside and stays in the book with your reason. The charts go on watching; the "
           "reasons show a supervisor how often the budget cries wolf.");
    question.field = tr("Reason");
    question.accept = tr("Dismiss");
    question.offers = {tr("fibre or cable of this job, not the machine"), tr("training splices"),
                       tr("already looked at, nothing found")};
    const drift::Signal copy = *signal;
    askLine(this, question,
            [this, copy](const QString& reason) { answer(copy, SignalAnswerKind::Dismissed, reason); });
}

void DriftPage::answer(const drift::Signal& signal, SignalAnswerKind kind, const QString& reason) {
    SignalAnswer entry;
    entry.id = m_session.newId<EntryId>();
    entry.splicer = *m_splicer;
    entry.signalKey = signal.key;
    entry.kind = kind;
    entry.reason = text::utf8(reason);
    entry.by = m_session.crew();
    entry.at = m_session.clock().now();
    m_session.save(Entry(entry));
}

void DriftPage::openReadings() {
    const auto* one = stratum();
    const auto* arcs = history();
    if (!one || !arcs || arcs->arcs.empty()) return;
    const auto* signal = m_panel->chosen();
    const auto& window = m_charts->window();
    const double at = window.cursor() ? *window.cursor()
                      : signal        ? static_cast<double>(signal->beganAtArc)
                                      : window.to();
    const auto* tool = m_view->toolOf(*m_splicer);
    auto* table = new ReadingsTable(
        tr("%1 · %2").arg(tool ? nameOf(*tool) : QString(), text::words(one->stratum)), m_view, *one, *arcs,
        m_care ? m_care->owed : std::vector<care::OwedStretch>{}, at, this);
    table->show();
}

void DriftPage::openBaseline() {
    const auto* one = stratum();
    const auto* arcs = history();
    if (!one || !arcs || arcs->arcs.empty()) return;
    m_baseline->open(static_cast<int>(std::max<std::uint64_t>(1, one->baselineFrom)),
                     static_cast<int>(std::max<std::uint64_t>(1, one->baselineTo)),
                     static_cast<int>(arcs->arcs.size()));
}

void DriftPage::writeBaseline() {
    const auto* arcs = history();
    if (!arcs || !stratum()) return;
    const auto last = static_cast<int>(arcs->arcs.size());
    BaselineChoice choice;
    choice.id = m_session.newId<EntryId>();
    choice.splicer = *m_splicer;
    choice.stratum = m_stratum;
    choice.from = arcs->arcs[static_cast<std::size_t>(std::clamp(m_baseline->from(), 1, last) - 1)].at;
    choice.to = arcs->arcs[static_cast<std::size_t>(std::clamp(m_baseline->to(), 1, last) - 1)].at;
    choice.reason = text::utf8(m_baseline->reason());
    choice.by = m_session.crew();
    if (!m_session.save(Entry(choice))) return;
    m_baseline->hide();
    m_charts->setFocus();
}

void DriftPage::saveCharts() {
    const auto* tool = m_view && m_splicer ? m_view->toolOf(*m_splicer) : nullptr;
    if (!tool || !stratum()) return;
    const Instant now = m_session.clock().now();
    const QString name =
        QStringLiteral("drift-%1-%2").arg(text::words(tool->label), text::words(toIso(now)).left(10));
    chooseFolder(this, tr("Save the charts as SVG and PNG"), {}, [this, name](const QString& folder) {
        for (const auto* ending : {".svg", ".png"}) {
            const auto done =
                ui::saveCharts(*m_charts, folder + QLatin1Char('/') + name + QLatin1String(ending));
            if (!done) {
                m_session.tell(done.error());
                return;
            }
        }
    });
}

void DriftPage::copyNumbers() {
    QApplication::clipboard()->setText(m_charts->csv());
}

void DriftPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    if (m_view != m_session.drift()) readAgain();
}

void DriftPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    const Theme theme = currentTheme();
    // Beside each other when there is room for both, else one above the other.
    const bool beside = width() >= theme.px(panelWidth + 480);
    m_sides->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_panel->setMinimumWidth(beside ? theme.px(panelWidth) : 0);
    m_panel->setMaximumWidth(beside ? theme.px(panelWidth) : QWIDGETSIZE_MAX);
}

}  // namespace arc::ui
