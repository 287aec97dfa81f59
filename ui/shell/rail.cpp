// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/rail.hpp"

#include <QFontMetrics>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/shell/page_list.hpp"
#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {
namespace {

constexpr int railWidth = 116;
constexpr int markSide = 60;
/// A button lower than this has no room for its icon; word and key stay.
constexpr int wholeButton = 74;
constexpr int lowButton = 46;

/// Wide enough for the longest word at the present scale, so that translations fit too.
int widthFor(const Theme& theme) {
    const QFontMetrics metrics(theme.font(Text::Strong, Weight::Bold));
    int widest = 0;
    for (const auto& row : pageList())
        widest = std::max(widest, metrics.horizontalAdvance(titleOf(row.screen)));
    return std::max(theme.px(railWidth), widest + theme.px(24));
}

}  // namespace

RailButton::RailButton(const QString& word, const QString& key, const QString& icon, QWidget* parent)
    : QPushButton(word, parent), m_key(key), m_icon(icon) {
    setProperty("kind", QStringLiteral("rail"));
    setAccessibleName(word);
    setAccessibleDescription(tr("key %1").arg(key));
    setCheckable(true);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
}

QSize RailButton::sizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(railWidth), theme.px(80)};
}

QSize RailButton::minimumSizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(60), theme.px(lowButton)};
}

void RailButton::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool on = isChecked();
    const QColor ink = theme.colour(on ? Role::Accent : Role::RailInk);
    if (on) painter.fillRect(rect(), theme.colour(Role::Paper));
    if (!on && underMouse()) painter.fillRect(rect(), theme.colour(Role::RailInk, 0.12));
    if (hasFocus()) {
        painter.setPen(QPen(ink, theme.px(2)));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(4, 4, -4, -4), 4, 4);
    }
    const bool whole = height() >= theme.px(wholeButton);
    const int side = theme.px(24);
    if (whole)
        painter.drawPixmap((width() - side) / 2, theme.px(10),
                           iconPixmap(m_icon, side, ink, devicePixelRatioF()));
    const int top = whole ? theme.px(36) : (height() - theme.px(38)) / 2;
    painter.setPen(ink);
    painter.setFont(theme.font(Text::Strong, Weight::Bold));
    painter.drawText(QRect(0, top, width(), theme.px(22)), Qt::AlignCenter, text());
    painter.setPen(on ? ink : theme.colour(Role::RailSoft));
    painter.setFont(theme.font(Text::Tiny));
    painter.drawText(QRect(0, top + theme.px(21), width(), theme.px(16)), Qt::AlignCenter, m_key);
}

Rail::Rail(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    setObjectName(QStringLiteral("rail"));
    setAttribute(Qt::WA_StyledBackground);
    setAccessibleName(tr("Screens"));
    setFixedWidth(widthFor(theme));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, theme.px(96), 0, theme.px(14));
    layout->setSpacing(theme.px(2));
    for (const auto& row : pageList()) {
        auto* made =
            new RailButton(titleOf(row.screen), QKeySequence(row.key).toString(QKeySequence::NativeText),
                           QString::fromLatin1(row.icon), this);
        connect(made, &QPushButton::clicked, this, [this, screen = row.screen] {
            setScreen(screen);
            Q_EMIT screenChosen(screen);
        });
        m_buttons.push_back(made);
        layout->addWidget(made);
    }
    layout->addStretch(1);
    m_crew = new QPushButton(this);
    m_crew->setProperty("kind", QStringLiteral("rail"));
    m_crew->setMinimumHeight(theme.px(Touch::Usual));
    m_crew->setFont(theme.font(Text::Small));
    m_crew->setCursor(Qt::PointingHandCursor);
    connect(m_crew, &QPushButton::clicked, this, &Rail::crewChosen);
    layout->addWidget(m_crew);
    auto* help = new QPushButton(tr("Help  F1"), this);
    help->setAccessibleName(tr("Help and keys"));
    help->setProperty("kind", QStringLiteral("rail"));
    help->setMinimumHeight(theme.px(Touch::Usual));
    help->setCursor(Qt::PointingHandCursor);
    connect(help, &QPushButton::clicked, this, &Rail::helpChosen);
    layout->addWidget(help);
    m_saved = new QLabel(this);
    m_saved->setProperty("text_role", QStringLiteral("rail"));
    m_saved->setAlignment(Qt::AlignCenter);
    m_saved->setWordWrap(true);
    m_saved->setAccessibleName(tr("Last entry on disk"));
    layout->addWidget(m_saved);
    setCrew({});
    setSaved({});
}

void Rail::setScreen(Screen screen) {
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setChecked(i == static_cast<std::size_t>(screen));
}

void Rail::setSaved(const QString& text) {
    m_saved->setText(text.isEmpty() ? tr("nothing written yet") : text);
}

void Rail::setCrew(const QString& crew) {
    const QFontMetrics metrics(currentTheme().font(Text::Small));
    const QString said = crew.isEmpty() ? tr("Sign on") : crew;
    m_crew->setText(metrics.elidedText(said, Qt::ElideRight, width() - currentTheme().px(12)));
    m_crew->setToolTip(said);
    m_crew->setAccessibleName(crew.isEmpty() ? tr("Say who is at the keyboard")
                                             : tr("At the keyboard: %1").arg(crew));
}

void Rail::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.fillRect(rect(), theme.colour(Role::Rail));
    const int side = theme.px(markSide);
    painter.drawPixmap(
        (width() - side) / 2, theme.px(18),
        iconPixmap(QStringLiteral("mark"), side, theme.colour(Role::RailInk), devicePixelRatioF()));
}

}  // namespace arc::ui
