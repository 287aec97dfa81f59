// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kit/kit_page.hpp"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/care/care_desk.hpp"
#include "ui/care/words.hpp"
#include "ui/drift/words.hpp"
#include "ui/kit/tool_card.hpp"
#include "ui/kit/tool_dialogs.hpp"
#include "ui/kit/tool_words.hpp"
#include "ui/text/format.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/timeline.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr int cardWidth = 336;
constexpr int detailWidth = 350;

TimelineEntry entryOf(const kit::TimelineLine& line, const DriftView* drift, Instant now) {
    TimelineEntry entry;
    entry.when = text::moment(line.at, now);
    entry.what = text::spoken(line.text);
    entry.who = text::words(line.by);
    if (line.usesBefore)
        entry.what +=
            KitPage::tr(", at use %1").arg(text::number(static_cast<std::int64_t>(*line.usesBefore)));
    if (const auto* effect = line.care ? effectOf(drift, *line.care) : nullptr)
        entry.what += QStringLiteral(": ") + verdictWords(effect->verdict);
    entry.weight = line.kind == kit::TimelineLine::Kind::Care ? TimelineEntry::Weight::Care
                                                              : TimelineEntry::Weight::Other;
    return entry;
}

}  // namespace

KitPage::KitPage(Session& session, QWidget* parent) : Page(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* layout = pageLayout(this);
    m_head = new PageHead(this);
    m_head->setTitle(tr("Kit"));
    auto* add = button(tr("Add a tool"), ButtonKind::Usual, this, QStringLiteral("add"));
    connect(add, &QPushButton::clicked, this, &KitPage::addTool);
    m_head->addControl(add);
    layout->addWidget(m_head);
    m_stack = new QStackedWidget(this);
    layout->addWidget(m_stack, 1);

    m_empty = new EmptyState(
        QStringLiteral("kit"), tr("No tools yet"),
        tr("Add the splicer you work with first, then its cleaver and stripper. From then on the book "
           "counts arcs, cleaves and strips, and says when each tool wants care."),
        this);
    connect(m_empty->addButton(tr("Add the first tool"), QStringLiteral("add")), &QPushButton::clicked, this,
            &KitPage::addTool);
    m_stack->addWidget(m_empty);

    auto* both = new QWidget(this);
    auto* row = new QHBoxLayout(both);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.px(20));
    m_scroll = new QScrollArea(both);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setAccessibleName(tr("Tools"));
    m_board = new QWidget;
    m_board->setProperty("ground", QStringLiteral("none"));
    m_grid = new QGridLayout(m_board);
    m_grid->setContentsMargins(0, 0, theme.px(4), 0);
    m_grid->setSpacing(theme.px(14));
    m_scroll->setWidget(m_board);
    m_scroll->viewport()->installEventFilter(this);
    row->addWidget(m_scroll, 1);
    makeDetail(both);
    row->addWidget(m_detail);
    m_stack->addWidget(both);

    connect(&CareDesk::of(m_session), &CareDesk::changed, this, [this] {
        if (isVisible()) readAgain();
    });
    addActions();
    readAgain();
}

void KitPage::makeDetail(QWidget* parent) {
    const Theme theme = currentTheme();
    auto* frame = card(parent);
    m_detail = frame;
    m_detail->setFixedWidth(theme.px(detailWidth));
    auto* layout = inside(frame);
    m_name = words({}, TextRole::Heading, frame);
    m_name->setWordWrap(true);
    m_kind = words({}, TextRole::Soft, frame);
    m_kind->setWordWrap(true);
    m_facts = words({}, TextRole::Body, frame);
    m_facts->setWordWrap(true);
    layout->addWidget(m_name);
    layout->addWidget(m_kind);
    layout->addWidget(m_facts);
    m_buttons = new QGridLayout;
    m_buttons->setSpacing(theme.px(6));
    m_care = button(tr("Care for it"), ButtonKind::Usual, frame, QStringLiteral("care"));
    m_drift = button(tr("Its drift"), ButtonKind::Usual, frame, QStringLiteral("drift"));
    m_pair = button(tr("Pair cleaver…"), ButtonKind::Usual, frame);
    m_service = button(tr("Out of service"), ButtonKind::Usual, frame);
    m_counter = button(tr("Correct counter…"), ButtonKind::Usual, frame);
    layout->addLayout(m_buttons);
    layout->addWidget(words(tr("History"), TextRole::Strong, frame));
    m_timeline = new Timeline(frame);
    layout->addWidget(m_timeline, 1);
    const auto target = [this] {
        Target to;
        to.tool = m_chosen;
        return to;
    };
    connect(m_care, &QPushButton::clicked, this, [this, target] { m_session.go(Screen::Care, target()); });
    connect(m_drift, &QPushButton::clicked, this, [this, target] { m_session.go(Screen::Drift, target()); });
    connect(m_pair, &QPushButton::clicked, this, &KitPage::pair);
    connect(m_service, &QPushButton::clicked, this, &KitPage::changeService);
    connect(m_counter, &QPushButton::clicked, this, &KitPage::correctCounter);
}

