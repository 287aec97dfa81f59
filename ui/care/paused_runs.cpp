// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/paused_runs.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/care/run.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/empty_out.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

PausedRuns::PausedRuns(QWidget* parent) : QWidget(parent), m_list(new QVBoxLayout(this)) {
    m_list->setContentsMargins(0, 0, 0, 0);
    m_list->setSpacing(currentTheme().px(8));
}

void PausedRuns::show(const std::vector<PausedRun>& runs, Instant now) {
    const Theme theme = currentTheme();
    emptyOut(*m_list);
    setVisible(!runs.empty());
    for (const auto& [one, card, tool] : runs) {
        const auto screen = care::screenOf(card, tool, one);
        auto* bar = ui::card(this, Ground::Wash);
        inside(bar)->setContentsMargins(theme.px(16), theme.px(8), theme.px(10), theme.px(8));
        auto* row = new QHBoxLayout;
        inside(bar)->addLayout(row);
        QString where = text::fromCard(card.title) + QStringLiteral(", ") + text::words(tool.label);
        if (screen.kind == care::ScreenKind::Step)
            where += tr(", step %1 of %2").arg(screen.number).arg(screen.of);
        auto* said = words(tr("Paused: %1. Begun %2 by %3.")
                               .arg(where, text::moment(one.startedAt, now),
                                    one.by.empty() ? tr("somebody") : text::words(one.by)),
                           TextRole::Bold, bar);
        said->setWordWrap(true);
        row->addWidget(said, 1);
        auto* on = button(tr("Go on with it"), ButtonKind::Usual, bar);
        auto* off = button(tr("Give it up"), ButtonKind::Quiet, bar);
        row->addWidget(on);
        row->addWidget(off);
        connect(on, &QPushButton::clicked, this, [this, run = one] { Q_EMIT goOnAsked(run); });
        connect(off, &QPushButton::clicked, this, [this, run = one] { Q_EMIT giveUpAsked(run); });
        m_list->addWidget(bar);
    }
}

}  // namespace arc::ui
