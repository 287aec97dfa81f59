// SPDX-License-Identifier: GPL-3.0-or-later
// Today's page over a big logbook and over one that holds the last closure alone, in turns in one run: from nothing to the page
// with the keys in the pad, and from a keystroke to the saved reading on the screen. Goal: at most 1.5.
//   arc_today_page [READINGS]
#include <QApplication>
#include <QImage>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

#include "tests/bench/world.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/today_page.hpp"

namespace {

using namespace arc;
using Clock = std::chrono::steady_clock;

constexpr int rounds = 9;
constexpr int closureColumn = 4;  // of the splice CSV
constexpr QSize size(1366, 768);

double since(Clock::time_point begin) {
    return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

double median(std::vector<double> times) {
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

struct Times {
    std::vector<double> opening, key;
};

/// Everything was cared for just after the last arc, so that nothing is on hold.
void careForAll(test::UiRig& rig) {
    const auto tools = bench::must(rig.book->tools());
    for (const auto& tool : tools)
        if (const auto last = bench::must(rig.book->lastArc(tool.id)))
            rig.clock.at = {last->at.ms + 2 * msPerMinute, 0};
    const auto care = [&](const Tool& tool, std::string_view what) {
        CareRecord record;
        record.id = rig.newId<CareId>();
        record.tool = tool.id;
        record.at = rig.clock.now();
        record.action = what;
        if (what == action::arcCalibration)
            record.calibration = CalibrationResult{Adequacy::Adequate, Adequacy::Adequate, "G.652.D", 12, 1};
        rig.write(record);
    };
    for (const auto& tool : tools) {
        if (asSplicer(tool))
            for (const auto what : {action::grooveClean, action::clampClean, action::lensClean,
                                    action::electrodeReplace, action::stabilise, action::arcCalibration})
                care(tool, what);
        if (asCleaver(tool))
            for (const auto what : {action::cleaverClean, action::bladeClean}) care(tool, what);
    }
    rig.clock.at.ms += msPerMinute;
}

void measureOnce(const std::filesystem::path& book, Times& times) {
    test::UiRig rig(ui::Theme{}, book);
    careForAll(rig);
    auto& session = rig.start();
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    auto begin = Clock::now();
    ui::TodayPage page(session);
    page.resize(size);
    page.show();
    page.firstFocus()->setFocus();
    QApplication::processEvents();
    page.render(&image);
    times.opening.push_back(since(begin));
    // The charts come from another thread while the pad already takes readings.
    while (!page.settled()) QApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
    for (int i = 0; i < 5; ++i) {
        begin = Clock::now();
        test::typeKeys(&page.pad(), QStringLiteral("4\r"));
        QApplication::processEvents();
        page.render(&image);
        times.key.push_back(since(begin));
    }
    if (!session.savedAt()) {
        std::fprintf(stderr, "the keys did not save a reading\n");
        std::exit(1);
    }
}

/// The header and the rows of the closure that is worked on at the end.
void writeLastClosure(const std::filesystem::path& all, const std::filesystem::path& last) {
    std::ifstream in(all);
    std::string header, line, rows, closure;
    std::getline(in, header);
    while (std::getline(in, line)) {
        std::istringstream cells(line);
        std::string cell;
        for (int i = 0; i <= closureColumn; ++i) std::getline(cells, cell, ',');
        if (cell != closure) rows.clear();
        closure = cell;
        rows += line + '\n';
    }
    std::ofstream(last) << header << '\n' << rows;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const std::uint64_t readings = argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 1'000'000;
    bench::World world(readings);
    const auto one = world.file("one.arcbook");
    writeLastClosure(world.csv, world.file("one.splices.csv"));
    world.import(one, world.file("one.splices.csv"));
    Times big, small;
    for (int i = 0; i < rounds; ++i) {
        measureOnce(world.big, big);
        measureOnce(one, small);
    }
    std::printf("| Today, %llu readings | this log | its last closure alone | ratio | at most |\n|---|---|---|---|---|\n",
                static_cast<unsigned long long>(readings));
    std::printf("| page on the screen | %.3g ms | %.3g ms | %.2f | 1.5 |\n", median(big.opening),
                median(small.opening), median(big.opening) / median(small.opening));
    std::printf("| one reading typed, saved and shown | %.3g ms | %.3g ms | %.2f | 1.5 |\n", median(big.key),
                median(small.key), median(big.key) / median(small.key));
}
