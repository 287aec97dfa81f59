// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/import_panel.hpp"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <filesystem>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/column_key_sheet.hpp"
#include "ui/today/mend_sheet.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

ImportPanel::ImportPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(theme.px(14));
    auto* ask = m_ask = card(this);
    outer->addWidget(ask);
    m_key = new ColumnKeySheet(m_session, this);
    outer->addWidget(m_key, 1);
    auto* box = inside(ask);
    box->setSpacing(theme.px(12));
    box->addWidget(words(tr("What do the files hold?"), TextRole::Strong, ask));
    auto* kinds = new QHBoxLayout;
    kinds->setSpacing(theme.px(10));
    auto* group = new QButtonGroup(this);
    const QString names[] = {tr("1  Splice log"), tr("2  Care events"), tr("3  Measured losses")};
    for (int i = 0; i < 3; ++i) {
        auto* kind = button(names[i], ButtonKind::Choice, ask);
        kind->setCheckable(true);
        kind->setMinimumHeight(theme.px(Touch::Usual) + theme.px(6));
        group->addButton(kind, i);
        kinds->addWidget(kind, 1);
        m_kinds.push_back(kind);
    }
    m_kinds.front()->setChecked(true);
    box->addLayout(kinds);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(10));
    m_choose = button(tr("Choose files…"), ButtonKind::Primary, ask, QStringLiteral("import"));
    m_leave = button(tr("Back to splicing  Esc"), ButtonKind::Wide, ask);
    row->addWidget(m_choose);
    row->addWidget(m_leave);
    row->addStretch();
    box->addLayout(row);
    auto* bar = new QHBoxLayout;
    m_doing = words(QString(), TextRole::Body, ask);
    m_bar = new QProgressBar(ask);
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(tr("Import progress"));
    m_stop = button(tr("Stop, take in nothing"), ButtonKind::Usual, ask);
    bar->addWidget(m_doing);
    bar->addWidget(m_bar, 1);
    bar->addWidget(m_stop);
    box->addLayout(bar);

    m_result = card(this);
    outer->addWidget(m_result, 1);
    auto* result = inside(m_result);
    m_said = words(QString(), TextRole::Strong, m_result);
    m_said->setWordWrap(true);
    result->addWidget(m_said);
    m_countsHome = new QWidget(m_result);
    auto* counts = new QHBoxLayout(m_countsHome);
    counts->setContentsMargins(0, 0, 0, 0);
    counts->setSpacing(theme.px(40));
    const QString what[] = {tr("rows read"), tr("new"), tr("known already"), tr("set aside")};
    for (int i = 0; i < 4; ++i) {
        auto* one = new QVBoxLayout;
        one->setSpacing(0);
        m_counts[i] = words(QString(), TextRole::Digits, m_countsHome);
        one->addWidget(m_counts[i]);
        one->addWidget(words(what[i], TextRole::Soft, m_countsHome));
        counts->addLayout(one);
    }
    counts->addStretch();
    result->addWidget(m_countsHome);
    m_mend = new MendSheet(m_session, m_result);
    result->addWidget(m_mend, 1);
    outer->addStretch();

    connect(m_choose, &QPushButton::clicked, this, &ImportPanel::choose);
    connect(m_leave, &QPushButton::clicked, this, &ImportPanel::left);
    connect(m_stop, &QPushButton::clicked, this, [this] {
        m_session.background().cancel(m_job);
        m_doing->setText(tr("stopping…"));
    });
    connect(&m_session.background(), &Background::changed, this, &ImportPanel::look);
    connect(m_key, &ColumnKeySheet::accepted, this, [this](const ColumnKey& key) {
        m_matched[key.header] = key;
        askFor(Asking::Files);
        next();
    });
    connect(m_key, &ColumnKeySheet::left, this, [this] {
        askFor(Asking::Files);
        m_files.clear();
        finish();
    });
    connect(m_mend, &MendSheet::taken, this, &ImportPanel::showWaiting);
    m_result->hide();
    askFor(Asking::Files);
    look();
}

FileKind ImportPanel::kind() const {
    if (m_kinds[1]->isChecked()) return FileKind::Events;
    if (m_kinds[2]->isChecked()) return FileKind::MeasuredLosses;
    return FileKind::SpliceLog;
}

void ImportPanel::begin() {
    if (!busy()) {
        m_result->hide();
        askFor(Asking::Files);
        m_mend->begin();
        showWaiting();
    }
    look();
    m_choose->setFocus(Qt::OtherFocusReason);
}

void ImportPanel::askFor(Asking what) {
    m_ask->setVisible(what == Asking::Files);
    m_key->setVisible(what == Asking::Columns);
    if (what == Asking::Columns) m_result->hide();
}

/// Rows that were set aside once and are still open.
void ImportPanel::showWaiting() {
    if (m_mend->open() == 0) {
        m_result->hide();
        m_choose->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_countsHome->hide();
    m_said->setText(m_mend->open() == 1 ? tr("1 row waits to be mended  M")
                                        : tr("%1 rows wait to be mended  M").arg(m_mend->open()));
    setState(m_said, QStringLiteral("watch"));
    m_result->show();
}

void ImportPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (auto* pressed = qobject_cast<QPushButton*>(focusWidget())) return pressed->click();
        return choose();
    }
    if (event->key() == Qt::Key_M && m_mend->open() > 0)
        return m_mend->table()->setFocus(Qt::OtherFocusReason);
    if (const int digit = event->key() - Qt::Key_1; digit >= 0 && digit < static_cast<int>(m_kinds.size())) {
        m_kinds[static_cast<std::size_t>(digit)]->setChecked(true);
        return;
    }
    QWidget::keyPressEvent(event);
}

