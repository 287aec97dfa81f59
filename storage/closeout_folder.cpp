// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/closeout_folder.hpp"

#include <algorithm>
#include <sodium.h>
#include <utility>

#include "storage/plain_file.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;
constexpr std::uint64_t mostManifestBytes = 1 << 20;

tl::unexpected<Problem> differs(std::string what, std::string where) {
    return fail(ProblemCode::Damaged, std::move(what), std::move(where),
                "Ask whoever issued the record for a fresh copy");
}

/// Names of the entries of a folder, sorted.
Result<std::vector<std::string>> namesIn(const fs::path& folder) {
    std::vector<std::string> names;
    std::error_code error;
    for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
        names.push_back(at->path().filename().string());
    if (error)
        return fail(ProblemCode::Unavailable, "the folder cannot be read: " + error.message(),
                    folder.string());
    std::ranges::sort(names);
    return names;
}

std::string suffix(const char* kind) {
    return std::string(".") + kind + "-" + std::to_string(randombytes_random());
}

/// May a new record take this place: nothing there, an empty folder, or a draft of ours.
Result<void> checkTarget(const fs::path& target) {
    std::error_code error;
    const fs::file_status status = fs::symlink_status(target, error);
    if (!fs::exists(status)) return {};
    if (!fs::is_directory(status))
        return fail(ProblemCode::Refused, "the place for the record is taken by something that is no folder",
                    target.string(), "Choose another folder");
    const auto names = namesIn(target);
    if (!names) return tl::unexpected(names.error());
    if (names->empty()) return {};
    const auto bytes = readPlainFile(target / manifestName, mostManifestBytes);
    const auto manifest = bytes ? parseManifest(*bytes) : Result<Manifest>(tl::unexpected(bytes.error()));
    if (!manifest)
        return fail(ProblemCode::Refused, "the folder is not empty and holds no closeout record",
                    target.string(), "Choose another folder; nothing was written");
    if (manifest->state != "draft")
        return fail(ProblemCode::Refused,
                    "the folder holds a final record, and a final record is never changed", target.string(),
                    "Choose another folder; nothing was written");
    // Somebody's own notes beside a draft are not ours to remove.
    for (const std::string& name : *names) {
        const bool isOurs =
            name == manifestName || name == signatureName ||
            std::ranges::find(manifest->files, name, &ManifestFile::name) != manifest->files.end();
        if (!isOurs)
            return fail(ProblemCode::Refused, "the folder holds a file that is not part of the draft",
                        (target / name).string(), "Move it elsewhere or choose another folder");
    }
    return {};
}

Result<void> checkFiles(const fs::path& folder, const Manifest& manifest, Progress& progress) {
    for (const ManifestFile& file : manifest.files) {
        const fs::path path = folder / file.name;
        std::error_code error;
        if (!fs::exists(fs::symlink_status(path, error)))
            return differs(file.name + " is missing", path.string());
        const auto digest = digestOf(path, progress);
        if (!digest && digest.error().code == ProblemCode::BadInput)
            return differs(file.name + " is not an ordinary file", path.string());
        if (!digest) return tl::unexpected(digest.error());
        if (digest->bytes != file.bytes)
            return differs(file.name + " has " + std::to_string(digest->bytes) +
                               " bytes, the manifest says " + std::to_string(file.bytes),
                           path.string());
        if (digest->sha256 != file.sha256)
            return differs(file.name + " was changed: its SHA-256 is not the one in the manifest",
                           path.string());
    }
    const auto names = namesIn(folder);
    if (!names) return tl::unexpected(names.error());
    for (const std::string& name : *names) {
        if (name == manifestName || name == signatureName) continue;
        if (std::ranges::find(manifest.files, name, &ManifestFile::name) == manifest.files.end())
            return differs(name + " does not belong to the record", (folder / name).string());
    }
    return {};
}

}  // namespace

CloseoutStage::CloseoutStage(fs::path target, fs::path folder)
    : m_target(std::move(target)), m_folder(std::move(folder)) {}

CloseoutStage::CloseoutStage(CloseoutStage&& other) noexcept
    : m_target(std::move(other.m_target)), m_folder(std::exchange(other.m_folder, {})) {}

CloseoutStage::~CloseoutStage() {
    std::error_code ignored;
    if (!m_folder.empty()) fs::remove_all(m_folder, ignored);
}

Result<CloseoutStage> CloseoutStage::begin(const fs::path& given) {
    std::error_code error;
    fs::path target = fs::absolute(given, error).lexically_normal();
    if (!target.has_filename()) target = target.parent_path();
    if (sodium_init() < 0) return fail(ProblemCode::Internal, "the signing library does not start");
    if (Result<void> free = checkTarget(target); !free) return tl::unexpected(free.error());
    fs::create_directories(target.parent_path(), error);
    fs::path folder = target.parent_path() / (target.filename().string() + suffix("new"));
    if (!error) fs::create_directory(folder, error);
    if (error)
        return fail(ProblemCode::Unavailable, "the folder cannot be made: " + error.message(),
                    target.string());
    return CloseoutStage(std::move(target), std::move(folder));
}

