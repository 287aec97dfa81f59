// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/reading_verdict.hpp"

#include "core/work/notes.hpp"

namespace arc {

ReadingVerdict verdictOf(const AcceptanceRule& rule, const Reading& reading) {
    if (reading.state == ReadingState::Voided) return ReadingVerdict::Voided;
    switch (judge(rule, reading.loss, reading.attempt)) {
        case Verdict::Accept:
            return ReadingVerdict::Accept;
        case Verdict::AcceptHigh:
            return ReadingVerdict::AcceptHigh;
        case Verdict::OverCeiling:
            return ReadingVerdict::OverCeiling;
        case Verdict::KeepBestWithNote:
            return note::keeps(reading.note) ? ReadingVerdict::Kept : ReadingVerdict::NoteMissing;
        case Verdict::Resplice:
            break;
    }
    return ReadingVerdict::Resplice;
}

}  // namespace arc
