// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/chart_list.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

#include "ui/drift/words.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("arc::ui", text);
}

constexpr double shareTop = 1.15;
/// Losses of rare bad splices must not flatten all others; what is above sits at the top edge as a triangle.
constexpr double keptShare = 0.995;

const drift::Trace* traceOf(const drift::StratumReport& report, drift::ChartKind kind,
                            std::optional<int> channel) {
    for (const auto& trace : report.traces)
        if (trace.chart == kind && trace.channel == channel && !trace.arc.empty()) return &trace;
    return nullptr;
}

std::shared_ptr<ChartData> shareChart(const drift::Trace& trace, const QString& title,
                                      const QString& limitName) {
    auto data = std::make_shared<ChartData>();
    data->title = title;
    data->arc.assign(trace.arc.begin(), trace.arc.end());
    data->value = trace.value;
    data->limit = trace.limit.value_or(1.0);
    data->limitName = limitName;
    data->top = shareTop * *data->limit;
    data->now =
        tr("%1 of the limit").arg(text::number(static_cast<double>(trace.value.back()) / *data->limit, 2));
    return data;
}

/// A tidy top and step for figures up to `most`.
void scaleFigures(ChartData& data, double most, double least) {
    for (const double step : {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0}) {
        data.step = step;
        if (step * 2 >= std::max(most, least)) break;
    }
    data.top = data.step * 2;
    data.places = data.step < 0.1 ? 2 : (data.step < 1 ? 1 : 0);
}

double keptTop(std::vector<float> values) {
    if (values.empty()) return 0;
    const auto at = static_cast<std::size_t>(std::ceil(keptShare * static_cast<double>(values.size() - 1)));
    std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(at));
    return static_cast<double>(values[at]);
}

std::span<const HistoryReading> readingsOf(const SplicerHistory& history, std::size_t arc) {
    return std::span(history.readings)
        .subspan(history.arcs[arc].firstReading, history.arcs[arc].readingCount);
}

std::shared_ptr<const ChartData> angleChart(const ChartSource& source) {
    auto data = std::make_shared<ChartData>();
    data->title = tr("cleave angles, worst end of an arc");
    data->style = ChartData::Style::Dots;
    data->scale = ChartData::Scale::Number;
    data->unit = QStringLiteral("°");
    for (const auto i : arcsOf(source.report, source.history)) {
        std::optional<Angle> worst;
        for (const auto& reading : readingsOf(source.history, i))
            for (const auto& end : {reading.cleaveLeft, reading.cleaveRight})
                if (end && (!worst || end->value > worst->value)) worst = end;
        if (!worst) continue;
        data->arc.push_back(static_cast<double>(i + 1));
        data->value.push_back(static_cast<float>(degrees(*worst)));
    }
    if (data->arc.empty()) return nullptr;
    scaleFigures(*data, keptTop(data->value), 1.0);
    return data;
}

std::shared_ptr<const ChartData> lossChart(const ChartSource& source) {
    auto data = std::make_shared<ChartData>();
    data->title = source.report.channels > 1 ? tr("losses, mean of an arc") : tr("losses");
    data->style = ChartData::Style::Dots;
    data->scale = ChartData::Scale::Number;
    for (const auto i : arcsOf(source.report, source.history)) {
        double sum = 0;
        const auto readings = readingsOf(source.history, i);
        for (const auto& reading : readings) sum += decibels(reading.loss);
        if (readings.empty()) continue;
        data->arc.push_back(static_cast<double>(i + 1));
        data->value.push_back(static_cast<float>(sum / static_cast<double>(readings.size())));
    }
    if (data->arc.empty()) return nullptr;
    scaleFigures(*data, keptTop(data->value), 0.1);
    data->now = tr("%1 dB lately").arg(text::meanLoss(source.report.recentMeanDb));
    if (source.report.baselineTo > 0) {
        data->level = source.report.baselineMeanDb;
        data->now += tr(", baseline %1").arg(text::meanLoss(source.report.baselineMeanDb));
    }
    return data;
}

template <drift::ChartKind kind>
std::shared_ptr<const ChartData> traceChart(const ChartSource& source) {
    const auto* trace = traceOf(source.report, kind, std::nullopt);
    return trace ? shareChart(*trace, wordOf(kind, std::nullopt), {}) : nullptr;
}

