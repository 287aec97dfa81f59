// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/typeface.hpp"

#include <QFile>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QtEndian>

namespace arc::ui {
namespace {

constexpr const char* files[] = {"/usr/share/fonts/opentype/b612/B612-Regular.otf",
                                 "/usr/share/fonts/opentype/b612/B612-Bold.otf"};
constexpr qsizetype headerBytes = 12;
constexpr qsizetype entryBytes = 16;

QString load() {
    QString family;
    for (const auto* name : files) {
        QFile file{QLatin1String(name)};
        if (!file.open(QIODevice::ReadOnly)) continue;
        const QByteArray font = underOwnName(file.readAll());
        if (font.isEmpty()) continue;
        const QStringList given =
            QFontDatabase::applicationFontFamilies(QFontDatabase::addApplicationFontFromData(font));
        if (!given.isEmpty()) family = given.front();
    }
    if (!family.isEmpty()) return family;
    const QString second = QStringLiteral("DejaVu Sans");
    return QFontDatabase::families().contains(second) ? second : QGuiApplication::font().family();
}

}  // namespace

QByteArray underOwnName(QByteArray font) {
    // OpenType: a table directory of 16-byte entries (tag, checksum, offset, length) after a 12-byte header.
    if (font.size() < headerBytes) return {};
    const auto number = [&](qsizetype at) {
        return static_cast<qsizetype>(qFromBigEndian<quint32>(font.constData() + at));
    };
    const auto tables = static_cast<qsizetype>(qFromBigEndian<quint16>(font.constData() + 4));
    if (font.size() < headerBytes + tables * entryBytes) return {};
    bool found = false;
    for (qsizetype i = 0; i < tables; ++i) {
        const qsizetype entry = headerBytes + i * entryBytes;
        if (font.mid(entry, 4) != "name") continue;
        const qsizetype from = number(entry + 8);
        const qsizetype length = number(entry + 12);
        if (from + length > font.size()) return {};
        QByteArray names = font.mid(from, length);
        const QByteArray wide("\0B\0006\0001\0002", 8);
        found = names.contains(wide) || names.contains("B612");
        names.replace(wide, QByteArray("\0A\0006\0001\0002", 8));
        names.replace("B612", "A612");
        font.replace(from, length, names);
    }
    return found ? font : QByteArray();
}

QString typeface() {
    static QString family;
    // Added fonts go away with the application object, and a headless program may make a second one.
    if (family.isEmpty() || !QFontDatabase::hasFamily(family)) family = load();
    return family;
}

}  // namespace arc::ui
