// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <type_traits>
#include <utility>

namespace arc {
namespace {

// Ranges outside which a value is a slip of the pen. Deliberately wider than anything a crew meets.
constexpr Loss lossLimit{50'000};
constexpr Angle angleLimit{9'000};
constexpr Temperature coldest{213'150}, hottest{358'150};  // -60 to 85 degC
constexpr Pressure thinnest{30'000}, densest{110'000};     // 300 to 1,100 hPa
constexpr Humidity wettest{1'000};                         // 100.0 %
constexpr std::int64_t lastMs = 253'402'300'799'999;       // end of the year 9999
constexpr std::size_t labelLimit = 200, wordsLimit = 20'000, cardLimit = 1u << 20;
constexpr int mostFibres = 6'912, mostPlanned = 6'912;
constexpr std::size_t mostOnSpan = 1'000;

/// Well-formed UTF-8 (RFC 3629): no overlong forms, no surrogates, at most U+10FFFF.
bool isUtf8(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    std::size_t i = 0;
    while (i < text.size()) {
        const unsigned char lead = byte(i);
        std::size_t more = 0;
        unsigned char low = 0x80, high = 0xBF;
        if (lead < 0x80) {
        } else if (lead >= 0xC2 && lead <= 0xDF) {
            more = 1;
        } else if (lead >= 0xE0 && lead <= 0xEF) {
            more = 2;
            if (lead == 0xE0) low = 0xA0;
            if (lead == 0xED) high = 0x9F;
        } else if (lead >= 0xF0 && lead <= 0xF4) {
            more = 3;
            if (lead == 0xF0) low = 0x90;
            if (lead == 0xF4) high = 0x8F;
        } else {
            return false;
        }
        if (i + more >= text.size()) return false;
        for (std::size_t k = 1; k <= more; ++k) {
            if (byte(i + k) < low || byte(i + k) > high) return false;
            low = 0x80;
            high = 0xBF;
        }
        i += more + 1;
    }
    return true;
}

/// Collects the first thing that is wrong; later checks then do nothing.
class Check {
  public:
    Check& that(bool right, std::string_view field, std::string_view what) {
        if (!right && !problem_)
            problem_ = Problem{ProblemCode::BadInput, std::string(what), std::string(field),
                               "Correct it and save again"};
        return *this;
    }
    Check& id(const Uuid& uuid, std::string_view field) {
        return that(uuid != Uuid{}, field, "the record has no identity");
    }
    Check& given(std::string_view text, std::string_view field) {
        that(text.find_first_not_of(" \t") != std::string_view::npos, field,
             "the " + std::string(field) + " is missing");
        return line(text, field);
    }
    Check& line(std::string_view text, std::string_view field) {
        that(text.size() <= labelLimit, field,
             "the " + std::string(field) + " is longer than " + std::to_string(labelLimit) + " bytes");
        that(std::none_of(text.begin(), text.end(),
                          [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; }),
             field, "the " + std::string(field) + " holds a line break or another control character");
        return that(isUtf8(text), field, "the " + std::string(field) + " is not UTF-8 text");
    }
    Check& words(std::string_view text, std::string_view field, std::size_t limit = wordsLimit) {
        that(text.size() <= limit, field,
             "the " + std::string(field) + " is longer than " + std::to_string(limit) + " bytes");
        that(text.find('\0') == std::string_view::npos, field,
             "the " + std::string(field) + " holds a zero byte");
        return that(isUtf8(text), field, "the " + std::string(field) + " is not UTF-8 text");
    }
    Check& time(Instant at, std::string_view field) {
        that(at.ms >= 0 && at.ms <= lastMs, field, "the time lies outside the years 1970 to 9999");
        return that(at.offsetMinutes >= -14 * 60 && at.offsetMinutes <= 14 * 60, field,
                    "the offset from UTC is more than 14 hours");
    }
    Check& whole(int value, int low, int high, std::string_view field) {
        return that(value >= low && value <= high, field,
                    "the " + std::string(field) + " is " + std::to_string(value) + ", not between " +
                        std::to_string(low) + " and " + std::to_string(high));
    }
    Check& actionKey(std::string_view key, std::string_view field) {
        that(!key.empty() && key.size() <= 64, field, "the care action is missing");
        return that(
            std::all_of(key.begin(), key.end(),
                        [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; }),
            field, "the care action is a key of small letters, digits and underscores");
    }
    [[nodiscard]] Result<void> answer() const {
        if (problem_) return tl::unexpected(*problem_);
        return {};
    }

  private:
    std::optional<Problem> problem_;
};

bool lossInRange(Loss loss) {
    return loss.value <= lossLimit.value && loss.value >= -lossLimit.value;
}
bool angleInRange(const std::optional<Angle>& angle) {
    return !angle || (angle->value >= 0 && *angle <= angleLimit);
}

void check(Check& c, const Reading& r, const std::string& prefix) {
    c.whole(r.channel, 1, 16, prefix + "channel");
    c.that(r.loss.value >= 0, prefix + "loss", "an estimated loss cannot be negative");
    c.that(lossInRange(r.loss), prefix + "loss", "a loss above 50 dB is not a splice");
    c.that(angleInRange(r.cleaveLeft), prefix + "cleaveLeft",
           "the cleave angle is not between 0 and 90 degrees");
    c.that(angleInRange(r.cleaveRight), prefix + "cleaveRight",
           "the cleave angle is not between 0 and 90 degrees");
    c.line(r.fibreA, prefix + "fibreA").line(r.fibreB, prefix + "fibreB");
    c.whole(r.attempt, 1, 99, prefix + "attempt").words(r.note, prefix + "note");
}

void check(Check& c, const AcceptanceRule& rule) {
    c.line(rule.name, "rule.name");
    c.that(rule.average.value > 0, "rule.average", "the average limit must be above 0 dB");
    c.that(rule.perSplice.value > 0, "rule.perSplice", "the limit per splice must be above 0 dB");
    c.that(rule.ceiling >= rule.perSplice, "rule.ceiling", "the ceiling lies below the limit per splice");
    c.that(lossInRange(rule.ceiling), "rule.ceiling", "the ceiling is above 50 dB");
    c.whole(rule.attempts, 1, 20, "rule.attempts");
}

void check(Check& c, const Tool& t) {
    c.id(t.id.uuid, "id").given(t.label, "label").line(t.nickname, "nickname");
    if (const auto* splicer = asSplicer(t)) {
        c.whole(splicer->grooves, 1, 16, "grooves");
        c.that(splicer->kind != SplicerKind::SingleFibre || splicer->grooves == 1, "grooves",
               "a single-fibre splicer has one groove");
    }
    if (const auto* cleaver = asCleaver(t))
        c.whole(cleaver->positions, 1, 24, "positions").whole(cleaver->heights, 1, 9, "heights");
}
void check(Check& c, const Pairing& p) {
    c.id(p.id.uuid, "id").id(p.splicer.uuid, "splicer").id(p.cleaver.uuid, "cleaver").time(p.at, "at");
    c.that(p.splicer != p.cleaver, "cleaver", "splicer and cleaver are the same tool");
}
void check(Check& c, const CounterCorrection& k) {
    c.id(k.id.uuid, "id").id(k.tool.uuid, "tool").time(k.at, "at").words(k.reason, "reason");
    c.that(!k.reason.empty(), "reason", "a counter correction needs a reason");
}
void check(Check& c, const Job& j) {
    c.id(j.id.uuid, "id").given(j.label, "label").line(j.title, "title");
    check(c, j.rule);
}
void check(Check& c, const Cable& k) {
    c.id(k.id.uuid, "id").id(k.job.uuid, "job").given(k.label, "label");
    c.whole(k.fibreCount, 1, mostFibres, "fibreCount").whole(k.unitSize, 1, 432, "unitSize");
    c.line(k.colourOrder, "colourOrder").line(k.fibreType, "fibreType");
    c.that(!k.lengthKm || (*k.lengthKm >= 0 && *k.lengthKm <= 20'000), "lengthKm",
           "the cable length is not between 0 and 20,000 km");
    c.that(!k.ribbon || (*k.ribbon == RibbonKind::RibbonisedTubes) == (k.unit == FibreUnit::Tube), "ribbon",
           "loose tubes are ribbonised by hand, a ribbon is flat or web-type");
}
void check(Check& c, const Closure& k) {
    c.id(k.id.uuid, "id").id(k.job.uuid, "job").given(k.label, "label");
    c.whole(k.trays, 1, 500, "trays").whole(k.perTray, 1, 432, "perTray");
    c.that(k.plan.size() <= mostPlanned, "plan", "the plan has more than 6,912 splices");
    std::vector<int> sideA, sideB;
    for (const auto& row : k.plan) {
        c.whole(row.fibreA, 1, mostFibres, "plan.fibreA").whole(row.fibreB, 1, mostFibres, "plan.fibreB");
        sideA.push_back(row.fibreA);
        sideB.push_back(row.fibreB);
    }
    for (auto* side : {&sideA, &sideB}) {
        std::sort(side->begin(), side->end());
        const auto twice = std::adjacent_find(side->begin(), side->end());
        if (twice != side->end())
            c.that(false, side == &sideA ? "plan.fibreA" : "plan.fibreB",
                   "fibre " + std::to_string(*twice) + " is planned twice on one side");
    }
}
void check(Check& c, const Span& s) {
    c.id(s.id.uuid, "id").id(s.job.uuid, "job").given(s.label, "label");
    for (const auto& [end, field] : {std::pair(&s.from, "from"), std::pair(&s.to, "to")}) {
        c.line(end->name, field);
        c.that(end->closure.has_value() == end->name.empty(), field,
               std::string("where the span goes ") + field + " is one closure or one named end");
    }
    c.that(s.from != s.to, "to", "the span ends where it begins");
    c.that(!s.lengthKm || (*s.lengthKm >= 0 && *s.lengthKm <= 20'000), "lengthKm",
           "the length of the span is not between 0 and 20,000 km");
    c.that(s.closures.size() <= mostOnSpan, "closures", "the span has more than 1,000 closures");
    std::vector<ClosureId> closures = s.closures;
    std::sort(closures.begin(), closures.end());
    c.that(std::adjacent_find(closures.begin(), closures.end()) == closures.end(), "closures",
           "a closure is on the span twice");
}
void check(Check& c, const SpliceArc& a) {
    c.id(a.id.uuid, "id").time(a.at, "at").id(a.splicer.uuid, "splicer");
    static constexpr std::array sizes{1, 2, 4, 8, 12, 16};
    c.that(std::find(sizes.begin(), sizes.end(), a.channels) != sizes.end(), "channels",
           "an arc joins 1, 2, 4, 8, 12 or 16 fibres, not " + std::to_string(a.channels));
    c.line(a.mode, "mode").line(a.operatorName, "operator");
    const auto& air = a.ambient;
    c.that(!air.temperature || (*air.temperature >= coldest && *air.temperature <= hottest), "temperature",
           "the temperature is not between -60 and 85 degrees Celsius");
    c.that(!air.humidity || (air.humidity->value >= 0 && *air.humidity <= wettest), "humidity",
           "the humidity is not between 0 and 100 %");
    c.that(!air.pressure || (*air.pressure >= thinnest && *air.pressure <= densest), "pressure",
           "the pressure is not between 300 and 1,100 hPa");
    int last = 0;
    for (const auto& reading : a.readings) {
        const std::string prefix = a.channels == 1 ? "" : "groove " + std::to_string(reading.channel) + ", ";
        check(c, reading, prefix);
        c.that(reading.channel <= a.channels, prefix + "channel",
               "groove " + std::to_string(reading.channel) + " in an arc of " + std::to_string(a.channels) +
                   " fibres");
        c.that(reading.channel != last, prefix + "channel", "two readings of one groove in one arc");
        c.that(reading.channel >= last, prefix + "channel", "the readings are not in groove order");
        last = reading.channel;
    }
}
void check(Check& c, const ReadingChange& r) {
    c.id(r.arc.uuid, "arc");
    check(c, r.reading, "");
}
void check(Check& c, const MeasuredLoss& m) {
    c.id(m.id.uuid, "id").given(m.fibre, "fibre").time(m.at, "at");
    c.whole(m.wavelengthNm, 400, 2'000, "wavelengthNm");
    c.that(m.aToB || m.bToA, "aToB", "neither direction was measured");
    for (const auto& loss : {m.aToB, m.bToA})
        c.that(!loss || lossInRange(*loss), "aToB", "a measured loss beyond 50 dB is not a splice");
    c.line(m.instrument, "instrument").words(m.note, "note");
}
void check(Check& c, const CareRecord& r) {
    c.id(r.id.uuid, "id").time(r.at, "at").actionKey(r.action, "action");
    if (r.action != action::environmentChange && r.action != action::note) c.id(r.tool.uuid, "tool");
    c.that(r.cardVersion >= 0, "cardVersion", "the card version is negative");
    c.words(r.detail, "detail").line(r.by, "by");
    if (r.calibration) {
        c.that(r.action == action::arcCalibration, "calibration",
               "only an arc calibration has a calibration result");
        c.whole(r.calibration->fibreCount, 1, 16, "calibration.fibreCount");
        c.whole(r.calibration->runs, 1, 99, "calibration.runs");
        c.line(r.calibration->fibreType, "calibration.fibreType");
    }
    if (r.blade)
        c.whole(r.blade->height, 1, 9, "blade.height").whole(r.blade->position, 1, 24, "blade.position");
    for (const auto& [name, value] : r.fields) c.given(name, "field name").words(value, "field " + name);
    for (const auto& key : r.answers) c.words(key, "answers");
}
void check(Check& c, const CareRun& r) {
    c.id(r.id.uuid, "id")
        .id(r.tool.uuid, "tool")
        .actionKey(r.action, "action")
        .time(r.startedAt, "startedAt");
    c.that(r.cardVersion >= 0, "cardVersion", "the card version is negative");
    c.line(r.by, "by").whole(r.step, 0, 1'000, "step");
    for (const auto& [name, times] : r.repeats) c.given(name, "step id").whole(times, 0, 1'000, "repeats");
    for (const auto& [name, value] : r.fields) c.given(name, "field name").words(value, "field " + name);
    for (const auto& key : r.answers) c.words(key, "answers");
}
void check(Check& c, const CardEdition& e) {
    c.id(e.id.uuid, "id").actionKey(e.action, "action").whole(e.version, 1, 1'000'000, "version");
    c.that(!e.json.empty(), "json", "the care card is empty").words(e.json, "json", cardLimit);
}
void check(Check& c, const HoldOverride& h) {
    c.id(h.id.uuid, "id").id(h.tool.uuid, "tool").time(h.at, "at").words(h.dueKey, "dueKey").line(h.by, "by");
    c.that(!h.dueKey.empty(), "dueKey", "the hold that is overridden is not named");
    c.that(!h.reason.empty(), "reason", "an override needs a reason").words(h.reason, "reason");
}
void check(Check& c, const BaselineChoice& b) {
    c.id(b.id.uuid, "id").id(b.splicer.uuid, "splicer").given(b.stratum, "stratum");
    c.time(b.from, "from").time(b.to, "to");
    c.that(b.from < b.to, "to", "the baseline ends before it begins");
    c.words(b.reason, "reason").line(b.by, "by");
}
void check(Check& c, const SignalAnswer& a) {
    c.id(a.id.uuid, "id").id(a.splicer.uuid, "splicer").time(a.at, "at").line(a.by, "by");
    c.that(!a.signalKey.empty(), "signalKey", "the signal is not named").words(a.signalKey, "signalKey");
    c.that(a.kind != SignalAnswerKind::Dismissed || !a.reason.empty(), "reason",
           "a dismissal needs a reason");
    c.words(a.reason, "reason");
}
void check(Check& c, const ExceptionDisposition& d) {
    c.id(d.id.uuid, "id").id(d.job.uuid, "job").time(d.at, "at").line(d.by, "by");
    c.that(!d.exceptionKey.empty(), "exceptionKey", "the exception is not named");
    c.words(d.exceptionKey, "exceptionKey");
    c.that(!d.disposition.empty(), "disposition", "the disposition is missing");
    c.words(d.disposition, "disposition").words(d.reason, "reason");
}
void check(Check& c, const IssuedRecord& r) {
    c.id(r.id.uuid, "id").id(r.job.uuid, "job").time(r.at, "at").line(r.by, "by");
    c.whole(r.number, 1, 1'000'000, "number");
    c.that(r.manifestSha256.size() == 64 &&
               r.manifestSha256.find_first_not_of("0123456789abcdef") == std::string::npos,
           "manifestSha256", "the manifest hash is not 64 small hexadecimal digits");
    c.that(!r.supersedes || (*r.supersedes >= 1 && *r.supersedes < r.number), "supersedes",
           "a record can supersede only an earlier one");
}
void check(Check& c, const Setting& s) {
    c.given(s.key, "key").words(s.value, "value", cardLimit);
}
void check(Check& c, const Attachment& a) {
    c.id(a.id.uuid, "id").id(a.of, "of").given(a.name, "name");
    c.that(a.mediaType.find('/') != std::string::npos, "mediaType",
           "the media type is not of the form type/subtype");
    c.line(a.mediaType, "mediaType");
    c.that(!a.bytes.empty(), "bytes", "the attachment is empty");
    c.that(a.bytes.size() <= attachmentLimit, "bytes", "the attachment is larger than 8 MB");
}
void check(Check& c, const Withdrawal& w) {
    c.id(w.of, "of").words(w.reason, "reason");
}

}  // namespace

Result<void> validate(const Entry& entry) {
    Check c;
    std::visit([&c](const auto& e) { check(c, e); }, entry);
    return c.answer();
}

std::string_view kindName(const Entry& entry) {
    // In the order of the variant; the journal and satchels hold these words for ever.
    static constexpr std::array<std::string_view, std::variant_size_v<Entry>> names{
        "tool",          "pairing",         "counter_correction",
        "job",           "cable",           "closure",
        "arc",           "reading",         "measured_loss",
        "care",          "care_run",        "card_edition",
        "hold_override", "baseline_choice", "signal_answer",
        "disposition",   "issued_record",   "setting",
        "attachment",    "withdrawal",      "span"};
    return names[entry.index()];
}

std::optional<Uuid> recordOf(const Entry& entry) {
    return std::visit(
        [](const auto& e) -> std::optional<Uuid> {
            using Kind = std::decay_t<decltype(e)>;
            if constexpr (std::is_same_v<Kind, Setting>) {
                return std::nullopt;
            } else if constexpr (std::is_same_v<Kind, ReadingChange>) {
                return e.arc.uuid;
            } else if constexpr (std::is_same_v<Kind, Withdrawal>) {
                return e.of;
            } else {
                return e.id.uuid;
            }
        },
        entry);
}

Entry opposite(const Entry& written, const std::optional<Entry>& before) {
    if (before) return *before;
    if (const auto* setting = std::get_if<Setting>(&written)) return Setting{setting->key, ""};
    if (const auto* change = std::get_if<ReadingChange>(&written)) {
        ReadingChange voided = *change;
        voided.reading.state = ReadingState::Voided;
        voided.reading.note = "undone";
        return voided;
    }
    return Withdrawal{recordOf(written).value_or(Uuid{}), "undone"};
}

}  // namespace arc
