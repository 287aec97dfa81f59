// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/care_page.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "core/care/record_check.hpp"
#include "core/care/run.hpp"
#include "ui/care/card_editor.hpp"
#include "ui/care/card_runner.hpp"
#include "ui/care/care_asides.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/care/due_detail.hpp"
#include "ui/care/gentler_first.hpp"
#include "ui/care/limits_sheet.hpp"
#include "ui/care/other_care.hpp"
#include "ui/care/paused_runs.hpp"
#include "ui/care/queue_list.hpp"
#include "ui/care/queue_row.hpp"
#include "ui/care/words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/scroll_canvas.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

/// What is known before a record step is filled in; offered, never written by itself.
std::map<std::string, std::string> knownValues(const kit::ToolLife* life, const Tool& tool) {
    std::map<std::string, std::string> values;
    if (const auto* splicer = asSplicer(tool)) {
        values["fibre_count"] = std::to_string(splicer->grooves);
        if (splicer->kind == SplicerKind::SingleFibre) values["fibre_type"] = "G.652.D";
    }
    if (const auto* cleaver = asCleaver(tool); cleaver && life && life->blade)
        if (const auto next = kit::nextPlace(*cleaver, life->blade->now)) {
            values["blade_height"] = std::to_string(next->height);
            values["blade_position"] = std::to_string(next->position);
        }
    return values;
}

}  // namespace

CarePage::CarePage(Session& session, QWidget* parent)
    : Page(parent), m_session(session), m_desk(CareDesk::of(session)) {
    build();
    addActions();
    connect(&m_desk, &CareDesk::changed, this, &CarePage::refresh);
    connect(&m_session, &Session::bookChanged, this, &CarePage::showPaused);
    refresh();
}

void CarePage::build() {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(Gap::Edge), theme.px(18), theme.px(Gap::Edge), theme.px(24));
    box->setSpacing(theme.px(12));
    m_head = new PageHead(this);
    m_head->setTitle(tr("Care"));
    box->addWidget(m_head);
    m_putAside = words(QString(), TextRole::Bold, this);
    m_putAside->setWordWrap(true);
    m_putAside->setObjectName(QStringLiteral("put_aside"));
    setState(m_putAside, QStringLiteral("watch"));
    box->addWidget(m_putAside);
    m_paused = new PausedRuns(this);
    box->addWidget(m_paused);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(theme.px(Gap::Large));
    box->addLayout(columns, 1);

    auto* left = new QVBoxLayout;
    left->setSpacing(theme.px(14));
    columns->addLayout(left, 6);
    m_queue = new QueueList(this);
    left->addWidget(m_queue, 1);
    m_other = new OtherCare(this);
    left->addWidget(m_other);

    auto* scroll = new QScrollArea(this);
    auto* canvas = canvasIn(*scroll);
    auto* right = new QVBoxLayout(canvas);
    right->setContentsMargins(0, 0, theme.px(4), 0);
    right->setSpacing(theme.px(14));
    columns->addWidget(scroll, 5);
    m_detail = new DueDetail(canvas);
    m_done = new DoneAside(canvas);
    m_orders = new OrdersAside(canvas);
    right->addWidget(m_detail);
    right->addWidget(m_done);
    right->addWidget(m_orders);
    right->addStretch();

    connect(m_queue, &QueueList::chosenChanged, this, &CarePage::showChosen);
    connect(m_queue, &QueueList::startAsked, this, &CarePage::startChosen);
    connect(m_detail, &DueDetail::startAsked, this, &CarePage::startChosen);
    connect(m_other, &OtherCare::startAsked, this,
            [this](const ToolId& tool, const ActionKey& action) { startCare(tool, action, {}); });
    connect(m_other, &OtherCare::editAsked, this, &CarePage::editCard);
    connect(m_other, &OtherCare::limitsAsked, this, &CarePage::openLimits);
    connect(m_paused, &PausedRuns::goOnAsked, this,
            [this](const CareRun& one) { startCare(one.tool, one.action, one.answers); });
    connect(m_paused, &PausedRuns::giveUpAsked, this,
            [this](const CareRun& one) { m_session.save(Entry{care::abandoned(one)}, Undo::No); });
}

