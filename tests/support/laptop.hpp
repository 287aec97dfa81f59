// SPDX-License-Identifier: GPL-3.0-or-later
// A laptop of a crew with its logbook, its clock and its key: packs satchels and takes them in.
#pragma once
#include <gtest/gtest.h>
#include <memory>
#include <sodium.h>
#include <string>
#include <vector>

#include "storage/satchel.hpp"
#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::test {

inline storage::DeviceKey keyFrom(unsigned char seed) {
    storage::DeviceKey key;
    std::array<unsigned char, crypto_sign_SEEDBYTES> bytes{};
    bytes.fill(seed);
    crypto_sign_seed_keypair(key.publicKey.data(), key.secretKey.data(), bytes.data());
    return key;
}

struct Laptop {
    explicit Laptop(unsigned char number)
        : clock(1'930'000'000'000 + number * 1'000), random(number), key(keyFrom(number)) {
        if (!storage::createLogbook(file(), clock, random)) ADD_FAILURE();
    }
    [[nodiscard]] std::filesystem::path file() const { return folder / "crew.arcbook"; }
    std::unique_ptr<Logbook> open(storage::OpenMode mode = storage::OpenMode::ReadWrite) {
        return storage::openLogbook(file(), mode, clock, random).value();
    }
    void save(const Entry& entry) {
        const auto saved = open()->append(entry, testContext);
        if (!saved) ADD_FAILURE() << saved.error().sentence();
    }
    std::filesystem::path pack(PackOrder order = {}) {
        order.satchel = folder / ("out-" + std::to_string(++packed) + ".satchel");
        NoProgress unwatched;
        const auto done = storage::packSatchel(file(), order, key, clock, random, unwatched);
        if (!done) ADD_FAILURE() << done.error().sentence();
        if (done) lastPacked = *done;
        return order.satchel;
    }
    std::filesystem::path packSince(Instant since) { return pack({{}, since, {}, {}}); }
    std::filesystem::path packJob(JobId job) { return pack({{}, {}, job, {}}); }
    std::filesystem::path packSealed(std::string passphrase) {
        return pack({{}, {}, {}, std::move(passphrase)});
    }
    Result<storage::Unpacked> take(const std::filesystem::path& satchel,
                                   std::optional<std::string> passphrase = {}) {
        std::vector<storage::PublicKey> accepted;
        for (unsigned char i = 1; i < 10; ++i) accepted.push_back(keyFrom(i).publicKey);
        NoProgress unwatched;
        return storage::unpackSatchel(
            {file(), satchel, std::move(passphrase), accepted, storage::OpenMode::ReadWrite}, clock, random,
            unwatched);
    }
    std::string head() { return open(storage::OpenMode::ReadOnly)->journalHead().value(); }
    storage::BookVerdict expectSound() {
        NoProgress unwatched;
        const auto verdict = storage::verifyBook(file(), unwatched);
        EXPECT_TRUE(verdict) << verdict.error().sentence();
        return verdict.value_or(storage::BookVerdict{});
    }

    TempFolder folder;
    FakeClock clock;
    FakeRandom random;
    storage::DeviceKey key;
    PackCount lastPacked;
    int packed = 0;
};

}  // namespace arc::test
