// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry.hpp"

#include <gtest/gtest.h>
#include <set>
#include <string>

namespace arc {
namespace {

Uuid id(std::uint8_t last) {
    Uuid uuid;
    uuid.bytes[15] = last;
    return uuid;
}
const Instant morning = *parseInstant("2031-03-03T07:00:00Z");

SpliceArc goodArc() {
    SpliceArc arc;
    arc.id = ArcId{id(1)};
    arc.at = morning;
    arc.splicer = ToolId{id(2)};
    Reading reading;
    reading.loss = Loss{40};
    reading.fibreA = reading.fibreB = "7";
    arc.readings.push_back(reading);
    return arc;
}
CareRecord goodCare() {
    CareRecord care;
    care.id = CareId{id(3)};
    care.tool = ToolId{id(2)};
    care.at = morning;
    care.action = std::string(action::grooveClean);
    return care;
}

/// Field the Problem names, or "" when the entry is fine.
std::string wrongField(const Entry& entry) {
    const auto result = validate(entry);
    return result ? "" : result.error().where;
}

TEST(Entry, acceptsAPlainSpliceAndSaysSo) {
    EXPECT_EQ(wrongField(goodArc()), "");
    EXPECT_EQ(text(goodArc()), "Splice of fibre 7: 0.04 dB");
    EXPECT_EQ(kindName(goodArc()), "arc");
}

TEST(Entry, namesTheFieldThatIsWrong) {
    auto arc = goodArc();
    arc.readings[0].loss = Loss{-10};
    EXPECT_EQ(wrongField(arc), "loss");
    arc = goodArc();
    arc.channels = 3;
    EXPECT_EQ(wrongField(arc), "channels");
    arc = goodArc();
    arc.readings[0].cleaveLeft = Angle{9'001};
    EXPECT_EQ(wrongField(arc), "cleaveLeft");
    arc = goodArc();
    arc.ambient.humidity = Humidity{1'001};
    EXPECT_EQ(wrongField(arc), "humidity");
    arc = goodArc();
    arc.ambient.pressure = Pressure{20'000};
    EXPECT_EQ(wrongField(arc), "pressure");
    arc = goodArc();
    arc.ambient.temperature = Temperature{18'000};  // 18 degC forgotten to turn into kelvin
    EXPECT_EQ(wrongField(arc), "temperature");
    arc = goodArc();
    arc.splicer = {};
    EXPECT_EQ(wrongField(arc), "splicer");
    arc = goodArc();
    arc.readings[0].attempt = 0;
    EXPECT_EQ(wrongField(arc), "attempt");
}

TEST(Entry, grooveOutsideItsArcOrTwiceIsRefused) {
    auto arc = goodArc();
    arc.readings[0].channel = 2;
    EXPECT_EQ(wrongField(arc), "channel");
    arc.channels = 2;
    EXPECT_EQ(wrongField(arc), "");
    arc.readings.push_back(arc.readings[0]);
    EXPECT_EQ(wrongField(arc), "groove 2, channel");
    arc.readings[1].channel = 1;
    EXPECT_EQ(wrongField(arc), "groove 1, channel");
}

TEST(Entry, anArcOfTwelveMayLackAGroove) {
    auto arc = goodArc();
    arc.channels = 12;
    EXPECT_EQ(wrongField(arc), "");
}

// RFC 3629, section 3 and its table of well-formed sequences (Unicode 15, table 3-7).
TEST(Entry, onlyWellFormedUtf8IsWritten) {
    for (const std::string good : {"M\xC3\xBCller", "\xE2\x84\xA6", "\xF0\x9F\x94\xA5", ""}) {
        auto arc = goodArc();
        arc.operatorName = good;
        EXPECT_EQ(wrongField(arc), "") << good;
    }
    for (const std::string bad :
         {"\xFC", "\xC0\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x84", "a\x80"}) {
        auto arc = goodArc();
        arc.operatorName = bad;
        EXPECT_EQ(wrongField(arc), "operator");
    }
}

TEST(Entry, labelsAreOneLineAndNotBlank) {
    Tool tool{ToolId{id(4)},
              "S-01",
              "Heron",
              Splicer{SplicerKind::MassFusion, 12, ArcControl::SelfCalibrating},
              {}};
    EXPECT_EQ(wrongField(tool), "");
    EXPECT_EQ(text(tool), "Splicer S-01 \"Heron\"");
    tool.label = " ";
    EXPECT_EQ(wrongField(tool), "label");
    tool.label = "S\n01";
    EXPECT_EQ(wrongField(tool), "label");
}

TEST(Entry, aSingleFibreSplicerHasOneGroove) {
    const Tool tool{ToolId{id(4)}, "S-03", "", Splicer{SplicerKind::SingleFibre, 12, ArcControl::Manual}, {}};
    EXPECT_EQ(wrongField(tool), "grooves");
}

TEST(Entry, aRuleWhoseCeilingIsBelowItsLimitIsRefused) {
    Job job{JobId{id(5)}, "HR-A", "", {}};
    EXPECT_EQ(wrongField(job), "");
    job.rule.ceiling = Loss{90};
    EXPECT_EQ(wrongField(job), "rule.ceiling");
}

TEST(Entry, aFibreIsPlannedOnceOnEachSide) {
    Closure closure;
    closure.id = ClosureId{id(6)};
    closure.job = JobId{id(5)};
    closure.label = "HR-17";
    closure.plan = {{1, 1}, {2, 2}};
    EXPECT_EQ(wrongField(closure), "");
    closure.plan = {{1, 1}, {1, 2}};
    EXPECT_EQ(wrongField(closure), "plan.fibreA");
    closure.plan = {{1, 2}, {2, 2}};
    EXPECT_EQ(wrongField(closure), "plan.fibreB");
}

TEST(Entry, measuredLossesMayBeNegativeButNotAbsent) {
    MeasuredLoss measured;
    measured.id = EntryId{id(7)};
    measured.fibre = "7";
    measured.at = morning;
    EXPECT_EQ(wrongField(measured), "aToB");
    measured.aToB = Loss{-273};
    EXPECT_EQ(wrongField(measured), "");
    EXPECT_EQ(text(measured), "Measured fibre 7 at 1550 nm: -0.273 dB, one way");
    measured.bToA = Loss{313};
    EXPECT_EQ(text(measured), "Measured fibre 7 at 1550 nm: -0.273 dB and 0.313 dB, both directions");
}

TEST(Entry, careNeedsItsToolExceptForChangesOfTheSurroundings) {
    auto care = goodCare();
    EXPECT_EQ(wrongField(care), "");
    EXPECT_EQ(text(care), "Groove clean");
    care.tool = {};
    EXPECT_EQ(wrongField(care), "tool");
    care.action = std::string(action::environmentChange);
    EXPECT_EQ(wrongField(care), "");
    care.action = "Groove clean";
    EXPECT_EQ(wrongField(care), "action");
    care = goodCare();
    care.calibration = CalibrationResult{};
    EXPECT_EQ(wrongField(care), "calibration");
}

TEST(Entry, dismissalsOverridesAndCorrectionsNeedAReason) {
    SignalAnswer answer{EntryId{id(8)}, ToolId{id(2)}, "key", SignalAnswerKind::Dismissed, "", "C1", morning};
    EXPECT_EQ(wrongField(answer), "reason");
    HoldOverride hold{EntryId{id(8)}, ToolId{id(2)}, "key", "C1", "", morning};
    EXPECT_EQ(wrongField(hold), "reason");
    CounterCorrection counter{EntryId{id(8)}, ToolId{id(2)}, morning, ArcCount{5}, ""};
    EXPECT_EQ(wrongField(counter), "reason");
}

TEST(Entry, attachmentsKeepTheirLimit) {
    Attachment photo{EntryId{id(9)}, id(1), "tray.jpg", "image/jpeg", std::string(attachmentLimit, 'x')};
    EXPECT_EQ(wrongField(photo), "");
    photo.bytes += 'x';
    EXPECT_EQ(wrongField(photo), "bytes");
}

TEST(Entry, everyKindHasItsOwnName) {
    std::set<std::string_view> names;
    const std::vector<Entry> all{
        Tool{},         Pairing{},        CounterCorrection{}, Job{},
        Cable{},        Closure{},        SpliceArc{},         ReadingChange{},
        MeasuredLoss{}, CareRecord{},     CareRun{},           CardEdition{},
        HoldOverride{}, BaselineChoice{}, SignalAnswer{},      ExceptionDisposition{},
        IssuedRecord{}, Setting{},        Attachment{},        Withdrawal{},
        Span{}};
    ASSERT_EQ(all.size(), std::variant_size_v<Entry>);
    for (const auto& entry : all) {
        names.insert(kindName(entry));
        EXPECT_FALSE(validate(entry)) << kindName(entry) << ": an empty entry says nothing";
        EXPECT_FALSE(text(entry).empty());
    }
    EXPECT_EQ(names.size(), all.size());
    EXPECT_EQ(kindName(Tool{}), "tool");
    EXPECT_EQ(kindName(CareRecord{}), "care");
    EXPECT_EQ(kindName(Withdrawal{}), "withdrawal");
}

TEST(Entry, theOppositeBringsBackWhatWasThere) {
    const auto arc = goodArc();
    const Entry undo = opposite(arc, std::nullopt);
    ASSERT_TRUE(std::holds_alternative<Withdrawal>(undo));
    EXPECT_EQ(std::get<Withdrawal>(undo).of, arc.id.uuid);
    auto before = arc;
    before.readings[0].loss = Loss{30};
    EXPECT_EQ(opposite(arc, before), Entry{before});
    const ReadingChange change{arc.id, arc.readings[0]};
    EXPECT_EQ(std::get<ReadingChange>(opposite(change, std::nullopt)).reading.state, ReadingState::Voided);
    EXPECT_EQ(opposite(Setting{"a", "1"}, Setting{"a", "0"}), (Entry{Setting{"a", "0"}}));
}

}  // namespace
}  // namespace arc
