// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/typed_words.hpp"

#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextDocument>

namespace arc::ui {
namespace {

constexpr const char* passingProperty = "passing";

}  // namespace

void markPassing(QWidget& field) {
    field.setProperty(passingProperty, true);
}

QString unsavedWords(const QWidget& window) {
    for (const auto* dialog : window.findChildren<QDialog*>())
        if (dialog->isVisible() && dialog->windowType() != Qt::Popup &&
            !dialog->property(passingProperty).toBool())
            return dialog->windowTitle();
    for (const auto* line : window.findChildren<QLineEdit*>())
        if (line->isVisible() && line->isModified() && !line->text().trimmed().isEmpty() &&
            !line->property(passingProperty).toBool() && line->window() == &window)
            return line->accessibleName().isEmpty() ? line->text() : line->accessibleName();
    for (const auto* edit : window.findChildren<QPlainTextEdit*>())
        if (edit->isVisible() && edit->document()->isModified() && !edit->toPlainText().trimmed().isEmpty())
            return edit->accessibleName();
    return {};
}

}  // namespace arc::ui
