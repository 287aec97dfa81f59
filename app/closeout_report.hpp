// SPDX-License-Identifier: GPL-3.0-or-later
// Making a closeout record folder out of a logbook: shared by the headless command and the window.
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/closeout/build.hpp"
#include "core/closeout/paper.hpp"
#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::app {

struct CloseoutRequest {
    JobId job;
    closeout::RecordState state = closeout::RecordState::Draft;
    std::string issuedBy;                              ///< needed for a final record
    std::optional<closeout::PaperSize> paper{};        ///< none: the crew's choice
    std::optional<closeout::PageLanguage> language{};  ///< of the pages; none: the crew's choice
    std::filesystem::path folder;
};

struct CloseoutWritten {
    std::filesystem::path folder;
    closeout::Record record;
    std::string manifestSha256;
    std::vector<std::string> files;
};

/// The record as it stands now.
Result<closeout::Record> closeoutRecord(Logbook& book, JobId job, closeout::RecordState state,
                                        const std::string& issuedBy, Clock& clock, Progress& progress);

/// Writes the folder; of a final record the book then knows number and manifest hash. All or nothing: on any
/// Problem there is no folder and no number is used up. A final record needs a book open for writing.
Result<CloseoutWritten> writeCloseoutFolder(Logbook& book, const CloseoutRequest& request, Clock& clock,
                                            Random& random, Progress& progress);

/// Decides on the exception whose key is `key`, or on all open ones that begin with it when it ends in "*";
/// answers their keys.
Result<std::vector<std::string>> decideExceptions(Logbook& book, JobId job, const std::string& key,
                                                  const std::string& disposition, const std::string& reason,
                                                  const std::string& by, Clock& clock, Random& random);

}  // namespace arc::app
