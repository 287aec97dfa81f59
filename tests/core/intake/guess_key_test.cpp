// SPDX-License-Identifier: GPL-3.0-or-later
// First column keys from headers nobody has seen before. The headers are invented.
#include "core/intake/guess_key.hpp"

#include <gtest/gtest.h>

namespace arc {
namespace {

using Row = std::vector<std::string>;

KeyGuess guess(const Row& header, const std::vector<Row>& rows, char separator = ';',
               FileKind kind = FileKind::SpliceLog) {
    return guessKey(kind, header, rows, separator);
}

TEST(GuessKey, WordsOfSeveralLanguagesAndUnitsInBrackets) {
    const auto english = guess({"Date/Time", "Serial No.", "Est. Loss [dB]", "Arc Count", "Cleave Left (deg)",
                                "Cleave Right (deg)", "Colour"},
                               {});
    EXPECT_EQ(english.key.columns.at("time"), "date/time");
    EXPECT_EQ(english.key.columns.at("splicer"), "serial no.");
    EXPECT_EQ(english.key.columns.at("loss_db"), "est. loss [db]");
    EXPECT_EQ(english.key.columns.at("arc_count"), "arc count");
    EXPECT_EQ(english.key.columns.at("cleave_left_deg"), "cleave left (deg)");
    EXPECT_EQ(english.key.columns.size(), 6u) << "nobody knows what a colour is good for";
    const auto german = guess({"Datum", "Uhrzeit", "Gerät", "Dämpfung", "Muffe", "Faser"}, {});
    EXPECT_EQ(german.key.columns.at("time"), "datum");
    EXPECT_EQ(german.key.timeOfDay, "uhrzeit");
    EXPECT_EQ(german.key.columns.at("splicer"), "gerät");
    EXPECT_EQ(german.key.columns.at("loss_db"), "dämpfung");
    EXPECT_EQ(german.key.columns.at("closure"), "muffe");
    const auto letters = guess({"Datum", "Winkel L", "Angle (R)"}, {});
    EXPECT_EQ(letters.key.columns.at("cleave_left_deg"), "winkel l");
    EXPECT_EQ(letters.key.columns.at("cleave_right_deg"), "angle (r)");
    const auto spanish = guess({"Fecha", "Hora", "Equipo", "Pérdida (dB)"}, {});
    EXPECT_EQ(spanish.key.timeOfDay, "hora");
    EXPECT_EQ(spanish.key.columns.at("loss_db"), "pérdida (db)");
}

TEST(GuessKey, EveryFieldIsFoundUnderItsOwnName) {
    for (const auto kind : {FileKind::SpliceLog, FileKind::Events, FileKind::MeasuredLosses}) {
        Row header;
        for (const auto& column : ourColumns(kind)) header.emplace_back(column.name);
        const auto found = guess(header, {}, ',', kind);
        for (const auto& column : ourColumns(kind))
            EXPECT_EQ(found.key.columns.at(std::string(column.name)), column.name);
    }
}

TEST(GuessKey, OneColumnPerChannelIsOneFamily) {
    const auto wide = guess({"when", "unit", "L angle 1", "L angle 2", "Loss 1 (mdB)", "Loss 2 (mdB)",
                             "Loss 3 (mdB)", "Loss 4 (mdB)"},
                            {{"2031-03-03T07:00:00Z", "S-1", "0.4", "0.5", "30", "41", "20", "22"}});
    ASSERT_EQ(wide.key.wide.size(), 4u);
    EXPECT_EQ(wide.key.wide.at(3), "loss 3 (mdb)");
    EXPECT_EQ(wide.key.lossUnit, LossUnit::Millidecibel);
    EXPECT_FALSE(wide.key.columns.contains("loss_db"));
    EXPECT_FALSE(wide.asks(OpenQuestion::LossUnit));
    EXPECT_TRUE(guess({"time", "unit", "f1"}, {}).key.wide.empty()) << "one column is no family";
    EXPECT_TRUE(guess({"time", "unit", "f2", "f3"}, {}).key.wide.empty()) << "groove 1 is missing";
}

TEST(GuessKey, DatesAreReadOnlyWhenARowDecides) {
    const Row header{"date", "unit", "loss"};
    const auto open =
        guess(header, {{"03/04/2031 07:00", "S-1", "0.03"}, {"05/04/2031 07:00", "S-1", "0.03"}});
    EXPECT_EQ(open.key.dates, DateForm::Iso);
    EXPECT_TRUE(open.asks(OpenQuestion::DayOrMonth));
    EXPECT_TRUE(open.asks(OpenQuestion::Offset));
    const auto day =
        guess(header, {{"03/04/2031 07:00", "S-1", "0.03"}, {"27/04/2031 07:00", "S-1", "0.03"}});
    EXPECT_EQ(day.key.dates, DateForm::DayMonthYear);
    EXPECT_FALSE(day.asks(OpenQuestion::DayOrMonth));
    EXPECT_EQ(guess(header, {{"04/27/2031 7:00 PM", "S-1", "0.03"}}).key.dates, DateForm::MonthDayYear);
    const auto both = guess(header, {{"27/04/2031 07:00", "S-1", ""}, {"04/27/2031 07:00", "S-1", ""}});
    EXPECT_TRUE(both.asks(OpenQuestion::DayOrMonth)) << "rows that contradict each other decide nothing";
    const auto iso = guess(header, {{"2031-04-03T07:00:00+01:00", "S-1", "0.03"}});
    EXPECT_TRUE(iso.open.empty());
    EXPECT_EQ(guess(header, {{"2031/4/3 07:00", "S-1", "0.03"}}).key.dates, DateForm::YearMonthDay);
    EXPECT_TRUE(guess(header, {{"2031-04-03 07:00", "S-1", "0.03"}}).asks(OpenQuestion::Offset));
}

TEST(GuessKey, DecimalMarkAndUnitComeFromTheLosses) {
    const Row header{"time", "unit", "loss"};
    EXPECT_EQ(guess(header, {{"", "", "0,03"}}).key.decimal, DecimalMark::Comma);
    EXPECT_EQ(guess(header, {{"", "", "0.03"}}).key.decimal, DecimalMark::Point);
    EXPECT_EQ(guess(header, {{"", "", "0.03"}, {"", "", "0,03"}}).key.decimal, std::nullopt);
    EXPECT_TRUE(guess(header, {{"", "", "30"}, {"", "", "41"}}).asks(OpenQuestion::LossUnit));
    EXPECT_FALSE(guess(header, {{"", "", "0"}, {"", "", "0.04"}}).asks(OpenQuestion::LossUnit));
}

TEST(GuessKey, RowsOfAnotherLengthAreNoEvidence) {
    const auto odd = guess({"date", "unit", "loss"}, {{"27/04/2031"}, {}, {"1", "2", "3", "4"}});
    EXPECT_FALSE(odd.asks(OpenQuestion::DayOrMonth));
    EXPECT_EQ(odd.key.dates, DateForm::Iso);
}

TEST(BestKey, TheSameHeaderGoesBeforeOneThatOnlyFits) {
    ColumnKey fits, same;
    fits.name = "fits";
    fits.columns = {{"time", "when"}};
    same.name = "same";
    same.columns = {{"time", "when"}, {"splicer", "unit"}};
    same.header = {"when", "unit", "loss"};
    const std::vector<ColumnKey> keys{fits, same};
    const Row header{"when", "unit", "loss"}, other{"when", "unit"}, none{"time", "unit"};
    EXPECT_EQ(bestKey(keys, FileKind::SpliceLog, header)->name, "same");
    EXPECT_EQ(bestKey(keys, FileKind::SpliceLog, other)->name, "fits");
    EXPECT_EQ(bestKey(keys, FileKind::SpliceLog, none), nullptr);
    EXPECT_EQ(bestKey(keys, FileKind::Events, header), nullptr);
    EXPECT_EQ(bestKey(std::vector{ColumnKey{}}, FileKind::SpliceLog, header), nullptr) << "a key of nothing";
}

}  // namespace
}  // namespace arc
