// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/phrases.hpp"

#include <vector>

#include "ui/text/phrase_lists.hpp"

namespace arc::ui::text {

std::span<const char* const> phraseShapes() {
    static const std::vector<const char*> all = [] {
        std::vector<const char*> gathered;
        for (const auto list : {journalPhrases(), driftPhrases(), carePhrases(), closeoutPhrases(),
                                workPhrases(), intakePhrases(), problemsPhrases()})
            gathered.insert(gathered.end(), list.begin(), list.end());
        return gathered;
    }();
    return all;
}

}  // namespace arc::ui::text
