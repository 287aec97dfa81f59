// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/care_desk.hpp"

#include <algorithm>
#include <iterator>

namespace arc::ui {

namespace {

/// Care goes by arcs and not by what they lost, which is most of a big history.
SplicerHistory withoutReadings(const SplicerHistory& history) {
    SplicerHistory light;
    light.splicer = history.splicer;
    light.label = history.label;
    light.arcs = history.arcs;
    light.modes = history.modes;
    light.jobs = history.jobs;
    light.jobLabels = history.jobLabels;
    light.cleavers = history.cleavers;
    light.closures = history.closures;
    light.events = history.events;
    return light;
}

Result<CareLook> lookAround(Session& session, const std::shared_ptr<const DriftView>& drift, Instant now) {
    auto reader = session.reader();
    if (!reader) return tl::unexpected(reader.error());
    Logbook& book = **reader;
    auto deck = session.workbench().cards(book);
    if (!deck) return tl::unexpected(deck.error());
    std::vector<SplicerHistory> histories;
    if (drift) std::ranges::transform(drift->histories, std::back_inserter(histories), withoutReadings);
    auto situation =
        drift ? care::gather(book, *deck, now, std::move(histories)) : care::gather(book, *deck, now);
    if (!situation) return tl::unexpected(situation.error());
    auto runs = book.openCareRuns();
    if (!runs) return tl::unexpected(runs.error());
    auto refused = session.workbench().refusedCards(book);
    if (!refused) return tl::unexpected(refused.error());
    CareLook look;
    look.putAside = std::move(*refused);
    look.putAside.insert(look.putAside.end(), situation->problems.begin(), situation->problems.end());
    look.situation = std::move(*situation);
    const std::vector<drift::SplicerReport> none;
    const auto& reports = drift ? drift->reports : none;
    look.items = care::dueItems(look.situation, reports);
    look.lives = kit::livesOf(look.situation);
    look.orders = care::toOrder(look.situation, reports);
    look.owed = care::calibrationOwed(look.situation);
    look.openRuns = std::move(*runs);
    return look;
}

}  // namespace

const Tool* CareLook::tool(ToolId id) const {
    const auto it = std::ranges::find(situation.tools, id, &Tool::id);
    return it == situation.tools.end() ? nullptr : &*it;
}

const kit::ToolLife* CareLook::lifeOf(ToolId id) const {
    const auto it =
        std::ranges::find_if(lives, [&](const kit::ToolLife& life) { return life.tool.id == id; });
    return it == lives.end() ? nullptr : &*it;
}

std::vector<care::DueItem> CareLook::openHolds(ToolId splicer) const {
    auto holds = care::holdsOf(items, situation, splicer);
    std::erase_if(holds, [](const care::DueItem& item) { return item.overridden.has_value(); });
    return holds;
}

CareDesk& CareDesk::of(Session& session) {
    if (auto* desk = session.findChild<CareDesk*>(QString(), Qt::FindDirectChildrenOnly)) return *desk;
    return *new CareDesk(session);
}

CareDesk::CareDesk(Session& session) : QObject(&session), m_session(session) {
    connect(&session, &Session::driftReady, this, &CareDesk::start);
    if (!session.driftPending()) start();
}

void CareDesk::start() {
    if (m_running) {
        m_again = true;
        return;
    }
    m_running = true;
    m_again = false;
    const Instant now = m_session.clock().now();
    m_session.background().run<Result<CareLook>>(
        this, tr("Looking at what is due"),
        [this, drift = m_session.drift(), now](Progress&) { return lookAround(m_session, drift, now); },
        [this](Result<CareLook> look) {
            m_running = false;
            if (look)
                m_look = std::make_shared<const CareLook>(std::move(*look));
            else
                m_session.tell(look.error());
            Q_EMIT changed();
            if (m_again) start();
        },
        Shown::No);
}

}  // namespace arc::ui
