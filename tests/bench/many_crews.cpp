// SPDX-License-Identifier: GPL-3.0-or-later
// A supervisor's logbook that gathers many crews beside the logbook of one crew: opening, the drift of one
// splicer, searching. Ratios of one run, taken in turns, the least of several.
//   build/tests/bench/arc_many_crews [crews = 200] [splices of each = 100000]
// One crew's log is simulated and imported; the others are that log again under tools, jobs and identities of
// their own, arriving in turns of some hundred arcs, as from satchels.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <map>
#include <memory>
#include <sqlite3.h>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/bench/world.hpp"

namespace {

using namespace arc;
using namespace arc::bench;
namespace fs = std::filesystem;

constexpr int arcsInATurn = 500;

class Sql {
  public:
    explicit Sql(const fs::path& file) {
        if (sqlite3_open(file.c_str(), &database_) != SQLITE_OK) fail();
        run("PRAGMA synchronous = OFF; PRAGMA cache_size = -500000; PRAGMA wal_autocheckpoint = 20000");
    }
    ~Sql() { sqlite3_close(database_); }
    Sql(const Sql&) = delete;
    Sql& operator=(const Sql&) = delete;
    void run(const std::string& sql) {
        if (sqlite3_exec(database_, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) fail();
    }
    std::int64_t number(const std::string& sql) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(database_, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK ||
            sqlite3_step(statement) != SQLITE_ROW)
            fail();
        const auto number = sqlite3_column_int64(statement, 0);
        sqlite3_finalize(statement);
        return number;
    }

