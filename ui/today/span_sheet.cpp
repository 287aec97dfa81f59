// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/span_sheet.hpp"

#include <QComboBox>
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

#include "core/closeout/build.hpp"
#include "ui/models/span_table.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/table_file.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/field_cell.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/row_table.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

SpanSheet::SpanSheet(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_rows(new SpanTable(this)) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(theme.px(12));
    auto* list = card(this);
    inside(list)->setContentsMargins(theme.px(8), theme.px(8), theme.px(8), theme.px(8));
    m_table = new QTableView(list);
    m_table->setModel(m_rows);
    m_table->setAccessibleName(tr("Spans and closures"));
    showAsRows(*m_table, theme.px(30));
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setWordWrap(false);
    m_table->horizontalHeader()->setStretchLastSection(true);
    inside(list)->addWidget(m_table, 1);
    outer->addWidget(list, 1);
    m_note = words(QString(), TextRole::Small, this);
    m_note->setWordWrap(true);
    m_note->setAccessibleName(tr("What the link budget assumes"));
    outer->addWidget(m_note);

    auto* sheet = card(this);
    outer->addWidget(sheet);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(20));
    grid->setVerticalSpacing(theme.px(2));
    for (int column = 0; column < 4; ++column) grid->setColumnStretch(column, 1);
    inside(sheet)->addLayout(grid);
    m_which = new QComboBox(sheet);
    m_label = new QLineEdit(sheet);
    m_from = new QLineEdit(sheet);
    m_to = new QLineEdit(sheet);
    m_cable = new QComboBox(sheet);
    m_length = new QLineEdit(sheet);
    m_closures = new QLineEdit(sheet);
    addField(*grid, 0, 0, tr("Span"), *m_which);
    addField(*grid, 0, 1, tr("Span label"), *m_label);
    addField(*grid, 0, 2, tr("Begins at"), *m_from);
    addField(*grid, 0, 3, tr("Ends at"), *m_to);
    addField(*grid, 1, 0, tr("Cable"), *m_cable);
    addField(*grid, 1, 1, tr("Length, km"), *m_length);
    addField(*grid, 1, 2, tr("Closures on it"), *m_closures, 2);
    for (auto* end : {m_from, m_to}) end->setPlaceholderText(tr("a closure, or a name as rack 2"));
    m_length->setPlaceholderText(tr("empty: that of the cable"));
    m_closures->setPlaceholderText(tr("HR-01 to HR-05, HR-07"));
    m_said = words(QString(), TextRole::Body, sheet);
    m_said->setWordWrap(true);
    m_said->setMinimumHeight(theme.px(22));
    inside(sheet)->addWidget(m_said);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(theme.px(10));
    auto* take = button(tr("Save the span  Ctrl+Enter"), ButtonKind::Primary, sheet);
    auto* out = button(tr("Take it back  Ctrl+Del"), ButtonKind::Usual, sheet);
    auto* fromFile = button(tr("Spans from CSV…  Ctrl+O"), ButtonKind::Usual, sheet);
    auto* leave = button(tr("Leave  Esc"), ButtonKind::Wide, sheet);
    for (auto* one : {take, out, fromFile, leave}) buttons->addWidget(one);
    buttons->addStretch();
    inside(sheet)->addLayout(buttons);

    connect(take, &QPushButton::clicked, this, &SpanSheet::accept);
    connect(out, &QPushButton::clicked, this, &SpanSheet::remove);
    connect(fromFile, &QPushButton::clicked, this, &SpanSheet::chooseTable);
    connect(leave, &QPushButton::clicked, this, &SpanSheet::left);
    // Choosing again what is chosen must not clear what was typed meanwhile.
    connect(m_which, &QComboBox::activated, this, [this](int index) {
        if (index != m_filled) fill();
    });
    connect(m_cable, &QComboBox::activated, this, &SpanSheet::check);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                const auto* span = m_rows->spanAt(now.row());
                m_note->setText(span ? text::spoken(span->budgetNote) : QString());
                if (span && span->kind == closeout::SpanKind::Named && m_table->hasFocus())
                    choose(text::words(span->label));
            });
    connect(&m_session, &Session::bookChanged, this, [this] {
        if (!isVisible() || !m_job) return;
        readBook();
        readRecord();
    });
    m_sequence = {m_table, m_which, m_label, m_from, m_to, m_cable, m_length, m_closures};
    for (std::size_t i = 0; i < m_sequence.size(); ++i) {
        m_sequence[i]->installEventFilter(this);
        if (i > 0) setTabOrder(m_sequence[i - 1], m_sequence[i]);
        if (auto* line = qobject_cast<QLineEdit*>(m_sequence[i]))
            connect(line, &QLineEdit::textChanged, this, &SpanSheet::check);
    }
    setTabOrder(m_closures, take);
}

