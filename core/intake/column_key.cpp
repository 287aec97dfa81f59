// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/column_key.hpp"

#include <algorithm>
#include <iterator>

namespace arc {
namespace {

constexpr OurColumn spliceColumns[] = {
    {"time", "date and time", Need::Needed},
    {"splicer", "splicer", Need::Needed},
    {"loss_db", "estimated loss", Need::Needed},
    {"channel", "groove number", Need::Free},
    {"channels", "fibres in the arc", Need::Free},
    {"arc_count", "arc counter of the splicer", Need::Free},
    {"job", "job", Need::Free},
    {"closure", "closure", Need::Free},
    {"fibre_a", "fibre on side A", Need::Free},
    {"fibre_b", "fibre on side B", Need::Free},
    {"attempt", "attempt", Need::Free},
    {"mode", "splice mode", Need::Free},
    {"cleave_left_deg", "cleave angle left, degrees", Need::Free},
    {"cleave_right_deg", "cleave angle right, degrees", Need::Free},
    {"cleaver", "cleaver", Need::Free},
    {"operator", "who spliced", Need::Free},
    {"temperature_c", "temperature, °C", Need::Free},
    {"humidity_pct", "humidity, %", Need::Free},
    {"pressure_hpa", "pressure, hPa", Need::Free},
};
constexpr OurColumn eventColumns[] = {
    {"time", "date and time", Need::Needed},   {"equipment", "tool", Need::Needed},
    {"action", "what was done", Need::Needed}, {"detail", "detail", Need::Free},
    {"operator", "who did it", Need::Free},    {"arc_count", "arc counter of the splicer", Need::Free},
};
constexpr OurColumn measuredColumns[] = {
    {"fibre", "fibre", Need::Needed},
    {"closure", "closure", Need::Needed},
    {"wavelength_nm", "wavelength, nm", Need::Needed},
    {"time", "date and time", Need::Needed},
    {"loss_a_to_b_db", "loss from A to B", Need::Free},
    {"loss_b_to_a_db", "loss from B to A", Need::Free},
    {"instrument", "instrument", Need::Free},
    {"note", "note", Need::Free},
    {"job", "job", Need::Free},
};

bool has(std::span<const std::string> header, const std::string& name) {
    return std::find(header.begin(), header.end(), name) != header.end();
}

}  // namespace

std::string columnName(std::string_view text) {
    const auto from = text.find_first_not_of(" \t");
    if (from == std::string_view::npos) return {};
    text = text.substr(from, text.find_last_not_of(" \t") - from + 1);
    std::string name(text);
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return name;
}

std::span<const OurColumn> ourColumns(FileKind kind) {
    switch (kind) {
        case FileKind::Events:
            return eventColumns;
        case FileKind::MeasuredLosses:
            return measuredColumns;
        case FileKind::SpliceLog:
            break;
    }
    return spliceColumns;
}

bool isOurColumn(std::string_view name) {
    for (const auto kind : {FileKind::SpliceLog, FileKind::Events, FileKind::MeasuredLosses})
        for (const auto& column : ourColumns(kind))
            if (column.name == name) return true;
    return false;
}

KeyFit fit(const ColumnKey& key, std::span<const std::string> header) {
    if (!key.header.empty() && std::ranges::equal(key.header, header)) return KeyFit::SameHeader;
    std::size_t named = 0;
    for (const auto& [ours, theirs] : key.columns) {
        if (!has(header, theirs)) return KeyFit::No;
        ++named;
    }
    for (const auto& [channel, theirs] : key.wide) {
        if (!has(header, theirs)) return KeyFit::No;
        ++named;
    }
    if (!key.timeOfDay.empty() && !has(header, key.timeOfDay)) return KeyFit::No;
    return named > 0 ? KeyFit::AllThere : KeyFit::No;
}

const ColumnKey* bestKey(std::span<const ColumnKey> keys, FileKind kind,
                         std::span<const std::string> header) {
    const ColumnKey* best = nullptr;
    KeyFit bestFit = KeyFit::No;
    for (const auto& key : keys) {
        if (key.kind != kind) continue;
        if (const auto how = fit(key, header); how > bestFit) {
            best = &key;
            bestFit = how;
        }
    }
    return best;
}

}  // namespace arc
