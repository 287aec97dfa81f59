// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/plain_file.hpp"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace arc::storage {
namespace {

class Descriptor {
  public:
    explicit Descriptor(int number) : m_number(number) {}
    ~Descriptor() {
        if (m_number >= 0) ::close(m_number);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int get() const { return m_number; }

  private:
    int m_number;
};

tl::unexpected<Problem> systemFail(const std::string& what, const std::filesystem::path& file) {
    const int code = errno;
    return fail(code == ENOENT ? ProblemCode::NotFound : ProblemCode::Unavailable,
                what + ": " + std::strerror(code), file.string());
}

/// A link is not followed: a record lies in its own folder or it is not that record.
Result<std::uint64_t> openedSize(const Descriptor& opened, const std::filesystem::path& file) {
    if (opened.get() < 0 && errno == ELOOP)
        return fail(ProblemCode::BadInput, "this is not an ordinary file", file.string());
    if (opened.get() < 0) return systemFail("the file cannot be opened", file);
    struct stat about {};
    if (::fstat(opened.get(), &about) != 0) return systemFail("the file cannot be read", file);
    if (!S_ISREG(about.st_mode))
        return fail(ProblemCode::BadInput, "this is not an ordinary file", file.string());
    return static_cast<std::uint64_t>(about.st_size);
}

int openForReading(const std::filesystem::path& file) {
    return ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
}

std::string hex(const unsigned char* bytes, std::size_t count) {
    static constexpr char digits[] = "0123456789abcdef";
    std::string text;
    text.reserve(count * 2);
    for (std::size_t i = 0; i < count; ++i) {
        text += digits[bytes[i] >> 4];
        text += digits[bytes[i] & 15];
    }
    return text;
}

}  // namespace

Result<std::string> readPlainFile(const std::filesystem::path& file, std::uint64_t most) {
    const Descriptor opened(openForReading(file));
    const auto size = openedSize(opened, file);
    if (!size) return tl::unexpected(size.error());
    if (*size > most) return fail(ProblemCode::BadInput, "the file is larger than it can be", file.string());
    std::string bytes(static_cast<std::size_t>(*size), '\0');
    std::size_t done = 0;
    while (done < bytes.size()) {
        const ssize_t got = ::read(opened.get(), bytes.data() + done, bytes.size() - done);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return systemFail("the file cannot be read", file);
        if (got == 0) break;
        done += static_cast<std::size_t>(got);
    }
    bytes.resize(done);
    return bytes;
}

Result<void> writePlainFile(const std::filesystem::path& file, std::string_view bytes, FileMode mode) {
    const mode_t bits = mode == FileMode::OwnerOnly ? 0600 : 0644;
    const Descriptor opened(::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, bits));
    if (opened.get() < 0) return systemFail("the file cannot be written", file);
    std::size_t done = 0;
    while (done < bytes.size()) {
        const ssize_t put = ::write(opened.get(), bytes.data() + done, bytes.size() - done);
        if (put < 0 && errno == EINTR) continue;
        if (put < 0) return systemFail("the file cannot be written", file);
        done += static_cast<std::size_t>(put);
    }
    if (::fsync(opened.get()) != 0) return systemFail("the file cannot be written", file);
    return {};
}

Result<void> syncFolder(const std::filesystem::path& folder) {
    const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.get() < 0 || ::fsync(opened.get()) != 0)
        return systemFail("the folder cannot be written", folder);
    return {};
}

Result<FileDigest> digestOf(const std::filesystem::path& file, Progress& progress) {
    const Descriptor opened(openForReading(file));
    const auto size = openedSize(opened, file);
    if (!size) return tl::unexpected(size.error());
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    std::array<unsigned char, 1 << 16> piece{};
    FileDigest digest;
    for (;;) {
        if (progress.stopRequested()) return fail(ProblemCode::Cancelled, "stopped");
        const ssize_t got = ::read(opened.get(), piece.data(), piece.size());
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return systemFail("the file cannot be read", file);
        if (got == 0) break;
        crypto_hash_sha256_update(&state, piece.data(), static_cast<unsigned long long>(got));
        digest.bytes += static_cast<std::uint64_t>(got);
        progress.report(digest.bytes, *size, "reading");
    }
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256_final(&state, hash.data());
    digest.sha256 = hex(hash.data(), hash.size());
    return digest;
}

std::string sha256Hex(std::string_view bytes) {
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return hex(hash.data(), hash.size());
}

}  // namespace arc::storage
