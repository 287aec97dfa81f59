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
            if (record.action == action::arcCalibration && record.at < *item.firstUse &&
                care::effectOf(record) == care::Effect::Reached)
                from = record.at.ms;
        const auto history = book.history(item.tool.id, from);
        if (!history) return tl::unexpected(history.error());
        return care::calibrationOwed(item.tool, records, *history, deck, settings);
    };
}

Result<care::Settings> careSettings(Logbook& book) {
    care::Settings settings;
    for (const std::string_view key : care::settingKeys()) {
        const auto value = book.setting(key);
        if (!value) return tl::unexpected(value.error());
        if (!*value) continue;
        if (const auto with = care::withSetting(settings, key, **value)) settings = *with;
    }
    return settings;
}

}  // namespace arc::closeout
