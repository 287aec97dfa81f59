// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/paper.hpp"

namespace arc::closeout {
namespace {

constexpr std::string_view paperKey = "closeout.paper";
constexpr std::string_view languageKey = "closeout.language";

}  // namespace

std::string_view word(PaperSize paper) {
    return paper == PaperSize::Letter ? "letter" : "a4";
}

std::string_view title(PaperSize paper) {
    return paper == PaperSize::Letter ? "Letter" : "A4";
}

std::optional<PaperSize> paperNamed(std::string_view named) {
    for (const auto paper : {PaperSize::A4, PaperSize::Letter})
        if (named == word(paper)) return paper;
    return std::nullopt;
}

Result<PaperSize> paperOf(Logbook& book) {
    const auto chosen = book.setting(paperKey);
    if (!chosen) return tl::unexpected(chosen.error());
    return (*chosen ? paperNamed(**chosen) : std::nullopt).value_or(PaperSize::A4);
}

Setting paperSetting(PaperSize paper) {
    return {std::string(paperKey), std::string(word(paper))};
}

std::string_view word(PageLanguage language) {
    return language == PageLanguage::Spanish ? "es" : "en";
}

std::string_view title(PageLanguage language) {
    return language == PageLanguage::Spanish ? "Español" : "English";
}

std::optional<PageLanguage> pageLanguageNamed(std::string_view named) {
    for (const auto language : {PageLanguage::English, PageLanguage::Spanish})
        if (named == word(language)) return language;
    return std::nullopt;
}

Result<PageLanguage> pageLanguageOf(Logbook& book) {
    const auto chosen = book.setting(languageKey);
    if (!chosen) return tl::unexpected(chosen.error());
    return (*chosen ? pageLanguageNamed(**chosen) : std::nullopt).value_or(PageLanguage::English);
}

Setting pageLanguageSetting(PageLanguage language) {
    return {std::string(languageKey), std::string(word(language))};
}

}  // namespace arc::closeout
