// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/closeout_report.hpp"

#include <algorithm>
#include <future>

#include "core/care/queues.hpp"
#include "core/closeout/owed.hpp"
#include "storage/care_cards.hpp"
#include "storage/closeout_attachments.hpp"
#include "storage/closeout_folder.hpp"
#include "storage/device_key.hpp"
#include "storage/export_list.hpp"
#ifdef ARC_PRINT
#include "ui/print/record_pdf.hpp"
#endif

namespace arc::app {
namespace {

constexpr const char* pdfName = "record.pdf";

Result<void> writePdf(const closeout::Record& record, closeout::PageForm form,
                      const std::filesystem::path& file, Progress& progress) {
#ifdef ARC_PRINT
    return print::writeRecordPdf(record, form, file, progress);
#else
    (void)record, (void)form, (void)file, (void)progress;
    return fail(ProblemCode::Unavailable, "this build has no pages: it was made without Qt", "",
                "Build with ARC_WINDOW on");
#endif
}

Result<closeout::PageForm> formOf(Logbook& book, const CloseoutRequest& request) {
    const auto paper = closeout::paperOf(book);
    if (!paper) return tl::unexpected(paper.error());
    const auto language = closeout::pageLanguageOf(book);
    if (!language) return tl::unexpected(language.error());
    return closeout::PageForm{request.paper.value_or(*paper), request.language.value_or(*language)};
}

Result<void> note(Logbook& book, const CloseoutWritten& written, const CloseoutRequest& request, Clock& clock,
                  Random& random) {
    if (request.state != closeout::RecordState::Final) return {};
    IssuedRecord issued;
    issued.id = makeId<EntryId>(clock, random);
    issued.job = request.job;
    issued.number = *written.record.number;
    issued.manifestSha256 = written.manifestSha256;
    issued.supersedes = written.record.supersedes;
    issued.by = request.issuedBy;
    issued.at = written.record.madeAt;
    auto receipt = book.append(issued, {request.issuedBy, "closeout", {}});
    if (!receipt) return tl::unexpected(receipt.error());
    return {};
}

bool matches(const std::string& pattern, const std::string& key) {
    if (!pattern.empty() && pattern.back() == '*')
        return key.starts_with(pattern.substr(0, pattern.size() - 1));
    return key == pattern;
}

}  // namespace

Result<closeout::Record> closeoutRecord(Logbook& book, JobId job, closeout::RecordState state,
                                        const std::string& issuedBy, Clock& clock, Progress& progress) {
    closeout::BuildSettings settings;
    settings.state = state;
    settings.issuedBy = issuedBy;
    settings.madeAt = clock.now();
    settings.madeAt.ms -= settings.madeAt.ms % 1000;
    auto shelf = storage::cardsInForce(book);
    if (!shelf) return tl::unexpected(shelf.error());
    const auto care = care::settingsOf(book);
    if (!care) return tl::unexpected(care.error());
    settings.owed = closeout::owedBy(book, std::move(shelf->deck), care->settings);
    return closeout::build(book, job, settings, progress);
}

Result<CloseoutWritten> writeCloseoutFolder(Logbook& book, const CloseoutRequest& request, Clock& clock,
                                            Random& random, Progress& progress) {
    auto record = closeoutRecord(book, request.job, request.state, request.issuedBy, clock, progress);
    if (!record) return tl::unexpected(record.error());
    const auto form = formOf(book, request);
    if (!form) return tl::unexpected(form.error());
    const auto config = storage::configFolder();
    if (!config) return tl::unexpected(config.error());
    const auto key = storage::deviceKey(*config);
    if (!key) return tl::unexpected(key.error());
    auto stage = storage::CloseoutStage::begin(request.folder);
    if (!stage) return tl::unexpected(stage.error());
    if (auto added = storage::addAttachments(book, *record, *stage); !added)
        return tl::unexpected(added.error());
#ifdef ARC_PRINT
    // In a window this thread is not the one of the application, which is there already.
    const print::PrintApplication application;
#endif

    // Pages take as long as all other exports together, so they are made beside them.
    auto pages = std::async(std::launch::async, [&, file = stage->file(pdfName)] {
        return writePdf(*record, *form, file, progress);
    });
    CloseoutWritten written;
    Result<void> exported;
    for (const storage::CloseoutExport& one : storage::closeoutExports()) {
        if (!exported) break;
        exported = one.write(*record, stage->file(one.fileName));
        written.files.emplace_back(one.fileName);
    }
    if (auto done = pages.get(); !done) return tl::unexpected(done.error());
    if (!exported) return tl::unexpected(exported.error());
    written.files.emplace_back(pdfName);
    for (const auto& attached : record->attachments) written.files.push_back(attached.file);
    auto sealed = stage->seal(*record, *key, progress);
    if (!sealed) return tl::unexpected(sealed.error());
    written.manifestSha256 = *sealed;
    written.record = std::move(*record);
    // The number is taken first: a folder nobody knows of can be made again, a number given twice cannot be
    // taken back.
    if (auto noted = note(book, written, request, clock, random); !noted)
        return tl::unexpected(noted.error());
    auto placed = stage->putInPlace();
    if (!placed) {
        Problem problem = placed.error();
        // The book knows this record by now, so it must not go away.
        if (request.state == closeout::RecordState::Final)
            problem.next =
                "The record was issued and lies in " + stage->keep().string() + "; move it yourself";
        return tl::unexpected(std::move(problem));
    }
    written.folder = *placed;
    return written;
}

Result<std::vector<std::string>> decideExceptions(Logbook& book, JobId job, const std::string& key,
                                                  const std::string& disposition, const std::string& reason,
                                                  const std::string& by, Clock& clock, Random& random) {
    if (by.empty()) return fail(ProblemCode::BadInput, "a disposition needs the name of who decides", "--by");
    if (reason.empty()) return fail(ProblemCode::BadInput, "a disposition needs a reason", "--reason");
    NoProgress progress;
    const auto record = closeoutRecord(book, job, closeout::RecordState::Draft, "", clock, progress);
    if (!record) return tl::unexpected(record.error());
    std::vector<Entry> entries;
    std::vector<std::string> keys;
    for (const closeout::Exception& exception : record->exceptions) {
        if (!matches(key, exception.key)) continue;
        // A pattern takes what is open; only a whole key decides anew.
        if (exception.key != key && closeout::isDecided(exception)) continue;
        ExceptionDisposition decided;
        decided.id = makeId<EntryId>(clock, random);
        decided.job = job;
        decided.exceptionKey = exception.key;
        decided.disposition = disposition;
        decided.reason = reason;
        decided.by = by;
        decided.at = clock.now();
        keys.push_back(exception.key);
        entries.emplace_back(std::move(decided));
    }
    if (keys.empty())
        return fail(ProblemCode::NotFound, "no open exception of this job has the key " + key, "",
                    "arcw closeout BOOK --job " + record->job.label + " lists them");
    auto receipt = book.append(entries, {by, "arcw closeout", {}});
    if (!receipt) return tl::unexpected(receipt.error());
    return keys;
}

}  // namespace arc::app
