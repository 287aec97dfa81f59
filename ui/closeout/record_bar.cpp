// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/record_bar.hpp"

#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "core/closeout/issued.hpp"
#include "core/closeout/paper.hpp"
#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

/// A label may hold what a folder name may not.
QString folderName(const std::string& label) {
    QString name = text::words(label);
    for (auto& c : name)
        if (!c.isLetterOrNumber() && c != QLatin1Char('-') && c != QLatin1Char('_')) c = QLatin1Char('_');
    return name;
}

QString documents() {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

}  // namespace

RecordBar::RecordBar(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(10));
    m_prompt = new PromptBar(this);
    box->addWidget(m_prompt);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(10));
    m_final = button(tr("Issue the final record…"), ButtonKind::Primary, this, QStringLiteral("seal"));
    m_draft = button(tr("Write a draft…"), ButtonKind::Wide, this, QStringLiteral("export"));
    m_verify = button(tr("Verify a record…"), ButtonKind::Wide, this, QStringLiteral("check"));
    m_paper = new QComboBox(this);
    m_paper->setAccessibleName(tr("Paper of the record"));
    for (const auto paper : {closeout::PaperSize::A4, closeout::PaperSize::Letter})
        m_paper->addItem(text::words(std::string(closeout::title(paper))), static_cast<int>(paper));
    m_language = new QComboBox(this);
    m_language->setAccessibleName(tr("Language of the pages"));
    for (const auto language : {closeout::PageLanguage::English, closeout::PageLanguage::Spanish})
        m_language->addItem(text::words(std::string(closeout::title(language))), static_cast<int>(language));
    row->addWidget(m_final);
    row->addWidget(m_draft);
    row->addWidget(m_verify);
    row->addStretch();
    box->addLayout(row);
    auto* form = new QHBoxLayout;
    form->setSpacing(theme.px(10));
    form->addWidget(words(tr("paper"), TextRole::Small, this));
    form->addWidget(m_paper);
    form->addWidget(m_language);
    form->addStretch();
    box->addLayout(form);
    m_outcome = new Outcome(this);
    box->addWidget(m_outcome);
    connect(m_final, &QPushButton::clicked, this, [this] { askWhere(closeout::RecordState::Final); });
    connect(m_draft, &QPushButton::clicked, this, [this] { askWhere(closeout::RecordState::Draft); });
    connect(m_verify, &QPushButton::clicked, this, &RecordBar::askWhat);
    connect(m_paper, &QComboBox::activated, this, &RecordBar::choosePaper);
    connect(m_language, &QComboBox::activated, this, &RecordBar::chooseLanguage);
    connect(m_prompt, &PromptBar::closed, this, [this] { m_final->setFocus(); });
}

void RecordBar::addActions(QWidget* owner) {
    auto& actions = m_session.actions();
    const auto add = [&](const char* id, const QString& words, Qt::Key key, auto run) {
        actions.add({QString::fromLatin1(id), words, QKeySequence(Qt::CTRL | key), {}, Screen::Closeout},
                    owner, run);
    };
    add("closeout.draft", tr("Write a draft of the closeout record"), Qt::Key_D,
        [this] { askWhere(closeout::RecordState::Draft); });
    add("closeout.issue", tr("Issue the final closeout record"), Qt::Key_I,
        [this] { askWhere(closeout::RecordState::Final); });
    add("closeout.verify", tr("Verify a closeout record"), Qt::Key_R, [this] { askWhat(); });
}

void RecordBar::show(std::shared_ptr<const closeout::Record> record) {
    m_record = std::move(record);
    if (const auto paper = closeout::paperOf(m_session.book()))
        m_paper->setCurrentIndex(m_paper->findData(static_cast<int>(*paper)));
    if (const auto language = closeout::pageLanguageOf(m_session.book()))
        m_language->setCurrentIndex(m_language->findData(static_cast<int>(*language)));
    enable();
}

