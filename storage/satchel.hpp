// SPDX-License-Identifier: GPL-3.0-or-later
// A satchel: journal rows and what was written under them, in one signed file, to hand over to another
// logbook. Taking in is all or nothing, in any order and any number of times with one result.
//
// The file: the line "arcwright satchel 1", one line of JSON (who, when, schema, the signer's public key,
// size and SHA-256 of the payload, how it is sealed), the 64-byte Ed25519 signature over those two lines, the
// payload: a SQLite file with the tables of a logbook; with a passphrase, libsodium's secretbox of it under
// an Argon2id key.
//
// How a part of a logbook can be checked. Each device has its own chain: the hash of a journal row covers the
// row before it, its own columns and the digest of what was written under it. A satchel carries of each
// device one unbroken stretch of that chain:
// - all, or since a time: rows with their content, from the first to the last (or from the first one after
// the
//   time). It is taken in only where it follows on what the logbook has, row by row.
// - one job: from the very first row to the last one about the job. Rows that are not about the job go along
// as
//   headlines: the journal row itself, without what was written under it. So the hashes still link from the
//   first row to the last, and nothing can be left out, added or put elsewhere unseen; what the headline's
//   content was is fixed by its digest, and is checked against it when a later satchel brings it. A journal
//   row is whole or a headline, never cut: an imported file that holds several jobs goes along whole.
//   Headlines say in words what was done (no losses of other jobs but in such words); who may not read those
//   must not get the satchel.
// A logbook with headlines says so when it is verified, and they are part of its journal head.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/handover.hpp"
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

Result<PackCount> packSatchel(const std::filesystem::path& book, const PackOrder& order, const DeviceKey& key,
                              Clock& clock, Random& random, Progress& progress);

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
    /// Of what is in the satchel: records that were edited here and there, for a person to look at.
    std::vector<ConcurrentEdits> concurrent;
};
Result<Unpacked> unpackSatchel(const UnpackRequest& request, Clock& clock, Random& random,
                               Progress& progress);

/// Signature, payload, and every row inside against its hashes. The sentence says what it holds.
Result<std::string> verifySatchel(const std::filesystem::path& satchel,
                                  const std::optional<std::string>& passphrase, Progress& progress);

/// Whether the file begins like a satchel.
bool isSatchel(const std::filesystem::path& file);

}  // namespace arc::storage
