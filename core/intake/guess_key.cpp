// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/intake/guess_key.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

#include "core/units/instant.hpp"

namespace arc {
namespace {

using Words = std::vector<std::string>;
using Rows = std::span<const std::vector<std::string>>;

/// Words a crew or a machine may head a column with: English, German, French, Spanish. Our own collection
/// (common practice); the better one stands first.
struct Synonyms {
    const char* ours;
    std::vector<const char*> theirs;
};
const std::vector<Synonyms>& synonyms(FileKind kind) {
    static const std::vector<Synonyms> splices{
        {"time",
         {"time", "date time", "datetime", "timestamp", "date and time", "splice time", "splice date", "date",
          "when", "datum zeit", "zeitstempel", "zeitpunkt", "datum", "fecha hora", "fecha", "date heure",
          "horodatage", "zeit"}},
        {"splicer",
         {"splicer", "splicer id", "splicer no", "splicer serial", "machine", "machine id", "unit", "device",
          "serial number", "serial no", "serial", "instrument", "gerat", "spleissgerat", "seriennummer",
          "soudeuse", "fusionadora", "equipo"}},
        {"loss_db",
         {"loss db", "loss", "estimated loss", "est loss", "splice loss", "loss mdb", "estimated loss db",
          "est loss db", "splice loss db", "attenuation", "dampfung", "verlust", "spleissdampfung", "perte",
          "affaiblissement", "attenuation estimee", "perdida", "atenuacion"}},
        {"channel",
         {"channel", "groove", "groove no", "ch", "channel no", "fibre no in ribbon", "kanal", "nut",
          "canal"}},
        {"channels",
         {"channels", "fibres", "fibers", "fibre count", "fiber count", "no of fibres", "number of fibres",
          "faserzahl", "nb fibres", "fibras"}},
        {"arc_count",
         {"arc count", "arc counter", "arcs", "arc no", "total arc count", "total arcs", "arc",
          "lichtbogenzahler", "zahler", "compteur d arcs", "compteur", "contador de arcos", "contador"}},
        {"job",
         {"job", "job no", "project", "work order", "order", "site", "auftrag", "projekt", "chantier",
          "projet", "obra", "proyecto"}},
        {"closure",
         {"closure", "closure id", "closure no", "joint", "enclosure", "location", "muffe", "muffen nr",
          "boitier", "caja", "caja de empalme"}},
        {"fibre_a",
         {"fibre a", "fiber a", "fibre", "fiber", "fibre no", "fiber no", "fibre left", "fiber left",
          "left fibre", "left fiber", "faser a", "faser", "faser links", "fibre gauche", "fibra a", "fibra"}},
        {"fibre_b",
         {"fibre b", "fiber b", "fibre right", "fiber right", "right fibre", "right fiber", "faser b",
          "faser rechts", "fibre droite", "fibra b"}},
        {"attempt", {"attempt", "try", "attempt no", "versuch", "essai", "intento"}},
        {"mode",
         {"mode", "splice mode", "splice program", "program", "programme", "fibre type", "fiber type",
          "modus", "spleissprogramm", "programm", "programa", "modo"}},
        {"cleave_left_deg",
         {"cleave left deg", "cleave left", "left cleave", "cleave angle left", "left cleave angle",
          "angle left", "left angle", "cleave angle l", "angle l", "l angle", "winkel links",
          "bruchwinkel links", "winkel l", "angle gauche", "angulo izquierdo", "angulo izq"}},
        {"cleave_right_deg",
         {"cleave right deg", "cleave right", "right cleave", "cleave angle right", "right cleave angle",
          "angle right", "right angle", "cleave angle r", "angle r", "r angle", "winkel rechts",
          "bruchwinkel rechts", "winkel r", "angle droit", "angulo derecho", "angulo der"}},
        {"cleaver", {"cleaver", "cleaver id", "trenngerat", "cliveuse", "cortadora"}},
        {"operator",
         {"operator", "technician", "user", "spliced by", "by", "name", "bediener", "techniker", "operateur",
          "technicien", "operador", "tecnico"}},
        {"temperature_c",
         {"temperature c", "temperature", "temp", "temp c", "ambient temperature", "temperatur",
          "temperatura"}},
        {"humidity_pct",
         {"humidity pct", "humidity", "rel humidity", "relative humidity", "rh", "feuchte", "luftfeuchte",
          "humidite", "humedad"}},
        {"pressure_hpa",
         {"pressure hpa", "pressure", "air pressure", "pressure mbar", "luftdruck", "druck", "pression",
          "presion"}},
    };
    static const std::vector<Synonyms> events{
        {"time",
         {"time", "date time", "datetime", "timestamp", "date", "when", "datum", "zeitpunkt", "zeit",
          "fecha"}},
        {"equipment",
         {"equipment", "tool", "device", "machine", "unit", "splicer", "serial number", "gerat", "werkzeug",
          "outil", "equipo", "herramienta"}},
        {"action",
         {"action", "care", "event", "maintenance", "what", "work done", "kind", "massnahme", "wartung",
          "ereignis", "accion", "entretien"}},
        {"detail",
         {"detail", "details", "remark", "remarks", "note", "notes", "comment", "bemerkung", "remarque",
          "observacion"}},
        {"operator",
         {"operator", "technician", "by", "done by", "name", "bediener", "technicien", "tecnico"}},
        {"arc_count", {"arc count", "arc counter", "arcs", "zahler"}},
    };
    static const std::vector<Synonyms> measured{
        {"fibre",
         {"fibre", "fiber", "fibre no", "fiber no", "fibre number", "fiber number", "faser", "faser nr",
          "fibra"}},
        {"closure", {"closure", "closure id", "joint", "event", "location", "muffe", "boitier", "caja"}},
        {"wavelength_nm",
         {"wavelength nm", "wavelength", "lambda", "nm", "wellenlange", "longueur d onde",
          "longitud de onda"}},
        {"time",
         {"time", "date time", "datetime", "timestamp", "date", "measured at", "when", "datum", "zeitpunkt",
          "fecha"}},
        {"loss_a_to_b_db",
         {"loss a to b db", "loss a to b", "a to b", "loss a b", "a b", "loss ab", "ab", "a to b db",
          "loss from a", "dampfung a b", "perte a b", "perdida a b"}},
        {"loss_b_to_a_db",
         {"loss b to a db", "loss b to a", "b to a", "loss b a", "b a", "loss ba", "ba", "b to a db",
          "loss from b", "dampfung b a", "perte b a", "perdida b a"}},
        {"instrument", {"instrument", "instrument serial", "tester", "messgerat", "equipo", "appareil"}},
        {"note", {"note", "notes", "remark", "comment", "bemerkung", "remarque", "observacion"}},
        {"job", {"job", "project", "work order", "auftrag", "projekt", "projet", "proyecto"}},
    };
    switch (kind) {
        case FileKind::Events:
            return events;
        case FileKind::MeasuredLosses:
            return measured;
        case FileKind::SpliceLog:
            break;
    }
    return splices;
}

/// "Est. Loss [dB]" → "est loss db": lower case, accents off, all else a single space.
std::string plain(std::string_view text) {
    static constexpr std::pair<std::string_view, std::string_view> letters[] = {
        {"ä", "a"}, {"Ä", "a"}, {"à", "a"}, {"â", "a"}, {"á", "a"}, {"Á", "a"},  {"ö", "o"},     {"Ö", "o"},
        {"ó", "o"}, {"ô", "o"}, {"ü", "u"}, {"Ü", "u"}, {"ú", "u"}, {"ß", "ss"}, {"é", "e"},     {"É", "e"},
        {"è", "e"}, {"ê", "e"}, {"í", "i"}, {"î", "i"}, {"ç", "c"}, {"ñ", "n"},  {"λ", "lambda"}};
    std::string out;
    while (!text.empty()) {
        const auto known = std::find_if(std::begin(letters), std::end(letters),
                                        [&](const auto& pair) { return text.starts_with(pair.first); });
        if (known != std::end(letters)) {
            out += known->second;
            text.remove_prefix(known->first.size());
            continue;
        }
        const char c = text.front();
        text.remove_prefix(1);
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
            out += c;
        else if (c >= 'A' && c <= 'Z')
            out += static_cast<char>(c - 'A' + 'a');
        else if (!out.empty() && out.back() != ' ')
            out += ' ';
    }
    while (!out.empty() && out.back() == ' ') out.pop_back();
    return out;
}

/// "est loss db" → "est loss": the unit at the end does not tell columns apart.
std::string withoutUnit(std::string name) {
    for (const std::string_view unit :
         {" mdb", " db", " deg", " degrees", " c", " pct", " percent", " hpa", " mbar", " nm", " nr", " no"})
        if (name.size() > unit.size() && name.ends_with(unit))
            return name.substr(0, name.size() - unit.size());
    return name;
}

std::size_t placeOf(const Words& names, const std::string& wanted) {
    return static_cast<std::size_t>(std::find(names.begin(), names.end(), wanted) - names.begin());
}

// --- one column per channel --------------------------------------------------------------------------------

struct Numbered {
    std::string stem;
    int number = 0;
};
/// "loss 7 db" → "loss db", 7; empty without exactly one number of 1-16.
std::optional<Numbered> numbered(const std::string& name) {
    const auto from = name.find_first_of("0123456789");
    if (from == std::string::npos) return std::nullopt;
    auto end = name.find_first_not_of("0123456789", from);
    if (end == std::string::npos) end = name.size();
    if (name.find_first_of("0123456789", end) != std::string::npos || end - from > 2) return std::nullopt;
    Numbered found{name.substr(0, from) + "#" + name.substr(end), std::stoi(name.substr(from, end - from))};
    if (found.number < 1 || found.number > mostChannels) return std::nullopt;
    return found;
}

bool speaksOf(const std::string& stem, std::initializer_list<std::string_view> words) {
    return std::any_of(words.begin(), words.end(),
                       [&stem](auto word) { return stem.find(word) != std::string::npos; });
}

/// The largest family of columns that differ in their number alone, 1 upwards, and may be losses.
std::map<int, std::string> wideColumns(const Words& names, const Words& header) {
    std::map<std::string, std::map<int, std::string>> families;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (const auto one = numbered(names[i]))
            families[one->stem].emplace(one->number, columnName(header[i]));
    std::map<int, std::string> best;
    int bestWorth = 0;
    for (const auto& [stem, family] : families) {
        if (family.size() < 2 || family.begin()->first != 1) continue;
        if (speaksOf(stem, {"angle", "cleave", "winkel", "temp", "angulo"})) continue;
        const bool loss = speaksOf(stem, {"loss", "db", "dampfung", "verlust", "perte", "perdida"});
        const int worth = static_cast<int>(family.size()) + (loss ? mostChannels : 0);
        if (worth > bestWorth) {
            best = family;
            bestWorth = worth;
        }
    }
    return best;
}

// --- what the rows look like -------------------------------------------------------------------------------

std::vector<std::string_view> cellsOf(const std::string& theirs, std::span<const std::string> header,
                                      Rows rows) {
    std::vector<std::string_view> cells;
    const auto at = std::find_if(header.begin(), header.end(),
                                 [&](const std::string& name) { return columnName(name) == theirs; });
    if (theirs.empty() || at == header.end()) return cells;
    const auto place = static_cast<std::size_t>(at - header.begin());
    for (const auto& row : rows)
        if (row.size() == header.size() && !row[place].empty()) cells.emplace_back(row[place]);
    return cells;
}

struct DateParts {
    std::array<int, 3> number{};
    std::array<std::size_t, 3> digits{};
};
std::optional<DateParts> dateParts(std::string_view text) {
    DateParts parts;
    for (std::size_t k = 0; k < 3; ++k) {
        while (!text.empty() && text.front() >= '0' && text.front() <= '9' && parts.digits[k] < 4) {
            parts.number[k] = parts.number[k] * 10 + (text.front() - '0');
            ++parts.digits[k];
            text.remove_prefix(1);
        }
        if (parts.digits[k] == 0) return std::nullopt;
        if (k == 2) break;
        if (text.empty() || (text.front() != '.' && text.front() != '/' && text.front() != '-'))
            return std::nullopt;
        text.remove_prefix(1);
    }
    return parts;
}

struct DatesSeen {
    bool iso = false, yearFirst = false, yearLast = false, dayFirst = false, monthFirst = false;
};
DatesSeen lookAtDates(const std::vector<std::string_view>& cells) {
    DatesSeen seen;
    for (const auto cell : cells) {
        const auto parts = dateParts(cell);
        if (!parts) continue;
        if (parts->digits[0] == 4) {
            (cell[4] == '-' && parts->digits[1] == 2 ? seen.iso : seen.yearFirst) = true;
        } else if (parts->digits[2] == 4) {
            seen.yearLast = true;
            constexpr int months = 12;
            if (parts->number[0] > months) seen.dayFirst = true;
            if (parts->number[1] > months) seen.monthFirst = true;
        }
    }
    return seen;
}

bool endsWithOffset(std::string_view text) {
    if (text.empty()) return false;
    if (text.back() == 'Z' || text.back() == 'z') return true;
    const auto sign = text.find_last_of("+-");
    return sign != std::string_view::npos && sign > 10 && text.size() - sign >= 3 &&
           text.find(':') != std::string_view::npos && text.find(':') < sign;
}

struct LossesSeen {
    std::size_t number = 0, points = 0, commas = 0, tall = 0;
};
LossesSeen lookAtLosses(const ColumnKey& key, std::span<const std::string> header, Rows rows) {
    LossesSeen seen;
    const auto look = [&](const std::string& theirs) {
        for (const auto cell : cellsOf(theirs, header, rows)) {
            ++seen.number;
            const bool point = cell.find('.') != std::string_view::npos;
            const bool comma = cell.find(',') != std::string_view::npos;
            seen.points += point ? 1 : 0;
            seen.commas += comma ? 1 : 0;
            // No splicer shows losses of 2 dB and more row after row.
            if (!point && !comma && (cell.size() > 1 || cell.front() >= '2')) ++seen.tall;
        }
    };
    for (const auto& [ours, theirs] : key.columns)
        if (ours.starts_with("loss_")) look(theirs);
    for (const auto& [channel, theirs] : key.wide) look(theirs);
    return seen;
}

}  // namespace

bool KeyGuess::asks(OpenQuestion question) const {
    return std::find(open.begin(), open.end(), question) != open.end();
}

std::vector<OpenQuestion> openQuestions(const ColumnKey& key, std::span<const std::string> header,
                                        std::span<const std::vector<std::string>> rows) {
    std::vector<OpenQuestion> open;
    const auto found = key.columns.find("time");
    const std::string theirs = found == key.columns.end() ? "time" : found->second;
    const auto cells = cellsOf(theirs, header, rows);
    const DatesSeen dates = lookAtDates(cells);
    if (dates.yearLast && key.dates == DateForm::Iso) open.push_back(OpenQuestion::DayOrMonth);
    const auto& timed = key.timeOfDay.empty() ? cells : cellsOf(key.timeOfDay, header, rows);
    const bool all = std::all_of(timed.begin(), timed.end(), endsWithOffset);
    if (!timed.empty() && !all && key.offset.empty()) open.push_back(OpenQuestion::Offset);
    const LossesSeen losses = lookAtLosses(key, header, rows);
    if (losses.number > 0 && losses.tall * 2 > losses.number && key.lossUnit == LossUnit::Decibel)
        open.push_back(OpenQuestion::LossUnit);
    return open;
}

KeyGuess guessKey(FileKind kind, std::span<const std::string> header,
                  std::span<const std::vector<std::string>> rows, char separator) {
    KeyGuess guess;
    ColumnKey& key = guess.key;
    key.kind = kind;
    key.separator = separator;
    const Words written(header.begin(), header.end());
    Words names, bare;
    for (const auto& name : written) {
        key.header.push_back(columnName(name));
        names.push_back(plain(name));
        bare.push_back(withoutUnit(names.back()));
    }
    std::vector<char> taken(header.size(), 0);
    const auto take = [&](const char* ours, std::size_t place) {
        taken[place] = 1;
        key.columns[ours] = columnName(written[place]);
    };
    // A date and a time of day in columns of their own.
    for (const char* date : {"date", "datum", "fecha", "splice date"})
        for (const char* clock : {"time", "time of day", "zeit", "uhrzeit", "hora", "heure", "splice time"}) {
            const auto d = placeOf(names, date), c = placeOf(names, clock);
            if (d == names.size() || c == names.size() || !key.timeOfDay.empty()) continue;
            take("time", d);
            taken[c] = 1;
            key.timeOfDay = columnName(written[c]);
        }
    if (kind == FileKind::SpliceLog) {
        key.wide = wideColumns(names, written);
        for (const auto& [channel, theirs] : key.wide) taken[placeOf(key.header, theirs)] = 1;
    }
    // The best synonym of each of ours that is still free; names with their unit before names without.
    for (const Words* look : {&names, &bare}) {
        for (const auto& [ours, theirs] : synonyms(kind)) {
            if (key.columns.contains(ours)) continue;
            if (!key.wide.empty() &&
                (std::string_view(ours) == "loss_db" || std::string_view(ours) == "channel"))
                continue;
            for (const char* word : theirs) {
                const auto place = placeOf(*look, word);
                if (place == look->size() || taken[place]) continue;
                take(ours, place);
                break;
            }
        }
    }
    const LossesSeen losses = lookAtLosses(key, header, rows);
    if (losses.commas > 0 && losses.points == 0) key.decimal = DecimalMark::Comma;
    if (losses.points > 0 && losses.commas == 0) key.decimal = DecimalMark::Point;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i].find("mdb") != std::string::npos && taken[i]) key.lossUnit = LossUnit::Millidecibel;
    const DatesSeen dates =
        lookAtDates(cellsOf(key.columns.contains("time") ? key.columns["time"] : "", header, rows));
    if (dates.yearFirst && !dates.iso) key.dates = DateForm::YearMonthDay;
    if (dates.yearLast && dates.dayFirst != dates.monthFirst)
        key.dates = dates.dayFirst ? DateForm::DayMonthYear : DateForm::MonthDayYear;
    guess.open = openQuestions(key, header, rows);
    return guess;
}

}  // namespace arc
