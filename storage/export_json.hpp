// SPDX-License-Identifier: GPL-3.0-or-later
// record.json: the whole closeout record for other programs. Its form is published in
// resources/closeout/closeout-record-1.schema.json. Losses in dB, angles in degrees, times ISO 8601; what is
// not known is null.
#pragma once
#include <string>

#include "core/closeout/record.hpp"
#include "core/result.hpp"

namespace arc::storage {

Result<std::string> recordJson(const closeout::Record& record);

}  // namespace arc::storage
