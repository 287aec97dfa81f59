// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/loss_pad.hpp"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/today/sitting.hpp"
#include "ui/widgets/fibre_swatch.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr std::size_t mostRows = 16;

/// Names of the columns, over the columns of the rows.
class PadHeader : public QWidget {
  public:
    explicit PadHeader(QWidget* parent) : QWidget(parent) {}
    [[nodiscard]] QSize sizeHint() const override { return {0, currentTheme().px(28)}; }

  protected:
    void paintEvent(QPaintEvent*) override {
        const Theme theme = currentTheme();
        const PadColumns at = PadColumns::in(width());
        QPainter painter(this);
        painter.setFont(theme.font(Text::Small));
        painter.setPen(theme.colour(Role::Soft));
        const auto put = [&](int x, const QString& name, Qt::Alignment align) {
            const int room = theme.px(160);
            const int left = align & Qt::AlignRight ? x - room : align & Qt::AlignHCenter ? x - room / 2 : x;
            painter.drawText(QRect(left, 0, room, height()), static_cast<int>(align | Qt::AlignVCenter),
                             name);
        };
        put(at.swatch, LossPad::tr("fibre"), Qt::AlignLeft);
        const QFontMetrics digits(theme.font(Text::Digits, Weight::Bold));
        put(at.point + digits.horizontalAdvance(QStringLiteral(".00")), LossPad::tr("loss dB"),
            Qt::AlignRight);
        put(at.attempt, LossPad::tr("attempt"), Qt::AlignHCenter);
        put(at.mark - theme.px(9), LossPad::tr("verdict"), Qt::AlignLeft);
    }
};

struct Shown {
    std::optional<Mark> mark;
    QString words;
};

Shown shown(Verdict verdict) {
    switch (verdict) {
        case Verdict::Accept:
            return {Mark::Steady, LossPad::tr("accept")};
        case Verdict::AcceptHigh:
            return {Mark::Watch, LossPad::tr("accept, high")};
        case Verdict::Resplice:
            return {Mark::Drifting, LossPad::tr("re-splice")};
        case Verdict::KeepBestWithNote:
            return {Mark::Drifting, LossPad::tr("high: note it")};
        case Verdict::OverCeiling:
            return {Mark::Drifting, LossPad::tr("over ceiling")};
    }
    return {};
}

Shown shown(pad::Standing standing) {
    switch (standing) {
        case pad::Standing::Waiting:
            return {};
        case pad::Standing::Noted:
            return {std::nullopt, LossPad::tr("Enter saves it")};
        case pad::Standing::Accepted:
            return shown(Verdict::Accept);
        case pad::Standing::AcceptedHigh:
            return shown(Verdict::AcceptHigh);
        case pad::Standing::TooHigh:
            return shown(Verdict::Resplice);
        case pad::Standing::Kept:
            return {Mark::Recovered, LossPad::tr("kept, noted")};
        case pad::Standing::OverCeiling:
            return shown(Verdict::OverCeiling);
    }
    return {};
}

void splitAtPoint(const QString& number, PadRowView& view) {
    const QString point = QLocale().decimalPoint();
    const auto at = number.indexOf(point);
    view.whole = at < 0 ? number : number.left(at);
    view.fraction = at < 0 ? QString() : number.mid(at + point.size());
}

QStringList respliceReasons() {
    return {LossPad::tr("high loss"), LossPad::tr("bubble or line"), LossPad::tr("bad cleave"),
            LossPad::tr("fibre broke"), LossPad::tr("sleeve misplaced")};
}

QStringList voidReasons() {
    return {LossPad::tr("typed at the wrong fibre"), LossPad::tr("fibre broke in the tray"),
            LossPad::tr("test splice"), LossPad::tr("entered twice")};
}

QStringList keepReasons() {
    return {LossPad::tr("same value on every attempt"), LossPad::tr("no fibre left to re-splice"),
            LossPad::tr("mismatched fibre, agreed with the client")};
}

}  // namespace

