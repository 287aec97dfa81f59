// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kit/tool_dialogs.hpp"

#include <QComboBox>
#include <QDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <limits>

#include "ui/drift/words.hpp"
#include "ui/kit/tool_words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

enum Kind { MassSplicer, SingleSplicer, CleaverKind, StripperKind };

struct Frame {
    QDialog* dialog;
    QVBoxLayout* layout;
};

Frame frame(QWidget* parent, const QString& title, const QString& explain) {
    const Theme theme = currentTheme();
    auto* dialog = new QDialog(parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(title);
    auto* layout = new QVBoxLayout(dialog);
    layout->setContentsMargins(theme.px(24), theme.px(20), theme.px(24), theme.px(20));
    layout->setSpacing(theme.px(Gap::Middle));
    layout->addWidget(words(title, TextRole::Heading, dialog));
    auto* said = words(explain, TextRole::Soft, dialog);
    said->setWordWrap(true);
    layout->addWidget(said);
    return {dialog, layout};
}

/// The two buttons at the foot; answers the accepting one.
QPushButton* foot(const Frame& in, const QString& accept) {
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* leave = button(QDialog::tr("Leave it"), ButtonKind::Usual, in.dialog);
    leave->setAutoDefault(false);
    auto* yes = button(accept, ButtonKind::Primary, in.dialog);
    yes->setDefault(true);
    row->addWidget(leave);
    row->addWidget(yes);
    in.layout->addLayout(row);
    QObject::connect(leave, &QPushButton::clicked, in.dialog, &QDialog::reject);
    QObject::connect(yes, &QPushButton::clicked, in.dialog, &QDialog::accept);
    return yes;
}

void open(const Frame& in) {
    fitTo(*in.dialog, currentTheme().px(460));
    in.dialog->open();
}

QSpinBox* number(QDialog* dialog, const QString& name, int least, int most, int value) {
    auto* box = new QSpinBox(dialog);
    box->setRange(least, most);
    box->setValue(value);
    box->setAccessibleName(name);
    return box;
}

}  // namespace

void askNewTool(QWidget* parent, std::vector<std::string> taken,
                std::function<void(const NewTool&)> answered) {
    const auto in =
        frame(parent, QDialog::tr("Add a tool"),
              QDialog::tr("The label is what the crew and the files call it. It cannot be given twice."));
    in.dialog->setObjectName(QStringLiteral("add_tool"));
    auto* form = new QFormLayout;
    form->setSpacing(currentTheme().px(10));
    auto* kind = new QComboBox(in.dialog);
    kind->setAccessibleName(QDialog::tr("Kind of tool"));
    kind->addItems({QDialog::tr("Mass splicer"), QDialog::tr("Single-fibre splicer"), QDialog::tr("Cleaver"),
                    QDialog::tr("Ribbon stripper")});
    auto* label = new QLineEdit(in.dialog);
    label->setAccessibleName(QDialog::tr("Label"));
    label->setPlaceholderText(QStringLiteral("S-05"));
    label->setMaxLength(40);
    auto* nickname = new QLineEdit(in.dialog);
    nickname->setAccessibleName(QDialog::tr("Nickname"));
    nickname->setMaxLength(40);
    auto* grooves = number(in.dialog, QDialog::tr("Grooves"), 2, 16, 12);
    auto* control = new QComboBox(in.dialog);
    control->setAccessibleName(QDialog::tr("Arc control"));
    control->addItems({QDialog::tr("calibrated by hand"), QDialog::tr("adjusts itself at each splice")});
    auto* positions = number(in.dialog, QDialog::tr("Blade positions"), 1, 24, 16);
    auto* heights = number(in.dialog, QDialog::tr("Blade heights"), 1, 9, 3);
    form->addRow(QDialog::tr("Kind"), kind);
    form->addRow(QDialog::tr("Label"), label);
    form->addRow(QDialog::tr("Nickname"), nickname);
    form->addRow(QDialog::tr("Grooves"), grooves);
    form->addRow(QDialog::tr("Arc"), control);
    form->addRow(QDialog::tr("Blade positions"), positions);
    form->addRow(QDialog::tr("Blade heights"), heights);
    in.layout->addLayout(form);
    auto* said = words({}, TextRole::Small, in.dialog);
    setState(said, QStringLiteral("drifting"));
    in.layout->addWidget(said);
    auto* accept = foot(in, QDialog::tr("Add it"));
    const auto look = [=, taken = std::move(taken)] {
        const int chosen = kind->currentIndex();
        form->setRowVisible(grooves, chosen == MassSplicer);
        form->setRowVisible(control, chosen == MassSplicer || chosen == SingleSplicer);
        form->setRowVisible(positions, chosen == CleaverKind);
        form->setRowVisible(heights, chosen == CleaverKind);
        const bool twice = std::ranges::count(taken, text::utf8(label->text().trimmed())) > 0;
        said->setText(twice ? QDialog::tr("There is a tool of this label in the kit already.") : QString());
        said->setVisible(twice);
        accept->setEnabled(!twice && !label->text().trimmed().isEmpty());
    };
    QObject::connect(kind, &QComboBox::currentIndexChanged, in.dialog, look);
    QObject::connect(label, &QLineEdit::textChanged, in.dialog, look);
    look();
    QObject::connect(in.dialog, &QDialog::accepted, parent, [=, answered = std::move(answered)] {
        NewTool made{text::utf8(label->text().trimmed()), text::utf8(nickname->text().trimmed()), Stripper{}};
        const auto arc = control->currentIndex() == 0 ? ArcControl::Manual : ArcControl::SelfCalibrating;
        switch (kind->currentIndex()) {
            case MassSplicer:
                made.traits = Splicer{SplicerKind::MassFusion, grooves->value(), arc};
                break;
            case SingleSplicer:
                made.traits = Splicer{SplicerKind::SingleFibre, 1, arc};
                break;
            case CleaverKind:
                made.traits = Cleaver{positions->value(), heights->value()};
                break;
            default:
                break;
        }
        answered(made);
    });
    open(in);
    label->setFocus();
}

