// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/loss_pad.hpp"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/pad_rows.hpp"
#include "ui/today/pad_view.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/today/sitting.hpp"
#include "ui/widgets/empty_state.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

LossPad::LossPad(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    const Theme theme = currentTheme();
    setProperty("ground", QStringLiteral("card"));
    setFocusPolicy(Qt::StrongFocus);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(1, theme.px(6), 1, theme.px(10));
    box->setSpacing(0);
    m_rows = new PadRows(this);
    box->addWidget(m_rows, 1);
    m_noClosure = new EmptyState(QStringLiteral("today"), tr("No closure on the table"),
                                 tr("A splice is written down for a closure of the job. Make the first one; "
                                    "its label is enough. S chooses another job or closure."),
                                 this);
    auto* make = m_noClosure->addButton(tr("Make a closure  Enter"), QStringLiteral("add"));
    make->setFocusPolicy(Qt::NoFocus);
    connect(make, &QPushButton::clicked, this, &LossPad::closureAsked);
    box->addWidget(m_noClosure, 1);
    m_noClosure->hide();
    connect(m_rows, &PadRows::chosen, this, [this](std::size_t inUnit) {
        setFocus();
        if (m_pad) take(m_pad->moveTo(m_pad->unitFirst(m_pad->current()) + inUnit));
    });

    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(theme.px(16), theme.px(8), theme.px(16), 0);
    foot->setSpacing(theme.px(8));
    m_hint = words(QString(), TextRole::Body, this);
    m_hint->setWordWrap(true);
    foot->addWidget(m_hint);
    m_prompt = new PromptBar(this);
    foot->addWidget(m_prompt);
    m_buttons = new QWidget(this);
    auto* row = new QHBoxLayout(m_buttons);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.px(8));
    m_resplice = button(tr("Re-splice  R"), ButtonKind::Usual, m_buttons);
    m_keep = button(tr("Keep  K"), ButtonKind::Usual, m_buttons);
    m_void = button(tr("Void  V"), ButtonKind::Usual, m_buttons);
    m_split = button(tr("Split  T"), ButtonKind::Usual, m_buttons);
    m_keep->setToolTip(tr("Keep a splice over the limit, with a note"));
    m_split->setToolTip(tr("An attempt belongs to another fibre"));
    for (auto* one : {m_resplice, m_keep, m_void, m_split}) {
        one->setFocusPolicy(Qt::NoFocus);
        one->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
        row->addWidget(one, 1);
    }
    m_buttons->setFixedHeight(theme.px(Touch::Pad));
    foot->addWidget(m_buttons);
    box->addLayout(foot);

    connect(m_prompt, &PromptBar::closed, this, [this] {
        m_buttons->show();
        m_hint->show();
        setFocus();
    });
    connect(m_resplice, &QPushButton::clicked, this, &LossPad::askWhyResplice);
    connect(m_keep, &QPushButton::clicked, this, &LossPad::askToKeep);
    connect(m_void, &QPushButton::clicked, this, &LossPad::askToVoid);
    connect(m_split, &QPushButton::clicked, this, &LossPad::askToSplit);
    addActions();
}

void LossPad::addActions() {
    auto& actions = m_session.actions();
    actions.add({QStringLiteral("today.resplice"),
                 tr("Re-splice this fibre or ribbon"),
                 Qt::Key_R,
                 {},
                 Screen::Today},
                this, [this] { askWhyResplice(); });
    actions.add(
        {QStringLiteral("today.keep"), tr("Keep a high splice with a note"), Qt::Key_K, {}, Screen::Today},
        this, [this] { askToKeep(); });
    actions.add(
        {QStringLiteral("today.void"), tr("Void a reading with a reason"), Qt::Key_V, {}, Screen::Today},
        this, [this] { askToVoid(); });
    actions.add({QStringLiteral("today.split"),
                 tr("Split attempts: one belongs to another fibre"),
                 Qt::Key_T,
                 {},
                 Screen::Today},
                this, [this] { askToSplit(); });
    actions.add({QStringLiteral("today.paste"),
                 tr("Paste the losses of a ribbon"),
                 QKeySequence::Paste,
                 {},
                 Screen::Today},
                this, [this] {
                    if (m_pad) take(m_pad->paste(QGuiApplication::clipboard()->text().toStdString()));
                });
}

