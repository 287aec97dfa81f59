// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers typed into a field, held against what they may be. A Problem names the field by its accessible name.
#pragma once
#include "core/result.hpp"

class QLineEdit;

namespace arc::ui {

/// Both ends are allowed.
struct TypedRange {
    double least = 0;
    double most = 0;
};

Result<double> numberIn(const QLineEdit& line, TypedRange range);
Result<int> wholeNumberIn(const QLineEdit& line, TypedRange range);

}  // namespace arc::ui
