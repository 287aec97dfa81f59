// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/keeper.hpp"

#include "ui/shell/session.hpp"

namespace arc::ui {

namespace {

/// After the last entry, so that a copy is not made between two fibres.
constexpr int copyDelayMs = 60'000;

}  // namespace

Keeper::Keeper(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    m_soon.setSingleShot(true);
    m_soon.setInterval(copyDelayMs);
    connect(&m_soon, &QTimer::timeout, this, &Keeper::copyIfDue);
    connect(&m_session, &Session::saved, &m_soon, qOverload<>(&QTimer::start));
    // After the first screen is there.
    QTimer::singleShot(0, this, [this] {
        look();
        if (m_state.access != BookAccess::Damaged) check();
    });
}

void Keeper::look() {
    if (const auto state = m_session.workbench().bookState()) take(*state);
}

void Keeper::take(const BookState& state) {
    m_state = state;
    Q_EMIT stateChanged();
}

void Keeper::check() {
    using Answer = Result<BookState>;
    m_session.background().run<Answer>(
        this, tr("Checking the logbook"),
        [&session = m_session](Progress& progress) -> Answer {
            return session.workbench().checkBook(progress);
        },
        [this](Answer answer) {
            if (answer) take(*answer);
        },
        Shown::No);
}

void Keeper::copyIfDue() {
    if (m_copying || m_state.access != BookAccess::Writing) return;
    m_copying = true;
    using Answer = Result<std::optional<BackupCopy>>;
    m_session.background().run<Answer>(
        this, tr("Copying the logbook"),
        [&session = m_session](Progress& progress) -> Answer {
            return session.workbench().makeBackupIfDue(progress);
        },
        [this](Answer answer) {
            m_copying = false;
            if (!answer && answer.error().code != ProblemCode::Cancelled &&
                answer.error().code != ProblemCode::Unavailable)
                m_session.tell(answer.error());
        });
}

}  // namespace arc::ui
