// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
#include "storage/csv_values.hpp"
#include "storage/intake.hpp"
#include "storage/plain_file.hpp"
#include "storage/table_preview.hpp"

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

/// A file, or the name of a key that the logbook holds.
Result<ColumnKey> keyNamed(const std::string& named, const std::filesystem::path& book) {
    std::error_code ignored;
    if (std::filesystem::exists(named, ignored)) return storage::loadColumnKey(named);
    const auto saved = storage::savedKeys(book);
    if (!saved) return tl::unexpected(saved.error());
    for (const auto& key : *saved)
        if (key.name == named) return key;
    return fail(ProblemCode::NotFound, "there is neither a file nor a saved column key of that name", named,
                "List the saved ones with \"arcw keys BOOK\"");
}

/// Never over a file that somebody may be mending.
Result<std::filesystem::path> writeSetAside(const std::filesystem::path& folder,
                                            const std::filesystem::path& file, const ImportCount& count) {
    std::error_code ignored;
    for (int n = 1;; ++n) {
        const auto place = folder / (file.stem().string() + ".set-aside" +
                                     (n > 1 ? "-" + std::to_string(n) : std::string()) + ".csv");
        if (std::filesystem::exists(place, ignored)) continue;
        if (auto written = storage::writePlainFile(place, count.setAsideTable, storage::FileMode::Normal);
            !written)
            return tl::unexpected(written.error());
        return place;
    }
}

Exit columnKeys(const Arguments& arguments, Environment& environment) {
    const std::filesystem::path book = arguments.one("BOOK");
    if (const auto file = arguments.maybe("--add")) {
        auto key = storage::loadColumnKey(*file);
        if (!key) return refuse(key.error(), environment);
        if (key->name.empty()) key->name = std::filesystem::path(*file).stem().string();
        const auto setting = storage::keySetting(*key);
        if (!setting) return refuse(setting.error(), environment);
        auto open =
            storage::openLogbook(book, storage::OpenMode::ReadWrite, environment.clock, environment.random);
        if (!open) return refuse(open.error(), environment);
        if (auto saved = (*open)->append(*setting, {"", "arcw keys", {}}); !saved)
            return refuse(saved.error(), environment);
    }
    const auto keys = storage::savedKeys(book);
    if (!keys) return refuse(keys.error(), environment);
    if (const auto name = arguments.maybe("--show")) {
        for (const auto& key : *keys)
            if (key.name == *name) {
                environment.out << storage::toJson(key) << '\n';
                return Exit::Done;
            }
        return refuse({ProblemCode::NotFound, "there is no saved column key of that name", *name, ""},
                      environment);
    }
    Json list = Json::array();
    for (const auto& key : *keys) {
        list.push_back(Json::parse(storage::toJson(key)));
        if (arguments.format == Format::Text) environment.out << key.name << '\n';
    }
    if (arguments.format == Format::Json) environment.out << Json{{"keys", std::move(list)}}.dump() << '\n';
    return Exit::Done;
}

Exit import(const Arguments& arguments, Environment& environment) {
    storage::IntakeRequest request;
    request.book = arguments.one("BOOK");
    request.files = filesOf(arguments);
    request.purpose = arguments.has("--try") ? storage::Purpose::TryOnly : storage::Purpose::Import;
    if (request.files.empty())
        return refuse({ProblemCode::BadInput, "no file to read was given", "", "Try: arcw import --help"},
                      environment);
    if (const auto named = arguments.maybe("--column-key")) {
        auto key = keyNamed(*named, request.book);
        if (!key) return refuse(key.error(), environment);
        request.key = std::move(*key);
    }
    const auto folder = arguments.maybe("--set-aside");
    if (folder) {
        request.setAsideTable = storage::SetAsideTable::Wanted;
        std::error_code ignored;
        if (!std::filesystem::is_directory(*folder, ignored))
            return refuse({ProblemCode::NotFound, "there is no such folder", *folder,
                           "Make the folder for the set-aside rows first"},
                          environment);
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
        if (folder && !count.setAsideTable.empty()) {
            const auto written = writeSetAside(*folder, request.files[i].file, count);
            if (!written) return refuse(written.error(), environment);
            environment.err << "The set-aside rows are in " << written->string()
                            << "; mend them there and import that file\n";
        }
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
              {"--column-key", "how somebody's columns map to ours: a JSON file, or the name of a saved key",
               Takes::One, Needed::No},
              {"--set-aside", "folder for the rows that cannot be read, one file each, to be mended",
               Takes::One, Needed::No},
              {"--try", "only say what would happen", Takes::Nothing, Needed::No}},
             import,
             Effect::WritesBook},
            {"keys",
             "List the saved column keys, add one or show one as JSON",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"--add", "JSON file of a key to save under its name", Takes::One, Needed::No},
              {"--show", "name of the key to print as JSON", Takes::One, Needed::No}},
             columnKeys}};
}

}  // namespace arc::app
