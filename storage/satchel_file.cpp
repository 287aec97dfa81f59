// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/satchel_file.hpp"

#include <algorithm>
#include <array>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sodium.h>
#include <system_error>
#include <utility>

#include "storage/canonical.hpp"
#include "storage/plain_file.hpp"
#include "storage/whole_number.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::ordered_json;

constexpr std::string_view firstLine = "arcwright satchel 1\n";
constexpr std::size_t labelLimit = 16 << 10;
constexpr std::size_t pieceBytes = 1 << 20;
/// A sealed payload is opened in memory.
constexpr std::uint64_t sealedLimit = std::uint64_t{1} << 30;

struct Head {
    std::string lines;  ///< what is signed
    SatchelLabel label;
    Signature signature{};
};

tl::unexpected<Problem> damaged(const fs::path& file, std::string what) {
    return fail(ProblemCode::Damaged, std::move(what), file.string(), "Ask for the satchel again");
}

std::string labelLine(const SatchelLabel& label) {
    return Json{{"made_by", label.madeBy},
                {"made_at", toIso(label.madeAt)},
                {"signer", toDerBase64(label.signer)},
                {"schema", label.schema},
                {"payload_bytes", label.payloadBytes},
                {"payload_sha256", label.payloadSha256},
                {"salt", label.salt},
                {"nonce", label.nonce}}
               .dump() +
           "\n";
}

