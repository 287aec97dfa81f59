// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/palette.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace arc::ui {
namespace {

constexpr std::array<QRgb, roleCount> day{0xFFF7F6F1, 0xFFFFFFFF, 0xFFD5D2C8, 0xFF737877, 0xFF17191C,
                                          0xFF4A4E54, 0xFF0A4F57, 0xFFFFFFFF, 0xFFD8E8E6, 0xFF1C5B33,
                                          0xFF6B4400, 0xFF8C1F0B, 0xFF1B4587, 0xFFFFFFFF, 0xFFEAE6D8,
                                          0xFF0A4F57, 0xFFFFFFFF, 0xFFD9EAE8};
constexpr std::array<QRgb, roleCount> night{0xFF101517, 0xFF191F22, 0xFF343C40, 0xFF7C888B, 0xFFEDECE6,
                                            0xFFB6BDBC, 0xFF84D3CC, 0xFF06272B, 0xFF1D3F42, 0xFF86D0A0,
                                            0xFFE8BE6B, 0xFFFFA08C, 0xFFA6C6FF, 0xFF2E0A03, 0xFF2B2E2B,
                                            0xFF0B2529, 0xFFF1F5F4, 0xFFA9C7C5};

constexpr TextPair pairs[] = {
    {Role::Ink, Role::Paper},         {Role::Ink, Role::Card},
    {Role::Ink, Role::AccentWash},    {Role::Ink, Role::Shade},
    {Role::Soft, Role::Paper},        {Role::Soft, Role::Card},
    {Role::Accent, Role::Paper},      {Role::Accent, Role::Card},
    {Role::Accent, Role::AccentWash}, {Role::OnAccent, Role::Accent},
    {Role::Steady, Role::Paper},      {Role::Steady, Role::Card},
    {Role::Watch, Role::Paper},       {Role::Watch, Role::Card},
    {Role::Drifting, Role::Paper},    {Role::Drifting, Role::Card},
    {Role::Drifting, Role::Shade},    {Role::Recovered, Role::Paper},
    {Role::Recovered, Role::Card},    {Role::OnDrifting, Role::Drifting},
    {Role::RailInk, Role::Rail},      {Role::RailSoft, Role::Rail},
};

double luminance(const QColor& c) {
    const auto linear = [](double v) {
        return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

}  // namespace

QColor colour(Tone tone, Role role) {
    const auto& table = tone == Tone::Day ? day : night;
    return QColor::fromRgb(table[static_cast<std::size_t>(role)]);
}

std::span<const TextPair> textPairs() {
    return pairs;
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace arc::ui
