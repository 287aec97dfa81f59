// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/phrasebook.hpp"

#include <gtest/gtest.h>
#include <map>

namespace arc::ui::text {
namespace {

const std::map<QByteArray, QString> wordings{
    {"Splice of fibre {fibre}: {#loss} dB", "Empalme de la fibra {fibre}: {#loss} dB"},
    {"{~care} finished", "{~care} terminada"},
    {"Groove clean", "Limpieza de ranuras"},
    {"Splicer {label}", "Empalmadora {label}"},
    {"Splicer {label} taken out of service", "Empalmadora {label} fuera de servicio"},
    {"done on {@when}", "hecho el {@when}"},
    {"the disk is full", "el disco está lleno"},
    {"Free some space", "Libere espacio"},
    {"{#low} to {#high}", "entre {#high} y {#low}"},
};

Phrasebook book() {
    static const std::vector<const char*> shapes = [] {
        std::vector<const char*> all;
        for (const auto& [source, said] : wordings) all.push_back(source.constData());
        return all;
    }();
    return Phrasebook(
        shapes,
        [](const QByteArray& english) {
            const auto known = wordings.find(english);
            return known == wordings.end() ? QString() : known->second;
        },
        QLocale(QLocale::Spanish, QLocale::Spain));
}

TEST(Phrasebook, labelsPassAsTheyAreAndNumbersFollowTheLocale) {
    EXPECT_EQ(book().spoken("Splice of fibre Groove clean: 0.04 dB"),
              "Empalme de la fibra Groove clean: 0,04 dB");
}

TEST(Phrasebook, wordsInAHoleAreSpokenInTurn) {
    EXPECT_EQ(book().spoken("Groove clean finished"), "Limpieza de ranuras terminada");
    EXPECT_TRUE(book().knows("Groove clean finished"));
    EXPECT_FALSE(book().knows("Dusting finished"));
}

TEST(Phrasebook, theMoreExactShapeIsTakenFirst) {
    EXPECT_EQ(book().spoken("Splicer S-01 taken out of service"), "Empalmadora S-01 fuera de servicio");
    EXPECT_EQ(book().spoken("Splicer S-01"), "Empalmadora S-01");
}

TEST(Phrasebook, holesMayChangePlaces) {
    EXPECT_EQ(book().spoken("1.5 to 2.25"), "entre 2,25 y 1,5");
}

TEST(Phrasebook, monthsFollowTheLanguage) {
    EXPECT_EQ(book().spoken("done on 3 Jan 14:07"), "hecho el 3 ene 14:07");
}

TEST(Phrasebook, sentencesInARowAreSpokenOneByOne) {
    EXPECT_EQ(book().spoken("The disk is full (crew.arcbook). Free some space."),
              "El disco está lleno (crew.arcbook). Libere espacio.");
}

TEST(Phrasebook, whatIsNotKnownStaysAsItIs) {
    EXPECT_EQ(book().spoken("Grooves looked fine to me"), "Grooves looked fine to me");
    EXPECT_EQ(book().spoken(""), "");
    EXPECT_EQ(Phrasebook().spoken("the disk is full"), "the disk is full");
}

TEST(Phrasebook, aShapeThatCouldHoldItselfComesToAnEnd) {
    QString nested = QStringLiteral("Groove clean");
    for (int i = 0; i < 40; ++i) nested += QStringLiteral(" finished");
    EXPECT_FALSE(book().knows(nested));
}

TEST(PhraseNumbers, onlyWhatIsSurelyANumberIsRewritten) {
    const QLocale spain(QLocale::Spanish, QLocale::Spain);
    EXPECT_EQ(localNumber("0.040", spain), "0,040");
    EXPECT_EQ(localNumber("+0.043", spain), "+0,043");
    EXPECT_EQ(localNumber("12,345", spain), "12.345");
    EXPECT_EQ(localNumber("1310", spain), "1310");
}

}  // namespace
}  // namespace arc::ui::text
