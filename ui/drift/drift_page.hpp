// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

namespace arc::ui {

class DriftPage : public Page {
    Q_OBJECT
  public:
    explicit DriftPage(Session& session, QWidget* parent = nullptr);
};

}  // namespace arc::ui
