// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/table_file.hpp"

#include <QFile>
#include <QFileInfo>

#include "ui/text/format.hpp"

namespace arc::ui {

Result<std::string> tableText(const QString& name) {
    constexpr qint64 most = 1 << 20;
    const std::string where = text::utf8(QFileInfo(name).fileName());
    if (name.contains(QLatin1String(".arcbook")))
        return fail(ProblemCode::BadInput, "this is a logbook, not a table", where);
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return fail(ProblemCode::Unavailable, "the file cannot be read", where, "Choose another file");
    if (file.size() > most)
        return fail(ProblemCode::BadInput, "the file is too large for such a table", where);
    return file.readAll().toStdString();
}

}  // namespace arc::ui
