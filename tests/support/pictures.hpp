// SPDX-License-Identifier: GPL-3.0-or-later
// With ARC_PICTURES set to a folder, tests leave pictures of what they saw there.
#pragma once
#include <QPixmap>
#include <QString>
#include <QWidget>

namespace arc::test {

inline void picture(QWidget& of, const QString& name) {
    const QString folder = qEnvironmentVariable("ARC_PICTURES");
    if (!folder.isEmpty()) of.grab().save(folder + QLatin1Char('/') + name + QStringLiteral(".png"));
}

}  // namespace arc::test
