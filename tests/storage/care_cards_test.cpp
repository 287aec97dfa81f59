// SPDX-License-Identifier: GPL-3.0-or-later
#include "source_dir.hpp"
#include "storage/care_cards.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>
#include <set>

#include "core/care/run.hpp"
#include "storage/json_lines.hpp"

namespace arc::storage {
namespace {

using namespace arc::care;

Deck shipped() {
    auto shelf = shippedCards();
    if (!shelf) throw std::runtime_error(shelf.error().sentence());
    return shelf->deck;
}

Tool toolFor(const Card& card) {
    Tool tool;
    tool.id = ToolId{namedUuid("tool/" + card.id)};
    tool.label = "T-1";
    if (card.tool == ToolKind::Splicer)
        tool.traits = Splicer{SplicerKind::MassFusion, 12, ArcControl::Manual};
    if (card.tool == ToolKind::Cleaver) tool.traits = Cleaver{};
    if (card.tool == ToolKind::Stripper) tool.traits = Stripper{};
    return tool;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    if (at == std::string::npos) throw std::runtime_error("the card has no " + from);
    return text.replace(at, from.size(), to);
}

TEST(ShippedCards, AreTheTenOfTheTrade) {
    std::set<std::string> ids;
    for (const Card& card : shipped().cards) ids.insert(card.id);
    EXPECT_EQ(ids, (std::set<std::string>{"groove_clean", "clamp_clean", "lens_clean", "arc_calibration",
                                          "electrode_replace", "diagnostic", "cleaver_clean", "blade_clean",
                                          "blade_rotate", "stripper_clean"}));
}

TEST(ShippedCards, CoverEveryActionOfTheEventFile) {
    const Deck deck = shipped();
    for (const auto key :
         {action::grooveClean, action::clampClean, action::lensClean, action::arcCalibration,
          action::electrodeReplace, action::stabilise, action::diagnostic, action::cleaverClean,
          action::bladeClean, action::bladeRotate, action::bladeRaise, action::stripperClean})
        EXPECT_NE(deck.find(key), nullptr) << key;
}

TEST(ShippedCards, PassTheirSchema) {
    const std::string folder = ARC_SOURCE_DIR "/resources/care";
    const std::string script =
        "import json,glob,sys,jsonschema\n"
        "s=json.load(open(sys.argv[1]+'/care-card.schema.json'))\n"
        "jsonschema.Draft202012Validator.check_schema(s)\n"
        "v=jsonschema.Draft202012Validator(s)\n"
        "fs=[f for f in glob.glob(sys.argv[1]+'/*.json') if not f.endswith('.schema.json')]\n"
        "bad=[f for f in fs if list(v.iter_errors(json.load(open(f))))]\n"
        "broken=json.load(open(fs[0])); broken['cautions']=[]\n"
        "sys.exit(0 if len(fs)==10 and not bad and list(v.iter_errors(broken)) else 1)\n";
    if (std::system("python3 -I -c 'import jsonschema' 2>/dev/null") != 0)
        GTEST_SKIP() << "python3-jsonschema is not installed";
    const std::string file = testing::TempDir() + "/check_cards.py";
    std::ofstream(file) << script;
    EXPECT_EQ(std::system(("python3 -I '" + file + "' '" + folder + "'").c_str()), 0);
}

TEST(ShippedCards, PutCautionsFirstAndDeferToLocalCodes) {
    for (const Card& card : shipped().cards) {
        ASSERT_FALSE(card.cautions.empty()) << card.id;
        for (const std::string& caution : card.cautions)
            EXPECT_TRUE(caution.ends_with(cautionEnding)) << card.id;
        const Tool tool = toolFor(card);
        const CareRun run = *start(card, tool, CareId{}, Instant{}, "Kit", {});
        EXPECT_EQ(screenOf(card, tool, run).kind, ScreenKind::Cautions) << card.id;
    }
}

// common practice: one swab end wipes at most two pads.
TEST(ShippedCards, NeverAskOneSwabEndForMoreThanTwoPads) {
    for (const Card& card : shipped().cards)
        for (const Step& step : card.steps)
            if (const auto* plain = std::get_if<DoStep>(&step.what)) {
                EXPECT_LE(plain->surfaces, 2) << card.id;
            }
}

// common practice: electrodes burn in about 8-10 minutes on single-fibre splicers, about 15 on mass splicers.
TEST(ShippedCards, StabiliseElectrodesLongerOnMassSplicers) {
    const Deck deck = shipped();
    const auto* timer = std::get_if<TimerStep>(&deck.find("electrode_replace")->step("stabilise")->what);
    ASSERT_NE(timer, nullptr);
    EXPECT_GE(timer->minutesSingle, 8);
    EXPECT_LE(timer->minutesSingle, 10);
    EXPECT_EQ(timer->minutesMass, 15);
    EXPECT_EQ(timer->covers, "stabilise");
}

// common practice: lens and electrode work owe the arc calibration; groove and clamp work do not.
TEST(ShippedCards, OweTheCalibrationAfterLensAndElectrodeWorkOnly) {
    const Deck deck = shipped();
    EXPECT_EQ(deck.find("lens_clean")->obligations, (std::vector<ActionKey>{"arc_calibration"}));
    EXPECT_EQ(deck.find("electrode_replace")->obligations,
              (std::vector<ActionKey>{"stabilise", "arc_calibration"}));
    for (const char* gentle :
         {"groove_clean", "clamp_clean", "diagnostic", "cleaver_clean", "stripper_clean"})
        EXPECT_TRUE(deck.find(gentle)->obligations.empty()) << gentle;
}

/// Does a card as a careful person would: everything good at the first look, or nothing ever good.
CareRecord walk(const Card& card, Outcome looks, int mostInputs) {
    const Tool tool = toolFor(card);
    Instant now{1'000'000'000'000, 60};
    CareRun run = *start(card, tool, CareId{namedUuid("walk")}, now, "Kit", {"due"});
    for (int i = 0; i < mostInputs; ++i) {
        const Screen screen = screenOf(card, tool, run);
        if (screen.kind == ScreenKind::Finished) return *recordOf(card, tool, run, now, std::nullopt);
        now.ms += msPerMinute;
        Input input = Acknowledge{};
        if (screen.kind == ScreenKind::Step) {
            input = Done{now};
            if (const auto* record = std::get_if<RecordStep>(&screen.step->what)) {
                WriteDown down;
                for (const Field& field : record->fields) {
                    if (field.kind == FieldKind::Choice) down.fields[field.key] = field.choices.front();
                    if (field.kind == FieldKind::Number)
                        down.fields[field.key] = std::to_string(static_cast<int>(field.least.value_or(1)));
                    if (field.kind == FieldKind::Text) down.fields[field.key] = "none";
                }
                input = down;
            } else if (std::holds_alternative<InspectStep>(screen.step->what) ||
                       std::holds_alternative<RepeatStep>(screen.step->what)) {
                input = Answer{looks};
            } else if (std::holds_alternative<TimerStep>(screen.step->what)) {
                run = *advance(card, tool, run, StartTimer{now});
                now.ms += screen.timerMinutes * msPerMinute;
                input = Done{now};
            }
        }
        const auto next = advance(card, tool, run, input);
        if (!next) throw std::runtime_error(card.id + ": " + next.error().sentence());
        run = *next;
    }
    throw std::runtime_error(card.id + " does not end");
}

TEST(ShippedCards, EndWhenAllIsGoodAndWhenNothingEverIs) {
    for (const Card& card : shipped().cards) {
        const CareRecord good = walk(card, Outcome::Good, 60);
        const auto outcome = good.fields.find("outcome");
        if (outcome != good.fields.end()) {
            EXPECT_EQ(outcome->second, "reached") << card.id;
        }
        EXPECT_EQ(good.cardVersion, card.version);
        EXPECT_EQ(good.answers, std::vector<std::string>{"due"});
        const CareRecord bad = walk(card, Outcome::NotYet, 200);
        const bool loops = std::ranges::any_of(
            card.steps, [](const Step& s) { return std::holds_alternative<RepeatStep>(s.what); });
        if (loops) {
            EXPECT_EQ(bad.fields.at("outcome"), "not_reached") << card.id;
        }
    }
}

TEST(BrokenCard, IsRefusedWithFileLineAndReason) {
    const std::string good = *shippedCardText("lens_clean");
    ASSERT_TRUE(readCard(good, "lens_clean.json"));
    struct Case {
        std::string from, to, reason;
        int line;
    };
    const Case cases[] = {
        {"\"version\": 1", "\"version\": 0", "at least 1", 4},
        {"\"version\": 1", "\"version\": 1, \"version\": 2", "twice", 4},
        {"\"version\": 1", "\"version\": NaN", "not JSON", 4},
        {"\"version\": 1", "\"version\": 1e999", "cannot be kept", 1},
        {"\"version\": 1", "\"version\": 1.5", "whole number", 4},
        {"\"tool\": \"splicer\"", "\"tool\": \"hammer\"", "none of splicer", 5},
        {"\"minutes\": 20,", "", "missing", 1},
        {"\"minutes\": 20,", "\"minutes\": 20, \"colour\": 3,", "not a member", 8},
        {" Follow local codes and licensed practice.", "", "caution", 10},
    };
    for (const Case& c : cases) {
        const auto card = readCard(replaced(good, c.from, c.to), "lens_clean.json");
        ASSERT_FALSE(card) << c.to;
        EXPECT_NE(card.error().what.find(c.reason), std::string::npos) << card.error().sentence();
        EXPECT_EQ(card.error().where, "lens_clean.json, line " + std::to_string(c.line)) << c.to;
    }
    EXPECT_FALSE(readCard("", "empty.json"));
    EXPECT_FALSE(readCard("[]", "list.json"));
    EXPECT_FALSE(readCard(std::string(100'000, '['), "deep.json"));
    EXPECT_FALSE(readCard(replaced(good, "lenses\"", "lens\xff\""), "bytes.json"));
}

TEST(BrokenCard, IsRefusedWhenALoopOrAJumpLeadsNowhere) {
    const std::string good = *shippedCardText("groove_clean");
    EXPECT_FALSE(readCard(replaced(good, "\"back_to\": \"swab_left\"", "\"back_to\": \"close\""), "f"));
    EXPECT_FALSE(readCard(replaced(good, "\"good_to\": \"brush_last\"", "\"good_to\": \"open\""), "f"));
    EXPECT_FALSE(readCard(replaced(good, "\"surfaces\": 1", "\"surfaces\": 3"), "f"));
    EXPECT_FALSE(readCard(replaced(good, "\"id\": \"swab_left\"", "\"id\": \"open\""), "f"));
}

TEST(Editions, TakeThePlaceOfTheShippedCardAndRaiseTheVersion) {
    const std::string text = replaced(*shippedCardText("groove_clean"), "\"title\": \"Clean V-grooves\"",
                                      "\"title\": \"Our way\"");
    const auto edition = editionOf(text, {}, EntryId{});
    ASSERT_TRUE(edition);
    EXPECT_EQ(edition->version, 2);
    const CardEdition all[] = {*edition};
    const auto shelf = cardsInForce(all);
    ASSERT_TRUE(shelf);
    EXPECT_TRUE(shelf->refused.empty());
    EXPECT_EQ(shelf->deck.find("groove_clean")->title, "Our way");
    EXPECT_EQ(shelf->deck.find("groove_clean")->version, 2);
    EXPECT_EQ(cardOfVersion(all, "groove_clean", 1)->title, "Clean V-grooves");
    EXPECT_EQ(cardOfVersion(all, "groove_clean", 2)->title, "Our way");
    EXPECT_FALSE(cardOfVersion(all, "groove_clean", 3));
    EXPECT_EQ(editionOf(text, all, EntryId{})->version, 3);
}

TEST(Editions, FallBackToTheLastGoodOneAndSayWhy) {
    const std::string good = *shippedCardText("groove_clean");
    const CardEdition all[] = {
        {EntryId{}, "groove_clean", 2, replaced(good, "Clean V-grooves", "Second")},
        {EntryId{}, "groove_clean", 3, replaced(good, "\"minutes\": 8", "\"minutes\": -1")},
        {EntryId{}, "lens_clean", 2, good},
        {EntryId{}, "clamp_clean", 2,
         replaced(*shippedCardText("clamp_clean"), "\"obligations\": []", "\"obligations\": [\"dance\"]")}};
    const auto shelf = cardsInForce(all);
    ASSERT_TRUE(shelf);
    EXPECT_EQ(shelf->deck.find("groove_clean")->title, "Second");
    EXPECT_EQ(shelf->deck.find("lens_clean")->title, "Clean camera lenses");
    EXPECT_TRUE(shelf->deck.find("clamp_clean")->obligations.empty());
    EXPECT_EQ(shelf->deck.cards.size(), 10U);
    EXPECT_EQ(shelf->refused.size(), 3U);
    for (const Problem& problem : shelf->refused) EXPECT_NE(problem.where.find("line"), std::string::npos);
    EXPECT_FALSE(editionOf(all[1].json, all, EntryId{}));
}

TEST(Editions, MayNotMakeTheCardsGoRoundInACircle) {
    const std::string text = replaced(*shippedCardText("arc_calibration"), "\"obligations\": []",
                                      "\"obligations\": [\"lens_clean\"]");
    const auto edition = editionOf(text, {}, EntryId{});
    ASSERT_FALSE(edition);
    EXPECT_NE(edition.error().what.find("circle"), std::string::npos);
}

TEST(JsonLines, FindsTheLineOfEachValue) {
    const auto lines = jsonLines("{\n\"a\": [1,\n2,\n{\"b\": \"x\\\"}\"}],\n\"c\": 4}");
    EXPECT_EQ(lines.line("/a"), 2);
    EXPECT_EQ(lines.line("/a/1"), 3);
    EXPECT_EQ(lines.line("/a/2/b"), 4);
    EXPECT_EQ(lines.line("/c"), 5);
    EXPECT_EQ(lines.line("/a/2/none"), 4);
    EXPECT_FALSE(lines.firstDuplicate);
    EXPECT_EQ(jsonLines("{\"a\": {\"b\": 1,\n\"b\": 2}}").firstDuplicate->line, 2);
}

}  // namespace
}  // namespace arc::storage
