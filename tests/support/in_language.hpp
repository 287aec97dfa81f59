// SPDX-License-Identifier: GPL-3.0-or-later
// The application speaks a language while this lives; afterwards it says what the code says.
#pragma once
#include <QApplication>
#include <QLocale>
#include <QTranslator>

#include <set>

#include "ui/text/language.hpp"
#include "ui/text/translator.hpp"

namespace arc::test {

class InLanguage {
  public:
    explicit InLanguage(ui::text::Language language) { ui::text::speak(*qApp, language); }
    ~InLanguage() {
        ui::text::speak(*qApp, ui::text::Language::English);
        for (auto* one : qApp->findChildren<QTranslator*>(QString(), Qt::FindDirectChildrenOnly)) delete one;
        QLocale::setDefault(m_before);
    }
    InLanguage(const InLanguage&) = delete;
    InLanguage& operator=(const InLanguage&) = delete;

    [[nodiscard]] const ui::text::Phrasebook& phrasebook() const {
        return ui::text::currentTranslator()->phrasebook();
    }

  private:
    QLocale m_before;
};

/// Stands behind the translations and notes what nobody had words for. Make it before InLanguage.
class Unsaid final : public QTranslator {
  public:
    Unsaid() { QCoreApplication::installTranslator(this); }
    ~Unsaid() override { QCoreApplication::removeTranslator(this); }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override {
        texts.insert(std::string(context) + ": " + source);
        return {};
    }
    mutable std::set<std::string> texts;
};

}  // namespace arc::test