LossPad::LossPad(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    const Theme theme = currentTheme();
    setProperty("ground", QStringLiteral("card"));
    setFocusPolicy(Qt::StrongFocus);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(1, theme.px(6), 1, theme.px(10));
    box->setSpacing(0);
    m_header = new PadHeader(this);
    m_header->setFixedHeight(theme.px(28));
    box->addWidget(m_header);
    m_rowBox = new QVBoxLayout;
    m_rowBox->setSpacing(0);
    box->addLayout(m_rowBox, 1);
    for (std::size_t i = 0; i < mostRows; ++i) {
        auto* row = new PadRow(this);
        row->hide();
        m_rows.push_back(row);
        m_rowBox->addWidget(row, 1);
        connect(row, &PadRow::chosen, this, [this, i] {
            setFocus();
            if (!m_pad) return;
            take(m_pad->moveTo(m_pad->unitFirst(m_pad->current()) + i));
        });
    }
    box->addStretch();

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
    m_resplice = button(tr("Re-splice  R"), ButtonKind::Wide, m_buttons);
    m_keep = button(tr("Keep with a note  K"), ButtonKind::Wide, m_buttons);
    m_void = button(tr("Void  V"), ButtonKind::Wide, m_buttons);
    for (auto* one : {m_resplice, m_keep, m_void}) {
        one->setFocusPolicy(Qt::NoFocus);
        one->setMinimumHeight(theme.px(Touch::Pad) - theme.px(9));
        row->addWidget(one, 1);
    }
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
    const auto it = std::ranges::find_if(m_rows, [](const PadRow* row) {
        return row->view().emphasis == Emphasis::Current && !row->isHidden();
    });
    return it == m_rows.end() ? nullptr : *it;
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

void LossPad::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::StyleChange) update();
}

// --- questions ---------------------------------------------------------------------------------------------

void LossPad::askWhyResplice() {
    if (!m_pad || m_pad->rows().empty()) return;
    const auto& row = m_pad->rows()[m_pad->current()];
    if (row.attempts.empty())
        return tell(Problem{ProblemCode::Refused, "this fibre has no splice yet", "", "Type its loss"});
    const bool ribbon = m_pad->setUp().fibresPerArc > 1;
    askPrompt(ribbon ? tr("Re-splice the whole ribbon: why?")
                     : tr("Re-splice fibre %1: why?").arg(row.fibre.number),
              {{tr("Reason"), respliceReasons().first(), respliceReasons()}}, tr("Re-splice"),
              [this](const QStringList& answer) {
                  m_pad->askResplice(text::utf8(answer.first()));
                  take({});
                  return QString();
              });
}

void LossPad::askToKeep() {
    if (!m_pad || m_pad->rows().empty()) return;
    // Ask the rule first, so that nobody types a note in vain.
    const auto kept = [this](const std::string& reason) {
        return m_pad->typed().empty() ? m_pad->keep(reason)
                                      : m_pad->enterKept(reason, m_session.clock(), m_session.random());
    };
    if (const auto allowed = kept("?"); !allowed) return tell(allowed.error());
    askPrompt(tr("Keep it although it is over the limit: why?"), {{tr("Note"), {}, keepReasons()}},
              tr("Keep"), [this, kept](const QStringList& answer) {
                  const auto write = kept(text::utf8(answer.first()));
                  if (!write) return text::spoken(write.error());
                  Q_EMIT writeAsked(*write);
                  return QString();
              });
}

void LossPad::askToVoid() {
    if (!m_pad || m_pad->rows().empty()) return;
    if (const auto allowed = m_pad->voidReading("?"); !allowed) return tell(allowed.error());
    askPrompt(tr("Void the last reading of fibre %1: why?").arg(m_pad->rows()[m_pad->current()].fibre.number),
              {{tr("Reason"), {}, voidReasons()}}, tr("Void"), [this](const QStringList& answer) {
                  const auto write = m_pad->voidReading(text::utf8(answer.first()));
                  if (!write) return text::spoken(write.error());
                  Q_EMIT writeAsked(*write);
                  return QString();
              });
}

// --- showing -----------------------------------------------------------------------------------------------

PadRowView LossPad::viewOf(std::size_t r, const pad::Preview& preview) const {
    const pad::Row& row = m_pad->rows()[r];
    PadRowView view;
    view.number = row.fibre.number;
    view.look = row.fibre.look;
    view.colour = wordsOf(row.fibre.look);
    const bool current = r == m_pad->current();
    view.emphasis = current ? Emphasis::Current : Emphasis::None;
    QStringList earlier;
    const bool again = current && m_pad->typing() == pad::Typing::NextAttempt;
    for (std::size_t i = 0; i < row.attempts.size(); ++i)
        if (again || row.noted || i + 1 < row.attempts.size())
            earlier << text::loss(row.attempts[i].reading.loss);
    if (!earlier.isEmpty())
        view.earlier =
            tr("after %1")
                .arg(earlier.mid(std::max<qsizetype>(0, earlier.size() - 2)).join(QStringLiteral(", ")));

    if (current && preview.typed.kind != pad::TypedKind::Empty) {
        if (preview.typed.loss)
            splitAtPoint(text::loss(*preview.typed.loss), view);
        else
            splitAtPoint(text::words(m_pad->typed())
                             .replace(QLatin1Char('.'), QLocale().decimalPoint())
                             .replace(QLatin1Char(','), QLocale().decimalPoint()),
                         view);
        view.attempt = QString::number(preview.attempt);
        if (preview.verdict) {
            const auto judged = shown(*preview.verdict);
            view.mark = judged.mark;
            view.verdict = judged.words;
        }
        if (preview.typed.kind == pad::TypedKind::Impossible) {
            view.mark = Mark::Drifting;
            view.verdict = tr("cannot be");
        }
        return view;
    }
    if (row.noted) {
        splitAtPoint(text::loss(*row.noted), view);
        view.attempt = QString::number(row.attempts.empty() ? 1 : row.attempts.back().reading.attempt + 1);
        view.verdict = tr("Enter saves it");
        return view;
    }
    if (again) {
        view.attempt = row.attempts.empty() ? QString() : QString::number(preview.attempt);
        view.verdict = row.attempts.empty() ? tr("type digits, Enter") : tr("re-splice, then digits");
        return view;
    }
    if (row.attempts.empty()) return view;
    const auto& last = row.attempts.back().reading;
    splitAtPoint(text::loss(last.loss), view);
    view.attempt = QString::number(last.attempt);
    const auto stands = shown(m_pad->standing(r));
    view.mark = stands.mark;
    view.verdict = stands.words;
    return view;
}

