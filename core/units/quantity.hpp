// SPDX-License-Identifier: GPL-3.0-or-later
// Physical quantities as integers in one unit nobody can mistake. Comparison and plain arithmetic only;
// statistics convert to double at one place (the d… functions). Shown text is made in storage and ui/text,
// never here.
#pragma once
#include <compare>
#include <cstdint>

namespace arc {

namespace detail {
/// One integer with a meaning. Tag keeps losses from being added to angles.
template <class Tag, class Rep>
struct Quantity {
    Rep value{};

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator+(Quantity other) const { return {static_cast<Rep>(value + other.value)}; }
    constexpr Quantity operator-(Quantity other) const { return {static_cast<Rep>(value - other.value)}; }
};
}  // namespace detail

/// Splice loss in 0.001 dB. Estimates are >= 0; measured one-way losses may be negative.
using Loss = detail::Quantity<struct LossTag, std::int32_t>;
/// Cleave or axis angle in 0.01 degree.
using Angle = detail::Quantity<struct AngleTag, std::int32_t>;
/// Arcs fired, as the splicer's own lifetime counter shows them or counted by us.
using ArcCount = detail::Quantity<struct ArcCountTag, std::uint32_t>;
/// Absolute temperature in 0.001 K.
using Temperature = detail::Quantity<struct TemperatureTag, std::int32_t>;
/// Pressure in Pa.
using Pressure = detail::Quantity<struct PressureTag, std::int32_t>;
/// Relative humidity in 0.1 %.
using Humidity = detail::Quantity<struct HumidityTag, std::int32_t>;

constexpr double decibels(Loss loss) {
    return loss.value / 1000.0;
}
constexpr double degrees(Angle angle) {
    return angle.value / 100.0;
}
constexpr double celsius(Temperature t) {
    return (t.value - 273150) / 1000.0;
}
constexpr double hectopascals(Pressure p) {
    return p.value / 100.0;
}

namespace literals {
constexpr Loss operator""_mdb(unsigned long long v) {
    return {static_cast<std::int32_t>(v)};
}
constexpr Loss operator""_dB(long double v) {
    return {static_cast<std::int32_t>(v * 1000.0L + 0.5L)};
}
constexpr Angle operator""_deg(long double v) {
    return {static_cast<std::int32_t>(v * 100.0L + 0.5L)};
}
constexpr ArcCount operator""_arcs(unsigned long long v) {
    return {static_cast<std::uint32_t>(v)};
}
constexpr Temperature operator""_degC(long double v) {
    return {static_cast<std::int32_t>(v * 1000.0L + 273150.5L)};
}
}  // namespace literals

}  // namespace arc
