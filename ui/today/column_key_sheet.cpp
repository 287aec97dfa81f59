// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/column_key_sheet.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/models/preview_table.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/action_words.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/row_table.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr int gridColumns = 5;

bool offsetReads(const std::string& offset) {
    return parseInstant("2031-03-03T07:00:00" + offset).has_value();
}

/// "+01:00"
std::string offsetText(int minutes) {
    const std::string iso = toIso(Instant{0, static_cast<std::int16_t>(minutes)});
    return minutes == 0 ? "Z" : iso.substr(iso.size() - 6);
}

}  // namespace

ColumnKeySheet::ColumnKeySheet(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    outer->addWidget(sheet);
    auto* box = inside(sheet);
    box->setSpacing(theme.px(8));
    m_offer = words(QString(), TextRole::Strong, sheet);
    m_offer->setWordWrap(true);
    box->addWidget(m_offer);
    m_grid = new QGridLayout;
    m_grid->setHorizontalSpacing(theme.px(14));
    m_grid->setVerticalSpacing(0);
    for (int i = 0; i < gridColumns; ++i) m_grid->setColumnStretch(i, 1);
    box->addLayout(m_grid);

    const auto combo = [&] { return new QComboBox(sheet); };
    m_keys = combo();
    m_separator = combo();
    m_decimal = combo();
    m_dates = combo();
    m_offset = combo();
    m_unit = combo();
    m_timeOfDay = combo();
    m_wide = new QLineEdit(sheet);
    m_separator->addItem(tr("comma"), QChar(','));
    m_separator->addItem(tr("semicolon"), QChar(';'));
    m_separator->addItem(tr("tab"), QChar('\t'));
    m_separator->addItem(tr("bar |"), QChar('|'));
    m_decimal->addItem(tr("point, 0.03"));
    m_decimal->addItem(tr("comma, 0,03"));
    m_dates->addItem(tr("ISO, 2031-04-03"));
    m_dates->addItem(tr("day first, 03.04.2031"));
    m_dates->addItem(tr("month first, 04/03/2031"));
    m_dates->addItem(tr("year first, 2031/4/3"));
    m_dates->setPlaceholderText(tr("day or month first?"));
    m_unit->addItem(tr("dB"));
    m_unit->addItem(tr("mdB, thousandths"));
    m_unit->setPlaceholderText(tr("dB or mdB?"));
    m_offset->setEditable(true);
    m_offset->lineEdit()->setPlaceholderText(tr("like +01:00"));
    m_wide->setPlaceholderText(tr("none; or names with commas"));
    add(m_grid, 0, 0, tr("Saved key"), m_keys);
    add(m_grid, 0, 1, tr("Columns are separated by"), m_separator);
    add(m_grid, 0, 2, tr("Decimal mark"), m_decimal);
    add(m_grid, 0, 3, tr("Dates are written"), m_dates);
    add(m_grid, 0, 4, tr("Offset of times without one"), m_offset);
    m_unitCell = add(m_grid, 1, 0, tr("Losses are in"), m_unit);
    add(m_grid, 1, 1, tr("Time of day, if apart"), m_timeOfDay);
    m_wideCell = add(m_grid, 1, 2, tr("Losses, a column a groove"), m_wide);

    m_actions = new ActionWords(sheet);
    box->addWidget(m_actions);
    connect(m_actions, &ActionWords::changed, this, [this] {
        // Words of the key that this file does not have stay.
        auto& known = m_values["action"];
        for (const auto& word : m_actions->words()) known.erase(word);
        known.merge(m_actions->answers());
        if (known.empty()) m_values.erase("action");
        look();
    });

    m_said = words(QString(), TextRole::Body, sheet);
    m_said->setWordWrap(true);
    m_said->setMinimumHeight(theme.px(22));
    box->addWidget(m_said);
    m_rows = new PreviewTable(this);
    m_table = new QTableView(sheet);
    m_table->setModel(m_rows);
    m_table->setAccessibleName(tr("First rows as they would be read"));
    showAsRows(*m_table, theme.px(26));
    m_table->horizontalHeader()->setDefaultAlignment(
        static_cast<Qt::Alignment>(Qt::AlignLeft | Qt::AlignVCenter | static_cast<int>(Qt::TextWordWrap)));
    m_table->horizontalHeader()->setFixedHeight(theme.px(46));
    m_table->setMinimumHeight(theme.px(100));
    // A table likes to be taller; on a small screen the buttons below are worth more.
    m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    box->addWidget(m_table, 1);

    auto* foot = new QHBoxLayout;
    foot->setSpacing(theme.px(10));
    m_name = new QLineEdit(sheet);
    m_name->setAccessibleName(tr("Save the key as"));
    m_name->setPlaceholderText(tr("a name, to use it again"));
    m_take = button(tr("Import with this key  Ctrl+Enter"), ButtonKind::Primary, sheet);
    m_export = button(tr("Key as a file…"), ButtonKind::Usual, sheet);
    m_leave = button(tr("Back  Esc"), ButtonKind::Usual, sheet);
    foot->addWidget(words(tr("Save the key as"), TextRole::Soft, sheet));
    foot->addWidget(m_name, 1);
    foot->addWidget(m_take);
    foot->addWidget(m_export);
    foot->addWidget(m_leave);
    box->addLayout(foot);

    for (auto* one : {m_keys, m_separator, m_decimal, m_dates, m_offset, m_unit, m_timeOfDay})
        one->installEventFilter(this);
    for (auto* one : {m_separator, m_decimal, m_dates, m_unit, m_timeOfDay})
        connect(one, &QComboBox::currentIndexChanged, this, &ColumnKeySheet::look);
    connect(m_offset, &QComboBox::currentTextChanged, this, &ColumnKeySheet::look);
    connect(m_wide, &QLineEdit::textChanged, this, &ColumnKeySheet::look);
    connect(m_keys, &QComboBox::activated, this, [this](int index) {
        if (index == 0) {
            const auto guess =
                guessKey(m_kind, m_header, m_sample, m_separator->currentData().toChar().toLatin1());
            return fill(guess.key, guess.open);
        }
        const auto& key = m_saved[static_cast<std::size_t>(index - 1)];
        fill(key, openQuestions(key, m_header, m_sample));
    });
    m_wide->installEventFilter(this);
    m_name->installEventFilter(this);
    m_take->installEventFilter(this);
    m_table->installEventFilter(this);
    connect(m_take, &QPushButton::clicked, this, &ColumnKeySheet::accept);
    connect(m_export, &QPushButton::clicked, this, &ColumnKeySheet::exportKey);
    connect(m_leave, &QPushButton::clicked, this, &ColumnKeySheet::left);
}

