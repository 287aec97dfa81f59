// SPDX-License-Identifier: GPL-3.0-or-later
// A photo from a file, and an attachment back into one.
#pragma once
#include <QString>

#include "core/entry.hpp"
#include "core/result.hpp"

namespace arc::ui {

/// Name filters of the file dialog.
QStringList photoFilters();

/// The photo with its name, type and content; id and subject are left to the caller. Only files named .jpg,
/// .jpeg or .png are opened: reading the logbook's own file would drop its locks.
Result<Attachment> photoFrom(const QString& path);

/// Writes the content into the folder under a harmless name; a file that is there stays, the new one gets a
/// number. Answers the path.
Result<QString> saveOut(const Attachment& attachment, const QString& folder);

}  // namespace arc::ui
