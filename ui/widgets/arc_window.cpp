// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/arc_window.hpp"

#include <algorithm>

namespace arc::ui {
namespace {

/// Nearer than this many arcs there is nothing more to see.
constexpr double narrowest = 12;

}  // namespace

void ArcWindow::setWhole(double first, double last) {
    m_first = first;
    m_last = std::max(last, first + 1);
    m_cursor.reset();
    show(m_first, m_last);
}

void ArcWindow::show(double from, double to) {
    const double whole = m_last - m_first;
    const double span = std::clamp(to - from, std::min(narrowest, whole), whole);
    const double middle = (from + to) / 2;
    m_from = std::clamp(middle - span / 2, m_first, m_last - span);
    m_to = m_from + span;
    Q_EMIT changed();
}

void ArcWindow::zoom(double factor, double about) {
    const double span = (m_to - m_from) * factor;
    const double place = (about - m_from) / (m_to - m_from);
    show(about - place * span, about + (1 - place) * span);
}

void ArcWindow::pan(double share) {
    const double by = (m_to - m_from) * share;
    show(m_from + by, m_to + by);
}

void ArcWindow::setCursor(std::optional<double> arc) {
    if (arc) arc = std::clamp(*arc, m_first, m_last);
    if (arc == m_cursor) return;
    m_cursor = arc;
    if (arc && *arc < m_from) show(*arc, *arc + (m_to - m_from));
    if (arc && *arc > m_to) show(*arc - (m_to - m_from), *arc);
    Q_EMIT cursorChanged();
}

}  // namespace arc::ui
