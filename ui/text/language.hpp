// SPDX-License-Identifier: GPL-3.0-or-later
// The language the window speaks. It is set once for the application, as the look is, and may change at any
// time: widgets made afterwards speak it. Numbers and dates follow the person's locale when it is of that
// language, else the language's own.
#pragma once
#include <QString>

#include <memory>
#include <optional>
#include <span>

class QCoreApplication;
class QLocale;

namespace arc::ui::text {

class Translator;

enum class Language { English, Spanish, German };

struct LanguageRow {
    Language language;
    const char* code;    ///< ISO 639-1, as remembered on the device: "es"
    const char* name;    ///< UTF-8, in the language itself: "Español"
    const char* choice;  ///< UTF-8, what to press to get it: "Idioma: Español"
};
std::span<const LanguageRow> languages();

/// None when it is not one of ours.
std::optional<Language> languageOf(const QString& code);
QString codeOf(Language language);

/// The person's first wish among the desktop's languages that is one of ours; English without one.
Language systemLanguage();

/// The one after it in the list, from the last to the first.
Language nextLanguage(Language language);

/// Our texts in a language, numbers and months as in `locale`: for one who does not go by the window.
std::unique_ptr<Translator> translatorFor(Language language, const QLocale& locale);

void speak(QCoreApplication& application, Language language);
/// The language in force; English before speak().
Language spokenLanguage();

}  // namespace arc::ui::text
