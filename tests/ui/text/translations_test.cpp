// SPDX-License-Identifier: GPL-3.0-or-later
// The Spanish file is whole, and no translation loses what the program fills in.
#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <algorithm>
#include <gtest/gtest.h>
#include <set>
#include <vector>

#include "core/care/card.hpp"
#include "source_dir.hpp"
#include "storage/care_cards.hpp"
#include "tests/support/in_language.hpp"
#include "ui/text/format.hpp"
#include "ui/text/phrases.hpp"

namespace arc::ui::text {
namespace {

struct Message {
    QString context, source, state;
    QStringList translations;
};

std::vector<Message> messagesOf(const char* language) {
    QFile file(QStringLiteral(ARC_SOURCE_DIR "/resources/translations/arcwright_%1.ts").arg(language));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    std::vector<Message> all;
    QString context;
    for (QXmlStreamReader xml(&file); !xml.atEnd();) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == QLatin1String("name")) context = xml.readElementText();
        if (xml.name() == QLatin1String("source")) all.push_back({context, xml.readElementText(), {}, {}});
        if (xml.name() == QLatin1String("numerusform")) all.back().translations << xml.readElementText();
        if (xml.name() == QLatin1String("translation")) {
            all.back().state = xml.attributes().value(QLatin1String("type")).toString();
            QString words;
            while (xml.readNext() == QXmlStreamReader::Characters) words += xml.text();
            if (xml.isStartElement())
                all.back().translations << xml.readElementText();
            else
                all.back().translations << words;
        }
    }
    return all;
}

QStringList found(const QString& text, const char* pattern) {
    QStringList all;
    for (auto match = QRegularExpression(QLatin1String(pattern)).globalMatch(text); match.hasNext();)
        all << match.next().captured();
    all.sort();
    return all;
}

/// Everything in a text that the program or the keyboard relies on.
void expectSameParts(const Message& message, const QString& said) {
    const auto where = (message.context + ": " + message.source).toStdString();
    EXPECT_EQ(found(message.source, "%[1-9]"), found(said, "%[1-9]")) << where;
    if (message.context == QLatin1String(phraseContext)) {
        EXPECT_EQ(found(message.source, "\\{[^}]*\\}"), found(said, "\\{[^}]*\\}")) << where;
    }
    // A key behind two spaces, as on "Void  V".
    static const QRegularExpression key(QStringLiteral("  ([A-Z]|F[0-9]+|Esc|Enter|Ctrl\\+Enter|/)$"));
    if (const auto source = key.match(message.source); source.hasMatch()) {
        QString wanted = source.captured();
        if (said.endsWith(QLatin1String("Intro")))
            wanted.replace(QLatin1String("Enter"), QLatin1String("Intro"));
        EXPECT_TRUE(said.endsWith(wanted)) << where << " => " << said.toStdString();
    }
    EXPECT_EQ(message.source.startsWith(QLatin1Char(' ')), said.startsWith(QLatin1Char(' '))) << where;
}

TEST(Translations, spanishIsWhole) {
    std::string open;
    for (const auto& message : messagesOf("es")) {
        const bool said = std::ranges::none_of(message.translations, &QString::isEmpty);
        if (!message.state.isEmpty() || message.translations.isEmpty() || !said)
            open += (message.context + ": " + message.source + "\n").toStdString();
    }
    EXPECT_EQ(open, "");
}

TEST(Translations, noneLosesWhatIsFilledIn) {
    for (const char* language : {"es", "de", "en"})
        for (const auto& message : messagesOf(language))
            for (const auto& said : message.translations)
                if (message.state.isEmpty()) expectSameParts(message, said);
}

TEST(Translations, theFilesHoldWhatTheCodeSays) {
    std::set<QString> phrases, cards;
    for (const auto& message : messagesOf("es")) {
        if (message.context == QLatin1String(phraseContext)) phrases.insert(message.source);
        if (message.context == QLatin1String(cardContext)) cards.insert(message.source);
    }
    for (const char* shape : phraseShapes())
        EXPECT_TRUE(phrases.contains(QString::fromUtf8(shape))) << shape << ": run update_translations";
}

class CardWords : public testing::Test {
  protected:
    void look(const std::string& text) {
        if (text.empty() ||
            QCoreApplication::translate(cardContext, text.c_str()) != QString::fromStdString(text))
            return;
        // Standards, units and the like are the same in every language.
        static const QRegularExpression same(QStringLiteral("^(G\\.[0-9.A-Z]+|°C|ml)$"));
        if (!same.match(QString::fromStdString(text)).hasMatch()) missing += text + "\n";
    }
    void look(const care::Step& step) {
        look(step.text);
        look(step.hint);
        if (const auto* inspect = std::get_if<care::InspectStep>(&step.what)) look(inspect->question);
        if (const auto* repeat = std::get_if<care::RepeatStep>(&step.what)) look(repeat->question);
        if (const auto* record = std::get_if<care::RecordStep>(&step.what))
            for (const auto& field : record->fields) {
                look(field.label);
                look(field.unit);
                for (std::string choice : field.choices) {
                    std::ranges::replace(choice, '_', ' ');
                    look(choice);
                }
            }
    }
    test::InLanguage spanish{Language::Spanish};
    std::string missing;
};

TEST_F(CardWords, everyTextOfEveryShippedCardHasItsSpanish) {
    const auto deck = storage::shippedCards().value().deck;
    for (const auto& card : deck.cards) {
        look(card.title);
        look(card.purpose);
        look(card.source);
        for (const auto& caution : card.cautions) look(caution);
        for (const auto& material : card.materials) look(material.name);
        for (const auto& rule : card.when) {
            look(rule.otherwise);
            look(rule.source);
        }
        for (const auto& step : card.steps) look(step);
    }
    EXPECT_EQ(missing, "");
}

TEST_F(CardWords, aCrewsOwnWordingShowsAsItIsWritten) {
    EXPECT_EQ(fromCard("Look again. Then call Ada."), QStringLiteral("Look again. Then call Ada."));
}

}  // namespace
}  // namespace arc::ui::text
