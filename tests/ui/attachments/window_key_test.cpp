// SPDX-License-Identifier: GPL-3.0-or-later
// One key from any page to the photos and notes of what is chosen there; shown for a closure.
#include <QComboBox>
#include <QPlainTextEdit>

#include <gtest/gtest.h>

#include "tests/support/real_window.hpp"
#include "ui/attachments/sheet.hpp"

namespace arc::ui {
namespace {

using test::RealWindow;

class PhotosAndNotes : public testing::Test {
  protected:
    /// Presses the key, writes a note and leaves; false when no sheet opens.
    bool noteByKey() {
        RealWindow::press(Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
        auto* sheet = at.window->findChild<AttachmentSheet*>();
        if (!sheet || !test::eventually([&] { return QApplication::activeWindow() == sheet; })) return false;
        RealWindow::press(Qt::Key_N);
        RealWindow::type(QStringLiteral("seen"));
        RealWindow::press(Qt::Key_Return, Qt::ControlModifier);
        RealWindow::press(Qt::Key_Escape);
        return !sheet->isVisible();
    }

    RealWindow at;
};

TEST_F(PhotosAndNotes, OfTheClosureThatIsChosenButNotOfAJob) {
    auto& rig = at.rig;
    rig.write(Tool{rig.newId<ToolId>(), "S-01", "", Splicer{}, Service::InUse});
    const JobId job = rig.newId<JobId>();
    rig.write(Job{job, "HR-B", "", {}});
    Closure closure;
    closure.id = rig.newId<ClosureId>();
    closure.job = job;
    closure.label = "HR-17";
    rig.write(closure);
    ASSERT_TRUE(at.open());
    RealWindow::press(Qt::Key_F6);
    ASSERT_TRUE(at.settle());
    EXPECT_FALSE(noteByKey()) << "a job takes none, and the window says so";
    RealWindow::press(Qt::Key_Down);
    ASSERT_TRUE(noteByKey());
    EXPECT_EQ(rig.reopened()->attachments(closure.id.uuid).value().size(), 1u);
}

}  // namespace
}  // namespace arc::ui
