// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/window_app.hpp"

#include <QApplication>
#include <QScreen>
#include <QSettings>
#include <QTextStream>

#include "ui/shell/main_window.hpp"
#include "ui/shell/screenshots.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

Theme startTheme(const WindowOptions& options) {
    Tone tone = options.tone.value_or(Tone::Day);
    double scale = options.scale.value_or(1.0);
    if (options.remember == Remember::Yes) {
        const QSettings settings;
        if (!options.tone && settings.value("tone").toString() == QLatin1String("night")) tone = Tone::Night;
        if (!options.scale) scale = settings.value("scale", 1.0).toDouble();
    }
    return Theme(tone, scale);
}

}  // namespace

void prepare(QApplication& application, const WindowOptions& options) {
    auto language = options.language;
    if (!language && options.remember == Remember::Yes)
        language = text::languageOf(QSettings().value("language").toString());
    text::speak(application, language.value_or(text::systemLanguage()));
    applyTheme(application, startTheme(options));
}

int runWindow(Logbook& book, Workbench& workbench, Clock& clock, Random& random,
              const WindowOptions& options) {
    Session session(book, workbench, clock, random);
    std::string crew = options.crew;
    if (crew.empty() && options.remember == Remember::Yes)
        crew = QSettings().value("crew").toString().toStdString();
    session.setCrew(crew);
    if (options.screenshots) {
        const auto written = writeScreenshots(session, *options.screenshots, options);
        if (!written) {
            QTextStream(stderr) << text::spoken(written.error()) << '\n';
            return 2;
        }
        return 0;
    }
    MainWindow window(session, options);
    // On a rugged laptop's screen the frame would push the foot of the rail out of sight.
    constexpr QSize wanted(1366, 768);
    constexpr int frame = 48;
    const QSize room = QGuiApplication::primaryScreen()->availableSize();
    window.resize(wanted);
    if (room.width() < wanted.width() + frame || room.height() < wanted.height() + frame)
        window.showMaximized();
    else
        window.show();
    return QApplication::exec();
}

}  // namespace arc::ui