void LossPad::setPad(pad::Pad pad) {
    m_pad = std::move(pad);
    m_problem.clear();
    refresh();
}

void LossPad::changeSetUp(const pad::SetUp& setUp) {
    if (!m_pad) return;
    m_pad->changeSetUp(setUp);
    refresh();
}

void LossPad::changeAverage(Loss sum, int count) {
    if (!m_pad) return;
    m_pad->changeAverage(sum, count);
    refresh();
}

void LossPad::setMarks(PadMarks marks) {
    m_marks = std::move(marks);
    refresh();
}

void LossPad::askPrompt(const QString& question, const std::vector<PromptField>& fields, const QString& doIt,
                        std::function<QString(const QStringList&)> answered) {
    m_buttons->hide();
    m_hint->hide();
    m_prompt->ask(question, fields, doIt, std::move(answered));
}

void LossPad::reload(const std::vector<SpliceArc>& arcs) {
    if (!m_pad) return;
    m_pad->reload(arcs);
    refresh();
}

void LossPad::written(const pad::Write& write) {
    if (!m_pad) return;
    m_problem.clear();
    m_pad->written(write);
    refresh();
    Q_EMIT typedChanged();
}

Draft LossPad::draft() const {
    Draft draft;
    if (!m_pad || m_pad->rows().empty()) return draft;
    draft.typed = m_pad->typed();
    draft.noted = m_pad->noted();
    draft.closure = m_pad->setUp().closure;
    std::size_t first = m_pad->current();
    for (std::size_t r = m_pad->rows().size(); r-- > 0;)
        if (m_pad->rows()[r].noted) first = r;
    draft.fibre = m_pad->rows()[first].fibre.nameA;
    return draft;
}

void LossPad::restore(const Draft& draft) {
    if (!m_pad || draft.empty() || draft.closure != m_pad->setUp().closure) return;
    for (std::size_t r = 0; r < m_pad->rows().size(); ++r) {
        if (m_pad->rows()[r].fibre.nameA != draft.fibre) continue;
        if (m_pad->moveTo(r)) m_pad->restore(draft.typed, draft.noted);
        m_problem = tr("Brought back from before: typed and not saved yet. Enter saves it, Esc drops it.");
        refresh();
        return;
    }
}

void LossPad::tell(const Problem& problem) {
    m_problem = text::spoken(problem);
    if (!m_problem.isEmpty()) m_problem[0] = m_problem[0].toUpper();
    refresh();
}

void LossPad::take(const Result<void>& done) {
    m_problem.clear();
    if (!done) {
        tell(done.error());
    } else {
        refresh();
    }
    Q_EMIT typedChanged();
}

QString LossPad::hint() const {
    return m_hint->text();
}

const PadRow* LossPad::currentRow() const {
    return m_rows->currentRow();
}

// --- keys --------------------------------------------------------------------------------------------------

void LossPad::enter() {
    if (!m_pad) return;
    m_problem.clear();
    const auto write = m_pad->enter(m_session.clock(), m_session.random());
    if (!write) return tell(write.error());
    Q_EMIT writeAsked(*write);
}

