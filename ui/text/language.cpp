// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/language.hpp"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>

#include <algorithm>

#include "ui/text/translator.hpp"

// Resources of a static library are dropped by the linker unless somebody asks for them, and the macro must
// stand outside every namespace.
static void loadTranslations() {
    Q_INIT_RESOURCE(translations);
}

namespace arc::ui::text {
namespace {

constexpr LanguageRow rows[] = {
    {Language::English, "en", "English", "Language: English"},
    {Language::Spanish, "es", "Español", "Idioma: Español"},
    {Language::German, "de", "Deutsch", "Sprache: Deutsch"},
};
constexpr const char* languageProperty = "arc.language";

QLocale::Language qtLanguage(Language language) {
    switch (language) {
        case Language::English:
            return QLocale::English;
        case Language::Spanish:
            return QLocale::Spanish;
        case Language::German:
            return QLocale::German;
    }
    return QLocale::English;
}

QLocale localeFor(Language language) {
    const QLocale person = QLocale::system();
    return person.language() == qtLanguage(language) ? person : QLocale(qtLanguage(language));
}

}  // namespace

std::span<const LanguageRow> languages() {
    return rows;
}

std::optional<Language> languageOf(const QString& code) {
    const auto* row = std::ranges::find_if(
        rows, [&](const LanguageRow& known) { return code == QLatin1String(known.code); });
    return row == std::end(rows) ? std::nullopt : std::optional(row->language);
}

QString codeOf(Language language) {
    return QString::fromLatin1(rows[static_cast<std::size_t>(language)].code);
}

Language nextLanguage(Language language) {
    return rows[(static_cast<std::size_t>(language) + 1) % std::size(rows)].language;
}

Language systemLanguage() {
    for (const auto& wished : QLocale::system().uiLanguages())
        if (const auto ours = languageOf(wished.left(2))) return *ours;
    return Language::English;
}

std::unique_ptr<Translator> translatorFor(Language language, const QLocale& locale) {
    loadTranslations();
    auto ours = std::make_unique<Translator>(
        language == Language::English ? Translator::Phrases::AsTheyAre : Translator::Phrases::Spoken, locale,
        nullptr);
    // A build without the file speaks English.
    (void)ours->load(QStringLiteral(":/translations/arcwright_") + codeOf(language));
    return ours;
}

void speak(QCoreApplication& application, Language language) {
    loadTranslations();
    for (auto* old : application.findChildren<QTranslator*>(QString(), Qt::FindDirectChildrenOnly)) {
        QCoreApplication::removeTranslator(old);
        delete old;
    }
    const QLocale locale = localeFor(language);
    QLocale::setDefault(locale);
    application.setProperty(languageProperty, static_cast<int>(language));
    // The words of Qt's own dialogs: from our resources, else from the system's Qt.
    auto* qt = new QTranslator(&application);
    const QString name = QStringLiteral("qtbase_") + codeOf(language);
    if (language != Language::English && (qt->load(name, QStringLiteral(":/translations")) ||
                                          qt->load(name, QLibraryInfo::path(QLibraryInfo::TranslationsPath))))
        QCoreApplication::installTranslator(qt);
    auto* ours = translatorFor(language, locale).release();
    ours->setParent(&application);
    QCoreApplication::installTranslator(ours);
}

Language spokenLanguage() {
    const auto* application = QCoreApplication::instance();
    return application ? static_cast<Language>(application->property(languageProperty).toInt())
                       : Language::English;
}

}  // namespace arc::ui::text
