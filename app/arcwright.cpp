// SPDX-License-Identifier: GPL-3.0-or-later
// The window program: arguments, the book, and who plays which port.
#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QMessageBox>
#include <QProcess>
#include <QStandardPaths>
#include <QTextStream>

#include <algorithm>
#include <filesystem>
#include <memory>
#include <string_view>

#include "app/wiring.hpp"
#include "app/workbench.hpp"
#include "storage/demo_book.hpp"
#include "storage/sqlite_logbook.hpp"
#include "ui/shell/window_app.hpp"
#include "ui/text/format.hpp"
#include "ui/widgets/outcome.hpp"

namespace {

using namespace arc;

struct Opened {
    std::unique_ptr<Logbook> book;
    std::optional<Problem> readOnlyBecause;
};

/// The crew's own book, where the desktop keeps a program's data.
std::filesystem::path usualBook() {
    const QString folder =
        QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + "/arcwright";
    QDir().mkpath(folder);
    return (folder + "/crew.arcbook").toStdString();
}

/// Writes if it may; a book that another program writes, or on a read-only stick, is still shown.
Result<Opened> openBook(const std::filesystem::path& path, Clock& clock, Random& random) {
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) {
        auto made = storage::createLogbook(path, clock, random);
        if (!made) return tl::unexpected(made.error());
        return Opened{std::move(*made), std::nullopt};
    }
    auto writing = storage::openLogbook(path, storage::OpenMode::ReadWrite, clock, random);
    if (writing) return Opened{std::move(*writing), std::nullopt};
    auto reading = storage::openLogbook(path, storage::OpenMode::ReadOnly, clock, random);
    if (!reading) return tl::unexpected(writing.error());
    return Opened{std::move(*reading), writing.error()};
}

/// Makes the demo book beside the crew's and shows it in a window of its own.
Result<void> openDemo(Clock& clock, Random& random) {
    const std::filesystem::path path = usualBook().replace_filename("harrow-ridge.arcbook");
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) {
        auto made = storage::createLogbook(path, clock, random);
        if (!made) return tl::unexpected(made.error());
        const auto filled = storage::fillWithHarrowRidge(**made, clock.now());
        if (!filled) return tl::unexpected(filled.error());
    }
    if (!QProcess::startDetached(QCoreApplication::applicationFilePath(),
                                 {QString::fromStdString(path.string())}))
        return fail(ProblemCode::Unavailable, "the demo window did not start", path.string());
    return {};
}

void tell(const Problem& problem) {
    const QString sentence = ui::text::spoken(problem);
    QTextStream(stderr) << "arcwright: " << sentence << '\n';
    if (QGuiApplication::platformName() != QLatin1String("offscreen"))
        QMessageBox::warning(nullptr, QStringLiteral("Arcwright"), ui::asLine(problem));
}

/// Wrong use of the command line; the answer is the exit code.
int refuse(const char* sentence, const QString& given) {
    QTextStream(stderr) << "arcwright: " << sentence << ", not \"" << given << "\".\n";
    return 2;
}

/// Without one Qt would abort in the middle of its own words.
bool hasDisplay(int argc, char** argv) {
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        if (!qEnvironmentVariableIsEmpty(name)) return true;
    return std::any_of(argv, argv + argc,
                       [](const char* word) { return std::string_view(word) == "-platform"; });
}

}  // namespace

int main(int argc, char** argv) {
    if (!hasDisplay(argc, argv)) {
        QTextStream(stderr)
            << "arcwright: there is no display for a window. arcw does the same without one: arcw --help\n";
        return 2;
    }
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("arcwright"));
    QCoreApplication::setOrganizationName(QStringLiteral("arcwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral("0.1.0"));
    QCommandLineParser parser;
    parser.setApplicationDescription("A fusion-splicing crew's logbook that tells drift from luck.");
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument("BOOK", "the logbook to open; made when it does not exist", "[BOOK]");
    const QCommandLineOption tone("tone", "day or night", "tone");
    const QCommandLineOption scale("scale", "text size, 1 to 2", "factor");
    const QCommandLineOption pictures("pictures", "write every screen as a picture into FOLDER and end",
                                      "FOLDER");
    const QCommandLineOption language("language", "en, es or de; as remembered when not given", "language");
    parser.addOptions({tone, scale, pictures, language});
    parser.process(application);

    ui::WindowOptions options;
    if (parser.isSet(tone)) {
        const QString asked = parser.value(tone);
        if (asked != QLatin1String("day") && asked != QLatin1String("night"))
            return refuse("--tone is day or night", asked);
        options.tone = asked == QLatin1String("night") ? ui::Tone::Night : ui::Tone::Day;
    }
    if (parser.isSet(scale)) {
        bool isNumber = false;
        options.scale = parser.value(scale).toDouble(&isNumber);
        if (!isNumber || !(*options.scale >= 1 && *options.scale <= 2))
            return refuse("--scale is a number from 1 to 2, with a point", parser.value(scale));
    }
    if (parser.isSet(language)) {
        options.language = ui::text::languageOf(parser.value(language));
        if (!options.language) return refuse("--language is en, es or de", parser.value(language));
    }
    if (parser.isSet(pictures)) {
        options.screenshots = parser.value(pictures).toStdString();
        options.remember = ui::Remember::No;
    }
    ui::prepare(application, options);

    app::SystemClock clock;
    app::SystemRandom random;
    const QStringList books = parser.positionalArguments();
    const std::filesystem::path path =
        books.isEmpty() ? usualBook() : std::filesystem::path(books.first().toStdString());
    Result<Opened> opened = openBook(path, clock, random);
    if (!opened) {
        tell(opened.error());
        return 2;
    }
    if (opened->readOnlyBecause) tell(*opened->readOnlyBecause);

    options.bookName = path.stem().string();
    options.openDemo = [&](Progress&) { return openDemo(clock, random); };
    const auto workbench = app::makeWorkbench(path, clock, random);
    return ui::runWindow(*opened->book, *workbench, clock, random, options);
}