fs::path CloseoutStage::file(std::string_view name) const {
    return m_folder / name;
}

Result<std::string> CloseoutStage::seal(const closeout::Record& record, const DeviceKey& key,
                                        Progress& progress) {
    const auto names = namesIn(m_folder);
    if (!names) return tl::unexpected(names.error());
    std::vector<ManifestFile> files;
    for (const std::string& name : *names) {
        const auto digest = digestOf(m_folder / name, progress);
        if (!digest) return tl::unexpected(digest.error());
        files.push_back({name, digest->bytes, digest->sha256});
    }
    const std::string manifest = toJson(manifestOf(record, key.publicKey, std::move(files)));
    const Signature signature = sign(key, manifest);
    const std::string_view signatureBytes(reinterpret_cast<const char*>(signature.data()), signature.size());
    if (auto done = writePlainFile(file(manifestName), manifest, FileMode::Normal); !done)
        return tl::unexpected(done.error());
    if (auto done = writePlainFile(file(signatureName), signatureBytes, FileMode::Normal); !done)
        return tl::unexpected(done.error());
    // What is handed over must be what we would accept.
    if (auto verified = verifyCloseout(m_folder, progress); !verified)
        return tl::unexpected(verified.error());
    if (auto synced = syncFolder(m_folder); !synced) return tl::unexpected(synced.error());
    return sha256Hex(manifest);
}

Result<fs::path> CloseoutStage::putInPlace() {
    if (Result<void> free = checkTarget(m_target); !free) return tl::unexpected(free.error());
    std::error_code error;
    const bool isThere = fs::exists(m_target, error);
    const fs::path old = m_target.parent_path() / (m_target.filename().string() + suffix("old"));
    if (isThere) fs::rename(m_target, old, error);
    if (!error) fs::rename(m_folder, m_target, error);
    if (error) {
        std::error_code ignored;
        if (isThere && !fs::exists(m_target, ignored)) fs::rename(old, m_target, ignored);
        return fail(ProblemCode::Unavailable, "the record cannot be put in its place: " + error.message(),
                    m_target.string());
    }
    m_folder.clear();
    if (isThere) fs::remove_all(old, error);
    if (auto synced = syncFolder(m_target.parent_path()); !synced) return tl::unexpected(synced.error());
    return m_target;
}

fs::path CloseoutStage::keep() {
    return std::exchange(m_folder, {});
}

bool isCloseoutFolder(const fs::path& folder) {
    std::error_code error;
    return fs::is_directory(folder, error) &&
           (fs::exists(folder / manifestName, error) || fs::exists(folder / signatureName, error));
}

Result<VerifiedCloseout> verifyCloseout(const fs::path& folder, Progress& progress) {
    for (const char* name : {manifestName, signatureName}) {
        std::error_code error;
        if (!fs::exists(fs::symlink_status(folder / name, error)))
            return differs(std::string(name) + " is missing", (folder / name).string());
    }
    const auto bytes = readPlainFile(folder / manifestName, mostManifestBytes);
    if (!bytes) return tl::unexpected(bytes.error());
    const auto signatureBytes = readPlainFile(folder / signatureName, mostManifestBytes);
    if (!signatureBytes) return tl::unexpected(signatureBytes.error());
    auto manifest = parseManifest(*bytes);
    if (!manifest) return tl::unexpected(manifest.error());
    Signature signature{};
    if (signatureBytes->size() != signature.size())
        return differs("manifest.sig is no signature", (folder / signatureName).string());
    std::ranges::copy(*signatureBytes, signature.begin());
    if (!isSignedBy(manifest->device, *bytes, signature))
        return differs("manifest.json or manifest.sig was changed: the signature does not fit",
                       (folder / manifestName).string());
    if (auto files = checkFiles(folder, *manifest, progress); !files) return tl::unexpected(files.error());
    return VerifiedCloseout{std::move(*manifest), sha256Hex(*bytes)};
}

std::string sentence(const VerifiedCloseout& verified, const fs::path& config) {
    const Manifest& manifest = verified.manifest;
    std::string text = "Closeout record of job " + manifest.job + ", " + manifest.state;
    if (manifest.number) text += " no. " + std::to_string(*manifest.number);
    text += ", made " + manifest.madeAt + ": all " + std::to_string(manifest.files.size()) +
            " files are as signed by ";
    std::error_code error;
    const bool hasOwn = fs::exists(config / "device.key", error);
    const auto own = hasOwn ? deviceKey(config) : Result<DeviceKey>(fail(ProblemCode::NotFound, "none"));
    if (own && own->publicKey == manifest.device)
        text += "this device";
    else if (const auto name = acceptedName(config, manifest.device))
        text += "the known device " + *name;
    else
        text += "a device that is not in your list of known devices";
    return text + " (key " + fingerprint(manifest.device) + ").";
}

}  // namespace arc::storage
