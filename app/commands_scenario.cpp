// SPDX-License-Identifier: GPL-3.0-or-later
// arcw simulate: an invented crew's log, with the truth beside it.
#include <charconv>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <ostream>
#include <set>

#include "app/command.hpp"
#include "core/scenario/simulate.hpp"
#include "storage/scenario_files.hpp"
#include "storage/scenario_json.hpp"

namespace arc::app {
namespace {

namespace fs = std::filesystem;

Result<std::string> readFile(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(file), {}};
    if (!file && !file.eof())
        return fail(ProblemCode::Unavailable, "the scenario file cannot be read", path.string(),
                    "Check the name and that you may read it");
    return text;
}

Result<void> writeFile(const fs::path& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file << text;
    file.close();
    if (!file)
        return fail(ProblemCode::Unavailable, "the file cannot be written", path.string(),
                    "Check that the folder exists and has room");
    return {};
}

Result<std::uint64_t> readSeed(const std::string& text) {
    std::uint64_t seed = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seed);
    if (error != std::errc{} || end != text.data() + text.size())
        return fail(ProblemCode::BadInput, "the seed \"" + text + "\" is not a whole number of 0 or more",
                    "--seed");
    return seed;
}

Exit simulate(const Arguments& arguments, Environment& environment) {
    const fs::path settings = arguments.one("--scenario");
    const fs::path folder = arguments.one("--out");
    const auto text = readFile(settings);
    if (!text) return refuse(text.error(), environment);
    const auto scenario = storage::scenarioFromJson(*text);
    if (!scenario) return refuse(scenario.error(), environment);
    const auto given = arguments.maybe("--seed");
    const auto seed = given ? readSeed(*given) : Result<std::uint64_t>(scenario->seed);
    if (!seed) return refuse(seed.error(), environment);
    const auto log = scenario::simulate(*scenario, *seed);
    if (!log) return refuse(log.error(), environment);

    std::error_code error;
    fs::create_directories(folder, error);
    const std::string name = settings.stem().string();
    const std::pair<std::string, std::string> files[] = {
        {name + ".splices.csv", storage::splicesCsv(*log)},
        {name + ".events.csv", storage::eventsCsv(*log)},
        {name + ".measured.csv", storage::measuredCsv(*log)},
        {name + ".truth.json", storage::truthJson(*scenario, *log, *seed)},
    };
    for (const auto& [file, content] : files)
        if (const auto written = writeFile(folder / file, content); !written)
            return refuse(written.error(), environment);

    std::size_t readings = 0;
    for (const auto& arc : log->arcs) readings += arc.readings.size();
    if (arguments.format == Format::Json) {
        nlohmann::ordered_json answer{{"scenario", scenario->name}, {"seed", *seed},
                                      {"arcs", log->arcs.size()},   {"readings", readings},
                                      {"care", log->care.size()},   {"measured", log->measured.size()},
                                      {"faults", log->truth.size()}};
        for (const auto& [file, content] : files) answer["files"].push_back((folder / file).string());
        environment.out << answer.dump(1) << "\n";
        return Exit::Done;
    }
    environment.out << scenario->name << ", invented: " << log->arcs.size() << " arcs, " << readings
                    << " readings, " << log->care.size() << " care actions, " << log->truth.size()
                    << " faults.\n";
    for (const auto& [file, content] : files) environment.out << (folder / file).string() << "\n";
    return Exit::Done;
}

}  // namespace

std::vector<Command> scenarioCommands() {
    return {{"simulate",
             "Make the log of an invented crew with known faults",
             {{"--scenario", "Scenario settings (JSON); the form is described in storage/scenario_json.hpp",
               Takes::One, Needed::Yes},
              {"--out", "Folder for the files it makes", Takes::One, Needed::Yes},
              {"--seed", "Whole number; the same seed makes the same log (default: that of the scenario)",
               Takes::One, Needed::No}},
             simulate}};
}

}  // namespace arc::app
