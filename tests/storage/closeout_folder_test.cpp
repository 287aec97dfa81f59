// SPDX-License-Identifier: GPL-3.0-or-later
// What a receiver of a closeout record relies on: nothing in it can change unseen, and tools that are not
// ours (sha256sum, openssl) come to the same answer.
#include "storage/closeout_folder.hpp"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include "tests/support/closeout_folder.hpp"
#include "tests/support/fakes.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;
using test::shell;

class CloseoutFolder : public ::testing::Test {
  protected:
    void SetUp() override {
        book = test::smallJob();
        folder = test::sealedFolder(test::recordOf(book), temporary / "record", temporary / "home");
    }
    std::string problem() const {
        NoProgress progress;
        const auto verified = verifyCloseout(folder, progress);
        return verified ? "" : verified.error().what;
    }
    void write(const std::string& name, const std::string& bytes) const {
        std::ofstream(folder / name, std::ios::binary | std::ios::trunc) << bytes;
    }
    /// A manifest changed by its maker: signed again with the same key.
    void signAgain(const std::string& manifest) const {
        write("manifest.json", manifest);
        const Signature signature = sign(*deviceKey(temporary / "home"), manifest);
        write("manifest.sig", {reinterpret_cast<const char*>(signature.data()), signature.size()});
    }
    static std::string replaced(std::string text, const std::string& from, const std::string& to) {
        const auto found = text.find(from);
        EXPECT_NE(found, std::string::npos) << from;
        return text.replace(found, from.size(), to);
    }

    test::TempFolder temporary;
    test::MemoryLogbook book;
    fs::path folder;
};

TEST_F(CloseoutFolder, VerifiesAsWritten) {
    NoProgress progress;
    const auto verified = verifyCloseout(folder, progress);
    ASSERT_TRUE(verified) << verified.error().sentence();
    EXPECT_EQ(verified->manifest.files.size(), 3u);
    EXPECT_EQ(verified->manifest.journalHead, book.head);
    EXPECT_EQ(sentence(*verified, temporary / "home").substr(0, 83),
              "Closeout record of job HR-B, draft, made 2031-03-04T17:00:00+01:00: all 3 files are");
    EXPECT_NE(sentence(*verified, temporary / "home").find("this device"), std::string::npos);
    EXPECT_NE(sentence(*verified, temporary / "other").find("not in your list"), std::string::npos);
    ASSERT_TRUE(acceptDevice(temporary / "other", verified->manifest.device, "Van 3"));
    EXPECT_NE(sentence(*verified, temporary / "other").find("the known device Van 3"), std::string::npos);
}

