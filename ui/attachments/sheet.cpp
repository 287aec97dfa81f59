// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/attachments/sheet.hpp"

#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QImage>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "core/work/attachments.hpp"
#include "ui/attachments/photo_file.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr const char* noteType = "text/plain";

bool isNote(const Attachment& attachment) {
    return attachment.mediaType == noteType;
}

QString sizeOf(const Attachment& attachment) {
    const double kb = static_cast<double>(attachment.bytes.size()) / 1024;
    return kb < 1024 ? AttachmentSheet::tr("%1 KB").arg(text::number(std::max(kb, 1.0), 0))
                     : AttachmentSheet::tr("%1 MB").arg(text::number(kb / 1024, 1));
}

/// A note shows its first line, a photo its name.
QString lineOf(const Attachment& attachment) {
    if (!isNote(attachment))
        return QStringLiteral("%1, %2").arg(text::words(harmlessFileName(attachment.name)),
                                            sizeOf(attachment));
    return AttachmentSheet::tr("Note: %1")
        .arg(text::words(attachment.bytes).section(QLatin1Char('\n'), 0, 0).left(60));
}

}  // namespace

AttachmentSheet::AttachmentSheet(Session& session, std::vector<AttachmentSubject> subjects, QWidget* parent)
    : QDialog(parent), m_session(session), m_subjects(std::move(subjects)) {
    setWindowTitle(tr("Photos and notes"));
    setAccessibleName(windowTitle());
    build();
    read();
}

void AttachmentSheet::build() {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(24), theme.px(18), theme.px(24), theme.px(18));
    box->setSpacing(theme.px(10));
    box->addWidget(words(windowTitle(), TextRole::Heading, this));
    m_subject = new QComboBox(this);
    m_subject->setAccessibleName(tr("Attached to"));
    m_subject->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    for (const auto& subject : m_subjects) m_subject->addItem(subject.name);
    box->addWidget(m_subject);
    connect(m_subject, &QComboBox::currentIndexChanged, this, &AttachmentSheet::read);

    auto* middle = new QHBoxLayout;
    middle->setSpacing(theme.px(14));
    box->addLayout(middle, 1);
    m_list = new QListWidget(this);
    m_list->setAccessibleName(tr("Photos and notes"));
    m_list->setTextElideMode(Qt::ElideMiddle);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    middle->addWidget(m_list, 2);
    m_stack = new QStackedWidget(this);
    middle->addWidget(m_stack, 3);
    m_empty = words(tr("Nothing is attached yet. P adds a photo, N writes a note."), TextRole::Soft, m_stack);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignCenter);
    m_picture = words(QString(), TextRole::Soft, m_stack);
    m_picture->setAlignment(Qt::AlignCenter);
    m_picture->setWordWrap(true);
    m_picture->setMinimumSize(theme.px(220), theme.px(160));
    m_picture->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    m_text = new QPlainTextEdit(m_stack);
    m_text->setReadOnly(true);
    m_text->setTabChangesFocus(true);
    m_text->setAccessibleName(tr("The note"));
    m_note = new QPlainTextEdit(m_stack);
    m_note->setTabChangesFocus(true);
    m_note->setAccessibleName(tr("New note"));
    m_note->setPlaceholderText(tr("Write; Ctrl+Enter saves it"));
    for (QWidget* one : std::initializer_list<QWidget*>{m_empty, m_picture, m_text, m_note})
        m_stack->addWidget(one);

    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(8));
    auto* photo = button(tr("Add photo  P"), ButtonKind::Usual, this, QStringLiteral("add"));
    auto* note = button(tr("Write note  N"), ButtonKind::Usual, this, QStringLiteral("add"));
    m_saveOut = button(tr("Save out  S"), ButtonKind::Usual, this, QStringLiteral("export"));
    m_takeBack = button(tr("Take back  Del"), ButtonKind::Usual, this);
    auto* leave = button(tr("Close  Esc"), ButtonKind::Usual, this);
    for (auto* one : {photo, note, m_saveOut, m_takeBack, leave}) {
        one->setAutoDefault(false);
        one->setMinimumHeight(theme.px(Touch::Usual) + theme.px(4));
        row->addWidget(one);
    }
    box->addLayout(row);
    m_said = words(QString(), TextRole::Body, this);
    m_said->setWordWrap(true);
    box->addWidget(m_said);
    connect(photo, &QPushButton::clicked, this, &AttachmentSheet::addPhoto);
    connect(note, &QPushButton::clicked, this, &AttachmentSheet::addNote);
    connect(m_saveOut, &QPushButton::clicked, this, &AttachmentSheet::saveOutChosen);
    connect(m_takeBack, &QPushButton::clicked, this, &AttachmentSheet::takeBack);
    connect(leave, &QPushButton::clicked, this, &AttachmentSheet::reject);
    connect(m_list, &QListWidget::currentRowChanged, this, &AttachmentSheet::show);
    for (QWidget* one : std::initializer_list<QWidget*>{m_list, m_note, m_subject})
        one->installEventFilter(this);
    fitTo(*this, {theme.px(900), theme.px(540)});
    m_list->setFocus();
}

