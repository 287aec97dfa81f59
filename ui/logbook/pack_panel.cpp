// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/pack_panel.hpp"

#include <QComboBox>
#include <QDateEdit>
#include <QDir>
#include <QFormLayout>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
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

namespace {

constexpr int usualDays = 7;

QDate dateOf(Instant at) {
    const auto c = calendar(at);
    return QDate(c.year, c.month, c.day);
}

/// Midnight of the day where the laptop is.
Instant startOf(const QDate& day, Instant now) {
    const auto days = dateOf(now).daysTo(day);
    const auto c = calendar(now);
    const std::int64_t sinceMidnight = (c.hour * 60 + c.minute) * msPerMinute + c.second * std::int64_t{1000};
    return {now.ms - sinceMidnight - now.ms % 1000 + days * msPerDay, now.offsetMinutes};
}

}  // namespace

PackPanel::PackPanel(Session& session, QWidget* parent) : Panel(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = begin(tr("A satchel is one signed file for another logbook: by stick, by mail, any way you "
                         "like. Packing the same again, or more than needed, does no harm."))
                    .first;
    auto* sheet = card(this);
    auto* form = new QFormLayout;
    form->setSpacing(theme.px(10));
    form->setLabelAlignment(Qt::AlignLeft);
    m_what = new QComboBox(sheet);
    m_what->setAccessibleName(tr("What is handed over"));
    m_what->addItems({tr("everything"), tr("what was written since a day"), tr("one job")});
    m_since = new QDateEdit(sheet);
    m_since->setAccessibleName(tr("Since"));
    m_since->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    m_job = new QComboBox(sheet);
    m_job->setAccessibleName(tr("Job"));
    const auto secret = [&](const QString& name, const QString& hint) {
        auto* line = new QLineEdit(sheet);
        line->setEchoMode(QLineEdit::Password);
        line->setAccessibleName(name);
        line->setPlaceholderText(hint);
        return line;
    };
    m_passphrase = secret(tr("Passphrase"), tr("none: who has the file can read it"));
    m_again = secret(tr("Passphrase once more"), {});
    for (QWidget* wide : std::initializer_list<QWidget*>{m_what, m_since, m_job, m_passphrase, m_again})
        wide->setMaximumWidth(theme.px(420));
    m_sinceName = words(tr("Since"), TextRole::Body, sheet);
    m_jobName = words(tr("Job"), TextRole::Body, sheet);
    form->addRow(tr("What"), m_what);
    form->addRow(m_sinceName, m_since);
    form->addRow(m_jobName, m_job);
    form->addRow(tr("Passphrase"), m_passphrase);
    form->addRow(tr("Once more"), m_again);
    inside(sheet)->addLayout(form);
    auto* row = new QHBoxLayout;
    m_pack = button(tr("Write the satchel…"), ButtonKind::Primary, sheet, QStringLiteral("export"));
    row->addWidget(m_pack);
    row->addStretch(1);
    inside(sheet)->addSpacing(theme.px(6));
    inside(sheet)->addLayout(row);
    box->addWidget(sheet);
    m_outcome = new Outcome(this);
    box->addWidget(m_outcome);
    box->addStretch(1);
    m_since->setDate(dateOf(m_session.clock().now()).addDays(-usualDays));
    connect(m_what, &QComboBox::currentIndexChanged, this, &PackPanel::showWhat);
    connect(m_passphrase, &QLineEdit::textChanged, this, &PackPanel::showWhat);
    connect(m_pack, &QPushButton::clicked, this, &PackPanel::ask);
    for (auto* line : {m_passphrase, m_again})
        connect(line, &QLineEdit::returnPressed, this, &PackPanel::ask);
    showWhat();
}

void PackPanel::refresh() {
    auto jobs = m_session.take(m_session.book().jobs());
    if (!jobs) return;
    m_jobs = std::move(*jobs);
    const QString before = m_job->currentText();
    m_job->clear();
    for (const auto& job : m_jobs) m_job->addItem(text::words(job.label));
    m_job->setCurrentIndex(std::max(0, m_job->findText(before)));
}

