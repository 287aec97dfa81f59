// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/translator.hpp"

#include <QCoreApplication>

#include "ui/text/phrases.hpp"

namespace arc::ui::text {
namespace {

Phrasebook bookOf(const Translator& translator, Translator::Phrases phrases, const QLocale& locale) {
    if (phrases == Translator::Phrases::AsTheyAre) return {};
    return Phrasebook(
        phraseShapes(),
        [&translator](const QByteArray& english) {
            QString said = translator.QTranslator::translate(phraseContext, english.constData());
            if (said.isEmpty()) said = translator.QTranslator::translate(cardContext, english.constData());
            return said;
        },
        locale);
}

}  // namespace

Translator::Translator(Phrases phrases, const QLocale& locale, QObject* parent)
    : QTranslator(parent), m_phrasebook(bookOf(*this, phrases, locale)) {}

QString Translator::translate(const char* context, const char* source, const char* disambiguation,
                              int n) const {
    const QByteArray asked(context);
    const QByteArray places[] = {asked, asked.mid(asked.lastIndexOf(':') + 1), "arc::ui", "arc::ui::text"};
    for (const auto& place : places) {
        const QString said = QTranslator::translate(place.constData(), source, disambiguation, n);
        if (!said.isEmpty()) return said;
    }
    return {};
}

const Translator* currentTranslator() {
    const auto* application = QCoreApplication::instance();
    return application ? application->findChild<Translator*>(QString(), Qt::FindDirectChildrenOnly) : nullptr;
}

}  // namespace arc::ui::text
