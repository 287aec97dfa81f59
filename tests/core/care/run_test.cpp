// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/run.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/care/record_check.hpp"
#include "tests/support/care_bench.hpp"

namespace arc::care {
namespace {

using namespace arc::test;

/// Two wipes of two pads, a loop of three rounds, a wait, a form.
Card wipeCard() {
    Card card = cardNamed("lens_clean", ToolKind::Splicer);
    card.version = 4;
    card.steps = {
        {"look", "Look.", "", InspectStep{"Clean already?", "wait"}},
        {"wipe_1", "Wipe two.", "", DoStep{2}},
        {"wipe_2", "Wipe two.", "", DoStep{2}},
        {"dry", "Dry one.", "", DoStep{1}},
        {"again", "Look.", "", RepeatStep{"Clean?", "wipe_1", 3, "diagnostic"}},
        {"wait", "Wait.", "", TimerStep{10, 15, "stabilise"}},
        {"note", "Note.", "",
         RecordStep{{{"found", "Found", FieldKind::Choice, Required::Yes, {}, {}, "", {"dust", "lint"}},
                     {"count", "Count", FieldKind::Number, Required::No, 1, 16, "", {}},
                     {"words", "Words", FieldKind::Text, Required::No, {}, {}, "", {}}}}}};
    return card;
}

/// A run with its card and tool, moved by inputs that must be taken.
struct Walk {
    Card card = wipeCard();
    Tool tool = mass();
    CareRun run = *start(card, tool, CareId{namedUuid("run")}, at(0), "Kit", {"due"});

