// SPDX-License-Identifier: GPL-3.0-or-later
// The exports of a closeout record that need no fonts. A new one is a row here; the folder, its manifest and
// the command follow.
#pragma once
#include <filesystem>
#include <span>
#include <string_view>

#include "core/closeout/record.hpp"
#include "core/result.hpp"

namespace arc::storage {

struct CloseoutExport {
    std::string_view fileName;
    std::string_view title;
    Result<void> (*write)(const closeout::Record&, const std::filesystem::path&);
};

std::span<const CloseoutExport> closeoutExports();

}  // namespace arc::storage