QWidget* ColumnKeySheet::add(QGridLayout* grid, int row, int column, const QString& name, QWidget* control) {
    const Theme theme = currentTheme();
    control->setAccessibleName(name);
    control->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    auto* cell = new QWidget(this);
    auto* stack = new QVBoxLayout(cell);
    stack->setContentsMargins(0, 0, 0, theme.px(4));
    stack->setSpacing(0);
    auto* label = words(name, TextRole::Soft, cell);
    label->setBuddy(control);
    stack->addWidget(label);
    stack->addWidget(control);
    grid->addWidget(cell, row, column);
    return cell;
}

/// The fields of one kind of file, below the choices that every kind has.
void ColumnKeySheet::makeFields(FileKind kind) {
    for (auto& field : m_fields) delete field.cell;
    m_fields.clear();
    m_wideCell->setVisible(kind == FileKind::SpliceLog);
    m_unitCell->setVisible(kind != FileKind::Events);
    int place = gridColumns + 3;
    QWidget* before = m_wide;
    for (const auto& column : ourColumns(kind)) {
        auto* combo = new QComboBox(this);
        combo->setEditable(true);
        combo->setInsertPolicy(QComboBox::NoInsert);
        combo->lineEdit()->setPlaceholderText(
            column.need == Need::Needed ? tr("choose, or = the same everywhere") : tr("not in the file"));
        combo->addItem(QString());
        for (const auto& name : m_header) combo->addItem(text::words(name));
        const QString name = text::spoken(column.words);
        auto* cell = add(m_grid, place / gridColumns, place % gridColumns,
                         column.need == Need::Needed ? name + QStringLiteral(" *") : name, combo);
        combo->setAccessibleName(name);
        combo->installEventFilter(this);
        connect(combo, &QComboBox::currentTextChanged, this, &ColumnKeySheet::look);
        setTabOrder(before, combo);
        before = combo;
        cell->show();
        m_fields.push_back({column, combo, cell});
        ++place;
    }
    setTabOrder(before, m_table);
    setTabOrder(m_table, m_name);
}

