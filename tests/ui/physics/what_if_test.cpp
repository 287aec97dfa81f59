// SPDX-License-Identifier: GPL-3.0-or-later
// The what-if sheet by keyboard, against the tables: D. Marcuse, Bell Syst. Tech. J. 56(5), 1977 (offset,
// tilt, mode fields), IEC 60793-1-40 annex C (readings from either end).
#include "ui/physics/what_if.hpp"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QSlider>
#include <QTest>

#include <gtest/gtest.h>

#include "tests/support/pictures.hpp"
#include "tests/support/reference_csv.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {
namespace {

class WhatIfSheet : public testing::Test {
  protected:
    void SetUp() override {
        applyTheme(*qApp, Theme{});
        sheet = std::make_unique<WhatIf>();
        sheet->show();
    }
    QDoubleSpinBox* number(const QString& name) {
        for (auto* one : sheet->findChildren<QDoubleSpinBox*>())
            if (one->accessibleName().startsWith(name)) return one;
        return nullptr;
    }
    void type(const QString& name, double value) {
        auto* at = number(name);
        ASSERT_TRUE(at) << name.toStdString();
        at->selectAll();
        QTest::keyClicks(at, at->locale().toString(value, 'f', 2));
    }
    QString answer() {
        for (auto* label : sheet->findChildren<QLabel*>())
            if (label->accessibleName() == "Loss of the splice") return label->text();
        return {};
    }
    bool says(const QString& words) {
        for (auto* label : sheet->findChildren<QLabel*>())
            if (label->text().contains(words)) return true;
        return false;
    }
    std::unique_ptr<WhatIf> sheet;
};

TEST_F(WhatIfSheet, OffsetsOfTheTableAsTheyAreTyped) {
    for (const auto& row : support::referenceRows("loss_lateral_offset.csv")) {
        const double offset = row.number("offset_um");
        if (offset > 5 || std::fmod(offset * 100 + 1e-9, 1) > 1e-6) continue;
        type("Offset", offset);
        EXPECT_EQ(answer(), text::meanLoss(row.number("loss_dB_1310_MFD9.2"), text::Unit::Shown));
    }
    type("Offset", 1);
    EXPECT_TRUE(answer().startsWith("0.205")) << answer().toStdString();
}

TEST_F(WhatIfSheet, TiltAndUnlikeFieldsAndWhatEitherEndShows) {
    type("Offset", 0);
    type("Tilt", 0.5);
    EXPECT_TRUE(answer().startsWith("0.084"));
    type("Tilt", 0);
    type("Mode-field diameter of fibre B", 8.6);
    EXPECT_TRUE(answer().startsWith("0.020")) << answer().toStdString();
    EXPECT_TRUE(says("0.273")) << "9.2 to 8.6 um reads a gain from A";
    EXPECT_TRUE(says("0.313"));
    EXPECT_TRUE(says("not a measurement"));
    EXPECT_TRUE(says("Marcuse"));
    test::picture(*sheet, "what-if");
}

TEST_F(WhatIfSheet, KeysMoveNumberAndSliderTogether) {
    type("Offset", 1);
    QTest::keyClick(number("Offset"), Qt::Key_Up);
    EXPECT_NEAR(number("Offset")->value(), 1.1, 1e-9);
    for (auto* slider : sheet->findChildren<QSlider*>()) {
        if (!slider->accessibleName().startsWith("Offset")) continue;
        EXPECT_EQ(slider->value(), 110);
        QTest::keyClick(slider, Qt::Key_Left);
    }
    EXPECT_NEAR(number("Offset")->value(), 1.0, 1e-9);
    auto* wavelength = sheet->findChild<QComboBox*>();
    QTest::keyClick(wavelength, Qt::Key_Down);
    EXPECT_NEAR(number("Mode-field diameter of fibre A")->value(), 10.4, 1e-9);
    EXPECT_TRUE(answer().startsWith("0.161")) << "1 um at 10.4 um: 0.1606 dB";
    QTest::keyClick(sheet.get(), Qt::Key_Escape);
    EXPECT_FALSE(sheet->isVisible());
}

}  // namespace
}  // namespace arc::ui
