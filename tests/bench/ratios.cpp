// SPDX-License-Identifier: GPL-3.0-or-later
// What the program does beside the plainest way of doing the same, in one run:
//   arc_ratios [READINGS...] [--benchmark_filter=WORDS]
// (1,000,000 readings when none is given). With several sizes also how each action grows with the log. Trust
// the ratios, never the times. Needs sqlite3(1) for the import pair.
#include <algorithm>
#include <array>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <sqlite3.h>
#include <string>
#include <sys/syscall.h>
#include <thread>
#include <unistd.h>
#include <vector>

#include "app/closeout_report.hpp"
#include "core/analytics/drift.hpp"
#include "core/analytics/row.hpp"
#include "core/analytics/watcher.hpp"
#include "storage/scenario_files.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/bench/world.hpp"

namespace {
/// What each flush of a file takes longer than the disk itself needs.
std::chrono::microseconds flushDelay{0};
}  // namespace

/// In the place of the C library's: SQLite flushes through it.
extern "C" int fdatasync(int file) {
    if (flushDelay.count() > 0) std::this_thread::sleep_for(flushDelay);
    return static_cast<int>(syscall(SYS_fdatasync, file));
}

namespace {

using namespace arc;
using namespace arc::bench;
namespace fs = std::filesystem;

/// A bare SQLite connection, for the plain side of a pair.
class Bare {
  public:
    explicit Bare(const fs::path& file) {
        if (sqlite3_open(file.c_str(), &database_) != SQLITE_OK) fail();
    }
    ~Bare() { sqlite3_close(database_); }
    Bare(const Bare&) = delete;
    Bare& operator=(const Bare&) = delete;
    void run(const char* sql) {
        if (sqlite3_exec(database_, sql, nullptr, nullptr, nullptr) != SQLITE_OK) fail();
    }
    sqlite3_stmt* prepare(const char* sql) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(database_, sql, -1, &statement, nullptr) != SQLITE_OK) fail();
        return statement;
    }

  private:
    void fail() { stop({ProblemCode::Internal, sqlite3_errmsg(database_), "bench", ""}); }
    sqlite3* database_ = nullptr;
};

// --- full recompute ---------------------------------------------------------------------------------------

struct PlainRow {
    std::int64_t at, counter, channel, loss, left, right, attempt;
};

void plainSelect(benchmark::State& state, const World& world) {
    Bare bare(world.big);
    for (auto _ : state) {
        std::vector<PlainRow> rows;
        auto* statement = bare.prepare(
            "SELECT a.at_ms, a.counter_arcs, r.channel, r.loss_mdb, r.cleave_left_cdeg, r.cleave_right_cdeg, "
            "r.attempt FROM arc a JOIN reading r ON r.arc = a.key WHERE a.live = 1 AND r.live = 1");
        while (sqlite3_step(statement) == SQLITE_ROW) {
            PlainRow row{};
            std::int64_t* const cells[] = {&row.at,   &row.counter, &row.channel, &row.loss,
                                           &row.left, &row.right,   &row.attempt};
            for (int i = 0; i < 7; ++i) *cells[i] = sqlite3_column_int64(statement, i);
            rows.push_back(row);
        }
        sqlite3_finalize(statement);
        if (rows.size() < world.readings) stop({ProblemCode::Internal, "rows are missing", "bench", ""});
        benchmark::DoNotOptimize(rows.data());
    }
}

void readHistory(benchmark::State& state, World& world) {
    const auto book = world.open(world.big);
    const auto splicer = world.crew.at(0).label;
    ToolId id;
    for (const auto& tool : must(book->tools()))
        if (tool.label == splicer) id = tool.id;
    for (auto _ : state) benchmark::DoNotOptimize(must(book->history(id, std::nullopt)).readings.data());
}

void recompute(benchmark::State& state, const World& world) {
    for (auto _ : state)
        benchmark::DoNotOptimize(
            drift::analyse(world.crew, drift::Settings{}, drift::Detail::VerdictsOnly).data());
}

// --- one more arc -----------------------------------------------------------------------------------------

/// Steps a copy of the watcher's last arcs again, with numbers that go on.
void oneMoreArc(benchmark::State& state, const World& world, std::size_t arcs) {
    const auto& history = world.crew.at(0);
    arcs = std::min(arcs, history.arcs.size());
    drift::Watcher watcher({"bench", 12, 1000, std::nullopt});
    std::uint64_t number = 0;
    const auto step = [&](std::size_t i) {
        const auto& arc = history.arcs[i % history.arcs.size()];
        watcher.step(drift::rawArc(
            arc, std::span(history.readings).subspan(arc.firstReading, arc.readingCount), ++number));
    };
    for (std::size_t i = 0; i < arcs; ++i) step(i);
    std::size_t next = arcs;
    for (auto _ : state) step(next++);
}

