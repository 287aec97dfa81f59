// SPDX-License-Identifier: GPL-3.0-or-later
// Where the closeout record learns in which stretches a splicer owed an arc calibration.
#pragma once
#include "core/care/card.hpp"
#include "core/care/rules.hpp"
#include "core/closeout/build.hpp"
#include "core/logbook.hpp"

namespace arc::closeout {

/// By the rules of core/care, with the cards in force. Reads a splicer's arcs from its last calibration
/// before the job on, not its whole history. `book` must outlive the answer.
OwedBy owedBy(Logbook& book, care::Deck deck, care::Settings settings);

}  // namespace arc::closeout
