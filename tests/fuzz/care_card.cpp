// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a care card.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "storage/care_cards.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto card = arc::storage::readCard({reinterpret_cast<const char*>(data), size}, "fuzz.json");
    if (!card && card.error().what.empty()) std::abort();
    return 0;
}