void SpanSheet::begin(JobId job) {
    m_job.reset();
    if (const auto jobs = m_session.take(m_session.book().jobs()))
        if (const auto found = std::ranges::find(*jobs, job, &Job::id); found != jobs->end()) m_job = *found;
    if (m_job) startOver();
}

void SpanSheet::startOver() {
    m_which->setCurrentIndex(0);
    m_asFilled = fields();
    readBook();
    readRecord();
    m_which->setFocus(Qt::OtherFocusReason);
}

QStringList SpanSheet::fields() const {
    QStringList all{m_cable->currentText()};
    for (const auto* line : {m_label, m_from, m_to, m_length, m_closures}) all << line->text();
    return all;
}

/// What somebody is typing stays, whoever else writes meanwhile.
void SpanSheet::readBook() {
    const bool typing = fields() != m_asFilled;
    const QString cableNow = m_cable->currentText();
    std::optional<SpanId> chosen;
    if (const int index = m_which->currentIndex() - 1; index >= 0)
        chosen = m_ground.spans[static_cast<std::size_t>(index)].id;
    m_ground = SpanGround{};
    m_ground.job = m_job->id;
    if (auto cables = m_session.take(m_session.book().cables(m_job->id)))
        m_ground.cables = std::move(*cables);
    if (auto closures = m_session.take(m_session.book().closures(m_job->id)))
        m_ground.closures = std::move(*closures);
    if (auto spans = m_session.take(m_session.book().spans(m_job->id))) m_ground.spans = std::move(*spans);
    m_which->clear();
    m_which->addItem(tr("a new span"));
    for (const auto& span : m_ground.spans) m_which->addItem(tr("change %1").arg(text::words(span.label)));
    m_cable->clear();
    m_cable->addItem(tr("none, or several"));
    for (const auto& cable : m_ground.cables) m_cable->addItem(text::words(cable.label));
    const auto again =
        std::ranges::find(m_ground.spans, chosen, [](const Span& s) { return std::optional(s.id); });
    m_which->setCurrentIndex(
        again == m_ground.spans.end() ? 0 : static_cast<int>(again - m_ground.spans.begin()) + 1);
    if (!typing) return fill();
    m_filled = m_which->currentIndex();
    m_cable->setCurrentIndex(std::max(0, m_cable->findText(cableNow)));
    check();
}

/// In the background: a job may be long.
void SpanSheet::readRecord() {
    ++m_reading;
    closeout::BuildSettings settings;
    settings.madeAt = m_session.clock().now();
    m_session.background().run<Result<closeout::Record>>(
        this, tr("Spans of the job"),
        [&session = m_session, job = m_job->id, settings](Progress& progress) -> Result<closeout::Record> {
            auto reader = session.reader();
            if (!reader) return tl::unexpected(reader.error());
            return closeout::build(**reader, job, settings, progress);
        },
        [this](Result<closeout::Record> record) {
            --m_reading;
            if (!record) return m_session.tell(record.error());
            if (!m_job || record->job.id != m_job->id) return;
            m_rows->show(std::move(*record));
            m_table->resizeColumnsToContents();
            // Two cables with long names would push the figures out of sight; the tooltip has them whole.
            m_table->setColumnWidth(SpanTable::Where,
                                    std::min(m_table->columnWidth(SpanTable::Where), currentTheme().px(160)));
            m_table->setCurrentIndex(m_rows->index(0, 0));
        });
}

