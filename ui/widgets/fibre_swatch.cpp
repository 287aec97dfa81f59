// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fibre_swatch.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <string>

#include "ui/theme/fibre_colours.hpp"

namespace arc::ui {
namespace {

/// In the order of FibreColour; here only so that the translator's tool finds the words.
[[maybe_unused]] constexpr std::array translated{
    QT_TRANSLATE_NOOP("Fibre", "blue"),      QT_TRANSLATE_NOOP("Fibre", "orange"),
    QT_TRANSLATE_NOOP("Fibre", "green"),     QT_TRANSLATE_NOOP("Fibre", "brown"),
    QT_TRANSLATE_NOOP("Fibre", "slate"),     QT_TRANSLATE_NOOP("Fibre", "white"),
    QT_TRANSLATE_NOOP("Fibre", "red"),       QT_TRANSLATE_NOOP("Fibre", "black"),
    QT_TRANSLATE_NOOP("Fibre", "yellow"),    QT_TRANSLATE_NOOP("Fibre", "violet"),
    QT_TRANSLATE_NOOP("Fibre", "rose"),      QT_TRANSLATE_NOOP("Fibre", "aqua"),
    QT_TRANSLATE_NOOP("Fibre", "turquoise"), QT_TRANSLATE_NOOP("Fibre", "natural"),
    QT_TRANSLATE_NOOP("Fibre", "lime"),      QT_TRANSLATE_NOOP("Fibre", "grey"),
    QT_TRANSLATE_NOOP("Fibre", "pink")};

}  // namespace

QColor screenColour(FibreColour colour) {
    return fibreColour(colour);
}

QString wordOf(FibreColour colour) {
    return QCoreApplication::translate("Fibre", std::string(word(colour)).c_str());
}

QString wordsOf(const FibreLook& look) {
    if (look.tracerMarks == 0) return wordOf(look.colour);
    return QCoreApplication::translate("Fibre", "%1, %n tracer mark(s)", nullptr, look.tracerMarks)
        .arg(wordOf(look.colour));
}

void paintFibre(QPainter& painter, const QRectF& box, const FibreLook& look, const Theme& theme) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = std::min(box.width(), box.height()) - 2;
    const QRectF disc(box.center().x() - side / 2, box.center().y() - side / 2, side, side);
    const QColor fill = screenColour(look.colour);
    painter.setPen(Qt::NoPen);
    painter.setBrush(fill);
    painter.drawEllipse(disc);
    if (look.tracerMarks > 0) {
        QPainterPath clip;
        clip.addEllipse(disc);
        painter.setClipPath(clip);
        painter.setBrush(fill.lightnessF() < 0.25F ? QColor(Qt::white) : QColor(Qt::black));
        const int marks = std::min(look.tracerMarks, 4);
        const double step = side / (marks + 1);
        for (int i = 1; i <= marks; ++i)
            painter.drawRect(QRectF(disc.left() + step * i - side * 0.05, disc.top(), side * 0.10, side));
        painter.setClipping(false);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.colour(Role::Ink), 1.2 * theme.scale()));
    painter.drawEllipse(disc);
    painter.restore();
}

FibreSwatch::FibreSwatch(FibreLook look, QWidget* parent) : QWidget(parent), m_look(look) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setLook(look);
}

void FibreSwatch::setLook(FibreLook look) {
    m_look = look;
    setAccessibleName(wordsOf(look));
    setToolTip(wordsOf(look));
    update();
}

QSize FibreSwatch::sizeHint() const {
    const int side = currentTheme().px(24);
    return {side, side};
}

void FibreSwatch::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    paintFibre(painter, QRectF(rect()), m_look, currentTheme());
}

}  // namespace arc::ui
