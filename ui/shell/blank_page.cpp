// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/blank_page.hpp"

#include <QVBoxLayout>

#include "ui/widgets/page_head.hpp"

namespace arc::ui {

BlankPage::BlankPage(Session& /*session*/, QWidget* parent) : Page(parent) {
    auto* layout = new QVBoxLayout(this);
    auto* head = new PageHead(this);
    head->setTitle(tr("Not here yet"));
    layout->addWidget(head);
    layout->addStretch();
}

}  // namespace arc::ui
