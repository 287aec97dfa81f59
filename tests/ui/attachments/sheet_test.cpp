// SPDX-License-Identifier: GPL-3.0-or-later
// Photos and notes by keyboard alone: added, looked at, saved out, taken back, refused in one sentence.
#include "ui/attachments/sheet.hpp"

#include <QComboBox>
#include <QFileDialog>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>

#include <fstream>
#include <gtest/gtest.h>
#include <iterator>

#include "tests/support/pad_crew.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/today_page.hpp"

namespace arc::ui {
namespace {

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

class Attachments : public testing::Test {
  protected:
    void SetUp() override {
        crew = test::makePadCrew(rig, 1);
        session = &rig.start();
        page = std::make_unique<TodayPage>(*session);
        page->resize(1250, 768);
        page->show();
        page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
        page->firstFocus()->setFocus();
        test::typeKeys(&page->pad(), "4\r");
        QTest::keyClick(&page->pad(), Qt::Key_Up);
        arc = rig.reopened()->splices({}, PageOrder::OldestFirst, std::nullopt, 1).value().at(0).arc.id;
    }
    AttachmentSheet* open() {
        QTest::keyClick(&page->pad(), Qt::Key_A);
        auto* sheet = page->findChild<AttachmentSheet*>();
        // Qt calls a dialog active while its parent is; the keyboard is what counts.
        EXPECT_TRUE(sheet && test::eventually([&] { return QApplication::activeWindow() == sheet; }));
        return sheet;
    }
    void press(QWidget* at, Qt::Key key, Qt::KeyboardModifiers with = {}) { QTest::keyClick(at, key, with); }
    QListWidget* list(AttachmentSheet* sheet) { return sheet->findChild<QListWidget*>(); }
    /// Types a path into the file dialog that is open, and takes it.
    void give(AttachmentSheet* sheet, const std::filesystem::path& path) {
        auto* dialog = sheet->findChild<QFileDialog*>();
        ASSERT_TRUE(dialog);
        auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        ASSERT_TRUE(name);
        name->setFocus();
        name->setText(QString::fromStdString(path.string()));
        QTest::keyClick(name, Qt::Key_Return);
        ASSERT_TRUE(test::eventually([&] { return sheet->findChild<QFileDialog*>() == nullptr; }));
    }
    std::filesystem::path picture() {
        const auto path = rig.folder / "tray.png";
        QImage image(60, 40, QImage::Format_RGB32);
        image.fill(Qt::darkGreen);
        EXPECT_TRUE(image.save(QString::fromStdString(path.string())));
        return path;
    }
    std::vector<Attachment> onDisk(const Uuid& of) { return rig.reopened()->attachments(of).value(); }

    test::UiRig rig;
    test::PadCrew crew;
    ArcId arc;
    Session* session = nullptr;
    std::unique_ptr<TodayPage> page;
};

TEST_F(Attachments, APhotoOfTheSpliceIsAddedShownSavedOutAndTakenBack) {
    auto* sheet = open();
    press(list(sheet), Qt::Key_P);
    const auto file = picture();
    give(sheet, file);
    ASSERT_EQ(onDisk(arc.uuid).size(), 1u);
    EXPECT_EQ(onDisk(arc.uuid)[0].bytes, contentOf(file));
    EXPECT_EQ(onDisk(arc.uuid)[0].mediaType, "image/png");
    bool shown = false;
    for (auto* label : sheet->findChildren<QLabel*>())
        shown = shown || (label->isVisible() && !label->pixmap(Qt::ReturnByValue).isNull());
    EXPECT_TRUE(shown);

    std::filesystem::create_directory(rig.folder / "out");
    press(list(sheet), Qt::Key_S);
    give(sheet, rig.folder / "out");
    EXPECT_EQ(contentOf(rig.folder / "out" / "tray.png"), contentOf(file));
    press(list(sheet), Qt::Key_S);
    give(sheet, rig.folder / "out");
    EXPECT_EQ(contentOf(rig.folder / "out" / "tray (2).png"), contentOf(file)) << "nothing is overwritten";

    press(list(sheet), Qt::Key_Delete);
    EXPECT_TRUE(onDisk(arc.uuid).empty());
    EXPECT_EQ(list(sheet)->count(), 0);
    session->undo().undo();
    EXPECT_EQ(onDisk(arc.uuid).size(), 1u);
}

TEST_F(Attachments, ANoteIsWrittenAndNotLostByOneEscTooMany) {
    auto* sheet = open();
    press(list(sheet), Qt::Key_N);
    auto* note = qobject_cast<QPlainTextEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(note);
    press(note, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(onDisk(arc.uuid).empty()) << "an empty note is none";
    QTest::keyClicks(note, "sleeve cracked, see photo");
    press(note, Qt::Key_Escape);
    EXPECT_TRUE(sheet->isVisible());
    EXPECT_TRUE(sheet->said().contains("not saved")) << sheet->said().toStdString();
    press(note, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(onDisk(arc.uuid).size(), 1u);
    EXPECT_EQ(onDisk(arc.uuid)[0].bytes, "sleeve cracked, see photo");
    EXPECT_EQ(list(sheet)->currentItem()->text(), "Note: sleeve cracked, see photo");
    press(list(sheet), Qt::Key_Escape);
    EXPECT_FALSE(sheet->isVisible());
}

TEST_F(Attachments, WhatIsNoPhotoIsRefusedInOneSentence) {
    auto* sheet = open();
    const auto refuse = [&](const std::string& name, const std::string& content, const char* words) {
        const auto file = rig.folder / name;
        std::ofstream(file, std::ios::binary) << content;
        press(list(sheet), Qt::Key_P);
        give(sheet, file);
        EXPECT_TRUE(sheet->said().contains(words)) << sheet->said().toStdString();
        EXPECT_TRUE(onDisk(arc.uuid).empty());
    };
    refuse("log.jpg", "time,splicer,loss_db\n", "not a JPEG or PNG");
    refuse("empty.jpg", "", "empty");
    refuse("huge.jpg", "\xff\xd8\xff" + std::string(attachmentLimit, 'x'), "8 MB");
}

TEST_F(Attachments, ANameFromElsewhereThatLooksLikeAPathStaysInTheFolder) {
    rig.write(
        Attachment{rig.newId<EntryId>(), crew.closure.uuid, "../../evil.png", "image/png", "no picture"});
    auto* sheet = open();
    auto* subject = sheet->findChild<QComboBox*>();
    press(subject, Qt::Key_Down);
    EXPECT_EQ(subject->currentText(), "Closure HR-17");
    ASSERT_EQ(list(sheet)->count(), 1);
    EXPECT_TRUE(list(sheet)->item(0)->text().startsWith("evil.png"))
        << list(sheet)->item(0)->text().toStdString();
    std::filesystem::create_directories(rig.folder / "a/b");
    press(list(sheet), Qt::Key_S);
    give(sheet, rig.folder / "a/b");
    EXPECT_TRUE(std::filesystem::exists(rig.folder / "a/b/evil.png"));
    EXPECT_FALSE(std::filesystem::exists(rig.folder / "evil.png"));
}

}  // namespace
}  // namespace arc::ui
