// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fitting.hpp"

#include <QLayout>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QWidget>

#include <algorithm>

#include "ui/widgets/scroll_canvas.hpp"

namespace arc::ui {
namespace {

QSize roomOver(const QWidget& sheet) {
    const QSize screen = sheet.screen()->availableSize();
    return sheet.parentWidget() ? sheet.parentWidget()->window()->size().boundedTo(screen) : screen;
}

int heightAt(const QLayout& layout, int width) {
    return layout.hasHeightForWidth() ? layout.totalHeightForWidth(width)
                                      : layout.totalMinimumSize().height();
}

void letScroll(QWidget& sheet) {
    auto* area = new QScrollArea;
    // A layout takes its widgets along.
    canvasIn(*area)->setLayout(sheet.layout());
    auto* outer = new QVBoxLayout(&sheet);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(area);
}

}  // namespace

void fitTo(QWidget& sheet, int width) {
    fitTo(sheet, {width, 0});
}

void fitTo(QWidget& sheet, QSize wanted) {
    // Fonts come with the style sheet; before it is applied words look narrower than they will be.
    sheet.ensurePolished();
    for (auto* child : sheet.findChildren<QWidget*>()) child->ensurePolished();
    auto* layout = sheet.layout();
    layout->invalidate();
    layout->activate();
    const QSize room = roomOver(sheet);
    const int width = std::min(std::max(wanted.width(), layout->totalMinimumSize().width()), room.width());
    const int needed = heightAt(*layout, width);
    if (needed > room.height()) letScroll(sheet);
    const int least = std::min(needed, room.height());
    sheet.setMinimumSize(std::min(sheet.layout()->totalMinimumSize().width(), width), least);
    sheet.resize(width, std::max(least, std::min(wanted.height(), room.height())));
}

}  // namespace arc::ui