  private:
    [[noreturn]] void fail() {
        std::fprintf(stderr, "%s\n", sqlite3_errmsg(database_));
        std::exit(2);
    }
    sqlite3* database_ = nullptr;
};

struct Crew {
    Tool splicer;
    Job job;
};

std::string key(const Uuid& id) {
    std::string text = toText(id);
    std::erase(text, '-');
    return "(SELECT key FROM identity WHERE id = x'" + text + "')";
}

/// Kits and jobs as a crew makes them, each with a first arc so that their identities have keys.
std::vector<Crew> addCrews(World& world, const fs::path& file, int count) {
    auto book = world.open(file);
    const Tool splicer = must(book->tools()).back();
    const Job job = must(book->jobs()).front();
    std::vector<Crew> crews{{splicer, job}};
    for (int c = 1; c < count; ++c) {
        Crew crew{splicer, job};
        crew.splicer.id = makeId<ToolId>(world.clock, world.random);
        crew.splicer.label += "-" + std::to_string(c);
        crew.job.id = makeId<JobId>(world.clock, world.random);
        crew.job.label += "-" + std::to_string(c);
        SpliceArc first = nextArc(crew.splicer.id, 12, world.clock, world.random);
        first.at = {0, 0};
        first.job = crew.job.id;
        const std::vector<Entry> entries{crew.splicer, crew.job, first};
        must(book->append(entries, {"bench", "bench", {}}));
        crews.push_back(crew);
    }
    return crews;
}

void gather(const fs::path& file, const std::vector<Crew>& crews, std::int64_t arcs) {
    Sql sql(file);
    // Enough room between the keys of two crews.
    const std::int64_t step = sql.number("SELECT max(key) FROM identity") + 1;
    std::vector<std::pair<std::int64_t, std::int64_t>> keys;
    for (const Crew& crew : crews)
        keys.emplace_back(sql.number("SELECT " + key(crew.splicer.id.uuid)),
                          sql.number("SELECT " + key(crew.job.id.uuid)));
    const std::string source = std::to_string(keys[0].first);
    sql.run(
        "CREATE TEMP TABLE log AS SELECT key, row_number() OVER (ORDER BY at_ms) AS place FROM arc WHERE "
        "splicer = " +
        source +
        "; CREATE INDEX temp.log_place ON log(place); CREATE TEMP TABLE said AS SELECT place, phrase, at_ms "
        "FROM "
        "log JOIN mention ON mention.arc = log.key; CREATE INDEX temp.said_place ON said(place)");
    sql.run("BEGIN");
    std::int64_t next = step;
    for (std::int64_t from = 1; from <= arcs; from += arcsInATurn) {
        const std::string turn =
            "place BETWEEN " + std::to_string(from) + " AND " + std::to_string(from + arcsInATurn - 1);
        for (std::size_t c = 1; c < crews.size(); ++c) {
            const std::string shifted = std::to_string(next - from) + " + place";
            next += arcsInATurn;
            sql.run("INSERT INTO identity(key, id) SELECT " + shifted + ", randomblob(16) FROM log WHERE " +
                    turn);
            sql.run(
                "INSERT INTO arc SELECT " + shifted + ", journal, live, at_ms + " +
                std::to_string(c * 1'009) + ", offset_min, " + std::to_string(keys[c].first) + ", cleaver, " +
                std::to_string(keys[c].second) +
                ", NULL, mode, channels, counter_arcs, temp_mk, humidity_permille, pressure_pa, operator, "
                "origin, base FROM log JOIN arc USING (key) WHERE " +
                turn);
            sql.run(
                "INSERT INTO reading SELECT " + shifted +
                ", channel, journal, live, loss_mdb, cleave_left_cdeg, cleave_right_cdeg, fibre_a, fibre_b, "
                "attempt, state, note, base FROM log JOIN reading ON reading.arc = log.key WHERE " +
                turn);
            sql.run("INSERT INTO mention SELECT phrase, at_ms + " + std::to_string(c * 1'009) + ", " +
                    shifted + " FROM said WHERE " + turn);
        }
    }
    sql.run(
        "UPDATE total SET arcs = (SELECT count(*) FROM arc WHERE live = 1), readings = (SELECT count(*) FROM "
        "reading WHERE live = 1)");
    sql.run("COMMIT; PRAGMA wal_checkpoint(TRUNCATE)");
}

/// A few notes, at the far end of a search that begins with the newest.
void note(World& world, const fs::path& file) {
    const auto book = world.open(file);
    const auto rows = must(book->splices({}, PageOrder::OldestFirst, std::nullopt, 1'000));
    for (std::size_t i = 0; i < rows.size(); i += 100) {
        Reading noted = rows[i].reading;
        noted.note = "gusts of wind";
        noted.state = ReadingState::Voided;
        must(book->append(ReadingChange{rows[i].arc.id, noted}, {"bench", "bench", {}}));
    }
}

using Work = std::function<void(const fs::path&, const Crew&)>;

double seconds(const Work& work, const fs::path& file, const Crew& crew) {
    const auto begin = std::chrono::steady_clock::now();
    work(file, crew);
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

}  // namespace

int main(int argc, char** argv) {
    const int crews = argc > 1 ? std::atoi(argv[1]) : 200;
    const auto splices = static_cast<std::uint64_t>(argc > 2 ? std::atoll(argv[2]) : 100'000);
    World world(splices);
    note(world, world.big);
    const fs::path many = world.file("many.arcbook");
    fs::copy_file(world.big, many);
    const auto list = addCrews(world, many, crews);
    gather(many, list, static_cast<std::int64_t>(splices / 12));
    const Crew& alone = list.front();
    const Crew& among = list[list.size() / 2];
    {
        const auto book = world.open(many);
        const auto totals = must(book->totals());
        std::printf("%d crews: %llu splices, %.1f GB beside %llu splices\n", crews,
                    static_cast<unsigned long long>(totals.readings),
                    static_cast<double>(fs::file_size(many)) / 1e9, static_cast<unsigned long long>(splices));
    }
    const auto searchFor = [&world](SpliceFilter filter, std::size_t rows = 200) {
        return [&world, filter, rows](const fs::path& file, const Crew& crew) {
            static std::map<std::string, std::unique_ptr<Logbook>> open;
            auto& book = open[file.string()];
            if (!book)
                book =
                    must(storage::openLogbook(file, storage::OpenMode::ReadOnly, world.clock, world.random));
            SpliceFilter of = filter;
            if (of.splicer) of.splicer = crew.splicer.id;
            if (of.job) of.job = crew.job.id;
            must(book->splices(of, PageOrder::NewestFirst, std::nullopt, rows));
        };
    };
    SpliceFilter word, rareHere, rareOfJob;
    word.text = "17";
    rareHere.text = "no such word";
    rareHere.splicer = ToolId{};
    rareOfJob.text = "no such word";
    rareOfJob.job = JobId{};
    // As many as the small logbook has: the same answer costs the same.
    constexpr std::size_t few = 10;
    SpliceFilter rare, seldom, noted, operatorName, voided, high;
    voided.verdicts = {ReadingVerdict::Voided};
    high.verdicts = {ReadingVerdict::OverCeiling};
    rare.text = "no such word";
    seldom.text = "6911";
    noted.text = "gusts";
    operatorName.text = "crew";
    const std::vector<std::pair<std::string, Work>> works{
        {"opening",
         [&world](const fs::path& file, const Crew& crew) {
             const auto book = world.open(file);
             must(book->totals());
             must(book->tools());
             must(book->lastArc(crew.splicer.id));
             must(book->splices({}, PageOrder::NewestFirst, std::nullopt, 50));
         }},
        {"reading one splicer's history",
         [&world](const fs::path& file, const Crew& crew) {
             const auto book = world.open(file);
             must(book->history(crew.splicer.id, std::nullopt));
         }},
        {"drift of one splicer",
         [&world](const fs::path& file, const Crew& crew) {
             const auto book = world.open(file);
             const std::vector<SplicerHistory> histories{must(book->history(crew.splicer.id, std::nullopt))};
             drift::analyse(histories, drift::Settings{}, drift::Detail::VerdictsOnly);
         }},
        {"search: a word, anywhere", searchFor(word)},
        {"search: one fibre of each closure, anywhere", searchFor(seldom, few)},
        {"search: a word of a few old notes, anywhere", searchFor(noted, few)},
        {"search: ten voided readings, old ones, anywhere", searchFor(voided, few)},
        {"search: above the ceiling, anywhere", searchFor(high, few)},
        {"search: an operator, anywhere", searchFor(operatorName)},
        {"search: a word nobody wrote, one splicer", searchFor(rareHere)},
        {"search: a word nobody wrote, one job", searchFor(rareOfJob)},
        {"search: a word nobody wrote, anywhere", searchFor(rare)},
    };
    std::vector<std::pair<double, double>> least(works.size(), {1e9, 1e9});
    for (int round = 0; round < 5; ++round)
        for (std::size_t i = 0; i < works.size(); ++i) {
            // Twice in a row: the works between two rounds leave nothing of the pages in memory.
            for (int again = 0; again < 2; ++again) {
                least[i].first = std::min(least[i].first, seconds(works[i].second, world.big, alone));
                least[i].second = std::min(least[i].second, seconds(works[i].second, many, among));
            }
        }
    for (std::size_t i = 0; i < works.size(); ++i)
        std::printf("%-45s %9.3f ms %9.3f ms  ratio %.2f\n", works[i].first.c_str(), least[i].first * 1e3,
                    least[i].second * 1e3, least[i].second / least[i].first);
    return 0;
}
