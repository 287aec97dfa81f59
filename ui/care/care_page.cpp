// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/care_page.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

#include "core/care/run.hpp"
#include "ui/care/card_editor.hpp"
#include "ui/care/card_runner.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/care/queue_row.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr std::size_t lateShown = 5;

/// "groove_clean" → the card's title, else the key in words.
QString titleOf(const care::Deck& deck, const ActionKey& action) {
    if (const auto* card = deck.find(action)) return text::fromCard(card->title);
    QString said = text::spoken(text::words(action).replace('_', ' '));
    if (!said.isEmpty()) said[0] = said[0].toUpper();
    return said;
}

QString verdictOf(const DriftView* drift, CareId care) {
    if (!drift) return {};
    for (const auto& report : drift->reports)
        for (const auto& stratum : report.strata)
            for (const auto& effect : stratum.effects) {
                if (effect.care != care) continue;
                switch (effect.verdict) {
                    case drift::CareVerdict::Recovered:
                        return CarePage::tr("helped");
                    case drift::CareVerdict::Better:
                        return CarePage::tr("helped in part");
                    case drift::CareVerdict::NoChange:
                        return CarePage::tr("no change");
                    case drift::CareVerdict::Worse:
                        return CarePage::tr("worse since");
                    case drift::CareVerdict::TooEarly:
                        return CarePage::tr("too early to tell");
                }
            }
    return {};
}

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
    m_paused = new QVBoxLayout;
    m_paused->setSpacing(theme.px(8));
    box->addLayout(m_paused);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(theme.px(Gap::Large));
    box->addLayout(columns, 1);

    auto* left = new QVBoxLayout;
    left->setSpacing(theme.px(14));
    columns->addLayout(left, 6);
    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(8), theme.px(4), theme.px(8));
    auto* scroll = new QScrollArea(sheet);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* canvas = new QWidget;
    canvas->setProperty("ground", QStringLiteral("none"));
    m_list = new QVBoxLayout(canvas);
    m_list->setContentsMargins(0, 0, theme.px(4), 0);
    m_list->setSpacing(0);
    scroll->setWidget(canvas);
    inside(sheet)->addWidget(scroll);
    left->addWidget(sheet, 1);

    auto* other = card(this);
    auto* otherRow = new QHBoxLayout;
    otherRow->setSpacing(theme.px(8));
    inside(other)->setContentsMargins(theme.px(16), theme.px(10), theme.px(16), theme.px(10));
    inside(other)->addLayout(otherRow);
    otherRow->addWidget(words(tr("Something else"), TextRole::Accent, other));
    m_tool = new QComboBox(other);
    m_tool->setAccessibleName(tr("Tool"));
    m_card = new QComboBox(other);
    m_card->setAccessibleName(tr("Care card"));
    auto* begin = button(tr("Start"), ButtonKind::Usual, other);
    begin->setAccessibleName(tr("Start this care"));
    otherRow->addWidget(m_tool, 2);
    otherRow->addWidget(m_card, 4);
    auto* edit = button(tr("Edit card…"), ButtonKind::Quiet, other);
    otherRow->addWidget(begin);
    otherRow->addWidget(edit);
    connect(edit, &QPushButton::clicked, this, &CarePage::editCard);
    left->addWidget(other);
    connect(m_tool, &QComboBox::currentIndexChanged, this, &CarePage::fillCards);
    connect(begin, &QPushButton::clicked, this, [this] {
        const auto look = m_desk.look();
        const auto tool = parseUuid(m_tool->currentData().toString().toStdString());
        if (look && tool && m_card->currentIndex() >= 0)
            startCare(ToolId{*tool}, text::utf8(m_card->currentData().toString()), {});
    });

    auto* rightScroll = new QScrollArea(this);
    rightScroll->setWidgetResizable(true);
    rightScroll->setFrameShape(QFrame::NoFrame);
    rightScroll->setFocusPolicy(Qt::NoFocus);
    rightScroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* rightCanvas = new QWidget;
    rightCanvas->setProperty("ground", QStringLiteral("none"));
    auto* right = new QVBoxLayout(rightCanvas);
    right->setContentsMargins(0, 0, theme.px(4), 0);
    right->setSpacing(theme.px(14));
    rightScroll->setWidget(rightCanvas);
    columns->addWidget(rightScroll, 5);
    m_detail = card(this);
    right->addWidget(m_detail);
    auto* detail = inside(m_detail);
    auto* title = new QHBoxLayout;
    title->setSpacing(theme.px(12));
    m_mark = new StateMark(Mark::Steady, m_detail);
    m_mark->setFixedSize(theme.px(24), theme.px(24));
    m_title = words(QString(), TextRole::Heading, m_detail);
    m_title->setWordWrap(true);
    title->addWidget(m_mark, 0, Qt::AlignVCenter);
    title->addWidget(m_title, 1);
    detail->addLayout(title);
    m_why = words(QString(), TextRole::Strong, m_detail);
    m_why->setWordWrap(true);
    detail->addWidget(m_why);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(16));
    grid->setVerticalSpacing(theme.px(8));
    grid->setColumnStretch(1, 1);
    const QString names[] = {tr("based on"), tr("since"), tr("if not"), tr("takes"), tr("needs")};
    for (int i = 0; i < 5; ++i) {
        m_names[i] = words(names[i], TextRole::Soft, m_detail);
        m_values[i] = words(QString(), TextRole::Body, m_detail);
        m_values[i]->setWordWrap(true);
        grid->addWidget(m_names[i], i, 0, Qt::AlignTop);
        grid->addWidget(m_values[i], i, 1);
    }
    detail->addSpacing(theme.px(4));
    detail->addLayout(grid);
    detail->addSpacing(theme.px(6));
    m_start = button(tr("Start"), ButtonKind::Primary, m_detail);
    m_start->setMinimumHeight(theme.px(Touch::Pad));
    connect(m_start, &QPushButton::clicked, this, [this] {
        if (m_chosen < m_items.size())
            startCare(m_items[m_chosen].tool, m_items[m_chosen].action, {m_items[m_chosen].key});
    });
    detail->addWidget(m_start);

    m_doneCard = card(this);
    inside(m_doneCard)
        ->addWidget(words(tr("Lately done, and whether it helped"), TextRole::Strong, m_doneCard));
    m_done = words(QString(), TextRole::Body, m_doneCard);
    m_done->setWordWrap(true);
    inside(m_doneCard)->addWidget(m_done);
    right->addWidget(m_doneCard);
    m_ordersCard = card(this);
    inside(m_ordersCard)->addWidget(words(tr("To order"), TextRole::Strong, m_ordersCard));
    m_orders = words(QString(), TextRole::Body, m_ordersCard);
    m_orders->setWordWrap(true);
    inside(m_ordersCard)->addWidget(m_orders);
    right->addWidget(m_ordersCard);
    right->addStretch();
}

