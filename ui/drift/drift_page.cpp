// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/drift_page.hpp"

namespace arc::ui {

DriftPage::DriftPage(Session& /*session*/, QWidget* parent) : Page(parent) {}

}  // namespace arc::ui
