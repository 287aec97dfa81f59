// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/attachments/photo_file.hpp"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStringList>

#include "core/work/attachments.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {

QStringList photoFilters() {
    return {QObject::tr("Pictures (*.jpg *.jpeg *.png)")};
}

Result<Attachment> photoFrom(const QString& path) {
    const QFileInfo info(path);
    const std::string name = text::utf8(info.fileName());
    const QString suffix = info.suffix().toLower();
    if (suffix != QLatin1String("jpg") && suffix != QLatin1String("jpeg") && suffix != QLatin1String("png"))
        return fail(ProblemCode::BadInput, "only pictures named .jpg, .jpeg or .png are taken", name,
                    "Choose a photo, or write a note");
    if (!info.isFile())
        return fail(ProblemCode::NotFound, "there is no such file", text::utf8(path), "Choose another");
    if (const auto fits = fitsAsAttachment(name, static_cast<std::uint64_t>(info.size())); !fits)
        return tl::unexpected(fits.error());
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return fail(ProblemCode::Unavailable, "the file cannot be read", name,
                    "Look whether you may read it, or choose another");
    Attachment photo;
    photo.bytes = file.read(static_cast<qint64>(attachmentLimit) + 1).toStdString();
    if (const auto fits = fitsAsAttachment(name, photo.bytes.size()); !fits)
        return tl::unexpected(fits.error());
    auto type = photoType(name, photo.bytes);
    if (!type) return tl::unexpected(type.error());
    photo.name = harmlessFileName(name);
    photo.mediaType = *type;
    return photo;
}

Result<QString> saveOut(const Attachment& attachment, const QString& folder) {
    const QString name = text::words(harmlessFileName(attachment.name));
    const QString stem = QFileInfo(name).completeBaseName();
    const QString suffix = QFileInfo(name).suffix();
    const auto numbered = [&](int number) {
        const QString last = suffix.isEmpty() ? QString() : QLatin1Char('.') + suffix;
        return QDir(folder).filePath(
            number == 1 ? name : QStringLiteral("%1 (%2)%3").arg(stem).arg(number).arg(last));
    };
    constexpr int most = 1000;
    for (int number = 1; number <= most; ++number) {
        QFile file(numbered(number));
        if (file.exists()) continue;
        if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly)) break;
        const auto size = static_cast<qint64>(attachment.bytes.size());
        if (file.write(attachment.bytes.data(), size) == size && file.flush()) return file.fileName();
        file.remove();
        break;
    }
    return fail(ProblemCode::Unavailable, "the file cannot be written", text::utf8(folder),
                "Choose a folder you may write to, with room on it");
}

}  // namespace arc::ui
