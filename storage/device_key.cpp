// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/device_key.hpp"

#include <algorithm>
#include <cstdlib>
#include <cstring>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>

#include "storage/plain_file.hpp"

namespace arc::storage {
namespace {

// SubjectPublicKeyInfo of Ed25519 before the key itself (RFC 8410 section 4).
constexpr std::array<std::uint8_t, 12> derPrefix{0x30, 0x2a, 0x30, 0x05, 0x06, 0x03,
                                                 0x2b, 0x65, 0x70, 0x03, 0x21, 0x00};
constexpr const char* keyHeader = "arcwright device key 1 ed25519 ";
constexpr std::uint64_t mostKeyBytes = 4096;
constexpr std::uint64_t mostListBytes = 1 << 20;

bool sodiumReady() {
    return sodium_init() >= 0;
}

std::string base64(const std::uint8_t* bytes, std::size_t count) {
    std::string text(sodium_base64_ENCODED_LEN(count, sodium_base64_VARIANT_ORIGINAL), '\0');
    sodium_bin2base64(text.data(), text.size(), bytes, count, sodium_base64_VARIANT_ORIGINAL);
    text.resize(std::strlen(text.c_str()));
    return text;
}

/// Exactly `count` bytes, nothing after them.
bool fromBase64(std::string_view text, std::uint8_t* bytes, std::size_t count) {
    std::size_t got = 0;
    const char* end = nullptr;
    if (sodium_base642bin(bytes, count, text.data(), text.size(), nullptr, &got, &end,
                          sodium_base64_VARIANT_ORIGINAL) != 0)
        return false;
    return got == count && end == text.data() + text.size();
}

Result<DeviceKey> parse(std::string_view text, const std::filesystem::path& file) {
    while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) text.remove_suffix(1);
    const std::string_view header = keyHeader;
    std::array<std::uint8_t, crypto_sign_SEEDBYTES> seed{};
    if (!text.starts_with(header) || !fromBase64(text.substr(header.size()), seed.data(), seed.size()))
        return fail(ProblemCode::Damaged, "the device key cannot be read", file.string(),
                    "Move the file away; a new key is then made, and others must accept it again");
    DeviceKey key;
    crypto_sign_seed_keypair(key.publicKey.data(), key.secretKey.data(), seed.data());
    sodium_memzero(seed.data(), seed.size());
    return key;
}

std::string pem(const PublicKey& key) {
    return "-----BEGIN PUBLIC KEY-----\n" + toDerBase64(key) + "\n-----END PUBLIC KEY-----\n";
}

Result<void> makeKey(const std::filesystem::path& folder, const std::filesystem::path& file) {
    std::array<std::uint8_t, crypto_sign_SEEDBYTES> seed{};
    randombytes_buf(seed.data(), seed.size());
    DeviceKey key;
    crypto_sign_seed_keypair(key.publicKey.data(), key.secretKey.data(), seed.data());
    const std::filesystem::path fresh = folder / ("device.key.new-" + std::to_string(::getpid()) + "-" +
                                                  std::to_string(randombytes_random()));
    std::string text = keyHeader + base64(seed.data(), seed.size()) + "\n";
    Result<void> written = writePlainFile(fresh, text, FileMode::OwnerOnly);
    sodium_memzero(text.data(), text.size());
    sodium_memzero(seed.data(), seed.size());
    if (!written) return written;
    // link fails when another program was first; then its key is ours.
    const bool isFirst = ::link(fresh.c_str(), file.c_str()) == 0;
    ::unlink(fresh.c_str());
    if (!isFirst && !std::filesystem::exists(file))
        return fail(ProblemCode::Unavailable, "the device key cannot be written", file.string());
    if (isFirst) {
        std::error_code ignored;
        std::filesystem::remove(folder / "device.pem", ignored);
        if (auto done = writePlainFile(folder / "device.pem", pem(key.publicKey), FileMode::Normal); !done)
            return done;
    }
    return syncFolder(folder);
}

}  // namespace

Result<std::filesystem::path> configFolder() {
    const auto given = [](const char* name) -> const char* {
        const char* value = std::getenv(name);
        return value != nullptr && *value != '\0' ? value : nullptr;
    };
    if (const char* own = given("ARCWRIGHT_HOME")) return std::filesystem::path(own);
    if (const char* config = given("XDG_CONFIG_HOME")) return std::filesystem::path(config) / "arcwright";
    if (const char* home = given("HOME")) return std::filesystem::path(home) / ".config" / "arcwright";
    return fail(ProblemCode::Unavailable, "there is no place for the device key", "",
                "Set ARCWRIGHT_HOME to a folder of yours");
}

Result<DeviceKey> deviceKey(const std::filesystem::path& folder) {
    if (!sodiumReady()) return fail(ProblemCode::Internal, "the signing library does not start");
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error)
        return fail(ProblemCode::Unavailable, "the folder cannot be made: " + error.message(),
                    folder.string());
    const std::filesystem::path file = folder / "device.key";
    if (!std::filesystem::exists(file))
        if (Result<void> made = makeKey(folder, file); !made) return tl::unexpected(made.error());
    // Copied by hand it may have become readable by others.
    ::chmod(file.c_str(), S_IRUSR | S_IWUSR);
    Result<std::string> text = readPlainFile(file, mostKeyBytes);
    if (!text) return tl::unexpected(text.error());
    Result<DeviceKey> key = parse(*text, file);
    sodium_memzero(text->data(), text->size());
    return key;
}

