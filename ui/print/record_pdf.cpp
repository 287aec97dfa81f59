// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/record_pdf.hpp"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QPageSize>
#include <QPdfWriter>

#include <cstdio>

#include "ui/print/pages.hpp"
#include "ui/print/words.hpp"

namespace arc::print {
namespace {

constexpr int dotsPerInch = 1200;

void prepare(QPdfWriter& writer, const Tongue& in, const closeout::Record& record,
             closeout::PaperSize paper) {
    writer.setResolution(dotsPerInch);
    writer.setPageSize(QPageSize(paper == closeout::PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(in.tr("Closeout record %1").arg(nameOf(in, record)));
    writer.setCreator("Arcwright");
}

struct Layout {
    int pages = 0;  ///< 0: it was stopped
    std::vector<Beginning> contents;
};

Layout paint(QPdfWriter& writer, const Tongue& in, const closeout::Record& record, Pass pass,
             const Layout& counted, Progress& progress) {
    const bool isDraft = record.state == closeout::RecordState::Draft;
    Frame frame;
    frame.headLeft = in.tr("Closeout record %1").arg(nameOf(in, record));
    frame.headRight = words(record.job.title);
    frame.footLeft =
        in.tr("Journal head %1")
            .arg(words(record.journalHead.substr(0, 32)) + (record.journalHead.size() > 32 ? "…" : ""));
    frame.watermark = isDraft ? in.tr("DRAFT") : QString();
    Sheet sheet(writer, in, frame, pass, counted.pages);
    coverPage(sheet, record, counted.contents);
    sheet.newPage();
    summaryPart(sheet, record);
    exceptionsPart(sheet, record);
    equipmentPart(sheet, record);
    budgetPart(sheet, record);
    attachmentsPart(sheet, record);
    signaturePart(sheet, record);
    if (!closureTables(sheet, record, progress)) return {};
    return {sheet.page(), sheet.contents()};
}

}  // namespace

struct PrintApplication::Parts {
    int count = 1;
    char name[5] = "arcw";
    char* arguments[2] = {name, nullptr};
    std::unique_ptr<QGuiApplication> application;
};

PrintApplication::PrintApplication() {
    if (QCoreApplication::instance() != nullptr) return;
    // Pages need no display; with this none is looked for. Qt's remarks about the session are not for the
    // person who asked for a record.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& message) {
        if (type == QtCriticalMsg || type == QtFatalMsg)
            std::fprintf(stderr, "arcw: %s\n", qPrintable(message));
    });
    m_parts = std::make_unique<Parts>();
    m_parts->application = std::make_unique<QGuiApplication>(m_parts->count, m_parts->arguments);
}

PrintApplication::~PrintApplication() {
    if (m_parts) qInstallMessageHandler(nullptr);
}

Result<void> writeRecordPdf(const closeout::Record& record, closeout::PageForm form,
                            const std::filesystem::path& path, Progress& progress) {
    if (QFontDatabase::families().isEmpty())
        return fail(ProblemCode::Unavailable, "no font is installed, so the pages would be empty boxes", "",
                    "Install fonts-b612 or fonts-dejavu-core");
    const Tongue in(form.language);
    Layout layout;
    {
        QBuffer nowhere;
        nowhere.open(QIODevice::WriteOnly);
        QPdfWriter writer(&nowhere);
        prepare(writer, in, record, form.paper);
        layout = paint(writer, in, record, Pass::Counting, {}, progress);
    }
    if (layout.pages == 0) return fail(ProblemCode::Cancelled, "stopped; nothing was written");
    QFile file(QString::fromStdString(path.string()));
    if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly))
        return fail(ProblemCode::Unavailable,
                    "the pages cannot be written: " + file.errorString().toStdString(), path.string());
    {
        QPdfWriter writer(&file);
        prepare(writer, in, record, form.paper);
        layout = paint(writer, in, record, Pass::Painting, layout, progress);
    }
    file.close();
    if (layout.pages == 0) return fail(ProblemCode::Cancelled, "stopped; nothing was written");
    if (file.error() != QFileDevice::NoError)
        return fail(ProblemCode::Unavailable,
                    "the pages cannot be written: " + file.errorString().toStdString(), path.string());
    return {};
}

}  // namespace arc::print
