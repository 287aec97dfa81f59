// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wiring.hpp"

#include <chrono>
#include <ctime>
#include <random>

namespace arc::app {

Instant SystemClock::now() {
    const auto since = std::chrono::system_clock::now().time_since_epoch();
    const std::time_t seconds = std::chrono::duration_cast<std::chrono::seconds>(since).count();
    std::tm local{};
    tzset();  // the zone may have been changed while the program runs; localtime_r alone does not look again
    localtime_r(&seconds, &local);
    return Instant{std::chrono::duration_cast<std::chrono::milliseconds>(since).count(),
                   static_cast<std::int16_t>(local.tm_gmtoff / 60)};
}

void SystemRandom::fill(std::uint8_t* bytes, std::size_t count) {
    std::random_device device;
    for (std::size_t i = 0; i < count; ++i) bytes[i] = static_cast<std::uint8_t>(device());
}

}  // namespace arc::app
