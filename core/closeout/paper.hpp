// SPDX-License-Identifier: GPL-3.0-or-later
// The pages of a record: their paper and the language they speak, the crew's choice, kept in the logbook. The
// data beside them is the same in every language.
#pragma once
#include <optional>
#include <string_view>

#include "core/logbook.hpp"

namespace arc::closeout {

enum class PaperSize { A4, Letter };

std::string_view word(PaperSize paper);   ///< "a4", "letter"
std::string_view title(PaperSize paper);  ///< "A4", "Letter"
std::optional<PaperSize> paperNamed(std::string_view word);

enum class PageLanguage { English, Spanish };

std::string_view word(PageLanguage language);   ///< ISO 639-1: "en", "es"
std::string_view title(PageLanguage language);  ///< in the language itself, UTF-8: "English", "Español"
std::optional<PageLanguage> pageLanguageNamed(std::string_view word);

struct PageForm {
    PaperSize paper = PaperSize::A4;
    PageLanguage language = PageLanguage::English;
};

/// A4 unless the setting "closeout.paper" says otherwise.
Result<PaperSize> paperOf(Logbook& book);
Setting paperSetting(PaperSize paper);
/// English unless the setting "closeout.language" says otherwise.
Result<PageLanguage> pageLanguageOf(Logbook& book);
Setting pageLanguageSetting(PageLanguage language);

}  // namespace arc::closeout
