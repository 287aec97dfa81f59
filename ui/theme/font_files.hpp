// SPDX-License-Identifier: GPL-3.0-or-later
// Which installed font files a program of ours sees. The package of our typeface also files its monospaced
// cut under the plain family name, and Qt then takes that one for running text.
#pragma once
#include <QByteArray>
#include <QTemporaryFile>

namespace arc::ui {

/// Make one before the application object and keep it until fonts were first asked for. Does nothing when
/// FONTCONFIG_FILE is set by somebody else.
class FontFiles {
  public:
    FontFiles();
    ~FontFiles();
    FontFiles(const FontFiles&) = delete;
    FontFiles& operator=(const FontFiles&) = delete;

  private:
    QTemporaryFile m_rules;
};

}  // namespace arc::ui