QString LossPad::usualHint(const pad::Preview& preview) const {
    const auto& pad = *m_pad;
    if (pad.rows().empty())
        return tr("This closure has no fibres. Give it a cable or a splice plan in the set-up, S.");
    if (preview.typed.kind == pad::TypedKind::Impossible) return text::spoken(preview.typed.sentence);
    const QString average =
        preview.average == pad::AverageNow::Over
            ? tr("Average so far %1 dB, over the %2 agreed.")
                  .arg(text::meanLoss(preview.averageDb), text::loss(pad.setUp().rule.average))
            : QString();
    const auto standing = pad.standing(pad.current());
    const bool high = standing == pad::Standing::TooHigh || standing == pad::Standing::OverCeiling;
    QString next;
    if (pad.typing() == pad::Typing::NextAttempt && !pad.rows()[pad.current()].attempts.empty()) {
        QStringList names;
        for (auto r = pad.unitFirst(pad.current()); r < pad.unitEnd(pad.current()); ++r)
            if (const auto s = pad.standing(r);
                s == pad::Standing::TooHigh || s == pad::Standing::OverCeiling)
                names << tr("fibre %1 at %2")
                             .arg(pad.rows()[r].fibre.number)
                             .arg(text::loss(pad.rows()[r].attempts.back().reading.loss));
        if (pad.setUp().fibresPerArc > 1)
            next = names.isEmpty()
                       ? tr("Re-splice the ribbon, then type all its fibres. Esc leaves it as it is.")
                       : tr("%1: re-splice the ribbon and type it again, or K keeps it with a note.")
                             .arg(names.join(QStringLiteral(", ")));
        else
            next = tr("Re-splice and type the new loss, or K keeps it with a note.");
    } else if (pad.typing() == pad::Typing::Correction) {
        next = high ? tr("Digits correct this reading. R begins a re-splice.")
                    : tr("Digits correct this reading; R re-splice, V void.");
    } else if (!pad.noted().empty()) {
        next =
            tr("%n noted. Enter saves them, Esc drops them.", nullptr, static_cast<int>(pad.noted().size()));
    } else {
        next = pad.setUp().fibresPerArc > 1
                   ? tr("4 is 0.04. Enter saves each fibre; or Space between them and one Enter.")
                   : tr("4 is 0.04, 12 is 0.12. Enter saves.");
    }
    return average.isEmpty() ? next : average + QLatin1Char(' ') + next;
}

void LossPad::refresh() {
    if (!m_pad) return;
    const Theme theme = currentTheme();
    const auto preview = m_pad->preview();
    const auto& rows = m_pad->rows();
    const auto first = rows.empty() ? 0 : m_pad->unitFirst(m_pad->current());
    const auto end = rows.empty() ? 0 : m_pad->unitEnd(m_pad->current());
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const bool used = first + i < end;
        if (used) {
            m_rows[i]->setView(viewOf(first + i, preview));
            const bool current = first + i == m_pad->current();
            m_rows[i]->setMinimumHeight(theme.px(current ? 44 : 27));
            m_rows[i]->setMaximumHeight(theme.px(70));
        }
        m_rows[i]->setVisible(used);
    }
    m_hint->setText(m_problem.isEmpty() ? usualHint(preview) : m_problem);
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
        m_keep->setEnabled(m_pad->typed().empty() ? m_pad->keep("?").has_value()
                                                  : preview.verdict == Verdict::KeepBestWithNote);
    }
    Q_EMIT moved();
}

}  // namespace arc::ui