void LossPad::keyPressEvent(QKeyEvent* event) {
    if (!m_pad) return QFrame::keyPressEvent(event);
    if (m_pad->rows().empty()) {
        if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return closureAsked();
        return QFrame::keyPressEvent(event);
    }
    const auto step = [this](std::ptrdiff_t by) {
        const auto target = static_cast<std::ptrdiff_t>(m_pad->current()) + by;
        const auto last = static_cast<std::ptrdiff_t>(m_pad->rows().size()) - 1;
        take(m_pad->moveTo(static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(target, 0, last))));
    };
    const auto unit = static_cast<std::ptrdiff_t>(m_pad->setUp().unitSize);
    switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            return enter();
        case Qt::Key_Space:
            return take(m_pad->note());
        case Qt::Key_Backspace:
            m_pad->erase();
            return take({});
        case Qt::Key_Escape:
            m_pad->clear();
            return take({});
        case Qt::Key_Up:
            return step(-1);
        case Qt::Key_Down:
            return step(1);
        case Qt::Key_PageUp:
            return step(-unit);
        case Qt::Key_PageDown:
            return step(unit);
        case Qt::Key_Home:
            return take(m_pad->moveTo(m_pad->unitFirst(m_pad->current())));
        case Qt::Key_End:
            return take(m_pad->moveTo(m_pad->unitEnd(m_pad->current()) - 1));
        default:
            break;
    }
    const QString typed = event->text();
    const bool usable = typed.size() == 1 && (typed[0].isDigit() || QStringLiteral(".,-").contains(typed[0]));
    if (!usable) return QFrame::keyPressEvent(event);
    m_pad->type(typed[0].toLatin1());
    take({});
}

void LossPad::focusInEvent(QFocusEvent* event) {
    QFrame::focusInEvent(event);
    refresh();
}

void LossPad::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fitHint();
}

void LossPad::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    fitHint();
}

/// The rows take what is left over; without this a hint of two lines would be cut to one.
void LossPad::fitHint() {
    // Before it is shown the pad has no width of its own; the hint learns its own only after its layout did.
    if (!isVisible()) return;
    const int inside = contentsRect().width() - 2 - 2 * currentTheme().px(16);
    m_hint->setMinimumHeight(inside > 0 ? std::max(0, m_hint->heightForWidth(inside)) : 0);
}

void LossPad::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::StyleChange) update();
}

// --- showing -----------------------------------------------------------------------------------------------

void LossPad::refresh() {
    if (!m_pad) return;
    const auto preview = m_pad->preview();
    const auto& rows = m_pad->rows();
    const auto first = rows.empty() ? 0 : m_pad->unitFirst(m_pad->current());
    const auto end = rows.empty() ? 0 : m_pad->unitEnd(m_pad->current());
    m_rows->setVisible(!rows.empty());
    m_noClosure->setVisible(rows.empty());
    if (!m_prompt->isVisible()) m_buttons->setVisible(!rows.empty());
    std::vector<PadRowView> views;
    for (auto r = first; r < end; ++r) views.push_back(viewOf(*m_pad, r, preview, m_marks));
    m_rows->setViews(std::move(views), rows.empty() ? 0 : m_pad->current() - first);
    m_hint->setText(m_problem.isEmpty() ? usualHint(*m_pad, preview, m_marks) : m_problem);
    fitHint();
    setState(m_hint, m_problem.isEmpty() && preview.average == pad::AverageNow::Within ? QString()
                     : m_problem.isEmpty() ? QStringLiteral("watch")
                                           : QStringLiteral("drifting"));
    const auto* row = currentRow();
    setAccessibleName(row ? tr("Loss pad: %1").arg(row->accessibleName()) : tr("Loss pad"));
    setAccessibleDescription(m_hint->text());
    if (!rows.empty()) {
        const bool some = !rows[m_pad->current()].attempts.empty();
        m_resplice->setEnabled(some);
        m_void->setEnabled(some);
        m_split->setEnabled(some && rows.size() > 1);
        m_keep->setEnabled(m_pad->typed().empty() ? m_pad->keep("?").has_value()
                                                  : preview.verdict == Verdict::KeepBestWithNote);
    }
    Q_EMIT moved();
}

}  // namespace arc::ui