// --- showing -----------------------------------------------------------------------------------------------

void CarePage::refresh() {
    const auto look = m_desk.look();
    m_items = look ? look->items : std::vector<care::DueItem>{};
    int counts[4]{};
    for (const auto& item : m_items) ++counts[static_cast<int>(item.queue)];
    QStringList said;
    for (int q = 0; q < 4; ++q)
        if (counts[q] > 0)
            said << QStringLiteral("%1: %2").arg(ui::titleOf(static_cast<care::Queue>(q))).arg(counts[q]);
    m_head->setLine(!look            ? tr("Looking at the tools…")
                    : said.isEmpty() ? tr("Nothing is due")
                                     : said.join(QStringLiteral(" · ")));
    showList();
    showPaused();
    showDone();
    showOrders();
    fillOthers();
    startWaiting();
}

void CarePage::showList() {
    const Theme theme = currentTheme();
    const std::string key =
        m_chosen < m_items.size() && !m_rows.empty() ? m_items[m_chosen].key : std::string();
    const bool hadFocus = std::ranges::any_of(m_rows, &QWidget::hasFocus);
    while (auto* old = m_list->takeAt(0)) {
        if (old->widget()) {
            old->widget()->hide();
            old->widget()->deleteLater();
        }
        delete old;
    }
    m_rows.clear();
    m_chosen = 0;
    for (std::size_t i = 0; i < m_items.size(); ++i) {
        const bool first = i == 0 || m_items[i].queue != m_items[i - 1].queue;
        if (first && i > 0) m_list->addWidget(line(this));
        auto* row = new QueueRow(this);
        row->setCheckable(true);
        row->setItem(m_items[i], 0, first ? Lead::Shown : Lead::Hidden);
        row->setMinimumHeight(theme.px(62));
        row->installEventFilter(this);
        connect(row, &QueueRow::clicked, this, [this, i] { showDetail(i); });
        m_list->addWidget(row);
        m_rows.push_back(row);
        if (m_items[i].key == key) m_chosen = i;
    }
    if (m_items.empty()) {
        auto* nothing = words(
            m_desk.look()
                ? tr("Nothing is due. The queues fill from counts, days, the air around and the charts.")
                : QString(),
            TextRole::Soft, this);
        nothing->setWordWrap(true);
        nothing->setContentsMargins(theme.px(12), theme.px(12), theme.px(12), theme.px(12));
        m_list->addWidget(nothing);
    }
    m_list->addStretch();
    m_detail->setVisible(!m_items.empty());
    if (m_items.empty()) return;
    showDetail(m_chosen);
    if (hadFocus) m_rows[m_chosen]->setFocus();
}

