// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fibre_swatch.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>

namespace arc::ui {
namespace {

struct Shown {
    QRgb rgb;
    const char* word;
};
/// In the order of FibreColour.
constexpr std::array<Shown, 15> shown{{{0xFF1F57C3, QT_TRANSLATE_NOOP("Fibre", "blue")},
                                       {0xFFE87511, QT_TRANSLATE_NOOP("Fibre", "orange")},
                                       {0xFF1C8A3B, QT_TRANSLATE_NOOP("Fibre", "green")},
                                       {0xFF7A4A21, QT_TRANSLATE_NOOP("Fibre", "brown")},
                                       {0xFF7C868D, QT_TRANSLATE_NOOP("Fibre", "slate")},
                                       {0xFFFFFFFF, QT_TRANSLATE_NOOP("Fibre", "white")},
                                       {0xFFC81E1E, QT_TRANSLATE_NOOP("Fibre", "red")},
                                       {0xFF111111, QT_TRANSLATE_NOOP("Fibre", "black")},
                                       {0xFFF2C500, QT_TRANSLATE_NOOP("Fibre", "yellow")},
                                       {0xFF6B2FA0, QT_TRANSLATE_NOOP("Fibre", "violet")},
                                       {0xFFEE8FA9, QT_TRANSLATE_NOOP("Fibre", "rose")},
                                       {0xFF7FE3E3, QT_TRANSLATE_NOOP("Fibre", "aqua")},
                                       {0xFF1FA5A5, QT_TRANSLATE_NOOP("Fibre", "turquoise")},
                                       {0xFFEFE6CF, QT_TRANSLATE_NOOP("Fibre", "natural")},
                                       {0xFFA6D93A, QT_TRANSLATE_NOOP("Fibre", "lime")}}};

const Shown& of(FibreColour colour) {
    return shown[static_cast<std::size_t>(colour)];
}

}  // namespace

QColor screenColour(FibreColour colour) {
    return QColor::fromRgb(of(colour).rgb);
}

QString wordOf(FibreColour colour) {
    return QCoreApplication::translate("Fibre", of(colour).word);
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
