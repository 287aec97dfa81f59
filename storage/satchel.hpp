// SPDX-License-Identifier: GPL-3.0-or-later
// A satchel: journal rows and what was written under them, in one signed file, to hand over to another
// logbook. Taking in is all or nothing, in any order and any number of times with one result.
//
// The file: the line "arcwright satchel 1", one line of JSON (who, when, schema, the signer's public key,
// size and SHA-256 of the payload, how it is sealed), the 64-byte Ed25519 signature over those two lines, the
// payload: a SQLite file with the tables of a logbook; with a passphrase, libsodium's secretbox of it under
// an Argon2id key.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/ports.hpp"
#include "core/result.hpp"
#include "storage/device_key.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::storage {

/// What the two lines on top of a satchel say.
struct SatchelLabel {
    std::string madeBy;  ///< name of the machine
    Instant madeAt;
    PublicKey signer{};
    int schema = 0;
    std::uint64_t payloadBytes = 0;
    std::string payloadSha256;
    std::string salt, nonce;  ///< hex; empty: no passphrase
};

struct PackRequest {
    std::filesystem::path book;
    std::filesystem::path satchel;  ///< must not exist
    std::optional<Instant> since;   ///< of each device, from its first row at or after this
    std::optional<std::string> passphrase;
};
struct Packed {
    std::uint64_t journalRows = 0, devices = 0;
};
Result<Packed> packSatchel(const PackRequest& request, const DeviceKey& key, Clock& clock, Random& random,
                           Progress& progress);

/// Reads the label and checks the signature; the payload's hash too.
Result<SatchelLabel> readSatchelLabel(const std::filesystem::path& satchel);

struct UnpackRequest {
    std::filesystem::path book;
    std::filesystem::path satchel;
    std::optional<std::string> passphrase;
    std::vector<PublicKey> accepted;  ///< signers whose satchels are taken in
    OpenMode mode = OpenMode::ReadWrite;
};
struct Unpacked {
    std::uint64_t newRows = 0, knownRows = 0;
    std::string from;
    std::vector<std::string>
        concurrent;  ///< records that were edited here and there, for a person to look at
};
Result<Unpacked> unpackSatchel(const UnpackRequest& request, Clock& clock, Random& random,
                               Progress& progress);

/// Signature, payload, and every row inside against its hashes. The sentence says what it holds.
Result<std::string> verifySatchel(const std::filesystem::path& satchel,
                                  const std::optional<std::string>& passphrase, Progress& progress);

/// Whether the file begins like a satchel.
bool isSatchel(const std::filesystem::path& file);

}  // namespace arc::storage
