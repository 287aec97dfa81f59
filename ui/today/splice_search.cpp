// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/splice_search.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/attachments/sheet.hpp"
#include "ui/models/cell_delegate.hpp"
#include "ui/models/splice_table.hpp"
#include "ui/shell/typed_words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/time_range.hpp"
#include "ui/widgets/row_table.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

/// After the last key, so that a word is one query.
constexpr int typingPauseMs = 180;

constexpr ReadingVerdict verdicts[] = {ReadingVerdict::Accept,   ReadingVerdict::AcceptHigh,
                                       ReadingVerdict::Resplice, ReadingVerdict::NoteMissing,
                                       ReadingVerdict::Kept,     ReadingVerdict::OverCeiling,
                                       ReadingVerdict::Voided};

}  // namespace

SpliceSearch::SpliceSearch(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_model(new SpliceTable(session, this)) {
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
    m_tool = new QComboBox(this);
    m_tool->setAccessibleName(tr("Tool"));
    m_verdict = new QComboBox(this);
    m_verdict->setAccessibleName(tr("Verdict"));
    m_verdict->addItem(tr("any verdict"));
    for (const auto verdict : verdicts) m_verdict->addItem(verdictWords(verdict));
    m_verdict->addItem(tr("not accepted"));
    m_time = new QComboBox(this);
    m_time->setAccessibleName(tr("Time"));
    m_time->setEditable(true);
    m_time->setInsertPolicy(QComboBox::NoInsert);
    m_time->setCompleter(nullptr);
    m_time->addItems({QString(), QStringLiteral("1 d"), QStringLiteral("7 d"), QStringLiteral("30 d")});
    m_time->lineEdit()->setPlaceholderText(tr("any time"));
    m_time->setToolTip(tr("7 d, a day as 2031-03-03, a month as 2031-03, or 2031-03-03 to 2031-03-15"));
    m_loss = new QComboBox(this);
    m_loss->setAccessibleName(tr("Loss"));
    m_loss->addItem(tr("any loss"), -1);
    for (const int mdb : {50, 100, 150, 300})
        m_loss->addItem(tr("above %1 dB").arg(text::loss(Loss{mdb})), mdb);
    m_order = new QComboBox(this);
    m_order->setAccessibleName(tr("Order"));
    m_order->addItem(tr("newest first"));
    m_order->addItem(tr("oldest first"));
    auto* leave = button(tr("Back  Esc"), ButtonKind::Usual, this);
    row->addWidget(m_text, 3);
    row->addWidget(m_job, 2);
    row->addWidget(m_tool, 2);
    row->addWidget(m_verdict, 2);
    row->addWidget(m_time, 2);
    row->addWidget(m_loss, 2);
    row->addWidget(m_order, 2);
    row->addWidget(leave);
    box->addLayout(row);

    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(8), theme.px(8), theme.px(8));
    m_table = new QTableView(sheet);
    m_table->setModel(m_model);
    m_table->setItemDelegate(new CellDelegate(m_table));
    m_table->setAccessibleName(tr("Splices"));
    showAsRows(*m_table, theme.px(34));
    m_table->setWordWrap(false);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->horizontalHeader()->setStretchLastSection(true);
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
    for (auto* choice : {m_job, m_tool, m_verdict, m_time, m_loss, m_order}) {
        choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        choice->setMinimumContentsLength(6);
    }
    for (auto* choice : {m_job, m_tool, m_verdict, m_loss, m_order})
        connect(choice, &QComboBox::activated, this, &SpliceSearch::filter);
    connect(m_time, &QComboBox::currentTextChanged, this, [this] { m_soon.start(); });
    connect(leave, &QPushButton::clicked, this, &SpliceSearch::left);
    connect(m_model, &SpliceTable::failed, &m_session, &Session::tell);
    connect(m_model, &SpliceTable::loaded, this, &SpliceSearch::showCount);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &SpliceSearch::showHistory);
    for (QObject* part : std::initializer_list<QObject*>{m_text, m_job, m_tool, m_verdict, m_time,
                                                         m_time->lineEdit(), m_loss, m_order, m_table})
        part->installEventFilter(this);
}

void SpliceSearch::fillChoices() {
    if (auto jobs = m_session.take(m_session.book().jobs())) m_jobs = std::move(*jobs);
    const auto tools = m_session.take(m_session.book().tools());
    m_tools.clear();
    if (tools)
        for (const auto& tool : *tools)
            if (asSplicer(tool) || asCleaver(tool)) m_tools.push_back(tool);
    const QString job = m_job->currentText();
    const QString tool = m_tool->currentText();
    m_job->clear();
    m_job->addItem(tr("any job"));
    for (const auto& one : m_jobs) m_job->addItem(text::words(one.label));
    m_tool->clear();
    m_tool->addItem(tr("any tool"));
    for (const auto& one : m_tools) m_tool->addItem(text::words(one.label));
    m_job->setCurrentIndex(std::max(0, m_job->findText(job)));
    m_tool->setCurrentIndex(std::max(0, m_tool->findText(tool)));
}

