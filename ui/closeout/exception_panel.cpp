// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/exception_panel.hpp"

#include <QFrame>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "core/closeout/find_exceptions.hpp"
#include "ui/closeout/exception_list.hpp"
#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

QStringList usualReasons() {
    return {ExceptionPanel::tr("agreed with the client"),
            ExceptionPanel::tr("measured from both ends, within the limit"),
            ExceptionPanel::tr("spare fibre, not in use"),
            ExceptionPanel::tr("calibrated afterwards, losses unchanged")};
}

}  // namespace

ExceptionPanel::ExceptionPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    box->addWidget(sheet);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(10), theme.px(8), theme.px(8));
    auto* head = new QHBoxLayout;
    head->setContentsMargins(theme.px(12), 0, theme.px(8), 0);
    m_head = words(QString(), TextRole::Strong, sheet);
    m_accept = button(tr("Accept  A"), ButtonKind::Usual, sheet);
    m_reject = button(tr("Reject  X"), ButtonKind::Usual, sheet);
    head->addWidget(m_head, 1);
    head->addWidget(m_accept);
    head->addWidget(m_reject);
    inside(sheet)->addLayout(head);
    m_list = new ExceptionList(this);
    m_view = new QListView(sheet);
    m_view->setModel(m_list);
    m_view->setItemDelegate(new ExceptionDelegate(*m_list, m_view));
    m_view->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_view->setUniformItemSizes(true);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setAccessibleName(tr("Exceptions"));
    inside(sheet)->addWidget(m_view, 1);
    m_prompt = new PromptBar(sheet);
    inside(sheet)->addWidget(m_prompt);
    const auto accept = [this] { decide(closeout::dispositionAccepted.data()); };
    const auto reject = [this] { decide(closeout::dispositionRejected.data()); };
    connect(m_accept, &QPushButton::clicked, this, accept);
    connect(m_reject, &QPushButton::clicked, this, reject);
    connect(m_prompt, &PromptBar::closed, this, [this] { m_view->setFocus(); });
    auto& actions = m_session.actions();
    actions.add({QStringLiteral("closeout.accept"),
                 tr("Accept the chosen exceptions, with a reason"),
                 Qt::Key_A,
                 {},
                 Screen::Closeout},
                m_view, accept);
    actions.add({QStringLiteral("closeout.reject"),
                 tr("Reject the chosen exceptions, with a reason"),
                 Qt::Key_X,
                 {},
                 Screen::Closeout},
                m_view, reject);
}

void ExceptionPanel::show(std::shared_ptr<const closeout::Record> record, std::optional<ClosureId> closure) {
    m_record = std::move(record);
    std::vector<closeout::Exception> exceptions;
    if (m_record) exceptions = m_record->exceptions;
    if (m_record && closure) {
        // Those of one closure; what concerns the whole job or a tool stays with the job.
        std::string label;
        for (const auto& section : m_record->closures)
            if (section.closure == closure) label = section.label;
        std::erase_if(exceptions, [&](const closeout::Exception& e) { return e.where != label; });
    }
    const auto open =
        std::ranges::count_if(exceptions, [](const auto& e) { return !closeout::isDecided(e); });
    if (m_record)
        say(exceptions.size(), static_cast<std::size_t>(open));
    else
        m_head->clear();
    const int row = m_view->currentIndex().row();
    m_list->show(std::move(exceptions));
    const bool some = m_list->rowCount() > 0;
    if (some) m_view->setCurrentIndex(m_list->index(std::clamp(row, 0, m_list->rowCount() - 1)));
    m_accept->setEnabled(some);
    m_reject->setEnabled(some);
}

void ExceptionPanel::say(std::size_t all, std::size_t open) {
    const QString many = text::number(static_cast<std::int64_t>(all));
    m_head->setText(all == 0    ? tr("No exceptions")
                    : open == 0 ? tr("%1 exceptions, all decided").arg(many)
                                : tr("%1 exceptions, %2 wait for a disposition")
                                      .arg(many, text::number(static_cast<std::int64_t>(open))));
}

void ExceptionPanel::decide(const char* disposition) {
    if (!m_record || m_list->rowCount() == 0) return;
    std::vector<closeout::Exception> picked;
    for (const auto& index : m_view->selectionModel()->selectedIndexes())
        picked.push_back(m_list->at(index.row()));
    if (picked.empty()) return;
    const bool reject = disposition == closeout::dispositionRejected;
    const QString what =
        picked.size() == 1 ? text::spoken(picked.front().what) : tr("%1 exceptions").arg(picked.size());
    m_prompt->ask(reject ? tr("Reject: %1").arg(what) : tr("Accept: %1").arg(what),
                  {{tr("Name"), text::words(m_session.crew()), {}}, {tr("Reason"), {}, usualReasons()}},
                  reject ? tr("Reject") : tr("Accept"),
                  [this, picked, job = m_record->job.id,
                   word = std::string(disposition)](const QStringList& answers) -> QString {
                      std::vector<Entry> entries;
                      const Instant now = m_session.clock().now();
                      for (const auto& exception : picked)
                          entries.emplace_back(
                              ExceptionDisposition{m_session.newId<EntryId>(), job, exception.key, word,
                                                   text::utf8(answers[1]), text::utf8(answers[0]), now});
                      if (!m_session.save(entries)) return tr("Not saved. Press Enter to try again.");
                      return {};
                  });
}

std::optional<Subject> ExceptionPanel::subject() const {
    const auto index = m_view->currentIndex();
    if (!m_record || !m_view->hasFocus() || !index.isValid()) return std::nullopt;
    const auto& exception = m_list->at(index.row());
    const QString name = text::spoken(closeout::title(exception.kind)) + QStringLiteral(": ") +
                         text::spoken(exception.what);
    if (exception.disposition) return Subject{exception.disposition->id.uuid, name};
    if (const auto* splice = closeout::spliceOf(*m_record, exception))
        return Subject{splice->final().arc.uuid, name};
    return std::nullopt;
}

}  // namespace arc::ui
