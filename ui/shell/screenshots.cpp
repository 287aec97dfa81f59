// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/screenshots.hpp"

#include <QApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QEventLoop>
#include <QPixmap>

#include "ui/shell/main_window.hpp"
#include "ui/shell/page_list.hpp"

namespace arc::ui {
namespace {

struct Size {
    int width, height;
    double scale;
};
/// A rugged laptop, a full-HD screen at 150 %, and a 4K screen at 200 %.
constexpr Size sizes[] = {{1366, 768, 1.0}, {1920, 1080, 1.5}, {3840, 2160, 2.0}};
constexpr int patienceMs = 60'000;

void settle(MainWindow& window) {
    const QDeadlineTimer deadline(patienceMs);
    while (!window.settled() && !deadline.hasExpired())
        QApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
    // Layouts that follow from what has just been filled in.
    for (int i = 0; i < 5; ++i) QApplication::processEvents();
}

}  // namespace

Result<int> writeScreenshots(Session& session, const std::filesystem::path& folder,
                             const WindowOptions& options) {
    const QString place = QString::fromStdString(folder.string());
    if (!QDir().mkpath(place))
        return fail(ProblemCode::Unavailable, "the folder for the pictures cannot be made", folder.string(),
                    "Choose a folder you may write to");
    int written = 0;
    for (const auto tone : {Tone::Day, Tone::Night}) {
        for (const auto& size : sizes) {
            applyTheme(*qApp, Theme(tone, size.scale));
            WindowOptions quiet = options;
            quiet.remember = Remember::No;
            MainWindow window(session, quiet);
            window.resize(size.width, size.height);
            window.show();
            for (const auto& row : pageList()) {
                window.go(row.screen);
                settle(window);
                const QString file =
                    QStringLiteral("%1/%2-%3-%4x%5.png")
                        .arg(place, keyOf(row.screen),
                             tone == Tone::Day ? QStringLiteral("day") : QStringLiteral("night"))
                        .arg(size.width)
                        .arg(size.height);
                if (!window.grab().save(file))
                    return fail(ProblemCode::Unavailable, "a picture cannot be written", file.toStdString(),
                                "Look whether the disk is full");
                ++written;
            }
        }
    }
    return written;
}

}  // namespace arc::ui
