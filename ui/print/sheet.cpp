// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/sheet.hpp"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPageSize>
#include <QTextLayout>

#include <limits>

#include "ui/theme/palette.hpp"
#include "ui/theme/typeface.hpp"

namespace arc::print {
namespace {

constexpr double marginLeft = 20, marginRight = 17, marginTop = 25, marginBottom = 21;
constexpr double headBase = 14, footFromBottom = 12;

QString firstInstalled(const QStringList& families) {
    const QStringList installed = QFontDatabase::families();
    for (const QString& family : families)
        if (installed.contains(family)) return family;
    return installed.isEmpty() ? QString() : installed.first();
}

int flags(Across across) {
    switch (across) {
        case Across::Right:
            return Qt::AlignRight;
        case Across::Centre:
            return Qt::AlignHCenter;
        case Across::Left:
            break;
    }
    return Qt::AlignLeft;
}

/// Breaks at words, inside one only where it is longer than the line. Answers the height.
double wrap(QTextLayout& layout, double width) {
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    double height = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition(QPointF(0, height));
        height += line.height() * 1.06;
    }
    layout.endLayout();
    return height;
}

}  // namespace

namespace ink {
namespace {
QColor of(ui::Role role) {
    return ui::colour(ui::Tone::Day, role);
}
}  // namespace
QColor text() {
    return of(ui::Role::Ink);
}
QColor soft() {
    return of(ui::Role::Soft);
}
QColor accent() {
    return of(ui::Role::Accent);
}
QColor wash() {
    return of(ui::Role::AccentWash);
}
QColor shade() {
    return of(ui::Role::Shade);
}
QColor hairline() {
    return of(ui::Role::Line);
}
QColor steady() {
    return of(ui::Role::Steady);
}
QColor watch() {
    return of(ui::Role::Watch);
}
QColor drifting() {
    return of(ui::Role::Drifting);
}
QColor recovered() {
    return of(ui::Role::Recovered);
}
}  // namespace ink

Sheet::Sheet(QPdfWriter& writer, const Tongue& tongue, Frame frame, Pass pass, int pages)
    : m_writer(writer),
      m_tongue(tongue),
      m_painter(&writer),
      m_frame(std::move(frame)),
      m_pass(pass),
      m_pages(pages) {
    m_scale = writer.resolution() / 25.4;
    const QSizeF paper = writer.pageLayout().fullRect(QPageLayout::Millimeter).size();
    m_paperWidth = paper.width();
    m_paperHeight = paper.height();
    m_left = marginLeft;
    m_width = m_paperWidth - marginLeft - marginRight;
    m_top = marginTop;
    m_bottom = m_paperHeight - marginBottom;
    m_family = ui::typeface();
    m_mono = firstInstalled({"B612 Mono", "DejaVu Sans Mono"});
    m_painter.setRenderHint(QPainter::Antialiasing);
    y = m_top;
    dress();
}

void Sheet::newPage() {
    ++m_page;
    if (m_pass == Pass::Painting) m_writer.newPage();
    y = m_top;
    dress();
}

bool Sheet::need(double height) {
    if (y + height <= m_bottom) return false;
    newPage();
    return true;
}

void Sheet::dress() {
    if (!m_frame.watermark.isEmpty() && m_pass == Pass::Painting) {
        m_painter.save();
        m_painter.translate(px(m_paperWidth / 2), px(m_paperHeight / 2));
        m_painter.rotate(-52);
        m_painter.setFont(cutOf({118, Weight::Bold, {}, Face::Text}).font);
        m_painter.setPen(QColor(0xF1, 0xEA, 0xE4));
        const double w = px(280), h = px(70);
        m_painter.drawText(QRectF(-w / 2, -h / 2, w, h), Qt::AlignCenter, m_frame.watermark);
        m_painter.restore();
    }
    const Type small{7.5, Weight::Normal, ink::soft(), Face::Text};
    if (m_page > 1) {
        text(m_left, headBase, m_width * 0.6, m_frame.headLeft,
             {7.5, Weight::Bold, ink::accent(), Face::Text});
        text(m_left + m_width * 0.5, headBase, m_width * 0.5, m_frame.headRight, small, Across::Right);
        line(m_left, headBase + 2.2, m_left + m_width, headBase + 2.2, ink::accent(), 0.3);
    }
    const double foot = m_paperHeight - footFromBottom;
    line(m_left, foot - 4.2, m_left + m_width, foot - 4.2, ink::hairline(), 0.2);
    text(m_left, foot, m_width * 0.78, m_frame.footLeft, {6.5, Weight::Normal, ink::soft(), Face::Mono});
    text(m_left + m_width * 0.7, foot, m_width * 0.3, tr("Page %1 of %2").arg(m_page).arg(m_pages), small,
         Across::Right);
}

