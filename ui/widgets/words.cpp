// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/words.hpp"

#include <QFrame>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include <array>

#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

QLabel* words(const QString& text, TextRole role, QWidget* parent) {
    static constexpr std::array names{"body",  "title", "heading", "strong", "bold",
                                      "small", "soft",  "accent",  "digits", "huge"};
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setProperty("text_role", QString::fromLatin1(names[static_cast<std::size_t>(role)]));
    return label;
}

void setState(QLabel* label, const QString& state) {
    label->setProperty("state", state);
    restyle(label);
}

namespace {

/// Enter presses the button that has the keyboard, wherever it stands: Qt by itself leaves Enter to the
/// default button of a dialog, and to nobody on a page.
class EnterPresses final : public QPushButton {
  public:
    using QPushButton::QPushButton;

  protected:
    void keyPressEvent(QKeyEvent* event) override {
        const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
        // With another key held it means something else: Ctrl+Enter saves a sheet.
        if (!enter || (event->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier)
            QPushButton::keyPressEvent(event);
        else if (!event->isAutoRepeat())
            click();
    }
};

}  // namespace

QPushButton* button(const QString& text, ButtonKind kind, QWidget* parent, const QString& iconName) {
    static constexpr std::array names{"usual", "primary", "wide", "danger", "quiet", "choice"};
    auto* made = new EnterPresses(text, parent);
    made->setProperty("kind", QString::fromLatin1(names[static_cast<std::size_t>(kind)]));
    made->setAccessibleName(QString(text).remove(QLatin1Char('&')));
    made->setCursor(Qt::PointingHandCursor);
    if (!iconName.isEmpty()) {
        const Theme theme = currentTheme();
        const Role role = kind == ButtonKind::Primary  ? Role::OnAccent
                          : kind == ButtonKind::Danger ? Role::OnDrifting
                                                       : Role::Accent;
        made->setIcon(icon(iconName, theme.colour(role)));
        made->setIconSize({theme.px(18), theme.px(18)});
    }
    return made;
}

QFrame* card(QWidget* parent, Ground ground) {
    static constexpr std::array names{"card", "wash", "hold"};
    auto* frame = new QFrame(parent);
    frame->setProperty("ground", QString::fromLatin1(names[static_cast<std::size_t>(ground)]));
    const Theme theme = currentTheme();
    auto* layout = new QVBoxLayout(frame);
    layout->setContentsMargins(theme.px(22), theme.px(18), theme.px(22), theme.px(18));
    layout->setSpacing(theme.px(8));
    return frame;
}

QVBoxLayout* inside(QFrame* frame) {
    return qobject_cast<QVBoxLayout*>(frame->layout());
}

QVBoxLayout* pageLayout(QWidget* page) {
    const Theme theme = currentTheme();
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(theme.px(Gap::Edge), theme.px(20), theme.px(Gap::Edge), theme.px(20));
    layout->setSpacing(theme.px(Gap::Middle));
    return layout;
}

QFrame* line(QWidget* parent) {
    auto* frame = new QFrame(parent);
    frame->setProperty("ground", QStringLiteral("line"));
    frame->setFixedHeight(1);
    return frame;
}

void restyle(QWidget* widget) {
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    widget->update();
}

}  // namespace arc::ui