void KitPage::addActions() {
    const auto add = [&](const char* id, const QString& text, const QKeySequence& key, const char* icon,
                         auto run) {
        m_session.actions().add({QString::fromLatin1(id), text, key, QString::fromLatin1(icon), Screen::Kit},
                                this, run);
    };
    add("kit.add", tr("Add a tool"), QKeySequence(Qt::Key_A), "add", [this] { addTool(); });
    add("kit.pair", tr("Pair a cleaver with the chosen splicer"), QKeySequence(Qt::Key_P), "cleaver",
        [this] { pair(); });
    add("kit.service", tr("Take the chosen tool out of service, or back"), QKeySequence(Qt::Key_O), "lock",
        [this] { changeService(); });
    add("kit.counter", tr("Correct the counter of the chosen tool"), QKeySequence(Qt::Key_C), "timer",
        [this] { correctCounter(); });
}

void KitPage::open(const Target& target) {
    if (target.tool) choose(*target.tool);
}

QWidget* KitPage::firstFocus() {
    for (auto* card : m_cards)
        if (m_chosen == card->tool()) return card;
    return m_cards.empty() ? nullptr : m_cards.front();
}

std::optional<Subject> KitPage::subject() {
    const auto* life = m_look && m_chosen ? m_look->lifeOf(*m_chosen) : nullptr;
    if (!life) return std::nullopt;
    const auto row = static_cast<std::size_t>(std::max(0, m_timeline->currentRow()));
    if (m_timeline->hasFocus() && row < life->timeline.size() && life->timeline[row].care)
        return Subject{life->timeline[row].care->uuid,
                       tr("%1 of %2").arg(text::spoken(life->timeline[row].text), nameOf(life->tool))};
    return Subject{life->tool.id.uuid, nameOf(life->tool)};
}

bool KitPage::settled() const {
    auto& desk = CareDesk::of(m_session);
    return m_look && m_look == desk.look() && !desk.pending();
}

const Tool* KitPage::chosen() const {
    return m_look && m_chosen ? m_look->tool(*m_chosen) : nullptr;
}

QString KitPage::labelOf(std::optional<ToolId> tool) const {
    const auto* found = tool ? m_look->tool(*tool) : nullptr;
    return found ? text::words(found->label) : QString();
}

void KitPage::readAgain() {
    m_look = CareDesk::of(m_session).look();
    const bool hadFocus = m_board->isAncestorOf(QWidget::focusWidget());
    for (auto* card : m_cards) card->deleteLater();
    m_cards.clear();
    if (!m_look || m_look->lives.empty()) {
        m_head->setLine(m_look ? QString() : tr("Looking at the tools…"));
        m_stack->setCurrentIndex(0);
        m_empty->setVisible(m_look != nullptr);
        return;
    }
    m_stack->setCurrentIndex(1);
    const auto drift = m_session.drift();
    const Instant now = m_session.clock().now();
    int splicers = 0;
    int cleavers = 0;
    std::vector<const kit::ToolLife*> shown;
    for (const auto& life : m_look->lives) shown.push_back(&life);
    // Splicers, then cleavers, then strippers; what is out of service comes last.
    std::ranges::stable_sort(shown, {}, [](const kit::ToolLife* life) {
        return std::pair(life->tool.service == Service::OutOfService, life->tool.traits.index());
    });
    for (const auto* one : shown) {
        const auto& life = *one;
        splicers += asSplicer(life.tool) ? 1 : 0;
        cleavers += asCleaver(life.tool) ? 1 : 0;
        auto* card = new ToolCard(life, drift ? drift->reportOf(life.tool.id) : nullptr,
                                  labelOf(life.pairedWith), now, m_board);
        connect(card, &ToolCard::picked, this, [this, id = life.tool.id] { choose(id); });
        m_cards.push_back(card);
    }
    m_head->setLine(tr("Splicers: %1 · cleavers: %2 · strippers: %3")
                        .arg(splicers)
                        .arg(cleavers)
                        .arg(m_look->lives.size() - static_cast<std::size_t>(splicers + cleavers)));
    placeCards();
    if (!chosen()) m_chosen = shown.front()->tool.id;
    choose(*m_chosen);
    if (hadFocus)
        if (auto* first = firstFocus()) first->setFocus();
}

void KitPage::placeCards() {
    const int each = currentTheme().px(cardWidth) + m_grid->spacing();
    const int columns = std::max(1, (m_scroll->viewport()->width() + m_grid->spacing()) / each);
    int index = 0;
    for (auto* card : m_cards) {
        m_grid->removeWidget(card);
        m_grid->addWidget(card, index / columns, index % columns);
        ++index;
    }
    for (int c = 0; c < 12; ++c) m_grid->setColumnStretch(c, c < columns ? 1 : 0);
    for (int r = 0; r < 200; ++r) m_grid->setRowStretch(r, 0);
    m_grid->setRowStretch((index + columns - 1) / columns, 1);
}

