// SPDX-License-Identifier: GPL-3.0-or-later
// Care cards as JSON: the shipped ones are embedded, a supervisor's editions come from the logbook. A broken
// card is refused with file, line and reason, and the shipped one is used.
#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/care/card.hpp"
#include "core/care/record.hpp"
#include "core/logbook.hpp"
#include "core/result.hpp"

namespace arc::storage {

/// Reads and checks one card; `file` names it in Problem::where ("lens_clean.json, line 14"). Unknown members
/// and duplicate keys are refused.
Result<care::Card> readCard(std::string_view json, const std::string& file);

struct CardShelf {
    care::Deck deck;
    std::vector<Problem> refused;  ///< editions that could not be used, with file, line and reason
};

/// The cards the program came with.
Result<CardShelf> shippedCards();
/// The newest good edition of each card, else the shipped one.
Result<CardShelf> cardsInForce(std::span<const CardEdition> editions);
Result<CardShelf> cardsInForce(Logbook& book);
/// The card a record or run was done with: an edition, or the shipped card of that version.
Result<care::Card> cardOfVersion(std::span<const CardEdition> editions, std::string_view action, int version);

/// The text of a shipped card.
Result<std::string> shippedCardText(std::string_view action);
/// The text of the card in force, for the editor to begin with.
Result<std::string> cardTextInForce(std::span<const CardEdition> editions, std::string_view action);
/// Checks an edited card against the whole deck and answers the edition to append: its version is one above
/// every version there was.
Result<CardEdition> editionOf(std::string_view json, std::span<const CardEdition> editions, EntryId id);

}  // namespace arc::storage
