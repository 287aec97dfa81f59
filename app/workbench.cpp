// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workbench.hpp"

#include <utility>

#include "app/closeout_report.hpp"
#include "app/verify_path.hpp"
#include "storage/backup.hpp"
#include "storage/care_cards.hpp"
#include "storage/conflicts.hpp"
#include "storage/damage.hpp"
#include "storage/intake.hpp"
#include "storage/plain_file.hpp"
#include "storage/rescue.hpp"
#include "storage/rolling_backup.hpp"
#include "storage/satchel.hpp"
#include "storage/set_aside_sheets.hpp"
#include "storage/sqlite_logbook.hpp"
#include "storage/table_preview.hpp"
#include "storage/waiting_satchels.hpp"
#include "storage/writer_lock.hpp"

namespace arc::app {
namespace {

class BookWorkbench final : public Workbench {
  public:
    BookWorkbench(std::filesystem::path book, Clock& clock, Random& random)
        : book_(std::move(book)), clock_(clock), random_(random) {}

    Result<std::unique_ptr<Logbook>> reader() override {
        return storage::openLogbook(book_, storage::OpenMode::ReadOnly, clock_, random_);
    }

    Result<care::Deck> cards(Logbook& book) override {
        return storage::cardsInForce(book).map([](const storage::CardShelf& shelf) { return shelf.deck; });
    }

    Result<std::vector<Problem>> refusedCards(Logbook& book) override {
        return storage::cardsInForce(book).map([](const storage::CardShelf& shelf) { return shelf.refused; });
    }

    Result<care::Card> cardOfVersion(Logbook& book, std::string_view action, int version) override {
        return book.cardEditions().and_then([&](const std::vector<CardEdition>& editions) {
            return storage::cardOfVersion(editions, action, version);
        });
    }

    Result<std::string> cardText(Logbook& book, std::string_view action) override {
        return book.cardEditions().and_then([&](const std::vector<CardEdition>& editions) {
            return storage::cardTextInForce(editions, action);
        });
    }

    Result<CardEdition> cardEdition(Logbook& book, std::string_view json) override {
        return book.cardEditions().and_then([&](const std::vector<CardEdition>& editions) {
            return storage::editionOf(json, editions, makeId<EntryId>(clock_, random_));
        });
    }

    Result<ImportCount> import(const std::filesystem::path& file, FileKind kind,
                               Progress& progress) override {
        return readIn({file, kind}, {}, progress);
    }

    Result<ImportCount> importWith(const std::filesystem::path& file, const ColumnKey& key,
                                   Progress& progress) override {
        return readIn({file, key.kind}, key, progress);
    }

    Result<TablePreview> preview(const TableQuestion& question) override {
        if (auto ours = mayWrite(); !ours) return tl::unexpected(ours.error());
        return storage::previewTable(book_, question, clock_, random_);
    }

    Result<std::vector<ColumnKey>> columnKeys() override { return storage::savedKeys(book_); }

    Result<Setting> columnKeySetting(const ColumnKey& key) override { return storage::keySetting(key); }

    Result<void> writeColumnKey(const ColumnKey& key, const std::filesystem::path& file) override {
        return storage::writePlainFile(file, storage::toJson(key) + "\n", storage::FileMode::Normal);
    }

    Result<ColumnKey> readColumnKey(const std::filesystem::path& file) override {
        return storage::loadColumnKey(file);
    }

    Result<std::vector<SetAsideSheet>> setAside() override { return storage::openSheets(book_); }
    Result<void> readSetAside(SetAsideSheet& sheet, std::size_t from, std::size_t count) override {
        return storage::readRows(book_, sheet, from, count);
    }

    Result<std::vector<MendedRow>> mend(const SetAsideSheet& sheet, const std::vector<MendedRow>& rows,
                                        MendPurpose purpose) override {
        if (auto ours = mayWrite(); !ours) return tl::unexpected(ours.error());
        return storage::mendRows(book_, sheet, rows, purpose, "", clock_, random_);
    }

    std::vector<Setting> leftOut(const SetAsideSheet& sheet, const std::vector<std::size_t>& rows) override {
        std::vector<Setting> settings;
        for (const auto row : rows) settings.push_back(storage::leftOutSetting(sheet, row));
        return settings;
    }

    Result<std::filesystem::path> writeCloseout(JobId job, const std::filesystem::path& folder,
                                                Progress& progress) override {
        auto book = reader();
        if (!book) return tl::unexpected(book.error());
        CloseoutRequest request;
        request.job = job;
        request.folder = folder;
        return written(**book, request, progress);
    }

    Result<std::filesystem::path> issueCloseout(JobId job, const std::filesystem::path& folder,
                                                const std::string& by, Progress& progress) override {
        if (auto may = mayWrite(); !may) return tl::unexpected(may.error());
        auto book = storage::openLogbook(book_, storage::OpenMode::Companion, clock_, random_);
        if (!book) return tl::unexpected(book.error());
        CloseoutRequest request;
        request.job = job;
        request.folder = folder;
        request.state = closeout::RecordState::Final;
        request.issuedBy = by;
        return written(**book, request, progress);
    }

