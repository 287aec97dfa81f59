// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/record.hpp"

#include <algorithm>

#include "core/optics/splice_loss.hpp"

namespace arc::closeout {

std::optional<double> Measurement::twoWayDb() const {
    const auto measured = optics::measuredLoss(aToB, bToA);
    if (!measured || measured->ways == optics::Ways::One) return std::nullopt;
    return measured->db;
}

std::string_view word(RecordState state) {
    return state == RecordState::Final ? "final" : "draft";
}

std::string_view word(RecordVerdict verdict) {
    switch (verdict) {
        case RecordVerdict::Accepted:
            return "accepted";
        case RecordVerdict::AcceptedWithExceptions:
            return "accepted_with_exceptions";
        case RecordVerdict::Open:
            return "open";
        case RecordVerdict::NotAccepted:
            return "not_accepted";
    }
    return "";
}

std::string_view title(RecordVerdict verdict) {
    switch (verdict) {
        case RecordVerdict::Accepted:
            return "Accepted";
        case RecordVerdict::AcceptedWithExceptions:
            return "Accepted with exceptions";
        case RecordVerdict::Open:
            return "Open";
        case RecordVerdict::NotAccepted:
            return "Not accepted";
    }
    return "";
}

std::string_view word(SpliceVerdict verdict) {
    switch (verdict) {
        case SpliceVerdict::Accepted:
            return "accepted";
        case SpliceVerdict::OverLimit:
            return "over_limit";
        case SpliceVerdict::OverCeiling:
            return "over_ceiling";
    }
    return "";
}

std::string_view title(SpliceVerdict verdict) {
    switch (verdict) {
        case SpliceVerdict::Accepted:
            return "Accepted";
        case SpliceVerdict::OverLimit:
            return "Over limit";
        case SpliceVerdict::OverCeiling:
            return "Over ceiling";
    }
    return "";
}

std::string_view word(JudgedBy basis) {
    return basis == JudgedBy::TwoWayMean ? "two_way_mean" : "estimate";
}

std::string words(const FibreEnd& end) {
    if (!end.number || !end.place) return end.name;
    std::string text =
        std::to_string(*end.number) + " " + std::string(arc::word(end.place->fibreLook.colour));
    if (end.place->fibreLook.tracerMarks > 0) text += " with tracer";
    if (end.place->unit > 1) text.append(", unit ").append(std::to_string(end.place->unit));
    return text;
}

std::size_t openExceptions(const Record& record) {
    return static_cast<std::size_t>(
        std::ranges::count_if(record.exceptions, [](const Exception& e) { return !isDecided(e); }));
}

std::size_t spliceCount(const Record& record) {
    std::size_t count = 0;
    for (const ClosureSection& section : record.closures) count += section.splices.size();
    return count;
}

}  // namespace arc::closeout
