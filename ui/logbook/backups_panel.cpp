// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/backups_panel.hpp"

#include <QDir>
#include <QFileInfo>
#include <QFrame>
#include <QGridLayout>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>
#include <QStandardPaths>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

BackupsPanel::BackupsPanel(Session& session, QWidget* parent) : Panel(parent), m_session(session) {
    const Theme theme = currentTheme();
    const auto [box, said] = begin();
    m_said = said;
    auto* row = new QHBoxLayout;
    m_make = button(tr("Make a copy now"), ButtonKind::Primary, this, QStringLiteral("add"));
    m_restore =
        button(tr("Make a logbook of the chosen copy…"), ButtonKind::Wide, this, QStringLiteral("undo"));
    row->addWidget(m_make);
    row->addWidget(m_restore);
    row->addStretch(1);
    box->addLayout(row);
    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(8), theme.px(8), theme.px(8));
    m_list = new QListWidget(sheet);
    m_list->setAccessibleName(tr("Copies"));
    m_list->setFrameShape(QFrame::NoFrame);
    inside(sheet)->addWidget(m_list, 1);
    box->addWidget(sheet, 1);
    m_outcome = new Outcome(this);
    box->addWidget(m_outcome);
    auto* bounds = card(this);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(18));
    add(grid, 0, tr("every hours"), backup_setting::everyHours, 1, 24 * 31, 24);
    add(grid, 1, tr("copies at most"), backup_setting::keepCopies, 2, 1000, 10);
    add(grid, 2, tr("days at most"), backup_setting::keepDays, 1, 3660, 60);
    add(grid, 3, tr("megabytes at most"), backup_setting::keepMegabytes, 10, 1'000'000, 2000);
    grid->setColumnStretch(4, 1);
    inside(bounds)->addLayout(grid);
    box->addWidget(bounds);
    connect(m_make, &QPushButton::clicked, this, &BackupsPanel::make);
    connect(m_restore, &QPushButton::clicked, this, &BackupsPanel::askWhere);
}

QSpinBox* BackupsPanel::add(QGridLayout* grid, int column, const QString& name, std::string_view key,
                            int least, int most, int usual) {
    auto* box = new QSpinBox(this);
    box->setRange(least, most);
    box->setKeyboardTracking(false);
    box->setAccessibleName(name);
    grid->addWidget(words(name, TextRole::Small, this), 0, column);
    grid->addWidget(box, 1, column);
    m_bounds.push_back({key, usual, box});
    connect(box, &QSpinBox::valueChanged, this, [this, key](int value) {
        m_session.save(Entry(Setting{std::string(key), std::to_string(value)}));
    });
    return box;
}

void BackupsPanel::readSettings() {
    for (const auto& bound : m_bounds) {
        const auto value = m_session.book().setting(bound.key);
        const QSignalBlocker quiet(bound.box);
        const int number = value && *value ? text::words(**value).toInt() : 0;
        bound.box->setValue(number > 0 ? number : bound.usual);
    }
}

void BackupsPanel::refresh() {
    readSettings();
    auto copies = m_session.workbench().backups();
    if (!copies) return m_outcome->say(copies.error());
    m_all = std::move(*copies);
    const int before = std::max(0, m_list->currentRow());
    m_list->clear();
    for (const auto& copy : m_all)
        m_list->addItem(tr("%1   %2   %3")
                            .arg(text::dayAndClock(copy.madeAt),
                                 QLocale().formattedDataSize(static_cast<qint64>(copy.bytes), 1),
                                 QString::fromStdString(copy.file.filename().string())));
    if (!m_all.empty()) m_list->setCurrentRow(std::min(before, m_list->count() - 1));
    m_restore->setEnabled(!m_all.empty() && !m_working);
    m_said->setText(
        m_all.empty() ? tr("There is no copy yet. One is made by itself after the first entries; it can be "
                           "made while you work.")
                      : tr("Copies are made by themselves while you work, in %1. Put one of them on a stick "
                           "from time to time: a copy on the same disk does not help when the disk fails.")
                            .arg(QString::fromStdString(m_all.front().file.parent_path().string())));
}

QWidget* BackupsPanel::firstFocus() {
    return m_make;
}

QString BackupsPanel::outcome() const {
    return m_outcome->text();
}

const BackupCopy* BackupsPanel::chosen() const {
    const int row = m_list->currentRow();
    return row < 0 || row >= static_cast<int>(m_all.size()) ? nullptr : &m_all[static_cast<std::size_t>(row)];
}

void BackupsPanel::make() {
    if (m_working) return;
    m_working = true;
    m_make->setEnabled(false);
    m_outcome->say(tr("Copying…"), Mark::Learning);
    using Answer = Result<BackupCopy>;
    m_session.background().run<Answer>(
        this, tr("Copying the logbook"),
        [&session = m_session](Progress& progress) -> Answer {
            return session.workbench().makeBackup(progress);
        },
        [this](Answer answer) {
            m_working = false;
            m_make->setEnabled(true);
            if (answer)
                m_outcome->say(tr("Copied: %1").arg(QString::fromStdString(answer->file.string())),
                               Mark::Steady);
            else
                m_outcome->say(answer.error());
            refresh();
        });
}

void BackupsPanel::askWhere() {
    if (!chosen() || m_working) return;
    chooseFolder(this, tr("Folder for the new logbook"),
                 QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                 [this](const QString& folder) { restoreInto(folder); });
}

void BackupsPanel::restoreInto(const QString& folder) {
    const auto* copy = chosen();
    if (!copy || m_working) return;
    const QString stem = QString::fromStdString(copy->file.stem().string());
    QString name = stem + QStringLiteral(".restored.arcbook");
    for (int i = 2; QFileInfo::exists(QDir(folder).filePath(name)); ++i)
        name = QStringLiteral("%1.restored-%2.arcbook").arg(stem).arg(i);
    const std::filesystem::path target(QDir(folder).filePath(name).toStdU16String());
    m_working = true;
    m_restore->setEnabled(false);
    m_outcome->say(tr("Checking the copy…"), Mark::Learning);
    using Answer = Result<void>;
    m_session.background().run<Answer>(
        this, tr("Making a logbook of a copy"),
        [&session = m_session, from = copy->file, target](Progress& progress) -> Answer {
            return session.workbench().restoreBackup(from, target, progress);
        },
        [this, target](Answer answer) {
            m_working = false;
            m_restore->setEnabled(true);
            if (answer)
                m_outcome->say(
                    tr("The copy is sound; the new logbook is %1. Open it with arcwright. This one "
                       "stays as it is.")
                        .arg(QString::fromStdString(target.string())),
                    Mark::Steady);
            else
                m_outcome->say(answer.error());
        });
}

}  // namespace arc::ui
