// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a scenario; one that is accepted and small is also played.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/scenario/simulate.hpp"
#include "storage/scenario_files.hpp"
#include "storage/scenario_json.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace arc;
    const auto settings = storage::scenarioFromJson({reinterpret_cast<const char*>(data), size});
    if (!settings) {
        if (settings.error().what.empty()) std::abort();
        return 0;
    }
    std::size_t fibres = 0;
    for (const auto& job : settings->jobs)
        for (const auto& closure : job.closures) fibres += closure.plan.size();
    for (const auto& work : settings->work)
        if (work.toDay > 3'000) return 0;
    if (fibres > 2'000) return 0;
    if (const auto log = scenario::simulate(*settings, 1)) storage::splicesCsv(*log);
    return 0;
}
