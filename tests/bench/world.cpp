// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/world.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <unistd.h>

#include "core/scenario/histories.hpp"
#include "core/scenario/randomness.hpp"
#include "storage/intake.hpp"
#include "storage/scenario_files.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::bench {

namespace fs = std::filesystem;

Instant SteppingClock::now() {
    return {ms_ += 1'000, 0};
}

void SeededRandom::fill(std::uint8_t* bytes, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i)
        bytes[i] = static_cast<std::uint8_t>(scenario::splitmix(state_) >> 32);
}

scenario::Scenario steadyScenario(std::uint64_t readings) {
    constexpr int perClosure = 6'912;
    scenario::Scenario s;
    s.name = "bench";
    s.start = *parseInstant("2001-01-01T00:00:00Z");
    scenario::Machine m;
    m.label = "S-01";
    m.traits = {SplicerKind::MassFusion, 12, ArcControl::Manual};
    m.offsetUm = 0.25;
    m.minutesPerArc = 8;
    m.wearGain = 0;
    s.splicers.push_back(m);
    s.cleavers.push_back({"C-01", "", {}, 0.45, {}});
    scenario::JobSetting job;
    job.label = "J-1";
    job.rule.attempts = 1;
    job.cables.push_back({"cable", perClosure, FibreUnit::Ribbon, 12, "TIA-598", "G.652.D", std::nullopt, std::nullopt});
    scenario::Assignment work;
    work.splicer = "S-01";
    work.cleaver = "C-01";
    work.job = "J-1";
    work.arcsPerDay = 50;
    work.operatorName = "crew 1";
    for (std::uint64_t made = 0; made < readings; made += perClosure) {
        scenario::ClosureSetting closure;
        closure.label = "K-" + std::to_string(made / perClosure + 1);
        closure.cableA = closure.cableB = "cable";
        const auto fibres = static_cast<int>(std::min<std::uint64_t>(perClosure, readings - made));
        for (int i = 1; i <= fibres; ++i) closure.plan.push_back({i, i});
        work.closures.push_back(closure.label);
        job.closures.push_back(std::move(closure));
    }
    work.toDay = static_cast<int>(readings / 12 / 50 * 7 / 5 + 14);
    s.jobs.push_back(std::move(job));
    s.work.push_back(std::move(work));
    return s;
}

namespace {

void write(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

}  // namespace

World::World(std::uint64_t count) : readings(count) {
    std::string pattern = (fs::temp_directory_path() / "arc-bench-XXXXXX").string();
    if (!mkdtemp(pattern.data())) stop({ProblemCode::Unavailable, "no scratch folder", pattern, ""});
    folder = pattern;
    csv = file("big.splices.csv");
    big = file("big.arcbook");
    small = file("small.arcbook");
    empty = file("empty.arcbook");
    const auto settings = steadyScenario(readings);
    {
        const auto log = must(scenario::simulate(settings, 1));
        write(csv, storage::splicesCsv(log));
        crew = scenario::historiesOf(settings, log);
    }
    import(big, csv);
    write(file("small.splices.csv"), storage::splicesCsv(must(scenario::simulate(steadyScenario(1'000), 1))));
    import(small, file("small.splices.csv"));
    must(storage::createLogbook(empty, clock, random));
}

World::~World() {
    std::error_code ignored;
    fs::remove_all(folder, ignored);
}

void World::import(const fs::path& book, const fs::path& from) {
    must(storage::createLogbook(book, clock, random));
    storage::IntakeRequest request;
    request.book = book;
    request.files.push_back({from, FileKind::SpliceLog});
    NoProgress unwatched;
    const auto counts = must(storage::takeIn(request, clock, random, unwatched));
    if (counts.at(0).setAside > 0 || counts.at(0).added == 0)
        stop({ProblemCode::Internal, "the invented log was not taken in whole", from.string(), ""});
}

std::unique_ptr<Logbook> World::open(const fs::path& book) {
    return must(storage::openLogbook(book, storage::OpenMode::ReadWrite, clock, random));
}

SpliceArc nextArc(ToolId splicer, int fibres, Clock& clock, Random& random) {
    SpliceArc arc;
    arc.id = makeId<ArcId>(clock, random);
    arc.at = clock.now();
    arc.splicer = splicer;
    arc.mode = "G.652-G.652";
    arc.channels = fibres;
    for (int i = 1; i <= fibres; ++i) {
        Reading reading;
        reading.channel = i;
        reading.loss = Loss{30};
        reading.fibreA = reading.fibreB = std::to_string(i);
        arc.readings.push_back(reading);
    }
    return arc;
}

void stop(const Problem& problem) {
    std::fprintf(stderr, "%s\n", problem.sentence().c_str());
    std::exit(2);
}

}  // namespace arc::bench
