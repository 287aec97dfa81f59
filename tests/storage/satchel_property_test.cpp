// SPDX-License-Identifier: GPL-3.0-or-later
// Five laptops, a thousand random edits of every kind, satchels of all, since a time and of one job, handed
// over in any order and more than once: when all have met all, the books are equal and no edit is lost. By
// hand with more seeds: ARC_PROPERTY_SEEDS=20 arc_storage_tests --gtest_filter='SatchelProperty.*'
#include <cstdlib>
#include <gtest/gtest.h>
#include <set>

#include "storage/conflicts.hpp"
#include "tests/support/laptop.hpp"

namespace arc::storage {
namespace {

using test::FakeRandom;
using test::Laptop;

constexpr int edits = 1'000;
constexpr std::size_t devices = 5;

/// A laptop whose program stays open, as a window does.
struct OpenLaptop : Laptop {
    explicit OpenLaptop(unsigned char number) : Laptop(number), book(Laptop::open()) {}
    Result<Unpacked> take(const std::filesystem::path& satchel) {
        std::vector<PublicKey> accepted;
        for (unsigned char i = 1; i < 10; ++i) accepted.push_back(test::keyFrom(i).publicKey);
        NoProgress unwatched;
        return unpackSatchel({file(), satchel, {}, accepted, OpenMode::Companion}, clock, random, unwatched);
    }
    std::unique_ptr<Logbook> book;
};

/// Makes one random entry of each kind, new or of a record there is already (here or on another laptop).
class Editor {
  public:
    Editor(FakeRandom& random, test::SmallKit kit) : random_(random), kit_(std::move(kit)) {
        jobs_.push_back(kit_.job.id);
    }
    std::vector<ArcId> arcs;

