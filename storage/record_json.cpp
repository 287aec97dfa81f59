// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/record_json.hpp"

#include <nlohmann/json.hpp>
#include <stdexcept>
#include <type_traits>
#include <utility>

#include "storage/canonical.hpp"
#include "storage/whole_number.hpp"

namespace arc::storage {
namespace {

using Json = nlohmann::ordered_json;

// --- small pieces, to and from JSON ---------------------------------------------------------------------

Json put(const Uuid& uuid) {
    return toText(uuid);
}
Json put(Instant at) {
    return toIso(at);
}
Json put(int value) {
    return value;
}
Json put(double value) {
    return value;
}
template <class Tag, class Rep>
Json put(detail::Quantity<Tag, Rep> quantity) {
    return quantity.value;
}
template <class Tag>
Json put(const Id<Tag>& id) {
    return toText(id.uuid);
}

/// Leaves absent what is not known.
template <class T>
void putMaybe(Json& json, const char* name, const std::optional<T>& value) {
    if (value) json[name] = put(*value);
}

void get(const Json& json, Uuid& uuid) {
    const auto parsed = parseUuid(json.get<std::string>());
    if (!parsed) throw std::runtime_error("an identity that is not a UUID");
    uuid = *parsed;
}
void get(const Json& json, Instant& at) {
    const auto parsed = parseInstant(json.get<std::string>());
    if (!parsed) throw std::runtime_error(parsed.error().what);
    at = *parsed;
}
void get(const Json& json, std::string& text) {
    text = json.get<std::string>();
}
void get(const Json& json, int& value) {
    value = needWholeNumber<int>(json);
}
void get(const Json& json, double& value) {
    value = json.get<double>();
}
template <class Tag, class Rep>
void get(const Json& json, detail::Quantity<Tag, Rep>& quantity) {
    quantity.value = needWholeNumber<Rep>(json);
}
template <class Tag>
void get(const Json& json, Id<Tag>& id) {
    get(json, id.uuid);
}
template <class T>
void get(const Json& json, std::optional<T>& value) {
    T inner{};
    get(json, inner);
    value = inner;
}

Json put(const SpanEnd& end) {
    return end.closure ? Json{{"closure", put(*end.closure)}} : Json{{"name", end.name}};
}
void get(const Json& json, SpanEnd& end) {
    if (const auto found = json.find("closure"); found != json.end()) get(*found, end.closure);
    if (const auto found = json.find("name"); found != json.end()) get(*found, end.name);
}

template <class T>
void read(const Json& json, const char* name, T& value) {
    const auto found = json.find(name);
    if (found != json.end() && !found->is_null()) get(*found, value);
}

/// Enums as words; the table is searched both ways.
template <class Enum>
struct Word {
    Enum value;
    const char* word;
};
template <class Enum, std::size_t N>
const char* wordOf(const Word<Enum> (&table)[N], Enum value) {
    for (const auto& row : table)
        if (row.value == value) return row.word;
    throw std::logic_error("an enum value without a word");
}
template <class Enum, std::size_t N>
void readWord(const Json& json, const char* name, const Word<Enum> (&table)[N], Enum& value) {
    const auto found = json.find(name);
    if (found == json.end()) return;
    const auto word = found->get<std::string>();
    for (const auto& row : table) {
        if (word == row.word) {
            value = row.value;
            return;
        }
    }
    throw std::runtime_error("the word \"" + word + "\" is not known");
}

constexpr Word<Service> services[] = {{Service::InUse, "in_use"}, {Service::OutOfService, "out_of_service"}};
constexpr Word<SplicerKind> splicerKinds[] = {{SplicerKind::SingleFibre, "single"},
                                              {SplicerKind::MassFusion, "mass"}};
constexpr Word<ArcControl> arcControls[] = {{ArcControl::Manual, "manual"},
                                            {ArcControl::SelfCalibrating, "self_calibrating"}};
constexpr Word<Directions> directions[] = {{Directions::OneWay, "one_way"}, {Directions::TwoWay, "two_way"}};
constexpr Word<RuleOrigin> ruleOrigins[] = {{RuleOrigin::Sample, "sample"},
                                            {RuleOrigin::Contract, "contract"}};
constexpr Word<FibreUnit> fibreUnits[] = {{FibreUnit::Tube, "tube"}, {FibreUnit::Ribbon, "ribbon"}};
constexpr Word<RibbonKind> ribbonKinds[] = {
    {RibbonKind::Flat, "flat"}, {RibbonKind::WebType, "web"}, {RibbonKind::RibbonisedTubes, "ribbonised"}};
constexpr Word<Adequacy> adequacies[] = {{Adequacy::Adequate, "adequate"},
                                         {Adequacy::NotAdequate, "not_adequate"}};
constexpr Word<RunState> runStates[] = {
    {RunState::Open, "open"}, {RunState::Finished, "finished"}, {RunState::Abandoned, "abandoned"}};
constexpr Word<SignalAnswerKind> answerKinds[] = {{SignalAnswerKind::Dismissed, "dismissed"},
                                                  {SignalAnswerKind::Reopened, "reopened"}};

// --- each kind ---------------------------------------------------------------------------------------------

Json body(const Tool& t) {
    Json j{{"id", put(t.id)}, {"label", t.label}, {"nickname", t.nickname}};
    j["service"] = wordOf(services, t.service);
    if (const auto* splicer = asSplicer(t)) {
        j["splicer"] = {{"kind", wordOf(splicerKinds, splicer->kind)},
                        {"grooves", splicer->grooves},
                        {"arc_control", wordOf(arcControls, splicer->arcControl)}};
    } else if (const auto* cleaver = asCleaver(t)) {
        j["cleaver"] = {{"positions", cleaver->positions}, {"heights", cleaver->heights}};
    } else {
        j["stripper"] = Json::object();
    }
    return j;
}
void fill(const Json& j, Tool& t) {
    read(j, "id", t.id);
    read(j, "label", t.label);
    read(j, "nickname", t.nickname);
    readWord(j, "service", services, t.service);
    if (j.contains("splicer")) {
        Splicer splicer;
        readWord(j["splicer"], "kind", splicerKinds, splicer.kind);
        read(j["splicer"], "grooves", splicer.grooves);
        readWord(j["splicer"], "arc_control", arcControls, splicer.arcControl);
        t.traits = splicer;
    } else if (j.contains("cleaver")) {
        Cleaver cleaver;
        read(j["cleaver"], "positions", cleaver.positions);
        read(j["cleaver"], "heights", cleaver.heights);
        t.traits = cleaver;
    } else {
        t.traits = Stripper{};
    }
}

Json body(const Pairing& p) {
    return {{"id", put(p.id)}, {"splicer", put(p.splicer)}, {"cleaver", put(p.cleaver)}, {"at", put(p.at)}};
}
void fill(const Json& j, Pairing& p) {
    read(j, "id", p.id);
    read(j, "splicer", p.splicer);
    read(j, "cleaver", p.cleaver);
    read(j, "at", p.at);
}

Json body(const CounterCorrection& c) {
    return {{"id", put(c.id)},
            {"tool", put(c.tool)},
            {"at", put(c.at)},
            {"shows", put(c.shows)},
            {"reason", c.reason}};
}
void fill(const Json& j, CounterCorrection& c) {
    read(j, "id", c.id);
    read(j, "tool", c.tool);
    read(j, "at", c.at);
    read(j, "shows", c.shows);
    read(j, "reason", c.reason);
}

Json body(const Job& job) {
    const AcceptanceRule& r = job.rule;
    return {{"id", put(job.id)},
            {"label", job.label},
            {"title", job.title},
            {"rule",
             {{"name", r.name},
              {"per_splice_mdb", put(r.perSplice)},
              {"average_mdb", put(r.average)},
              {"ceiling_mdb", put(r.ceiling)},
              {"attempts", r.attempts},
              {"directions", wordOf(directions, r.directions)},
              {"origin", wordOf(ruleOrigins, r.origin)}}}};
}
void fill(const Json& j, Job& job) {
    read(j, "id", job.id);
    read(j, "label", job.label);
    read(j, "title", job.title);
    const auto rule = j.find("rule");
    if (rule == j.end()) return;
    read(*rule, "name", job.rule.name);
    read(*rule, "per_splice_mdb", job.rule.perSplice);
    read(*rule, "average_mdb", job.rule.average);
    read(*rule, "ceiling_mdb", job.rule.ceiling);
    read(*rule, "attempts", job.rule.attempts);
    readWord(*rule, "directions", directions, job.rule.directions);
    readWord(*rule, "origin", ruleOrigins, job.rule.origin);
}

Json body(const Cable& c) {
    Json j{{"id", put(c.id)},
           {"job", put(c.job)},
           {"label", c.label},
           {"fibre_count", c.fibreCount},
           {"unit", wordOf(fibreUnits, c.unit)},
           {"unit_size", c.unitSize},
           {"colour_order", c.colourOrder},
           {"fibre_type", c.fibreType}};
    putMaybe(j, "length_km", c.lengthKm);
    if (c.ribbon) j["ribbon"] = wordOf(ribbonKinds, *c.ribbon);
    return j;
}
void fill(const Json& j, Cable& c) {
    read(j, "id", c.id);
    read(j, "job", c.job);
    read(j, "label", c.label);
    read(j, "fibre_count", c.fibreCount);
    readWord(j, "unit", fibreUnits, c.unit);
    read(j, "unit_size", c.unitSize);
    read(j, "colour_order", c.colourOrder);
    read(j, "fibre_type", c.fibreType);
    read(j, "length_km", c.lengthKm);
    if (j.contains("ribbon")) readWord(j, "ribbon", ribbonKinds, c.ribbon.emplace());
}

Json body(const Closure& c) {
    Json j{{"id", put(c.id)}, {"job", put(c.job)}, {"label", c.label}};
    putMaybe(j, "cable_a", c.cableA);
    putMaybe(j, "cable_b", c.cableB);
    j["trays"] = c.trays;
    j["per_tray"] = c.perTray;
    Json plan = Json::array();
    for (const auto& planned : c.plan) plan.push_back({planned.fibreA, planned.fibreB});
    j["plan"] = std::move(plan);
    return j;
}
void fill(const Json& j, Closure& c) {
    read(j, "id", c.id);
    read(j, "job", c.job);
    read(j, "label", c.label);
    read(j, "cable_a", c.cableA);
    read(j, "cable_b", c.cableB);
    read(j, "trays", c.trays);
    read(j, "per_tray", c.perTray);
    if (j.contains("plan"))
        for (const auto& row : j["plan"])
            c.plan.push_back({needWholeNumber<int>(row.at(0)), needWholeNumber<int>(row.at(1))});
}

Json body(const Span& s) {
    Json j{
        {"id", put(s.id)}, {"job", put(s.job)}, {"label", s.label}, {"from", put(s.from)}, {"to", put(s.to)}};
    putMaybe(j, "cable", s.cable);
    putMaybe(j, "length_km", s.lengthKm);
    j["closures"] = Json::array();
    for (const ClosureId closure : s.closures) j["closures"].push_back(put(closure));
    return j;
}
void fill(const Json& j, Span& s) {
    read(j, "id", s.id);
    read(j, "job", s.job);
    read(j, "label", s.label);
    read(j, "from", s.from);
    read(j, "to", s.to);
    read(j, "cable", s.cable);
    read(j, "length_km", s.lengthKm);
    if (j.contains("closures"))
        for (const auto& closure : j["closures"]) get(closure, s.closures.emplace_back());
}

Json body(const MeasuredLoss& m) {
    Json j{{"id", put(m.id)}};
    putMaybe(j, "job", m.job);
    putMaybe(j, "closure", m.closure);
    j["fibre"] = m.fibre;
    j["wavelength_nm"] = m.wavelengthNm;
    putMaybe(j, "a_to_b_mdb", m.aToB);
    putMaybe(j, "b_to_a_mdb", m.bToA);
    j["at"] = put(m.at);
    j["instrument"] = m.instrument;
    j["note"] = m.note;
    return j;
}
void fill(const Json& j, MeasuredLoss& m) {
    read(j, "id", m.id);
    read(j, "job", m.job);
    read(j, "closure", m.closure);
    read(j, "fibre", m.fibre);
    read(j, "wavelength_nm", m.wavelengthNm);
    read(j, "a_to_b_mdb", m.aToB);
    read(j, "b_to_a_mdb", m.bToA);
    read(j, "at", m.at);
    read(j, "instrument", m.instrument);
    read(j, "note", m.note);
}

Json body(const CareRecord& c) {
    Json j{{"id", put(c.id)},    {"tool", put(c.tool)},           {"at", put(c.at)},
           {"action", c.action}, {"card_version", c.cardVersion}, {"detail", c.detail},
           {"by", c.by}};
    if (c.calibration) {
        j["calibration"] = {{"power", wordOf(adequacies, c.calibration->power)},
                            {"position", wordOf(adequacies, c.calibration->position)},
                            {"fibre_type", c.calibration->fibreType},
                            {"fibre_count", c.calibration->fibreCount},
                            {"runs", c.calibration->runs}};
    }
    if (c.blade) j["blade"] = {{"height", c.blade->height}, {"position", c.blade->position}};
    putMaybe(j, "counter", c.counter);
    j["fields"] = c.fields;
    j["answers"] = c.answers;
    return j;
}
void fill(const Json& j, CareRecord& c) {
    read(j, "id", c.id);
    read(j, "tool", c.tool);
    read(j, "at", c.at);
    read(j, "action", c.action);
    read(j, "card_version", c.cardVersion);
    read(j, "detail", c.detail);
    read(j, "by", c.by);
    if (const auto found = j.find("calibration"); found != j.end()) {
        CalibrationResult result;
        readWord(*found, "power", adequacies, result.power);
        readWord(*found, "position", adequacies, result.position);
        read(*found, "fibre_type", result.fibreType);
        read(*found, "fibre_count", result.fibreCount);
        read(*found, "runs", result.runs);
        c.calibration = result;
    }
    if (const auto found = j.find("blade"); found != j.end()) {
        BladePlace place;
        read(*found, "height", place.height);
        read(*found, "position", place.position);
        c.blade = place;
    }
    read(j, "counter", c.counter);
    if (j.contains("fields")) j["fields"].get_to(c.fields);
    if (j.contains("answers")) j["answers"].get_to(c.answers);
}

Json body(const CareRun& r) {
    return {{"id", put(r.id)},
            {"tool", put(r.tool)},
            {"action", r.action},
            {"card_version", r.cardVersion},
            {"started_at", put(r.startedAt)},
            {"by", r.by},
            {"step", r.step},
            {"repeats", r.repeats},
            {"fields", r.fields},
            {"answers", r.answers},
            {"state", wordOf(runStates, r.state)}};
}
void fill(const Json& j, CareRun& r) {
    read(j, "id", r.id);
    read(j, "tool", r.tool);
    read(j, "action", r.action);
    read(j, "card_version", r.cardVersion);
    read(j, "started_at", r.startedAt);
    read(j, "by", r.by);
    read(j, "step", r.step);
    if (j.contains("repeats"))
        for (const auto& [step, times] : j["repeats"].get<std::map<std::string, Json>>())
            r.repeats[step] = needWholeNumber<int>(times);
    if (j.contains("fields")) j["fields"].get_to(r.fields);
    if (j.contains("answers")) j["answers"].get_to(r.answers);
    readWord(j, "state", runStates, r.state);
}

Json body(const CardEdition& c) {
    return {{"id", put(c.id)}, {"action", c.action}, {"version", c.version}, {"json", c.json}};
}
void fill(const Json& j, CardEdition& c) {
    read(j, "id", c.id);
    read(j, "action", c.action);
    read(j, "version", c.version);
    read(j, "json", c.json);
}

Json body(const HoldOverride& h) {
    return {{"id", put(h.id)}, {"tool", put(h.tool)}, {"due_key", h.dueKey},
            {"by", h.by},      {"reason", h.reason},  {"at", put(h.at)}};
}
void fill(const Json& j, HoldOverride& h) {
    read(j, "id", h.id);
    read(j, "tool", h.tool);
    read(j, "due_key", h.dueKey);
    read(j, "by", h.by);
    read(j, "reason", h.reason);
    read(j, "at", h.at);
}

Json body(const BaselineChoice& b) {
    return {{"id", put(b.id)},     {"splicer", put(b.splicer)}, {"stratum", b.stratum},
            {"from", put(b.from)}, {"to", put(b.to)},           {"reason", b.reason},
            {"by", b.by}};
}
void fill(const Json& j, BaselineChoice& b) {
    read(j, "id", b.id);
    read(j, "splicer", b.splicer);
    read(j, "stratum", b.stratum);
    read(j, "from", b.from);
    read(j, "to", b.to);
    read(j, "reason", b.reason);
    read(j, "by", b.by);
}

Json body(const SignalAnswer& s) {
    return {{"id", put(s.id)},
            {"splicer", put(s.splicer)},
            {"signal_key", s.signalKey},
            {"kind", wordOf(answerKinds, s.kind)},
            {"reason", s.reason},
            {"by", s.by},
            {"at", put(s.at)}};
}
void fill(const Json& j, SignalAnswer& s) {
    read(j, "id", s.id);
    read(j, "splicer", s.splicer);
    read(j, "signal_key", s.signalKey);
    readWord(j, "kind", answerKinds, s.kind);
    read(j, "reason", s.reason);
    read(j, "by", s.by);
    read(j, "at", s.at);
}

Json body(const ExceptionDisposition& d) {
    return {{"id", put(d.id)},
            {"job", put(d.job)},
            {"exception_key", d.exceptionKey},
            {"disposition", d.disposition},
            {"reason", d.reason},
            {"by", d.by},
            {"at", put(d.at)}};
}
void fill(const Json& j, ExceptionDisposition& d) {
    read(j, "id", d.id);
    read(j, "job", d.job);
    read(j, "exception_key", d.exceptionKey);
    read(j, "disposition", d.disposition);
    read(j, "reason", d.reason);
    read(j, "by", d.by);
    read(j, "at", d.at);
}

Json body(const IssuedRecord& r) {
    Json j{
        {"id", put(r.id)}, {"job", put(r.job)}, {"number", r.number}, {"manifest_sha256", r.manifestSha256}};
    putMaybe(j, "supersedes", r.supersedes);
    j["by"] = r.by;
    j["at"] = put(r.at);
    return j;
}
void fill(const Json& j, IssuedRecord& r) {
    read(j, "id", r.id);
    read(j, "job", r.job);
    read(j, "number", r.number);
    read(j, "manifest_sha256", r.manifestSha256);
    read(j, "supersedes", r.supersedes);
    read(j, "by", r.by);
    read(j, "at", r.at);
}

Json body(const Setting& s) {
    return {{"key", s.key}, {"value", s.value}};
}
void fill(const Json& j, Setting& s) {
    read(j, "key", s.key);
    read(j, "value", s.value);
}

Json body(const Attachment& a) {
    return {{"id", put(a.id)},
            {"of", put(a.of)},
            {"name", a.name},
            {"media_type", a.mediaType},
            {"sha256", toHex(sha256(a.bytes))}};
}
void fill(const Json& j, Attachment& a) {
    read(j, "id", a.id);
    read(j, "of", a.of);
    read(j, "name", a.name);
    read(j, "media_type", a.mediaType);
}

Json body(const Withdrawal& w) {
    return {{"of", put(w.of)}, {"reason", w.reason}};
}
void fill(const Json& j, Withdrawal& w) {
    read(j, "of", w.of);
    read(j, "reason", w.reason);
}

// --- what lists ask for ------------------------------------------------------------------------------------

template <class T>
std::optional<Uuid> subjectOf(const T& e) {
    if constexpr (requires { e.of; }) {
        return e.of;
    } else if constexpr (requires { e.tool; }) {
        return e.tool.uuid;
    } else if constexpr (requires { e.splicer; }) {
        return e.splicer.uuid;
    } else if constexpr (std::is_same_v<T, MeasuredLoss>) {
        return e.job ? std::optional(e.job->uuid) : std::nullopt;
    } else if constexpr (requires { e.job; }) {
        return e.job.uuid;
    } else {
        return std::nullopt;
    }
}

template <class T>
std::optional<std::int64_t> timeOf(const T& e) {
    if constexpr (requires { e.at; }) {
        return e.at.ms;
    } else if constexpr (requires { e.startedAt; }) {
        return e.startedAt.ms;
    } else if constexpr (requires { e.from.ms; }) {
        return e.from.ms;
    } else {
        return std::nullopt;
    }
}

template <class T>
constexpr bool hasOwnTable = std::is_same_v<T, SpliceArc> || std::is_same_v<T, ReadingChange>;

/// Finds the alternative whose kind is `kind` by trying each.
template <std::size_t I = 0>
std::optional<Entry> tryKinds(std::string_view kind, std::string_view text) {
    if constexpr (I == std::variant_size_v<Entry>) {
        return std::nullopt;
    } else {
        using T = std::variant_alternative_t<I, Entry>;
        if constexpr (!hasOwnTable<T>) {
            if (kindName(Entry(std::in_place_type<T>)) == kind) return Entry(fromBody<T>(text));
        }
        return tryKinds<I + 1>(kind, text);
    }
}

}  // namespace

Uuid settingId(std::string_view key) {
    return namedUuid("setting/" + std::string(key));
}

RecordRow toRecord(const Entry& entry) {
    RecordRow row;
    row.kind = kindName(entry);
    std::visit(
        [&row](const auto& e) {
            using T = std::decay_t<decltype(e)>;
            if constexpr (hasOwnTable<T>) {
                throw std::logic_error("splices have tables of their own");
            } else {
                if constexpr (std::is_same_v<T, Setting>) {
                    row.id = settingId(e.key);
                } else if constexpr (std::is_same_v<T, Withdrawal>) {
                    row.id = e.of;
                } else {
                    row.id = e.id.uuid;
                }
                row.subject = subjectOf(e);
                row.atMs = timeOf(e);
                row.body = body(e).dump();
            }
        },
        entry);
    return row;
}

template <class T>
T fromBody(std::string_view text) {
    T value{};
    fill(Json::parse(text), value);
    return value;
}
template Tool fromBody<Tool>(std::string_view);
template Pairing fromBody<Pairing>(std::string_view);
template CounterCorrection fromBody<CounterCorrection>(std::string_view);
template Job fromBody<Job>(std::string_view);
template Cable fromBody<Cable>(std::string_view);
template Closure fromBody<Closure>(std::string_view);
template Span fromBody<Span>(std::string_view);
template MeasuredLoss fromBody<MeasuredLoss>(std::string_view);
template CareRecord fromBody<CareRecord>(std::string_view);
template CareRun fromBody<CareRun>(std::string_view);
template CardEdition fromBody<CardEdition>(std::string_view);
template HoldOverride fromBody<HoldOverride>(std::string_view);
template BaselineChoice fromBody<BaselineChoice>(std::string_view);
template SignalAnswer fromBody<SignalAnswer>(std::string_view);
template ExceptionDisposition fromBody<ExceptionDisposition>(std::string_view);
template IssuedRecord fromBody<IssuedRecord>(std::string_view);
template Setting fromBody<Setting>(std::string_view);
template Attachment fromBody<Attachment>(std::string_view);
template Withdrawal fromBody<Withdrawal>(std::string_view);

std::string attachmentHash(std::string_view text) {
    return Json::parse(text).at("sha256").get<std::string>();
}

std::optional<Entry> entryFrom(std::string_view kind, std::string_view text) {
    return tryKinds(kind, text);
}

}  // namespace arc::storage
