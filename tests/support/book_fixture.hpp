// SPDX-License-Identifier: GPL-3.0-or-later
// A small logbook in which every table has rows, and some of them more than one version.
#pragma once
#include <fstream>
#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <vector>

#include "core/logbook.hpp"
#include "storage/intake.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/support/fakes.hpp"

namespace arc::test {

inline const Context testContext{"Ada", "test", {}};

struct SmallKit {
    Tool splicer;
    Tool cleaver;
    Job job;
};

inline SmallKit addKit(Logbook& book, Clock& clock, Random& random) {
    SmallKit kit;
    kit.splicer.id = makeId<ToolId>(clock, random);
    kit.splicer.label = "S-01";
    kit.splicer.traits = Splicer{SplicerKind::MassFusion, 12, ArcControl::Manual};
    kit.cleaver.id = makeId<ToolId>(clock, random);
    kit.cleaver.label = "C-01";
    kit.cleaver.traits = Cleaver{};
    kit.job.id = makeId<JobId>(clock, random);
    kit.job.label = "HR-B";
    const std::vector<Entry> entries{kit.splicer, kit.cleaver, kit.job};
    EXPECT_TRUE(book.append(entries, testContext));
    return kit;
}

inline SpliceArc arcOf(const SmallKit& kit, ArcId id, std::int64_t atMs, int channels) {
    SpliceArc made;
    made.id = id;
    made.at = {atMs, 60};
    made.splicer = kit.splicer.id;
    made.job = kit.job.id;
    made.mode = "G.652-G.652";
    made.channels = channels;
    made.operatorName = "Ada";
    for (int c = 1; c <= channels; ++c) {
        Reading reading;
        reading.channel = c;
        reading.loss = Loss{20 + c};
        reading.fibreA = std::to_string(c);
        made.readings.push_back(reading);
    }
    return made;
}

/// How many of these arcs a book holds with twelve readings.
inline std::size_t wholeArcs(const std::filesystem::path& file, const std::vector<ArcId>& ids, Clock& clock,
                             Random& random) {
    auto book = storage::openLogbook(file, storage::OpenMode::ReadOnly, clock, random).value();
    std::size_t there = 0;
    for (const ArcId id : ids) {
        const auto made = book->arc(id);
        if (made && *made && (*made)->readings.size() == 12) ++there;
    }
    return there;
}

/// Corrections, a withdrawal, an attachment, settings, care, set-aside rows, a retry key.
inline void fillEveryTable(const std::filesystem::path& file, const std::filesystem::path& folder,
                           Clock& clock, Random& random) {
    {
        auto book = storage::createLogbook(file, clock, random).value();
        const SmallKit kit = addKit(*book, clock, random);
        SpliceArc first = arcOf(kit, makeId<ArcId>(clock, random), 1'900'000'000'000, 4);
        first.cleaver = kit.cleaver.id;
        first.ambient = {Temperature{280'000}, Humidity{500}, Pressure{95'000}};
        first.counter = ArcCount{77};
        first.readings[0].cleaveLeft = Angle{40};
        first.readings[0].cleaveRight = Angle{50};
        SpliceArc second = arcOf(kit, makeId<ArcId>(clock, random), 1'900'000'100'000, 2);
        SpliceArc moved = first;
        moved.operatorName = "Bo";
        Reading corrected = first.readings[2];
        corrected.loss = Loss{250};
        corrected.note = "read wrong";
        CareRecord care;
        care.id = makeId<CareId>(clock, random);
        care.tool = kit.splicer.id;
        care.at = {1'900'000'200'000, 0};
        care.action = "groove_clean";
        const Attachment photo{makeId<EntryId>(clock, random), care.id.uuid, "groove.jpg", "image/jpeg",
                               "not a jpeg"};
        Context keyed = testContext;
        keyed.retryKey = makeUuid7(clock.now(), random);
        const std::vector<Entry> entries{first,
                                         second,
                                         moved,
                                         ReadingChange{first.id, corrected},
                                         Withdrawal{second.id.uuid, "undone"},
                                         care,
                                         photo,
                                         Setting{"drift.budget_arcs", "1000"},
                                         Setting{"drift.budget_arcs", "2000"}};
        const auto receipt = book->append(entries, keyed);
        ASSERT_TRUE(receipt) << receipt.error().sentence();
    }
    std::ofstream(folder / "log.csv") << "time,splicer,loss_db,arc_count\n2031-03-03T07:00:00Z,S-02,0.03,1\n"
                                         "2031-03-03T07:01:00Z,S-02,-0.03,2\nnever,S-02,0.03,3\n";
    NoProgress unwatched;
    const auto taken = storage::takeIn(
        {file, {{folder / "log.csv", {}}}, storage::Purpose::Import, storage::OpenMode::ReadWrite, "Ada"},
        clock, random, unwatched);
    ASSERT_TRUE(taken) << taken.error().sentence();
}

}  // namespace arc::test
