// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/field_cell.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

void addField(QGridLayout& grid, int row, int column, const QString& name, QWidget& control, int span) {
    const Theme theme = currentTheme();
    auto* label = words(name, TextRole::Soft, control.parentWidget());
    label->setBuddy(&control);
    control.setAccessibleName(name);
    if (auto* choice = qobject_cast<QComboBox*>(&control)) {
        // A long title does not widen the sheet beyond the screen.
        choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        choice->setMinimumContentsLength(8);
    }
    auto* cell = new QVBoxLayout;
    cell->setSpacing(theme.px(2));
    cell->addWidget(label);
    cell->addWidget(&control);
    cell->addSpacing(theme.px(6));
    grid.addLayout(cell, row, column, 1, span);
}

}  // namespace arc::ui