QWidget* PackPanel::firstFocus() {
    return m_what;
}

void PackPanel::showWhat() {
    for (QWidget* part : std::initializer_list<QWidget*>{m_sinceName, m_since})
        part->setVisible(m_what->currentIndex() == SinceDay);
    for (QWidget* part : std::initializer_list<QWidget*>{m_jobName, m_job})
        part->setVisible(m_what->currentIndex() == OneJob);
    m_again->setEnabled(!m_passphrase->text().isEmpty());
    if (m_passphrase->text().isEmpty()) m_again->clear();
}

QString PackPanel::outcome() const {
    return m_outcome->text();
}

void PackPanel::ask() {
    if (m_working) return;
    if (m_passphrase->text() != m_again->text()) {
        m_outcome->say(tr("The two passphrases are not the same. Type it once more."), Mark::Watch);
        m_again->setFocus();
        m_again->selectAll();
        return;
    }
    if (m_what->currentIndex() == OneJob && m_jobs.empty())
        return m_outcome->say(tr("There is no job in this logbook yet."), Mark::Watch);
    chooseFolder(this, tr("Folder for the satchel"),
                 QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation),
                 [this](const QString& folder) { packInto(folder); });
}

QString PackPanel::fileName() const {
    QString what = QStringLiteral("logbook");
    if (m_what->currentIndex() == OneJob) what = m_job->currentText();
    for (auto& c : what)
        if (!c.isLetterOrNumber() && c != QLatin1Char('-')) c = QLatin1Char('_');
    const auto c = calendar(m_session.clock().now());
    return QStringLiteral("%1-%2%3%4-%5%6%7")
        .arg(what)
        .arg(c.year, 4, 10, QLatin1Char('0'))
        .arg(c.month, 2, 10, QLatin1Char('0'))
        .arg(c.day, 2, 10, QLatin1Char('0'))
        .arg(c.hour, 2, 10, QLatin1Char('0'))
        .arg(c.minute, 2, 10, QLatin1Char('0'))
        .arg(c.second, 2, 10, QLatin1Char('0'));
}

void PackPanel::packInto(const QString& folder) {
    PackOrder order;
    QString name = fileName() + QStringLiteral(".satchel");
    for (int i = 2; QFileInfo::exists(QDir(folder).filePath(name)); ++i)
        name = QStringLiteral("%1-%2.satchel").arg(fileName()).arg(i);
    order.satchel = std::filesystem::path(QDir(folder).filePath(name).toStdU16String());
    if (m_what->currentIndex() == SinceDay) order.since = startOf(m_since->date(), m_session.clock().now());
    if (m_what->currentIndex() == OneJob && m_job->currentIndex() >= 0)
        order.job = m_jobs[static_cast<std::size_t>(m_job->currentIndex())].id;
    if (!m_passphrase->text().isEmpty()) order.passphrase = text::utf8(m_passphrase->text());
    m_working = true;
    m_pack->setEnabled(false);
    m_outcome->say(tr("Packing…"), Mark::Learning);
    using Answer = Result<PackCount>;
    m_session.background().run<Answer>(
        this, tr("Packing a satchel"),
        [&session = m_session, order](Progress& progress) -> Answer {
            return session.workbench().packSatchel(order, progress);
        },
        [this, order](Answer answer) {
            m_working = false;
            m_pack->setEnabled(true);
            if (!answer) return m_outcome->say(answer.error());
            m_passphrase->clear();
            m_outcome->say(
                tr("%1 entries are in %2, signed by this laptop%3.")
                    .arg(text::number(static_cast<std::int64_t>(answer->entries)),
                         QString::fromStdString(order.satchel.string()),
                         order.passphrase ? tr(" and sealed. Tell the passphrase another way than the file")
                                          : QString()),
                Mark::Steady);
        });
}

}  // namespace arc::ui
