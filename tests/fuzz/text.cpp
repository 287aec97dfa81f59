// SPDX-License-Identifier: GPL-3.0-or-later
// Any text as what people type: splice plans, times, losses, identities. What is read must read back the
// same.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "core/units/id.hpp"
#include "core/units/instant.hpp"
#include "core/work/plan.hpp"
#include "core/work/typed_loss.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace arc;
    if (size == 0) return 0;
    const std::string_view text(reinterpret_cast<const char*>(data + 1), size - 1);
    switch (data[0] % 5) {
        case 0:
            if (const auto plan = planFromText(text); plan && planFromText(planToText(*plan)) != *plan)
                std::abort();
            break;
        case 1:
            if (const auto plan = planFromCsv(text); plan && planFromCsv(planToCsv(*plan)) != *plan)
                std::abort();
            break;
        case 2:
            if (const auto at = parseInstant(text); at && parseInstant(toIso(*at)) != *at) std::abort();
            break;
        case 3:
            if (const auto uuid = parseUuid(text); uuid && parseUuid(toText(*uuid)) != *uuid) std::abort();
            break;
        default:
            (void)pad::readTyped(text);
            (void)pad::readTypedList(text);
            break;
    }
    return 0;
}
