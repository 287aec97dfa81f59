// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/entries.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

namespace arc::scenario {
namespace {

class Writer {
  public:
    Writer(const Scenario& scenario, std::int64_t shiftMs) : scenario_(scenario), shiftMs_(shiftMs) {}

    void tools() {
        for (const auto& m : scenario_.splicers)
            entries.emplace_back(Tool{tool(m.label), m.label, m.nickname, m.traits, Service::InUse});
        for (const auto& c : scenario_.cleavers)
            entries.emplace_back(Tool{tool(c.label), c.label, c.nickname, c.traits, Service::InUse});
        for (const auto& r : scenario_.strippers)
            entries.emplace_back(Tool{tool(r.label), r.label, r.nickname, Stripper{}, Service::InUse});
    }

    void jobs() {
        for (const auto& j : scenario_.jobs) {
            entries.emplace_back(Job{job(j.label), j.label, j.title, j.rule});
            for (const auto& c : j.cables)
                entries.emplace_back(Cable{cable(j.label, c.label), job(j.label), c.label, c.fibreCount,
                                           c.unit, c.unitSize, c.colourOrder, c.fibreType, c.lengthKm,
                                           c.ribbon});
            for (const auto& c : j.closures)
                entries.emplace_back(Closure{closure(c.label), job(j.label), c.label,
                                             cable(j.label, c.cableA), cable(j.label, c.cableB), c.trays,
                                             c.perTray, c.plan});
        }
    }

    void pairings(const SimulatedLog& log) {
        std::map<std::string, std::string> with;
        for (const auto& arc : log.arcs) {
            auto& cleaver = with[arc.splicer];
            if (cleaver == arc.cleaver) continue;
            cleaver = arc.cleaver;
            Instant at = arc.at;
            at.ms -= 10 * msPerMinute;
            entries.emplace_back(Pairing{EntryId{named("pairing/" + arc.splicer + "/" + arc.cleaver + "/" +
                                                       std::to_string(arc.number))},
                                         tool(arc.splicer), tool(arc.cleaver), moved(at)});
        }
    }

    void arcs(const SimulatedLog& log) {
        for (const auto& made : log.arcs) {
            SpliceArc arc;
            arc.at = moved(made.at);
            arc.splicer = tool(made.splicer);
            arc.cleaver = tool(made.cleaver);
            arc.job = job(made.job);
            arc.closure = closure(made.closure);
            arc.mode = made.mode;
            arc.channels = made.channels;
            arc.counter = ArcCount{made.counter};
            arc.id = importedArcId(arc.splicer, arc.at, arc.counter);
            arc.ambient = {made.temperature, made.humidity, made.pressure};
            arc.operatorName = made.operatorName;
            arc.origin = Origin::Simulated;
            for (const auto& r : made.readings) {
                Reading reading;
                reading.channel = r.channel;
                reading.loss = r.shown;
                reading.cleaveLeft = r.cleaveLeft;
                reading.cleaveRight = r.cleaveRight;
                reading.fibreA = std::to_string(r.fibreA);
                reading.fibreB = std::to_string(r.fibreB);
                reading.attempt = made.attempt;
                arc.readings.push_back(std::move(reading));
            }
            entries.emplace_back(std::move(arc));
        }
    }

    void care(const SimulatedLog& log) {
        std::size_t number = 0;
        for (const auto& done : log.care) {
            const auto& c = done.setting;
            CareRecord record;
            record.id = CareId{named("care/" + std::to_string(++number) + "/" + c.tool + "/" + c.action)};
            record.tool = tool(c.tool);
            record.at = moved(done.at);
            record.action = c.action;
            record.detail = c.detail;
            record.by = c.by;
            record.calibration = c.calibration;
            record.blade = c.blade;
            if (done.counter > 0) record.counter = ArcCount{done.counter};
            entries.emplace_back(std::move(record));
        }
    }

    void measured(const SimulatedLog& log) {
        for (const auto& m : log.measured) {
            MeasuredLoss loss;
            loss.id = EntryId{named("measured/" + m.closure + "/" + std::to_string(m.fibre) + "/" +
                                    std::to_string(m.wavelengthNm))};
            loss.job = job(m.job);
            loss.closure = closure(m.closure);
            loss.fibre = std::to_string(m.fibre);
            loss.wavelengthNm = m.wavelengthNm;
            loss.aToB = m.aToB;
            loss.bToA = m.bToA;
            loss.at = moved(m.at);
            loss.instrument = m.instrument;
            loss.note = m.note;
            entries.emplace_back(std::move(loss));
        }
    }

    std::vector<Entry> entries;

  private:
    [[nodiscard]] Uuid named(const std::string& what) const {
        return namedUuid("scenario/" + scenario_.name + "/" + what);
    }
    [[nodiscard]] ToolId tool(const std::string& label) const { return {named("tool/" + label)}; }
    [[nodiscard]] JobId job(const std::string& label) const { return {named("job/" + label)}; }
    [[nodiscard]] ClosureId closure(const std::string& label) const { return {named("closure/" + label)}; }
    [[nodiscard]] CableId cable(const std::string& jobLabel, const std::string& label) const {
        return {named("cable/" + jobLabel + "/" + label)};
    }
    [[nodiscard]] Instant moved(Instant at) const { return {at.ms + shiftMs_, at.offsetMinutes}; }

    const Scenario& scenario_;
    std::int64_t shiftMs_;
};

}  // namespace

std::vector<Entry> entriesOf(const Scenario& scenario, const SimulatedLog& log, std::int64_t shiftMs) {
    Writer writer(scenario, shiftMs);
    writer.tools();
    writer.jobs();
    writer.pairings(log);
    writer.arcs(log);
    writer.care(log);
    writer.measured(log);
    return std::move(writer.entries);
}

std::int64_t shiftToPresent(const SimulatedLog& log, Instant now) {
    std::int64_t last = 0;
    for (const auto& arc : log.arcs) last = std::max(last, arc.at.ms);
    for (const auto& care : log.care) last = std::max(last, care.at.ms);
    const std::int64_t gap = now.ms - last;
    const std::int64_t days = gap >= 0 ? gap / msPerDay : -((-gap + msPerDay - 1) / msPerDay);
    return days * msPerDay;
}

}  // namespace arc::scenario
