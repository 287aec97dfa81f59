// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/pyramid.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

#include "ui/widgets/arc_window.hpp"
#include "ui/widgets/plot_map.hpp"

namespace arc::ui {
namespace {

TEST(Pyramid, agreesWithLookingAtEveryValue) {
    std::mt19937 random(5);
    std::uniform_real_distribution<float> value(-1, 1);
    for (const std::size_t size : {1u, 2u, 3u, 7u, 64u, 1000u}) {
        std::vector<float> values(size);
        for (auto& v : values) v = value(random);
        const Pyramid pyramid(values);
        for (int i = 0; i < 200; ++i) {
            const std::size_t begin = random() % size;
            const std::size_t end = begin + 1 + random() % (size - begin);
            const auto [low, high] = std::minmax_element(values.begin() + static_cast<std::ptrdiff_t>(begin),
                                                         values.begin() + static_cast<std::ptrdiff_t>(end));
            EXPECT_EQ(pyramid.over(begin, end), (MinMax{*low, *high}))
                << begin << ".." << end << " of " << size;
        }
    }
}

TEST(PlotMap, goesThereAndBack) {
    const PlotMap map{46, 800, 1, 1600};
    for (const double arc : {1.0, 17.0, 800.5, 1600.0}) EXPECT_NEAR(map.arc(map.x(arc)), arc, 1e-9);
    EXPECT_DOUBLE_EQ(map.x(1), 46);
    EXPECT_DOUBLE_EQ(map.x(1600), 800);
}

TEST(TidyStep, isOneTwoOrFiveTimesAPowerOfTen) {
    EXPECT_EQ(tidyStep(1, 1600, 7), 500);
    EXPECT_EQ(tidyStep(1, 100, 10), 10);
    EXPECT_EQ(tidyStep(1, 5, 10), 1);
    EXPECT_EQ(tidyStep(0, 1'000'000, 6), 200'000);
}

TEST(ArcWindow, staysWithinWhatThereIs) {
    ArcWindow window;
    window.setWhole(1, 1000);
    window.show(900, 1100);
    EXPECT_DOUBLE_EQ(window.to(), 1000);
    EXPECT_DOUBLE_EQ(window.to() - window.from(), 200);
    window.pan(-100);
    EXPECT_DOUBLE_EQ(window.from(), 1);
    window.zoom(1e-9, 50);
    EXPECT_DOUBLE_EQ(window.to() - window.from(), 12);
    window.zoom(1e9, 50);
    EXPECT_DOUBLE_EQ(window.from(), 1);
    EXPECT_DOUBLE_EQ(window.to(), 1000);
}

TEST(ArcWindow, theCursorPullsTheViewAlong) {
    ArcWindow window;
    window.setWhole(1, 1000);
    window.show(100, 200);
    window.setCursor(250);
    EXPECT_LE(window.from(), 250);
    EXPECT_GE(window.to(), 250);
    EXPECT_DOUBLE_EQ(window.to() - window.from(), 100);
}

TEST(ArcWindow, zoomKeepsTheArcUnderTheMouse) {
    ArcWindow window;
    window.setWhole(1, 1000);
    window.show(100, 300);
    window.zoom(0.5, 150);
    const double place = (150 - window.from()) / (window.to() - window.from());
    EXPECT_NEAR(place, 0.25, 1e-9);
}

}  // namespace
}  // namespace arc::ui
