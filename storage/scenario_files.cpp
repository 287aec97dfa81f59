// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/scenario_files.hpp"

#include <cmath>
#include <fmt/format.h>
#include <iterator>
#include <map>
#include <nlohmann/json.hpp>

namespace arc::storage {
namespace {

using namespace arc::scenario;

/// Quoted when RFC 4180 asks for it.
std::string cell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) {
        quoted += c;
        if (c == '"') quoted += c;
    }
    return quoted + "\"";
}

/// Decibels with two decimals, a third only when there is one.
std::string shownDb(Loss loss) {
    return fmt::format("{:.{}f}", decibels(loss), loss.value % 10 == 0 ? 2 : 3);
}

std::string exactDb(const std::optional<Loss>& loss) {
    return loss ? fmt::format("{:.3f}", decibels(*loss)) : std::string();
}

const char* word(Effect effect) {
    switch (effect) {
        case Effect::Helps:
            return "helps";
        case Effect::Nothing:
            return "nothing";
        case Effect::Worse:
            return "worse";
    }
    return "";
}

}  // namespace

std::string splicesCsv(const SimulatedLog& log) {
    std::string text =
        "time,splicer,cleaver,job,closure,mode,channels,channel,fibre_a,fibre_b,loss_db,cleave_left_deg,"
        "cleave_right_deg,arc_count,temperature_c,humidity_pct,pressure_hpa,operator,attempt\r\n";
    auto out = std::back_inserter(text);
    for (const auto& arc : log.arcs)
        for (const auto& r : arc.readings) {
            fmt::format_to(out, "{},{},{},{},{},{},{},{},{},{},{},", toIso(arc.at), cell(arc.splicer),
                           cell(arc.cleaver), cell(arc.job), cell(arc.closure), cell(arc.mode), arc.channels,
                           r.channel, r.fibreA, r.fibreB, shownDb(r.shown));
            fmt::format_to(out, "{:.1f},{:.1f},{},{:.1f},{},{},{},{}\r\n", degrees(r.cleaveLeft),
                           degrees(r.cleaveRight), arc.counter, celsius(arc.temperature),
                           arc.humidity.value / 10, arc.pressure.value / 100, cell(arc.operatorName),
                           arc.attempt);
        }
    return text;
}

std::string eventsCsv(const SimulatedLog& log) {
    std::string text = "time,equipment,action,detail\r\n";
    for (const auto& care : log.care)
        text += toIso(care.at) + "," + cell(care.setting.tool) + "," + cell(care.setting.action) + "," +
                cell(care.setting.detail) + "\r\n";
    return text;
}

std::string measuredCsv(const SimulatedLog& log) {
    std::string text = "fibre,closure,wavelength_nm,loss_a_to_b_db,loss_b_to_a_db,time,instrument,note\r\n";
    for (const auto& m : log.measured)
        fmt::format_to(std::back_inserter(text), "{},{},{},{},{},{},{},{}\r\n", m.fibre, cell(m.closure),
                       m.wavelengthNm, exactDb(m.aToB), exactDb(m.bToA), toIso(m.at), cell(m.instrument),
                       cell(m.note));
    return text;
}

std::string truthJson(const Scenario& scenario, const SimulatedLog& log, std::uint64_t seed) {
    using nlohmann::ordered_json;
    std::map<std::string, std::uint64_t> arcs;
    for (const auto& arc : log.arcs) ++arcs[arc.splicer];
    ordered_json faults = ordered_json::array();
    for (const auto& fault : log.truth) {
        ordered_json touched = ordered_json::array();
        for (const auto& t : fault.touched)
            touched.push_back({{"splicer", t.splicer},
                               {"begin_arc", t.beginArc},
                               {"end_arc", t.endArc ? ordered_json(*t.endArc) : ordered_json()},
                               {"begin", toIso(t.begin)},
                               {"end", t.end ? ordered_json(toIso(*t.end)) : ordered_json()}});
        const double rounded = fault.sizeDb ? std::round(*fault.sizeDb * 10'000.0) / 10'000.0 : 0;
        faults.push_back({{"cause", drift::word(fault.cause)},
                          {"tool", fault.tool},
                          {"channels", fault.channels},
                          {"size_db", fault.sizeDb ? ordered_json(rounded) : ordered_json()},
                          {"ended_by", fault.endedBy},
                          {"touched", touched}});
    }
    ordered_json care = ordered_json::array();
    for (const auto& c : log.care)
        care.push_back({{"time", toIso(c.at)},
                        {"tool", c.setting.tool},
                        {"action", c.setting.action},
                        {"effect", word(c.setting.effect)}});
    const ordered_json truth{{"scenario", scenario.name}, {"seed", seed}, {"invented", true}, {"arcs", arcs},
                             {"faults", faults},          {"care", care}};
    return truth.dump(1) + "\n";
}

}  // namespace arc::storage