    std::vector<Entry> entries(Laptop& laptop) {
        laptop_ = &laptop;
        const Instant at{1'900'000'000'000 + number(1'000'000'000), 60};
        switch (random_.below(20)) {
            case 0: {
                Tool tool = random_.below(2) == 0 ? kit_.splicer : kit_.cleaver;
                tool.nickname = word();
                return {tool};
            }
            case 1:
                return {Pairing{old<EntryId>(0), kit_.splicer.id, kit_.cleaver.id, at}};
            case 2:
                return {CounterCorrection{old<EntryId>(1), kit_.splicer.id, at,
                                          ArcCount{static_cast<std::uint32_t>(number(9'000))}, word()}};
            case 3: {
                Job job = kit_.job;
                job.title = word();
                if (random_.below(3) == 0) {
                    job.id = makeId<JobId>(laptop.clock, laptop.random);
                    job.label = "HR-" + word();
                    jobs_.push_back(job.id);
                }
                return {job};
            }
            case 4: {
                Cable cable;
                cable.id = old<CableId>(2);
                cable.job = job();
                cable.label = "K-" + word();
                cable.fibreCount = 1 + static_cast<int>(number(100));
                return {cable};
            }
            case 5: {
                Closure closure;
                closure.id = old<ClosureId>(3);
                closure.job = job();
                closure.label = "C-" + word();
                closure.trays = 1 + static_cast<int>(number(20));
                return {closure};
            }
            case 6:
                return {ReadingChange{anArc(), reading()}};
            case 7:
                return {MeasuredLoss{old<EntryId>(4), job(), {}, word(), 1550, Loss{50}, {}, at, "", word()}};
            case 8: {
                CareRecord care;
                care.id = old<CareId>(5);
                care.tool = kit_.splicer.id;
                care.at = at;
                care.action = "groove_clean";
                care.detail = word();
                return {care};
            }
            case 9: {
                CareRun run;
                run.id = old<CareId>(5);  // a finished run and its record share an identity
                run.tool = kit_.splicer.id;
                run.action = "groove_clean";
                run.startedAt = at;
                run.step = static_cast<int>(number(9));
                return {run};
            }
            case 10:
                return {CardEdition{old<EntryId>(6), "groove_clean", 2, "{\"" + word() + "\": 1}"}};
            case 11:
                return {HoldOverride{old<EntryId>(7), kit_.splicer.id, "due", "Ada", word(), at}};
            case 12:
                return {BaselineChoice{
                    old<EntryId>(8), kit_.splicer.id, "s", at, {at.ms + 1, 60}, word(), "Ada"}};
            case 13:
                return {SignalAnswer{old<EntryId>(9), kit_.splicer.id, "signal", SignalAnswerKind::Dismissed,
                                     word(), "Ada", at}};
            case 14:
                return {ExceptionDisposition{old<EntryId>(10), job(), "key", "accepted", word(), "Ada", at}};
            case 15: {
                IssuedRecord record;
                record.id = makeId<EntryId>(laptop.clock, laptop.random);
                record.job = job();
                record.number = 1 + static_cast<int>(number(5));
                record.manifestSha256 = std::string(64, static_cast<char>('0' + number(10)));
                record.by = "Ada";
                record.at = at;
                return {record};
            }
            case 16:
                return {Setting{"key" + std::to_string(number(3)), word()}};
            case 17:
                return {Attachment{old<EntryId>(11), anArc().uuid, word() + ".jpg", "image/jpeg",
                                   word() + word()}};
            case 18:
                return {Withdrawal{somebody(), "undone " + word()}};
            default: {
                const bool fresh = arcs.empty() || random_.below(3) > 0;
                const ArcId id = fresh ? makeId<ArcId>(laptop.clock, laptop.random) : anArc();
                if (fresh) arcs.push_back(id);
                SpliceArc made = test::arcOf(kit_, id, at.ms, 2);
                made.operatorName = word();
                made.job = job();
                return {made, ReadingChange{id, reading()}};
            }
        }
    }

  private:
    std::int64_t number(std::uint64_t below) { return static_cast<std::int64_t>(random_.below(below)); }
    std::string word() { return "w" + std::to_string(random_.below(100'000)); }
    JobId job() { return jobs_[random_.below(jobs_.size())]; }
    ArcId anArc() { return arcs.empty() ? ArcId{namedUuid("none")} : arcs[random_.below(arcs.size())]; }
    Reading reading() {
        Reading reading;
        reading.channel = 1 + static_cast<int>(random_.below(2));
        reading.loss = Loss{static_cast<std::int32_t>(random_.below(300))};
        reading.note = word();
        return reading;
    }
    /// Mostly a new record, often one of this kind that is there already.
    template <class AnyId>
    AnyId old(std::size_t kind) {
        auto& ids = ids_[kind];
        if (!ids.empty() && random_.below(2) == 0) return AnyId{ids[random_.below(ids.size())]};
        const auto id = makeId<AnyId>(laptop_->clock, laptop_->random);
        ids.push_back(id.uuid);
        return id;
    }
    Uuid somebody() {
        const auto& ids = ids_[random_.below(ids_.size())];
        if (ids.empty() || random_.below(3) == 0) return anArc().uuid;
        return ids[random_.below(ids.size())];
    }

    FakeRandom& random_;
    test::SmallKit kit_;
    std::vector<JobId> jobs_;
    std::array<std::vector<Uuid>, 12> ids_;
    Laptop* laptop_ = nullptr;

  public:
    [[nodiscard]] const std::vector<JobId>& jobs() const { return jobs_; }
};

/// Everything a person could look at, as text.
std::vector<std::string> whatShows(Logbook& book, const std::vector<JobId>& jobs,
                                   const std::vector<ArcId>& arcs) {
    std::vector<std::string> shown;
    const auto add = [&shown](const auto& list) {
        EXPECT_TRUE(list);
        for (const auto& one : *list) {
            const Entry entry = one;
            shown.push_back(toText(recordOf(entry).value_or(Uuid{})) + " " + text(entry));
        }
    };
    add(book.tools());
    add(book.pairings());
    add(book.counterCorrections());
    add(book.jobs());
    add(book.careRecords({}));
    add(book.openCareRuns());
    add(book.cardEditions());
    add(book.holdOverrides());
    add(book.baselineChoices());
    add(book.signalAnswers());
    add(book.measuredLosses({}));
    for (const JobId job : jobs) {
        add(book.cables(job));
        add(book.closures(job));
        add(book.dispositions(job));
        add(book.issuedRecords(job));
    }
    for (const ArcId id : arcs) {
        add(book.attachments(id.uuid));
        const auto arc = book.arc(id).value();
        shown.push_back(arc ? text(Entry(*arc)) + arc->operatorName : "none");
        if (arc)
            for (const Reading& r : arc->readings) shown.push_back(std::to_string(r.loss.value) + r.note);
    }
    for (const char* key : {"key0", "key1", "key2"}) shown.push_back(book.setting(key)->value_or(""));
    const auto totals = book.totals().value();
    for (const auto number : {totals.arcs, totals.readings, totals.care, totals.journalRows})
        shown.push_back(std::to_string(number));
    return shown;
}

std::vector<std::string> whatToLookAt(const Laptop& laptop) {
    std::vector<std::string> list;
    const auto matters = concurrentEditsOf(laptop.file()).value();
    const auto clashes = numberClashesOf(laptop.file()).value();
    for (const auto& matter : matters) {
        list.push_back(toText(matter.record) + matter.kind + std::to_string(matter.channel.value_or(0)));
        for (const Edit& edit : matter.edits) list.push_back(edit.versionKey);
    }
    for (const auto& clash : clashes)
        list.push_back(toText(clash.job.uuid) + std::to_string(clash.number) +
                       std::to_string(clash.records.size()));
    return list;
}

struct World {
    explicit World(std::uint64_t seed) : random(seed) {
        for (unsigned char i = 1; i <= devices; ++i) laptops.push_back(std::make_unique<OpenLaptop>(i));
        laptops[2]->clock.at.ms += 365 * msPerDay;
        kit = test::addKit(*laptops[0]->book, laptops[0]->clock, laptops[0]->random);
        satchels.push_back(laptops[0]->pack());
        for (std::size_t i = 1; i < devices; ++i) EXPECT_TRUE(laptops[i]->take(satchels[0]));
        editor.emplace(random, kit);
    }
    void edit(OpenLaptop& who) {
        who.clock.at.ms += static_cast<std::int64_t>(random.below(50'000));
        const std::string mark = "edit " + std::to_string(made.size());
        const auto saved = who.book->append(editor->entries(who), {mark, "test", {}});
        // What it is about may not have come here yet, or may be taken back; a label may be taken.
        if (saved && saved->firstJournalRow != 0) made.insert(mark);
        if (!saved) {
            EXPECT_TRUE(
                saved.error().code == ProblemCode::NotFound || saved.error().code == ProblemCode::Conflict ||
                saved.error().code == ProblemCode::Refused || saved.error().code == ProblemCode::BadInput)
                << saved.error().sentence();
        }
    }
    void pack(OpenLaptop& who) {
        const auto which = random.below(3);
        if (which == 0) {
            satchels.push_back(who.pack());
        } else if (which == 1) {
            satchels.push_back(
                who.packSince({who.clock.at.ms - static_cast<std::int64_t>(random.below(1'000'000)), 0}));
        } else {
            const auto jobs = who.book->jobs().value();
            if (!jobs.empty()) satchels.push_back(who.packJob(jobs[random.below(jobs.size())].id));
        }
    }
    void take(OpenLaptop& who) {
        const auto taken = who.take(satchels[random.below(satchels.size())]);
        if (!taken) {
            EXPECT_NE(taken.error().what.find("begins later"), std::string::npos) << taken.error().sentence();
        }
    }
    void settle(OpenLaptop& who) {
        const auto list = concurrentEditsOf(who.file()).value();
        if (list.empty()) return;
        const auto& matter = list[random.below(list.size())];
        const auto done =
            settleEdits({who.file(), OpenMode::Companion}, matter, random.below(matter.edits.size()),
                        {"a person", "test", {}}, who.clock, who.random);
        EXPECT_TRUE(done) << done.error().sentence();
    }

    FakeRandom random;
    std::vector<std::unique_ptr<OpenLaptop>> laptops;
    test::SmallKit kit;
    std::vector<std::filesystem::path> satchels;
    std::optional<Editor> editor;
    std::set<std::string> made;  ///< who wrote, one name an edit
};

void runWorld(std::uint64_t seed) {
    World world(seed);
    while (world.made.size() < edits) {
        OpenLaptop& who = *world.laptops[world.random.below(devices)];
        const auto what = world.random.below(100);
        if (what < 84) {
            world.edit(who);
        } else if (what < 90) {
            world.pack(who);
        } else if (what < 98) {
            world.take(who);
        } else {
            world.settle(who);
        }
    }
    // Each hands to each, and once more.
    for (std::size_t i = 0; i < 2 * devices; ++i) {
        const auto satchel = world.laptops[(i * 2) % devices]->pack();
        for (auto& to : world.laptops) {
            const auto taken = to->take(satchel);
            ASSERT_TRUE(taken) << taken.error().sentence();
        }
    }
    auto& first = *world.laptops[0];
    const auto shown = whatShows(*first.book, world.editor->jobs(), world.editor->arcs);
    const auto apart = whatToLookAt(first);
    for (auto& laptop : world.laptops) {
        EXPECT_EQ(laptop->expectSound().headlines, 0u);
        EXPECT_EQ(laptop->head(), first.head());
        EXPECT_EQ(whatShows(*laptop->book, world.editor->jobs(), world.editor->arcs), shown);
        EXPECT_EQ(whatToLookAt(*laptop), apart);
    }
    std::set<std::string> kept;
    const auto journal = first.book->journal(0, 100'000);
    ASSERT_TRUE(journal);
    for (const auto& line : *journal)
        if (line.who.starts_with("edit ")) kept.insert(line.who);
    EXPECT_EQ(kept, world.made) << "an edit was lost";
}

TEST(SatchelProperty, FiveLaptopsEndWithEqualBooks) {
    const char* const more = std::getenv("ARC_PROPERTY_SEEDS");
    const int seeds = more == nullptr ? 3 : std::atoi(more);
    for (int seed = 1; seed <= seeds; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        runWorld(static_cast<std::uint64_t>(seed));
    }
}

}  // namespace
}  // namespace arc::storage
