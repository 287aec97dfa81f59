// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/pad_row.hpp"

#include <QLocale>
#include <QMouseEvent>
#include <QPainter>

#include "ui/theme/theme.hpp"
#include "ui/widgets/fibre_swatch.hpp"

namespace arc::ui {

bool PadRowView::operator==(const PadRowView& o) const {
    return number == o.number && colour == o.colour && look.colour == o.look.colour &&
           look.tracerMarks == o.look.tracerMarks && whole == o.whole && fraction == o.fraction &&
           attempt == o.attempt && earlier == o.earlier && mark == o.mark && verdict == o.verdict &&
           emphasis == o.emphasis;
}

PadColumns PadColumns::in(int width) {
    const Theme theme = currentTheme();
    // Large text on a small screen leaves no room for air between the columns.
    const bool narrow = width < theme.px(600);
    PadColumns c{};
    c.swatch = theme.px(narrow ? 16 : 24);
    c.number = c.swatch + theme.px(narrow ? 30 : 36);
    c.colour = c.number + theme.px(narrow ? 44 : 54);
    c.point = c.colour +
              (narrow ? theme.px(122) : std::max(theme.px(168), (width - theme.px(560)) / 2 + theme.px(100)));
    c.attempt = c.point + theme.px(narrow ? 74 : 96);
    c.mark = c.attempt + theme.px(narrow ? 48 : 84);
    c.verdict = c.mark + theme.px(narrow ? 18 : 28);
    return c;
}

namespace {

constexpr int verdictFlags = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;

int colourRoom(const PadColumns& at) {
    return at.point - at.colour - currentTheme().px(26);
}

int verdictRoom(const PadColumns& at, int wide) {
    return wide - at.verdict - currentTheme().px(8);
}

}  // namespace

PadRow::PadRow(QWidget* parent) : QWidget(parent) {
    setCursor(Qt::PointingHandCursor);
}

void PadRow::setView(const PadRowView& view) {
    if (view == m_view && !accessibleName().isEmpty()) return;
    m_view = view;
    QStringList said{tr("fibre %1 %2").arg(view.number).arg(view.colour)};
    if (!view.fraction.isEmpty()) said << view.whole + QLocale().decimalPoint() + view.fraction + tr(" dB");
    if (!view.attempt.isEmpty()) said << tr("attempt %1").arg(view.attempt);
    if (!view.verdict.isEmpty()) said << view.verdict;
    setAccessibleName(said.join(QStringLiteral(", ")));
    update();
}

bool PadRow::fits() const {
    const Theme theme = currentTheme();
    const PadColumns at = PadColumns::in(width());
    const QFontMetrics strong(theme.font(Text::Strong)), verdict(theme.font(verdictText()));
    const QRect room(0, 0, verdictRoom(at, width()), height());
    return strong.horizontalAdvance(m_view.colour) <= colourRoom(at) &&
           room.contains(verdict.boundingRect(room, verdictFlags, m_view.verdict));
}

Text PadRow::verdictText() const {
    return m_view.mark ? Text::Strong : Text::Body;
}

void PadRow::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) Q_EMIT chosen();
}

void PadRow::paintEvent(QPaintEvent*) {
    const Theme theme = currentTheme();
    const PadColumns at = PadColumns::in(width());
    const bool current = m_view.emphasis == Emphasis::Current;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);

    if (current) {
        const double edge = theme.px(2);
        painter.setBrush(theme.colour(Role::AccentWash));
        painter.setPen(QPen(theme.colour(Role::Accent), edge));
        const QRectF box =
            QRectF(rect()).adjusted(theme.px(6) + edge / 2, edge / 2, -theme.px(6) - edge / 2, -edge / 2);
        painter.drawRoundedRect(box, theme.px(4), theme.px(4));
    } else {
        painter.setPen(theme.colour(Role::Shade));
        painter.drawLine(theme.px(16), height() - 1, width() - theme.px(16), height() - 1);
    }

    const auto inLine = [&](const QFont& font, const QColor& colour, int x, const QString& words,
                            Qt::Alignment align = Qt::AlignLeft, int room = 0) {
        painter.setFont(font);
        painter.setPen(colour);
        const int w = room > 0 ? room : theme.px(400);
        const int left = align & Qt::AlignRight ? x - w : align & Qt::AlignHCenter ? x - w / 2 : x;
        const QString shown = room > 0 ? painter.fontMetrics().elidedText(words, Qt::ElideRight, w) : words;
        painter.drawText(QRect(left, 0, w, height()),
                         static_cast<int>(align | Qt::AlignVCenter) | Qt::TextDontClip, shown);
    };

    const int side = theme.px(22);
    paintFibre(painter, QRectF(at.swatch, (height() - side) / 2.0, side, side), m_view.look, theme);
    const QColor ink = theme.colour(Role::Ink);
    const QColor soft = current ? ink : theme.colour(Role::Soft);
    inLine(theme.font(Text::Heading, Weight::Bold), ink, at.number, QString::number(m_view.number));
    inLine(theme.font(Text::Strong), ink, at.colour, m_view.colour, Qt::AlignLeft, colourRoom(at));

    const QFont digits = theme.font(Text::Digits, Weight::Bold);
    const QColor digitInk = current ? theme.colour(Role::Accent) : ink;
    int caret = at.point;
    if (!m_view.whole.isEmpty() || !m_view.fraction.isEmpty()) {
        inLine(digits, digitInk, at.point, m_view.whole, Qt::AlignRight);
        const QString right = QLocale().decimalPoint() + m_view.fraction;
        inLine(digits, digitInk, at.point, right);
        caret += QFontMetrics(digits).horizontalAdvance(right) + theme.px(2);
    }
    if (current) {
        const int tall = theme.px(30);
        painter.fillRect(caret, (height() - tall) / 2, theme.px(2), tall, theme.colour(Role::Accent));
    }

    if (m_view.earlier.isEmpty() || height() < theme.px(40)) {
        inLine(theme.font(Text::Strong), soft, at.attempt, m_view.attempt, Qt::AlignHCenter);
    } else {
        painter.setPen(soft);
        painter.setFont(theme.font(Text::Strong));
        const QRect box(at.attempt - theme.px(45), 0, theme.px(90), height() / 2 + theme.px(5));
        painter.drawText(box, Qt::AlignHCenter | Qt::AlignBottom, m_view.attempt);
        painter.setFont(theme.font(Text::Tiny));
        painter.drawText(QRect(box.left(), box.bottom(), box.width(), height() - box.bottom()),
                         Qt::AlignHCenter | Qt::AlignTop, m_view.earlier);
    }
    if (m_view.mark) {
        const int markSide = theme.px(18);
        paintMark(painter, QRectF(at.mark - markSide / 2.0, (height() - markSide) / 2.0, markSide, markSide),
                  *m_view.mark, theme);
    }
    painter.setFont(theme.font(verdictText()));
    painter.setPen(m_view.mark ? ink : soft);
    painter.drawText(QRect(at.verdict, 0, verdictRoom(at, width()), height()), verdictFlags, m_view.verdict);
}

}  // namespace arc::ui
