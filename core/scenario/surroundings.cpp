// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/surroundings.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/scenario/randomness.hpp"

namespace arc::scenario {

bool isWorkday(const Scenario& scenario, int day) {
    const std::int64_t local = scenario.start.ms + scenario.start.offsetMinutes * msPerMinute;
    const std::int64_t date = local / msPerDay + day;
    return (date + 3) % 7 < 5;  // 1970-01-01 was a Thursday; 0 = Monday
}

Instant atHour(const Scenario& scenario, int day, double hour) {
    const auto ms = static_cast<std::int64_t>(std::llround(hour * 3600.0)) * 1000;
    return {scenario.start.ms + day * msPerDay + ms, scenario.start.offsetMinutes};
}

Instant later(Instant at, double minutes) {
    at.ms += static_cast<std::int64_t>(std::llround(minutes * 60.0)) * 1000;
    return at;
}

double hourOf(const Scenario& scenario, Instant at) {
    const std::int64_t since = std::max<std::int64_t>(0, at.ms - scenario.start.ms);
    return static_cast<double>(since % msPerDay) / static_cast<double>(msPerHour);
}

Sky::Sky(const Scenario& scenario, std::uint64_t seed, int days) : scenario_(scenario) {
    Randomness random(seed, "weather");
    double pressure = 0;
    for (int day = 0; day <= days; ++day) {
        offsetC_.push_back(random.normal() * scenario.weather.daySdC);
        pressure = 0.8 * pressure + random.normal() * 3.0;
        offsetHpa_.push_back(pressure);
    }
}

Temperature Sky::temperature(Instant at) const {
    const auto day = dayOf(at);
    const double hour = hourOf(scenario_, at);
    const auto& w = scenario_.weather;
    const double usual =
        w.meanC + offsetC_[day] + w.swingC * std::sin(2.0 * std::numbers::pi * (hour - 9.0) / 24.0);
    double degC = usual;
    for (const auto& cold : w.coldMornings)
        if (cold.day == static_cast<int>(day) && hour < 12.0)
            degC = cold.celsius + (usual - cold.celsius) * std::clamp((hour - 9.0) / 3.0, 0.0, 1.0);
    return Temperature{static_cast<std::int32_t>(std::lround(degC * 10.0)) * 100 + 273'150};
}

Humidity Sky::humidity(Instant at) const {
    const double percent =
        scenario_.weather.humidityPct - 2.0 * offsetC_[dayOf(at)] - (hourOf(scenario_, at) - 12.0);
    return Humidity{static_cast<std::int32_t>(std::lround(std::clamp(percent, 5.0, 100.0))) * 10};
}

Pressure Sky::pressure(Instant at) const {
    const double hpa = scenario_.weather.pressureHpa + offsetHpa_[dayOf(at)];
    return Pressure{static_cast<std::int32_t>(std::lround(hpa)) * 100};
}

std::size_t Sky::dayOf(Instant at) const {
    const std::int64_t since = std::max<std::int64_t>(0, at.ms - scenario_.start.ms);
    return std::min(static_cast<std::size_t>(since / msPerDay), offsetC_.size() - 1);
}

}  // namespace arc::scenario
