// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/take_in_panel.hpp"

#include <QFileInfo>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

QString waitingLine(const WaitingSatchel& satchel) {
    QString line = TakeInPanel::tr("%1, key %2, packed %3")
                       .arg(text::words(satchel.from.name), text::words(satchel.from.fingerprint),
                            text::dayAndClock(satchel.madeAt));
    if (satchel.sealed) line += TakeInPanel::tr(", sealed");
    return line;
}

}  // namespace

TakeInPanel::TakeInPanel(Session& session, QWidget* parent) : Panel(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(12));
    auto* said =
        words(tr("All of a satchel is taken in or nothing, in any order, any number of times: what is "
                 "here already is not doubled."),
              TextRole::Soft, this);
    said->setWordWrap(true);
    box->addWidget(said);
    auto* row = new QHBoxLayout;
    m_choose = button(tr("Choose a satchel…"), ButtonKind::Primary, this, QStringLiteral("import"));
    row->addWidget(m_choose);
    row->addStretch(1);
    box->addLayout(row);

    auto* preview = card(this);
    m_preview = preview;
    m_name = words(QString(), TextRole::Strong, preview);
    m_name->setWordWrap(true);
    m_says = words(QString(), TextRole::Body, preview);
    m_says->setWordWrap(true);
    m_passphrase = new QLineEdit(preview);
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_passphrase->setAccessibleName(tr("Passphrase of the satchel"));
    m_passphrase->setPlaceholderText(tr("passphrase, if it has one"));
    m_passphrase->setMaximumWidth(theme.px(420));
    m_take = button(tr("Take it in"), ButtonKind::Usual, preview, QStringLiteral("check"));
    auto* takeRow = new QHBoxLayout;
    takeRow->addWidget(m_passphrase, 1);
    takeRow->addWidget(m_take);
    takeRow->addStretch(1);
    inside(preview)->addWidget(m_name);
    inside(preview)->addWidget(m_says);
    inside(preview)->addLayout(takeRow);
    preview->hide();
    box->addWidget(preview);
    m_outcome = new Outcome(this);
    box->addWidget(m_outcome);

    auto* waiting = card(this);
    m_waitingCard = waiting;
    inside(waiting)->addWidget(
        words(tr("Satchels of laptops nobody has accepted yet"), TextRole::Strong, waiting));
    auto* hint = words(tr("They lie beside the logbook; nothing of them is in it. Compare the key with the "
                          "one that the other laptop shows under Laptops, by phone, then accept it."),
                       TextRole::Small, waiting);
    hint->setWordWrap(true);
    inside(waiting)->addWidget(hint);
    m_waiting = new QListWidget(waiting);
    m_waiting->setAccessibleName(tr("Waiting satchels"));
    m_waiting->setFrameShape(QFrame::NoFrame);
    inside(waiting)->addWidget(m_waiting, 1);
    m_prompt = new PromptBar(waiting);
    inside(waiting)->addWidget(m_prompt);
    auto* waitRow = new QHBoxLayout;
    m_accept = button(tr("Accept the laptop  A"), ButtonKind::Usual, waiting);
    m_discard = button(tr("Throw the satchel away  X"), ButtonKind::Usual, waiting);
    waitRow->addWidget(m_accept);
    waitRow->addWidget(m_discard);
    waitRow->addStretch(1);
    inside(waiting)->addLayout(waitRow);
    waiting->hide();
    box->addWidget(waiting, 1);
    box->addStretch(0);

    connect(m_choose, &QPushButton::clicked, this, &TakeInPanel::choose);
    const auto takeIt = [this] {
        if (m_file) take(*m_file);
    };
    connect(m_take, &QPushButton::clicked, this, takeIt);
    connect(m_passphrase, &QLineEdit::returnPressed, this, takeIt);
    connect(m_accept, &QPushButton::clicked, this, &TakeInPanel::accept);
    connect(m_discard, &QPushButton::clicked, this, &TakeInPanel::discard);
    connect(m_prompt, &PromptBar::closed, this, [this] { m_waiting->setFocus(); });
    auto& actions = m_session.actions();
    actions.add({QStringLiteral("logbook.accept"),
                 tr("Accept the laptop of the chosen satchel"),
                 Qt::Key_A,
                 {},
                 Screen::Logbook},
                m_waiting, [this] { accept(); });
    actions.add({QStringLiteral("logbook.discard"),
                 tr("Throw the chosen waiting satchel away"),
                 Qt::Key_X,
                 {},
                 Screen::Logbook},
                m_waiting, [this] { discard(); });
}

void TakeInPanel::refresh() {
    showWaiting();
}

QWidget* TakeInPanel::firstFocus() {
    return m_choose;
}

QString TakeInPanel::count() const {
    return m_all.empty() ? QString() : QString::number(m_all.size());
}

QString TakeInPanel::outcome() const {
    return m_outcome->text();
}

void TakeInPanel::choose() {
    chooseFiles(this, tr("Satchel to take in"), {tr("Satchels (*.satchel)"), tr("All files (*)")},
                [this](const QStringList& files) {
                    if (!files.isEmpty()) look(files.front());
                });
}

