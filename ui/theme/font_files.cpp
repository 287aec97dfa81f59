// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/font_files.hpp"

namespace arc::ui {
namespace {

constexpr const char* variable = "FONTCONFIG_FILE";
constexpr const char* rules = R"(<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
<include ignore_missing="yes">/etc/fonts/fonts.conf</include>
<selectfont><rejectfont><pattern>
<patelt name="family"><string>B612 Mono</string></patelt>
</pattern></rejectfont></selectfont>
</fontconfig>
)";

}  // namespace

FontFiles::FontFiles() {
    if (qEnvironmentVariableIsSet(variable)) return;
    if (!m_rules.open() || m_rules.write(rules) < 0 || !m_rules.flush()) return;
    qputenv(variable, m_rules.fileName().toUtf8());
}

FontFiles::~FontFiles() {
    // Programs started by us must not look for a file that is gone.
    if (qgetenv(variable) == m_rules.fileName().toUtf8()) qunsetenv(variable);
}

}  // namespace arc::ui
