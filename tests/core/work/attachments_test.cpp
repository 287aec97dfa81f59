// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/attachments.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace arc {
namespace {

TEST(Attachments, APhotoIsKnownByItsFirstBytesNotByItsName) {
    EXPECT_EQ(photoType("a.txt", "\xff\xd8\xff\xe0 and so on"), "image/jpeg");
    EXPECT_EQ(photoType("a", std::string_view("\x89PNG\r\n\x1a\n....", 12)), "image/png");
    const auto no = photoType("tray.jpg", "SQLite format 3");
    ASSERT_FALSE(no);
    EXPECT_NE(no.error().sentence().find("tray.jpg"), std::string::npos);
    EXPECT_FALSE(photoType("tray.jpg", ""));
}

TEST(Attachments, TheLimitIsNamed) {
    EXPECT_TRUE(fitsAsAttachment("a.jpg", 1));
    EXPECT_TRUE(fitsAsAttachment("a.jpg", attachmentLimit));
    EXPECT_FALSE(fitsAsAttachment("a.jpg", 0));
    const auto large = fitsAsAttachment("a.jpg", attachmentLimit + 1);
    ASSERT_FALSE(large);
    EXPECT_NE(large.error().sentence().find("8 MB"), std::string::npos);
}

TEST(Attachments, ANameWithAPathIsOnlyAName) {
    EXPECT_EQ(harmlessFileName("tray 17.jpg"), "tray 17.jpg");
    EXPECT_EQ(harmlessFileName("../../etc/passwd"), "passwd");
    EXPECT_EQ(harmlessFileName("C:\\crew\\tray.jpg"), "tray.jpg");
    EXPECT_EQ(harmlessFileName("/"), "attachment");
    EXPECT_EQ(harmlessFileName(".."), "attachment");
    EXPECT_EQ(harmlessFileName(""), "attachment");
    EXPECT_EQ(harmlessFileName(".bashrc"), "bashrc");
    EXPECT_EQ(harmlessFileName("tray.jpg. ."), "tray.jpg");
    EXPECT_EQ(harmlessFileName("a\nb\t<c>:d.png"), "ab_c__d.png");
    EXPECT_EQ(harmlessFileName("nul.png"), "nul_.png");
    EXPECT_EQ(harmlessFileName("com7"), "com7_");
    EXPECT_EQ(harmlessFileName("Späne.jpg"), "Späne.jpg");
}

RC_GTEST_PROP(AttachmentsProperty, NoNameLeavesTheFolder, ()) {
    const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "..", "/", "\\", ".", "a", "ä", " ", "\n", ":", "nul", std::string(90, 'x'), std::string("\0", 1)));
    std::string name;
    for (const auto& piece : pieces) name += piece;
    const std::string plain = harmlessFileName(name);
    RC_ASSERT(!plain.empty());
    RC_ASSERT(plain.size() <= 121u);
    RC_ASSERT(plain.find_first_of(std::string("/\\:\n\0", 5)) == std::string::npos);
    RC_ASSERT(plain.front() != '.');
    RC_ASSERT(plain != "..");
    RC_ASSERT(harmlessFileName(plain) == plain);
}

}  // namespace
}  // namespace arc
