// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/help.hpp"

#include <QAction>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <map>

#include "ui/shell/actions.hpp"
#include "ui/shell/help_pages.hpp"
#include "ui/shell/help_picture.hpp"
#include "ui/shell/measured_faults.hpp"
#include "ui/theme/icons.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr int pictureWidth = 560;

QWidget* scrolled(QWidget* content, const QString& name) {
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setAccessibleName(name);
    area->setWidget(content);
    return area;
}

/// The drawing over the lines.
QVBoxLayout* begin(QWidget* page, const QString& picture) {
    const Theme theme = currentTheme();
    page->setProperty("ground", QStringLiteral("paper"));
    auto* column = new QVBoxLayout(page);
    column->setSpacing(theme.px(10));
    const QPixmap drawn = helpPicture(picture, theme.px(pictureWidth), theme, page->devicePixelRatioF());
    if (!drawn.isNull()) {
        auto* label = new QLabel(page);
        label->setPixmap(drawn);
        column->addWidget(label);
    }
    return column;
}

QWidget* keysPage(const Actions& actions) {
    const Theme theme = currentTheme();
    auto* page = new QWidget;
    page->setProperty("ground", QStringLiteral("paper"));
    auto* grid = new QGridLayout(page);
    grid->setColumnStretch(1, 1);
    grid->setHorizontalSpacing(theme.px(20));
    grid->setVerticalSpacing(theme.px(8));
    std::map<int, std::vector<const Actions::Known*>> groups;
    for (const auto& known : actions.all())
        if (known.action && !known.row.key.isEmpty())
            groups[known.row.screen ? static_cast<int>(*known.row.screen) + 1 : 0].push_back(&known);
    int row = 0;
    for (const auto& [group, members] : groups) {
        const QString title = group == 0 ? Help::tr("Everywhere") : titleOf(static_cast<Screen>(group - 1));
        grid->addWidget(words(title, TextRole::Strong, page), row++, 0, 1, 2);
        for (const auto* known : members) {
            auto* key = words(known->row.key.toString(QKeySequence::NativeText), TextRole::Accent, page);
            key->setMinimumWidth(theme.px(120));
            grid->addWidget(key, row, 0);
            auto* text = words(known->action->text(), TextRole::Body, page);
            text->setWordWrap(true);
            grid->addWidget(text, row++, 1);
        }
        grid->addItem(new QSpacerItem(0, theme.px(8)), row++, 0);
    }
    grid->setRowStretch(row, 1);
    return scrolled(page, Help::tr("Keys"));
}

QWidget* statesPage() {
    const Theme theme = currentTheme();
    auto* page = new QWidget;
    auto* column = begin(page, QStringLiteral("decides"));
    const auto say = [&](const QString& text, TextRole role) {
        auto* label = words(text, role, page);
        label->setWordWrap(true);
        column->addWidget(label);
    };
    const std::pair<Mark, QString> states[] = {
        {Mark::Steady, Help::tr("The losses are what they were in the baseline. Go on.")},
        {Mark::Watch, Help::tr("Something moves, but it may be luck. Clean early; nothing has to stop.")},
        {Mark::Drifting, Help::tr("A chart has signalled. Do the care it names before the next closure.")},
        {Mark::Recovered, Help::tr("It drifted, care was done, and the losses came back down.")},
        {Mark::Learning, Help::tr("Fewer than 60 arcs yet: there is nothing to compare with.")},
    };
    for (const auto& [mark, text] : states) {
        auto* row = new QHBoxLayout;
        row->setSpacing(theme.px(Gap::Middle));
        row->addWidget(new StateMark(mark, page), 0, Qt::AlignTop);
        auto* word = words(wordOf(mark), TextRole::Bold, page);
        setState(word, stateName(mark));
        word->setMinimumWidth(theme.px(100));
        row->addWidget(word, 0, Qt::AlignTop);
        auto* label = words(text, TextRole::Body, page);
        label->setWordWrap(true);
        row->addWidget(label, 1);
        column->addLayout(row);
    }
    say(Help::tr("How it decides"), TextRole::Strong);
    say(Help::tr(
            "Every splicer is compared with its own past: a stretch of arcs, the baseline, says what its "
            "losses "
            "look like when all is well. Charts add up how far the newer losses lie above it: one chart for "
            "all "
            "grooves together, one for each groove alone, more for spread, cleave angles and re-splices."),
        TextRole::Body);
    say(Help::tr(
            "A chart speaks when its sum passes a limit. The limits are set so that all charts of a splicer "
            "together give about one false signal per so many arcs, the false-alarm budget. A smaller budget "
            "finds faults earlier and cries wolf more often."),
        TextRole::Body);
    say(Help::tr("A signal names when it probably began, with a span; what probably caused it, with the "
                 "other causes "
                 "and their weights; and the evidence, which you can check by hand. \"Likely\" means likely: "
                 "a cause is "
                 "never certain from losses alone, and the splicer's own losses are estimates."),
        TextRole::Body);
    say(Help::tr("After each care action the next arcs are compared with those before it, and the page says "
                 "whether "
                 "it helped."),
        TextRole::Body);
    say(Help::tr("What to expect of it"), TextRole::Strong);
    say(Help::tr("Measured on simulated logs, 100 of each fault, at one false signal in 1,000 arcs; no field "
                 "record is "
                 "behind these figures."),
        TextRole::Body);
    column->addWidget(measuredTable(page));
    say(Help::tr(
            "Its limits: slow electrode wear is found late and sometimes taken for something else. With one "
            "splicer alone on a job, a fibre and a machine that change together cannot be told apart: make a "
            "few "
            "splices on another splicer. Lots of fibre that differ much raise more false signals than "
            "promised."),
        TextRole::Body);
    column->addStretch();
    return scrolled(page, Help::tr("States and charts"));
}