// --- showing -----------------------------------------------------------------------------------------------

QString AttachmentSheet::said() const {
    return m_said->text();
}

void AttachmentSheet::tell(const Problem& problem) {
    QString said = text::spoken(problem);
    if (!said.isEmpty()) said[0] = said[0].toUpper();
    m_said->setText(said);
    setState(m_said, QStringLiteral("drifting"));
}

void AttachmentSheet::read() {
    const auto index = static_cast<std::size_t>(std::max(0, m_subject->currentIndex()));
    if (index >= m_subjects.size()) return;
    auto list = m_session.book().attachments(m_subjects[index].id);
    if (!list) return tell(list.error());
    m_attachments = std::move(*list);
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const auto& attachment : m_attachments) m_list->addItem(lineOf(attachment));
    m_list->setCurrentRow(static_cast<int>(m_attachments.size()) - 1);
    show(m_list->currentRow());
}

const Attachment* AttachmentSheet::chosen() const {
    const int row = m_list->currentRow();
    return row < 0 || static_cast<std::size_t>(row) >= m_attachments.size()
               ? nullptr
               : &m_attachments[static_cast<std::size_t>(row)];
}

void AttachmentSheet::show(int) {
    const Attachment* one = chosen();
    m_saveOut->setEnabled(one != nullptr);
    m_takeBack->setEnabled(one != nullptr);
    if (!one) return m_stack->setCurrentWidget(m_empty);
    if (isNote(*one)) {
        m_text->setPlainText(text::words(one->bytes));
        return m_stack->setCurrentWidget(m_text);
    }
    m_stack->setCurrentWidget(m_picture);
    const QImage image = QImage::fromData(QByteArray::fromStdString(one->bytes));
    if (image.isNull()) {
        m_picture->setPixmap({});
        m_picture->setText(tr("This picture cannot be shown here. S saves it out as it is."));
        return;
    }
    const double ratio = devicePixelRatioF();
    QPixmap scaled = QPixmap::fromImage(
        image.scaled(m_picture->size() * ratio, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    scaled.setDevicePixelRatio(ratio);
    m_picture->setPixmap(scaled);
    m_picture->setAccessibleName(
        tr("Picture %1, %2 by %3 pixels").arg(text::words(one->name)).arg(image.width()).arg(image.height()));
}

void AttachmentSheet::resizeEvent(QResizeEvent* event) {
    QDialog::resizeEvent(event);
    if (m_stack->currentWidget() == m_picture) show(m_list->currentRow());
}

// --- adding and taking back --------------------------------------------------------------------------------

void AttachmentSheet::add(Attachment attachment) {
    attachment.id = m_session.newId<EntryId>();
    attachment.of = m_subjects[static_cast<std::size_t>(std::max(0, m_subject->currentIndex()))].id;
    if (!m_session.save(Entry{attachment}))
        return tell(Problem{ProblemCode::Unavailable, "not saved", "", "Try it again"});
    m_said->setText(tr("Saved."));
    setState(m_said, QStringLiteral("steady"));
    read();
    m_list->setFocus();
}

void AttachmentSheet::addPhoto() {
    chooseFiles(this, tr("Photo"), photoFilters(), [this](const QStringList& files) {
        for (const QString& file : files) {
            auto photo = photoFrom(file);
            if (!photo) return tell(photo.error());
            add(std::move(*photo));
        }
    });
}

void AttachmentSheet::addNote() {
    m_stack->setCurrentWidget(m_note);
    m_note->setFocus();
}

void AttachmentSheet::saveNote() {
    const QString written = m_note->toPlainText().trimmed();
    if (written.isEmpty())
        return tell(Problem{ProblemCode::BadInput, "the note is empty", "", "Write it, or Esc leaves it"});
    Attachment note;
    note.name = "note.txt";
    note.mediaType = noteType;
    note.bytes = text::utf8(written);
    if (const auto fits = fitsAsAttachment(note.name, note.bytes.size()); !fits) return tell(fits.error());
    const auto before = m_attachments.size();
    add(std::move(note));
    if (m_attachments.size() > before) m_note->clear();
}

void AttachmentSheet::saveOutChosen() {
    const Attachment* one = chosen();
    if (!one) return;
    chooseFolder(this, tr("Save out into"), {}, [this, attachment = *one](const QString& folder) {
        const auto file = saveOut(attachment, folder);
        if (!file) return tell(file.error());
        m_said->setText(tr("Saved out as %1").arg(*file));
        setState(m_said, QStringLiteral("steady"));
    });
}

void AttachmentSheet::takeBack() {
    const Attachment* one = chosen();
    if (!one) return;
    const Attachment gone = *one;
    if (!m_session.save({Withdrawal{gone.id.uuid, "attachment taken back"}}, Undo::Offered, {gone},
                        tr("Taken back: %1").arg(lineOf(gone))))
        return tell(Problem{ProblemCode::Unavailable, "not saved", "", "Try it again"});
    m_said->setText(tr("Taken back. Undo brings it again."));
    setState(m_said, QString());
    read();
}

// --- keys --------------------------------------------------------------------------------------------------

void AttachmentSheet::reject() {
    const bool unsaved = !m_note->toPlainText().trimmed().isEmpty();
    if (unsaved && m_dropping == Dropping::NotAsked) {
        m_dropping = Dropping::Asked;
        addNote();
        return tell(Problem{ProblemCode::Refused, "the note is not saved yet", "",
                            "Ctrl+Enter saves it, Esc once more drops it"});
    }
    QDialog::reject();
}

bool AttachmentSheet::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (watched == m_note) {
        const bool leaves = key->key() == Qt::Key_Escape;
        if (leaves && m_note->toPlainText().trimmed().isEmpty()) {
            show(m_list->currentRow());
            m_list->setFocus();
            return true;
        }
        if (!leaves) m_dropping = Dropping::NotAsked;
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (!enter || !(key->modifiers() & Qt::ControlModifier)) return false;
        saveNote();
        return true;
    }
    switch (key->key()) {
        case Qt::Key_P:
            addPhoto();
            return true;
        case Qt::Key_N:
            addNote();
            return true;
        case Qt::Key_S:
            saveOutChosen();
            return true;
        case Qt::Key_Delete:
            takeBack();
            return true;
        default:
            return false;
    }
}

Result<bool> takesAttachments(Logbook& book, const Uuid& record) {
    const auto arc = book.arc(ArcId{record});
    if (!arc) return tl::unexpected(arc.error());
    if (*arc) return true;
    const auto cares = book.careRecords(std::nullopt);
    if (!cares) return tl::unexpected(cares.error());
    if (std::ranges::any_of(*cares, [&](const CareRecord& care) { return care.id.uuid == record; }))
        return true;
    const auto jobs = book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    for (const Job& job : *jobs) {
        const auto closures = book.closures(job.id);
        if (!closures) return tl::unexpected(closures.error());
        if (std::ranges::any_of(*closures, [&](const Closure& one) { return one.id.uuid == record; }))
            return true;
    }
    return false;
}

AttachmentSheet* openAttachments(Session& session, std::vector<AttachmentSubject> subjects, QWidget* over) {
    auto* sheet = new AttachmentSheet(session, std::move(subjects), over);
    sheet->setAttribute(Qt::WA_DeleteOnClose);
    sheet->open();
    return sheet;
}

}  // namespace arc::ui
