// SPDX-License-Identifier: GPL-3.0-or-later
// A satchel of a laptop nobody accepted waits beside the logbook, unopened, until somebody does or throws it
// away.
#include "storage/waiting_satchels.hpp"

#include <fstream>
#include <gtest/gtest.h>

#include "tests/support/laptop.hpp"

namespace arc::storage {
namespace {

using test::Laptop;

class Waiting : public testing::Test {
  protected:
    void SetUp() override { from_.save(Setting{"a", "from the van"}); }
    [[nodiscard]] std::filesystem::path config() const { return to_.folder / "home"; }
    Result<SatchelAnswer> take(const std::filesystem::path& satchel,
                               std::optional<std::string> passphrase = {}) {
        NoProgress unwatched;
        UnpackRequest request;
        request.book = to_.file();
        request.satchel = satchel;
        request.passphrase = std::move(passphrase);
        return takeOrKeep(std::move(request), config(), to_.clock, to_.random, unwatched);
    }
    std::vector<WaitingSatchel> waiting() { return waitingSatchels(to_.file()).value(); }

    Laptop from_{1}, to_{2};
};

TEST_F(Waiting, AStrangersSatchelIsKeptAndNothingOfItIsTakenIn) {
    const std::string head = to_.head();
    const auto satchel = from_.pack();
    for (int i = 0; i < 2; ++i) {
        const auto answer = take(satchel);
        ASSERT_TRUE(answer) << answer.error().sentence();
        ASSERT_TRUE(std::holds_alternative<WaitingSatchel>(*answer));
        EXPECT_EQ(to_.head(), head);
        ASSERT_EQ(waiting().size(), 1u) << "the same satchel waits once";
    }
    const WaitingSatchel waits = waiting().front();
    EXPECT_NE(waits.file, satchel) << "the stick can go";
    EXPECT_EQ(waits.from.fingerprint, fingerprint(from_.key.publicKey));
    EXPECT_EQ(waits.from.standing, DeviceStanding::Unknown);
    EXPECT_FALSE(waits.sealed);
    const auto devices = devicesAround(config(), to_.file()).value();
    ASSERT_EQ(devices.size(), 2u);
    EXPECT_EQ(devices[0].standing, DeviceStanding::ThisOne);
    EXPECT_EQ(devices[1].key, waits.from.key);
    EXPECT_EQ(devices[1].standing, DeviceStanding::Unknown);
}

TEST_F(Waiting, OnceItsLaptopIsAcceptedItIsTakenInAndWaitsNoLonger) {
    ASSERT_TRUE(take(from_.packSealed("open sesame")));
    const WaitingSatchel waits = waiting().at(0);
    EXPECT_TRUE(waits.sealed);
    ASSERT_TRUE(acceptDevice(config(), from_.key.publicKey, "Van 2"));
    const auto wrong = take(waits.file, "open barley");
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().code, ProblemCode::Refused);
    EXPECT_EQ(waiting().size(), 1u) << "a wrong passphrase loses nothing";
    const auto answer = take(waits.file, "open sesame");
    ASSERT_TRUE(answer) << answer.error().sentence();
    EXPECT_GT(std::get<TakenIn>(*answer).newEntries, 0u);
    EXPECT_EQ(to_.open()->setting("a").value(), "from the van");
    EXPECT_TRUE(waiting().empty());
    EXPECT_TRUE(std::holds_alternative<TakenIn>(take(from_.pack()).value())) << "later ones need no asking";
}

TEST_F(Waiting, OnlyWhatWaitsCanBeThrownAway) {
    const auto satchel = from_.pack();
    ASSERT_TRUE(take(satchel));
    EXPECT_EQ(discardSatchel(to_.file(), satchel).error().code, ProblemCode::Refused);
    EXPECT_TRUE(std::filesystem::exists(satchel));
    const auto waits = waiting().at(0);
    ASSERT_TRUE(discardSatchel(to_.file(), waits.file));
    EXPECT_TRUE(waiting().empty());
    EXPECT_EQ(discardSatchel(to_.file(), waits.file).error().code, ProblemCode::NotFound);
}

TEST_F(Waiting, WhatWasChangedOnTheWayIsNotEvenKept) {
    const auto satchel = from_.pack();
    std::fstream bytes(satchel, std::ios::in | std::ios::out | std::ios::binary);
    bytes.seekp(-100, std::ios::end);
    bytes.put('\x55');
    bytes.close();
    const auto answer = take(satchel);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::Damaged);
    EXPECT_TRUE(waiting().empty());
}

}  // namespace
}  // namespace arc::storage