// One bit of every byte; tests/reliability flips all of them.
TEST_F(CloseoutFolder, AFlippedBitInAnyByteOfAnyFileIsFound) {
    std::size_t flips = 0;
    for (const char* name : {"record.json", "record.xlsx", "splices.csv", "manifest.json", "manifest.sig"})
        flips += test::flipBits(folder / name, test::Bits::OneOfEachByte);
    EXPECT_GT(flips, 10'000u);
    EXPECT_EQ(problem(), "");
}

TEST_F(CloseoutFolder, NamesTheFirstThingThatDiffers) {
    const std::string csv = test::contents(folder / "splices.csv");
    write("splices.csv", csv + "\n");
    EXPECT_EQ(problem().find("splices.csv has "), 0u) << problem();
    std::string changed = csv;
    changed[changed.find("0.02")] = '9';
    write("splices.csv", changed);
    EXPECT_EQ(problem(), "splices.csv was changed: its SHA-256 is not the one in the manifest");
    fs::remove(folder / "splices.csv");
    EXPECT_EQ(problem(), "splices.csv is missing");
    fs::create_symlink("/etc/hostname", folder / "splices.csv");
    EXPECT_EQ(problem(), "splices.csv is not an ordinary file");
    fs::remove(folder / "splices.csv");
    write("splices.csv", csv);
    EXPECT_EQ(problem(), "");
    write("extra.txt", "x");
    EXPECT_EQ(problem(), "extra.txt does not belong to the record");
    fs::remove(folder / "extra.txt");
    fs::remove(folder / "manifest.sig");
    EXPECT_EQ(problem(), "manifest.sig is missing");
}

TEST_F(CloseoutFolder, RefusesManifestsThatAreMadeToMislead) {
    const std::string manifest = test::contents(folder / "manifest.json");
    signAgain(replaced(manifest, "record.json", "../evil.txt"));
    EXPECT_EQ(problem(), "manifest.json cannot be read: a file name in it is not a plain name");
    signAgain(replaced(manifest, "record.json", "splices.csv"));
    EXPECT_EQ(problem(), "manifest.json cannot be read: it lists a file twice");
    signAgain(replaced(manifest, "\"files\":", "\"files\": [], \"files\":"));
    EXPECT_EQ(problem(), "manifest.json cannot be read: a key comes twice");
    signAgain(replaced(manifest, "\"version\": 1", "\"version\": 2"));
    EXPECT_EQ(problem(), "the record was made by a newer program");
    signAgain("[");
    EXPECT_EQ(problem().find("manifest.json cannot be read"), 0u);
    signAgain(std::string(100'000, '['));
    EXPECT_EQ(problem().find("manifest.json cannot be read"), 0u);
    // Somebody else's key: the signature fits, but not the key in the manifest.
    write("manifest.json", manifest);
    const Signature other = sign(*deviceKey(temporary / "other"), manifest);
    write("manifest.sig", {reinterpret_cast<const char*>(other.data()), other.size()});
    EXPECT_EQ(problem(), "manifest.json or manifest.sig was changed: the signature does not fit");
}

TEST_F(CloseoutFolder, AStrangerChecksTheHashesWithSha256sum) {
    const std::string check =
        "cd '" + folder.string() +
        R"~(' && sed -n 's/.*"sha256": "\([0-9a-f]*\)", "name": "\([^"]*\)".*/\1  \2/p' manifest.json | sha256sum -c)~";
    const auto good = shell(check);
    EXPECT_EQ(good.code, 0) << good.text;
    EXPECT_EQ(good.text, "record.json: OK\nrecord.xlsx: OK\nsplices.csv: OK\n");
    write("splices.csv", "x");
    EXPECT_NE(shell(check).code, 0);
}

TEST_F(CloseoutFolder, AStrangerChecksTheSignatureWithOpenssl) {
    const std::string check =
        "cd '" + folder.string() +
        R"~(' && sed -n 's/.*"device_public_key": "\([^"]*\)".*/\1/p' manifest.json | base64 -d > ../device.der &&
           openssl pkeyutl -verify -rawin -pubin -keyform DER -inkey ../device.der -in manifest.json -sigfile manifest.sig)~";
    const auto good = shell(check);
    EXPECT_EQ(good.code, 0) << good.text;
    EXPECT_NE(good.text.find("Signature Verified Successfully"), std::string::npos) << good.text;
    const auto pem = shell("openssl pkey -pubin -inform DER -in '" + (temporary / "device.der").string() +
                           "' | cmp - '" + (temporary / "home/device.pem").string() + "'");
    EXPECT_EQ(pem.code, 0) << pem.text;
    write("manifest.json", replaced(test::contents(folder / "manifest.json"), "HR-B", "HR-C"));
    EXPECT_NE(shell(check).code, 0);
}

TEST_F(CloseoutFolder, ADraftGivesWayAndAFinalRecordNever) {
    NoProgress progress;
    EXPECT_TRUE(CloseoutStage::begin(folder));
    auto record = test::recordOf(book);
    record.state = closeout::RecordState::Final;
    record.number = 1;
    const auto final = test::sealedFolder(record, temporary / "final", temporary / "home");
    const auto refused = CloseoutStage::begin(final);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().what, "the folder holds a final record, and a final record is never changed");
    write("my notes.txt", "do not lose me");
    ASSERT_FALSE(CloseoutStage::begin(folder));
    EXPECT_TRUE(fs::exists(folder / "my notes.txt"));
    fs::create_directory(temporary / "photos");
    std::ofstream(temporary / "photos/a.jpg") << "x";
    ASSERT_FALSE(CloseoutStage::begin(temporary / "photos"));
    fs::create_directory(temporary / "empty");
    EXPECT_TRUE(CloseoutStage::begin(temporary / "empty"));
}

TEST_F(CloseoutFolder, AnAbandonedStageLeavesNothing) {
    const auto before = std::distance(fs::directory_iterator(temporary.path), {});
    {
        auto stage = CloseoutStage::begin(temporary / "new");
        ASSERT_TRUE(stage);
        std::ofstream(stage->file("record.json")) << "half";
    }
    EXPECT_EQ(std::distance(fs::directory_iterator(temporary.path), {}), before);
}

TEST(DeviceKeyFile, IsMadeOnceAndReadableByItsOwnerOnly) {
    test::TempFolder temporary;
    const auto key = deviceKey(temporary / "home");
    ASSERT_TRUE(key);
    EXPECT_EQ(deviceKey(temporary / "home")->publicKey, key->publicKey);
    EXPECT_NE(deviceKey(temporary / "elsewhere")->publicKey, key->publicKey);
    struct stat about {};
    ASSERT_EQ(::stat((temporary / "home/device.key").c_str(), &about), 0);
    EXPECT_EQ(about.st_mode & 0777, 0600u);
    ::chmod((temporary / "home/device.key").c_str(), 0644);
    ASSERT_TRUE(deviceKey(temporary / "home"));
    ASSERT_EQ(::stat((temporary / "home/device.key").c_str(), &about), 0);
    EXPECT_EQ(about.st_mode & 0777, 0600u);
    std::ofstream(temporary / "home/device.key") << "nonsense";
    EXPECT_EQ(deviceKey(temporary / "home").error().code, ProblemCode::Damaged);
}

template <std::size_t N>
std::string hex(const std::array<std::uint8_t, N>& bytes) {
    std::string text;
    for (const std::uint8_t byte : bytes) {
        char pair[3];
        std::snprintf(pair, sizeof pair, "%02x", byte);
        text += pair;
    }
    return text;
}

// RFC 8032 section 7.1, test 2: seed, public key and the signature of the one byte 0x72.
TEST(DeviceKeyFile, SignsAsRfc8032Says) {
    test::TempFolder temporary;
    fs::create_directories(temporary / "home");
    // 4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb as base64.
    std::ofstream(temporary / "home/device.key")
        << "arcwright device key 1 ed25519 TM0Imyj/ltqdtsNG7BFOD1uKMZ81q6Yk2oz27U+4pvs=\n";
    const auto key = deviceKey(temporary / "home");
    ASSERT_TRUE(key) << key.error().sentence();
    EXPECT_EQ(hex(key->publicKey), "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c");
    const Signature signature = sign(*key, "\x72");
    EXPECT_EQ(hex(signature),
              "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
              "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
    EXPECT_TRUE(isSignedBy(key->publicKey, "\x72", signature));
    EXPECT_FALSE(isSignedBy(key->publicKey, "\x73", signature));
}

}  // namespace
}  // namespace arc::storage
