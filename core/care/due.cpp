// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/due.hpp"

namespace arc::care {

std::string_view word(Queue queue) {
    switch (queue) {
        case Queue::Hold:
            return "hold";
        case Queue::NextGap:
            return "next_gap";
        case Queue::ShiftEnd:
            return "shift_end";
        case Queue::BenchDay:
            return "bench_day";
    }
    return "";
}

std::string_view title(Queue queue) {
    switch (queue) {
        case Queue::Hold:
            return "Hold";
        case Queue::NextGap:
            return "Next gap";
        case Queue::ShiftEnd:
            return "Shift end";
        case Queue::BenchDay:
            return "Bench day";
    }
    return "";
}

std::string_view word(Basis basis) {
    switch (basis) {
        case Basis::Count:
            return "count";
        case Basis::Time:
            return "time";
        case Basis::Condition:
            return "condition";
        case Basis::Signal:
            return "signal";
        case Basis::Obligation:
            return "obligation";
        case Basis::Forecast:
            return "forecast";
    }
    return "";
}

}  // namespace arc::care
