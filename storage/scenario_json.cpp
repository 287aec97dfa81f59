// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/scenario_json.hpp"

#include <cmath>
#include <nlohmann/json.hpp>
#include <set>
#include <stdexcept>
#include <utility>

#include "storage/strict_json.hpp"
#include "storage/whole_number.hpp"

namespace arc::storage {
namespace {

using nlohmann::json;
using namespace arc::scenario;

/// Thrown inside this file only; becomes a Problem at its edge.
struct Wrong : std::runtime_error {
    Wrong(const std::string& what, std::string path) : std::runtime_error(what), where(std::move(path)) {}
    std::string where;
};

/// The members of one object: each may be asked for once, and none may be left over.
class Fields {
  public:
    Fields(const json& object, std::string path) : object_(object), path_(std::move(path)) {
        if (!object.is_object()) throw Wrong("an object {…} is needed", path_);
    }

    [[nodiscard]] std::string path(const std::string& name) const {
        return path_.empty() ? name : path_ + "." + name;
    }
    [[nodiscard]] bool has(const std::string& name) const { return object_.contains(name); }

    const json* find(const std::string& name) {
        known_.insert(name);
        const auto it = object_.find(name);
        return it == object_.end() ? nullptr : &*it;
    }
    const json& need(const std::string& name) {
        const auto* value = find(name);
        if (!value) throw Wrong("it is missing", path(name));
        return *value;
    }
    std::string text(const std::string& name) { return asText(need(name), path(name)); }
    std::string text(const std::string& name, std::string otherwise) {
        const auto* value = find(name);
        return value ? asText(*value, path(name)) : std::move(otherwise);
    }
    double number(const std::string& name, double otherwise) {
        return within(name, otherwise, -100'000, 100'000, "a number from -100000 to 100000");
    }
    double hour(const std::string& name, double otherwise) {
        return within(name, otherwise, 0, 24, "an hour from 0 to 24");
    }
    Loss loss(const std::string& name, Loss otherwise) {
        const double db = within(name, decibels(otherwise), 0, 10, "a loss from 0 to 10 dB");
        return Loss{static_cast<std::int32_t>(std::lround(db * 1000.0))};
    }
    int whole(const std::string& name) { return asWhole(need(name), path(name)); }
    int whole(const std::string& name, int otherwise) {
        const auto* value = find(name);
        return value ? asWhole(*value, path(name)) : otherwise;
    }
    std::uint32_t count(const std::string& name, std::uint32_t otherwise) {
        return static_cast<std::uint32_t>(whole(name, static_cast<int>(otherwise)));
    }
    /// One of the words; the answer is its value.
    template <class Value>
    Value oneOf(const std::string& name, std::initializer_list<std::pair<const char*, Value>> words,
                std::optional<Value> otherwise = std::nullopt) {
        if (!has(name) && otherwise) {
            known_.insert(name);
            return *otherwise;
        }
        const auto given = text(name);
        std::string list;
        for (const auto& [word, value] : words) {
            if (given == word) return value;
            list += (list.empty() ? "" : ", ") + std::string(word);
        }
        throw Wrong("\"" + given + "\" is not one of " + list, path(name));
    }
    /// Calls `read(Fields&)` for every object of a list and collects the answers.
    template <class Read>
    auto list(const std::string& name, Read read) {
        std::vector<decltype(read(std::declval<Fields&>()))> answers;
        const auto* value = find(name);
        if (!value) return answers;
        if (!value->is_array()) throw Wrong("a list […] is needed", path(name));
        for (std::size_t i = 0; i < value->size(); ++i) {
            Fields item((*value)[i], path(name) + "[" + std::to_string(i) + "]");
            answers.push_back(read(item));
            item.finish();
        }
        return answers;
    }
    template <class Read>
    auto object(const std::string& name, Read read) {
        Fields item(need(name), path(name));
        auto answer = read(item);
        item.finish();
        return answer;
    }
    void finish() const {
        for (const auto& [name, value] : object_.items())
            if (!known_.contains(name)) throw Wrong("this key is not known", path(name));
    }

  private:
    double within(const std::string& name, double otherwise, double low, double high, const char* range) {
        const auto* value = find(name);
        const double number = value ? asNumber(*value, path(name)) : otherwise;
        if (number < low || number > high) throw Wrong(std::string(range) + " is needed", path(name));
        return number;
    }
    static std::string asText(const json& value, const std::string& path) {
        if (!value.is_string()) throw Wrong("a text is needed", path);
        return value.get<std::string>();
    }
    static double asNumber(const json& value, const std::string& path) {
        if (!value.is_number()) throw Wrong("a number is needed", path);
        return value.get<double>();
    }
    static int asWhole(const json& value, const std::string& path) {
        const double number = asNumber(value, path);
        if (std::abs(number) > 1e9 || std::floor(number) != number)
            throw Wrong("a whole number is needed", path);
        if (number < 0) throw Wrong("the number is negative", path);
        return static_cast<int>(number);
    }

