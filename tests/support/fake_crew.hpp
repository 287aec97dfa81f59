// SPDX-License-Identifier: GPL-3.0-or-later
// Two invented splicers with their charts, for tests of what shows them: S-01 has twelve grooves and its
// groove 5 gets dirty; S-02 is steady. No detector is involved: the numbers are made to look at.
#pragma once
#include <cmath>
#include <memory>
#include <random>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/workbench.hpp"
#include "tests/support/memory_logbook.hpp"
#include "ui/shell/drift_view.hpp"

namespace arc::test {

class StoppedClock final : public Clock {
  public:
    std::int64_t ms = 1'930'000'000'000;
    Instant now() override { return {ms, 60}; }
};

class CountingRandom final : public Random {
  public:
    void fill(std::uint8_t* bytes, std::size_t count) override {
        for (std::size_t i = 0; i < count; ++i) bytes[i] = static_cast<std::uint8_t>(next++);
    }
    unsigned next = 1;
};

/// A workbench over one logbook in memory; readers are copies of it.
class FakeWorkbench final : public Workbench {
  public:
    explicit FakeWorkbench(MemoryLogbook& book) : m_book(book) {}
    Result<std::unique_ptr<Logbook>> reader() override { return std::make_unique<MemoryLogbook>(m_book); }
    Result<care::Deck> cards(Logbook&) override { return deck; }
    Result<ImportCount> import(const std::filesystem::path&, FileKind, Progress&) override {
        return ImportCount{};
    }
    Result<std::filesystem::path> writeCloseout(JobId, const std::filesystem::path& folder,
                                                Progress&) override {
        return folder;
    }
    Result<void> backup(const std::filesystem::path&, Progress&) override { return {}; }
    Result<std::string> verify(const std::filesystem::path&, Progress&) override {
        return std::string("nothing");
    }
    care::Deck deck;