Signature sign(const DeviceKey& key, std::string_view message) {
    Signature signature{};
    crypto_sign_detached(signature.data(), nullptr, reinterpret_cast<const unsigned char*>(message.data()),
                         message.size(), key.secretKey.data());
    return signature;
}

bool isSignedBy(const PublicKey& key, std::string_view message, const Signature& signature) {
    return sodiumReady() && crypto_sign_verify_detached(
                                signature.data(), reinterpret_cast<const unsigned char*>(message.data()),
                                message.size(), key.data()) == 0;
}

std::string toDerBase64(const PublicKey& key) {
    std::array<std::uint8_t, derPrefix.size() + 32> der{};
    std::ranges::copy(derPrefix, der.begin());
    std::ranges::copy(key, der.begin() + derPrefix.size());
    return base64(der.data(), der.size());
}

std::optional<PublicKey> fromDerBase64(std::string_view text) {
    std::array<std::uint8_t, derPrefix.size() + 32> der{};
    if (!fromBase64(text, der.data(), der.size())) return std::nullopt;
    if (!std::equal(derPrefix.begin(), derPrefix.end(), der.begin())) return std::nullopt;
    PublicKey key{};
    std::copy(der.begin() + derPrefix.size(), der.end(), key.begin());
    return key;
}

std::optional<PublicKey> fromPem(std::string_view text) {
    constexpr std::string_view begin = "-----BEGIN PUBLIC KEY-----", end = "-----END PUBLIC KEY-----";
    const std::size_t from = text.find(begin), to = text.find(end);
    if (from == std::string_view::npos || to == std::string_view::npos || to < from) return std::nullopt;
    std::string base64Text;
    for (const char c : text.substr(from + begin.size(), to - from - begin.size()))
        if (c != '\n' && c != '\r' && c != ' ') base64Text += c;
    return fromDerBase64(base64Text);
}

std::string fingerprint(const PublicKey& key) {
    const std::string hex = sha256Hex({reinterpret_cast<const char*>(key.data()), key.size()}).substr(0, 16);
    return hex.substr(0, 4) + " " + hex.substr(4, 4) + " " + hex.substr(8, 4) + " " + hex.substr(12, 4);
}

Result<std::vector<KnownDevice>> knownDevices(const std::filesystem::path& folder) {
    std::vector<KnownDevice> devices;
    const std::filesystem::path file = folder / "known-devices";
    if (!std::filesystem::exists(file)) return devices;
    const Result<std::string> text = readPlainFile(file, mostListBytes);
    if (!text) return tl::unexpected(text.error());
    std::size_t number = 0;
    for (std::size_t from = 0; from < text->size();) {
        const std::size_t end = std::min(text->find('\n', from), text->size());
        const std::string_view line = std::string_view(*text).substr(from, end - from);
        from = end + 1;
        ++number;
        if (line.empty()) continue;
        const std::size_t gap = line.find(' ');
        const auto key = fromDerBase64(line.substr(0, gap));
        if (!key || gap == std::string_view::npos)
            return fail(ProblemCode::Damaged, "the list of known devices has a line that is no device",
                        file.string() + ", line " + std::to_string(number));
        devices.push_back({*key, std::string(line.substr(gap + 1))});
    }
    return devices;
}

std::optional<std::string> acceptedName(const std::filesystem::path& folder, const PublicKey& key) {
    const auto devices = knownDevices(folder);
    if (!devices) return std::nullopt;
    const auto found = std::ranges::find(*devices, key, &KnownDevice::key);
    return found == devices->end() ? std::nullopt : std::optional(found->name);
}

Result<void> acceptDevice(const std::filesystem::path& folder, const PublicKey& key, std::string_view name) {
    if (name.empty() || name.find('\n') != std::string_view::npos)
        return fail(ProblemCode::BadInput, "a device needs a name of one line");
    auto devices = knownDevices(folder);
    if (!devices) return tl::unexpected(devices.error());
    std::erase_if(*devices, [&](const KnownDevice& device) { return device.key == key; });
    devices->push_back({key, std::string(name)});
    std::string text;
    for (const KnownDevice& device : *devices) text += toDerBase64(device.key) + " " + device.name + "\n";
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    const std::filesystem::path fresh = folder / ("known-devices.new-" + std::to_string(::getpid()));
    std::filesystem::remove(fresh, error);
    if (auto written = writePlainFile(fresh, text, FileMode::Normal); !written) return written;
    std::filesystem::rename(fresh, folder / "known-devices", error);
    if (error)
        return fail(ProblemCode::Unavailable,
                    "the list of known devices cannot be written: " + error.message());
    return syncFolder(folder);
}

}  // namespace arc::storage
