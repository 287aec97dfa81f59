// SPDX-License-Identifier: GPL-3.0-or-later
// The paper a record is printed on: the crew's choice, kept in the logbook.
#pragma once
#include <optional>
#include <string_view>

#include "core/logbook.hpp"

namespace arc::closeout {

enum class PaperSize { A4, Letter };

std::string_view word(PaperSize paper);   ///< "a4", "letter"
std::string_view title(PaperSize paper);  ///< "A4", "Letter"
std::optional<PaperSize> paperNamed(std::string_view word);

/// A4 unless the setting "closeout.paper" says otherwise.
Result<PaperSize> paperOf(Logbook& book);
Setting paperSetting(PaperSize paper);

}  // namespace arc::closeout
