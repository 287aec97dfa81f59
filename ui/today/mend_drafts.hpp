// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed into set-aside rows and is not taken in yet. As the drafts of the pad it is nobody's record,
// so it stays on this laptop and out of the logbook, and survives a crash.
#pragma once
#include <map>
#include <string>

#include "core/intake/set_aside.hpp"

namespace arc::ui {

/// By the name of the row; untried, and without their place in a sheet.
std::map<std::string, MendedRow> rememberedMends();
void rememberMend(const std::string& name, const MendedRow& row);
void forgetMend(const std::string& name);

}  // namespace arc::ui
