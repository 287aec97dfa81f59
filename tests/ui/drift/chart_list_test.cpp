// SPDX-License-Identifier: GPL-3.0-or-later
// Every chart of the Drift screen, on the analysis of a ribbon log whose groove 5 is dirty from arc 601 on.
#include "ui/drift/chart_list.hpp"

#include <algorithm>
#include <gtest/gtest.h>

#include "tests/support/splice_world.hpp"
#include "ui/drift/words.hpp"

namespace arc::ui {
namespace {

class ChartListTest : public ::testing::Test {
  protected:
    ChartListTest() {
        testing::World world;
        world.fault = testing::Fault::Groove;
        world.sizeDb = 0.08;
        world.arcs = 700;
        history = testing::makeLog(world, 5);
        report = drift::analyse(std::span(&history, 1), {}, drift::Detail::WithTraces).front().strata.front();
    }
    const ChartData* lower(const QString& title) {
        charts = lowerCharts({report, history});
        const auto found =
            std::ranges::find_if(charts, [&](const auto& chart) { return chart->title.startsWith(title); });
        return found == charts.end() ? nullptr : found->get();
    }
    SplicerHistory history;
    drift::StratumReport report;
    std::vector<std::shared_ptr<const ChartData>> charts;
};

TEST_F(ChartListTest, theCommonLevelIsOnTopWithItsLimit) {
    const auto level = levelChart({report, history});
    ASSERT_NE(level, nullptr);
    EXPECT_EQ(level->arc.back(), 700);
    EXPECT_TRUE(level->limit.has_value());
}

TEST_F(ChartListTest, theStripHasARowForEachGrooveAndTheDirtyOneIsLoud) {
    const auto rows = stripRows({report, history});
    ASSERT_EQ(rows.size(), 12u);
    for (const auto& row : rows) {
        EXPECT_EQ(row.loud, row.channel == 5) << row.channel;
        EXPECT_EQ(row.arc.back(), 700) << row.channel;
    }
    // The sum is emptied where it signals.
    EXPECT_GT(*std::ranges::max_element(rows[4].value), 0.8F);
}

TEST_F(ChartListTest, anglesSpreadAndReSplicesHaveChartsOfTheirOwn) {
    for (const auto kind :
         {drift::ChartKind::Spread, drift::ChartKind::CleaveAngle, drift::ChartKind::ResplicesRate}) {
        const auto title = kind == drift::ChartKind::CleaveAngle ? QStringLiteral("cleave angles, summed up")
                                                                 : wordOf(kind, std::nullopt);
        const auto* chart = lower(title);
        ASSERT_NE(chart, nullptr) << title.toStdString();
        EXPECT_EQ(chart->arc.back(), 700) << title.toStdString();
        EXPECT_TRUE(chart->limit.has_value()) << title.toStdString();
    }
    EXPECT_NE(lower(QStringLiteral("cleave angles")), nullptr);
    EXPECT_NE(lower(QStringLiteral("losses")), nullptr);
}

TEST_F(ChartListTest, aWildLossIsOnTheScaleOfAFewArcsAndAboveThatOfMany) {
    const auto wild = [this](std::size_t arc) {
        for (std::size_t r = 0; r < history.arcs[arc].readingCount; ++r)
            history.readings[history.arcs[arc].firstReading + r].loss = Loss{2'000};
    };
    wild(1);
    EXPECT_LT(lower(QStringLiteral("losses"))->top, 2.0) << "one of 700 does not flatten the others";
    history.arcs.resize(4);
    EXPECT_GE(lower(QStringLiteral("losses"))->top, 2.0);
}

TEST_F(ChartListTest, whatWasNeverReadHasNoChart) {
    for (auto& reading : history.readings) reading.cleaveLeft = reading.cleaveRight = std::nullopt;
    report = drift::analyse(std::span(&history, 1), {}, drift::Detail::WithTraces).front().strata.front();
    EXPECT_EQ(lower(QStringLiteral("cleave angles")), nullptr);
}

}  // namespace
}  // namespace arc::ui