Sheet::Shaped Sheet::shape(Cut& cut, const QString& words) const {
    constexpr qsizetype most = 4096;
    const auto known = cut.shaped.constFind(words);
    if (known != cut.shaped.constEnd()) return *known;
    if (cut.shaped.size() >= most) cut.shaped.clear();
    QTextLayout layout(words, cut.font, &m_writer);
    layout.beginLayout();
    QTextLine line = layout.createLine();
    // Only a line that was given a width knows its ascent.
    line.setLineWidth(std::numeric_limits<int>::max());
    line.setPosition(QPointF(0, -line.ascent()));
    layout.endLayout();
    return *cut.shaped.insert(words, {layout.glyphRuns(), line.naturalTextWidth()});
}

Sheet::Cut& Sheet::cutOf(const Type& type) const {
    const auto key = std::tuple(type.points, type.weight, type.face);
    const auto known = m_cuts.find(key);
    if (known != m_cuts.end()) return known->second;
    QFont font(type.face == Face::Mono ? m_mono : m_family);
    font.setPointSizeF(type.points);
    font.setBold(type.weight == Weight::Bold);
    // Metrics of the paper, not of a screen.
    const QFont onPaper(font, &m_writer);
    return m_cuts.emplace(key, Cut{onPaper, QFontMetricsF(onPaper, &m_writer), {}}).first->second;
}

void Sheet::text(double x, double base, double width, const QString& words, const Type& type, Across across) {
    if (m_pass == Pass::Counting || words.isEmpty()) return;
    Cut& cut = cutOf(type);
    Shaped shaped = shape(cut, words);
    if (shaped.advance > px(width))
        shaped = shape(cut, cut.metrics.elidedText(words, Qt::ElideRight, px(width)));
    m_painter.setPen(type.colour);
    double at = px(x);
    if (flags(across) == Qt::AlignRight) at += px(width) - shaped.advance;
    if (flags(across) == Qt::AlignHCenter) at += (px(width) - shaped.advance) / 2;
    for (const QGlyphRun& run : shaped.runs) m_painter.drawGlyphRun(QPointF(at, px(base)), run);
}

double Sheet::textWidth(const QString& words, const Type& type) const {
    return cutOf(type).metrics.horizontalAdvance(words) / m_scale;
}

double Sheet::ascent(const Type& type) const {
    return cutOf(type).metrics.ascent() / m_scale;
}

double Sheet::heightOf(double width, const QString& words, const Type& type) const {
    if (words.isEmpty()) return 0;
    QTextLayout layout(words, cutOf(type).font, &m_writer);
    return wrap(layout, px(width)) / m_scale;
}

double Sheet::paragraph(double x, double top, double width, const QString& words, const Type& type) {
    if (words.isEmpty()) return 0;
    QTextLayout layout(words, cutOf(type).font, &m_writer);
    const double height = wrap(layout, px(width));
    if (m_pass == Pass::Painting) {
        m_painter.setPen(type.colour);
        layout.draw(&m_painter, QPointF(px(x), px(top)));
    }
    return height / m_scale;
}

void Sheet::line(double x1, double y1, double x2, double y2, const QColor& colour, double thickness) {
    if (m_pass == Pass::Counting) return;
    m_painter.setPen(QPen(colour, px(thickness), Qt::SolidLine, Qt::FlatCap));
    m_painter.drawLine(QPointF(px(x1), px(y1)), QPointF(px(x2), px(y2)));
}

void Sheet::box(const QRectF& r, const QColor& fill) {
    if (m_pass == Pass::Counting) return;
    m_painter.fillRect(QRectF(px(r.x()), px(r.y()), px(r.width()), px(r.height())), fill);
}

void Sheet::figure(const std::function<void(QPainter&, double)>& paint) {
    if (m_pass == Pass::Counting) return;
    m_painter.save();
    paint(m_painter, m_scale);
    m_painter.restore();
}

void Sheet::bareFigure(const std::function<void(QPainter&, double)>& paint) {
    if (m_pass == Pass::Painting) paint(m_painter, m_scale);
}

void Sheet::section(const QString& title, double follows) {
    if (y > m_top + 1) y += 7;
    need(12 + follows);
    begins(title, Rank::Section);
    text(m_left, y + 4.5, m_width, title, {13, Weight::Bold, ink::accent(), Face::Text});
    y += 10;
}

}  // namespace arc::print
