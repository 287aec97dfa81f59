// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/finder.hpp"

#include <QAction>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/shell/session.hpp"
#include "ui/shell/typed_words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {
namespace {

constexpr std::size_t shownAtMost = 60;

QString kindOf(const Tool& tool) {
    if (asSplicer(tool)) return Finder::tr("splicer");
    if (asCleaver(tool)) return Finder::tr("cleaver");
    return Finder::tr("stripper");
}

QString iconOf(const Tool& tool) {
    return asSplicer(tool)   ? QStringLiteral("splicer")
           : asCleaver(tool) ? QStringLiteral("cleaver")
                             : QStringLiteral("stripper");
}

}  // namespace

std::optional<int> fit(const QString& asked, const QString& text) {
    int score = 0;
    qsizetype at = 0;
    for (const QChar wanted : asked) {
        if (wanted.isSpace()) continue;
        const auto next = text.indexOf(wanted, at, Qt::CaseInsensitive);
        if (next < 0) return std::nullopt;
        const bool start = next == 0 || !text[next - 1].isLetterOrNumber();
        score += start ? 8 : (next == at ? 4 : 1);
        score -= static_cast<int>(std::min<qsizetype>(next - at, 3));
        at = next + 1;
    }
    return score * 10 - static_cast<int>(std::min<qsizetype>(text.size(), 60)) / 6;
}

