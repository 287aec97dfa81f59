// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/twice_panel.hpp"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

/// More versions of one record than this are not shown side by side; the history has them all.
constexpr std::size_t shownAtMost = 4;

struct Found {
    Result<std::vector<ConcurrentEdits>> edits;
    Result<std::vector<NumberClash>> clashes;
};

QString clashLine(const NumberClash& clash) {
    QStringList who;
    for (const auto& record : clash.records)
        who << TwicePanel::tr("%1 on %2, %3")
                   .arg(text::words(record.by), text::words(record.device), text::dayAndClock(record.at));
    QString line = TwicePanel::tr("Closeout record no. %1 of %2 was issued twice: %3.")
                       .arg(clash.number)
                       .arg(text::words(clash.jobLabel), who.join(TwicePanel::tr("; ")));
    line += QLatin1Char(' ');
    line += clash.supersededBy
                ? TwicePanel::tr("No. %1 supersedes both.").arg(*clash.supersededBy)
                : TwicePanel::tr("Issue the record again on Closeout: the new one supersedes both.");
    return line;
}

}  // namespace

TwicePanel::TwicePanel(Session& session, QWidget* parent) : Panel(parent), m_session(session) {
    const Theme theme = currentTheme();
    const auto [box, said] = begin();
    m_said = said;
    m_clash = words(QString(), TextRole::Body, this);
    m_clash->setWordWrap(true);
    setState(m_clash, stateName(Mark::Drifting));
    m_clash->hide();
    box->addWidget(m_clash);
    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(8), theme.px(8), theme.px(8));
    m_list = new QListWidget(sheet);
    m_list->setAccessibleName(tr("Records edited twice"));
    m_list->setFrameShape(QFrame::NoFrame);
    inside(sheet)->addWidget(m_list);
    box->addWidget(sheet, 2);
    m_place = new QHBoxLayout;
    box->addLayout(m_place, 3);
    m_outcome = new Outcome(this);
    box->addWidget(m_outcome);
    connect(m_list, &QListWidget::currentRowChanged, this, &TwicePanel::showVersions);
    auto& actions = m_session.actions();
    for (std::size_t i = 0; i < shownAtMost; ++i)
        actions.add({QStringLiteral("logbook.keep%1").arg(i + 1),
                     tr("Keep version %1 of the record edited twice").arg(i + 1),
                     QKeySequence(Qt::Key_1 + static_cast<int>(i)),
                     {},
                     Screen::Logbook},
                    m_list, [this, i] { keep(i); });
}

QWidget* TwicePanel::firstFocus() {
    return m_list;
}

QString TwicePanel::count() const {
    const auto open = static_cast<std::size_t>(
        std::ranges::count_if(m_clashes, [](const NumberClash& c) { return !c.supersededBy; }));
    const auto all = m_all.size() + open;
    return all == 0 ? QString() : QString::number(all);
}

void TwicePanel::refresh() {
    if (m_working) {
        m_again = true;
        return;
    }
    m_working = true;
    m_again = false;
    m_session.background().run<Found>(
        this, tr("Looking for records edited twice"),
        [&session = m_session](Progress&) {
            return Found{session.workbench().concurrentEdits(), session.workbench().numberClashes()};
        },
        [this](Found found) {
            m_working = false;
            if (!found.edits) return m_outcome->say(found.edits.error());
            show(std::move(*found.edits),
                 found.clashes ? std::move(*found.clashes) : std::vector<NumberClash>{});
            if (m_again) refresh();
        },
        Shown::No);
}

