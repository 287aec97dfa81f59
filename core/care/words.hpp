// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers, days and keys in the sentences that core says; English, the window translates whole sentences by key.
#pragma once
#include <cstdint>
#include <string>

#include "core/units/instant.hpp"

namespace arc::care {

std::string grouped(std::uint64_t number);  ///< "3,912"
std::string plain(double number);           ///< "15", "0.5": at most one decimal
std::string shortDay(Instant at);           ///< "3 Mar"
std::string shortTime(Instant at);          ///< "3 Mar 10:40", at the offset it was written with
std::string spaced(std::string key);        ///< "groove_clean" → "groove clean"
std::string titled(std::string key);        ///< "groove_clean" → "Groove clean"
std::string counted(std::uint64_t n, const char* one, const char* many);  ///< "1 day", "3 days"

}  // namespace arc::care
