// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sqlite_logbook.hpp"

namespace arc::storage {

Result<std::unique_ptr<Logbook>> createLogbook(const std::filesystem::path&, Clock&, Random&) {
    return fail(ProblemCode::Internal, "not yet");
}
Result<std::unique_ptr<Logbook>> openLogbook(const std::filesystem::path&, OpenMode, Clock&, Random&) {
    return fail(ProblemCode::Internal, "not yet");
}

}  // namespace arc::storage