void CarePage::addActions() {
    m_session.actions().add({QStringLiteral("care.limits"),
                             tr("Change the limits of care"),
                             {},
                             QStringLiteral("care"),
                             Screen::Care},
                            this, [this] { openLimits(); });
}

// --- showing -----------------------------------------------------------------------------------------------

void CarePage::refresh() {
    const auto look = m_desk.look();
    int counts[4]{};
    if (look)
        for (const auto& item : look->items) ++counts[static_cast<int>(item.queue)];
    QStringList said;
    for (int q = 0; q < 4; ++q)
        if (counts[q] > 0)
            said << QStringLiteral("%1: %2").arg(titleOf(static_cast<care::Queue>(q))).arg(counts[q]);
    m_head->setLine(!look            ? tr("Looking at the tools…")
                    : said.isEmpty() ? tr("Nothing is due")
                                     : said.join(QStringLiteral(" · ")));
    QStringList aside;
    if (look)
        for (const auto& problem : look->putAside) aside << text::spoken(problem);
    m_putAside->setText(
        aside.isEmpty() ? QString()
                        : tr("Put aside, the shipped one is used: %1").arg(aside.join(QStringLiteral(" "))));
    m_putAside->setVisible(!aside.isEmpty());
    m_queue->show(look ? std::optional(look->items) : std::nullopt);
    showPaused();
    m_done->show(look.get(), m_session.drift().get(), m_session.clock().now());
    m_orders->show(look.get());
    if (look) m_other->show(look->situation.tools, look->situation.deck);
    startWaiting();
}

void CarePage::showChosen() {
    const auto look = m_desk.look();
    const auto* item = m_queue->chosen();
    m_detail->setVisible(item != nullptr);
    if (item)
        m_detail->show(*item, look ? look->situation.deck.find(item->action) : nullptr,
                       m_session.clock().now());
}

void CarePage::showPaused() {
    std::vector<PausedRun> paused;
    const auto look = m_desk.look();
    const auto runs = m_session.book().openCareRuns();
    if (look && runs && !m_runner)
        for (const auto& one : *runs) {
            const auto* tool = look->tool(one.tool);
            const auto known = cardOf(one);
            if (tool && known) paused.push_back({one, *known, *tool});
        }
    m_paused->show(paused, m_session.clock().now());
}

// --- running -----------------------------------------------------------------------------------------------

void CarePage::startChosen() {
    if (const auto* item = m_queue->chosen()) startCare(item->tool, item->action, {item->key});
}

void CarePage::startCare(ToolId toolId, const ActionKey& action, const std::vector<std::string>& answers) {
    const auto look = m_desk.look();
    if (!look || m_runner) return;
    const auto* tool = look->tool(toolId);
    const auto* card = look->situation.deck.find(action);
    if (!tool || !card)
        return m_session.tell(Problem{ProblemCode::NotFound, "there is no care card for this", action,
                                      "Choose another one below the list"});
    const auto runs = m_session.take(m_session.book().openCareRuns());
    if (!runs) return;
    for (const auto& one : *runs) {
        if (one.tool != toolId || one.action != card->id) continue;
        const auto begunWith = cardOf(one);
        if (!begunWith) return;
        if (const auto can = care::canResume(*begunWith, *tool, one); !can)
            return m_session.tell(can.error());
        return run(*begunWith, *tool, one);
    }
    const auto skipped = care::skippedGentler(look->situation, look->items, toolId, action);
    if (skipped.empty()) return begin(*card, *tool, answers, {});
    auto* ask = new GentlerFirst(*card, *tool, look->situation.deck, skipped, window());
    connect(ask, &GentlerFirst::gentlerChosen, this,
            [this, toolId](const ActionKey& gentler) { startCare(toolId, gentler, {}); });
    connect(ask, &GentlerFirst::goOnAsked, this,
            [this, card = *card, tool = *tool, answers, skipped](const QString& reason) {
                std::map<std::string, std::string> fields;
                care::noteSkipped(fields, skipped, text::utf8(reason));
                begin(card, tool, answers, fields);
            });
    ask->open();
}

