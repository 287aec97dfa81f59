// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/sitting.hpp"

#include <QSettings>
#include <QStringList>

#include <algorithm>
#include <map>

#include "core/kit/life.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {

namespace {

constexpr std::size_t pageSize = 2'000;
/// Fibres offered in a closure without a plan and without a cable, beyond the highest one spliced.
constexpr int spareFibres = 12;

QSettings memory() {
    return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("Arcwright"),
                     QStringLiteral("sitting"));
}

QString draftGroup(const std::optional<ClosureId>& closure) {
    return QStringLiteral("draft_") +
           (closure ? QString::fromStdString(toText(closure->uuid)) : QStringLiteral("none"));
}

template <class AnyId>
void put(QSettings& settings, const QString& key, const std::optional<AnyId>& id) {
    settings.setValue(key, id ? QString::fromStdString(toText(id->uuid)) : QString());
}

template <class AnyId>
std::optional<AnyId> takeId(const QSettings& settings, const QString& key) {
    const auto uuid = parseUuid(settings.value(key).toString().toStdString());
    if (!uuid) return std::nullopt;
    return AnyId{*uuid};
}

template <class Quantity>
void put(QSettings& settings, const QString& key, const std::optional<Quantity>& quantity, int) {
    settings.setValue(key, quantity ? QVariant(quantity->value) : QVariant(QString()));
}

template <class Quantity>
std::optional<Quantity> takeQuantity(const QSettings& settings, const QString& key) {
    bool read = false;
    const int value = settings.value(key).toInt(&read);
    if (!read || settings.value(key).toString().isEmpty()) return std::nullopt;
    return Quantity{value};
}

template <class Records, class AnyId>
auto byId(const Records& records, const std::optional<AnyId>& id) {
    return std::ranges::find_if(records, [&](const auto& record) { return id && record.id == *id; });
}

std::vector<PlannedSplice> planOf(const Closure* closure, const Cable* cableA,
                                  const std::vector<SpliceArc>& arcs) {
    if (closure && !closure->plan.empty()) return closure->plan;
    int most = cableA ? cableA->fibreCount : 0;
    if (!cableA) {
        for (const auto& arc : arcs)
            for (const auto& reading : arc.readings)
                most = std::max(most, fibreNumber(reading.fibreA).value_or(0));
        most = (most / spareFibres + 1) * spareFibres;
    }
    std::vector<PlannedSplice> plan;
    for (int n = 1; n <= most; ++n) plan.push_back({n, n});
    return plan;
}

}  // namespace

Sitting rememberedSitting() {
    const QSettings s = memory();
    Sitting sitting;
    sitting.splicer = takeId<ToolId>(s, QStringLiteral("splicer"));
    sitting.cleaver = takeId<ToolId>(s, QStringLiteral("cleaver"));
    sitting.job = takeId<JobId>(s, QStringLiteral("job"));
    sitting.closure = takeId<ClosureId>(s, QStringLiteral("closure"));
    sitting.mode = s.value(QStringLiteral("mode")).toString().toStdString();
    sitting.fibresPerArc = std::clamp(s.value(QStringLiteral("fibres_per_arc"), 1).toInt(), 1, 16);
    sitting.operatorName = s.value(QStringLiteral("operator")).toString().toStdString();
    sitting.ambient.temperature = takeQuantity<Temperature>(s, QStringLiteral("temperature_mk"));
    sitting.ambient.humidity = takeQuantity<Humidity>(s, QStringLiteral("humidity_permille"));
    sitting.ambient.pressure = takeQuantity<Pressure>(s, QStringLiteral("pressure_pa"));
    if (const auto at = parseInstant(s.value(QStringLiteral("ambient_at")).toString().toStdString()))
        sitting.ambientAt = *at;
    return sitting;
}