void SpliceSearch::begin() {
    fillChoices();
    filter();
    m_text->setFocus(Qt::OtherFocusReason);
    m_text->selectAll();
}

void SpliceSearch::filter() {
    m_soon.stop();
    const auto said = [this](const Problem& problem) {
        m_count->setText(text::spoken(problem));
        setState(m_count, QStringLiteral("drifting"));
    };
    const auto range = readTimeRange(m_time->currentText(), m_session.clock().now());
    if (!range) return said(range.error());
    SpliceFilter filter;
    filter.text = text::utf8(m_text->text().trimmed());
    if (m_job->currentIndex() > 0)
        filter.job = m_jobs[static_cast<std::size_t>(m_job->currentIndex() - 1)].id;
    if (m_tool->currentIndex() > 0) {
        const Tool& tool = m_tools[static_cast<std::size_t>(m_tool->currentIndex() - 1)];
        (asSplicer(tool) ? filter.splicer : filter.cleaver) = tool.id;
    }
    const auto verdict = static_cast<std::size_t>(m_verdict->currentIndex());
    if (verdict > std::size(verdicts))
        filter.verdicts = {ReadingVerdict::Resplice, ReadingVerdict::NoteMissing,
                           ReadingVerdict::OverCeiling};
    else if (verdict > 0)
        filter.verdicts = {verdicts[verdict - 1]};
    filter.fromMs = range->fromMs;
    filter.toMs = range->toMs;
    if (const int mdb = m_loss->currentData().toInt(); mdb >= 0) filter.lossAbove = Loss{mdb};
    setState(m_count, QString());
    const auto order = m_order->currentIndex() == 1 ? PageOrder::OldestFirst : PageOrder::NewestFirst;
    if (const auto shown = m_model->show(filter, order); !shown) return said(shown.error());
    m_count->setText(tr("Searching…"));
}

void SpliceSearch::showCount() {
    if (m_model->loading()) return;
    const auto count = m_model->rowCount();
    setState(m_count, QString());
    m_count->setText(count == 0 ? tr("No splice fits. Take a filter away.")
                     : m_model->complete()
                         ? tr("%1 splices").arg(text::number(std::int64_t{count}))
                         : tr("%1 splices and more below").arg(text::number(std::int64_t{count})));
    if (m_table->currentIndex().isValid()) return;
    m_history->clear();
    // The keyboard went ahead of the answer.
    if (count > 0 && m_table->hasFocus()) m_table->selectRow(0);
}

bool SpliceSearch::settled() const {
    return !m_soon.isActive() && !m_model->loading();
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

void SpliceSearch::attach() {
    const auto index = m_table->currentIndex();
    if (!index.isValid()) return;
    const SpliceRow& row = m_model->row(index.row());
    std::vector<AttachmentSubject> subjects{
        {row.arc.id.uuid, tr("Splice of fibre %1, %2 dB, %3")
                              .arg(text::words(row.reading.fibreA), text::loss(row.reading.loss),
                                   text::moment(row.arc.at, m_session.clock().now()))}};
    if (row.arc.closure)
        subjects.push_back({row.arc.closure->uuid, tr("Closure %1").arg(m_model->closureName(row.arc))});
    openAttachments(m_session, std::move(subjects), this);
}

std::optional<Subject> SpliceSearch::subject() const {
    const auto index = m_table->currentIndex();
    if (!index.isValid()) return std::nullopt;
    const auto& row = m_model->row(index.row());
    const QString fibre =
        m_model->data(m_model->index(index.row(), SpliceTable::Fibre), Qt::DisplayRole).toString();
    return Subject{row.arc.id.uuid, fibre.isEmpty()
                                        ? m_model->closureName(row.arc)
                                        : tr("fibre %1, %2").arg(fibre, m_model->closureName(row.arc))};
}

bool SpliceSearch::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return true;
    }
    if (watched == m_table && key->key() == Qt::Key_A) {
        attach();
        return true;
    }
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    const bool line = watched == m_text || watched == m_time || watched == m_time->lineEdit();
    if ((line && enter) || (watched == m_text && key->key() == Qt::Key_Down)) {
        if (m_soon.isActive()) filter();
        m_table->setFocus();
        if (m_model->rowCount() > 0 && !m_model->loading()) m_table->selectRow(0);
        return true;
    }
    return false;
}

}  // namespace arc::ui
