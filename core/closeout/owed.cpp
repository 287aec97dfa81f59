// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/owed.hpp"

#include <utility>

namespace arc::closeout {

OwedBy owedBy(Logbook& book, care::Deck deck, care::Settings settings) {
    return [&book, deck = std::move(deck), settings](
               const Equipment& item,
               const std::vector<CareRecord>& records) -> Result<std::vector<care::OwedStretch>> {
        std::optional<std::int64_t> from;
        for (const CareRecord& record : records)
            if (record.at < *item.firstUse && care::effectOf(record) == care::Effect::Reached &&
                care::counts(record, *asSplicer(item.tool)))
                from = record.at.ms;
        const auto history = book.history(item.tool.id, from);
        if (!history) return tl::unexpected(history.error());
        return care::calibrationOwed(item.tool, records, *history, deck, settings);
    };
}

}  // namespace arc::closeout
