// SPDX-License-Identifier: GPL-3.0-or-later
// A small table that somebody chose, as text.
#pragma once
#include <QString>

#include <string>

#include "core/result.hpp"

namespace arc::ui {

/// At most 1 MB. Never a logbook: opening one raw would drop the database's locks.
Result<std::string> tableText(const QString& file);

}  // namespace arc::ui
