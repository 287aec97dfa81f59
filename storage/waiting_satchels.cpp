// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/waiting_satchels.hpp"

#include <algorithm>
#include <system_error>

#include "storage/place.hpp"
#include "storage/plain_file.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

fs::path folderOf(const fs::path& book) {
    return book.string() + ".waiting";
}

Device deviceOf(const SatchelLabel& label) {
    return {toDerBase64(label.signer), fingerprint(label.signer), label.madeBy, DeviceStanding::Unknown};
}

WaitingSatchel waiting(const fs::path& file, const SatchelLabel& label) {
    return {file, deviceOf(label), label.madeAt, !label.salt.empty()};
}

bool waitsBeside(const fs::path& book, const fs::path& file) {
    std::error_code error;
    return fs::equivalent(file.parent_path(), folderOf(book), error) && !error;
}

Result<WaitingSatchel> keep(const fs::path& book, const fs::path& satchel, const SatchelLabel& label) {
    if (waitsBeside(book, satchel)) return waiting(satchel, label);
    std::error_code error;
    fs::create_directories(folderOf(book), error);
    const fs::path kept = folderOf(book) / (label.payloadSha256.substr(0, 16) + ".satchel");
    const fs::path unfinished = kept.string() + ".unfinished";
    if (!error && !fs::exists(kept)) {
        fs::copy_file(satchel, unfinished, fs::copy_options::overwrite_existing, error);
        if (!error) fs::rename(unfinished, kept, error);
    }
    if (error) {
        const std::string why = error.message();
        fs::remove(unfinished, error);
        return fail(ProblemCode::Unavailable,
                    "the satchel comes from a device that is not accepted yet and cannot be kept: " + why,
                    satchel.string(), "Make room, or accept the device and take the satchel in again");
    }
    return waiting(kept, label);
}

}  // namespace

Result<std::vector<PublicKey>> acceptedKeys(const fs::path& config) {
    const auto own = deviceKey(config);
    if (!own) return tl::unexpected(own.error());
    const auto known = knownDevices(config);
    if (!known) return tl::unexpected(known.error());
    std::vector<PublicKey> accepted{own->publicKey};
    for (const auto& device : *known) accepted.push_back(device.key);
    return accepted;
}

Result<std::vector<Device>> devicesAround(const fs::path& config, const fs::path& book) {
    const auto own = deviceKey(config);
    if (!own) return tl::unexpected(own.error());
    auto known = knownDevices(config);
    if (!known) return tl::unexpected(known.error());
    std::sort(known->begin(), known->end(),
              [](const KnownDevice& a, const KnownDevice& b) { return a.name < b.name; });
    std::vector<Device> devices{
        {toDerBase64(own->publicKey), fingerprint(own->publicKey), machineName(), DeviceStanding::ThisOne}};
    const auto isListed = [&devices](const std::string& key) {
        return std::any_of(devices.begin(), devices.end(),
                           [&key](const Device& device) { return device.key == key; });
    };
    for (const auto& device : *known)
        if (const std::string key = toDerBase64(device.key); !isListed(key))
            devices.push_back({key, fingerprint(device.key), device.name, DeviceStanding::Accepted});
    const auto waits = waitingSatchels(book);
    if (!waits) return tl::unexpected(waits.error());
    for (const auto& satchel : *waits)
        if (!isListed(satchel.from.key)) devices.push_back(satchel.from);
    return devices;
}

Result<SatchelAnswer> takeOrKeep(UnpackRequest request, const fs::path& config, Clock& clock, Random& random,
                                 Progress& progress) {
    const auto label = readSatchelLabel(request.satchel);
    if (!label) return tl::unexpected(label.error());
    auto keys = acceptedKeys(config);
    if (!keys) return tl::unexpected(keys.error());
    if (std::find(keys->begin(), keys->end(), label->signer) == keys->end())
        return keep(request.book, request.satchel, *label).map([](WaitingSatchel kept) {
            return SatchelAnswer(std::move(kept));
        });
    request.accepted = std::move(*keys);
    const auto taken = unpackSatchel(request, clock, random, progress);
    if (!taken) return tl::unexpected(taken.error());
    std::error_code ignored;
    if (waitsBeside(request.book, request.satchel)) fs::remove(request.satchel, ignored);
    TakenIn answer{deviceOf(*label), taken->newRows, taken->knownRows, taken->concurrent.size()};
    answer.from.standing = DeviceStanding::Accepted;
    // Under the name it was accepted by, whatever the satchel calls itself.
    if (auto name = acceptedName(config, label->signer)) answer.from.name = std::move(*name);
    return SatchelAnswer(std::move(answer));
}

Result<std::vector<WaitingSatchel>> waitingSatchels(const fs::path& book) {
    std::vector<WaitingSatchel> list;
    std::error_code error;
    for (auto entry = fs::directory_iterator(folderOf(book), error);
         !error && entry != fs::directory_iterator(); entry.increment(error)) {
        if (entry->path().extension() != ".satchel") continue;
        if (const auto label = readSatchelLabel(entry->path()))
            list.push_back(waiting(entry->path(), *label));
    }
    std::sort(list.begin(), list.end(),
              [](const WaitingSatchel& a, const WaitingSatchel& b) { return a.madeAt < b.madeAt; });
    return list;
}

Result<void> discardSatchel(const fs::path& book, const fs::path& satchel) {
    if (!waitsBeside(book, satchel) || satchel.extension() != ".satchel")
        return fail(ProblemCode::Refused, "this file is not a satchel that waits", satchel.string());
    std::error_code error;
    if (!fs::remove(satchel, error))
        return fail(ProblemCode::NotFound, "the satchel is gone already", satchel.string());
    return {};
}

}  // namespace arc::storage
