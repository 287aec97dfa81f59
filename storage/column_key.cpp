// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/column_key.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <utility>

#include "storage/plain_file.hpp"
#include "storage/strict_json.hpp"

namespace arc::storage {
namespace {

using Json = nlohmann::json;

constexpr std::uint64_t keyLimit = 1 << 20;

const std::vector<std::string> decimalColumns{"loss_db",        "cleave_left_deg", "cleave_right_deg",
                                              "temperature_c",  "humidity_pct",    "pressure_hpa",
                                              "loss_a_to_b_db", "loss_b_to_a_db"};

bool isOneOf(const std::vector<std::string>& list, const std::string& word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

struct BadKey {
    std::string what;
};

std::string textOf(const Json& json, const std::string& name) {
    if (!json.is_string()) throw BadKey{"\"" + name + "\" is not a text"};
    return json.get<std::string>();
}

template <class T>
T oneOf(const std::string& word, const std::string& name,
        const std::vector<std::pair<const char*, T>>& words) {
    std::string all;
    for (const auto& [spelling, value] : words) {
        if (word == spelling) return value;
        all += (all.empty() ? "" : ", ") + std::string(spelling);
    }
    throw BadKey{"\"" + name + "\" is \"" + showable(word, 40) + "\"; it may be: " + all};
}

const Json& objectOf(const Json& json, const std::string& name) {
    if (!json.is_object()) throw BadKey{"\"" + name + "\" is not an object"};
    return json;
}

void needOurs(const std::string& column) {
    if (!isOurColumn(column)) throw BadKey{"there is no column \"" + showable(column, 40) + "\" of ours"};
}

void readMember(ColumnKey& key, const std::string& name, const Json& value) {
    if (name == "name") {
        key.name = textOf(value, name);
    } else if (name == "kind") {
        key.kind = oneOf<FileKind>(textOf(value, name), name,
                                   {{"splices", FileKind::SpliceLog},
                                    {"events", FileKind::Events},
                                    {"measured", FileKind::MeasuredLosses}});
    } else if (name == "separator") {
        key.separator = oneOf<char>(textOf(value, name), name,
                                    {{",", ','}, {";", ';'}, {"\t", '\t'}, {"tab", '\t'}, {"|", '|'}});
    } else if (name == "decimal") {
        key.decimal = oneOf<DecimalMark>(textOf(value, name), name,
                                         {{".", DecimalMark::Point}, {",", DecimalMark::Comma}});
    } else if (name == "dates") {
        key.dates = oneOf<DateForm>(textOf(value, name), name,
                                    {{"iso", DateForm::Iso},
                                     {"day_month_year", DateForm::DayMonthYear},
                                     {"month_day_year", DateForm::MonthDayYear},
                                     {"year_month_day", DateForm::YearMonthDay}});
    } else if (name == "offset") {
        key.offset = textOf(value, name);
        if (!parseInstant("2031-03-03T07:00:00" + key.offset))
            throw BadKey{"\"offset\" is not like +01:00 or Z"};
    } else if (name == "loss_unit") {
        key.lossUnit = oneOf<LossUnit>(textOf(value, name), name,
                                       {{"dB", LossUnit::Decibel}, {"mdB", LossUnit::Millidecibel}});
    } else if (name == "time_of_day") {
        key.timeOfDay = columnName(textOf(value, name));
    } else if (name == "columns") {
        for (const auto& [ours, theirs] : objectOf(value, name).items()) {
            needOurs(ours);
            key.columns[ours] = columnName(textOf(theirs, ours));
        }
    } else if (name == "fixed") {
        for (const auto& [ours, text] : objectOf(value, name).items()) {
            needOurs(ours);
            key.fixed[ours] = textOf(text, ours);
        }
    } else if (name == "values") {
        for (const auto& [ours, words] : objectOf(value, name).items()) {
            needOurs(ours);
            for (const auto& [theirs, word] : objectOf(words, ours).items())
                key.values[ours][theirs] = textOf(word, theirs);
        }
    } else if (name == "wide") {
        for (const auto& [channel, theirs] : objectOf(value, name).items()) {
            const auto number = wholeNumber(channel);
            if (!number || *number < 1 || *number > mostChannels)
                throw BadKey{"\"wide\" names the channel \"" + showable(channel, 40) +
                             "\"; it may be 1 to 16"};
            key.wide[static_cast<int>(*number)] = columnName(textOf(theirs, channel));
        }
    } else if (name == "header") {
        if (!value.is_array()) throw BadKey{"\"header\" is not a list"};
        for (const auto& theirs : value) key.header.push_back(columnName(textOf(theirs, name)));
    } else {
        throw BadKey{"\"" + showable(name, 40) + "\" is not a member of a column key"};
    }
}

/// Takes up to `most` digits off the front.
std::optional<int> takeNumber(std::string_view& text, std::size_t most) {
    std::size_t n = 0;
    int value = 0;
    while (n < text.size() && n < most && text[n] >= '0' && text[n] <= '9')
        value = value * 10 + (text[n++] - '0');
    if (n == 0) return std::nullopt;
    text.remove_prefix(n);
    return value;
}

bool takeSeparator(std::string_view& text) {
    if (text.empty() || (text.front() != '.' && text.front() != '/' && text.front() != '-')) return false;
    text.remove_prefix(1);
    return true;
}

std::string twoDigits(int value) {
    return (value < 10 ? "0" : "") + std::to_string(value);
}

}  // namespace

Result<ColumnKey> readColumnKey(std::string_view text, const std::string& file) {
    const auto bad = [&file](std::string what) {
        return fail(ProblemCode::BadInput, "the column key cannot be used: " + std::move(what), file,
                    "Correct the key and try again");
    };
    const auto json = parseStrict(text, "column key");
    if (!json) return bad(json.error().what);
    if (!json->is_object()) return bad("it is not a JSON object");
    try {
        ColumnKey key;
        for (const auto& [name, value] : json->items()) readMember(key, name, value);
        for (const auto& [ours, words] : key.fixed)
            if (key.columns.contains(ours)) return bad("\"" + ours + "\" is in \"columns\" and in \"fixed\"");
        if (!key.wide.empty() && (key.columns.contains("loss_db") || key.columns.contains("channel")))
            return bad("\"wide\" and a column for loss_db or channel do not go together");
        return key;
    } catch (const BadKey& problem) {
        return bad(problem.what);
    }
}

Result<ColumnKey> loadColumnKey(const std::filesystem::path& file) {
    const auto text = readPlainFile(file, keyLimit);
    if (!text) return tl::unexpected(text.error());
    return readColumnKey(*text, file.string());
}

std::string toJson(const ColumnKey& key) {
    nlohmann::ordered_json json;
    json["name"] = key.name;
    json["kind"] = key.kind == FileKind::Events           ? "events"
                   : key.kind == FileKind::MeasuredLosses ? "measured"
                                                          : "splices";
    if (key.separator) json["separator"] = *key.separator == '\t' ? "tab" : std::string(1, *key.separator);
    if (key.decimal) json["decimal"] = *key.decimal == DecimalMark::Comma ? "," : ".";
    static constexpr const char* dates[] = {"iso", "day_month_year", "month_day_year", "year_month_day"};
    json["dates"] = dates[static_cast<std::size_t>(key.dates)];
    if (!key.offset.empty()) json["offset"] = key.offset;
    json["loss_unit"] = key.lossUnit == LossUnit::Millidecibel ? "mdB" : "dB";
    if (!key.columns.empty()) json["columns"] = key.columns;
    if (!key.timeOfDay.empty()) json["time_of_day"] = key.timeOfDay;
    if (!key.fixed.empty()) json["fixed"] = key.fixed;
    if (!key.values.empty()) json["values"] = key.values;
    for (const auto& [channel, theirs] : key.wide) json["wide"][std::to_string(channel)] = theirs;
    if (!key.header.empty()) json["header"] = key.header;
    return json.dump(1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

tl::expected<std::string, std::string> isoTime(std::string_view text, DateForm form,
                                               const std::string& offset) {
    const std::string whole(text);
    const auto withOffset = [&offset](std::string iso) {
        return parseInstant(iso) || offset.empty() ? iso : iso + offset;
    };
    if (form == DateForm::Iso) {
        const bool iso = text.size() >= 10 && text[4] == '-' && text[7] == '-';
        if (!iso && !text.empty())
            return tl::unexpected("the date \"" + showable(whole, 40) +
                                  "\" can be read in more than one way; say in the key under \"dates\" how");
        return withOffset(whole);
    }
    const auto bad = [&whole](const char* why) {
        return tl::unexpected("the time \"" + showable(whole, 40) + "\" cannot be read: " + why);
    };
    const auto a = takeNumber(text, 4);
    if (!a || !takeSeparator(text)) return bad("it does not begin with a date");
    const auto b = takeNumber(text, 4);
    if (!b || !takeSeparator(text)) return bad("it does not begin with a date");
    const auto c = takeNumber(text, 4);
    if (!c) return bad("it does not begin with a date");
    const int year = form == DateForm::YearMonthDay ? *a : *c;
    const int month = form == DateForm::DayMonthYear || form == DateForm::YearMonthDay ? *b : *a;
    const int day = form == DateForm::DayMonthYear ? *a : form == DateForm::MonthDayYear ? *b : *c;
    if (year < 1000) return bad("the year needs four digits");
    if (month > 12) return bad("there is no such month; are day and month the other way round?");
    while (!text.empty() && (text.front() == ' ' || text.front() == 'T' || text.front() == ','))
        text.remove_prefix(1);
    const std::string date = std::to_string(year) + "-" + twoDigits(month) + "-" + twoDigits(day) + "T";
    auto hour = takeNumber(text, 2);
    if (!hour) return bad("the time of day is missing");
    std::string rest(text);
    const auto half = rest.find_first_of("AaPp");
    if (half != std::string::npos && half + 1 < rest.size() &&
        (rest[half + 1] == 'M' || rest[half + 1] == 'm')) {
        if (*hour < 1 || *hour > 12) return bad("the hour does not go with AM or PM");
        const bool evening = rest[half] == 'P' || rest[half] == 'p';
        hour = *hour % 12 + (evening ? 12 : 0);
        rest = rest.substr(0, half);
        while (!rest.empty() && rest.back() == ' ') rest.pop_back();
    }
    return withOffset(date + twoDigits(*hour) + rest);
}

Result<Translation> Translation::over(const ColumnKey& key, const std::vector<std::string>& header,
                                      const std::string& file) {
    Translation t;
    t.made_ = t.key_ = key;
    const auto placeOf = [&](const std::string& theirs) -> Result<int> {
        const auto found = std::find(header.begin(), header.end(), theirs);
        if (found == header.end())
            return fail(ProblemCode::BadInput,
                        "the file has no column \"" + showable(theirs, 60) + "\", which the column key names",
                        file + ", header", "Choose the key that fits this file");
        return static_cast<int>(found - header.begin());
    };
    for (const auto& [ours, theirs] : key.columns) {
        auto place = placeOf(theirs);
        if (!place) return tl::unexpected(place.error());
        t.header_.push_back(ours);
        t.from_.push_back(*place);
    }
    // Columns that bear our names already need no mention.
    for (std::size_t i = 0; i < header.size(); ++i) {
        const bool taken = std::any_of(key.columns.begin(), key.columns.end(),
                                       [&](const auto& pair) { return pair.second == header[i]; });
        if (!taken && isOurColumn(header[i]) && !isOneOf(t.header_, header[i]) &&
            !key.fixed.contains(header[i])) {
            t.header_.push_back(header[i]);
            t.from_.push_back(static_cast<int>(i));
        }
    }
    for (const auto& [ours, text] : key.fixed) {
        t.header_.push_back(ours);
        t.from_.push_back(-1);
    }
    if (!key.timeOfDay.empty()) {
        auto place = placeOf(key.timeOfDay);
        if (!place) return tl::unexpected(place.error());
        t.timeOfDay_ = *place;
    }
    for (const auto& [channel, theirs] : key.wide) {
        auto place = placeOf(theirs);
        if (!place) return tl::unexpected(place.error());
        t.wide_[channel] = *place;
    }
    if (!t.wide_.empty()) {
        if (!isOneOf(t.header_, "channels")) {
            t.header_.emplace_back("channels");
            t.from_.push_back(-1);
            t.key_.fixed["channels"] = std::to_string(t.wide_.rbegin()->first);
        }
        t.channelAt_ = t.header_.size();
        t.header_.emplace_back("channel");
        t.lossAt_ = t.header_.size();
        t.header_.emplace_back("loss_db");
    }
    return t;
}

tl::expected<std::string, Translation::Fault> Translation::value(const std::string& column,
                                                                 std::string_view text) const {
    std::string word(text);
    if (const auto words = key_.values.find(column); words != key_.values.end())
        if (const auto found = words->second.find(word); found != words->second.end()) word = found->second;
    if (column == "time") {
        auto iso = isoTime(word, key_.dates, key_.offset);
        if (!iso) return tl::unexpected(Fault{column, iso.error()});
        return *iso;
    }
    if (word.empty() || !isOneOf(decimalColumns, column)) return word;
    const bool millidecibels = key_.lossUnit == LossUnit::Millidecibel && column.starts_with("loss_");
    constexpr int places = 6;
    const auto number = fixedPoint(word, places, key_.decimal.value_or(DecimalMark::Point));
    if (!number) return tl::unexpected(Fault{column, "\"" + showable(word, 60) + "\" is not a number"});
    // Back to digits with a point, in our unit.
    const std::int64_t scaled = millidecibels ? *number / 1'000 : *number;
    const std::int64_t magnitude = scaled < 0 ? -scaled : scaled;
    std::string fraction = std::to_string(magnitude % 1'000'000);
    fraction.insert(0, static_cast<std::size_t>(places) - fraction.size(), '0');
    return (scaled < 0 ? "-" : "") + std::to_string(magnitude / 1'000'000) + "." + fraction;
}

tl::expected<std::vector<Translation::Row>, Translation::Fault> Translation::rows(
    const std::vector<std::string_view>& fields) const {
    Row row(header_.size());
    for (std::size_t i = 0; i < from_.size(); ++i) {
        std::string text = from_[i] < 0 ? key_.fixed.at(header_[i])
                                        : std::string(fields[static_cast<std::size_t>(from_[i])]);
        if (header_[i] == "time" && timeOfDay_)
            text += " " + std::string(fields[static_cast<std::size_t>(*timeOfDay_)]);
        auto translated = value(header_[i], text);
        if (!translated) return tl::unexpected(translated.error());
        row[i] = std::move(*translated);
    }
    if (wide_.empty()) return std::vector<Row>{std::move(row)};
    std::vector<Row> all;
    for (const auto& [channel, place] : wide_) {
        const std::string_view text = fields[static_cast<std::size_t>(place)];
        if (text.empty()) continue;
        auto loss = value("loss_db", text);
        if (!loss) return tl::unexpected(Fault{key_.wide.at(channel), loss.error().reason});
        Row one = row;
        one[channelAt_] = std::to_string(channel);
        one[lossAt_] = std::move(*loss);
        all.push_back(std::move(one));
    }
    if (all.empty()) return tl::unexpected(Fault{"loss_db", "the row has no loss"});
    return all;
}

}  // namespace arc::storage
