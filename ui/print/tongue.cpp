// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/tongue.hpp"

#include <QLocale>

#include "ui/print/words.hpp"
#include "ui/text/language.hpp"
#include "ui/text/translator.hpp"

namespace arc::print {

Tongue::Tongue(closeout::PageLanguage language)
    : m_translator(language == closeout::PageLanguage::Spanish
                       // Paper and files agree on the decimal point, and so does the Spanish of Mexico.
                       ? ui::text::translatorFor(ui::text::Language::Spanish,
                                                 QLocale(QLocale::Spanish, QLocale::Mexico))
                       : nullptr) {}

Tongue::~Tongue() = default;

QString Tongue::tr(const char* english) const {
    if (m_translator)
        // Where the texts of our functions and of our classes are filed.
        for (const char* place : {"arc::print", "arc::print::Sheet", "arc::print::Table"}) {
            const QString said = m_translator->translate(place, english, nullptr, -1);
            if (!said.isEmpty()) return said;
        }
    return QString::fromUtf8(english);
}

QString Tongue::spoken(std::string_view english) const {
    const QString plain = words(english);
    return m_translator ? m_translator->phrasebook().spoken(plain) : plain;
}

QString Tongue::colour(FibreColour colour) const {
    const std::string plain(word(colour));
    const QString said =
        m_translator ? m_translator->translate("Fibre", plain.c_str(), nullptr, -1) : QString();
    return said.isEmpty() ? QString::fromStdString(plain) : said;
}

}  // namespace arc::print
