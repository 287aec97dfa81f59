// SPDX-License-Identifier: GPL-3.0-or-later
// The Spanish file is whole, and no translation loses what the program fills in.
#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <algorithm>
#include <gtest/gtest.h>
#include <set>
#include <vector>

#include "source_dir.hpp"
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

TEST(CardWords, aCrewsOwnWordingShowsAsItIsWritten) {
    const test::InLanguage spanish{Language::Spanish};
    EXPECT_EQ(fromCard("Clean V-grooves"), QStringLiteral("Limpiar las ranuras en V"));
    EXPECT_EQ(fromCard("Look again. Then call Ada."), QStringLiteral("Look again. Then call Ada."));
}

}  // namespace
}  // namespace arc::ui::text
