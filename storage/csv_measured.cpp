// SPDX-License-Identifier: GPL-3.0-or-later
// Losses measured from the ends of the span: one row per fibre, closure and wavelength, either direction or
// both.
#include <algorithm>

#include "storage/intake_parts.hpp"

namespace arc::storage {
namespace {

const std::vector<const char*> columnNames{"fibre",      "closure",        "wavelength_nm",
                                           "time",       "loss_a_to_b_db", "loss_b_to_a_db",
                                           "instrument", "note",           "job"};
constexpr std::size_t neededColumns = 4;
constexpr std::size_t recordsPerJournalRow = 1'000;

tl::expected<std::optional<Loss>, RowFault> readLoss(const IntakeFile& file, int place, const char* column) {
    const std::string_view text = file.field(place);
    if (text.empty()) return std::optional<Loss>();
    auto value = fixedPoint(text, 3, DecimalMark::Point);
    if (!value && file.mark == DecimalMark::Comma) value = fixedPoint(text, 3, DecimalMark::Comma);
    if (!value) return tl::unexpected(RowFault{column, "\"" + showable(text, 60) + "\" is not a number"});
    return std::optional(
        Loss{static_cast<std::int32_t>(std::clamp<std::int64_t>(*value, -2'000'000'000, 2'000'000'000))});
}

tl::expected<MeasuredLoss, RowFault> readMeasured(IntakeFile& file, const std::vector<int>& places) {
    const auto field = [&](std::size_t column) { return std::string(file.field(places[column])); };
    MeasuredLoss m;
    m.fibre = field(0);
    if (m.fibre.empty()) return tl::unexpected(RowFault{"fibre", "the fibre is missing"});
    const auto wavelength = wholeNumber(field(2));
    if (!wavelength || *wavelength > 10'000)
        return tl::unexpected(
            RowFault{"wavelength_nm", "the wavelength is missing or no whole number of nanometres"});
    m.wavelengthNm = static_cast<int>(*wavelength);
    const auto at = parseInstant(field(3));
    if (!at) return tl::unexpected(RowFault{"time", at.error().what});
    m.at = *at;
    const auto aToB = readLoss(file, places[4], columnNames[4]);
    if (!aToB) return tl::unexpected(aToB.error());
    const auto bToA = readLoss(file, places[5], columnNames[5]);
    if (!bToA) return tl::unexpected(bToA.error());
    m.aToB = *aToB;
    m.bToA = *bToA;
    m.instrument = field(6);
    m.note = field(7);
    const std::string closure = field(1);
    if (closure.empty()) return tl::unexpected(RowFault{"closure", "the closure is missing"});
    const auto found = file.kit.knownClosure(field(8), closure);
    if (!found) return tl::unexpected(found.error());
    m.job = found->job;
    m.closure = found->closure;
    m.id = EntryId{namedUuid("measured/" + toText(m.closure->uuid) + "/" + m.fibre + "/" +
                             std::to_string(m.wavelengthNm) + "/" + std::to_string(m.at.ms) + "/" +
                             m.instrument)};
    if (auto valid = validate(m); !valid)
        return tl::unexpected(RowFault{valid.error().where, valid.error().what});
    return m;
}

enum class Standing { New, Known, Otherwise };
Standing standingOf(Connection& connection, const RecordRow& row) {
    Query q = connection.query("SELECT body FROM record WHERE id = ? AND kind = 'measured_loss'");
    q.with(row.id);
    Standing standing = Standing::New;
    while (q.step()) {
        if (q.text(0) == row.body) return Standing::Known;
        standing = Standing::Otherwise;
    }
    return standing;
}

}  // namespace

void takeMeasured(IntakeFile& file) {
    const auto places = file.place(columnNames, neededColumns);
    Batch batch;
    const auto flush = [&] {
        const auto number = batch.records.size();
        file.write(batch, "measured_losses",
                   "Imported " + grouped(number) +
                       (number == 1 ? " measured loss from " : " measured losses from ") + file.name());
    };
    while (file.nextRow()) {
        const auto measured = readMeasured(file, places);
        if (!measured) {
            file.setAside(measured.error());
            continue;
        }
        RecordRow row = toRecord(*measured);
        Standing standing = standingOf(file.connection, row);
        for (const auto& waiting : batch.records)
            if (waiting.row.id == row.id)
                standing = waiting.row.body == row.body ? Standing::Known : Standing::Otherwise;
        if (standing == Standing::Known) {
            ++file.count.known;
        } else if (standing == Standing::Otherwise) {
            file.setAside(
                {"loss_a_to_b_db", "this measurement is there with other values; correct it there"});
        } else {
            batch.records.push_back({std::move(row), {}});
            ++file.count.added;
            if (batch.records.size() >= recordsPerJournalRow) flush();
        }
    }
    flush();
}

}  // namespace arc::storage
