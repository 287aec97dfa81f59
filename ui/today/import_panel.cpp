// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/import_panel.hpp"

#include <QButtonGroup>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <filesystem>

#include "ui/models/cell_delegate.hpp"
#include "ui/models/set_aside_table.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

ImportPanel::ImportPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(theme.px(14));
    auto* ask = card(this);
    outer->addWidget(ask);
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
    auto* counts = new QHBoxLayout;
    counts->setSpacing(theme.px(40));
    const QString what[] = {tr("rows read"), tr("new"), tr("known already"), tr("set aside")};
    for (int i = 0; i < 4; ++i) {
        auto* one = new QVBoxLayout;
        one->setSpacing(0);
        m_counts[i] = words(QString(), TextRole::Digits, m_result);
        one->addWidget(m_counts[i]);
        one->addWidget(words(what[i], TextRole::Soft, m_result));
        counts->addLayout(one);
    }
    counts->addStretch();
    result->addLayout(counts);
    m_tableHead = words(QString(), TextRole::Bold, m_result);
    result->addSpacing(theme.px(6));
    result->addWidget(m_tableHead);
    m_rows = new SetAsideTable(this);
    m_table = new QTableView(m_result);
    m_table->setModel(m_rows);
    m_table->setItemDelegate(new CellDelegate(m_table));
    m_table->setAccessibleName(tr("Rows set aside"));
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(theme.px(32));
    m_table->setShowGrid(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setTabKeyNavigation(false);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->horizontalHeader()->setHighlightSections(false);
    result->addWidget(m_table, 1);
    outer->addStretch();

    connect(m_choose, &QPushButton::clicked, this, &ImportPanel::choose);
    connect(m_leave, &QPushButton::clicked, this, &ImportPanel::left);
    connect(m_stop, &QPushButton::clicked, this, [this] {
        m_session.background().cancel(m_job);
        m_doing->setText(tr("stopping…"));
    });
    connect(&m_session.background(), &Background::changed, this, &ImportPanel::look);
    m_result->hide();
    look();
}

FileKind ImportPanel::kind() const {
    if (m_kinds[1]->isChecked()) return FileKind::Events;
    if (m_kinds[2]->isChecked()) return FileKind::MeasuredLosses;
    return FileKind::SpliceLog;
}

void ImportPanel::begin() {
    if (!busy()) m_result->hide();
    look();
    m_choose->setFocus(Qt::OtherFocusReason);
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
    std::vector<std::filesystem::path> paths;
    for (const auto& file : files) paths.emplace_back(file.toStdU16String());
    m_result->hide();
    m_job = m_session.background().run<Done>(
        this, tr("Import"),
        [&session = m_session, paths, kind = kind()](Progress& progress) {
            Done done;
            for (const auto& path : paths) {
                auto count = session.workbench().import(path, kind, progress);
                if (!count) {
                    done.problem = count.error();
                    break;
                }
                ++done.files;
                done.count.read += count->read;
                done.count.added += count->added;
                done.count.known += count->known;
                done.count.setAside += count->setAside;
                std::ranges::move(count->rows, std::back_inserter(done.count.rows));
            }
            return done;
        },
        [this, asked = static_cast<int>(files.size())](Done done) {
            m_job = 0;
            if (done.count.added > 0) m_session.noteChange();
            showDone(done, asked);
            look();
            Q_EMIT finished();
        });
    look();
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

void ImportPanel::showDone(const Done& done, int asked) {
    m_result->show();
    if (done.problem) {
        const bool stopped = done.problem->code == ProblemCode::Cancelled;
        QString said =
            stopped ? tr("Stopped; of this file nothing was taken in.") : text::spoken(*done.problem);
        if (!said.isEmpty()) said[0] = said[0].toUpper();
        if (done.files > 0)
            said += QLatin1Char(' ') + tr("%1 of %2 files were taken in before.").arg(done.files).arg(asked);
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
    const bool rows = !done.count.rows.empty();
    m_tableHead->setText(done.count.setAside > done.count.rows.size()
                             ? tr("The first %1 rows set aside")
                                   .arg(text::number(static_cast<std::int64_t>(done.count.rows.size())))
                             : tr("Set aside: nothing of these is lost, mend them and import again"));
    m_rows->show(done.count.rows);
    const Theme theme = currentTheme();
    const int widths[] = {150, 70, 140, 380};
    for (int i = 0; i < 4; ++i) m_table->setColumnWidth(i, theme.px(widths[i]));
    m_tableHead->setVisible(rows);
    m_table->setVisible(rows);
}

}  // namespace arc::ui
