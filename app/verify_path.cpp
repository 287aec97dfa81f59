// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verify_path.hpp"

#include <system_error>

#include "storage/closeout_folder.hpp"
#include "storage/satchel.hpp"
#include "storage/verify.hpp"

namespace arc::app {

Result<std::string> verifyPath(const std::filesystem::path& path, Progress& progress) {
    std::error_code ignored;
    if (std::filesystem::is_directory(path, ignored)) {
        if (!storage::isCloseoutFolder(path))
            return fail(ProblemCode::BadInput, "the folder holds no closeout record", path.string(),
                        "Choose the folder with the manifest in it");
        auto verified = storage::verifyCloseout(path, progress);
        if (!verified) return tl::unexpected(verified.error());
        return storage::configFolder().map(
            [&](const std::filesystem::path& config) { return storage::sentence(*verified, config); });
    }
    if (storage::isSatchel(path)) return storage::verifySatchel(path, {}, progress);
    return storage::verifyBook(path, progress).map([](const storage::BookVerdict& verdict) {
        return verdict.sentence();
    });
}

}  // namespace arc::app
