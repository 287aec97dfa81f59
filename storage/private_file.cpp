// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/private_file.hpp"

#include <stdlib.h>
#include <string>
#include <system_error>
#include <unistd.h>

namespace arc::storage {

namespace fs = std::filesystem;

Result<PrivateFile> PrivateFile::make() {
    std::error_code error;
    std::string name = (fs::temp_directory_path(error) / "arcwright-XXXXXX").string();
    const int descriptor = error ? -1 : mkstemp(name.data());
    if (descriptor < 0)
        return fail(ProblemCode::Unavailable, "the folder for temporary files cannot be written to", name,
                    "Set TMPDIR to a folder with room");
    close(descriptor);
    return PrivateFile(name);
}

PrivateFile::PrivateFile(PrivateFile&& other) noexcept : path_(std::exchange(other.path_, {})) {}

PrivateFile::~PrivateFile() {
    if (path_.empty()) return;
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) fs::remove(path_.string() + suffix, ignored);
}

}  // namespace arc::storage
