// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kit/kit_page.hpp"

namespace arc::ui {

KitPage::KitPage(Session& /*session*/, QWidget* parent) : Page(parent) {}

}  // namespace arc::ui