using Maker = std::shared_ptr<const ChartData> (*)(const ChartSource&);
constexpr Maker lower[] = {
    angleChart,
    lossChart,
    traceChart<drift::ChartKind::ResplicesRate>,
    traceChart<drift::ChartKind::Spread>,
    traceChart<drift::ChartKind::CleaveAngle>,
    traceChart<drift::ChartKind::Difference>,
};

}  // namespace

std::vector<std::size_t> arcsOf(const drift::StratumReport& report, const SplicerHistory& history) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < history.arcs.size(); ++i) {
        const auto& arc = history.arcs[i];
        if (arc.channels != report.channels || arc.mode >= history.modes.size()) continue;
        if (history.modes[arc.mode] == report.mode) found.push_back(i);
    }
    return found;
}

std::shared_ptr<const ChartData> levelChart(const ChartSource& source) {
    const auto* trace = traceOf(source.report, drift::ChartKind::CommonLevel, std::nullopt);
    if (!trace) return nullptr;
    const QString title = source.report.channels > 1 ? tr("all grooves together") : tr("level of the losses");
    return shareChart(*trace, title, tr("limit"));
}

std::vector<std::shared_ptr<const ChartData>> lowerCharts(const ChartSource& source) {
    std::vector<std::shared_ptr<const ChartData>> charts;
    for (const auto make : lower)
        if (auto chart = make(source)) charts.push_back(std::move(chart));
    for (auto& chart : charts) {
        // The angles themselves and their chart must not carry one name.
        if (chart->title != wordOf(drift::ChartKind::CleaveAngle, std::nullopt)) continue;
        auto renamed = std::make_shared<ChartData>(*chart);
        renamed->title = tr("cleave angles, summed up");
        chart = renamed;
    }
    return charts;
}

std::vector<StripRow> stripRows(const ChartSource& source) {
    std::vector<StripRow> rows;
    if (source.report.channels < 2) return rows;
    for (int channel = 1; channel <= source.report.channels; ++channel) {
        StripRow row;
        row.channel = channel;
        if (const auto* trace = traceOf(source.report, drift::ChartKind::SingleGroove, channel)) {
            row.arc.assign(trace->arc.begin(), trace->arc.end());
            row.value = trace->value;
            const auto limit = static_cast<float>(trace->limit.value_or(1.0));
            for (auto& value : row.value) value /= limit;
        }
        for (const auto& signal : source.report.signals) {
            const bool open =
                signal.state == drift::SignalState::Open || signal.state == drift::SignalState::Answered;
            if (open && (signal.channel == channel || std::ranges::count(signal.channels, channel) > 0))
                row.loud = true;
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<CareMark> careMarks(const SplicerHistory& history) {
    std::vector<CareMark> marks;
    for (const auto& event : history.events) {
        if (event.action == action::note) continue;
        const auto after = std::ranges::lower_bound(history.arcs, event.at, {}, &HistoryArc::at);
        const auto arc = static_cast<double>(after - history.arcs.begin()) + 0.5;
        const QString name = careName(event.action);
        const auto of = event.tool == history.splicer ? CareMark::Of::Splicer : CareMark::Of::Cleaver;
        // Several at one gap share a line.
        const auto same = std::ranges::find_if(
            marks, [&](const CareMark& mark) { return mark.arc == arc && mark.of == of; });
        if (same == marks.end()) {
            marks.push_back({arc, name, of});
        } else if (!same->name.contains(name)) {
            same->name += QStringLiteral(" + ") + name;
        }
    }
    return marks;
}

std::vector<OwedMark> owedMarks(const SplicerHistory& history, std::span<const care::OwedStretch> owed) {
    std::vector<OwedMark> marks;
    const auto numberAt = [&](Instant at) {
        return std::ranges::lower_bound(history.arcs, at, {}, &HistoryArc::at) - history.arcs.begin();
    };
    for (const auto& stretch : owed) {
        if (stretch.splicer != history.splicer) continue;
        const auto from = numberAt(stretch.from);
        const auto to = stretch.to ? numberAt(*stretch.to) : std::ssize(history.arcs);
        if (from < to) marks.push_back({static_cast<double>(from) + 0.5, static_cast<double>(to) + 0.5});
    }
    return marks;
}

}  // namespace arc::ui