void ColumnKeySheet::begin(const std::filesystem::path& file, FileKind kind, TablePreview seen) {
    m_file = file;
    m_kind = kind;
    m_header = seen.theirHeader;
    m_sample.clear();
    for (auto& row : seen.rows) m_sample.push_back(std::move(row.theirs));
    m_saved.clear();
    if (auto saved = m_session.take(m_session.workbench().columnKeys()))
        for (auto& key : *saved)
            if (key.kind == kind) m_saved.push_back(std::move(key));
    m_filling = Filling::Yes;
    makeFields(kind);
    const auto deck = m_session.workbench().cards(m_session.book());
    m_actions->offer(kind == FileKind::Events && deck ? *deck : care::Deck{});
    m_keys->clear();
    m_keys->addItem(tr("none, go by names"));
    for (const auto& key : m_saved) m_keys->addItem(text::words(key.name));
    m_timeOfDay->clear();
    m_timeOfDay->addItem(tr("in the same column"));
    for (const auto& name : m_header) m_timeOfDay->addItem(text::words(name));
    m_offset->clear();
    m_offset->addItem(QString());
    const auto here = text::words(offsetText(m_session.clock().now().offsetMinutes));
    for (const QString& one : {here, QStringLiteral("Z"), QStringLiteral("+01:00"), QStringLiteral("+02:00")})
        if (m_offset->findText(one) < 0) m_offset->addItem(one);
    m_filling = Filling::No;

    std::vector<std::string> names;
    for (const auto& name : m_header) names.push_back(columnName(name));
    const QString called = text::words(m_file.filename().string());
    if (const ColumnKey* best = bestKey(m_saved, kind, names)) {
        m_keys->setCurrentIndex(static_cast<int>(best - m_saved.data()) + 1);
        m_offer->setText(tr("%1: the saved key \"%2\" fits; look at the rows and press Enter")
                             .arg(called, text::words(best->name)));
        fill(*best, openQuestions(*best, m_header, m_sample));
        m_take->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_offer->setText(
        tr("%1: which of its columns holds what? Matched by their names, so look it over.").arg(called));
    const auto guess = guessKey(kind, m_header, m_sample, seen.separator);
    fill(guess.key, guess.open);
    m_keys->setFocus(Qt::OtherFocusReason);
}

void ColumnKeySheet::fill(const ColumnKey& key, const std::vector<OpenQuestion>& open) {
    m_filling = Filling::Yes;
    const auto asks = [&open](OpenQuestion question) {
        return std::ranges::find(open, question) != open.end();
    };
    const auto written = [this](const std::string& theirs) {
        for (const auto& name : m_header)
            if (columnName(name) == theirs) return text::words(name);
        return text::words(theirs);
    };
    if (key.separator)
        m_separator->setCurrentIndex(std::max(0, m_separator->findData(QChar(*key.separator))));
    m_decimal->setCurrentIndex(key.decimal == DecimalMark::Comma ? 1 : 0);
    m_dates->setCurrentIndex(asks(OpenQuestion::DayOrMonth) ? -1 : static_cast<int>(key.dates));
    m_unit->setCurrentIndex(asks(OpenQuestion::LossUnit) ? -1 : static_cast<int>(key.lossUnit));
    m_offset->setEditText(text::words(key.offset));
    const int apart = key.timeOfDay.empty() ? 0 : m_timeOfDay->findText(written(key.timeOfDay));
    m_timeOfDay->setCurrentIndex(std::max(0, apart));
    QStringList wide;
    for (const auto& [channel, theirs] : key.wide) wide << written(theirs);
    m_wide->setText(wide.join(QStringLiteral(", ")));
    for (auto& field : m_fields) {
        const std::string ours(field.column.name);
        QString shown;
        if (const auto column = key.columns.find(ours); column != key.columns.end())
            shown = written(column->second);
        else if (const auto fixed = key.fixed.find(ours); fixed != key.fixed.end())
            shown = QStringLiteral("= ") + text::words(fixed->second);
        else if (theirColumn(text::words(ours)))
            shown = written(ours);
        field.theirs->setEditText(shown);
    }
    m_values = key.values;
    if (const auto deck = m_session.workbench().cards(m_session.book()); m_kind == FileKind::Events && deck)
        m_actions->offer(*deck);
    m_name->setText(text::words(key.name));
    m_filling = Filling::No;
    look();
}

std::optional<std::string> ColumnKeySheet::theirColumn(const QString& typed) const {
    const std::string wanted = columnName(text::utf8(typed));
    for (const auto& name : m_header)
        if (columnName(name) == wanted) return wanted;
    return std::nullopt;
}

ColumnKey ColumnKeySheet::key() const {
    ColumnKey key;
    key.name = text::utf8(m_name->text().trimmed());
    key.kind = m_kind;
    key.separator = m_separator->currentData().toChar().toLatin1();
    key.decimal = m_decimal->currentIndex() == 1 ? DecimalMark::Comma : DecimalMark::Point;
    key.dates = static_cast<DateForm>(std::max(0, m_dates->currentIndex()));
    if (const auto offset = text::utf8(m_offset->currentText().trimmed()); offsetReads(offset))
        key.offset = offset;
    if (m_kind != FileKind::Events) key.lossUnit = static_cast<LossUnit>(std::max(0, m_unit->currentIndex()));
    if (m_timeOfDay->currentIndex() > 0) key.timeOfDay = columnName(text::utf8(m_timeOfDay->currentText()));
    key.values = m_values;
    if (m_kind == FileKind::SpliceLog) {
        int channel = 0;
        for (const auto& name : m_wide->text().split(QLatin1Char(','), Qt::SkipEmptyParts))
            if (++channel <= mostChannels) key.wide[channel] = columnName(text::utf8(name));
    }
    for (const auto& field : m_fields) {
        const std::string ours(field.column.name);
        const QString typed = field.theirs->currentText().trimmed();
        if (typed.isEmpty() || (!key.wide.empty() && (ours == "loss_db" || ours == "channel"))) continue;
        if (typed.startsWith(QLatin1Char('=')))
            key.fixed[ours] = text::utf8(typed.mid(1).trimmed());
        else
            key.columns[ours] = columnName(text::utf8(typed));
    }
    for (const auto& name : m_header) key.header.push_back(columnName(name));
    return key;
}

void ColumnKeySheet::look() {
    if (m_filling == Filling::Yes) return;
    const auto now = key();
    if (m_kind == FileKind::Events) askWords(now);
    auto preview = m_session.workbench().preview({m_file, m_kind, now});
    if (!preview) {
        m_said->setText(text::spoken(preview.error()));
        setState(m_said, QStringLiteral("drifting"));
        return;
    }
    // Another separator makes other columns.
    if (preview->theirHeader != m_header && preview->theirHeader.size() > 1) {
        TablePreview again = *preview;
        if (auto raw = m_session.workbench().preview({m_file, m_kind, now, 1'000})) again = std::move(*raw);
        return begin(m_file, m_kind, std::move(again));
    }
    std::size_t lands = 0;
    for (const auto& row : preview->rows) lands += row.reason.empty() ? 1 : 0;
    const auto open = openQuestions(now, m_header, m_sample);
    const auto asks = [&open](OpenQuestion question) {
        return std::ranges::find(open, question) != open.end();
    };
    if (preview->problem) {
        m_said->setText(text::spoken(preview->problem->what));
        setState(m_said, QStringLiteral("watch"));
    } else if (asks(OpenQuestion::DayOrMonth)) {
        m_said->setText(
            tr("The dates can be read in two ways: say whether the day or the month stands first."));
        setState(m_said, QStringLiteral("watch"));
    } else if (asks(OpenQuestion::Offset)) {
        m_said->setText(tr("The times do not say how far they are from UTC: give the offset of the place."));
        setState(m_said, QStringLiteral("watch"));
    } else if (asks(OpenQuestion::LossUnit) && m_unit->currentIndex() < 0) {
        m_said->setText(tr("The losses are large whole numbers: say whether they are dB or thousandths."));
        setState(m_said, QStringLiteral("watch"));
    } else {
        m_said->setText(tr("%1 of the first %2 rows land").arg(lands).arg(preview->rows.size()));
        setState(m_said, lands == preview->rows.size() ? QStringLiteral("steady") : QStringLiteral("watch"));
    }
    m_rows->show(std::move(*preview));
    fitColumns();
}

/// A name of two lines is no wider than it must be, and a reason is read to its end where the cells leave
/// room.
void ColumnKeySheet::fitColumns() {
    const Theme theme = currentTheme();
    const QAbstractItemView& cells = *m_table;
    m_table->setColumnWidth(PreviewTable::Line, theme.px(56));
    int taken = m_table->columnWidth(PreviewTable::Line) + m_table->verticalScrollBar()->sizeHint().width();
    for (int column = PreviewTable::firstCell; column < m_rows->columnCount(); ++column) {
        m_table->setColumnWidth(column, std::max(theme.px(114), cells.sizeHintForColumn(column)));
        taken += m_table->columnWidth(column);
    }
    const int most = std::max(theme.px(420), m_table->contentsRect().width() - taken);
    m_table->setColumnWidth(PreviewTable::Verdict,
                            std::clamp(cells.sizeHintForColumn(PreviewTable::Verdict), theme.px(130), most));
}

/// The words of the column for what was done, as it is chosen now.
void ColumnKeySheet::askWords(const ColumnKey& now) {
    const auto column = now.columns.find("action");
    const std::string name = column == now.columns.end() ? "action" : column->second;
    const auto at =
        std::ranges::find_if(m_header, [&](const std::string& theirs) { return columnName(theirs) == name; });
    std::vector<std::string> words;
    if (at != m_header.end()) {
        const auto place = static_cast<std::size_t>(at - m_header.begin());
        for (const auto& row : m_sample)
            if (place < row.size() && std::ranges::find(words, row[place]) == words.end())
                words.push_back(row[place]);
    }
    const auto before = m_actions->choices();
    const auto known = m_values.find("action");
    m_actions->ask(words, known == m_values.end() ? std::map<std::string, std::string>{} : known->second);
    if (m_actions->choices() == before) return;
    QWidget* last = m_fields.empty() ? static_cast<QWidget*>(m_timeOfDay) : m_fields.back().theirs;
    for (auto* choice : m_actions->choices()) {
        choice->installEventFilter(this);
        setTabOrder(last, choice);
        last = choice;
    }
    setTabOrder(last, m_table);
}

void ColumnKeySheet::refuse(const QString& why, QWidget* at) {
    m_said->setText(why);
    setState(m_said, QStringLiteral("drifting"));
    at->setFocus(Qt::OtherFocusReason);
}

void ColumnKeySheet::accept() {
    const auto now = key();
    for (const auto& field : m_fields) {
        const QString typed = field.theirs->currentText().trimmed();
        if (!typed.isEmpty() && !typed.startsWith(QLatin1Char('=')) && !theirColumn(typed))
            return refuse(
                tr("The file has no column \"%1\"; write \"= %1\" if every row is to say so.").arg(typed),
                field.theirs);
    }
    const QString offset = m_offset->currentText().trimmed();
    if (!offset.isEmpty() && now.offset.empty())
        return refuse(tr("The offset \"%1\" is not like +01:00 or Z.").arg(offset), m_offset);
    for (const auto question : openQuestions(now, m_header, m_sample)) {
        if (question == OpenQuestion::DayOrMonth)
            return refuse(tr("Nothing is taken in before it is said whether day or month stands first."),
                          m_dates);
        if (question == OpenQuestion::Offset)
            return refuse(tr("Nothing is taken in before the offset from UTC is said, like +01:00."),
                          m_offset);
        if (m_unit->currentIndex() < 0)
            return refuse(tr("Nothing is taken in before it is said whether losses are dB or mdB."), m_unit);
    }
    if (m_rows->preview().problem)
        return refuse(text::spoken(*m_rows->preview().problem),
                      m_fields.empty() ? static_cast<QWidget*>(m_name) : m_fields.front().theirs);
    const bool saved = std::ranges::find(m_saved, now) != m_saved.end();
    if (!now.name.empty() && !saved) {
        const auto setting = m_session.take(m_session.workbench().columnKeySetting(now));
        if (!setting || !m_session.save(Entry(*setting))) return;
    }
    Q_EMIT accepted(now);
}

void ColumnKeySheet::exportKey() {
    chooseFolder(this, tr("Folder for the key"), {}, [this](const QString& folder) {
        const auto now = key();
        const auto name = now.name.empty() ? std::string("column-key") : now.name;
        const auto file = std::filesystem::path(folder.toStdU16String()) / (name + ".json");
        const auto written = m_session.workbench().writeColumnKey(now, file);
        m_said->setText(written ? tr("The key is in %1").arg(text::words(file.string()))
                                : text::spoken(written.error()));
        setState(m_said, written ? QStringLiteral("steady") : QStringLiteral("drifting"));
    });
}

bool ColumnKeySheet::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_table && event->type() == QEvent::Resize) fitColumns();
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return true;
    }
    if (key->key() != Qt::Key_Return && key->key() != Qt::Key_Enter) return false;
    if (key->modifiers() & Qt::ControlModifier || watched == m_take || watched == m_name)
        accept();
    else
        focusNextChild();
    return true;
}

}  // namespace arc::ui