void CarePage::begin(const care::Card& card, const Tool& tool, const std::vector<std::string>& answers,
                     const std::map<std::string, std::string>& fields) {
    auto fresh = care::start(card, tool, m_session.newId<CareId>(), m_session.clock().now(), m_session.crew(),
                             answers);
    if (!fresh) return m_session.tell(fresh.error());
    fresh->fields = fields;
    run(card, tool, *fresh);
}

void CarePage::run(const care::Card& card, const Tool& tool, const CareRun& open) {
    const auto look = m_desk.look();
    m_runner = new CardRunner(m_session, card, tool, open,
                              knownValues(look ? look->lifeOf(tool.id) : nullptr, tool), window());
    m_runner->setAttribute(Qt::WA_DeleteOnClose);
    connect(m_runner, &QDialog::finished, this, [this] {
        m_runner = nullptr;
        showPaused();
        if (auto* first = firstFocus()) first->setFocus();
    });
    showPaused();
    m_runner->resize(window()->size());
    m_runner->setWindowState(m_runner->windowState() | Qt::WindowFullScreen);
    m_runner->open();
}

/// A run goes on with the card it was begun with, also when a newer edition is in force by now.
std::optional<care::Card> CarePage::cardOf(const CareRun& run) const {
    const auto look = m_desk.look();
    const auto* inForce = look ? look->situation.deck.find(run.action) : nullptr;
    if (inForce && inForce->version == run.cardVersion) return *inForce;
    return m_session.take(m_session.workbench().cardOfVersion(m_session.book(), run.action, run.cardVersion));
}

void CarePage::editCard(const ActionKey& action) {
    const auto look = m_desk.look();
    const auto* card = look ? look->situation.deck.find(action) : nullptr;
    if (!card) return;
    auto* editor = new CardEditor(m_session, *card, window());
    editor->setAttribute(Qt::WA_DeleteOnClose);
    editor->open();
}

void CarePage::openLimits() {
    auto* sheet = new LimitsSheet(m_session, window());
    sheet->setAttribute(Qt::WA_DeleteOnClose);
    sheet->open();
}

// --- the page in the window --------------------------------------------------------------------------------

void CarePage::startWaiting() {
    if (!m_waiting || !m_desk.look()) return;
    const Target target = *m_waiting;
    m_waiting.reset();
    startCare(*target.tool, target.action, target.answers);
}

void CarePage::open(const Target& target) {
    if (!target.tool) return;
    const auto& items = m_queue->items();
    for (std::size_t i = 0; i < items.size(); ++i)
        if (items[i].tool == *target.tool && (target.action.empty() || items[i].action == target.action)) {
            m_queue->choose(i);
            break;
        }
    if (target.action.empty()) return;
    m_waiting = target;
    startWaiting();
}

QWidget* CarePage::firstFocus() {
    if (m_runner) return nullptr;
    return m_queue->row() ? m_queue->row() : m_other->first();
}

std::optional<Subject> CarePage::subject() {
    const auto look = m_desk.look();
    const auto* item = m_queue->chosen();
    const auto* life = look && item ? look->lifeOf(item->tool) : nullptr;
    if (!life) return std::nullopt;
    // The last time this care was done; until then the tool itself.
    const auto last = life->lastCare.find(item->action);
    if (last == life->lastCare.end()) return Subject{life->tool.id.uuid, text::words(life->tool.label)};
    return Subject{
        last->second.id.uuid,
        tr("%1 of %2").arg(careTitle(look->situation.deck, last->first), text::words(life->tool.label))};
}

bool CarePage::settled() const {
    return !m_desk.pending();
}

}  // namespace arc::ui
