// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/history_sheet.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/history/journal_table.hpp"
#include "ui/history/journal_view.hpp"
#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

HistorySheet::HistorySheet(Session& session, const Subject& subject, QWidget* parent)
    : QDialog(parent), m_session(session) {
    const Theme theme = currentTheme();
    setObjectName(QStringLiteral("history"));
    setWindowTitle(tr("History"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.px(24), theme.px(20), theme.px(24), theme.px(20));
    layout->setSpacing(theme.px(Gap::Middle));
    auto* title = words(tr("History: %1").arg(subject.name), TextRole::Heading, this);
    title->setWordWrap(true);
    layout->addWidget(title);
    m_said = words(QString(), TextRole::Soft, this);
    m_said->setWordWrap(true);
    layout->addWidget(m_said);
    m_view = new JournalView(this);
    layout->addWidget(m_view, 1);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* away = button(tr("Close  Esc"), ButtonKind::Usual, this);
    away->setAutoDefault(false);
    connect(away, &QPushButton::clicked, this, &QDialog::close);
    row->addWidget(away);
    layout->addLayout(row);
    fitTo(*this, {theme.px(1040), theme.px(500)});
    look(subject);
}

void HistorySheet::look(const Subject& subject) {
    if (const auto* record = std::get_if<Uuid>(&subject.of)) {
        if (auto lines = m_session.take(m_session.book().historyOf(*record))) show(std::move(*lines));
        return;
    }
    m_looking = true;
    m_said->setText(tr("Looking for the record…"));
    using Answer = Result<std::vector<JournalLine>>;
    m_session.background().run<Answer>(
        this, tr("Looking for the record of a journal line"),
        [&session = m_session, row = std::get<JournalRow>(subject.of).row](Progress&) -> Answer {
            auto reader = session.reader();
            if (!reader) return tl::unexpected(reader.error());
            const auto record = (*reader)->recordBehind(row);
            if (!record) return tl::unexpected(record.error());
            if (!*record) return std::vector<JournalLine>{};
            return (*reader)->historyOf(**record);
        },
        [this](Answer lines) {
            m_looking = false;
            if (!lines) return m_said->setText(asLine(lines.error()));
            if (lines->empty())
                return m_said->setText(
                    tr("This line wrote many records at once, as an import does. Find one "
                       "of them by Search on Today, then ask for its history."));
            show(std::move(*lines));
        },
        Shown::No);
}

void HistorySheet::show(std::vector<JournalLine> lines) {
    m_said->setText(lines.empty() ? tr("Nothing is written about it yet.")
                    : lines.size() == 1
                        ? tr("Written once and never changed.")
                        : tr("%1 entries, oldest first. Nothing is overwritten; the last one counts.")
                              .arg(text::number(static_cast<std::int64_t>(lines.size()))));
    m_view->model().show(std::move(lines));
    m_view->choose(m_view->model().rowCount() - 1);
    m_view->table().setFocus();
}

void showHistory(Session& session, const Subject& subject, QWidget* parent) {
    auto* sheet = new HistorySheet(session, subject, parent);
    sheet->setAttribute(Qt::WA_DeleteOnClose);
    sheet->open();
}

}  // namespace arc::ui