    Screen screen() const { return screenOf(card, tool, run); }
    Result<CareRun> attempt(const Input& input) const { return advance(card, tool, run, input); }
    Walk& give(const Input& input) {
        auto next = attempt(input);
        if (!next) throw std::runtime_error(next.error().sentence());
        run = *next;
        return *this;
    }
    Walk& toSteps() { return give(Acknowledge{}).give(Acknowledge{}); }
    std::string stepId() const { return screen().step ? screen().step->id : ""; }
};

TEST(Run, ShowsCautionsThenMaterialsThenSteps) {
    Walk walk;
    EXPECT_EQ(walk.screen().kind, ScreenKind::Cautions);
    EXPECT_FALSE(walk.attempt(Done{at(0)})) << "cautions must be acknowledged";
    EXPECT_FALSE(walk.attempt(Answer{Outcome::Good}));
    walk.give(Acknowledge{});
    EXPECT_EQ(walk.screen().kind, ScreenKind::Materials);
    EXPECT_FALSE(walk.attempt(Done{at(0)}));
    walk.give(Acknowledge{});
    EXPECT_EQ(walk.screen().kind, ScreenKind::Step);
    EXPECT_EQ(walk.screen().number, 1);
    EXPECT_EQ(walk.screen().of, 7);
    EXPECT_FALSE(walk.attempt(Acknowledge{}));
}

TEST(Run, OfACardForAnotherToolIsRefused) {
    EXPECT_FALSE(start(wipeCard(), cleaver(), CareId{}, at(0), "Kit", {}));
}

TEST(Run, TakesAFreshSwabEndForEveryWipe) {
    Walk walk;
    walk.toSteps().give(Answer{Outcome::NotYet});
    EXPECT_EQ(walk.screen().swabEnd, 1);
    walk.give(Done{at(0)});
    EXPECT_EQ(walk.screen().swabEnd, 2);
    walk.give(Done{at(0)}).give(Done{at(0)});
    EXPECT_EQ(walk.screen().swabEndsUsed, 3);
    walk.give(Answer{Outcome::NotYet});
    EXPECT_EQ(walk.stepId(), "wipe_1");
    EXPECT_EQ(walk.screen().swabEnd, 4) << "no end is used again in the next round";
    EXPECT_EQ(walk.screen().round, 2);
    EXPECT_EQ(walk.screen().rounds, 3);
}

TEST(Run, LeavesALoopWhenItIsGoodAndAfterTheLastRound) {
    for (const int inVain : {0, 1, 2, 3}) {
        Walk walk;
        walk.toSteps().give(Answer{Outcome::NotYet});
        for (int i = 0; i < inVain; ++i)
            walk.give(Done{at(0)}).give(Done{at(0)}).give(Done{at(0)}).give(Answer{Outcome::NotYet});
        if (inVain < 3)
            walk.give(Done{at(0)}).give(Done{at(0)}).give(Done{at(0)}).give(Answer{Outcome::Good});
        EXPECT_EQ(walk.stepId(), "wait") << inVain;
        walk.give(StartTimer{at(0)}).give(Done{at(1)}).give(WriteDown{{{"found", "dust"}}});
        const auto record = recordOf(walk.card, walk.tool, walk.run, at(1), ArcCount{77});
        ASSERT_TRUE(record);
        EXPECT_EQ(record->fields.at("outcome"), inVain < 3 ? "reached" : "not_reached");
        EXPECT_EQ(record->fields.at("rounds"), std::to_string(std::min(inVain + 1, 3)));
        EXPECT_EQ(record->fields.at("swab_ends"), std::to_string(3 * std::min(inVain + 1, 3)));
        EXPECT_EQ(record->cardVersion, 4);
        EXPECT_EQ(record->id, walk.run.id);
        EXPECT_EQ(record->counter, ArcCount{77});
        EXPECT_EQ(record->answers, std::vector<std::string>{"due"});
        EXPECT_TRUE(covers(*record, "stabilise"));
    }
}

TEST(Run, WaitsForTheTimerOfItsKindOfSplicer) {
    for (const Tool& tool : {mass(), single()}) {
        Walk walk;
        walk.tool = tool;
        walk.run.tool = tool.id;
        walk.toSteps().give(Answer{Outcome::Good});
        const int minutes = tool.label == "S-01" ? 15 : 10;
        EXPECT_EQ(walk.screen().timerMinutes, minutes);
        EXPECT_FALSE(walk.attempt(Done{at(1)})) << "not started";
        walk.give(StartTimer{at(0)});
        const Instant end{at(0).ms + minutes * msPerMinute, 0};
        EXPECT_EQ(walk.screen().timerEnd, end);
        walk.give(StartTimer{at(5)});
        EXPECT_EQ(walk.screen().timerEnd, end) << "a running timer is not set back";
        EXPECT_FALSE(walk.attempt(Done{Instant{end.ms - 1, 0}}));
        EXPECT_TRUE(walk.attempt(Done{end}));
    }
}

TEST(Run, ChecksWhatIsWrittenDown) {
    Walk walk;
    walk.toSteps().give(Answer{Outcome::Good}).give(StartTimer{at(0)}).give(Done{at(1)});
    EXPECT_FALSE(walk.attempt(Done{at(1)}));
    EXPECT_FALSE(walk.attempt(WriteDown{{}})) << "found is required";
    EXPECT_FALSE(walk.attempt(WriteDown{{{"found", "mud"}}}));
    for (const char* bad : {"0", "17", "2.5", "two", "3 ", "nan", "1e99"})
        EXPECT_FALSE(walk.attempt(WriteDown{{{"found", "dust"}, {"count", bad}}})) << bad;
    EXPECT_FALSE(walk.attempt(WriteDown{{{"found", "dust"}, {"other", "x"}}}));
    EXPECT_FALSE(recordOf(walk.card, walk.tool, walk.run, at(1), {}));
    walk.give(WriteDown{{{"found", "lint"}, {"count", "16"}}});
    EXPECT_EQ(walk.screen().kind, ScreenKind::Finished);
    EXPECT_EQ(recordOf(walk.card, walk.tool, walk.run, at(1), {})->fields.at("count"), "16");
}

TEST(Run, CanBeReadBackwardsWithoutCountingTwice) {
    Walk walk;
    walk.toSteps().give(Answer{Outcome::NotYet}).give(Done{at(0)}).give(Done{at(0)});
    const CareRun before = walk.run;
    walk.give(Back{}).give(Back{});
    EXPECT_TRUE(walk.screen().readingBack);
    EXPECT_EQ(walk.stepId(), "wipe_1");
    walk.give(Done{at(0)}).give(Done{at(0)});
    EXPECT_EQ(walk.run, before);
    walk.give(Back{}).give(Back{}).give(Back{}).give(Back{}).give(Back{});
    EXPECT_EQ(walk.screen().kind, ScreenKind::Cautions);
    EXPECT_FALSE(walk.attempt(Back{}));
    walk.give(Acknowledge{})
        .give(Acknowledge{})
        .give(Answer{Outcome::Good})
        .give(Done{at(0)})
        .give(Done{at(0)});
    EXPECT_EQ(walk.run, before);
}

TEST(Run, GoesOnAtTheSameStepAfterACrashAndNotWithAnotherCard) {
    Walk walk;
    walk.toSteps().give(Answer{Outcome::NotYet}).give(Done{at(0)});
    const CareRun saved = walk.run;
    Walk later;
    later.run = saved;
    EXPECT_EQ(later.stepId(), "wipe_2");
    EXPECT_TRUE(canResume(later.card, later.tool, saved));
    Card newer = wipeCard();
    newer.version = 5;
    EXPECT_FALSE(canResume(newer, later.tool, saved));
    EXPECT_FALSE(canResume(later.card, single(), saved));
    EXPECT_FALSE(canResume(later.card, later.tool, abandoned(saved)));
    EXPECT_FALSE(canResume(later.card, later.tool, finished(saved)));
    CareRun lost = saved;
    lost.step = 99;
    EXPECT_FALSE(canResume(later.card, later.tool, lost));
}

TEST(Run, OfACalibrationWritesItsResults) {
    CareRecord record = careOf(mass(), "arc_calibration", 1);
    record.fields = {{"power", "adequate"},
                     {"position", "not_adequate"},
                     {"fibre_type", "G.652.D"},
                     {"fibre_count", "12"},
                     {"rounds", "3"}};
    ASSERT_TRUE(readFields(record));
    EXPECT_EQ(record.calibration,
              (CalibrationResult{Adequacy::Adequate, Adequacy::NotAdequate, "G.652.D", 12, 3}));
    record.fields["fibre_count"] = "17";
    EXPECT_FALSE(readFields(record));
    CareRecord blade = careOf(cleaver(), "blade_rotate", 1);
    blade.fields = {{"move", "next_height"}, {"blade_height", "2"}, {"blade_position", "1"}};
    ASSERT_TRUE(readFields(blade));
    EXPECT_EQ(blade.action, "blade_raise");
    EXPECT_EQ(blade.blade, (BladePlace{2, 1}));
}

/// One random input; times go on, never back.
Input anyInput(int kind, int value, Instant now) {
    switch (kind) {
        case 0:
            return Acknowledge{};
        case 1:
            return Done{now};
        case 2:
            return StartTimer{now};
        case 3:
            return Answer{value % 2 == 0 ? Outcome::Good : Outcome::NotYet};
        case 4:
            return WriteDown{{{"found", value % 3 == 0 ? "mud" : "dust"}}};
        default:
            return Back{};
    }
}

// Whatever is pressed in whatever order: cautions come first, no swab end wipes more than two pads, a wait
// cannot be cut short, and a record exists only at the end.
RC_GTEST_PROP(RunProperty, NoInputSkipsWhatIsCompulsory, ()) {
    Walk walk;
    Instant now = at(0);
    int acknowledged = 0;
    const auto count = *rc::gen::inRange(0, 200);
    for (int i = 0; i < count; ++i) {
        now.ms += *rc::gen::inRange<std::int64_t>(0, 20) * msPerMinute;
        const Screen before = walk.screen();
        const Input input = anyInput(*rc::gen::inRange(0, 6), *rc::gen::inRange(0, 6), now);
        const CareRun old = walk.run;
        auto next = walk.attempt(input);
        if (!next) {
            RC_ASSERT(walk.run == old);
            continue;
        }
        if (std::holds_alternative<Acknowledge>(input)) ++acknowledged;
        if (before.kind == ScreenKind::Step && !before.readingBack && before.timerMinutes > 0 &&
            next->step > old.step) {
            RC_ASSERT(before.timerEnd.has_value());
            RC_ASSERT(*before.timerEnd <= now);
        }
        walk.run = *next;
        const Screen after = walk.screen();
        if (after.kind == ScreenKind::Step) RC_ASSERT(acknowledged >= 2);
        RC_ASSERT(after.swabEndsUsed >= before.swabEndsUsed);
        RC_ASSERT(after.swabEndsUsed - before.swabEndsUsed <= 1);
        RC_ASSERT(after.round <= after.rounds);
        const auto record = recordOf(walk.card, walk.tool, walk.run, now, {});
        RC_ASSERT(record.has_value() == (after.kind == ScreenKind::Finished));
        if (record && covers(*record, "stabilise")) RC_ASSERT(walk.run.fields.contains("timer_started.wait"));
        if (record) RC_ASSERT(record->fields.contains("found"));
    }
}

// Whatever is recorded in whatever order, an obligation goes away only with a record of its own action that
// reached its end, later than what made it compulsory.
RC_GTEST_PROP(ObligationProperty, NoPathClosesOneWithoutItsAction, ()) {
    static const std::vector<std::string> actions{
        "electrode_replace", "lens_clean",  "arc_calibration", "stabilise", "diagnostic",
        "groove_clean",      "clamp_clean", "blade_rotate",    "note",      "environment_change"};
    const Deck deck = smallDeck();
    const SplicerHistory history = historyOf(mass());
    std::vector<CareRecord> records;
    double day = 0;
    const auto count = *rc::gen::inRange(1, 25);
    for (int i = 0; i < count; ++i) {
        const auto openBefore = openObligations(mass(), records, deck, {});
        const auto owedBefore = calibrationOwed(mass(), records, history, deck, {});
        day += 1;
        CareRecord record = careOf(mass(), *rc::gen::elementOf(actions), day);
        if (record.action == "arc_calibration") {
            const auto good = *rc::gen::arbitrary<bool>();
            record = calibrationOf(mass(), day, good ? Adequacy::Adequate : Adequacy::NotAdequate);
        }
        if (*rc::gen::inRange(0, 4) == 0) record.fields["outcome"] = "not_reached";
        records.push_back(record);
        const auto openAfter = openObligations(mass(), records, deck, {});
        for (const Obligation& one : openBefore) {
            if (std::ranges::find(openAfter, one.action, &Obligation::action) != openAfter.end()) continue;
            // A diagnostic run owed for a care that did not reach its end is moot once that care reached it.
            const bool own = record.action == one.action;
            const bool moot = one.action == "diagnostic" && record.action == one.after;
            RC_ASSERT(own || moot);
            RC_ASSERT(effectOf(record) != Effect::NotReached);
        }
        const auto owedAfter = calibrationOwed(mass(), records, history, deck, {});
        const bool was = !owedBefore.empty() && !owedBefore.back().to;
        const bool is = !owedAfter.empty() && !owedAfter.back().to;
        if (was && !is) {
            RC_ASSERT(record.action == "arc_calibration");
            RC_ASSERT(effectOf(record) == Effect::Reached);
        }
        if (record.action == "electrode_replace" || record.action == "lens_clean") RC_ASSERT(is);
        for (std::size_t s = 1; s < owedAfter.size(); ++s) {
            RC_ASSERT(owedAfter[s - 1].to.has_value());
            RC_ASSERT(*owedAfter[s - 1].to <= owedAfter[s].from);
        }
    }
}

}  // namespace
}  // namespace arc::care
