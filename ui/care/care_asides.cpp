// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/care_asides.hpp"

#include <QApplication>
#include <QClipboard>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/care/words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/empty_out.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr std::size_t lateShown = 5;

/// A sheet with a heading and a grid, in a frame of its own.
QGridLayout* sheetIn(QFrame* frame, const QString& heading, QVBoxLayout** inner = nullptr) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(frame);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(frame);
    outer->addWidget(sheet);
    inside(sheet)->addWidget(words(heading, TextRole::Strong, sheet));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(12));
    grid->setVerticalSpacing(theme.px(6));
    inside(sheet)->addLayout(grid);
    if (inner) *inner = inside(sheet);
    return grid;
}

QLabel* wrapped(const QString& text, TextRole role, QWidget* parent) {
    auto* label = words(text, role, parent);
    label->setWordWrap(true);
    return label;
}

QString amountOf(const care::OrderLine& order) {
    const QString number = text::number(static_cast<std::int64_t>(order.pieces));
    return order.unit.empty() ? number : QStringLiteral("%1 %2").arg(number, text::spoken(order.unit));
}

}  // namespace

DoneAside::DoneAside(QWidget* parent) : QFrame(parent) {
    m_grid = sheetIn(this, tr("Lately done, and whether it helped"));
    m_grid->setColumnStretch(1, 1);
}

void DoneAside::show(const CareLook* look, const DriftView* drift, Instant now) {
    emptyOut(*m_grid);
    std::vector<const CareRecord*> records;
    if (look)
        for (const auto& record : look->situation.records)
            if (record.action != action::environmentChange && record.action != action::note)
                records.push_back(&record);
    std::ranges::sort(records, std::greater{}, [](const CareRecord* r) { return r->at.ms; });
    records.resize(std::min(records.size(), lateShown));
    int row = 0;
    for (const auto* record : records) {
        const auto* tool = look->tool(record->tool);
        m_grid->addWidget(words(text::moment(record->at, now), TextRole::Soft, this), row, 0, Qt::AlignTop);
        m_grid->addWidget(
            wrapped(QStringLiteral("%1, %2").arg(careTitle(look->situation.deck, record->action),
                                                 tool ? text::words(tool->label) : QString()),
                    TextRole::Body, this),
            row, 1);
        if (const auto* effect = effectOf(drift, record->id)) {
            auto* verdict = words(verdictWords(effect->verdict), TextRole::Bold, this);
            const bool bad = effect->verdict == drift::CareVerdict::NoChange ||
                             effect->verdict == drift::CareVerdict::Worse;
            setState(verdict, bad ? QStringLiteral("watch")
                              : effect->verdict == drift::CareVerdict::TooEarly
                                  ? QStringLiteral("learning")
                                  : QStringLiteral("recovered"));
            m_grid->addWidget(verdict, row, 2, Qt::AlignTop | Qt::AlignRight);
        }
        ++row;
    }
    setVisible(row > 0);
}

OrdersAside::OrdersAside(QWidget* parent) : QFrame(parent) {
    QVBoxLayout* inner = nullptr;
    m_grid = sheetIn(this, tr("To order"), &inner);
    m_grid->setColumnStretch(2, 1);
    auto* copy = button(tr("Copy the list"), ButtonKind::Quiet, this);
    connect(copy, &QPushButton::clicked, this, [this] { QApplication::clipboard()->setText(m_text); });
    inner->addWidget(copy, 0, Qt::AlignLeft);
}

QString OrdersAside::asText(const CareLook& look) {
    QString text;
    for (const auto& order : look.orders)
        text += QStringLiteral("%1\t%2\t%3\t%4\n")
                    .arg(amountOf(order), text::spoken(order.what), text::spoken(order.forWhat),
                         text::spoken(order.why));
    return text;
}

void OrdersAside::show(const CareLook* look) {
    emptyOut(*m_grid);
    m_text = look ? asText(*look) : QString();
    int row = 0;
    if (look)
        for (const auto& order : look->orders) {
            auto* amount = words(amountOf(order), TextRole::Bold, this);
            m_grid->addWidget(amount, row, 0, Qt::AlignTop | Qt::AlignRight);
            m_grid->addWidget(
                wrapped(QStringLiteral("%1, %2").arg(text::spoken(order.what), text::spoken(order.forWhat)),
                        TextRole::Body, this),
                row, 1, 1, 2);
            QString why = text::spoken(order.why);
            if (order.neededBy) why += tr("; needed by %1").arg(text::day(*order.neededBy));
            m_grid->addWidget(wrapped(why, TextRole::Soft, this), row + 1, 1, 1, 2);
            row += 2;
        }
    setVisible(row > 0);
}

}  // namespace arc::ui