    const json& object_;
    std::string path_;
    std::set<std::string> known_;
};

Instant isoTime(const std::string& text, const std::string& path) {
    const auto at = parseInstant(text);
    if (!at) throw Wrong(at.error().what, path);
    return *at;
}

SplicePlan plan(const std::string& text, const std::string& path) {
    const auto rows = planFromText(text);
    if (!rows) throw Wrong(rows.error().what + ", " + rows.error().where, path);
    return *rows;
}

/// "1-12,20" → the numbers.
std::vector<int> fibres(const std::string& text, const std::string& path) {
    std::vector<int> numbers;
    for (const auto& row : plan(text, path)) numbers.push_back(row.fibreA);
    return numbers;
}

std::vector<int> numbers(Fields& f, const std::string& name) {
    std::vector<int> answer;
    const auto* value = f.find(name);
    if (!value) return answer;
    if (!value->is_array()) throw Wrong("a list of whole numbers is needed", f.path(name));
    for (const auto& item : *value) {
        const auto number = wholeNumber<int>(item);
        if (!number) throw Wrong("a list of whole numbers is needed", f.path(name));
        answer.push_back(*number);
    }
    return answer;
}

BladePlace blade(Fields& f) {
    return {f.whole("height", 1), f.whole("position", 1)};
}

Machine machine(Fields& f) {
    Machine m;
    m.label = f.text("label");
    m.nickname = f.text("nickname", "");
    m.traits.kind = f.oneOf<SplicerKind>(
        "kind", {{"mass", SplicerKind::MassFusion}, {"single", SplicerKind::SingleFibre}});
    const bool mass = m.traits.kind == SplicerKind::MassFusion;
    m.traits.grooves = f.whole("grooves", mass ? 12 : 1);
    m.traits.arcControl = f.oneOf<ArcControl>(
        "arc_control", {{"manual", ArcControl::Manual}, {"self_calibrating", ArcControl::SelfCalibrating}},
        ArcControl::Manual);
    m.mode = f.text("mode", m.mode);
    m.offsetUm = f.number("offset_um", mass ? 0.33 : 0.17);
    m.baseDb = f.number("base_db", m.baseDb);
    m.noiseDb = f.number("noise_db", m.noiseDb);
    m.setupSd = f.number("setup_sd", m.setupSd);
    m.setupArcs = f.whole("setup_arcs", m.setupArcs);
    m.outlier = f.number("outlier", m.outlier);
    m.minutesPerArc = f.number("minutes_per_arc", m.minutesPerArc);
    m.resolutionDb = f.number("resolution_db", m.resolutionDb);
    m.counterStart = f.count("counter_start", m.counterStart);
    m.electrodeArcs = f.count("electrode_arcs", m.electrodeArcs);
    m.wearStart = f.count("wear_start", m.wearStart);
    m.wearScale = f.number("wear_scale", m.wearScale);
    m.wearPower = f.number("wear_power", m.wearPower);
    m.wearGain = f.number("wear_gain", m.wearGain);
    m.lastElectrodes = f.text("last_electrodes", "");
    if (!m.lastElectrodes.empty()) isoTime(m.lastElectrodes, f.path("last_electrodes"));
    return m;
}

CleaverSetting cleaver(Fields& f) {
    CleaverSetting c;
    c.label = f.text("label");
    c.nickname = f.text("nickname", "");
    c.traits.positions = f.whole("positions", c.traits.positions);
    c.traits.heights = f.whole("heights", c.traits.heights);
    c.angleSd = f.number("angle_sd_deg", c.angleSd);
    if (f.has("blade")) c.blade = f.object("blade", blade);
    return c;
}

StripperSetting stripper(Fields& f) {
    return {f.text("label"), f.text("nickname", "")};
}

AcceptanceRule rule(Fields& f) {
    AcceptanceRule r;
    r.name = f.text("name", r.name);
    r.origin = r.name.rfind("Sample", 0) == 0 ? RuleOrigin::Sample : RuleOrigin::Contract;
    r.perSplice = f.loss("per_splice_db", r.perSplice);
    r.average = f.loss("average_db", r.average);
    r.ceiling = f.loss("ceiling_db", r.ceiling);
    r.attempts = f.whole("attempts", r.attempts);
    r.directions = f.oneOf<Directions>(
        "directions", {{"one_way", Directions::OneWay}, {"two_way", Directions::TwoWay}}, r.directions);
    return r;
}

CableSetting cable(Fields& f) {
    CableSetting c;
    c.label = f.text("label");
    c.fibreCount = f.whole("fibres");
    c.unit = f.oneOf<FibreUnit>("unit", {{"tube", FibreUnit::Tube}, {"ribbon", FibreUnit::Ribbon}}, c.unit);
    c.unitSize = f.whole("unit_size", c.unitSize);
    c.colourOrder = f.text("colour_order", c.colourOrder);
    c.fibreType = f.text("fibre_type", c.fibreType);
    if (f.has("length_km")) c.lengthKm = f.number("length_km", 0);
    if (f.has("ribbon"))
        c.ribbon = f.oneOf<RibbonKind>("ribbon",
                                       {{"flat", RibbonKind::Flat},
                                        {"web", RibbonKind::WebType},
                                        {"ribbonised", RibbonKind::RibbonisedTubes}},
                                       RibbonKind::Flat);
    return c;
}

ClosureSetting closure(Fields& f) {
    ClosureSetting c;
    c.label = f.text("label");
    c.cableA = f.text("cable_a");
    c.cableB = f.text("cable_b");
    c.trays = f.whole("trays", c.trays);
    c.perTray = f.whole("per_tray", c.perTray);
    c.plan = plan(f.text("plan"), f.path("plan"));
    c.leftOut = fibres(f.text("left_out", ""), f.path("left_out"));
    return c;
}

JobSetting job(Fields& f) {
    JobSetting j;
    j.label = f.text("label");
    j.title = f.text("title", "");
    if (f.has("rule")) j.rule = f.object("rule", rule);
    j.modeFieldA = f.number("mode_field_a_um", j.modeFieldA);
    j.modeFieldB = f.number("mode_field_b_um", j.modeFieldB);
    j.modeFieldSd = f.number("mode_field_sd_um", j.modeFieldSd);
    if (const auto* bad = f.find("bad_lot")) {
        if (!bad->is_boolean()) throw Wrong("true or false is needed", f.path("bad_lot"));
        j.badLot = bad->get<bool>();
    }
    j.cables = f.list("cables", cable);
    j.closures = f.list("closures", closure);
    return j;
}

Assignment assignment(Fields& f) {
    Assignment a;
    a.splicer = f.text("splicer");
    a.cleaver = f.text("cleaver");
    a.job = f.text("job");
    const auto& closures = f.need("closures");
    if (!closures.is_array()) throw Wrong("a list of labels is needed", f.path("closures"));
    for (const auto& label : closures) {
        if (!label.is_string()) throw Wrong("a list of labels is needed", f.path("closures"));
        a.closures.push_back(label.get<std::string>());
    }
    a.fromDay = f.whole("from_day");
    a.toDay = f.whole("to_day");
    a.arcsPerDay = f.whole("arcs_per_day");
    a.startHour = f.hour("start_hour", a.startHour);
    a.operatorName = f.text("operator", "");
    return a;
}

/// Times in the file are days and hours; they become instants once the start is known.
class Times {
  public:
    explicit Times(Instant start) : start_(start) {}
    When when(Fields& f) const {
        When w;
        if (f.has("arc")) w.arc = static_cast<std::uint64_t>(f.whole("arc"));
        if (f.has("day") || f.has("hour")) {
            const double hour = f.hour("hour", 0);
            const auto ms = static_cast<std::int64_t>(std::llround(hour * 3600.0)) * 1000;
            w.at = Instant{start_.ms + f.whole("day") * msPerDay + ms, start_.offsetMinutes};
        }
        return w;
    }