void remember(const Sitting& sitting) {
    QSettings s = memory();
    put(s, QStringLiteral("splicer"), sitting.splicer);
    put(s, QStringLiteral("cleaver"), sitting.cleaver);
    put(s, QStringLiteral("job"), sitting.job);
    put(s, QStringLiteral("closure"), sitting.closure);
    s.setValue(QStringLiteral("mode"), text::words(sitting.mode));
    s.setValue(QStringLiteral("fibres_per_arc"), sitting.fibresPerArc);
    s.setValue(QStringLiteral("operator"), text::words(sitting.operatorName));
    put(s, QStringLiteral("temperature_mk"), sitting.ambient.temperature, 0);
    put(s, QStringLiteral("humidity_permille"), sitting.ambient.humidity, 0);
    put(s, QStringLiteral("pressure_pa"), sitting.ambient.pressure, 0);
    s.setValue(QStringLiteral("ambient_at"),
               sitting.ambientAt ? text::words(toIso(*sitting.ambientAt)) : QString());
    s.sync();
}

Draft rememberedDraft(const std::optional<ClosureId>& closure) {
    QSettings s = memory();
    s.beginGroup(draftGroup(closure));
    Draft draft;
    draft.closure = closure;
    draft.fibre = s.value(QStringLiteral("fibre")).toString().toStdString();
    draft.typed = s.value(QStringLiteral("typed")).toString().toStdString();
    for (const auto& word : s.value(QStringLiteral("noted_mdb")).toString().split(' ', Qt::SkipEmptyParts)) {
        bool read = false;
        const int value = word.toInt(&read);
        if (read) draft.noted.push_back(Loss{value});
    }
    return draft;
}

void remember(const Draft& draft) {
    QSettings s = memory();
    s.beginGroup(draftGroup(draft.closure));
    if (draft.empty()) {
        if (s.allKeys().isEmpty()) return;
        s.remove(QString());
    } else {
        s.setValue(QStringLiteral("fibre"), text::words(draft.fibre));
        s.setValue(QStringLiteral("typed"), text::words(draft.typed));
        QStringList noted;
        for (const Loss loss : draft.noted) noted << QString::number(loss.value);
        s.setValue(QStringLiteral("noted_mdb"), noted.join(QLatin1Char(' ')));
    }
    s.sync();
}

Result<Sitting> completed(Sitting sitting, Logbook& book) {
    const auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    const auto isUsable = [&](const std::optional<ToolId>& id, auto as) {
        const auto it = byId(*tools, id);
        return it != tools->end() && as(*it);
    };
    const bool known = isUsable(sitting.splicer, asSplicer);
    std::optional<SpliceArc> latest;
    for (const auto& tool : *tools) {
        if (!asSplicer(tool) || (known && tool.id != *sitting.splicer)) continue;
        const auto arc = book.lastArc(tool.id);
        if (!arc) return tl::unexpected(arc.error());
        if (*arc && (!latest || latest->at < (*arc)->at)) latest = **arc;
    }
    if (!known) {
        sitting = Sitting{};
        if (latest) {
            sitting.splicer = latest->splicer;
        } else {
            const auto first =
                std::ranges::find_if(*tools, [](const Tool& t) { return asSplicer(t) != nullptr; });
            if (first == tools->end()) return sitting;
            sitting.splicer = first->id;
        }
        if (latest) {
            sitting.mode = latest->mode;
            sitting.fibresPerArc = latest->channels;
            sitting.job = latest->job;
            sitting.closure = latest->closure;
            sitting.ambient = latest->ambient;
            sitting.ambientAt = latest->at;
        } else {
            sitting.fibresPerArc = asSplicer(*byId(*tools, sitting.splicer))->grooves;
        }
    }
    if (!isUsable(sitting.cleaver, asCleaver)) {
        const auto pairings = book.pairings();
        if (!pairings) return tl::unexpected(pairings.error());
        sitting.cleaver.reset();
        for (const auto& pairing : *pairings)
            if (pairing.splicer == *sitting.splicer) sitting.cleaver = pairing.cleaver;
        if (!sitting.cleaver && latest) sitting.cleaver = latest->cleaver;
    }
    const auto jobs = book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    if (byId(*jobs, sitting.job) == jobs->end()) {
        sitting.job.reset();
        sitting.closure.reset();
        if (!jobs->empty()) sitting.job = jobs->back().id;
    }
    if (sitting.job) {
        const auto closures = book.closures(*sitting.job);
        if (!closures) return tl::unexpected(closures.error());
        if (byId(*closures, sitting.closure) == closures->end()) {
            sitting.closure.reset();
            if (!closures->empty()) sitting.closure = closures->front().id;
        }
    }
    return sitting;
}