void KitPage::choose(ToolId tool) {
    m_chosen = tool;
    for (auto* card : m_cards) card->setChosen(card->tool() == tool);
    showDetail();
}

void KitPage::showDetail() {
    const auto* life = m_look && m_chosen ? m_look->lifeOf(*m_chosen) : nullptr;
    m_detail->setVisible(life != nullptr);
    if (!life) return;
    const Instant now = m_session.clock().now();
    m_name->setText(nameOf(life->tool));
    m_kind->setText(kindWords(life->tool));
    QStringList facts{tr("uses in the book: %1").arg(text::number(static_cast<std::int64_t>(life->uses)))};
    if (life->counter)
        facts << tr("own counter: %1").arg(text::number(static_cast<std::int64_t>(life->counter->value)));
    if (life->lastUse) facts << tr("last used %1").arg(text::ago(*life->lastUse, now));
    const QString partner = labelOf(life->pairedWith);
    if (!partner.isEmpty())
        facts << (asSplicer(life->tool) ? tr("cleaver: %1").arg(partner)
                                        : tr("prepares for %1").arg(partner));
    for (const auto& bar : life->bars)
        if (!bar.limit)
            facts << QStringLiteral("%1: %2").arg(text::spoken(bar.title).toLower(), barWords(bar).words);
    m_facts->setText(facts.join(QLatin1Char('\n')));
    const bool splicer = asSplicer(life->tool) != nullptr;
    m_drift->setVisible(splicer);
    m_pair->setVisible(splicer);
    m_counter->setVisible(asStripper(life->tool) == nullptr);
    m_service->setText(life->tool.service == Service::InUse ? tr("Out of service") : tr("Back in service"));
    m_service->setAccessibleName(m_service->text());
    int place = 0;
    for (auto* one : {m_care, m_drift, m_pair, m_service, m_counter}) {
        m_buttons->removeWidget(one);
        if (one->isHidden()) continue;
        m_buttons->addWidget(one, place / 2, place % 2);
        ++place;
    }
    std::vector<TimelineEntry> entries;
    for (const auto& line : life->timeline) entries.push_back(entryOf(line, m_session.drift().get(), now));
    m_timeline->setEntries(entries);
}

void KitPage::addTool() {
    std::vector<std::string> taken;
    if (m_look)
        for (const auto& life : m_look->lives) taken.push_back(life.tool.label);
    askNewTool(this, std::move(taken), [this](const NewTool& made) {
        const Tool tool{m_session.newId<ToolId>(), made.label, made.nickname, made.traits, Service::InUse};
        if (m_session.save(Entry(tool))) m_chosen = tool.id;
    });
}

void KitPage::pair() {
    const auto* splicer = chosen();
    if (!splicer || !asSplicer(*splicer)) return;
    std::vector<Tool> cleavers;
    for (const auto& life : m_look->lives)
        if (asCleaver(life.tool) && life.tool.service == Service::InUse) cleavers.push_back(life.tool);
    if (cleavers.empty()) {
        m_session.tell(Problem{ProblemCode::NotFound, "there is no cleaver in service to pair",
                               splicer->label, "Add a cleaver first"});
        return;
    }
    askTool(
        this, tr("Which cleaver prepares for %1?").arg(nameOf(*splicer)),
        tr("From now on, until the next pairing. Cleaves are counted for it."), cleavers,
        [this, id = splicer->id](ToolId cleaver) {
            m_session.save(Entry(Pairing{m_session.newId<EntryId>(), id, cleaver, m_session.clock().now()}));
        });
}

void KitPage::changeService() {
    const auto* tool = chosen();
    if (!tool) return;
    Tool changed = *tool;
    changed.service = tool->service == Service::InUse ? Service::OutOfService : Service::InUse;
    m_session.save({Entry(changed)}, Undo::Offered, {Entry(*tool)});
}

void KitPage::correctCounter() {
    const auto* life = m_look && m_chosen ? m_look->lifeOf(*m_chosen) : nullptr;
    if (!life || asStripper(life->tool)) return;
    askCounter(this, nameOf(life->tool), life->counter,
               [this, id = life->tool.id](ArcCount shows, const QString& reason) {
                   m_session.save(Entry(CounterCorrection{
                       m_session.newId<EntryId>(), id, m_session.clock().now(), shows, text::utf8(reason)}));
               });
}

void KitPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    if (m_look != CareDesk::of(m_session).look()) readAgain();
}

bool KitPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_scroll->viewport() && event->type() == QEvent::Resize) placeCards();
    return Page::eventFilter(watched, event);
}

}  // namespace arc::ui
