// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/writer_lock.hpp"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace arc::storage {
namespace {

std::filesystem::path lockFile(const std::filesystem::path& book) {
    std::error_code ignored;
    const auto real = std::filesystem::weakly_canonical(book, ignored);
    return (ignored ? book : real).string() + ".lock";
}

/// "1234 on laptop-7"
std::string ourName() {
    std::array<char, 256> host{};
    if (gethostname(host.data(), host.size() - 1) != 0) host[0] = '\0';
    return std::to_string(getpid()) + " on " + host.data();
}

std::string readName(int descriptor) {
    std::array<char, 300> text{};
    const ssize_t length = pread(descriptor, text.data(), text.size() - 1, 0);
    return length > 0 ? std::string(text.data(), static_cast<std::size_t>(length)) : std::string();
}

/// The file we locked may have been removed by its former holder in between: then it protects nothing.
bool stillThere(int descriptor, const std::filesystem::path& file) {
    struct stat ours {};
    struct stat named {};
    return fstat(descriptor, &ours) == 0 && stat(file.c_str(), &named) == 0 && ours.st_ino == named.st_ino &&
           ours.st_dev == named.st_dev;
}

}  // namespace

Result<WriterLock> WriterLock::take(const std::filesystem::path& book) {
    const auto file = lockFile(book);
    constexpr int tries = 20;
    for (int i = 0; i < tries; ++i) {
        const int descriptor = open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
        if (descriptor < 0) {
            const int error = errno;
            if (error == EACCES || error == EROFS || error == EPERM)
                return fail(ProblemCode::Refused, "the folder of the logbook cannot be written to",
                            book.string(),
                            "Open it for reading only, or copy it to a folder you may write to");
            if (error == ENOSPC)
                return fail(ProblemCode::Unavailable, "the disk is full", book.string(), "Free some space");
            return fail(ProblemCode::Unavailable,
                        std::string("the logbook cannot be opened: ") + std::strerror(error), book.string());
        }
        if (flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
            const std::string holder = readName(descriptor);
            close(descriptor);
            return fail(ProblemCode::Refused,
                        "another program writes into this logbook" +
                            (holder.empty() ? std::string() : " (process " + holder + ")"),
                        book.string(), "Close it there, or open the logbook for reading only");
        }
        if (!stillThere(descriptor, file)) {
            close(descriptor);
            continue;
        }
        const std::string name = ourName();
        // The name is for people; the lock holds without it.
        if (ftruncate(descriptor, 0) != 0 || pwrite(descriptor, name.data(), name.size(), 0) < 0) {
        }
        return WriterLock(file, descriptor);
    }
    return fail(ProblemCode::Unavailable, "the logbook's lock file keeps changing", file.string(),
                "Try again");
}

bool WriterLock::heldByThisProcess(const std::filesystem::path& book) {
    const int descriptor = open(lockFile(book).c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) return false;
    const bool free = flock(descriptor, LOCK_SH | LOCK_NB) == 0;
    const bool ours = !free && readName(descriptor) == ourName();
    close(descriptor);
    return ours;
}

WriterLock::WriterLock(WriterLock&& other) noexcept
    : file_(std::move(other.file_)), descriptor_(std::exchange(other.descriptor_, -1)) {}

WriterLock& WriterLock::operator=(WriterLock&& other) noexcept {
    std::swap(file_, other.file_);
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

WriterLock::~WriterLock() {
    if (descriptor_ < 0) return;
    unlink(file_.c_str());
    close(descriptor_);
}

}  // namespace arc::storage