void TwicePanel::show(std::vector<ConcurrentEdits> all, std::vector<NumberClash> clashes) {
    m_all = std::move(all);
    m_clashes = std::move(clashes);
    m_said->setText(
        m_all.empty() ? tr("No record was edited on two laptops without one knowing of the other.")
                      : tr("These were edited on two laptops, neither knowing of the other. The later one "
                           "shows until somebody chooses; both stay in the history. Press the number of the "
                           "one to keep."));
    QStringList lines;
    for (const auto& clash : m_clashes) lines << clashLine(clash);
    m_clash->setText(lines.join(QLatin1Char('\n')));
    m_clash->setVisible(!lines.isEmpty());
    const int before = std::max(0, m_list->currentRow());
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const auto& one : m_all) m_list->addItem(text::spoken(one.showing().words));
    if (!m_all.empty()) m_list->setCurrentRow(std::min(before, m_list->count() - 1));
    m_list->parentWidget()->setVisible(!m_all.empty());
    showVersions();
    Q_EMIT countChanged();
}

const ConcurrentEdits* TwicePanel::chosen() const {
    const int row = m_list->currentRow();
    return row < 0 || row >= static_cast<int>(m_all.size()) ? nullptr : &m_all[static_cast<std::size_t>(row)];
}

std::optional<Subject> TwicePanel::subject() {
    const auto* one = chosen();
    return one ? std::optional(Subject{one->record, text::spoken(one->showing().words)}) : std::nullopt;
}

void TwicePanel::showVersions() {
    const Theme theme = currentTheme();
    if (m_versions) {
        m_versions->hide();
        m_versions->deleteLater();
    }
    m_versions = new QWidget(this);
    m_place->addWidget(m_versions);
    auto* row = new QHBoxLayout(m_versions);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.px(14));
    const auto* one = chosen();
    if (!one) return;
    const std::size_t shown = std::min(one->edits.size(), shownAtMost);
    for (std::size_t i = 0; i < shown; ++i) {
        const Edit& edit = one->edits[i];
        const bool shows = i + 1 == one->edits.size();
        auto* sheet = card(m_versions, shows ? Ground::Wash : Ground::Card);
        auto* name = words(shows ? tr("Version %1, shows now").arg(i + 1) : tr("Version %1").arg(i + 1),
                           TextRole::Strong, sheet);
        const auto say = [&](const QString& text, TextRole role) {
            auto* label = words(text, role, sheet);
            label->setWordWrap(true);
            inside(sheet)->addWidget(label);
        };
        inside(sheet)->addWidget(name);
        QString by = text::day(edit.at) + QLatin1Char(' ') + text::clockToSecond(edit.at);
        if (!edit.who.empty()) by += tr(", by %1").arg(text::words(edit.who));
        by += tr(", from %1, %2").arg(text::words(edit.device), text::words(edit.source));
        say(by, TextRole::Small);
        say(text::spoken(edit.words), TextRole::Bold);
        say(text::words(edit.content), TextRole::Body);
        inside(sheet)->addStretch(1);
        auto* hold = button(tr("Keep this one  %1").arg(i + 1), ButtonKind::Usual, sheet);
        connect(hold, &QPushButton::clicked, this, [this, i] { keep(i); });
        inside(sheet)->addWidget(hold);
        row->addWidget(sheet, 1);
    }
    // At once: a layout shows what comes later with the next event only.
    m_versions->show();
}

void TwicePanel::keep(std::size_t version) {
    const auto* one = chosen();
    if (!one || m_working || version >= one->edits.size()) return;
    m_working = true;
    m_outcome->say(tr("Writing the decision…"), Mark::Learning);
    using Answer = Result<Receipt>;
    m_session.background().run<Answer>(
        this, tr("Settling a record edited twice"),
        [&session = m_session, one = *one, version, who = m_session.crew()](Progress&) -> Answer {
            return session.workbench().settle(one, version, Context{who, "window", std::nullopt});
        },
        [this, kept = text::spoken(one->edits[version].words)](Answer answer) {
            m_working = false;
            if (answer) {
                m_outcome->say(tr("Kept: %1. The other stays in the history.").arg(kept), Mark::Steady);
                m_session.noteWork();
            } else {
                m_outcome->say(answer.error());
            }
            refresh();
            m_list->setFocus();
        });
}

}  // namespace arc::ui