QWidget* writtenPage(const HelpPage& written) {
    const Theme theme = currentTheme();
    auto* page = new QWidget;
    auto* column = begin(page, QString::fromLatin1(written.key));
    for (const auto& line : written.lines) {
        auto* label = words(helpWords(line.english),
                            line.kind == HelpKind::Heading ? TextRole::Strong : TextRole::Body, page);
        label->setWordWrap(true);
        if (line.kind == HelpKind::Text || line.kind == HelpKind::Heading) {
            column->addWidget(label);
            continue;
        }
        auto* row = new QHBoxLayout;
        row->setSpacing(theme.px(Gap::Middle));
        const bool caution = line.kind == HelpKind::Caution;
        auto* sign = new QLabel(page);
        sign->setPixmap(iconPixmap(caution ? QStringLiteral("warning") : QStringLiteral("forward"),
                                   theme.px(20), theme.colour(caution ? Role::Drifting : Role::Accent),
                                   page->devicePixelRatioF()));
        row->addWidget(sign, 0, Qt::AlignTop);
        row->addWidget(label, 1);
        column->addLayout(row);
    }
    column->addStretch();
    return scrolled(page, helpWords(written.title));
}

}  // namespace

Help::Help(const Actions& actions, const QString& page, QWidget* parent) : QDialog(parent) {
    const Theme theme = currentTheme();
    setWindowTitle(tr("Help"));
    setObjectName(QStringLiteral("help"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.px(24), theme.px(20), theme.px(24), theme.px(20));
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(Gap::Large));
    layout->addLayout(row, 1);
    m_list = new QListWidget(this);
    m_list->setAccessibleName(tr("Help pages"));
    m_list->setWordWrap(true);
    m_list->setFixedWidth(theme.px(220));
    m_stack = new QStackedWidget(this);
    row->addWidget(m_list);
    row->addWidget(m_stack, 1);
    const auto add = [&](const QString& key, const QString& title, QWidget* content) {
        auto* item = new QListWidgetItem(title, m_list);
        item->setData(Qt::UserRole, key);
        item->setSizeHint({theme.px(200), theme.px(Touch::Usual)});
        m_stack->addWidget(content);
        if (key == page) m_list->setCurrentItem(item);
    };
    add(QStringLiteral("keys"), tr("Keys"), keysPage(actions));
    for (const auto& one : helpPages())
        add(QString::fromLatin1(one.key), helpWords(one.title), writtenPage(one));
    add(QStringLiteral("decides"), tr("States and charts"), statesPage());
    connect(m_list, &QListWidget::currentRowChanged, m_stack, &QStackedWidget::setCurrentIndex);
    if (!m_list->currentItem()) m_list->setCurrentRow(0);
    m_stack->setCurrentIndex(m_list->currentRow());
    auto* away = button(tr("Close"), ButtonKind::Usual, this);
    connect(away, &QPushButton::clicked, this, &QDialog::accept);
    layout->addWidget(away, 0, Qt::AlignRight);
    fitTo(*this, {theme.px(900), theme.px(620)});
    m_list->setFocus();
}

}  // namespace arc::ui