void TakeInPanel::look(const QString& file) {
    if (m_working) return;
    m_working = true;
    m_file.reset();
    m_outcome->quiet();
    m_name->setText(QFileInfo(file).fileName());
    m_says->setText(tr("Reading what it says…"));
    setState(m_says, QString());
    m_passphrase->clear();
    m_take->setEnabled(false);
    m_preview->show();
    const std::filesystem::path path(file.toStdU16String());
    using Answer = Result<std::string>;
    m_session.background().run<Answer>(
        this, tr("Reading a satchel"),
        [&session = m_session, path](Progress& progress) -> Answer {
            return session.workbench().verify(path, progress);
        },
        [this, path](Answer answer) {
            m_working = false;
            m_says->setText(answer ? asLine(*answer) : asLine(answer.error()));
            setState(m_says, answer ? QString() : QStringLiteral("drifting"));
            if (!answer) return;
            m_file = path;
            m_take->setEnabled(true);
            m_passphrase->setFocus();
        });
}

void TakeInPanel::take(const std::filesystem::path& file) {
    if (m_working) return;
    m_working = true;
    m_take->setEnabled(false);
    m_outcome->say(tr("Taking it in…"), Mark::Learning);
    std::optional<std::string> passphrase;
    if (!m_passphrase->text().isEmpty()) passphrase = text::utf8(m_passphrase->text());
    using Answer = Result<SatchelAnswer>;
    m_session.background().run<Answer>(
        this, tr("Taking in a satchel"),
        [&session = m_session, file, passphrase](Progress& progress) -> Answer {
            return session.workbench().takeSatchel(file, passphrase, progress);
        },
        [this](Answer answer) {
            m_working = false;
            m_take->setEnabled(m_file.has_value());
            if (!answer) return m_outcome->say(answer.error());
            if (const auto* in = std::get_if<TakenIn>(&*answer)) return taken(*in);
            const auto& waits = std::get<WaitingSatchel>(*answer);
            m_preview->hide();
            m_outcome->say(tr("Nobody has accepted the laptop that signed it (%1, key %2): the satchel waits "
                              "below, and nothing of it is in the logbook.")
                               .arg(text::words(waits.from.name), text::words(waits.from.fingerprint)),
                           Mark::Watch);
            showWaiting();
            m_waiting->setFocus();
        });
}

void TakeInPanel::taken(const TakenIn& answer) {
    m_preview->hide();
    m_passphrase->clear();
    QString said =
        tr("New entries from %2: %1; here already: %3.")
            .arg(text::number(static_cast<std::int64_t>(answer.newEntries)), text::words(answer.from.name),
                 text::number(static_cast<std::int64_t>(answer.knownEntries)));
    if (answer.toLookAt > 0)
        said +=
            QLatin1Char(' ') + tr("Records edited here and there: %1; look at them under Edited twice.")
                                   .arg(text::number(static_cast<std::int64_t>(answer.toLookAt)));
    m_outcome->say(said, answer.toLookAt > 0 ? Mark::Watch : Mark::Steady);
    if (answer.newEntries > 0) m_session.noteWork();
    showWaiting();
    if (answer.toLookAt > 0) Q_EMIT editsFound();
    m_choose->setFocus();
}

void TakeInPanel::showWaiting() {
    auto waiting = m_session.workbench().waitingSatchels();
    m_all = waiting ? std::move(*waiting) : std::vector<WaitingSatchel>{};
    const int before = std::max(0, m_waiting->currentRow());
    m_waiting->clear();
    for (const auto& satchel : m_all) m_waiting->addItem(waitingLine(satchel));
    if (!m_all.empty()) m_waiting->setCurrentRow(std::min(before, m_waiting->count() - 1));
    m_waitingCard->setVisible(!m_all.empty());
    Q_EMIT countChanged();
}

const WaitingSatchel* TakeInPanel::chosen() const {
    const auto row = m_waiting->currentRow();
    return row < 0 || row >= static_cast<int>(m_all.size()) ? nullptr : &m_all[static_cast<std::size_t>(row)];
}

void TakeInPanel::accept() {
    const auto* satchel = chosen();
    if (!satchel || m_working) return;
    std::vector<PromptField> fields{{tr("Name"), text::words(satchel->from.name), {}}};
    m_prompt->ask(tr("Does the other laptop show the key %1? Then give it a name; its satchels are taken in "
                     "from now on.")
                      .arg(text::words(satchel->from.fingerprint)),
                  fields, tr("Accept"), [this, waits = *satchel](const QStringList& answers) -> QString {
                      const auto done =
                          m_session.workbench().acceptDevice(waits.from.key, text::utf8(answers[0]));
                      if (!done) return asLine(done.error());
                      if (waits.sealed) {
                          look(QString::fromStdString(waits.file.string()));
                      } else {
                          take(waits.file);
                      }
                      return {};
                  });
}

void TakeInPanel::discard() {
    const auto* satchel = chosen();
    if (!satchel || m_working) return;
    if (m_toDiscard != satchel->file) {
        m_toDiscard = satchel->file;
        return m_outcome->say(tr("Press X once more to throw %1 away.")
                                  .arg(QString::fromStdString(satchel->file.filename().string())),
                              Mark::Watch);
    }
    m_toDiscard.clear();
    const auto done = m_session.workbench().discardSatchel(*satchel);
    if (!done) return m_outcome->say(done.error());
    m_outcome->say(tr("The satchel was thrown away; nothing of it was in the logbook."), Mark::Watch);
    showWaiting();
}

}  // namespace arc::ui