// --- saving -----------------------------------------------------------------------------------------------

/// The columns of a splice file, typed.
constexpr const char* plainTable =
    "CREATE TABLE splice(time TEXT, splicer TEXT, cleaver TEXT, job TEXT, closure TEXT, mode TEXT, channels "
    "INTEGER, channel INTEGER, fibre_a TEXT, fibre_b TEXT, loss_db REAL, cleave_left_deg REAL, "
    "cleave_right_deg REAL, arc_count INTEGER, temperature_c REAL, humidity_pct REAL, pressure_hpa REAL, "
    "operator TEXT, attempt INTEGER);\n";
/// Two indices that no logbook can do without.
constexpr const char* twoIndices =
    "CREATE INDEX by_splicer ON splice(splicer, time, arc_count);\n"
    "CREATE INDEX by_job ON splice(job, time);\n";
/// Those of our own: no splice twice, by splicer, by time, by job, by cleaver, by operator, by fibre names.
constexpr const char* ourIndices =
    "CREATE UNIQUE INDEX by_splicer ON splice(splicer, time, arc_count, channel);\n"
    "CREATE INDEX by_time ON splice(time);\nCREATE INDEX by_job ON splice(job, time);\n"
    "CREATE INDEX by_cleaver ON splice(cleaver, time);\nCREATE INDEX by_operator ON splice(operator, time);\n"
    "CREATE INDEX by_names ON splice(fibre_a, fibre_b, time);\n";

/// As the Today page saves one: with cleaver, job, operator and all that was read off the splicer.
void saveArc(benchmark::State& state, World& world, const fs::path& file, int fibres) {
    const auto book = world.open(file);
    const auto tools = must(book->tools());
    const auto splicer = std::ranges::find_if(tools, [](const Tool& t) { return asSplicer(t) != nullptr; });
    const auto cleaver = std::ranges::find_if(tools, [](const Tool& t) { return asCleaver(t) != nullptr; });
    const auto jobs = must(book->jobs());
    if (splicer == tools.end() || cleaver == tools.end() || jobs.empty())
        stop({ProblemCode::Internal, "the log has no splicer, cleaver or job", file.string(), ""});
    const Context context{"crew", "bench", std::nullopt};
    std::uint32_t count = 100'000;
    for (auto _ : state) {
        SpliceArc arc = nextArc(splicer->id, fibres, world.clock, world.random);
        arc.cleaver = cleaver->id;
        arc.job = jobs.front().id;
        arc.operatorName = "crew 1";
        arc.counter = ArcCount{++count};
        for (Reading& reading : arc.readings) reading.cleaveLeft = reading.cleaveRight = Angle{40};
        must(book->append(arc, context));
    }
}

/// The same values in one row of one table, committed in WAL with synchronous=FULL.
void bareInsert(benchmark::State& state, const World& world, const char* indices) {
    const auto file = world.file("bare.sqlite");
    for (const char* const suffix : {"", "-wal", "-shm"}) fs::remove(file.string() + suffix);
    Bare bare(file);
    bare.run("PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL");
    bare.run(plainTable);
    bare.run(indices);
    auto* insert = bare.prepare(
        "INSERT INTO splice VALUES (?1, 'S-1', 'C-1', 'J-1', 'K-1', 'G.652-G.652', 1, 1, '7', '7', "
        "0.03, 0.4, 0.4, ?1, 18.0, 50, 1010, 'crew 1', 1)");
    std::int64_t at = 4'000'000'000'000;
    for (auto _ : state) {
        bare.run("BEGIN IMMEDIATE");
        sqlite3_bind_int64(insert, 1, ++at);
        sqlite3_step(insert);
        sqlite3_reset(insert);
        bare.run("COMMIT");
    }
    sqlite3_finalize(insert);
}

