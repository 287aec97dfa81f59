// SPDX-License-Identifier: GPL-3.0-or-later
// Photos and notes of a splice, a closure or a care record: looked at, added, saved out, taken back. By
// keyboard: P photo, N note, S save out, Delete take back, Esc leaves.
#pragma once
#include <QDialog>

#include <vector>

#include "ui/shell/session.hpp"

class QComboBox;
class QLabel;
class QListWidget;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace arc::ui {

/// A record things can be attached to, and its name for people.
struct AttachmentSubject {
    Uuid id;
    QString name;
};

class AttachmentSheet : public QDialog {
    Q_OBJECT
  public:
    /// At least one subject; the first is shown.
    AttachmentSheet(Session& session, std::vector<AttachmentSubject> subjects, QWidget* parent = nullptr);

    /// The sentence at the foot.
    [[nodiscard]] QString said() const;

  public Q_SLOTS:
    void reject() override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void build();
    void read();
    void show(int row);
    void addPhoto();
    void addNote();
    void saveNote();
    void saveOutChosen();
    void takeBack();
    void tell(const Problem& problem);
    void add(Attachment attachment);
    [[nodiscard]] const Attachment* chosen() const;

    Session& m_session;
    std::vector<AttachmentSubject> m_subjects;
    std::vector<Attachment> m_attachments;
    QComboBox* m_subject = nullptr;
    QListWidget* m_list = nullptr;
    QStackedWidget* m_stack = nullptr;
    QLabel* m_picture = nullptr;
    QPlainTextEdit* m_text = nullptr;
    QPlainTextEdit* m_note = nullptr;
    QLabel* m_empty = nullptr;
    QLabel* m_said = nullptr;
    QPushButton* m_saveOut = nullptr;
    QPushButton* m_takeBack = nullptr;
    enum class Dropping { NotAsked, Asked } m_dropping = Dropping::NotAsked;
};

/// Photos and notes belong to a splice, a closure or a care record; other records take none.
Result<bool> takesAttachments(Logbook& book, const Uuid& record);

/// Opens the sheet over `over` and answers it; it goes away by itself.
AttachmentSheet* openAttachments(Session& session, std::vector<AttachmentSubject> subjects, QWidget* over);

}  // namespace arc::ui
