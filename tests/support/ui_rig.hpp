// SPDX-License-Identifier: GPL-3.0-or-later
// A real logbook in a folder that goes away, the session over it, and a workbench that reads the same file:
// what a page needs to run in a test as it does in the window.
#pragma once
#include <QApplication>
#include <QElapsedTimer>
#include <QSettings>
#include <QTest>
#include <QWidget>

#include <functional>
#include <memory>

#include "app/workbench.hpp"
#include "core/logbook.hpp"
#include "core/workbench.hpp"
#include "storage/care_cards.hpp"
#include "storage/intake.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/support/fakes.hpp"
#include "ui/shell/session.hpp"
#include "ui/theme/theme.hpp"

namespace arc::test {

/// Imports are real unless the test answers them; closeouts are answered by the test.
class RigBench : public Workbench {
  public:
    RigBench(std::filesystem::path book, Clock& clock, Random& random)
        : book_(std::move(book)),
          clock_(clock),
          random_(random),
          real_(app::makeWorkbench(book_, clock, random)) {}
    Result<std::unique_ptr<Logbook>> reader() override {
        return storage::openLogbook(book_, storage::OpenMode::ReadOnly, clock_, random_);
    }
    Result<care::Deck> cards(Logbook& book) override {
        auto shelf = storage::cardsInForce(book);
        if (!shelf) return tl::unexpected(shelf.error());
        return shelf->deck;
    }
    Result<std::vector<Problem>> refusedCards(Logbook& book) override {
        return storage::cardsInForce(book)->refused;
    }
    Result<care::Card> cardOfVersion(Logbook& book, std::string_view action, int version) override {
        return storage::cardOfVersion(book.cardEditions().value(), action, version);
    }
    Result<std::string> cardText(Logbook& book, std::string_view action) override {
        return storage::cardTextInForce(book.cardEditions().value(), action);
    }
    Result<CardEdition> cardEdition(Logbook& book, std::string_view json) override {
        return storage::editionOf(json, book.cardEditions().value(), makeId<EntryId>(clock_, random_));
    }
    Result<ImportCount> import(const std::filesystem::path& file, FileKind kind,
                               Progress& progress) override {
        if (onImport) return onImport(file, kind, progress);
        auto counts = storage::takeIn(
            {book_, {{file, kind}}, storage::Purpose::Import, storage::OpenMode::Companion, "test"}, clock_,
            random_, progress);
        if (!counts) return tl::unexpected(counts.error());
        return counts->front();
    }
    Result<ImportCount> importWith(const std::filesystem::path& file, const ColumnKey& key,
                                   Progress& progress) override {
        return real_->importWith(file, key, progress);
    }
    Result<TablePreview> preview(const TableQuestion& question) override { return real_->preview(question); }
    Result<std::vector<ColumnKey>> columnKeys() override { return real_->columnKeys(); }
    Result<Setting> columnKeySetting(const ColumnKey& key) override { return real_->columnKeySetting(key); }
    Result<void> writeColumnKey(const ColumnKey& key, const std::filesystem::path& file) override {
        return real_->writeColumnKey(key, file);
    }
    Result<ColumnKey> readColumnKey(const std::filesystem::path& file) override {
        return real_->readColumnKey(file);
    }
    Result<std::vector<SetAsideSheet>> setAside() override { return real_->setAside(); }
    Result<std::vector<ConcurrentEdits>> concurrentEdits() override {
        return twice.empty() ? real_->concurrentEdits() : twice;
    }
    Result<void> readSetAside(SetAsideSheet& sheet, std::size_t from, std::size_t count) override {
        return real_->readSetAside(sheet, from, count);
    }
    Result<std::vector<MendedRow>> mend(const SetAsideSheet& sheet, const std::vector<MendedRow>& rows,
                                        MendPurpose purpose) override {
        return real_->mend(sheet, rows, purpose);
    }
    std::vector<Setting> leftOut(const SetAsideSheet& sheet, const std::vector<std::size_t>& rows) override {
        return real_->leftOut(sheet, rows);
    }
    Result<std::filesystem::path> writeCloseout(JobId job, const std::filesystem::path& folder,
                                                Progress& progress) override {
        return onCloseout(job, folder, progress);
    }
    Result<void> backup(const std::filesystem::path&, Progress&) override { return {}; }
    Result<std::string> verify(const std::filesystem::path& path, Progress&) override {
        return "everything in " + path.filename().string() + " is as it was written";
    }

    std::vector<ConcurrentEdits> twice;  ///< instead of those of the book
    std::function<Result<ImportCount>(const std::filesystem::path&, FileKind, Progress&)> onImport;
    std::function<Result<std::filesystem::path>(JobId, const std::filesystem::path&, Progress&)> onCloseout;

  private:
    std::filesystem::path book_;
    Clock& clock_;
    Random& random_;
    std::unique_ptr<Workbench> real_;
};

struct UiRig {
    TempFolder folder;
    FakeClock clock;
    FakeRandom random;
    std::unique_ptr<Logbook> book;
    std::unique_ptr<RigBench> bench;
    std::unique_ptr<ui::Session> session;

    /// `existing`: a copy of this book is opened; empty: a new one is made.
    explicit UiRig(ui::Theme theme = {}, const std::filesystem::path& existing = {}) {
        ui::applyTheme(*qApp, theme);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope,
                           QString::fromStdString((folder / "config").string()));
        const auto file = folder / "test.arcbook";
        if (existing.empty()) {
            book = storage::createLogbook(file, clock, random).value();
        } else {
            std::filesystem::copy_file(existing, file);
            book = storage::openLogbook(file, storage::OpenMode::ReadWrite, clock, random).value();
        }
        bench = std::make_unique<RigBench>(file, clock, random);
    }
    /// The session starts looking at the book, so fill the book first.
    ui::Session& start() {
        session = std::make_unique<ui::Session>(*book, *bench, clock, random);
        return *session;
    }
    /// A second look at what is on disk.
    std::unique_ptr<Logbook> reopened() { return bench->reader().value(); }
    void write(const Entry& entry) {
        const auto receipt = book->append(entry, {"test", "test", std::nullopt});
        if (!receipt) throw std::runtime_error(receipt.error().sentence());
    }
    template <class AnyId>
    AnyId newId() {
        return makeId<AnyId>(clock, random);
    }
};

/// Handles events until it holds; false when it takes longer than a test may.
inline bool eventually(const std::function<bool()>& holds, int patienceMs = 30'000) {
    return QTest::qWaitFor(holds, patienceMs);
}

/// Presses the keys of a text one by one.
inline int typeKeys(QWidget* at, const QString& keys) {
    for (const QChar key : keys) QTest::keyClick(at, key.toLatin1());
    return static_cast<int>(keys.size());
}

}  // namespace arc::test