Finder::Finder(Session& session, QWidget* parent) : QDialog(parent, Qt::Popup), m_session(session) {
    const Theme theme = currentTheme();
    setAccessibleName(tr("Find"));
    setObjectName(QStringLiteral("finder"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.px(12), theme.px(12), theme.px(12), theme.px(12));
    m_asked = new QLineEdit(this);
    m_asked->setProperty("kind", QStringLiteral("finder"));
    m_asked->setPlaceholderText(tr("What do you want? Type a few letters"));
    m_asked->setAccessibleName(tr("Find an action, a tool, a job"));
    m_asked->installEventFilter(this);
    markPassing(*m_asked);
    layout->addWidget(m_asked);
    m_list = new QListWidget(this);
    m_list->setAccessibleName(tr("Found"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setIconSize({theme.px(22), theme.px(22)});
    m_list->setFocusPolicy(Qt::NoFocus);
    layout->addWidget(m_list);
    connect(m_asked, &QLineEdit::textChanged, this, &Finder::filter);
    connect(m_asked, &QLineEdit::returnPressed, this, &Finder::choose);
    connect(m_list, &QListWidget::itemClicked, this, &Finder::choose);
    gather();
    filter({});
}

void Finder::gather() {
    for (const auto& known : m_session.actions().all()) {
        if (!known.action || known.row.id == QLatin1String("find")) continue;
        const QString where = known.row.screen ? titleOf(*known.row.screen) : tr("everywhere");
        m_all.push_back({known.action->text(), where, known.row.key.toString(QKeySequence::NativeText),
                         known.row.icon,
                         [&session = m_session, screen = known.row.screen, action = known.action] {
                             if (screen) session.go(*screen);
                             if (action) action->trigger();
                         }});
    }
    // A book that cannot be read says so on its page; the finder then offers the actions alone.
    if (const auto tools = m_session.book().tools()) {
        for (const auto& tool : *tools) {
            const QString name = tool.nickname.empty()
                                     ? QString::fromStdString(tool.label)
                                     : QStringLiteral("%1 “%2”").arg(QString::fromStdString(tool.label),
                                                                     QString::fromStdString(tool.nickname));
            Target target;
            target.tool = tool.id;
            m_all.push_back({name, kindOf(tool), {}, iconOf(tool), [&session = m_session, target] {
                                 session.go(Screen::Kit, target);
                             }});
            if (asSplicer(tool))
                m_all.push_back({tr("Drift of %1").arg(name),
                                 kindOf(tool),
                                 {},
                                 QStringLiteral("drift"),
                                 [&session = m_session, target] { session.go(Screen::Drift, target); }});
        }
    }
    gatherCare();
    if (const auto jobs = m_session.book().jobs()) {
        for (const auto& job : *jobs) {
            Target target;
            target.job = job.id;
            const QString name =
                QString::fromStdString(job.title.empty() ? job.label : job.label + " · " + job.title);
            m_all.push_back({tr("Closeout of %1").arg(name),
                             tr("job"),
                             {},
                             QStringLiteral("closeout"),
                             [&session = m_session, target] { session.go(Screen::Closeout, target); }});
            m_all.push_back({tr("Splice on %1").arg(name),
                             tr("job"),
                             {},
                             QStringLiteral("today"),
                             [&session = m_session, target] { session.go(Screen::Today, target); }});
        }
    }
}

void Finder::gatherCare() {
    const auto tools = m_session.book().tools();
    const auto deck = m_session.workbench().cards(m_session.book());
    if (!tools || !deck) return;
    for (const auto& card : deck->cards)
        for (const auto& tool : *tools) {
            if (care::kindOf(tool) != card.tool || tool.service != Service::InUse) continue;
            Target target;
            target.tool = tool.id;
            target.action = card.id;
            m_all.push_back({QStringLiteral("%1, %2").arg(text::fromCard(card.title),
                                                          QString::fromStdString(tool.label)),
                             tr("care card"),
                             {},
                             QStringLiteral("care"),
                             [&session = m_session, target] { session.go(Screen::Care, target); }});
        }
}

void Finder::filter(const QString& asked) {
    std::vector<std::pair<int, std::size_t>> found;
    for (std::size_t i = 0; i < m_all.size(); ++i)
        if (const auto score = fit(asked, m_all[i].text)) found.emplace_back(-*score, i);
    if (!asked.trimmed().isEmpty()) std::ranges::stable_sort(found);
    m_list->clear();
    const QColor ink = currentTheme().colour(Role::Accent);
    for (std::size_t i = 0; i < std::min(found.size(), shownAtMost); ++i) {
        const auto& one = m_all[found[i].second];
        QString text = one.text + QStringLiteral("   ·   ") + one.kind;
        if (!one.key.isEmpty()) text += QStringLiteral("   ·   ") + one.key;
        auto* item = new QListWidgetItem(icon(one.icon.isEmpty() ? QStringLiteral("forward") : one.icon, ink),
                                         text, m_list);
        item->setData(Qt::UserRole, static_cast<qulonglong>(found[i].second));
    }
    if (asked.trimmed().size() > 1 && m_session.actions().find(QStringLiteral("today.search"))) {
        auto* item = new QListWidgetItem(icon(QStringLiteral("find"), ink),
                                         tr("Search all splices for “%1”").arg(asked.trimmed()), m_list);
        item->setData(Qt::UserRole, static_cast<qulonglong>(m_all.size()));
    }
    m_list->setCurrentRow(0);
}

void Finder::searchSplices() {
    m_session.go(Screen::Today);
    // The page opens its list of splices; the letters go on into its entry.
    if (auto* search = m_session.actions().find(QStringLiteral("today.search"))) search->trigger();
    if (auto* entry = qobject_cast<QLineEdit*>(parentWidget()->window()->focusWidget()))
        entry->setText(m_asked->text().trimmed());
}

void Finder::choose() {
    const auto* item = m_list->currentItem();
    if (!item) return;
    const auto index = static_cast<std::size_t>(item->data(Qt::UserRole).toULongLong());
    if (index >= m_all.size()) {
        close();
        searchSplices();
        return;
    }
    const auto run = m_all[index].run;
    close();
    // After the popup is gone, so that the page gets the keyboard.
    QTimer::singleShot(0, &m_session, run);
}

void Finder::popup() {
    const Theme theme = currentTheme();
    const QWidget* over = parentWidget() ? parentWidget()->window() : nullptr;
    const int w = over ? std::min(theme.px(680), over->width() - theme.px(40)) : theme.px(680);
    resize(w, over ? std::min(theme.px(460), over->height() - theme.px(80)) : theme.px(460));
    if (over) move(over->mapToGlobal(QPoint((over->width() - w) / 2, theme.px(60))));
    show();
    m_asked->setFocus();
}

bool Finder::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_asked && event->type() == QEvent::KeyPress) {
        const auto key = static_cast<QKeyEvent*>(event)->key();
        const int step = key == Qt::Key_Down       ? 1
                         : key == Qt::Key_Up       ? -1
                         : key == Qt::Key_PageDown ? 8
                         : key == Qt::Key_PageUp   ? -8
                                                   : 0;
        if (step != 0) {
            m_list->setCurrentRow(
                std::clamp(m_list->currentRow() + step, 0, std::max(0, m_list->count() - 1)));
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

}  // namespace arc::ui
