// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/rules.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cmath>
#include <set>
#include <utility>

#include "core/care/run.hpp"
#include "core/care/words.hpp"

namespace arc::care {
namespace {

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return out;
}

/// "G.652" of "G.652.D" or of "G.652-G.652"; empty when no ITU-T single-mode or multimode family is named.
std::string family(std::string_view text) {
    for (std::size_t i = 0; i + 4 < text.size(); ++i) {
        if ((text[i] != 'G' && text[i] != 'g') || text[i + 1] != '.') continue;
        const auto digit = [&](std::size_t at) {
            return std::isdigit(static_cast<unsigned char>(text[at])) != 0;
        };
        if (digit(i + 2) && digit(i + 3) && digit(i + 4)) return "G." + std::string(text.substr(i + 2, 3));
    }
    return {};
}

/// Every family a text names: "G.652-G.657" names two.
std::set<std::string> families(std::string_view text) {
    std::set<std::string> named;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (std::string one = family(text.substr(i)); !one.empty()) named.insert(std::move(one));
    return named;
}

bool saysBad(const std::string& said) {
    for (const char* bad : {"not adequate", "not-adequate", "not_adequate", "inadequate", "failed"})
        if (said.find(bad) != std::string::npos) return true;
    return false;
}

/// The whole number right before a word: 12 of "g.652.d, 12 fibres".
std::optional<int> numberBefore(const std::string& said, const char* word) {
    const auto at = said.find(word);
    if (at == std::string::npos) return std::nullopt;
    auto from = at;
    while (from > 0 && std::isdigit(static_cast<unsigned char>(said[from - 1])) != 0) --from;
    if (from == at || at - from > 3) return std::nullopt;
    return std::stoi(said.substr(from, at - from));
}

Result<double> number(std::string_view key, std::string_view value, double least, double most) {
    double read = 0;
    const char* end = value.data() + value.size();
    const auto done = std::from_chars(value.data(), end, read);
    if (done.ec != std::errc{} || done.ptr != end || !(read >= least && read <= most))
        return fail(
            ProblemCode::BadInput,
            "\"" + std::string(value) + "\" is not a number from " + plain(least) + " to " + plain(most),
            std::string(key), "Leave the setting as it was or give a value in range");
    return read;
}

constexpr std::array<std::string_view, 8> keys{
    "care.environment_jump_c", "care.environment_jump_hpa", "care.idle_days", "care.electrode_arcs",
    "care.calibration_runs",   "care.order_days",           "care.ribbon",    "care.self_calibrating_times"};

}  // namespace

std::span<const std::string_view> settingKeys() {
    return keys;
}

