// SPDX-License-Identifier: GPL-3.0-or-later
// The body of weak_disk.hpp, for the one test program that uses it.
#pragma once
#include <algorithm>
#include <cstring>
#include <fstream>
#include <new>

#include "tests/support/weak_disk.hpp"

namespace arc::test {
namespace {

WeakDisk* theDisk = nullptr;  // SQLite's file layer is one per process

struct WeakFile {
    sqlite3_file base;
    std::string* name;  ///< only of database and log
    sqlite3_file* real;
};
WeakFile* weak(sqlite3_file* file) {
    return reinterpret_cast<WeakFile*>(file);
}
sqlite3_file* realOf(sqlite3_file* file) {
    return weak(file)->real;
}

int onClose(sqlite3_file* file) {
    WeakFile* const w = weak(file);
    const int code = w->real->pMethods != nullptr ? w->real->pMethods->xClose(w->real) : SQLITE_OK;
    delete w->name;
    w->name = nullptr;
    std::free(w->real);
    return code;
}
int onRead(sqlite3_file* file, void* into, int length, sqlite3_int64 offset) {
    return realOf(file)->pMethods->xRead(realOf(file), into, length, offset);
}
int onWrite(sqlite3_file* file, const void* bytes, int length, sqlite3_int64 offset) {
    if (const int code = theDisk->beforeWrite(); code != SQLITE_OK) return code;
    const int code = realOf(file)->pMethods->xWrite(realOf(file), bytes, length, offset);
    if (code == SQLITE_OK && weak(file)->name != nullptr)
        theDisk->files[*weak(file)->name].since.push_back(
            {offset, std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(length))});
    return code;
}
int onTruncate(sqlite3_file* file, sqlite3_int64 size) {
    const int code = realOf(file)->pMethods->xTruncate(realOf(file), size);
    if (code == SQLITE_OK && weak(file)->name != nullptr)
        theDisk->files[*weak(file)->name].since.push_back({size, {}});
    return code;
}

void apply(std::string& content, const UnsyncedWrite& write, std::size_t length) {
    const auto offset = static_cast<std::size_t>(write.offset);
    if (write.bytes.empty()) {
        content.resize(offset);
        return;
    }
    const std::size_t kept = std::min(length, write.bytes.size());
    if (kept == 0) return;
    if (content.size() < offset + kept) content.resize(offset + kept);
    content.replace(offset, kept, write.bytes, 0, kept);
}

int onSync(sqlite3_file* file, int flags) {
    if (theDisk->syncs() == WeakDisk::Syncs::Ignored) return SQLITE_OK;
    if (weak(file)->name != nullptr) {
        DiskFile& kept = theDisk->files[*weak(file)->name];
        for (const auto& write : kept.since) apply(kept.surely, write, write.bytes.size());
        kept.since.clear();
    }
    return realOf(file)->pMethods->xSync(realOf(file), flags);
}
int onFileSize(sqlite3_file* file, sqlite3_int64* size) {
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}
int onLock(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xLock(realOf(file), level);
}
int onUnlock(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int onCheckLock(sqlite3_file* file, int* out) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), out);
}
int onControl(sqlite3_file* file, int op, void* argument) {
    return realOf(file)->pMethods->xFileControl(realOf(file), op, argument);
}
int onSectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int onDevice(sqlite3_file* file) {
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}
int onShmMap(sqlite3_file* file, int page, int size, int extend, void volatile** out) {
    return realOf(file)->pMethods->xShmMap(realOf(file), page, size, extend, out);
}
int onShmLock(sqlite3_file* file, int offset, int n, int flags) {
    return realOf(file)->pMethods->xShmLock(realOf(file), offset, n, flags);
}
void onShmBarrier(sqlite3_file* file) {
    realOf(file)->pMethods->xShmBarrier(realOf(file));
}
int onShmUnmap(sqlite3_file* file, int deleteFlag) {
    return realOf(file)->pMethods->xShmUnmap(realOf(file), deleteFlag);
}

const sqlite3_io_methods methods = {2,          onClose,  onRead,    onWrite,      onTruncate, onSync,
                                    onFileSize, onLock,   onUnlock,  onCheckLock,  onControl,  onSectorSize,
                                    onDevice,   onShmMap, onShmLock, onShmBarrier, onShmUnmap, nullptr,
                                    nullptr};

int onOpen(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    auto* const w = new (file) WeakFile{};
    sqlite3_vfs* const real = theDisk->real;
    w->real = static_cast<sqlite3_file*>(std::calloc(1, static_cast<std::size_t>(real->szOsFile)));
    const int code = real->xOpen(real, name, w->real, flags, outFlags);
    if (code != SQLITE_OK) {
        std::free(w->real);
        w->base.pMethods = nullptr;
        return code;
    }
    w->base.pMethods = &methods;
    if (name != nullptr && (flags & (SQLITE_OPEN_MAIN_DB | SQLITE_OPEN_WAL)) != 0) {
        w->name = new std::string(name);
        if (!theDisk->files.contains(name)) {
            std::ifstream in(name, std::ios::binary);
            theDisk->files[name].surely.assign(std::istreambuf_iterator<char>(in), {});
        }
    }
    return SQLITE_OK;
}

}  // namespace

WeakDisk::WeakDisk() {
    real = sqlite3_vfs_find(nullptr);
    shim_ = *real;
    shim_.zName = "weak";
    shim_.szOsFile = sizeof(WeakFile);
    shim_.xOpen = onOpen;
    shim_.pAppData = real->pAppData;
    theDisk = this;
    sqlite3_vfs_register(&shim_, 1);
}

WeakDisk::~WeakDisk() {
    sqlite3_vfs_unregister(&shim_);
    sqlite3_vfs_register(real, 1);
    theDisk = nullptr;
}

int WeakDisk::beforeWrite() {
    if (writesLeft_ < 0) return SQLITE_OK;
    if (writesLeft_ == 0) {
        failed_ = true;
        return failure_;
    }
    --writesLeft_;
    return SQLITE_OK;
}

void WeakDisk::losePower(const std::filesystem::path& from, const std::filesystem::path& to,
                         const std::function<std::size_t(std::size_t)>& keptBytes) const {
    for (const auto& [name, file] : files) {
        const std::filesystem::path path(name);
        if (path.parent_path() != from) continue;
        std::string content = file.surely;
        for (const auto& write : file.since) apply(content, write, keptBytes(write.bytes.size()));
        std::ofstream(to / path.filename(), std::ios::binary | std::ios::trunc) << content;
    }
}

}  // namespace arc::test
