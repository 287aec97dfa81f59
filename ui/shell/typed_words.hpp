// SPDX-License-Identifier: GPL-3.0-or-later
// What a person typed and nobody has written down yet: the window asks before it makes its pages anew.
#pragma once
#include <QString>

class QWidget;

namespace arc::ui {

/// The name of a visible field with words in it that stand nowhere else, or the title of an open dialog;
/// empty when nothing would be lost. What the loss pad holds is kept as a draft and does not count.
QString unsavedWords(const QWidget& window);

/// Words in this field are passing: a search, a filter.
void markPassing(QWidget& field);

}  // namespace arc::ui
