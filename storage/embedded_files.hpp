// SPDX-License-Identifier: GPL-3.0-or-later
// Data files compiled into the program: migrations (storage/migrations), shipped care cards (resources/care)
// and the settings of the invented scenario (sample-data).
#pragma once
#include <span>
#include <string_view>

namespace arc::storage {

struct EmbeddedFile {
    std::string_view name;  ///< file name without folder, e.g. "0001_first.sql"
    std::string_view text;
};

/// Numbered SQL files, in no particular order.
std::span<const EmbeddedFile> embedded_migrations();
/// Shipped care cards and their schema.
std::span<const EmbeddedFile> embedded_care_cards();
/// Settings of the invented scenario (sample-data/*.json).
std::span<const EmbeddedFile> embedded_scenarios();

}  // namespace arc::storage
