// SPDX-License-Identifier: GPL-3.0-or-later
// Every sentence that core makes about the demo crew can be said in Spanish.
#include <gtest/gtest.h>
#include <set>

#include "core/care/queues.hpp"
#include "core/closeout/build.hpp"
#include "core/closeout/owed.hpp"
#include "storage/care_cards.hpp"
#include "storage/demo_book.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/support/fakes.hpp"
#include "tests/support/in_language.hpp"
#include "ui/shell/drift_view.hpp"

namespace arc::ui {
namespace {

class DemoWords : public testing::Test {
  protected:
    void look(const std::string& english) {
        const QString words = QString::fromStdString(english);
        if (!spanish.phrasebook().knows(words)) missing.insert(english);
    }
    void readJournal(Logbook& book) {
        std::uint64_t before = UINT64_MAX;
        for (;;) {
            const auto lines = book.journal(before, 2000).value();
            if (lines.empty()) return;
            // The first thousands of splices read alike; entries of care, kit and jobs are few.
            for (const auto& line : lines) look(line.text);
            before = lines.back().row;
        }
    }
    void readDriftWords(const std::vector<drift::SplicerReport>& reports) {
        for (const auto& report : reports)
            for (const auto& stratum : report.strata)
                for (const auto& signal : stratum.signals) {
                    look(signal.headline);
                    look(signal.advice);
                    for (const auto& cause : signal.causes)
                        for (const auto& line : cause.evidence) look(line);
                }
    }
    void readCare(Logbook& book, const DriftView& view, Instant now) {
        const auto deck = storage::cardsInForce(book).value().deck;
        const auto situation = care::gather(book, deck, now, view.histories).value();
        for (const auto& item : care::dueItems(situation, view.reports)) {
            look(item.title);
            look(item.why);
            look(item.basedOn);
            look(item.otherwise);
        }
        for (const auto& order : care::toOrder(situation, view.reports)) {
            look(order.what);
            look(order.why);
        }
        for (const auto& life : kit::livesOf(situation)) {
            for (const auto& bar : life.bars) {
                look(bar.title);
                look(bar.unit);
            }
            for (const auto& line : life.timeline) look(line.text);
            if (life.calibration && life.calibration->owed) look(life.calibration->owed->because);
        }
        closeout::BuildSettings settings;
        settings.madeAt = now;
        settings.owed = closeout::owedBy(book, deck, situation.settings);
        NoProgress quiet;
        const auto jobs = book.jobs().value();
        for (const auto& job : jobs) {
            const auto record = closeout::build(book, job.id, settings, quiet).value();
            for (const auto& span : record.spans) look(span.budgetNote);
            for (const auto& exception : record.exceptions) {
                look(exception.what);
                look(std::string(closeout::title(exception.kind)));
            }
        }
    }

    test::InLanguage spanish{text::Language::Spanish};
    std::set<std::string> missing;
};

TEST_F(DemoWords, everySentenceHasItsSpanish) {
    test::TempFolder folder;
    test::FakeClock clock;
    test::FakeRandom random;
    auto book = storage::createLogbook(folder / "demo.arcbook", clock, random).value();
    ASSERT_TRUE(storage::fillWithHarrowRidge(*book, clock.now()));
    NoProgress quiet;
    const DriftView view = readDrift(*book, quiet).value();
    readJournal(*book);
    readDriftWords(view.reports);
    readCare(*book, view, clock.now());
    std::string listed;
    for (const auto& sentence : missing) listed += sentence + "\n";
    EXPECT_EQ(listed, "");
}

}  // namespace
}  // namespace arc::ui
