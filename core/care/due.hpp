// SPDX-License-Identifier: GPL-3.0-or-later
// What is due, why, and in which queue. A due item closes by a recorded action, never by ticking alone.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/care/record.hpp"
#include "core/units/instant.hpp"

namespace arc::care {

/// Named by when a crew can do it.
enum class Queue { Hold, NextGap, ShiftEnd, BenchDay };
/// What made it due.
enum class Basis { Count, Time, Condition, Signal, Obligation, Forecast };

std::string_view word(Queue queue);   ///< "hold", "next_gap", "shift_end", "bench_day"
std::string_view title(Queue queue);  ///< "Hold", "Next gap", "Shift end", "Bench day"
std::string_view word(Basis basis);

struct DueItem {
    std::string key;  ///< stable: tool, action and what made it due
    Queue queue = Queue::ShiftEnd;
    Basis basis = Basis::Count;
    ToolId tool;
    std::string toolLabel;
    ActionKey action;
    std::string title;      ///< "Clean V-grooves, S-01"
    std::string why;        ///< "groove 5 up 0.04 dB, the others are not"
    std::string basedOn;    ///< "412 cleaves since the last clean; card says every 400 (common practice)"
    std::string otherwise;  ///< what happens if not
    Instant since;
    std::optional<HoldOverride> overridden;  ///< of a Hold: somebody went on, named and with a reason
};

}  // namespace arc::care