/// An SSD without a buffered cache takes about this long to flush (value from memory).
constexpr std::chrono::microseconds laptopFlush{1'000};

template <class Work>
void withLaptopFlush(const Work& work) {
    flushDelay = laptopFlush;
    work();
    flushDelay = {};
}

// --- import -----------------------------------------------------------------------------------------------

void import(benchmark::State& state, World& world, const fs::path& csv) {
    const auto book = world.file("imported.arcbook");
    for (auto _ : state) {
        world.import(book, csv);
        state.PauseTiming();
        for (const auto& entry : fs::directory_iterator(world.folder))
            if (entry.path().filename().string().rfind("imported.arcbook", 0) == 0) fs::remove(entry.path());
        state.ResumeTiming();
    }
}

void shellImport(benchmark::State& state, const World& world, const fs::path& csv, const char* indices) {
    const auto file = world.file("shell.sqlite");
    const auto script = world.file("import.sql");
    std::ofstream(script) << "PRAGMA journal_mode=WAL;\nPRAGMA synchronous=FULL;\n"
                          << plainTable << indices << ".mode csv\n.import --skip 1 " << csv.string()
                          << " splice\n";
    const std::string command = "sqlite3 " + file.string() + " < " + script.string() + " > /dev/null";
    for (auto _ : state) {
        if (std::system(command.c_str()) != 0)
            stop({ProblemCode::Unavailable, "sqlite3(1) did not run", "", ""});
        state.PauseTiming();
        for (const char* const suffix : {"", "-wal", "-shm"}) fs::remove(file.string() + suffix);
        state.ResumeTiming();
    }
}

/// A log of single-fibre splices of four crews, one every two minutes.
fs::path singleFibreLog(World& world) {
    constexpr std::uint64_t perClosure = 288, closuresPerJob = 40, crews = 4;
    const auto csv = world.file("single.splices.csv");
    std::ofstream out(csv, std::ios::binary);
    out << "time,splicer,cleaver,job,closure,mode,channels,channel,fibre_a,fibre_b,loss_db,cleave_left_deg,"
           "cleave_right_deg,arc_count,temperature_c,humidity_pct,pressure_hpa,operator,attempt\n";
    Instant at = *parseInstant("2001-01-01T00:00:00Z");
    for (std::uint64_t i = 0; i < world.readings; ++i) {
        at.ms += 120'000;
        std::array<std::uint8_t, 3> draw{};
        world.random.fill(draw.data(), draw.size());
        const auto crew = std::to_string(i % crews + 1), fibre = std::to_string(i % perClosure + 1);
        const auto closure = i / perClosure;
        char readings[60];
        std::snprintf(readings, sizeof readings, "0.%02d,0.%d,0.%d", draw[0] % 8, draw[1] % 10, draw[2] % 10);
        out << toIso(at) << ",S-" << crew << ",C-" << crew << ",J-" << closure / closuresPerJob << ",K-"
            << closure << ",G.652.D-G.652.D,1,1," << fibre << ',' << fibre << ',' << readings << ','
            << i / crews + 1 << ",18.0,50,1010,crew " << crew << ",1\n";
    }
    return csv;
}

// --- opening ----------------------------------------------------------------------------------------------

/// As the window does at the start: open, what tools there are, what was done last.
void openBook(benchmark::State& state, World& world, const fs::path& file) {
    for (auto _ : state) {
        const auto book = world.open(file);
        benchmark::DoNotOptimize(must(book->totals()));
        for (const auto& tool : must(book->tools()))
            if (asSplicer(tool)) benchmark::DoNotOptimize(must(book->lastArc(tool.id)));
        benchmark::DoNotOptimize(must(book->splices({}, PageOrder::NewestFirst, std::nullopt, 50)).data());
    }
}

// --- closeout ---------------------------------------------------------------------------------------------

struct CloseoutBook {
    fs::path book;
    JobId job;
    std::uintmax_t bytes = 0;  ///< of the record folder
};

app::CloseoutRequest requestFor(const World& world, const CloseoutBook& of) {
    app::CloseoutRequest request;
    request.job = of.job;
    request.folder = world.file("closeout");
    return request;
}

CloseoutBook makeCloseoutBook(World& world) {
    CloseoutBook made;
    made.book = world.file("job.arcbook");
    const auto csv = world.file("job.splices.csv");
    const auto log = must(scenario::simulate(steadyScenario(10'000), 2));
    std::ofstream(csv, std::ios::binary) << storage::splicesCsv(log);
    world.import(made.book, csv);
    const auto book = world.open(made.book);
    made.job = must(book->jobs()).at(0).id;
    NoProgress unwatched;
    must(app::writeCloseoutFolder(*book, requestFor(world, made), world.clock, world.random, unwatched));
    for (const auto& entry : fs::recursive_directory_iterator(world.file("closeout")))
        if (entry.is_regular_file()) made.bytes += entry.file_size();
    return made;
}

void writeCloseout(benchmark::State& state, World& world, const CloseoutBook& of) {
    const auto book = world.open(of.book);
    NoProgress unwatched;
    for (auto _ : state)
        must(app::writeCloseoutFolder(*book, requestFor(world, of), world.clock, world.random, unwatched));
}

void csvFromSql(benchmark::State& state, const World& world, const CloseoutBook& of) {
    Bare bare(of.book);
    for (auto _ : state) {
        std::ofstream out(world.file("plain.csv"), std::ios::binary | std::ios::trunc);
        std::uintmax_t written = 0;
        while (written < of.bytes) {
            auto* statement = bare.prepare(
                "SELECT a.at_ms, a.counter_arcs, a.temp_mk, r.channel, r.fibre_a, r.fibre_b, r.loss_mdb, "
                "r.cleave_left_cdeg, r.cleave_right_cdeg, r.attempt FROM arc a JOIN reading r ON r.arc = "
                "a.key "
                "WHERE a.live = 1 AND r.live = 1 ORDER BY a.at_ms, r.channel");
            std::string line;
            while (written < of.bytes && sqlite3_step(statement) == SQLITE_ROW) {
                line.clear();
                for (int i = 0; i < 10; ++i) {
                    const auto* cell = reinterpret_cast<const char*>(sqlite3_column_text(statement, i));
                    line += cell ? cell : "";
                    line += i < 9 ? ',' : '\n';
                }
                out << line;
                written += line.size();
            }
            sqlite3_finalize(statement);
        }
    }
}

// --- the table --------------------------------------------------------------------------------------------

class Collector : public benchmark::ConsoleReporter {
  public:
    explicit Collector(std::uint64_t readings) : readings_(readings) {}
    void ReportRuns(const std::vector<Run>& runs) override {
        for (const auto& run : runs)
            if (run.run_type == Run::RT_Aggregate && run.aggregate_name == "median")
                seconds[run.run_name.function_name][readings_] =
                    run.GetAdjustedRealTime() / benchmark::GetTimeUnitMultiplier(run.time_unit);
    }
    std::map<std::string, std::map<std::uint64_t, double>> seconds;  ///< by name and size of the log

  private:
    std::uint64_t readings_;
};

using Times = std::map<std::string, std::map<std::uint64_t, double>>;

void measure(std::uint64_t readings, Times& times) {
    std::fprintf(stderr, "Making a log of %llu readings …\n", static_cast<unsigned long long>(readings));
    World world(readings);
    const auto job = makeCloseoutBook(world);
    const auto singles = singleFibreLog(world);
    const auto add = [](const char* name, int rounds, int repetitions, auto work) {
        benchmark::RegisterBenchmark(name, work)
            ->Iterations(rounds)
            ->Repetitions(repetitions)
            ->ReportAggregatesOnly(true)
            ->UseRealTime();
    };
    using benchmark::State;
    add("plain select", 1, 5, [&](State& s) { plainSelect(s, world); });
    add("history", 1, 5, [&](State& s) { readHistory(s, world); });
    add("recompute", 1, 5, [&](State& s) { recompute(s, world); });
    add("step in big", 2000, 5, [&](State& s) { oneMoreArc(s, world, 1u << 30); });
    add("step in small", 2000, 5, [&](State& s) { oneMoreArc(s, world, 84); });
    add("save arc in big", 100, 5, [&](State& s) { saveArc(s, world, world.big, 12); });
    add("save arc in small", 100, 5, [&](State& s) { saveArc(s, world, world.small, 12); });
    add("save splice", 1000, 5, [&](State& s) { saveArc(s, world, world.small, 1); });
    add("bare insert", 1000, 5, [&](State& s) { bareInsert(s, world, twoIndices); });
    add("bare insert, ours", 1000, 5, [&](State& s) { bareInsert(s, world, ourIndices); });
    add("save splice, 1 ms", 500, 5,
        [&](State& s) { withLaptopFlush([&] { saveArc(s, world, world.small, 1); }); });
    add("bare insert, 1 ms", 500, 5,
        [&](State& s) { withLaptopFlush([&] { bareInsert(s, world, twoIndices); }); });
    add("import", 1, 3, [&](State& s) { import(s, world, world.csv); });
    add("sqlite3 .import", 1, 3, [&](State& s) { shellImport(s, world, world.csv, twoIndices); });
    add("import singles", 1, 3, [&](State& s) { import(s, world, singles); });
    add("singles .import", 1, 3, [&](State& s) { shellImport(s, world, singles, ourIndices); });
    add("singles .import, two", 1, 3, [&](State& s) { shellImport(s, world, singles, twoIndices); });
    add("open big", 5, 5, [&](State& s) { openBook(s, world, world.big); });
    add("open empty", 5, 5, [&](State& s) { openBook(s, world, world.empty); });
    add("closeout", 1, 9, [&](State& s) { writeCloseout(s, world, job); });
    add("csv from sql", 1, 9, [&](State& s) { csvFromSql(s, world, job); });
    Collector collector(readings);
    benchmark::RunSpecifiedBenchmarks(&collector);
    benchmark::ClearRegisteredBenchmarks();
    for (const auto& [name, bySize] : collector.seconds) times[name].insert(bySize.begin(), bySize.end());
}

struct Pair {
    const char* what;
    const char* ours;
    const char* plain;
    double target;
};

void printRatios(std::uint64_t readings, Times& times) {
    const Pair pairs[] = {
        {"full recompute with reading / plain SELECT of the same rows", "history and recompute",
         "plain select", 4.0},
        {"charts alone / plain SELECT of the same rows", "recompute", "plain select", 0},
        {"charts, one more arc: this log / 1,000 readings", "step in big", "step in small", 1.2},
        {"saving one arc of 12: this log / 1,000 readings", "save arc in big", "save arc in small", 1.2},
        {"saving one splice / bare committed INSERT into a table with our indices", "save splice",
         "bare insert, ours", 1.3},
        {"saving one splice / bare committed INSERT into a table with two indices", "save splice",
         "bare insert", 1.3},
        {"the latter on a disk that takes 1 ms longer to flush", "save splice, 1 ms", "bare insert, 1 ms",
         1.3},
        {"import, ribbons / sqlite3 .import into a table with two indices", "import", "sqlite3 .import", 1.0},
        {"import, single fibres / sqlite3 .import into a table with our indices", "import singles",
         "singles .import", 1.0},
        {"import, single fibres / sqlite3 .import into a table with two indices", "import singles",
         "singles .import, two", 0},
        {"opening: this log / an empty logbook", "open big", "open empty", 1.5},
        {"closeout of 10,000 splices / as many bytes of CSV", "closeout", "csv from sql", 3.0},
    };
    times["history and recompute"][readings] = times["history"][readings] + times["recompute"][readings];
    std::printf("%llu readings\n| what | ours | beside | ratio | at most |\n|---|---|---|---|---|\n",
                static_cast<unsigned long long>(readings));
    for (const auto& pair : pairs) {
        const double ours = times[pair.ours][readings], plain = times[pair.plain][readings];
        std::printf("| %s | %.3g ms | %.3g ms | %.2f | ", pair.what, 1000 * ours, 1000 * plain,
                    plain > 0 ? ours / plain : 0);
        if (pair.target > 0) {
            std::printf("%.1f |\n", pair.target);
        } else {
            std::printf("- |\n");
        }
    }
}

/// Slope of log time over log size, least squares: 0 = does not grow, 1 = in step with the log.
double exponent(const std::map<std::uint64_t, double>& bySize) {
    double n = 0, sx = 0, sy = 0, sxx = 0, sxy = 0;
    for (const auto& [size, seconds] : bySize) {
        const double x = std::log(static_cast<double>(size)), y = std::log(seconds);
        n += 1;
        sx += x;
        sy += y;
        sxx += x * x;
        sxy += x * y;
    }
    return (n * sxy - sx * sy) / (n * sxx - sx * sx);
}

void printGrowth(Times& times) {
    const char* const main[] = {"recompute",       "history", "step in big",
                                "save arc in big", "import",  "open big"};
    std::printf("\n| growth | exponent | times |\n|---|---|---|\n");
    for (const auto* name : main) {
        std::printf("| %s | %.2f |", name, exponent(times[name]));
        for (const auto& [size, seconds] : times[name])
            std::printf(" %llu: %.3g ms", static_cast<unsigned long long>(size), 1000 * seconds);
        std::printf(" |\n");
    }
}

}  // namespace

int main(int argc, char** argv) {
    std::vector<std::uint64_t> sizes;
    std::vector<char*> handedOn{argv[0]};
    for (int i = 1; i < argc; ++i) {
        if (std::string_view(argv[i]).starts_with("--benchmark_"))
            handedOn.push_back(argv[i]);
        else
            sizes.push_back(std::strtoull(argv[i], nullptr, 10));
    }
    if (sizes.empty()) sizes.push_back(1'000'000);
    if (std::any_of(sizes.begin(), sizes.end(), [](auto size) { return size < 1'000; })) {
        std::fprintf(stderr, "arc_ratios [READINGS...], each of 1000 or more\n");
        return 2;
    }
    int count = static_cast<int>(handedOn.size());
    handedOn.push_back(nullptr);
    benchmark::Initialize(&count, handedOn.data());
    Times times;
    for (const auto size : sizes) measure(size, times);
    for (const auto size : sizes) printRatios(size, times);
    if (sizes.size() > 1) printGrowth(times);
    return 0;
}
