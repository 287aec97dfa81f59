// SPDX-License-Identifier: GPL-3.0-or-later
// What the history key is about: the record that is chosen on a page, or whatever a journal row wrote.
#pragma once
#include <QString>

#include <cstdint>
#include <variant>

#include "core/units/id.hpp"

namespace arc::ui {

struct JournalRow {
    std::uint64_t row = 0;
};

struct Subject {
    std::variant<Uuid, JournalRow> of;
    QString name;  ///< "fibre 7 in HR-17"
};

}  // namespace arc::ui
