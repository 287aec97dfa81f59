// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/pad_rows.hpp"

#include <QPainter>

#include <algorithm>

#include "ui/theme/theme.hpp"
#include "ui/today/loss_pad.hpp"

namespace arc::ui {

namespace {

constexpr std::size_t mostRows = 16;
constexpr int headTall = 28, stripTall = 28, tallestRow = 70;
/// Fewer rows than this leave no room to see where one is.
constexpr int fewestRows = 3;

}  // namespace

PadRows::PadRows(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    for (std::size_t i = 0; i < mostRows; ++i) {
        auto* row = new PadRow(this);
        row->hide();
        connect(row, &PadRow::chosen, this, [this, i] { Q_EMIT chosen(i); });
        m_rows.push_back(row);
    }
}

QSize PadRows::minimumSizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(430), theme.px(headTall + stripTall) + fewestRows * theme.px(Touch::Pad)};
}

QSize PadRows::sizeHint() const {
    // What is wished for makes the page scroll; the rows take what is there.
    return minimumSizeHint();
}

void PadRows::setViews(std::vector<PadRowView> views, std::size_t current) {
    m_views = std::move(views);
    if (m_views.size() > mostRows) m_views.resize(mostRows);
    m_current = current;
    arrange();
    update();
}

const PadRow* PadRows::currentRow() const {
    return m_current < m_views.size() ? m_rows[m_current] : nullptr;
}

void PadRows::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void PadRows::arrange() {
    const Theme theme = currentTheme();
    const auto count = m_views.size();
    const int least = theme.px(Touch::Pad);
    int room = height() - theme.px(headTall);
    const auto fits = [&] { return static_cast<std::size_t>(std::max(1, room / least)); };
    m_inSight = std::min(count, fits());
    if (m_inSight < count) {
        room -= theme.px(stripTall);
        m_inSight = std::min(count, fits());
        // One row before and one behind the current one are in sight as well.
        if (m_current < m_first + 1) m_first = m_current > 0 ? m_current - 1 : 0;
        if (m_current + 2 > m_first + m_inSight) m_first = m_current + 2 - std::min(m_current + 2, m_inSight);
        m_first = std::min(m_first, count - m_inSight);
    } else {
        m_first = 0;
    }
    const int tall = m_inSight > 0 ? std::min(theme.px(tallestRow), room / static_cast<int>(m_inSight)) : 0;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (i < count) m_rows[i]->setView(m_views[i]);
        const bool seen = i >= m_first && i < m_first + m_inSight;
        if (seen)
            m_rows[i]->setGeometry(0, theme.px(headTall) + static_cast<int>(i - m_first) * tall, width(),
                                   std::max(tall, least));
        m_rows[i]->setVisible(seen);
    }
}

void PadRows::paintEvent(QPaintEvent*) {
    const Theme theme = currentTheme();
    const PadColumns at = PadColumns::in(width());
    const int tall = theme.px(headTall);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(theme.font(Text::Small));
    painter.setPen(theme.colour(Role::Soft));
    const auto put = [&](int x, const QString& name, Qt::Alignment align) {
        const int room = theme.px(160);
        const int left = align & Qt::AlignRight ? x - room : align & Qt::AlignHCenter ? x - room / 2 : x;
        painter.drawText(QRect(left, 0, room, tall), static_cast<int>(align | Qt::AlignVCenter), name);
    };
    put(at.swatch, LossPad::tr("fibre"), Qt::AlignLeft);
    const QFontMetrics digits(theme.font(Text::Digits, Weight::Bold));
    put(at.point + digits.horizontalAdvance(QStringLiteral(".00")), LossPad::tr("loss dB"), Qt::AlignRight);
    put(at.attempt, LossPad::tr("attempt"), Qt::AlignHCenter);
    put(at.mark - theme.px(9), LossPad::tr("verdict"), Qt::AlignLeft);
    if (m_inSight == m_views.size()) return;
    put(width() - theme.px(16),
        tr("%1–%2 of %3").arg(m_first + 1).arg(m_first + m_inSight).arg(m_views.size()), Qt::AlignRight);
    paintStrip(painter);
}

void PadRows::paintStrip(QPainter& painter) const {
    const Theme theme = currentTheme();
    const int tall = theme.px(stripTall);
    const int side = theme.px(12);
    const double wide = (width() - 2.0 * theme.px(16)) / static_cast<double>(m_views.size());
    for (std::size_t i = 0; i < m_views.size(); ++i) {
        const PadRowView& view = m_views[i];
        const QRectF cell(theme.px(16) + wide * static_cast<double>(i), height() - tall, wide, tall);
        const bool current = i == m_current;
        if (current) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(theme.colour(Role::AccentWash));
            painter.drawRoundedRect(cell.adjusted(1, 2, -1, -2), theme.px(4), theme.px(4));
        }
        painter.setFont(theme.font(Text::Small, current ? Weight::Bold : Weight::Regular));
        painter.setPen(theme.colour(current ? Role::Ink : Role::Soft));
        const double half = cell.width() / 2;
        painter.drawText(QRectF(cell.left(), cell.top(), half, tall),
                         static_cast<int>(Qt::AlignRight | Qt::AlignVCenter) | Qt::TextDontClip,
                         QString::number(view.number));
        if (view.mark)
            paintMark(painter,
                      QRectF(cell.left() + half + theme.px(4), cell.top() + (tall - side) / 2.0, side, side),
                      *view.mark, theme);
    }
}

}  // namespace arc::ui
