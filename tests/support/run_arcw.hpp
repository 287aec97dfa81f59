// SPDX-License-Identifier: GPL-3.0-or-later
// The headless program inside the test: its exit code and what it said. The clock and the random bytes
// repeat.
#pragma once
#include <sstream>
#include <string>
#include <vector>

#include "app/command_list.hpp"
#include "tests/support/fakes.hpp"

namespace arc::test {

struct Ran {
    int code = 0;
    std::string out, err;
};

inline Ran arcw(const std::vector<std::string>& words) {
    std::ostringstream out, err;
    FakeClock clock;
    FakeRandom random;
    app::Environment environment{out, err, clock, random};
    const int code = app::runArcw(words, environment);
    return {code, out.str(), err.str()};
}

}  // namespace arc::test