std::optional<SatchelLabel> labelFrom(const std::string& line) {
    const Json json = Json::parse(line, nullptr, false);
    if (!json.is_object()) return std::nullopt;
    try {
        SatchelLabel label;
        label.madeBy = json.at("made_by").get<std::string>();
        const auto at = parseInstant(json.at("made_at").get<std::string>());
        const auto signer = fromDerBase64(json.at("signer").get<std::string>());
        if (!at || !signer) return std::nullopt;
        label.madeAt = *at;
        label.signer = *signer;
        label.schema = needWholeNumber<int>(json.at("schema"));
        label.payloadBytes = needWholeNumber<std::uint64_t>(json.at("payload_bytes"));
        label.payloadSha256 = json.at("payload_sha256").get<std::string>();
        label.salt = json.at("salt").get<std::string>();
        label.nonce = json.at("nonce").get<std::string>();
        return label;
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

Result<Head> readHead(std::ifstream& in, const fs::path& file) {
    std::string first(firstLine.size(), '\0');
    in.read(first.data(), static_cast<std::streamsize>(first.size()));
    if (!in || first != firstLine)
        return fail(ProblemCode::BadInput, "the file is not a satchel this program can read", file.string(),
                    "Choose a file made by \"arcw pack\", perhaps with a newer program");
    std::string line;
    for (char c = 0; line.size() < labelLimit && in.get(c);) {
        line += c;
        if (c == '\n') break;
    }
    Head head;
    head.lines = first + line;
    const auto label = line.empty() || line.back() != '\n' ? std::nullopt : labelFrom(line);
    if (!label) return damaged(file, "the label of the satchel is damaged");
    head.label = *label;
    in.read(reinterpret_cast<char*>(head.signature.data()),
            static_cast<std::streamsize>(head.signature.size()));
    if (!in) return damaged(file, "the satchel is cut off");
    return head;
}

/// Copies what is left of `in` and hashes it.
Result<std::string> copyHashed(std::ifstream& in, std::ostream* out, std::uint64_t expected,
                               const fs::path& file) {
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    std::string piece(pieceBytes, '\0');
    std::uint64_t total = 0;
    while (in) {
        in.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        const auto got = static_cast<std::size_t>(in.gcount());
        total += got;
        if (total > expected) return damaged(file, "the satchel is longer than its label says");
        crypto_hash_sha256_update(&state, reinterpret_cast<const unsigned char*>(piece.data()), got);
        if (out != nullptr && !out->write(piece.data(), static_cast<std::streamsize>(got)))
            return fail(ProblemCode::Unavailable, "the disk is full", file.string(),
                        "Free some space and try again");
    }
    if (total != expected) return damaged(file, "the satchel is cut off");
    Digest digest;
    crypto_hash_sha256_final(&state, digest.data());
    return toHex(digest);
}

std::string bytesOf(const std::string& hex) {
    std::string bytes(hex.size() / 2, '\0');
    std::size_t length = 0;
    if (sodium_hex2bin(reinterpret_cast<unsigned char*>(bytes.data()), bytes.size(), hex.data(), hex.size(),
                       nullptr, &length, nullptr) != 0)
        return {};
    bytes.resize(length);
    return bytes;
}

using SealKey = std::array<unsigned char, crypto_secretbox_KEYBYTES>;
std::optional<SealKey> sealKey(const std::string& passphrase, const std::string& salt) {
    SealKey key{};
    if (salt.size() != crypto_pwhash_SALTBYTES) return std::nullopt;
    if (crypto_pwhash(key.data(), key.size(), passphrase.data(), passphrase.size(),
                      reinterpret_cast<const unsigned char*>(salt.data()), crypto_pwhash_OPSLIMIT_MODERATE,
                      crypto_pwhash_MEMLIMIT_INTERACTIVE, crypto_pwhash_ALG_ARGON2ID13) != 0)
        return std::nullopt;
    return key;
}

std::string randomBytes(Random& random, std::size_t count) {
    std::string bytes(count, '\0');
    random.fill(reinterpret_cast<std::uint8_t*>(bytes.data()), count);
    return bytes;
}

std::string hexOf(const std::string& bytes) {
    return toHex({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()});
}

/// Seals the payload file in place and notes salt and nonce in the label.
Result<void> seal(const fs::path& payload, const std::string& passphrase, SatchelLabel& label,
                  Random& random) {
    auto plain = readPlainFile(payload, sealedLimit);
    if (!plain) return tl::unexpected(plain.error());
    const std::string salt = randomBytes(random, crypto_pwhash_SALTBYTES);
    const std::string nonce = randomBytes(random, crypto_secretbox_NONCEBYTES);
    const auto key = sealKey(passphrase, salt);
    if (!key) return fail(ProblemCode::Unavailable, "there is not enough memory to seal the satchel");
    std::string sealed(plain->size() + crypto_secretbox_MACBYTES, '\0');
    crypto_secretbox_easy(reinterpret_cast<unsigned char*>(sealed.data()),
                          reinterpret_cast<const unsigned char*>(plain->data()), plain->size(),
                          reinterpret_cast<const unsigned char*>(nonce.data()), key->data());
    label.salt = hexOf(salt);
    label.nonce = hexOf(nonce);
    std::ofstream out(payload, std::ios::binary | std::ios::trunc);
    if (!out.write(sealed.data(), static_cast<std::streamsize>(sealed.size())))
        return fail(ProblemCode::Unavailable, "the disk is full", payload.string(), "Free some space");
    return {};
}

Result<void> unseal(const fs::path& payload, const std::string& passphrase, const SatchelLabel& label) {
    auto sealed = readPlainFile(payload, sealedLimit);
    if (!sealed) return tl::unexpected(sealed.error());
    const std::string nonce = bytesOf(label.nonce);
    const auto key = sealKey(passphrase, bytesOf(label.salt));
    if (nonce.size() != crypto_secretbox_NONCEBYTES || sealed->size() < crypto_secretbox_MACBYTES)
        return fail(ProblemCode::Damaged, "the label of the satchel is damaged");
    if (!key) return fail(ProblemCode::Unavailable, "there is not enough memory to open the satchel");
    std::string plain(sealed->size() - crypto_secretbox_MACBYTES, '\0');
    if (crypto_secretbox_open_easy(reinterpret_cast<unsigned char*>(plain.data()),
                                   reinterpret_cast<const unsigned char*>(sealed->data()), sealed->size(),
                                   reinterpret_cast<const unsigned char*>(nonce.data()), key->data()) != 0)
        return fail(ProblemCode::Refused, "the passphrase does not open the satchel", "",
                    "Check the passphrase");
    std::ofstream out(payload, std::ios::binary | std::ios::trunc);
    if (!out.write(plain.data(), static_cast<std::streamsize>(plain.size())))
        return fail(ProblemCode::Unavailable, "the disk is full", payload.string(), "Free some space");
    return {};
}

}  // namespace

Result<void> writeSatchelFile(const fs::path& satchel, SatchelLabel label, const fs::path& payload,
                              const std::optional<std::string>& passphrase, const DeviceKey& key,
                              Random& random) {
    std::error_code error;
    if (fs::exists(satchel, error))
        return fail(ProblemCode::Refused, "there is a file of that name already", satchel.string(),
                    "Choose another name");
    if (passphrase) {
        auto sealed = seal(payload, *passphrase, label, random);
        if (!sealed) return sealed;
    }
    NoProgress unwatched;
    auto digest = digestOf(payload, unwatched);
    if (!digest) return tl::unexpected(digest.error());
    label.signer = key.publicKey;
    label.payloadBytes = digest->bytes;
    label.payloadSha256 = digest->sha256;
    const std::string lines = std::string(firstLine) + labelLine(label);
    const Signature signature = sign(key, lines);
    const fs::path unfinished = satchel.string() + ".unfinished";
    {
        std::ofstream out(unfinished, std::ios::binary | std::ios::trunc);
        out << lines;
        out.write(reinterpret_cast<const char*>(signature.data()),
                  static_cast<std::streamsize>(signature.size()));
        std::ifstream in(payload, std::ios::binary);
        // Nothing to copy would count as a fault of the disk.
        if (digest->bytes > 0) out << in.rdbuf();
        out.flush();
        if (!out) {
            fs::remove(unfinished, error);
            return fail(ProblemCode::Unavailable, "the satchel cannot be written", satchel.string(),
                        "Check that there is room and that you may write there");
        }
    }
    fs::rename(unfinished, satchel, error);
    if (error)
        return fail(ProblemCode::Unavailable, "the satchel could not get its name: " + error.message(),
                    satchel.string());
    return syncFolder(satchel.has_parent_path() ? satchel.parent_path() : fs::path("."));
}

bool isSatchel(const fs::path& file) {
    std::error_code error;
    if (!fs::is_regular_file(file, error)) return false;
    // A logbook must not be opened with anything but SQLite; its name tells it.
    if (file.extension() == ".arcbook") return false;
    std::ifstream in(file, std::ios::binary);
    std::string first(firstLine.size(), '\0');
    in.read(first.data(), static_cast<std::streamsize>(first.size()));
    return in && std::string_view(first).starts_with("arcwright satchel");
}

Result<SatchelLabel> readSatchelLabel(const fs::path& satchel) {
    std::error_code error;
    if (!fs::is_regular_file(satchel, error))
        return fail(ProblemCode::NotFound, "there is no such satchel", satchel.string(), "Check the name");
    std::ifstream in(satchel, std::ios::binary);
    if (!in) return fail(ProblemCode::Unavailable, "the satchel cannot be read", satchel.string());
    auto head = readHead(in, satchel);
    if (!head) return tl::unexpected(head.error());
    if (!isSignedBy(head->label.signer, head->lines, head->signature))
        return damaged(satchel, "the signature does not fit: the label of the satchel was changed");
    auto hash = copyHashed(in, nullptr, head->label.payloadBytes, satchel);
    if (!hash) return tl::unexpected(hash.error());
    if (*hash != head->label.payloadSha256) return damaged(satchel, "the content of the satchel was changed");
    return head->label;
}

Result<PrivateFile> openPayload(const fs::path& satchel, const SatchelLabel& label,
                                const std::optional<std::string>& passphrase) {
    if (!label.salt.empty() && !passphrase)
        return fail(ProblemCode::Refused, "the satchel is sealed with a passphrase", satchel.string(),
                    "Give the passphrase");
    auto payload = PrivateFile::make();
    if (!payload) return payload;
    std::ifstream in(satchel, std::ios::binary);
    auto head = readHead(in, satchel);
    if (!head) return tl::unexpected(head.error());
    {
        std::ofstream out(payload->path(), std::ios::binary | std::ios::trunc);
        auto hash = copyHashed(in, &out, label.payloadBytes, satchel);
        if (!hash) return tl::unexpected(hash.error());
        if (*hash != label.payloadSha256) return damaged(satchel, "the satchel changed while it was read");
    }
    if (!label.salt.empty()) {
        auto opened = unseal(payload->path(), *passphrase, label);
        if (!opened) return tl::unexpected(opened.error());
    }
    return payload;
}

}  // namespace arc::storage