  private:
    MemoryLogbook& m_book;
};

inline ToolId toolId(const std::string& label) {
    return ToolId{namedUuid("tool " + label)};
}

inline Tool splicerTool(const std::string& label, const std::string& nickname, int grooves) {
    Tool tool;
    tool.id = toolId(label);
    tool.label = label;
    tool.nickname = nickname;
    tool.traits = Splicer{grooves > 1 ? SplicerKind::MassFusion : SplicerKind::SingleFibre, grooves,
                          ArcControl::Manual};
    return tool;
}

/// `dirty`: this groove loses 0.04 dB more from arc `from` on.
inline SplicerHistory fakeHistory(const Tool& tool, std::size_t arcs, int dirty, std::size_t from) {
    std::mt19937 random(7);
    std::gamma_distribution<double> loss(4, 0.009);
    std::gamma_distribution<double> angle(2, 0.22);
    SplicerHistory history;
    history.splicer = tool.id;
    history.label = tool.label;
    history.modes = {"G.652-G.652"};
    history.jobs = {JobId{namedUuid("job")}};
    history.jobLabels = {"HR-B"};
    const int grooves = asSplicer(tool)->grooves;
    for (std::size_t i = 0; i < arcs; ++i) {
        HistoryArc arc;
        arc.at = {1'929'000'000'000 + static_cast<std::int64_t>(i) * 600'000, 60};
        arc.job = 0;
        arc.channels = static_cast<std::uint8_t>(grooves);
        arc.readingCount = static_cast<std::uint8_t>(grooves);
        arc.firstReading = history.readings.size();
        arc.temperature = Temperature{291'000};
        for (int c = 1; c <= grooves; ++c) {
            HistoryReading reading;
            reading.channel = static_cast<std::uint8_t>(c);
            const double more = c == dirty && i + 1 >= from ? 0.04 : 0;
            reading.loss = Loss{static_cast<std::int32_t>(std::lround((loss(random) + more) * 100) * 10)};
            reading.cleaveLeft = Angle{static_cast<std::int32_t>(angle(random) * 100)};
            reading.cleaveRight = Angle{static_cast<std::int32_t>(angle(random) * 100)};
            history.readings.push_back(reading);
        }
        history.arcs.push_back(arc);
    }
    return history;
}

inline drift::Trace fakeTrace(drift::ChartKind kind, std::optional<int> channel, std::size_t arcs,
                              double rise, std::size_t from) {
    std::mt19937 random(static_cast<unsigned>(kind) * 31u + static_cast<unsigned>(channel.value_or(0)));
    std::normal_distribution<double> step(-0.02, 0.05);
    drift::Trace trace;
    trace.chart = kind;
    trace.channel = channel;
    trace.limit = 1.0;
    double sum = 0;
    for (std::size_t i = 60; i < arcs; ++i) {
        sum = std::max(0.0, sum + step(random) + (i + 1 >= from ? rise : 0));
        trace.arc.push_back(i + 1);
        trace.value.push_back(static_cast<float>(std::min(sum, 1.4)));
    }
    return trace;
}

inline CareRecord fakeCare(const Tool& tool, std::string_view action, Instant at) {
    CareRecord record;
    record.id = CareId{namedUuid("care " + std::string(action) + std::to_string(at.ms))};
    record.tool = tool.id;
    record.at = at;
    record.action = ActionKey(action);
    record.by = "A";
    return record;
}

inline drift::Signal fakeSignal(const SplicerHistory& history) {
    drift::Signal signal;
    signal.key = "G.652-G.652 / 12|single_groove|5|1539";
    signal.stratum = stratumKey("G.652-G.652", 12);
    signal.chart = drift::ChartKind::SingleGroove;
    signal.channel = 5;
    signal.channels = {5};
    signal.beganAtArc = 1482;
    signal.beganLow = 1461;
    signal.beganHigh = 1490;
    signal.raisedAtArc = 1539;
    signal.beganAt = history.arcs[1481].at;
    signal.raisedAt = history.arcs[1538].at;
    signal.sizeDb = 0.041;
    signal.cause = drift::Cause::Groove;
    signal.causes = {{drift::Cause::Groove,
                      0.93,
                      {"groove 5: 0.040 -> 0.081 dB (n = 61), the others +0.001 dB",
                       "318 arcs since the last groove clean"}},
                     {drift::Cause::Fibre, 0.04, {"S-02 on the same job is not up (n = 48)"}},
                     {drift::Cause::Cleaver, 0.02, {}},
                     {drift::Cause::Electrode, 0.01, {}}};
    signal.action = ActionKey(action::grooveClean);
    signal.actionTool = history.splicer;
    signal.headline = "Groove 5 is dirty, likely";
    signal.advice = "Clean the V-grooves and clamps first: it is quick and undoes nothing.";
    return signal;
}

inline ui::DriftView fakeView() {
    ui::DriftView view;
    const Tool heron = splicerTool("S-01", "Heron", 12);
    const Tool wren = splicerTool("S-02", "Wren", 1);
    view.tools = {heron, wren};
    constexpr std::size_t arcs = 1600;
    view.histories = {fakeHistory(heron, arcs, 5, 1482), fakeHistory(wren, 700, 0, 0)};
    view.histories[0].events = {fakeCare(heron, action::grooveClean, view.histories[0].arcs[1224].at),
                                fakeCare(heron, action::arcCalibration, view.histories[0].arcs[1371].at)};
    drift::StratumReport one;
    one.stratum = stratumKey("G.652-G.652", 12);
    one.mode = "G.652-G.652";
    one.channels = 12;
    one.arcs = arcs;
    one.standing = drift::Standing::Drifting;
    one.baselineFrom = 1;
    one.baselineTo = 200;
    one.baselineMeanDb = 0.036;
    one.recentMeanDb = 0.040;
    one.signals = {fakeSignal(view.histories[0])};
    for (int c = 1; c <= 12; ++c)
        one.grooves.push_back({c, 0.036, c == 5 ? 0.081 : 0.037, 25,
                               c == 5   ? 0.041
                               : c == 6 ? 0.009
                                        : 0.001});
    one.traces.push_back(fakeTrace(drift::ChartKind::CommonLevel, std::nullopt, arcs, 0.024, 1540));
    for (int c = 1; c <= 12; ++c)
        one.traces.push_back(fakeTrace(drift::ChartKind::SingleGroove, c, arcs, c == 5 ? 0.07 : 0, 1482));
    one.traces.push_back(fakeTrace(drift::ChartKind::Spread, std::nullopt, arcs, 0, arcs));
    one.traces.push_back(fakeTrace(drift::ChartKind::CleaveAngle, std::nullopt, arcs, 0, arcs));
    one.traces.push_back(fakeTrace(drift::ChartKind::ResplicesRate, std::nullopt, arcs, 0, arcs));
    drift::CareEffect effect;
    effect.action = ActionKey(action::grooveClean);
    effect.at = view.histories[0].events[0].at;
    effect.atArc = 1225;
    effect.verdict = drift::CareVerdict::Recovered;
    effect.shiftDb = -0.021;
    effect.low = -0.030;
    effect.high = -0.012;
    effect.before = 40;
    effect.after = 60;
    one.effects = {effect};
    drift::SplicerReport first{heron.id, "S-01", drift::Standing::Drifting, {one}, {}};
    first.electrodes.arcsSince = 3912;
    first.electrodes.arcsLeft = 1000;
    first.electrodes.arcsLeftLow = 700;
    first.electrodes.arcsLeftHigh = 1300;
    first.electrodes.plainRuleLeft = 1088;
    drift::StratumReport two;
    two.stratum = stratumKey("G.652-G.652", 1);
    two.mode = "G.652-G.652";
    two.channels = 1;
    two.arcs = 700;
    two.standing = drift::Standing::Steady;
    two.baselineFrom = 1;
    two.baselineTo = 200;
    two.baselineMeanDb = 0.036;
    two.recentMeanDb = 0.035;
    two.grooves = {{1, 0.036, 0.035, 25, 0}};
    two.traces = {fakeTrace(drift::ChartKind::CommonLevel, std::nullopt, 700, 0, 700),
                  fakeTrace(drift::ChartKind::Spread, std::nullopt, 700, 0, 700)};
    drift::SplicerReport second{wren.id, "S-02", drift::Standing::Steady, {two}, {}};
    view.reports = {first, second};
    return view;
}

}  // namespace arc::test