void askTool(QWidget* parent, const QString& title, const QString& explain, std::span<const Tool> tools,
             std::function<void(ToolId)> answered) {
    const auto in = frame(parent, title, explain);
    in.dialog->setObjectName(QStringLiteral("ask_tool"));
    for (const auto& tool : tools) {
        auto* choice = button(nameOf(tool), ButtonKind::Choice, in.dialog, iconOf(tool));
        QObject::connect(choice, &QPushButton::clicked, parent, [answered, id = tool.id, dialog = in.dialog] {
            dialog->accept();
            answered(id);
        });
        in.layout->addWidget(choice);
    }
    auto* leave = button(QDialog::tr("Leave it"), ButtonKind::Usual, in.dialog);
    QObject::connect(leave, &QPushButton::clicked, in.dialog, &QDialog::reject);
    in.layout->addWidget(leave, 0, Qt::AlignRight);
    open(in);
}

void askCounter(QWidget* parent, const QString& tool, std::optional<ArcCount> shows,
                std::function<void(ArcCount, const QString&)> answered) {
    const auto in = frame(
        parent, QDialog::tr("Correct the counter of %1").arg(tool),
        QDialog::tr("What the tool's own counter shows now. What was written before stays in the book."));
    in.dialog->setObjectName(QStringLiteral("ask_counter"));
    auto* value = number(in.dialog, QDialog::tr("Counter shows"), 0, std::numeric_limits<int>::max(),
                         shows ? static_cast<int>(shows->value) : 0);
    value->setGroupSeparatorShown(true);
    in.layout->addWidget(value);
    auto* reason = new QLineEdit(in.dialog);
    reason->setPlaceholderText(QDialog::tr("why: counter replaced, typed wrong, …"));
    reason->setAccessibleName(QDialog::tr("Reason"));
    in.layout->addWidget(reason);
    auto* accept = foot(in, QDialog::tr("Write it"));
    accept->setEnabled(false);
    QObject::connect(reason, &QLineEdit::textChanged, accept,
                     [accept](const QString& text) { accept->setEnabled(!text.trimmed().isEmpty()); });
    QObject::connect(in.dialog, &QDialog::accepted, parent, [value, reason, answered = std::move(answered)] {
        answered(ArcCount{static_cast<std::uint32_t>(value->value())}, reason->text().trimmed());
    });
    open(in);
    value->setFocus();
    value->selectAll();
}

}  // namespace arc::ui
