// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/page_list.hpp"

#include "ui/care/care_page.hpp"
#include "ui/closeout/closeout_page.hpp"
#include "ui/drift/drift_page.hpp"
#include "ui/kit/kit_page.hpp"
#include "ui/logbook/logbook_page.hpp"
#include "ui/today/today_page.hpp"

namespace arc::ui {
namespace {

template <class P>
Page* make(Session& session, QWidget* parent) {
    return new P(session, parent);
}

constexpr PageRow rows[] = {
    {Screen::Today, Qt::Key_F2, "today", make<TodayPage>},
    {Screen::Kit, Qt::Key_F3, "kit", make<KitPage>},
    {Screen::Care, Qt::Key_F4, "care", make<CarePage>},
    {Screen::Drift, Qt::Key_F5, "drift", make<DriftPage>},
    {Screen::Closeout, Qt::Key_F6, "closeout", make<CloseoutPage>},
    {Screen::Logbook, Qt::Key_F7, "logbook", make<LogbookPage>},
};

}  // namespace

std::span<const PageRow> pageList() {
    return rows;
}

}  // namespace arc::ui