void SpanSheet::fill() {
    m_filled = m_which->currentIndex();
    if (m_filled > 0) {
        fillFrom(m_ground.spans[static_cast<std::size_t>(m_filled - 1)]);
    } else {
        for (auto* line : {m_label, m_from, m_to, m_length, m_closures}) line->clear();
        m_cable->setCurrentIndex(0);
    }
    m_asFilled = fields();
    check();
}

void SpanSheet::fillFrom(const Span& span) {
    m_label->setText(text::words(span.label));
    m_from->setText(text::words(endToText(span.from, m_ground.closures)));
    m_to->setText(text::words(endToText(span.to, m_ground.closures)));
    m_length->setText(span.lengthKm ? text::number(*span.lengthKm, 3) : QString());
    m_closures->setText(text::words(closuresToText(span.closures, m_ground.closures)));
    const auto cable =
        std::ranges::find_if(m_ground.cables, [&](const Cable& c) { return span.cable == c.id; });
    m_cable->setCurrentIndex(
        cable == m_ground.cables.end() ? 0 : static_cast<int>(cable - m_ground.cables.begin()) + 1);
}

void SpanSheet::choose(const QString& label) {
    m_which->setCurrentIndex(std::max(0, m_which->findText(tr("change %1").arg(label))));
    fill();
}

Result<Span> SpanSheet::typed() const {
    const auto trimmed = [](const QLineEdit* line) { return text::utf8(line->text().trimmed()); };
    Span span;
    const int index = m_which->currentIndex() - 1;
    if (index >= 0) span = m_ground.spans[static_cast<std::size_t>(index)];
    span.job = m_job->id;
    span.label = trimmed(m_label);
    if (span.label.empty()) return fail(ProblemCode::BadInput, "the span has no label");
    for (const auto& other : m_ground.spans)
        if (other.label == span.label && other.id != span.id)
            return fail(ProblemCode::BadInput, "this job has a span " + other.label + " already", "",
                        "Choose it above to change it");
    span.from = endFromText(trimmed(m_from), m_ground.closures);
    span.to = endFromText(trimmed(m_to), m_ground.closures);
    span.cable.reset();
    if (const int cable = m_cable->currentIndex() - 1; cable >= 0)
        span.cable = m_ground.cables[static_cast<std::size_t>(cable)].id;
    span.lengthKm.reset();
    if (!m_length->text().trimmed().isEmpty()) {
        span.lengthKm = text::typedNumber(m_length->text());
        if (!span.lengthKm)
            return fail(ProblemCode::BadInput, "\"" + trimmed(m_length) + "\" is not a length in km");
    }
    auto closures = closuresFromText(trimmed(m_closures), m_ground.closures);
    if (!closures) return tl::unexpected(closures.error());
    span.closures = std::move(*closures);
    if (const auto fits = spanFits(span, m_ground.spans, m_ground.closures); !fits)
        return tl::unexpected(fits.error());
    return span;
}

void SpanSheet::say(const QString& sentence, const QString& state) {
    m_said->setText(sentence);
    setState(m_said, state);
}

/// What would be saved, while it is typed.
void SpanSheet::check() {
    if (!m_job || (m_label->text().isEmpty() && m_closures->text().isEmpty())) return m_said->clear();
    const auto span = typed();
    if (!span) return say(asLine(span.error()), QStringLiteral("watch"));
    QStringList open;
    for (const auto* end : {&span->from, &span->to})
        if (!end->closure && !end->name.empty()) open << text::words(end->name);
    QString said = tr("%1 closures: %2")
                       .arg(span->closures.size())
                       .arg(text::words(closuresToText(span->closures, m_ground.closures)));
    if (!open.isEmpty())
        said += QStringLiteral(" · ") + tr("a connector at %1").arg(open.join(tr(" and at ")));
    say(said, QStringLiteral("steady"));
}

