// SPDX-License-Identifier: GPL-3.0-or-later
// Stands in for a page that is not made yet.
#pragma once
#include "ui/shell/page.hpp"

namespace arc::ui {

class Session;

class BlankPage : public Page {
    Q_OBJECT
  public:
    explicit BlankPage(Session& session, QWidget* parent = nullptr);
};

}  // namespace arc::ui