void CarePage::showDetail(std::size_t index) {
    if (index >= m_items.size()) return;
    m_chosen = index;
    for (std::size_t i = 0; i < m_rows.size(); ++i) m_rows[i]->setChecked(i == index);
    const auto look = m_desk.look();
    const auto& item = m_items[index];
    const Instant now = m_session.clock().now();
    m_mark->setMark(markOf(item.queue));
    m_title->setText(text::spoken(item.title));
    m_why->setText(QStringLiteral("%1: %2").arg(ui::titleOf(item.queue), text::spoken(item.why)));
    const auto* card = look ? look->situation.deck.find(item.action) : nullptr;
    QStringList needs;
    if (card)
        for (const auto& material : card->materials) needs << text::fromCard(material.name);
    const QString values[] = {
        text::spoken(item.basedOn),
        QStringLiteral("%1 (%2)").arg(text::moment(item.since, now), text::ago(item.since, now)),
        text::spoken(item.otherwise), card ? tr("about %1 min").arg(card->minutes) : QString(),
        needs.join(QStringLiteral("; "))};
    for (int i = 0; i < 5; ++i) {
        m_values[i]->setText(values[i]);
        m_values[i]->setVisible(!values[i].isEmpty());
        m_names[i]->setVisible(!values[i].isEmpty());
    }
    if (item.overridden)
        m_why->setText(m_why->text() + QLatin1Char('\n') +
                       tr("Overridden by %1: %2")
                           .arg(text::words(item.overridden->by), text::words(item.overridden->reason)));
    m_start->setText(card ? tr("Start  Enter") : tr("There is no card for this"));
    m_start->setEnabled(card != nullptr);
}

void CarePage::showPaused() {
    const Theme theme = currentTheme();
    while (auto* old = m_paused->takeAt(0)) {
        if (old->widget()) {
            old->widget()->hide();
            old->widget()->deleteLater();
        }
        delete old;
    }
    const auto look = m_desk.look();
    const auto runs = m_session.book().openCareRuns();
    if (!look || !runs || m_runner) return;
    const Instant now = m_session.clock().now();
    for (const auto& one : *runs) {
        const auto* tool = look->tool(one.tool);
        const auto known = cardOf(one);
        if (!tool || !known) continue;
        const auto screen = care::screenOf(*known, *tool, one);
        auto* bar = card(this, Ground::Wash);
        inside(bar)->setContentsMargins(theme.px(16), theme.px(8), theme.px(10), theme.px(8));
        auto* row = new QHBoxLayout;
        inside(bar)->addLayout(row);
        QString where = text::fromCard(known->title) + QStringLiteral(", ") + text::words(tool->label);
        if (screen.kind == care::ScreenKind::Step)
            where += tr(", step %1 of %2").arg(screen.number).arg(screen.of);
        auto* said = words(tr("Paused: %1. Begun %2 by %3.")
                               .arg(where, text::moment(one.startedAt, now),
                                    one.by.empty() ? tr("somebody") : text::words(one.by)),
                           TextRole::Bold, bar);
        said->setWordWrap(true);
        row->addWidget(said, 1);
        auto* on = button(tr("Go on with it"), ButtonKind::Usual, bar);
        auto* off = button(tr("Give it up"), ButtonKind::Quiet, bar);
        row->addWidget(on);
        row->addWidget(off);
        connect(on, &QPushButton::clicked, this,
                [this, one] { startCare(one.tool, one.action, one.answers); });
        connect(off, &QPushButton::clicked, this,
                [this, one] { m_session.save(Entry{care::abandoned(one)}, Undo::No); });
        m_paused->addWidget(bar);
    }
}

void CarePage::showDone() {
    const auto look = m_desk.look();
    if (!look) return m_doneCard->hide();
    std::vector<const CareRecord*> records;
    for (const auto& record : look->situation.records)
        if (record.action != action::environmentChange && record.action != action::note)
            records.push_back(&record);
    std::ranges::sort(records, std::greater{}, [](const CareRecord* r) { return r->at.ms; });
    const auto drift = m_session.drift();
    const Instant now = m_session.clock().now();
    QStringList lines;
    for (const auto* record : records) {
        if (lines.size() >= static_cast<qsizetype>(lateShown)) break;
        const auto* tool = look->tool(record->tool);
        QString said = QStringLiteral("%1  %2, %3")
                           .arg(text::moment(record->at, now), titleOf(look->situation.deck, record->action),
                                tool ? text::words(tool->label) : QString());
        if (const QString verdict = verdictOf(drift.get(), record->id); !verdict.isEmpty())
            said += QStringLiteral(": ") + verdict;
        lines << said;
    }
    m_done->setText(lines.join(QLatin1Char('\n')));
    m_doneCard->setVisible(!lines.isEmpty());
}