std::vector<SpliceArc> arcsOf(const std::vector<SpliceRow>& rows) {
    std::vector<SpliceArc> arcs;
    std::map<ArcId, std::size_t> places;
    for (const auto& row : rows) {
        const auto [it, fresh] = places.try_emplace(row.arc.id, arcs.size());
        if (fresh) arcs.push_back(row.arc);
        arcs[it->second].readings.push_back(row.reading);
    }
    std::ranges::stable_sort(arcs, {}, &SpliceArc::at);
    return arcs;
}

Result<std::vector<SpliceRow>> allRows(Logbook& book, const SpliceFilter& filter) {
    std::vector<SpliceRow> all;
    std::optional<PageKey> after;
    while (true) {
        auto page = book.splices(filter, PageOrder::OldestFirst, after, pageSize);
        if (!page) return tl::unexpected(page.error());
        if (page->empty()) break;
        after = PageKey{page->back().arc.at.ms, page->back().row};
        const bool last = page->size() < pageSize;
        std::ranges::move(*page, std::back_inserter(all));
        if (last) break;
    }
    return all;
}

Result<Desk> desk(const Sitting& sitting, Logbook& book) {
    Desk desk;
    const auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    const auto splicer = byId(*tools, sitting.splicer);
    if (splicer == tools->end() || !asSplicer(*splicer))
        return fail(ProblemCode::NotFound, "no splicer is chosen", "set-up", "Choose one");
    desk.splicer = *splicer;
    if (const auto cleaver = byId(*tools, sitting.cleaver); cleaver != tools->end()) desk.cleaver = *cleaver;
    const auto jobs = book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    if (const auto job = byId(*jobs, sitting.job); job != jobs->end()) desk.job = *job;
    if (desk.job) {
        const auto closures = book.closures(desk.job->id);
        if (!closures) return tl::unexpected(closures.error());
        if (const auto closure = byId(*closures, sitting.closure); closure != closures->end())
            desk.closure = *closure;
        const auto cables = book.cables(desk.job->id);
        if (!cables) return tl::unexpected(cables.error());
        if (desk.closure)
            if (const auto cable = byId(*cables, desk.closure->cableA); cable != cables->end())
                desk.cableA = *cable;
    }
    if (desk.closure) {
        SpliceFilter filter;
        filter.closure = desk.closure->id;
        const auto rows = allRows(book, filter);
        if (!rows) return tl::unexpected(rows.error());
        desk.arcs = arcsOf(*rows);
    }
    // More than 16 rows do not fit on the screen; longer units show in dozens.
    const int unitSize = desk.cableA && desk.cableA->unitSize <= 16 ? desk.cableA->unitSize : 12;
    const auto order =
        colourOrderNamed(desk.cableA ? desk.cableA->colourOrder : "TIA-598").value_or(colourOrders().front());
    if (desk.closure)
        for (const auto& planned : planOf(&*desk.closure, desk.cableA ? &*desk.cableA : nullptr, desk.arcs)) {
            const auto place =
                placeInCable(order, desk.cableA ? desk.cableA->unitSize : unitSize, planned.fibreA);
            desk.fibres.push_back({planned.fibreA, place.position, std::to_string(planned.fibreA),
                                   std::to_string(planned.fibreB), place.fibreLook});
        }
    desk.setUp.splicer = desk.splicer.id;
    desk.setUp.cleaver = sitting.cleaver;
    desk.setUp.job = sitting.job;
    desk.setUp.closure = sitting.closure;
    desk.setUp.mode = sitting.mode;
    desk.setUp.fibresPerArc = std::clamp(sitting.fibresPerArc, 1, asSplicer(desk.splicer)->grooves);
    desk.setUp.unitSize = std::max(unitSize, desk.setUp.fibresPerArc);
    desk.setUp.operatorName = sitting.operatorName;
    desk.setUp.ambient = sitting.ambient;
    desk.setUp.rule = desk.job ? desk.job->rule : sampleRules().front();
    return desk;
}

}  // namespace arc::ui
