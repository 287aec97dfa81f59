// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kit/tool_card.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>

#include "ui/drift/words.hpp"
#include "ui/kit/tool_words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/icons.hpp"
#include "ui/widgets/blade_grid.hpp"
#include "ui/widgets/life_bar.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr std::size_t barsShown = 4;
/// What one blade position is usually good for (common practice: about 1,000 single cleaves; a ribbon wears
/// it as one cleave a fibre would).
constexpr std::uint32_t cleavesPerPosition = 1000;

}  // namespace

ToolCard::ToolCard(const kit::ToolLife& life, const drift::SplicerReport* report, const QString& partner,
                   Instant now, QWidget* parent)
    : QFrame(parent), m_tool(life.tool.id) {
    const Theme theme = currentTheme();
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(nameOf(life.tool));
    setCursor(Qt::PointingHandCursor);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.px(18), theme.px(14), theme.px(18), theme.px(14));
    layout->setSpacing(theme.px(6));
    addHead(life, report, partner);
    QStringList described{kindWords(life.tool)};
    // A count without a limit has no bar to fill; it stands in the detail.
    std::vector<const kit::LifeBar*> bars;
    for (const auto& bar : life.bars)
        if (bar.limit) bars.push_back(&bar);
    std::ranges::stable_sort(bars, std::greater(),
                             [](const kit::LifeBar* bar) { return *barWords(*bar).share; });
    if (bars.size() > barsShown) bars.resize(barsShown);
    for (const auto* one : bars) {
        const auto said = barWords(*one);
        auto* bar = new LifeBar(this);
        bar->set(text::spoken(one->title), said.words, said.share, said.mark);
        layout->addWidget(bar);
        described << QStringLiteral("%1 %2").arg(text::spoken(one->title), said.words);
    }
    if (life.calibration) {
        const auto said = calibrationWords(*life.calibration, now);
        auto* row = new QHBoxLayout;
        row->addWidget(words(tr("Arc calibration"), TextRole::Small, this));
        auto* state = words(said.words, TextRole::Bold, this);
        state->setWordWrap(true);
        state->setAlignment(Qt::AlignRight);
        if (said.mark == Mark::Drifting || said.mark == Mark::Watch) setState(state, stateName(said.mark));
        row->addWidget(state, 1);
        layout->addLayout(row);
        described << tr("arc calibration %1").arg(said.words);
    }
    if (life.blade) {
        const auto said = bladeWords(*life.blade);
        auto* label = words(tr("Blade: %1").arg(said.words), TextRole::Small, this);
        label->setWordWrap(true);
        if (said.mark != Mark::Steady) setState(label, stateName(said.mark));
        layout->addWidget(label);
        auto* grid = new BladeGrid(this);
        grid->setBlade(*life.blade, cleavesPerPosition);
        layout->addWidget(grid);
        described << said.words;
    }
    if (bars.empty() && !life.blade && !life.calibration)
        layout->addWidget(words(tr("nothing is counted for this tool yet"), TextRole::Small, this));
    layout->addStretch(1);
    setAccessibleDescription(described.join(QStringLiteral("; ")));
}

void ToolCard::addHead(const kit::ToolLife& life, const drift::SplicerReport* report,
                       const QString& partner) {
    const Theme theme = currentTheme();
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(12));
    const int side = theme.px(34);
    auto* picture = new QLabel(this);
    const bool out = life.tool.service == Service::OutOfService;
    picture->setPixmap(iconPixmap(iconOf(life.tool), side, theme.colour(out ? Role::Soft : Role::Accent),
                                  devicePixelRatioF()));
    row->addWidget(picture, 0, Qt::AlignTop);
    auto* texts = new QVBoxLayout;
    texts->setSpacing(0);
    texts->addWidget(words(nameOf(life.tool), TextRole::Strong, this));
    QString kind = kindWords(life.tool);
    if (!partner.isEmpty())
        kind += QStringLiteral(" · ") +
                (asSplicer(life.tool) ? tr("with %1").arg(partner) : tr("for %1").arg(partner));
    auto* soft = words(kind, TextRole::Small, this);
    soft->setWordWrap(true);
    texts->addWidget(soft);
    row->addLayout(texts, 1);
    if (out) {
        row->addWidget(words(tr("out of service"), TextRole::Bold, this), 0, Qt::AlignTop);
    } else if (report && !report->strata.empty()) {
        const Mark mark = markOf(report->standing);
        row->addWidget(new StateMark(mark, this), 0, Qt::AlignTop);
        auto* word = words(wordOf(mark), TextRole::Bold, this);
        setState(word, stateName(mark));
        row->addWidget(word, 0, Qt::AlignTop);
    }
    qobject_cast<QVBoxLayout*>(layout())->addLayout(row);
}

void ToolCard::setChosen(bool chosen) {
    m_chosen = chosen;
    update();
}

void ToolCard::focusInEvent(QFocusEvent* event) {
    QFrame::focusInEvent(event);
    Q_EMIT picked();
}

void ToolCard::mousePressEvent(QMouseEvent* event) {
    QFrame::mousePressEvent(event);
    setFocus(Qt::MouseFocusReason);
    Q_EMIT picked();
}

void ToolCard::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double pen = m_chosen ? theme.px(2) : 1;
    painter.setPen(QPen(theme.colour(m_chosen ? Role::Accent : Role::Line), pen));
    painter.setBrush(theme.colour(Role::Card));
    painter.drawRoundedRect(QRectF(rect()).adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2), theme.px(4),
                            theme.px(4));
}

}  // namespace arc::ui
