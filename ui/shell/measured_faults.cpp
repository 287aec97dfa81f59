// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/measured_faults.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QLocale>

#include "ui/shell/help.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

QWidget* measuredTable(QWidget* parent) {
    auto* table = new QWidget(parent);
    auto* grid = new QGridLayout(table);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(currentTheme().px(Gap::Large));
    grid->setColumnStretch(0, 1);
    const auto put = [&](const QString& text, TextRole role, int row, int column) {
        auto* label = words(text, role, table);
        if (column > 0) label->setAlignment(Qt::AlignRight | Qt::AlignTop);
        grid->addWidget(label, row, column);
        return label;
    };
    int row = 0;
    put(Help::tr("Simulated fault"), TextRole::Bold, row, 0);
    put(Help::tr("arcs to the signal"), TextRole::Bold, row, 1);
    put(Help::tr("cause named right"), TextRole::Bold, row, 2);
    for (const auto& fault : measuredFaults) {
        put(Help::tr(fault.english), TextRole::Body, ++row, 0)->setWordWrap(true);
        put(QLocale().toString(fault.meanArcs, 'f', 0), TextRole::Body, row, 1);
        put(QStringLiteral("%1 %").arg(fault.causePercent), TextRole::Body, row, 2);
    }
    return table;
}

}  // namespace arc::ui
