// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/mend_sheet.hpp"

#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/models/cell_delegate.hpp"
#include "ui/models/set_aside_table.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/mend_drafts.hpp"
#include "ui/widgets/row_table.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {
constexpr int editorColumns = 6;

/// Which of their columns the fault is in.
std::size_t faultyCell(const SetAsideSheet& sheet, const std::string& column) {
    std::string theirs = column;
    if (sheet.key)
        if (const auto mapped = sheet.key->columns.find(column); mapped != sheet.key->columns.end())
            theirs = mapped->second;
    for (std::size_t i = 0; i < sheet.header.size(); ++i)
        if (columnName(sheet.header[i]) == theirs) return i;
    return 0;
}
}  // namespace

MendSheet::MendSheet(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(8));
    m_head = words(QString(), TextRole::Bold, this);
    m_head->setWordWrap(true);
    box->addWidget(m_head);
    m_rows = new SetAsideTable(this);
    m_table = new QTableView(this);
    m_table->setModel(m_rows);
    m_table->setItemDelegate(new CellDelegate(m_table));
    m_table->setAccessibleName(tr("Rows set aside"));
    showAsRows(*m_table, theme.px(32));
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->setMinimumHeight(theme.px(120));
    m_table->installEventFilter(this);
    box->addWidget(m_table, 1);
    m_editor = card(this, Ground::Wash);
    box->addWidget(m_editor);
    auto* in = inside(m_editor);
    m_which = words(QString(), TextRole::Soft, m_editor);
    in->addWidget(m_which);
    m_grid = new QGridLayout;
    m_grid->setHorizontalSpacing(theme.px(10));
    m_grid->setVerticalSpacing(theme.px(2));
    in->addLayout(m_grid);
    m_verdict = words(QString(), TextRole::Body, m_editor);
    m_verdict->setWordWrap(true);
    in->addWidget(m_verdict);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(10));
    m_take = button(tr("Take in the mended rows  Ctrl+Enter"), ButtonKind::Primary, this);
    m_out = button(tr("Leave this row out  Del"), ButtonKind::Usual, this);
    row->addWidget(m_take);
    row->addWidget(m_out);
    row->addStretch();
    box->addLayout(row);
    connect(m_table, &QTableView::doubleClicked, this,
            [this](const QModelIndex& index) { edit(index.row()); });
    connect(m_take, &QPushButton::clicked, this, &MendSheet::takeMended);
    connect(m_out, &QPushButton::clicked, this, &MendSheet::leaveOut);
    m_editor->hide();
}

int MendSheet::open() const {
    return static_cast<int>(m_places.size());
}

std::string MendSheet::nameOf(const Place& place) const {
    return m_sheets[place.sheet].id + "/" + m_sheets[place.sheet].rows[place.row].key;
}

int MendSheet::current() const {
    return m_table->currentIndex().row();
}

void MendSheet::begin(std::vector<SetAsideRow> others) {
    const int at = current();
    closeEditor();
    m_sheets.clear();
    m_places.clear();
    if (auto sheets = m_session.take(m_session.workbench().setAside())) m_sheets = std::move(*sheets);
    for (std::size_t s = 0; s < m_sheets.size(); ++s)
        for (std::size_t r = 0; r < m_sheets[s].rows.size(); ++r) m_places.push_back({s, r});
    const bool mendable = !m_places.empty();
    m_take->setVisible(mendable);
    m_out->setVisible(mendable);
    if (mendable) {
        bringBack();
        showRows();
    } else {
        const int count = static_cast<int>(others.size());
        m_rows->show(count,
                     [rows = std::move(others)](int row) { return rows[static_cast<std::size_t>(row)]; });
    }
    m_head->setText(mendable
                        ? tr("Set aside: nothing of these is lost. Choose a row and press Enter to mend it.")
                        : tr("Set aside: nothing of these is lost, mend them and import again"));
    if (!m_mended.empty())
        m_head->setText(m_head->text() + QLatin1Char(' ') +
                        tr("%1 are mended and not taken in yet.").arg(m_mended.size()));
    const Theme theme = currentTheme();
    const int widths[] = {150, 70, 140, 380};
    for (int i = 0; i < 4; ++i) m_table->setColumnWidth(i, theme.px(widths[i]));
    setVisible(m_rows->rowCount() > 0);
    if (m_rows->rowCount() > 0)
        m_table->setCurrentIndex(m_rows->index(std::clamp(at, 0, m_rows->rowCount() - 1), 0));
}

