// SPDX-License-Identifier: GPL-3.0-or-later
// Our own translation file behind Qt's tr(), with the phrasebook for the sentences that come from core.
#pragma once
#include <QLocale>
#include <QTranslator>

#include "ui/text/phrasebook.hpp"

namespace arc::ui::text {

class Translator : public QTranslator {
    Q_OBJECT
  public:
    enum class Phrases { AsTheyAre, Spoken };
    Translator(Phrases phrases, const QLocale& locale, QObject* parent);

    /// Looks in the context that is asked for, then where lupdate puts the texts of free functions: under
    /// their namespace.
    [[nodiscard]] QString translate(const char* context, const char* source, const char* disambiguation,
                                    int n) const override;
    [[nodiscard]] bool isEmpty() const override { return false; }

    [[nodiscard]] const Phrasebook& phrasebook() const { return m_phrasebook; }

  private:
    Phrasebook m_phrasebook;
};

/// The one in force; null before speak().
const Translator* currentTranslator();

}  // namespace arc::ui::text
