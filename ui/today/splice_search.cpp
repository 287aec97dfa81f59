// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/splice_search.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/models/cell_delegate.hpp"
#include "ui/models/splice_table.hpp"
#include "ui/shell/typed_words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

/// After the last key, so that a word is one query.
constexpr int typingPauseMs = 180;

}  // namespace

SpliceSearch::SpliceSearch(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_model(new SpliceTable(session.book(), this)) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(10));
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(8));
    m_text = new QLineEdit(this);
    markPassing(*m_text);
    m_text->setPlaceholderText(tr("fibre, note or person"));
    m_text->setAccessibleName(tr("Search words"));
    m_text->setClearButtonEnabled(false);
    m_job = new QComboBox(this);
    m_job->setAccessibleName(tr("Job"));
    m_splicer = new QComboBox(this);
    m_splicer->setAccessibleName(tr("Splicer"));
    m_time = new QComboBox(this);
    m_time->setAccessibleName(tr("Time"));
    m_time->addItem(tr("any time"), 0);
    m_time->addItem(tr("last 24 hours"), 1);
    m_time->addItem(tr("last 7 days"), 7);
    m_time->addItem(tr("last 30 days"), 30);
    m_loss = new QComboBox(this);
    m_loss->setAccessibleName(tr("Loss"));
    m_loss->addItem(tr("any loss"), -1);
    for (const int mdb : {50, 100, 150, 300})
        m_loss->addItem(tr("above %1 dB").arg(text::loss(Loss{mdb})), mdb);
    auto* leave = button(tr("Back  Esc"), ButtonKind::Usual, this);
    row->addWidget(m_text, 3);
    row->addWidget(m_job, 2);
    row->addWidget(m_splicer, 2);
    row->addWidget(m_time, 2);
    row->addWidget(m_loss, 2);
    row->addWidget(leave);
    box->addLayout(row);

    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(8), theme.px(8), theme.px(8));
    m_table = new QTableView(sheet);
    m_table->setModel(m_model);
    m_table->setItemDelegate(new CellDelegate(m_table));
    m_table->setAccessibleName(tr("Splices"));
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(theme.px(34));
    m_table->setShowGrid(false);
    m_table->setWordWrap(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->horizontalHeader()->setHighlightSections(false);
    const int widths[] = {165, 170, 76, 80, 84, 130, 90, 90, 90};
    for (int i = 0; i < 9; ++i) m_table->setColumnWidth(i, theme.px(widths[i]));
    inside(sheet)->addWidget(m_table, 1);
    box->addWidget(sheet, 1);
    m_count = words(QString(), TextRole::Small, this);
    m_history = words(QString(), TextRole::Small, this);
    m_history->setWordWrap(true);
    m_history->setAccessibleName(tr("History of the chosen splice"));
    box->addWidget(m_count);
    box->addWidget(m_history);

    m_soon.setSingleShot(true);
    m_soon.setInterval(typingPauseMs);
    connect(&m_soon, &QTimer::timeout, this, &SpliceSearch::filter);
    connect(m_text, &QLineEdit::textChanged, this, [this] { m_soon.start(); });
    for (auto* choice : {m_job, m_splicer, m_time, m_loss})
        connect(choice, &QComboBox::activated, this, &SpliceSearch::filter);
    connect(leave, &QPushButton::clicked, this, &SpliceSearch::left);
    connect(m_model, &SpliceTable::failed, &m_session, &Session::tell);
    connect(m_model, &QAbstractItemModel::rowsInserted, this, [this] {
        m_count->setText(
            m_model->complete()
                ? tr("%1 splices").arg(text::number(std::int64_t{m_model->rowCount()}))
                : tr("%1 splices and more below").arg(text::number(std::int64_t{m_model->rowCount()})));
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &SpliceSearch::showHistory);
    for (QObject* part : std::initializer_list<QObject*>{m_text, m_job, m_splicer, m_time, m_loss, m_table})
        part->installEventFilter(this);
}

void SpliceSearch::fillChoices() {
    if (auto jobs = m_session.take(m_session.book().jobs())) m_jobs = std::move(*jobs);
    const auto tools = m_session.take(m_session.book().tools());
    m_splicers.clear();
    if (tools)
        for (const auto& tool : *tools)
            if (asSplicer(tool)) m_splicers.push_back(tool);
    const QString job = m_job->currentText();
    const QString splicer = m_splicer->currentText();
    m_job->clear();
    m_job->addItem(tr("any job"));
    for (const auto& one : m_jobs) m_job->addItem(text::words(one.label));
    m_splicer->clear();
    m_splicer->addItem(tr("any splicer"));
    for (const auto& one : m_splicers) m_splicer->addItem(text::words(one.label));
    m_job->setCurrentIndex(std::max(0, m_job->findText(job)));
    m_splicer->setCurrentIndex(std::max(0, m_splicer->findText(splicer)));
}

void SpliceSearch::begin() {
    fillChoices();
    filter();
    m_text->setFocus(Qt::OtherFocusReason);
    m_text->selectAll();
}

void SpliceSearch::filter() {
    SpliceFilter filter;
    filter.text = text::utf8(m_text->text().trimmed());
    if (m_job->currentIndex() > 0)
        filter.job = m_jobs[static_cast<std::size_t>(m_job->currentIndex() - 1)].id;
    if (m_splicer->currentIndex() > 0)
        filter.splicer = m_splicers[static_cast<std::size_t>(m_splicer->currentIndex() - 1)].id;
    if (const int days = m_time->currentData().toInt(); days > 0)
        filter.fromMs = m_session.clock().now().ms - days * msPerDay;
    if (const int mdb = m_loss->currentData().toInt(); mdb >= 0) filter.lossAbove = Loss{mdb};
    if (const auto shown = m_model->show(filter); !shown) return m_session.tell(shown.error());
    const auto count = m_model->rowCount();
    m_count->setText(count == 0 ? tr("No splice fits. Take a filter away.")
                     : m_model->complete()
                         ? tr("%1 splices").arg(text::number(std::int64_t{count}))
                         : tr("%1 splices and more below").arg(text::number(std::int64_t{count})));
    m_history->clear();
}

void SpliceSearch::showHistory() {
    const auto index = m_table->currentIndex();
    if (!index.isValid()) return m_history->clear();
    const auto& row = m_model->row(index.row());
    const auto lines = m_session.take(m_session.book().historyOf(row.arc.id.uuid));
    if (!lines) return;
    QStringList said;
    const Instant now = m_session.clock().now();
    for (const auto& line : *lines) {
        if (said.size() >= 4) {
            said << tr("and %1 more").arg(lines->size() - 4);
            break;
        }
        QString who = text::words(line.who.empty() ? line.source : line.who);
        if (!who.isEmpty()) who = QStringLiteral(", ") + who;
        said << QStringLiteral("%1: %2%3").arg(text::moment(line.at, now), text::spoken(line.text), who);
    }
    m_history->setText(said.isEmpty() ? QString() : tr("History: %1").arg(said.join(QStringLiteral(" · "))));
}

bool SpliceSearch::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return true;
    }
    if (watched == m_text && (key->key() == Qt::Key_Down || key->key() == Qt::Key_Return)) {
        if (m_soon.isActive()) {
            m_soon.stop();
            filter();
        }
        m_table->setFocus();
        if (m_model->rowCount() > 0) m_table->selectRow(0);
        return true;
    }
    return false;
}

}  // namespace arc::ui
