// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/panel.hpp"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

std::pair<QVBoxLayout*, QLabel*> Panel::begin(const QString& said) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(currentTheme().px(10));
    auto* label = words(said, TextRole::Soft, this);
    label->setWordWrap(true);
    box->addWidget(label);
    return {box, label};
}

}  // namespace arc::ui
