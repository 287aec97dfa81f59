// SPDX-License-Identifier: GPL-3.0-or-later
// The photos and notes that belong to a job, beside its closeout record.
#pragma once
#include "core/closeout/record.hpp"
#include "core/logbook.hpp"
#include "storage/closeout_folder.hpp"

namespace arc::storage {

/// Writes what is attached to the job's closures, its splices and the care shown in its record into the folder,
/// and names it in the record with its hash. Damaged: content is not what the logbook says.
Result<void> addAttachments(Logbook& book, closeout::Record& record, const CloseoutStage& stage);

}  // namespace arc::storage
