// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/splicer_chips.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>

#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr std::size_t chipsAtMost = 6;

QIcon markIcon(Mark mark) {
    const int side = currentTheme().px(14);
    QPixmap picture(side, side);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    paintMark(painter, QRectF(picture.rect()), mark, currentTheme());
    return QIcon(picture);
}

}  // namespace

SplicerChips::SplicerChips(QWidget* parent) : QWidget(parent) {
    m_layout = new QHBoxLayout(this);
    m_layout->setContentsMargins(0, 0, 0, 0);
}

void SplicerChips::show(const std::vector<drift::SplicerReport>& reports, std::size_t splicer,
                        std::size_t stratum) {
    const bool hadFocus = m_chips && m_chips->focusWidget() &&
                          m_chips->isAncestorOf(m_chips->focusWidget()) && m_chips->focusWidget()->hasFocus();
    // Deleted later: this may be called from a click of one of them.
    if (m_chips) {
        m_chips->hide();
        m_chips->deleteLater();
    }
    m_chips = new QWidget(this);
    m_layout->addWidget(m_chips);
    auto* row = new QHBoxLayout(m_chips);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(currentTheme().px(6));
    QWidget* current = nullptr;
    if (reports.size() <= chipsAtMost) {
        for (std::size_t i = 0; i < reports.size(); ++i) {
            const Mark mark = markOf(reports[i].standing);
            auto* chip = button(text::words(reports[i].label), ButtonKind::Choice, m_chips);
            chip->setCheckable(true);
            chip->setChecked(i == splicer);
            chip->setIcon(markIcon(mark));
            chip->setAccessibleName(tr("%1, %2").arg(text::words(reports[i].label), wordOf(mark)));
            chip->setToolTip(chip->accessibleName());
            connect(chip, &QPushButton::clicked, this,
                    [this, i] { Q_EMIT splicerChosen(static_cast<int>(i)); });
            row->addWidget(chip);
            if (i == splicer) current = chip;
        }
    } else {
        auto* list = new QComboBox(m_chips);
        list->setAccessibleName(tr("Splicer"));
        for (const auto& report : reports)
            list->addItem(markIcon(markOf(report.standing)),
                          tr("%1, %2").arg(text::words(report.label), wordOf(markOf(report.standing))));
        list->setCurrentIndex(static_cast<int>(splicer));
        connect(list, &QComboBox::activated, this, &SplicerChips::splicerChosen);
        row->addWidget(list);
        current = list;
    }
    if (splicer < reports.size() && reports[splicer].strata.size() > 1) {
        auto* strata = new QComboBox(m_chips);
        strata->setAccessibleName(tr("Mode and fibres an arc"));
        for (const auto& one : reports[splicer].strata)
            strata->addItem(markIcon(markOf(one.standing)), text::words(one.stratum));
        strata->setCurrentIndex(static_cast<int>(stratum));
        connect(strata, &QComboBox::activated, this, &SplicerChips::stratumChosen);
        row->addWidget(strata);
    }
    m_chips->show();
    if (hadFocus && current) current->setFocus();
}

}  // namespace arc::ui
