// SPDX-License-Identifier: GPL-3.0-or-later
// Labels, buttons and sheets in the house's own type, made in one line. The style sheet gives each its look.
#pragma once
#include <QString>

class QFrame;
class QLabel;
class QPushButton;
class QVBoxLayout;
class QWidget;

namespace arc::ui {

enum class TextRole { Body, Title, Heading, Strong, Bold, Small, Soft, Accent, Digits, Huge };
enum class ButtonKind { Usual, Primary, Wide, Danger, Quiet, Choice };
enum class Ground { Card, Wash, Hold };

QLabel* words(const QString& text, TextRole role, QWidget* parent = nullptr);
/// Gives the words the colour of a state: "steady", "watch", "drifting", "recovered", "learning"; see
/// stateName().
void setState(QLabel* label, const QString& state);

/// The accessible name is the text; `icon` is a name in resources/icons.
QPushButton* button(const QString& text, ButtonKind kind, QWidget* parent = nullptr,
                    const QString& icon = {});

/// A sheet on the page with the usual inner margins and a vertical layout, see inside().
QFrame* card(QWidget* parent = nullptr, Ground ground = Ground::Card);
QVBoxLayout* inside(QFrame* frame);
/// The vertical layout of a page with the house's outer margins.
QVBoxLayout* pageLayout(QWidget* page);
/// A hairline.
QFrame* line(QWidget* parent = nullptr);

/// Applies a style-sheet property that was changed after the widget was first shown.
void restyle(QWidget* widget);

}  // namespace arc::ui
