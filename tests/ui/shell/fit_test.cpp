// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing that is said is cut off: not at the smallest window, not with text at 200 %.
#include <QTest>

#include "storage/demo_book.hpp"
#include "tests/support/cut_off.hpp"
#include "tests/support/in_language.hpp"
#include "tests/support/ui_rig.hpp"
#include "tests/support/window_fixture.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/page_list.hpp"
#include "ui/today/loss_pad.hpp"

namespace arc::ui {
namespace {

struct Look {
    QSize size;
    double scale;
};

class FitTest : public test::WindowTest, public ::testing::WithParamInterface<Look> {
  protected:
    void look(Screen screen, const QString& what) {
        for (int i = 0; i < 5; ++i) QApplication::processEvents();
        const QString name = keyOf(screen) + (what.isEmpty() ? QString() : QLatin1Char('-') + what);
        picture(QStringLiteral("fit-%1-%2-%3").arg(name).arg(GetParam().size.width()).arg(GetParam().scale));
        EXPECT_LE(window->width(), GetParam().size.width()) << name.toStdString();
        EXPECT_LE(window->height(), GetParam().size.height()) << name.toStdString();
        const auto& page = window->page(screen);
        if (GetParam().size.width() / GetParam().scale >= 1280) {
            EXPECT_LE(page.width(), page.parentWidget()->width())
                << name.toStdString() << " scrolls sideways";
        }
        for (const auto* widget : page.findChildren<QWidget*>()) {
            if (!widget->isVisible()) continue;
            EXPECT_EQ(test::cutOff(widget).toStdString(), "") << name.toStdString();
        }
    }
};

/// A job in hand: a closure of 48 fibres, with a splice to do again and one that stands.
void putToWork(test::MemoryLogbook& book) {
    Job job;
    job.id = JobId{namedUuid("job")};
    job.label = "HR-B";
    job.title = "Harrow Ridge backbone, second half";
    Closure closure;
    closure.id = ClosureId{namedUuid("closure")};
    closure.job = job.id;
    closure.label = "HR-E29";
    closure.trays = 4;
    closure.perTray = 12;
    for (int n = 1; n <= 48; ++n) closure.plan.push_back({n, n});
    book.jobList = {job};
    book.closureList = {closure};
    for (int n = 1; n <= 2; ++n) {
        SpliceArc arc;
        arc.id = ArcId{namedUuid("arc " + std::to_string(n))};
        arc.at = Instant{1'929'000'000'000 + n * 60'000, 60};
        arc.splicer = book.toolList.back().id;
        arc.job = job.id;
        arc.closure = closure.id;
        arc.mode = "G.652-G.652";
        Reading reading;
        reading.fibreA = reading.fibreB = std::to_string(n);
        reading.loss = Loss{n == 1 ? 20 : 210};
        arc.readings = {reading};
        book.arcList.push_back(arc);
    }
}

TEST_P(FitTest, noWordIsCutOff) {
    applyTheme(*qApp, Theme(Tone::Day, GetParam().scale));
    book.toolList = test::fakeView().tools;
    openWindow([](Logbook&, Progress&) -> Result<DriftView> { return test::fakeView(); }, GetParam().size);
    for (const auto screen : {Screen::Drift, Screen::Kit}) {
        window->go(screen);
        settle();
        look(screen, {});
    }
}

TEST_P(FitTest, noWordIsCutOffOnTodayNorOnItsSheets) {
    applyTheme(*qApp, Theme(Tone::Day, GetParam().scale));
    book.toolList = test::fakeView().tools;
    putToWork(book);
    openWindow([](Logbook&, Progress&) -> Result<DriftView> { return test::fakeView(); }, GetParam().size);
    window->go(Screen::Today);
    settle();
    look(Screen::Today, QStringLiteral("work"));
    auto* pad = window->page(Screen::Today).findChild<LossPad*>();
    ASSERT_TRUE(pad);
    for (const auto* keys : {"22", "45", "-4"}) {
        QTest::keyClicks(pad, keys);
        look(Screen::Today, QString::fromLatin1(keys));
        QTest::keyClick(pad, Qt::Key_Escape);
    }
    for (const auto* action : {"today.split", "today.setup", "today.job", "today.import", "today.search"}) {
        pad->setFocus();
        session->actions().find(QString::fromLatin1(action))->trigger();
        settle();
        look(Screen::Today, QString::fromLatin1(action));
        for (int i = 0; i < 2 && QApplication::focusWidget(); ++i)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    }
}

/// The invented crew of Harrow Ridge on every page, in both whole languages.
TEST_P(FitTest, noWordOfACrewsDayIsCutOffOnAnyPage) {
    for (const auto language : {text::Language::English, text::Language::Spanish}) {
        const test::InLanguage spoken(language);
        test::UiRig rig(Theme(Tone::Day, GetParam().scale));
        ASSERT_TRUE(storage::fillWithHarrowRidge(*rig.book, rig.clock.now()));
        WindowOptions options;
        options.remember = Remember::No;
        MainWindow real(rig.start(), options);
        real.resize(GetParam().size);
        real.show();
        for (const auto& row : pageList()) {
            real.go(row.screen);
            ASSERT_TRUE(test::eventually([&] { return real.settled(); }));
            for (int i = 0; i < 5; ++i) QApplication::processEvents();
            for (const auto* widget : real.page(row.screen).findChildren<QWidget*>()) {
                if (!widget->isVisible()) continue;
                EXPECT_EQ(test::cutOff(widget).toStdString(), "") << keyOf(row.screen).toStdString();
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Screens, FitTest,
                         ::testing::Values(Look{{1366, 768}, 1.0}, Look{{1920, 1080}, 1.5},
                                           Look{{3840, 2160}, 2.0}, Look{{1920, 1080}, 2.0}));

}  // namespace
}  // namespace arc::ui