void RecordBar::enable() {
    const bool any = m_record && !m_writing;
    m_draft->setEnabled(any);
    m_final->setEnabled(any && closeout::openExceptions(*m_record) == 0);
    m_final->setToolTip(any && !m_final->isEnabled() ? tr("Every exception needs a disposition first")
                                                     : QString());
}

QString RecordBar::outcome() const {
    return m_outcome->text();
}

void RecordBar::choosePaper(int index) {
    const auto paper = static_cast<closeout::PaperSize>(m_paper->itemData(index).toInt());
    m_session.save(Entry(closeout::paperSetting(paper)), Undo::No);
}

void RecordBar::chooseLanguage(int index) {
    const auto language = static_cast<closeout::PageLanguage>(m_language->itemData(index).toInt());
    m_session.save(Entry(closeout::pageLanguageSetting(language)), Undo::No);
}

void RecordBar::askWhere(closeout::RecordState state) {
    if (!m_record || m_writing) return;
    if (state == closeout::RecordState::Final && closeout::openExceptions(*m_record) > 0)
        return m_outcome->say(tr("Every exception needs a disposition first: choose it, then A or X."),
                              Mark::Watch);
    if (state == closeout::RecordState::Final && m_session.crew().empty()) {
        m_prompt->ask(tr("A final record carries the name of who issues it."), {{tr("Name"), {}, {}}},
                      tr("Go on"), [this, state](const QStringList& answers) -> QString {
                          m_session.setCrew(text::utf8(answers[0]));
                          askWhere(state);
                          return {};
                      });
        return;
    }
    chooseFolder(this, tr("Folder in which the record is made"), documents(),
                 [this, state](const QString& folder) { writeTo(folder, state); });
}

void RecordBar::writeTo(const QString& folder, closeout::RecordState state) {
    if (!m_record || m_writing) return;
    const bool final = state == closeout::RecordState::Final;
    QString name = QStringLiteral("closeout-%1-draft").arg(folderName(m_record->job.label));
    if (final) {
        const auto issued = m_session.take(m_session.book().issuedRecords(m_record->job.id));
        if (!issued) return;
        name = QStringLiteral("closeout-%1-no%2")
                   .arg(folderName(m_record->job.label))
                   .arg(closeout::nextNumber(*issued));
    }
    const std::filesystem::path target(QDir(folder).filePath(name).toStdU16String());
    m_writing = true;
    enable();
    m_outcome->say(tr("Writing the record…"), Mark::Learning);
    using Answer = Result<std::filesystem::path>;
    m_session.background().run<Answer>(
        this, final ? tr("Issuing the closeout record") : tr("Writing the draft"),
        [&session = m_session, id = m_record->job.id, target, final,
         by = m_session.crew()](Progress& progress) -> Answer {
            auto& bench = session.workbench();
            return final ? bench.issueCloseout(id, target, by, progress)
                         : bench.writeCloseout(id, target, progress);
        },
        [this, final](Answer answer) {
            m_writing = false;
            if (answer) {
                m_outcome->say(tr("Written: %1. A stranger can verify it.")
                                   .arg(QString::fromStdString(answer->string())),
                               Mark::Steady);
                // A draft is not of the logbook.
                if (final) m_session.noteWork();
            } else {
                m_outcome->say(answer.error());
            }
            enable();
        });
}

void RecordBar::askWhat() {
    chooseFolder(this, tr("Closeout record to verify"), documents(),
                 [this](const QString& folder) { verifyAt(folder); });
}

void RecordBar::verifyAt(const QString& path) {
    m_outcome->say(tr("Verifying…"), Mark::Learning);
    using Answer = Result<std::string>;
    m_session.background().run<Answer>(
        this, tr("Verifying"),
        [&session = m_session, place = std::filesystem::path(path.toStdU16String())](
            Progress& progress) -> Answer { return session.workbench().verify(place, progress); },
        [this](Answer answer) {
            if (answer)
                m_outcome->say(asLine(*answer), Mark::Steady);
            else
                m_outcome->say(answer.error());
        });
}

}  // namespace arc::ui
