// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as the manifest of a closeout record.
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "storage/export_manifest.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto manifest = arc::storage::parseManifest({reinterpret_cast<const char*>(data), size});
    if (!manifest && manifest.error().what.empty()) std::abort();
    return 0;
}
