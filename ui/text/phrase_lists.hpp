// SPDX-License-Identifier: GPL-3.0-or-later
// The lists behind phraseShapes(), one a subject. Only phrases.cpp reads them.
#pragma once
#include <span>

namespace arc::ui::text {

std::span<const char* const> journalPhrases();
std::span<const char* const> driftPhrases();
std::span<const char* const> carePhrases();
std::span<const char* const> closeoutPhrases();
std::span<const char* const> workPhrases();
std::span<const char* const> intakePhrases();
std::span<const char* const> problemsPhrases();

}  // namespace arc::ui::text
