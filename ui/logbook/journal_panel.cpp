// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/journal_panel.hpp"

#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/history/history_sheet.hpp"
#include "ui/history/journal_table.hpp"
#include "ui/history/journal_view.hpp"
#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

JournalPanel::JournalPanel(Session& session, QWidget* parent) : Panel(parent), m_session(session) {
    const Theme theme = currentTheme();
    const auto [box, said] = begin();
    m_said = said;
    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(8), theme.px(8), theme.px(10));
    m_view = new JournalView(sheet);
    inside(sheet)->addWidget(m_view, 1);
    box->addWidget(sheet, 1);
    connect(&m_view->model(), &JournalTable::failed, &m_session, &Session::tell);
    connect(m_view, &JournalView::entered, this, [this] {
        if (const auto about = subject()) showHistory(m_session, *about, window());
    });
}

void JournalPanel::refresh() {
    const bool first = m_view->model().rowCount() == 0;
    if (const auto shown = m_view->model().addNew(m_session.book()); !shown)
        return m_session.tell(shown.error());
    if (first) m_view->choose(0);
    const auto totals = m_session.book().totals();
    m_said->setText(totals ? tr("%1 lines; each carries the hash of the one before. Enter: the history of "
                                "what a line is about.")
                                 .arg(text::number(static_cast<std::int64_t>(totals->journalRows)))
                           : QString());
}

QWidget* JournalPanel::firstFocus() {
    return &m_view->table();
}

std::optional<Subject> JournalPanel::subject() {
    const int row = m_view->chosen();
    if (row < 0) return std::nullopt;
    const auto& line = m_view->model().line(row);
    return Subject{JournalRow{line.row}, text::spoken(line.text)};
}

}  // namespace arc::ui
