// SPDX-License-Identifier: GPL-3.0-or-later
// The signing key of this laptop (Ed25519). Made on first use; the private half is readable by its owner only
// and never leaves the folder. Also the list of other devices somebody has accepted by name.
#pragma once
#include <array>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/result.hpp"

namespace arc::storage {

using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;

struct DeviceKey {
    PublicKey publicKey{};
    std::array<std::uint8_t, 64> secretKey{};  ///< libsodium's form: seed and public key
};

/// $ARCWRIGHT_HOME, else $XDG_CONFIG_HOME/arcwright, else $HOME/.config/arcwright.
Result<std::filesystem::path> configFolder();

/// Reads `folder`/device.key, or makes it with mode 0600; beside it device.pem, the public half to hand out.
/// Two programs starting together end with one key.
Result<DeviceKey> deviceKey(const std::filesystem::path& folder);

Signature sign(const DeviceKey& key, std::string_view message);
bool isSignedBy(const PublicKey& key, std::string_view message, const Signature& signature);

/// Base64 of the 44-byte SubjectPublicKeyInfo (RFC 8410), which any Ed25519 tool reads.
std::string toDerBase64(const PublicKey& key);
std::optional<PublicKey> fromDerBase64(std::string_view text);
/// Of a PEM file as device.pem is one ("BEGIN PUBLIC KEY").
std::optional<PublicKey> fromPem(std::string_view text);
/// "3f9a 07c2 11de 84b0": the first 8 bytes of the key's SHA-256, for people to compare by phone.
std::string fingerprint(const PublicKey& key);

struct KnownDevice {
    PublicKey key{};
    std::string name;
};
/// `folder`/known-devices: one device a line, key and name.
Result<std::vector<KnownDevice>> knownDevices(const std::filesystem::path& folder);
/// The name a device was accepted under; none when it was not, or the list cannot be read.
std::optional<std::string> acceptedName(const std::filesystem::path& folder, const PublicKey& key);
/// Adds a device or gives it a new name.
Result<void> acceptDevice(const std::filesystem::path& folder, const PublicKey& key, std::string_view name);

}  // namespace arc::storage