void CarePage::showOrders() {
    const auto look = m_desk.look();
    QStringList lines;
    if (look)
        for (const auto& order : look->orders) {
            QString said = QStringLiteral("%1 × %2").arg(order.pieces).arg(text::spoken(order.what));
            if (!order.forWhat.empty()) said += QStringLiteral(", ") + text::spoken(order.forWhat);
            if (!order.why.empty()) said += QStringLiteral(": ") + text::spoken(order.why);
            lines << said;
        }
    m_orders->setText(lines.join(QLatin1Char('\n')));
    m_ordersCard->setVisible(!lines.isEmpty());
}

void CarePage::fillOthers() {
    const auto look = m_desk.look();
    if (!look) return;
    const QString before = m_tool->currentData().toString();
    const QSignalBlocker quiet(m_tool);
    m_tool->clear();
    for (const auto& tool : look->situation.tools)
        if (tool.service == Service::InUse)
            m_tool->addItem(text::words(tool.label), text::words(toText(tool.id.uuid)));
    m_tool->setCurrentIndex(std::max(0, m_tool->findData(before)));
    fillCards();
}

void CarePage::fillCards() {
    const auto look = m_desk.look();
    m_card->clear();
    const auto id = parseUuid(m_tool->currentData().toString().toStdString());
    if (!look || !id) return;
    const auto* tool = look->tool(ToolId{*id});
    if (!tool) return;
    for (const auto& one : look->situation.deck.cards)
        if (one.tool == care::kindOf(*tool)) m_card->addItem(text::fromCard(one.title), text::words(one.id));
}

// --- running -----------------------------------------------------------------------------------------------

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
    const auto fresh = care::start(*card, *tool, m_session.newId<CareId>(), m_session.clock().now(),
                                   m_session.crew(), answers);
    if (!fresh) return m_session.tell(fresh.error());
    run(*card, *tool, *fresh);
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

void CarePage::editCard() {
    const auto look = m_desk.look();
    const auto* card =
        look ? look->situation.deck.find(text::utf8(m_card->currentData().toString())) : nullptr;
    if (!card) return;
    auto* editor = new CardEditor(m_session, *card, window());
    editor->setAttribute(Qt::WA_DeleteOnClose);
    editor->open();
}

void CarePage::startWaiting() {
    if (!m_waiting || !m_desk.look()) return;
    const Target target = *m_waiting;
    m_waiting.reset();
    startCare(*target.tool, target.action, target.answers);
}

void CarePage::open(const Target& target) {
    if (target.tool && !target.action.empty()) {
        for (std::size_t i = 0; i < m_items.size(); ++i)
            if (m_items[i].tool == *target.tool && m_items[i].action == target.action) showDetail(i);
        m_waiting = target;
        startWaiting();
    } else if (target.tool) {
        for (std::size_t i = 0; i < m_items.size(); ++i)
            if (m_items[i].tool == *target.tool) return showDetail(i);
    }
}

QWidget* CarePage::firstFocus() {
    if (m_runner) return nullptr;
    if (m_chosen < m_rows.size()) return m_rows[m_chosen];
    return m_tool;
}

std::optional<Subject> CarePage::subject() {
    const auto look = m_desk.look();
    const auto* life = look && m_chosen < m_items.size() ? look->lifeOf(m_items[m_chosen].tool) : nullptr;
    if (!life) return std::nullopt;
    // The last time this care was done; until then the tool itself.
    const auto last = life->lastCare.find(m_items[m_chosen].action);
    if (last == life->lastCare.end()) return Subject{life->tool.id.uuid, text::words(life->tool.label)};
    const auto* card = look->situation.deck.find(last->first);
    return Subject{last->second.id.uuid, tr("%1 of %2")
                                             .arg(card ? text::fromCard(card->title) : text::words(last->first),
                                                  text::words(life->tool.label))};
}

bool CarePage::settled() const {
    return !m_desk.pending();
}

bool CarePage::eventFilter(QObject* watched, QEvent* event) {
    const auto it = std::ranges::find(m_rows, watched);
    if (it == m_rows.end()) return Page::eventFilter(watched, event);
    const auto index = static_cast<std::size_t>(it - m_rows.begin());
    if (event->type() == QEvent::FocusIn) showDetail(index);
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down && index + 1 < m_rows.size()) {
            m_rows[index + 1]->setFocus();
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            showDetail(index);
            m_start->click();
            return true;
        }
        if (key == Qt::Key_Up && index > 0) {
            m_rows[index - 1]->setFocus();
            return true;
        }
    }
    return Page::eventFilter(watched, event);
}

}  // namespace arc::ui
