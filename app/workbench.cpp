// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workbench.hpp"

#include <utility>

#include "app/closeout_report.hpp"
#include "app/verify_path.hpp"
#include "storage/backup.hpp"
#include "storage/care_cards.hpp"
#include "storage/intake.hpp"
#include "storage/sqlite_logbook.hpp"
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
        if (!storage::WriterLock::heldByThisProcess(book_))
            return fail(ProblemCode::Refused, "the logbook is open for reading only", book_.string(),
                        "Close it where it is being written to, then open it again");
        storage::IntakeRequest request;
        request.book = book_;
        request.files = {{file, kind}};
        request.mode = storage::OpenMode::Companion;
        auto counts = storage::takeIn(request, clock_, random_, progress);
        if (!counts) return tl::unexpected(counts.error());
        return std::move(counts->front());
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
        if (!storage::WriterLock::heldByThisProcess(book_))
            return fail(ProblemCode::Refused, "the logbook is open for reading only", book_.string(),
                        "Close it where it is being written to, then open it again");
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

  private:
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
