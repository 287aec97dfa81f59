// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
#include "storage/csv_values.hpp"
#include "storage/intake.hpp"

namespace arc::app {
namespace {

using Json = nlohmann::ordered_json;

std::vector<storage::FileToRead> filesOf(const Arguments& arguments) {
    std::vector<storage::FileToRead> files;
    for (const auto& file : arguments.many("FILE")) files.push_back({file, {}});
    for (const auto& file : arguments.many("--events")) files.push_back({file, FileKind::Events});
    for (const auto& file : arguments.many("--measured")) files.push_back({file, FileKind::MeasuredLosses});
    return files;
}

Json toJson(const ImportCount& count, const std::string& file) {
    Json rows = Json::array();
    for (const auto& row : count.rows)
        rows.push_back({{"file", row.file},
                        {"line", row.line},
                        {"column", row.column},
                        {"reason", row.reason},
                        {"text", row.text}});
    return {{"file", file},         {"read", count.read},          {"new", count.added},
            {"known", count.known}, {"set_aside", count.setAside}, {"rows", std::move(rows)},
            {"notes", count.notes}};
}

void printText(const ImportCount& count, const std::string& file, std::ostream& out) {
    constexpr std::size_t shown = 20;
    out << file << ": " << count.read << " read, " << count.added << " new, " << count.known << " known, "
        << count.setAside << " set aside\n";
    for (const auto& note : count.notes) out << "  note: " << note << '\n';
    for (std::size_t i = 0; i < count.rows.size() && i < shown; ++i) {
        const auto& row = count.rows[i];
        out << "  line " << row.line << (row.column.empty() ? "" : ", " + row.column) << ": "
            << storage::showable(row.reason, 500) << '\n';
    }
    if (count.setAside > shown) out << "  and " << count.setAside - shown << " more\n";
}

Exit import(const Arguments& arguments, Environment& environment) {
    storage::IntakeRequest request;
    request.book = arguments.one("BOOK");
    request.files = filesOf(arguments);
    request.purpose = arguments.has("--try") ? storage::Purpose::TryOnly : storage::Purpose::Import;
    if (request.files.empty())
        return refuse({ProblemCode::BadInput, "no file to read was given", "", "Try: arcw import --help"},
                      environment);
    if (const auto file = arguments.maybe("--column-key")) {
        auto key = storage::loadColumnKey(*file);
        if (!key) return refuse(key.error(), environment);
        request.key = std::move(*key);
    }
    NoProgress unwatched;
    const auto counts = storage::takeIn(request, environment.clock, environment.random, unwatched);
    if (!counts) return refuse(counts.error(), environment);
    Json files = Json::array();
    ImportCount sum;
    for (std::size_t i = 0; i < counts->size(); ++i) {
        const ImportCount& count = (*counts)[i];
        const std::string file = request.files[i].file.string();
        sum.read += count.read;
        sum.added += count.added;
        sum.known += count.known;
        sum.setAside += count.setAside;
        if (arguments.format == Format::Json) {
            files.push_back(toJson(count, file));
        } else {
            printText(count, file, environment.out);
        }
    }
    const bool tried = request.purpose == storage::Purpose::TryOnly;
    if (arguments.format == Format::Json) {
        environment.out << Json{{"tried_only", tried},       {"read", sum.read},
                                {"new", sum.added},          {"known", sum.known},
                                {"set_aside", sum.setAside}, {"files", std::move(files)}}
                               .dump(-1, ' ', false, Json::error_handler_t::replace)
                        << '\n';
    } else if (tried) {
        environment.out << "Only tried: nothing was changed.\n";
    }
    return sum.setAside > 0 ? Exit::SomethingToReport : Exit::Done;
}

}  // namespace

std::vector<Command> intakeCommands() {
    return {{"import",
             "Read splice logs, events and measured losses from CSV files",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"FILE", "splice logs; events and measured losses are told by their header", Takes::Many,
               Needed::No},
              {"--events", "event CSV", Takes::Many, Needed::No},
              {"--measured", "measured-loss CSV", Takes::Many, Needed::No},
              {"--column-key", "JSON file that maps somebody's columns to ours", Takes::One, Needed::No},
              {"--try", "only say what would happen", Takes::Nothing, Needed::No}},
             import,
             Effect::WritesBook}};
}

}  // namespace arc::app