Result<Settings> withSetting(Settings settings, std::string_view key, std::string_view value) {
    const auto set = [&](double least, double most, auto assign) -> Result<Settings> {
        const auto read = number(key, value, least, most);
        if (!read) return tl::unexpected(read.error());
        assign(*read);
        return settings;
    };
    if (key == keys[0]) return set(1, 60, [&](double v) { settings.jumpCelsius = v; });
    if (key == keys[1]) return set(5, 500, [&](double v) { settings.jumpHectopascals = v; });
    if (key == keys[2]) return set(1, 365, [&](double v) { settings.idleDays = static_cast<int>(v); });
    if (key == keys[3])
        return set(100, 100'000, [&](double v) { settings.electrodeArcs = static_cast<std::uint32_t>(v); });
    if (key == keys[4]) return set(1, 9, [&](double v) { settings.calibrationRuns = static_cast<int>(v); });
    if (key == keys[5]) return set(1, 365, [&](double v) { settings.orderWithinDays = v; });
    if (key == keys[7])
        return set(1, 10, [&](double v) { settings.selfCalibratingTimes = static_cast<int>(v); });
    if (key == keys[6]) {
        for (const auto kind : {RibbonKind::Flat, RibbonKind::WebType, RibbonKind::RibbonisedTubes}) {
            if (word(kind) != value) continue;
            settings.ribbon = kind;
            return settings;
        }
        return fail(ProblemCode::BadInput, "\"" + std::string(value) + "\" is none of flat, web, ribbonised",
                    std::string(key));
    }
    return settings;
}

std::string valueOf(const Settings& settings, std::string_view key) {
    if (key == keys[0]) return plain(settings.jumpCelsius);
    if (key == keys[1]) return plain(settings.jumpHectopascals);
    if (key == keys[2]) return std::to_string(settings.idleDays);
    if (key == keys[3]) return settings.electrodeArcs ? std::to_string(*settings.electrodeArcs) : "";
    if (key == keys[4]) return std::to_string(settings.calibrationRuns);
    if (key == keys[5]) return plain(settings.orderWithinDays);
    if (key == keys[6]) return std::string(word(settings.ribbon));
    if (key == keys[7]) return std::to_string(settings.selfCalibratingTimes);
    return {};
}

Effect effectOf(const CareRecord& record) {
    if (const auto outcome = record.fields.find(std::string(field::outcome));
        outcome != record.fields.end() && outcome->second == "not_reached")
        return Effect::NotReached;
    if (record.action != action::arcCalibration) return Effect::Reached;
    const auto result = resultOf(record);
    if (!result) return saysBad(lower(record.detail)) ? Effect::NotReached : Effect::Unproved;
    return result->power == Adequacy::Adequate && result->position == Adequacy::Adequate ? Effect::Reached
                                                                                         : Effect::NotReached;
}

std::optional<CalibrationResult> resultOf(const CareRecord& record) {
    if (record.calibration || record.action != action::arcCalibration) return record.calibration;
    const std::string said = lower(record.detail);
    if (saysBad(said) || said.find("power") == std::string::npos ||
        said.find("position") == std::string::npos || said.find("adequate") == std::string::npos)
        return std::nullopt;
    CalibrationResult result{Adequacy::Adequate, Adequacy::Adequate, {}, 0, 1};
    result.fibreType = family(record.detail);
    result.fibreCount = numberBefore(said, " fibre").value_or(0);
    result.runs = numberBefore(said, " run").value_or(1);
    if (result.fibreType.empty() || result.fibreCount == 0) return std::nullopt;
    return result;
}

bool covers(const CareRecord& record, std::string_view wanted) {
    if (record.action == wanted) return true;
    const auto covered = record.fields.find(std::string(field::covers));
    if (covered == record.fields.end()) return false;
    std::string_view rest = covered->second;
    while (!rest.empty()) {
        const auto comma = rest.find(',');
        if (rest.substr(0, comma) == wanted) return true;
        if (comma == std::string_view::npos) break;
        rest.remove_prefix(comma + 1);
    }
    return false;
}

SpliceUse useOf(const HistoryArc& arc, const SplicerHistory& history) {
    SpliceUse use;
    if (arc.mode < history.modes.size()) use.mode = history.modes[arc.mode];
    use.channels = arc.channels;
    if (arc.closure && *arc.closure < history.closures.size())
        for (const Cable& cable : history.closures[*arc.closure].cables)
            use.fibreTypes.push_back(cable.fibreType);
    return use;
}

std::vector<CalibrationFault> faultsOf(const CalibrationResult& result, const Splicer& splicer,
                                       const SpliceUse& use) {
    std::vector<CalibrationFault> faults;
    if (result.power != Adequacy::Adequate) faults.push_back(CalibrationFault::PowerNotAdequate);
    if (result.position != Adequacy::Adequate) faults.push_back(CalibrationFault::PositionNotAdequate);
    const std::string type = family(result.fibreType);
    if (splicer.kind == SplicerKind::SingleFibre) {
        if (type != "G.652") faults.push_back(CalibrationFault::WrongFibreType);
        if (result.fibreCount != 1) faults.push_back(CalibrationFault::WrongFibreCount);
        return faults;
    }
    // A label that names no fibre family cannot contradict the fibre that was used.
    const std::set<std::string> mode = families(use.mode);
    std::set<std::string> cables;
    for (const std::string& named : use.fibreTypes) cables.merge(families(named));
    const auto contradicts = [&](const std::set<std::string>& named) {
        return !named.empty() && !named.contains(type);
    };
    if (result.fibreType.empty() || contradicts(mode) || contradicts(cables))
        faults.push_back(CalibrationFault::WrongFibreType);
    const bool countFits = use.channels > 0 ? result.fibreCount == use.channels
                                            : result.fibreCount >= 1 && result.fibreCount <= splicer.grooves;
    if (!countFits) faults.push_back(CalibrationFault::WrongFibreCount);
    return faults;
}

std::string madeFor(const CalibrationResult& result) {
    return counted(static_cast<std::uint64_t>(std::max(0, result.fibreCount)), "fibre", "fibres") + " of " +
           result.fibreType;
}

bool counts(const CareRecord& record, const Splicer& splicer) {
    if (record.action != action::arcCalibration || effectOf(record) == Effect::NotReached) return false;
    const auto result = resultOf(record);
    return !result || faultsOf(*result, splicer, {}).empty();
}

const CareRecord* lastCalibration(const Tool& tool, std::span<const CareRecord> records) {
    const Splicer* splicer = asSplicer(tool);
    const CareRecord* last = nullptr;
    if (!splicer) return last;
    for (const CareRecord& record : records)
        if (record.tool == tool.id && counts(record, *splicer) && (!last || last->at <= record.at))
            last = &record;
    return last;
}

Settings limitsFor(const Splicer& splicer, Settings settings) {
    if (splicer.arcControl == ArcControl::Manual) return settings;
    settings.jumpCelsius *= settings.selfCalibratingTimes;
    settings.jumpHectopascals *= settings.selfCalibratingTimes;
    settings.idleDays *= settings.selfCalibratingTimes;
    return settings;
}

std::string_view sentence(CalibrationFault fault) {
    switch (fault) {
        case CalibrationFault::PowerNotAdequate:
            return "arc power was not adequate";
        case CalibrationFault::PositionNotAdequate:
            return "arc position was not adequate";
        case CalibrationFault::WrongFibreType:
            return "the fibre was not of the type that counts";
        case CalibrationFault::WrongFibreCount:
            return "the number of fibres was not the one that counts";
    }
    return "";
}

}  // namespace arc::care
