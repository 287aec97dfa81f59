// SPDX-License-Identifier: GPL-3.0-or-later
// The note of a reading carries two things: what a person says about it, and what the program notes itself.
// Only the first may pass for the note that keeps a high splice.
#pragma once
#include <string>
#include <string_view>

namespace arc::note {

inline constexpr std::string_view kept = "kept: ";
inline constexpr std::string_view respliced = "re-spliced: ";
inline constexpr std::string_view corrected = "corrected from ";
inline constexpr std::string_view moved = "moved from fibre ";
/// The clock stood before the splice that was made earlier.
inline constexpr std::string_view clockBack = "the clock stepped back";

/// What the program notes itself.
inline constexpr std::string_view ours[] = {respliced, corrected, moved, clockBack};

/// `words` in front, what was there before in brackets.
std::string joined(std::string words, const std::string& before);

/// The note says why a splice above the limit stays; what the program noted itself does not.
bool keeps(std::string_view note);

}  // namespace arc::note
