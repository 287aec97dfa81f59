// SPDX-License-Identifier: GPL-3.0-or-later
// One thing a care card asks to be written down: a number, a word, a choice or a photo.
#pragma once
#include <QWidget>

#include <string>
#include <vector>

#include "core/care/step.hpp"

class QLineEdit;
class QPushButton;

namespace arc::ui {

class FieldEdit : public QWidget {
    Q_OBJECT
  public:
    FieldEdit(const care::Field& field, const std::string& value, QWidget* parent = nullptr);
    [[nodiscard]] const care::Field& field() const { return m_field; }
    /// As it is stored: digits with a point, the choice's own word, the name of the photo file.
    [[nodiscard]] std::string value() const;
    /// Content of a chosen photo; empty when none was chosen.
    [[nodiscard]] const QByteArray& photo() const { return m_photo; }
    void takeFocus();
    [[nodiscard]] bool hasKeyboard() const;

  Q_SIGNALS:
    /// Enter: go on with the next one.
    void done();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void choosePhoto();

    care::Field m_field;
    QLineEdit* m_line = nullptr;
    std::vector<QPushButton*> m_choices;
    QPushButton* m_photoButton = nullptr;
    QString m_photoName;
    QByteArray m_photo;
};

}  // namespace arc::ui
