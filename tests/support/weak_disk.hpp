// SPDX-License-Identifier: GPL-3.0-or-later
// A file layer under SQLite that can lose power and fill up. Writes go through to the real files; beside them
// it keeps what a disk would surely hold: everything written before the last sync of each file, and of the
// rest what the test wants. Becomes SQLite's default while it lives; for single-threaded tests.
#pragma once
#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <sqlite3.h>
#include <string>
#include <vector>

namespace arc::test {

struct UnsyncedWrite {
    std::int64_t offset = 0;
    std::string bytes;  ///< empty: cut to `offset`
};

struct DiskFile {
    std::string surely;  ///< content at the last sync
    std::vector<UnsyncedWrite> since;
};

class WeakDisk {
  public:
    WeakDisk();
    ~WeakDisk();
    WeakDisk(const WeakDisk&) = delete;
    WeakDisk& operator=(const WeakDisk&) = delete;

    enum class Syncs { Honest, Ignored };
    void setSyncs(Syncs syncs) { syncs_ = syncs; }
    /// Fails every write after the next `writes` with "disk full" (or another SQLite code).
    void failAfter(std::int64_t writes, int code = SQLITE_FULL) {
        writesLeft_ = writes;
        failure_ = code;
    }
    void work() { writesLeft_ = -1; }
    [[nodiscard]] bool failed() const { return failed_; }
    void forgetFailure() { failed_ = false; }

    /// Lays the files below `from` out in `to` as they are after a power loss: of each file's unsynced writes
    /// the ones for which `kept` says true, each possibly torn to the length it answers.
    void losePower(const std::filesystem::path& from, const std::filesystem::path& to,
                   const std::function<std::size_t(std::size_t length)>& keptBytes) const;

    // For the file methods.
    int beforeWrite();
    std::map<std::string, DiskFile> files;
    Syncs syncs() const { return syncs_; }
    sqlite3_vfs* real = nullptr;

  private:
    sqlite3_vfs shim_{};
    Syncs syncs_ = Syncs::Honest;
    std::int64_t writesLeft_ = -1;
    int failure_ = SQLITE_FULL;
    bool failed_ = false;
};

}  // namespace arc::test
