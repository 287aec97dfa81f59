// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences that core and storage make, as shapes with holes (see phrase_shape.hpp), for the translator
// and the phrasebook. The texts of the care cards need no list here: they are taken word by word.
#pragma once
#include <span>

namespace arc::ui::text {

/// Contexts in the translation files.
inline constexpr const char* phraseContext = "phrases";
inline constexpr const char* cardContext = "care cards";

/// Every sentence we know of, shapes among them.
std::span<const char* const> phraseShapes();

}  // namespace arc::ui::text
