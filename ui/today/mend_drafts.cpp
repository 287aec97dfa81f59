// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/mend_drafts.hpp"

#include <QSettings>
#include <QStringList>

#include "ui/text/format.hpp"

namespace arc::ui {

namespace {

/// Beside the memory of the sitting, in a file of its own: that one is written at every key.
QSettings memory() {
    return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("Arcwright"),
                     QStringLiteral("mends"));
}

/// Names hold a "/", which is a level of the settings.
QString keyOf(const std::string& name) {
    return text::words(name).replace(QLatin1Char('/'), QLatin1Char('.'));
}

const QString wholeRow = QStringLiteral("row"), cellByCell = QStringLiteral("cells");

}  // namespace

std::map<std::string, MendedRow> rememberedMends() {
    const QSettings s = memory();
    std::map<std::string, MendedRow> mends;
    for (const QString& key : s.allKeys()) {
        QStringList kept = s.value(key).toStringList();
        if (kept.size() < 2) continue;
        MendedRow row;
        const QString form = kept.takeFirst();
        if (form == wholeRow) row.text = text::utf8(kept.front());
        if (form == cellByCell)
            for (const QString& cell : kept) row.cells.push_back(text::utf8(cell));
        mends[text::utf8(QString(key).replace(QLatin1Char('.'), QLatin1Char('/')))] = std::move(row);
    }
    return mends;
}

void rememberMend(const std::string& name, const MendedRow& row) {
    QStringList kept;
    if (row.cells.empty())
        kept << wholeRow << text::words(row.text);
    else
        kept << cellByCell;
    for (const auto& cell : row.cells) kept << text::words(cell);
    QSettings s = memory();
    s.setValue(keyOf(name), kept);
    s.sync();
}

void forgetMend(const std::string& name) {
    QSettings s = memory();
    if (!s.contains(keyOf(name))) return;
    s.remove(keyOf(name));
    s.sync();
}

}  // namespace arc::ui