/// What was typed before, in this window or before a crash.
void MendSheet::bringBack() {
    m_mended.clear();
    const auto kept = rememberedMends();
    if (kept.empty()) return;
    std::map<std::size_t, std::vector<MendedRow>> bySheet;
    for (const Place& place : m_places) {
        const auto found = kept.find(nameOf(place));
        if (found == kept.end()) continue;
        MendedRow row = found->second;
        row.row = place.row;
        bySheet[place.sheet].push_back(std::move(row));
    }
    for (auto& [sheet, rows] : bySheet) {
        auto tried = m_session.take(m_session.workbench().mend(m_sheets[sheet], rows, MendPurpose::Try));
        if (!tried) return;
        for (auto& row : *tried) m_mended[nameOf({sheet, row.row})] = std::move(row);
    }
}

void MendSheet::forget(const std::string& name) {
    m_mended.erase(name);
    forgetMend(name);
}

void MendSheet::readAround(const Place& place) {
    constexpr std::size_t atOnce = 200;
    if (m_sheets[place.sheet].rows[place.row].line > 0) return;
    m_session.take(m_session.workbench()
                       .readSetAside(m_sheets[place.sheet], place.row / atOnce * atOnce, atOnce)
                       .map([] { return true; }));
}

SetAsideRow MendSheet::shown(int at) {
    const Place place = m_places[static_cast<std::size_t>(at)];
    readAround(place);
    SetAsideRow row = m_sheets[place.sheet].rows[place.row];
    const auto mended = m_mended.find(nameOf(place));
    if (mended == m_mended.end()) return row;
    const bool wrong = mended->second.verdict == MendVerdict::StillWrong;
    row.reason = wrong ? "still: " + mended->second.reason
                       : text::utf8(mended->second.verdict == MendVerdict::Known
                                        ? tr("mended; the logbook has it already")
                                        : tr("mended, will be taken in"));
    row.text = mended->second.text;
    for (std::size_t i = 0; i < mended->second.cells.size(); ++i)
        row.text += (i > 0 ? std::string(1, m_sheets[place.sheet].separator) : "") + mended->second.cells[i];
    return row;
}

void MendSheet::showRows() {
    const int at = current();
    m_rows->show(open(), [this](int row) { return shown(row); });
    if (at >= 0 && at < m_rows->rowCount()) m_table->setCurrentIndex(m_rows->index(at, 0));
}

void MendSheet::edit(int at) {
    closeEditor();
    if (at < 0 || at >= open()) return;
    m_table->setCurrentIndex(m_rows->index(at, 0));
    m_editing = m_places[static_cast<std::size_t>(at)];
    readAround(*m_editing);
    const auto& sheet = m_sheets[m_editing->sheet];
    const auto& row = sheet.rows[m_editing->row];
    const auto known = m_mended.find(nameOf(*m_editing));
    std::vector<std::string> cells = sheet.cells[m_editing->row];
    const bool whole = cells.size() != sheet.header.size();
    if (known != m_mended.end()) cells = known->second.cells;
    if (whole) cells = {known == m_mended.end() ? row.text : known->second.text};
    m_which->setText(tr("%1, line %2. Enter goes on, Esc leaves the row as it is.")
                         .arg(text::words(sheet.file), text::number(static_cast<std::int64_t>(row.line))));
    m_cellsHome = new QWidget(m_editor);
    auto* grid = new QGridLayout(m_cellsHome);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(0);
    for (std::size_t i = 0; i < cells.size(); ++i) {
        auto* cell = new QLineEdit(text::words(cells[i]), m_cellsHome);
        const QString name = whole ? tr("the whole row") : text::words(sheet.header[i]);
        cell->setAccessibleName(name);
        cell->installEventFilter(this);
        connect(cell, &QLineEdit::textChanged, this, &MendSheet::read);
        auto* label = words(name, TextRole::Soft, m_cellsHome);
        label->setBuddy(cell);
        const int place = static_cast<int>(i);
        grid->addWidget(label, place / editorColumns * 2, place % editorColumns);
        grid->addWidget(cell, place / editorColumns * 2 + 1, place % editorColumns);
        m_cells.push_back(cell);
    }
    m_grid->addWidget(m_cellsHome, 0, 0);
    m_verdict->setText(text::spoken(row.reason));
    setState(m_verdict, QStringLiteral("watch"));
    m_editor->show();
    auto* first = m_cells[whole ? 0 : faultyCell(sheet, row.column)];
    first->setFocus(Qt::OtherFocusReason);
    first->selectAll();
}