  private:
    Instant start_;
};

FaultSetting faultWithoutTime(Fields& f) {
    FaultSetting fault;
    fault.cause = f.oneOf<drift::Cause>("cause", {{"groove", drift::Cause::Groove},
                                                  {"calibration", drift::Cause::Calibration},
                                                  {"cleaver", drift::Cause::Cleaver}});
    fault.tool = f.text("tool");
    fault.channels = numbers(f, "channels");
    fault.stepDb = f.number("step_db", fault.stepDb);
    fault.rampArcs = f.whole("ramp_arcs", fault.rampArcs);
    fault.angleGain = f.number("angle_gain", fault.angleGain);
    return fault;
}

CalibrationResult calibration(Fields& f) {
    const auto adequacy = [&f](const std::string& name) {
        return f.oneOf<Adequacy>(name,
                                 {{"adequate", Adequacy::Adequate}, {"not_adequate", Adequacy::NotAdequate}});
    };
    CalibrationResult r;
    r.power = adequacy("power");
    r.position = adequacy("position");
    r.fibreType = f.text("fibre_type", "G.652.D");
    r.fibreCount = f.whole("fibre_count", 1);
    r.runs = f.whole("runs", 1);
    return r;
}

CareSetting care(Fields& f, const Times& times) {
    CareSetting c;
    c.at = times.when(f);
    c.tool = f.text("tool");
    c.action = f.text("action");
    c.effect = f.oneOf<Effect>(
        "effect", {{"helps", Effect::Helps}, {"nothing", Effect::Nothing}, {"worse", Effect::Worse}},
        c.effect);
    if (f.has("brings")) c.brings = f.object("brings", faultWithoutTime);
    c.detail = f.text("detail", "");
    c.by = f.text("by", "");
    if (f.has("calibration")) c.calibration = f.object("calibration", calibration);
    if (f.has("blade")) c.blade = f.object("blade", blade);
    return c;
}

RoutineSetting routine(Fields& f) {
    RoutineSetting r;
    r.tool = f.text("tool");
    r.action = f.text("action");
    r.everyDays = f.whole("every_days", 0);
    r.everyUses = f.count("every_uses", 0);
    r.hour = f.hour("hour", r.hour);
    r.fromDay = f.whole("from_day", r.fromDay);
    r.toDay = f.whole("to_day", r.toDay);
    r.effect = f.oneOf<Effect>("effect", {{"helps", Effect::Helps}, {"nothing", Effect::Nothing}}, r.effect);
    r.detail = f.text("detail", "");
    r.by = f.text("by", "");
    return r;
}

Weather weather(Fields& f) {
    Weather w;
    w.meanC = f.number("mean_c", w.meanC);
    w.swingC = f.number("swing_c", w.swingC);
    w.daySdC = f.number("day_sd_c", w.daySdC);
    w.humidityPct = f.number("humidity_pct", w.humidityPct);
    w.pressureHpa = f.number("pressure_hpa", w.pressureHpa);
    w.coldMornings = f.list("cold_mornings", [](Fields& m) {
        return ColdMorning{m.whole("day"), m.number("celsius", 0)};
    });
    return w;
}

MeasuringSetting measuring(Fields& f) {
    MeasuringSetting m;
    m.closure = f.text("closure");
    m.day = f.whole("day");
    m.fibres = fibres(f.text("fibres"), f.path("fibres"));
    m.directions = f.oneOf<Directions>(
        "directions", {{"one_way", Directions::OneWay}, {"two_way", Directions::TwoWay}}, m.directions);
    m.wavelengthNm = f.whole("wavelength_nm", m.wavelengthNm);
    m.noiseDb = f.number("noise_db", m.noiseDb);
    m.instrument = f.text("instrument", "");
    m.note = f.text("note", "");
    return m;
}

Scenario scenarioOf(Fields& f) {
    Scenario s;
    s.name = f.text("name");
    s.about = f.text("about", "");
    s.seed = f.count("seed", 1);
    s.start = isoTime(f.text("start"), f.path("start"));
    const Times times(s.start);
    if (f.has("weather")) s.weather = f.object("weather", weather);
    s.splicers = f.list("splicers", machine);
    s.cleavers = f.list("cleavers", cleaver);
    s.strippers = f.list("strippers", stripper);
    s.jobs = f.list("jobs", job);
    s.work = f.list("work", assignment);
    s.faults = f.list("faults", [&times](Fields& item) {
        FaultSetting fault = faultWithoutTime(item);
        fault.begin = times.when(item);
        return fault;
    });
    s.care = f.list("care", [&times](Fields& item) { return care(item, times); });
    s.routine = f.list("routine", routine);
    s.measuring = f.list("measuring", measuring);
    return s;
}

}  // namespace

Result<Scenario> scenarioFromJson(std::string_view text) {
    const auto parsed = parseStrict(text, "scenario file");
    if (!parsed) return tl::unexpected(parsed.error());
    try {
        Fields fields(*parsed, "");
        Scenario scenario = scenarioOf(fields);
        fields.finish();
        if (const auto right = check(scenario); !right) return tl::unexpected(right.error());
        return scenario;
    } catch (const Wrong& wrong) {
        return fail(ProblemCode::BadInput, wrong.what(), "scenario file, " + wrong.where,
                    "Correct the scenario file");
    }
}

}  // namespace arc::storage
