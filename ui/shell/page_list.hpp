// SPDX-License-Identifier: GPL-3.0-or-later
// The table of pages: key, icon and who makes each. Rail, keys and pictures are made from it.
#pragma once
#include <QKeySequence>

#include <span>

#include "ui/shell/screen.hpp"

class QWidget;

namespace arc::ui {

class Page;
class Session;

struct PageRow {
    Screen screen;
    Qt::Key key;       ///< F2 … F7
    const char* icon;  ///< name in resources/icons
    Page* (*make)(Session& session, QWidget* parent);
};

/// In the order of the rail.
std::span<const PageRow> pageList();

}  // namespace arc::ui