/// What is typed now, and what would come of it.
void MendSheet::read() {
    if (!m_editing) return;
    const auto& sheet = m_sheets[m_editing->sheet];
    MendedRow row;
    row.row = m_editing->row;
    if (sheet.cells[row.row].size() == sheet.header.size())
        for (const auto* cell : m_cells) row.cells.push_back(text::utf8(cell->text()));
    else
        row.text = text::utf8(m_cells.front()->text());
    const auto tried = m_session.workbench().mend(sheet, {row}, MendPurpose::Try);
    if (!tried) {
        m_verdict->setText(text::spoken(tried.error()));
        setState(m_verdict, QStringLiteral("drifting"));
        return;
    }
    row = tried->front();
    const bool wrong = row.verdict == MendVerdict::StillWrong;
    m_verdict->setText(
        wrong ? (row.column.empty() ? QString() : text::words(row.column) + QStringLiteral(": ")) +
                    text::spoken(row.reason)
        : row.verdict == MendVerdict::Known ? tr("The logbook has this splice already.")
                                            : tr("This row lands."));
    setState(m_verdict, wrong ? QStringLiteral("watch") : QStringLiteral("steady"));
    rememberMend(nameOf(*m_editing), row);
    m_mended[nameOf(*m_editing)] = std::move(row);
}

void MendSheet::closeEditor() {
    m_editing.reset();
    m_cells.clear();
    if (m_cellsHome) m_cellsHome->deleteLater();
    m_cellsHome = nullptr;
    m_editor->hide();
}

void MendSheet::takeMended() {
    closeEditor();
    bool any = false;
    for (std::size_t s = 0; s < m_sheets.size(); ++s) {
        std::vector<MendedRow> rows;
        for (std::size_t r = 0; r < m_sheets[s].rows.size(); ++r)
            if (const auto mended = m_mended.find(nameOf({s, r}));
                mended != m_mended.end() && mended->second.verdict != MendVerdict::StillWrong) {
                MendedRow row = mended->second;
                row.row = r;
                rows.push_back(std::move(row));
            }
        if (rows.empty()) continue;
        if (!m_session.take(m_session.workbench().mend(m_sheets[s], rows, MendPurpose::Import))) return;
        for (const auto& row : rows) forget(nameOf({s, row.row}));
        any = true;
    }
    if (!any) {
        m_head->setText(tr("No row is mended yet: choose one and press Enter"));
        m_table->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_session.noteWork();
    begin();
    Q_EMIT taken();
    if (isVisible()) m_table->setFocus(Qt::OtherFocusReason);
}

void MendSheet::leaveOut() {
    const int at = m_editing ? -1 : current();
    if (at < 0 || at >= open()) return;
    const Place place = m_places[static_cast<std::size_t>(at)];
    std::vector<Entry> entries;
    for (auto& setting : m_session.workbench().leftOut(m_sheets[place.sheet], {place.row}))
        entries.emplace_back(std::move(setting));
    if (entries.empty() || !m_session.save(entries)) return;
    forget(nameOf(place));
    begin();
    Q_EMIT taken();
    if (isVisible()) m_table->setFocus(Qt::OtherFocusReason);
}

bool MendSheet::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (enter && key->modifiers() & Qt::ControlModifier) {
        takeMended();
        return true;
    }
    if (watched == m_table) {
        if (enter) edit(current());
        if (key->key() == Qt::Key_Delete) leaveOut();
        return enter || key->key() == Qt::Key_Delete;
    }
    if (key->key() == Qt::Key_Escape) {
        if (m_editing) forget(nameOf(*m_editing));
        closeEditor();
        showRows();
        m_table->setFocus(Qt::OtherFocusReason);
        return true;
    }
    if (!enter) return false;
    const int next = current() + 1;
    closeEditor();
    showRows();
    if (next < open())
        edit(next);
    else
        m_table->setFocus(Qt::OtherFocusReason);
    return true;
}

}  // namespace arc::ui