void ImportPanel::choose() {
    if (busy()) return;
    chooseFiles(this, tr("Files to take in"), {tr("Tables (*.csv *.txt *.tsv)"), tr("All files (*)")},
                [this](const QStringList& files) { start(files); });
}

void ImportPanel::start(const QStringList& files) {
    if (busy() || files.isEmpty()) return;
    m_files.clear();
    for (const auto& file : files) m_files.emplace_back(file.toStdU16String());
    m_asked = static_cast<int>(files.size());
    m_matched.clear();
    m_done = {};
    m_result->hide();
    askFor(Asking::Files);
    next();
}

void ImportPanel::next() {
    if (m_files.empty() || m_done.problem) return finish();
    const auto file = m_files.front();
    constexpr std::size_t manyRows = 1'000;
    auto& bench = m_session.workbench();
    auto seen = bench.preview({file, kind(), {}, manyRows});
    FileKind what = kind();
    if (seen && seen->problem)
        if (auto told = bench.preview({file, {}, {}, manyRows}); told && !told->problem && told->kind) {
            what = *told->kind;
            seen = std::move(told);
        }
    const bool hopeless =
        seen && !seen->rows.empty() &&
        std::ranges::all_of(seen->rows, [](const PreviewRow& row) { return !row.reason.empty(); });
    // Words for what was done that nobody has matched yet: asked once, rather than row by row.
    const bool strange =
        seen && what == FileKind::Events &&
        std::ranges::any_of(seen->rows, [](const PreviewRow& row) { return row.column == "action"; });
    if (!seen || (!seen->problem && !hopeless && !strange)) return take(file, what, {});
    std::vector<std::string> header;
    for (const auto& name : seen->theirHeader) header.push_back(columnName(name));
    if (const auto known = m_matched.find(header); known != m_matched.end())
        return take(file, known->second.kind, known->second);
    askFor(Asking::Columns);
    m_key->begin(file, what, std::move(*seen));
}

void ImportPanel::take(const std::filesystem::path& file, FileKind kind, std::optional<ColumnKey> key) {
    m_files.erase(m_files.begin());
    m_job = m_session.background().run<Result<ImportCount>>(
        this, tr("Import"),
        [&session = m_session, file, kind, key](Progress& progress) {
            return key ? session.workbench().importWith(file, *key, progress)
                       : session.workbench().import(file, kind, progress);
        },
        [this](Result<ImportCount> count) {
            m_job = 0;
            if (count) {
                ++m_done.files;
                m_done.count.read += count->read;
                m_done.count.added += count->added;
                m_done.count.known += count->known;
                m_done.count.setAside += count->setAside;
                std::ranges::move(count->rows, std::back_inserter(m_done.count.rows));
            } else {
                m_done.problem = count.error();
            }
            next();
        });
    look();
}

void ImportPanel::finish() {
    if (m_done.count.added > 0) m_session.noteWork();
    showDone();
    look();
    Q_EMIT finished();
}

void ImportPanel::look() {
    const bool working = busy();
    m_doing->setVisible(working);
    m_bar->setVisible(working);
    m_stop->setVisible(working);
    m_choose->setEnabled(!working);
    if (!working) return;
    for (const auto& job : m_session.background().jobs()) {
        if (job.id != m_job) continue;
        m_doing->setText(job.doing.isEmpty() ? tr("reading…") : text::spoken(job.doing));
        m_bar->setRange(0, job.share < 0 ? 0 : 1000);
        if (job.share >= 0) m_bar->setValue(static_cast<int>(job.share * 1000));
    }
}

void ImportPanel::showDone() {
    const Done& done = m_done;
    if (!done.problem && done.files == 0) {
        m_mend->begin();
        return showWaiting();
    }
    m_result->show();
    m_countsHome->show();
    if (done.problem) {
        const bool stopped = done.problem->code == ProblemCode::Cancelled;
        QString said =
            stopped ? tr("Stopped; of this file nothing was taken in.") : text::spoken(*done.problem);
        if (!said.isEmpty()) said[0] = said[0].toUpper();
        if (done.files > 0)
            said +=
                QLatin1Char(' ') + tr("%1 of %2 files were taken in before.").arg(done.files).arg(m_asked);
        m_said->setText(said);
        setState(m_said, stopped ? QStringLiteral("watch") : QStringLiteral("drifting"));
    } else {
        m_said->setText(done.count.setAside > 0 ? tr("Done; some rows were set aside and wait for you")
                        : done.count.added == 0 ? tr("Done; everything was known already")
                                                : tr("Done; every row landed"));
        setState(m_said, done.count.setAside > 0 ? QStringLiteral("watch") : QStringLiteral("steady"));
    }
    const std::uint64_t numbers[] = {done.count.read, done.count.added, done.count.known,
                                     done.count.setAside};
    for (int i = 0; i < 4; ++i) m_counts[i]->setText(text::number(static_cast<std::int64_t>(numbers[i])));
    m_mend->begin(done.count.rows);
    if (done.count.setAside > 0)
        m_mend->table()->setFocus(Qt::OtherFocusReason);
    else
        m_choose->setFocus(Qt::OtherFocusReason);
}

}  // namespace arc::ui