    Result<void> backup(const std::filesystem::path& destination, Progress& progress) override {
        return storage::backupBook(book_, destination, progress);
    }

    Result<std::string> verify(const std::filesystem::path& path, Progress& progress) override {
        return verifyPath(path, progress);
    }

    Result<PackCount> packSatchel(const PackOrder& order, Progress& progress) override {
        const auto key = storage::configFolder().and_then(storage::deviceKey);
        if (!key) return tl::unexpected(key.error());
        return storage::packSatchel(book_, order, *key, clock_, random_, progress);
    }

    Result<SatchelAnswer> takeSatchel(const std::filesystem::path& satchel,
                                      const std::optional<std::string>& passphrase,
                                      Progress& progress) override {
        if (auto may = mayWrite(); !may) return tl::unexpected(may.error());
        const auto config = storage::configFolder();
        if (!config) return tl::unexpected(config.error());
        storage::UnpackRequest request;
        request.book = book_;
        request.satchel = satchel;
        request.passphrase = passphrase;
        request.mode = storage::OpenMode::Companion;
        return storage::takeOrKeep(std::move(request), *config, clock_, random_, progress);
    }

    Result<std::vector<WaitingSatchel>> waitingSatchels() override { return storage::waitingSatchels(book_); }

    Result<void> discardSatchel(const WaitingSatchel& satchel) override {
        return storage::discardSatchel(book_, satchel.file);
    }

    Result<std::vector<Device>> devices() override {
        return storage::configFolder().and_then(
            [this](const std::filesystem::path& config) { return storage::devicesAround(config, book_); });
    }

    Result<void> acceptDevice(const std::string& key, const std::string& name) override {
        const auto config = storage::configFolder();
        if (!config) return tl::unexpected(config.error());
        const auto parsed = storage::fromDerBase64(key);
        if (!parsed) return fail(ProblemCode::BadInput, "this is not the key of a device", key);
        return storage::acceptDevice(*config, *parsed, name);
    }

    Result<std::vector<ConcurrentEdits>> concurrentEdits() override {
        return storage::concurrentEditsOf(book_);
    }

    Result<Receipt> settle(const ConcurrentEdits& edits, std::size_t keep, const Context& context) override {
        if (auto may = mayWrite(); !may) return tl::unexpected(may.error());
        return storage::settleEdits({book_, storage::OpenMode::Companion}, edits, keep, context, clock_,
                                    random_);
    }

    Result<std::vector<NumberClash>> numberClashes() override { return storage::numberClashesOf(book_); }

    Result<std::vector<BackupCopy>> backups() override {
        return storage::backupPlan(book_).map(
            [this](const storage::BackupPlan& plan) { return storage::backupsOf(book_, plan); });
    }

    Result<BackupCopy> makeBackup(Progress& progress) override {
        return storage::backupPlan(book_).and_then([&](const storage::BackupPlan& plan) {
            return storage::addBackup(book_, plan, clock_, progress);
        });
    }

    Result<std::optional<BackupCopy>> makeBackupIfDue(Progress& progress) override {
        return storage::addBackupIfDue(book_, clock_, progress);
    }

    Result<void> restoreBackup(const std::filesystem::path& copy, const std::filesystem::path& newBook,
                               Progress& progress) override {
        return storage::restoreBackup(copy, newBook, progress);
    }

    Result<BookState> bookState() override { return storage::bookState(book_); }

    Result<BookState> checkBook(Progress& progress) override {
        const auto sound = storage::checkPages(book_, progress);
        if (!sound && sound.error().code != ProblemCode::Damaged) return tl::unexpected(sound.error());
        return bookState();
    }

    Result<RescueCount> rescueInto(const std::filesystem::path& newBook, Progress& progress) override {
        return storage::rescueBook(book_, newBook, clock_, random_, progress);
    }

  private:
    [[nodiscard]] Result<void> mayWrite() const {
        if (storage::WriterLock::heldByThisProcess(book_)) return {};
        return fail(ProblemCode::Refused, "the logbook is open for reading only", book_.string(),
                    "Close it where it is being written to, then open it again");
    }

    Result<ImportCount> readIn(const storage::FileToRead& file, std::optional<ColumnKey> key,
                               Progress& progress) {
        if (auto ours = mayWrite(); !ours) return tl::unexpected(ours.error());
        storage::IntakeRequest request;
        request.book = book_;
        request.files = {file};
        request.mode = storage::OpenMode::Companion;
        request.key = std::move(key);
        auto counts = storage::takeIn(request, clock_, random_, progress);
        if (!counts) return tl::unexpected(counts.error());
        return std::move(counts->front());
    }

    Result<std::filesystem::path> written(Logbook& book, const CloseoutRequest& request, Progress& progress) {
        return writeCloseoutFolder(book, request, clock_, random_, progress)
            .map([](const CloseoutWritten& answer) { return answer.folder; });
    }

    std::filesystem::path book_;
    Clock& clock_;
    Random& random_;
};

}  // namespace

std::unique_ptr<Workbench> makeWorkbench(std::filesystem::path book, Clock& clock, Random& random) {
    return std::make_unique<BookWorkbench>(std::move(book), clock, random);
}

}  // namespace arc::app
