// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/cause_bars.hpp"

#include <QPainter>

#include <algorithm>

#include "ui/drift/words.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

constexpr int rowHeight = 28;
constexpr int barHeight = 16;
constexpr double leastShown = 0.01;  ///< a weight that reads 0.00 tells nothing

}  // namespace

CauseBars::CauseBars(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Likely causes"));
}

void CauseBars::setCauses(std::vector<drift::CauseWeight> causes) {
    m_causes = std::move(causes);
    std::erase_if(m_causes, [](const drift::CauseWeight& cause) { return cause.weight < leastShown; });
    QStringList said;
    for (const auto& cause : m_causes)
        said << QStringLiteral("%1 %2").arg(wordOf(cause.cause), text::number(cause.weight, 2));
    setAccessibleDescription(said.join(QStringLiteral(", ")));
    updateGeometry();
    update();
}

QSize CauseBars::sizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(280), static_cast<int>(m_causes.size()) * theme.px(rowHeight)};
}

void CauseBars::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(theme.font(Text::Body));
    int wordWidth = 0;
    for (const auto& cause : m_causes)
        wordWidth = std::max(wordWidth, painter.fontMetrics().horizontalAdvance(wordOf(cause.cause)));
    const int number = painter.fontMetrics().horizontalAdvance(QStringLiteral("0.00")) + theme.px(8);
    const double left = wordWidth + theme.px(14);
    const double length = std::max(theme.px(30.0), static_cast<int>(width() - left - number));
    for (std::size_t i = 0; i < m_causes.size(); ++i) {
        const auto& cause = m_causes[i];
        const double top = static_cast<double>(i) * theme.px(rowHeight);
        const QRectF row(0, top, width(), theme.px(rowHeight));
        painter.setPen(theme.colour(Role::Ink));
        painter.setFont(theme.font(Text::Body, i == 0 ? Weight::Bold : Weight::Regular));
        painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, wordOf(cause.cause));
        painter.setFont(theme.font(Text::Body));
        painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, text::number(cause.weight, 2));
        const QRectF bar(left, row.center().y() - theme.px(barHeight) / 2.0, length, theme.px(barHeight));
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.colour(Role::Shade));
        painter.drawRoundedRect(bar, 2, 2);
        painter.setBrush(theme.colour(i == 0 ? Role::Drifting : Role::Soft));
        painter.drawRoundedRect(
            QRectF(bar.left(), bar.top(), std::max(2.0, bar.width() * std::min(1.0, cause.weight)),
                   bar.height()),
            2, 2);
    }
}

}  // namespace arc::ui