bool SpanSheet::save(const std::vector<Entry>& entries, const QString& what) {
    std::vector<Entry> back;
    for (const auto& entry : entries) {
        std::optional<Entry> old;
        for (const auto& span : m_ground.spans)
            if (recordOf(entry) == span.id.uuid) old = span;
        back.push_back(opposite(entry, old));
    }
    return m_session.save(entries, Undo::Offered, back, what);
}

void SpanSheet::accept() {
    if (!m_job) return;
    auto span = typed();
    if (span) {
        const bool fresh = m_which->currentIndex() <= 0;
        if (fresh) span->id = m_session.newId<SpanId>();
        if (const auto valid = validate(*span); !valid) span = tl::unexpected(valid.error());
    }
    if (!span) return say(asLine(span.error()), QStringLiteral("drifting"));
    if (std::ranges::find(m_ground.spans, *span) != m_ground.spans.end())
        return say(tr("Nothing is changed."), QStringLiteral("watch"));
    const QString label = text::words(span->label);
    if (!save({*span}, tr("span %1 of job %2").arg(label, text::words(m_job->label)))) return;
    startOver();
    say(tr("Span %1 is saved.").arg(label), QStringLiteral("steady"));
}

void SpanSheet::remove() {
    const int index = m_which->currentIndex() - 1;
    if (!m_job || index < 0) return say(tr("Choose a span first."), QStringLiteral("watch"));
    const Span span = m_ground.spans[static_cast<std::size_t>(index)];
    const QString label = text::words(span.label);
    if (!save({Withdrawal{span.id.uuid, "removed"}}, tr("span %1 taken back").arg(label))) return;
    startOver();
    say(tr("Span %1 is taken back; its closures are as they were.").arg(label), QStringLiteral("steady"));
}

void SpanSheet::chooseTable() {
    chooseFiles(this, tr("Spans with the columns span, from, to, cable, length_km, closures"),
                {tr("Tables (*.csv *.txt *.tsv)"), tr("All files (*)")},
                [this](const QStringList& files) { takeTable(files.front()); });
}

void SpanSheet::takeTable(const QString& file) {
    if (!m_job) return;
    const auto csv = tableText(file);
    if (!csv) return say(asLine(csv.error()), QStringLiteral("drifting"));
    const auto spans = spansFromCsv(*csv, m_ground, [this] { return m_session.newId<SpanId>(); });
    if (!spans) return say(asLine(spans.error()), QStringLiteral("drifting"));
    if (spans->empty()) return say(tr("All spans of the table are here already."), QStringLiteral("watch"));
    std::vector<Entry> entries(spans->begin(), spans->end());
    for (const auto& entry : entries)
        if (const auto valid = validate(entry); !valid)
            return say(asLine(valid.error()), QStringLiteral("drifting"));
    if (!save(entries, tr("%1 spans of job %2").arg(spans->size()).arg(text::words(m_job->label)))) return;
    readBook();
    readRecord();
    say(tr("%1 spans are saved.").arg(spans->size()), QStringLiteral("steady"));
}

bool SpanSheet::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool control = key->modifiers() & Qt::ControlModifier;
    if (key->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return true;
    }
    if (key->key() == Qt::Key_O && control) {
        chooseTable();
        return true;
    }
    if (key->key() == Qt::Key_Delete && (control || watched == m_table)) {
        remove();
        return true;
    }
    if (key->key() != Qt::Key_Return && key->key() != Qt::Key_Enter) return false;
    const auto at = std::ranges::find(m_sequence, watched);
    if (control || at == m_sequence.end() || at + 1 == m_sequence.end())
        accept();
    else
        (*(at + 1))->setFocus(Qt::TabFocusReason);
    return true;
}

}  // namespace arc::ui
