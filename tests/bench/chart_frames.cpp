// SPDX-License-Identifier: GPL-3.0-or-later
// A pan over a million arcs against a pan over a thousand, in one run: time a frame of the level chart and of
// the groove strip, and their ratio. Goal: at most 2.
#include <QApplication>
#include <QImage>
#include <QPainter>

#include <chrono>
#include <cstdio>
#include <memory>
#include <random>

#include "ui/theme/theme.hpp"
#include "ui/widgets/chart_view.hpp"
#include "ui/widgets/groove_strip.hpp"

namespace {

using namespace arc::ui;

constexpr int frames = 60;
constexpr int grooves = 12;
constexpr QSize size(1200, 400);

std::vector<float> values(std::size_t count, unsigned seed) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<float> value(0, 1);
    std::vector<float> made(count);
    for (auto& v : made) v = value(random);
    return made;
}

std::vector<double> arcs(std::size_t count) {
    std::vector<double> made(count);
    for (std::size_t i = 0; i < count; ++i) made[i] = static_cast<double>(i + 1);
    return made;
}

/// Milliseconds a frame while panning through the middle half.
double pan(QWidget& widget, ArcWindow& window) {
    widget.resize(size);
    widget.show();
    QApplication::processEvents();
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    const double whole = window.last() - window.first();
    window.show(window.first(), window.first() + whole / 2);
    const auto begin = std::chrono::steady_clock::now();
    for (int i = 0; i < frames; ++i) {
        window.pan(1.0 / frames);
        widget.render(&image);
    }
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
    return took.count() / frames;
}

double levelFrame(std::size_t count) {
    ArcWindow window;
    ChartView chart(window);
    auto data = std::make_shared<ChartData>();
    data->arc = arcs(count);
    data->value = values(count, 3);
    data->limit = 1;
    window.setWhole(1, static_cast<double>(count));
    chart.setData(data);
    return pan(chart, window);
}

double stripFrame(std::size_t count) {
    ArcWindow window;
    GrooveStrip strip(window);
    std::vector<StripRow> rows;
    for (int c = 1; c <= grooves; ++c)
        rows.push_back(
            {c, arcs(count / grooves), values(count / grooves, 7u + static_cast<unsigned>(c)), false});
    window.setWhole(1, static_cast<double>(count / grooves));
    strip.setRows(std::move(rows));
    return pan(strip, window);
}

}  // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    applyTheme(application, Theme());
    for (const auto& [name, frame] :
         {std::pair("level chart", &levelFrame), std::pair("groove strip", &stripFrame)}) {
        const double small = frame(1'000);
        const double large = frame(1'000'000);
        std::printf("%-13s 1,000 readings %6.2f ms a frame, 1,000,000 readings %6.2f ms, ratio %.2f\n", name,
                    small, large, large / small);
    }
    return 0;
}
