// SPDX-License-Identifier: GPL-3.0-or-later
// What the Today page says: the place one works at, the machine, the queues, the hold.
#include <QLabel>
#include <QStackedWidget>

#include <algorithm>

#include "ui/care/care_desk.hpp"
#include "ui/care/queue_row.hpp"
#include "ui/text/format.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/machine_card.hpp"
#include "ui/today/today_page.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/page_head.hpp"

namespace arc::ui {

void TodayPage::showHead() {
    if (m_stack->currentWidget() != m_work && m_stack->currentWidget() != m_empty) return;
    if (!m_here || !m_pad->pad()) {
        m_head->setTitle(tr("Today"));
        m_head->setLine({});
        return;
    }
    const auto& pad = *m_pad->pad();
    QStringList title, line;
    if (m_here->closure) title << tr("Closure %1").arg(text::words(m_here->closure->label));
    if (!pad.rows().empty()) {
        const auto index = static_cast<int>(pad.current());
        if (m_here->closure && m_here->closure->trays > 1 && m_here->closure->perTray > 0)
            title << tr("tray %1").arg(index / m_here->closure->perTray + 1);
        const int number = pad.rows()[pad.current()].fibre.number;
        const int size = m_here->cableA ? m_here->cableA->unitSize : 12;
        const bool ribbon =
            m_here->cableA ? m_here->cableA->unit == FibreUnit::Ribbon : pad.setUp().fibresPerArc > 1;
        title << (ribbon ? tr("ribbon %1") : tr("tube %1")).arg((number - 1) / size + 1);
    }
    if (title.isEmpty()) title << tr("No closure chosen");
    m_head->setTitle(title.join(QStringLiteral(" · ")));
    if (m_here->job)
        line << (m_here->job->title.empty()
                     ? tr("Job %1").arg(text::words(m_here->job->label))
                     : QStringLiteral("%1 → %2").arg(text::words(m_here->job->title),
                                                     tr("job %1").arg(text::words(m_here->job->label))));
    if (!m_here->span.empty()) line << tr("span %1").arg(text::words(m_here->span));
    if (m_here->twice) line << QStringLiteral("◆ ") + tr("the closure was edited twice, see Logbook, F7");
    if (!pad.rows().empty()) line << tr("%1 fibres, %2 done").arg(pad.rows().size()).arg(pad.done());
    if (pad.open() > 0)
        line << tr("%n to re-splice", nullptr, static_cast<int>(pad.open()))
                    .replace(QLatin1String("%n"), QString::number(pad.open()));
    line << tr("limit %1 dB, average %2")
                .arg(text::loss(pad.setUp().rule.perSplice), text::loss(pad.setUp().rule.average));
    m_head->setLine(line.join(QStringLiteral(" · ")));
}

void TodayPage::showMachine() {
    if (!m_here) return m_machine->clear();
    const auto drift = m_session.drift();
    const auto look = m_desk.look();
    const drift::SplicerReport unused;
    const auto* report = drift ? drift->reportOf(m_here->splicer.id) : nullptr;
    if (drift && !report) report = &unused;
    m_machine->setMachine(m_here->splicer, report, stratumKey(m_sitting.mode, m_here->setUp.fibresPerArc),
                          look ? look->lifeOf(m_here->splicer.id) : nullptr, m_session.clock().now());
}

void TodayPage::showQueues() {
    m_top.clear();
    const auto look = m_desk.look();
    for (std::size_t q = 0; q < m_queues.size(); ++q) {
        const auto queue = static_cast<care::Queue>(q);
        std::vector<const care::DueItem*> items;
        if (look)
            for (const auto& item : look->items)
                if (item.queue == queue) items.push_back(&item);
        // What concerns the tools in hand comes first.
        std::ranges::stable_partition(items, [&](const care::DueItem* item) {
            return item->tool == m_sitting.splicer || item->tool == m_sitting.cleaver;
        });
        if (items.empty()) {
            if (look)
                m_queues[q]->setEmpty(queue);
            else
                m_queues[q]->setLooking(queue);
            continue;
        }
        m_top.push_back(*items.front());
        m_queues[q]->setItem(*items.front(), static_cast<int>(items.size()) - 1);
    }
}

void TodayPage::showHold() {
    const auto look = m_desk.look();
    std::vector<care::DueItem> holds;
    if (look && m_sitting.splicer) holds = look->openHolds(*m_sitting.splicer);
    std::erase_if(holds, [this](const care::DueItem& item) { return m_overridden.contains(item.key); });
    m_hold->setVisible(!holds.empty());
    if (holds.empty()) return;
    m_holdTitle->setText(tr("Hold: %1").arg(text::spoken(holds.front().title)));
    QString why = text::spoken(holds.front().why);
    if (!holds.front().otherwise.empty()) why += QStringLiteral(". ") + text::spoken(holds.front().otherwise);
    m_holdWhy->setText(why);
}

}  // namespace arc::ui
