// SPDX-License-Identifier: GPL-3.0-or-later
// Contrast as WCAG 2.1 defines it (success criteria 1.4.3, 1.4.6 and 1.4.11, W3C Recommendation 2018).
#include "ui/theme/palette.hpp"

#include <QApplication>
#include <QFontMetrics>
#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>
#include <vector>

#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/theme/typeface.hpp"

namespace arc::ui {
namespace {

TEST(Contrast, agreesWithTheStandard) {
    // WCAG: black on white is 21:1; #767676 is the lightest grey that reaches 4.5:1 on white.
    EXPECT_NEAR(contrast(QColor(Qt::black), QColor(Qt::white)), 21.0, 1e-9);
    EXPECT_GE(contrast(QColor("#767676"), QColor(Qt::white)), 4.5);
    EXPECT_LT(contrast(QColor("#777777"), QColor(Qt::white)), 4.5);
}

TEST(Contrast, everyTextOfDayStandsOutInTheSun) {
    for (const auto& pair : textPairs())
        EXPECT_GE(contrast(colour(Tone::Day, pair.text), colour(Tone::Day, pair.ground)), 7.0)
            << static_cast<int>(pair.text) << " on " << static_cast<int>(pair.ground);
}

TEST(Contrast, everyTextOfNightCanBeRead) {
    for (const auto& pair : textPairs())
        EXPECT_GE(contrast(colour(Tone::Night, pair.text), colour(Tone::Night, pair.ground)), 4.5)
            << static_cast<int>(pair.text) << " on " << static_cast<int>(pair.ground);
}

TEST(Contrast, bordersOfThingsToUseAreSeen) {
    for (const auto tone : {Tone::Day, Tone::Night})
        for (const auto ground : {Role::Card, Role::Paper})
            EXPECT_GE(contrast(colour(tone, Role::Edge), colour(tone, ground)), 3.0);
}

TEST(Theme, knowsEveryColourTheStyleSheetNames) {
    applyTheme(*qApp, Theme());
    EXPECT_FALSE(qApp->styleSheet().isEmpty());
    EXPECT_FALSE(qApp->styleSheet().contains(QLatin1Char('@')));
}

TEST(Theme, growsTextAndTouchTogetherWithinItsRange) {
    EXPECT_EQ(Theme(Tone::Day, 1).px(Touch::Pad), 57);
    EXPECT_EQ(Theme(Tone::Day, 2).px(Touch::Pad), 114);
    EXPECT_EQ(Theme(Tone::Day, 2).font(Text::Body).pixelSize(), 30);
    EXPECT_EQ(Theme(Tone::Day, 9), Theme(Tone::Day, 2));
    EXPECT_EQ(Theme(Tone::Day, 0), Theme(Tone::Day, 1));
}

TEST(Theme, touchSizesAreMillimetresAt96Dpi) {
    const auto millimetres = [](Touch touch) { return static_cast<double>(touch) / 96.0 * 25.4; };
    EXPECT_GE(millimetres(Touch::Usual), 9.0);
    EXPECT_GE(millimetres(Touch::Pad), 15.0);
}

TEST(Typeface, isProportionalInBothWeights) {
    for (const auto weight : {Weight::Regular, Weight::Bold}) {
        const QFontMetrics metrics(Theme(Tone::Day, 1).font(Text::Body, weight));
        EXPECT_LT(metrics.horizontalAdvance(QStringLiteral("iiii")),
                  metrics.horizontalAdvance(QStringLiteral("mmmm")));
    }
}

TEST(Typeface, figuresAreOfOneWidthSoThatColumnsAlign) {
    const QFontMetrics metrics(Theme(Tone::Day, 1).font(Text::Digits, Weight::Bold));
    for (const QChar digit : QStringLiteral("0123456789"))
        EXPECT_EQ(metrics.horizontalAdvance(digit), metrics.horizontalAdvance(QLatin1Char('0')));
}

TEST(Typeface, renamingRefusesWhatIsNoFont) {
    EXPECT_TRUE(underOwnName({}).isEmpty());
    EXPECT_TRUE(underOwnName(QByteArray(200, 'x')).isEmpty());
}

TEST(StateMark, everyStateHasItsOwnShapeWithoutColour) {
    std::vector<QImage> shapes;
    for (const auto mark : {Mark::Steady, Mark::Watch, Mark::Drifting, Mark::Recovered, Mark::Learning}) {
        QImage image(24, 24, QImage::Format_ARGB32);
        image.fill(Qt::transparent);
        QPainter painter(&image);
        paintMark(painter, QRectF(0, 0, 24, 24), mark, Theme());
        painter.end();
        image = image.convertToFormat(QImage::Format_Alpha8);
        for (const auto& other : shapes) EXPECT_NE(image, other) << stateName(mark).toStdString();
        shapes.push_back(image);
    }
}

}  // namespace
}  // namespace arc::ui
