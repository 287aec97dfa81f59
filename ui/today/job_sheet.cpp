// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/job_sheet.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

#include "core/work/fibre.hpp"
#include "core/work/plan.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/table_file.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/field_cell.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/typed_range.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

struct JobSheet::Drafted {
    Job job;
    std::optional<Closure> closure;
    std::vector<Entry> entries;
};

namespace {

constexpr int usualUnit = 12;  ///< fibres of a tube or ribbon
constexpr TypedRange lossLimits{0.001, 5}, attemptLimits{1, 20}, fibreLimits{1, 6912}, kmLimits{0, 20'000};

/// A crew with mass splicers alone works on ribbons.
bool splicesRibbonsOnly(Session& session) {
    const auto tools = session.take(session.book().tools());
    if (!tools) return false;
    const auto isMass = [](const Tool& tool) {
        const auto* splicer = asSplicer(tool);
        return splicer && splicer->kind == SplicerKind::MassFusion;
    };
    const auto isSingle = [&](const Tool& tool) { return asSplicer(tool) && !isMass(tool); };
    return std::ranges::any_of(*tools, isMass) && std::ranges::none_of(*tools, isSingle);
}

std::string trimmed(const QLineEdit& line) {
    return text::utf8(line.text().trimmed());
}

}  // namespace

JobSheet::JobSheet(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    outer->addWidget(sheet);
    outer->addStretch();
    auto* box = inside(sheet);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(20));
    grid->setVerticalSpacing(theme.px(2));
    // The names of jobs and rules are long.
    for (const int column : {0, 1, 2, 3}) grid->setColumnStretch(column, column % 3 == 0 ? 7 : 5);
    box->addLayout(grid);

    const auto edit = [&] { return new QLineEdit(sheet); };
    const auto combo = [&] { return new QComboBox(sheet); };
    m_which = combo();
    m_label = edit();
    m_title = edit();
    m_rule = combo();
    m_perSplice = edit();
    m_average = edit();
    m_ceiling = edit();
    m_attempts = edit();
    m_directions = combo();
    m_cable = combo();
    m_cableB = combo();
    m_closureWhich = combo();
    m_cableLabel = edit();
    m_fibres = edit();
    m_unit = combo();
    m_ribbon = combo();
    m_order = combo();
    m_fibreType = edit();
    m_length = edit();
    m_closure = edit();
    m_plan = edit();
    addField(*grid, 0, 0, tr("Job"), *m_which);
    addField(*grid, 0, 1, tr("Job label"), *m_label);
    addField(*grid, 0, 2, tr("Title for people"), *m_title);
    addField(*grid, 0, 3, tr("Acceptance rule"), *m_rule);
    addField(*grid, 1, 0, tr("Limit per splice, dB"), *m_perSplice);
    addField(*grid, 1, 1, tr("Average, dB"), *m_average);
    addField(*grid, 1, 2, tr("Ceiling, dB"), *m_ceiling);
    addField(*grid, 1, 3, tr("Attempts before keeping"), *m_attempts);
    addField(*grid, 2, 0, tr("Cable"), *m_cable);
    addField(*grid, 2, 1, tr("Cable label"), *m_cableLabel);
    addField(*grid, 2, 2, tr("Fibres in the cable"), *m_fibres);
    addField(*grid, 2, 3, tr("Tubes or ribbons"), *m_unit);
    addField(*grid, 3, 0, tr("How they are stripped"), *m_ribbon);
    addField(*grid, 3, 1, tr("Colour order"), *m_order);
    addField(*grid, 3, 2, tr("Fibre type"), *m_fibreType);
    addField(*grid, 3, 3, tr("Length, km"), *m_length);
    addField(*grid, 4, 0, tr("Closure"), *m_closureWhich);
    addField(*grid, 4, 1, tr("Closure label"), *m_closure);
    addField(*grid, 4, 2, tr("Cable on side B"), *m_cableB);
    addField(*grid, 4, 3, tr("Loss that counts"), *m_directions);
    addField(*grid, 5, 0, tr("Splice plan"), *m_plan, 3);
    auto* fromFile = button(tr("Plan from CSV…  Ctrl+O"), ButtonKind::Usual, sheet);
    grid->addWidget(fromFile, 5, 3, Qt::AlignVCenter);
    connect(fromFile, &QPushButton::clicked, this, &JobSheet::choosePlan);
    m_directions->addItem(tr("estimate, or one way"));
    m_directions->addItem(tr("mean of both ways"));
    m_plan->setPlaceholderText(tr("1-144 straight, or 1-12 to 25-36; 13-24 to 1-12"));
    m_length->setPlaceholderText(tr("may be empty"));
    m_title->setPlaceholderText(tr("may be empty"));
    for (const int size : {12, 8, 4, 24}) {
        m_unit->addItem(tr("tubes of %1").arg(size), size);
        m_unit->addItem(tr("ribbons of %1").arg(size), -size);
    }
    for (const auto& order : colourOrders()) m_order->addItem(text::words(order.name));

    m_said = words(QString(), TextRole::Body, sheet);
    m_said->setWordWrap(true);
    m_said->setMinimumHeight(theme.px(22));
    box->addWidget(m_said);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(theme.px(10));
    auto* take = button(tr("Save it and splice  Ctrl+Enter"), ButtonKind::Primary, sheet);
    auto* leave = button(tr("Leave  Esc"), ButtonKind::Wide, sheet);
    buttons->addWidget(take);
    buttons->addWidget(leave);
    buttons->addStretch();
    box->addLayout(buttons);

    connect(take, &QPushButton::clicked, this, &JobSheet::accept);
    connect(leave, &QPushButton::clicked, this, &JobSheet::left);
    // Choosing again what is chosen must not clear what was typed meanwhile.
    connect(m_which, &QComboBox::activated, this, [this](int index) {
        if (index != m_filledJob) fillFromJob();
    });
    connect(m_unit, &QComboBox::currentIndexChanged, this, [this] { offerRibbons({}); });
    offerRibbons({});
    connect(m_rule, &QComboBox::activated, this, [this](int index) {
        if (index >= 0 && static_cast<std::size_t>(index) < m_rules.size())
            fillRule(m_rules[static_cast<std::size_t>(index)]);
    });
    connect(m_closureWhich, &QComboBox::activated, this, [this](int index) {
        if (index != m_filledClosure) fillFromClosure();
    });
    connect(m_cable, &QComboBox::activated, this, [this](int index) {
        const bool fresh = index == 0;
        for (auto* part :
             std::initializer_list<QWidget*>{m_cableLabel, m_fibres, m_unit, m_order, m_fibreType, m_length})
            part->setEnabled(fresh);
        if (fresh) {
            m_unit->setCurrentIndex(std::max(0, m_unit->currentIndex()));
            return offerRibbons({});
        }
        if (static_cast<std::size_t>(index) > m_cables.size()) return;
        const auto& cable = m_cables[static_cast<std::size_t>(index - 1)];
        const int unit = m_unit->findData(cable.unit == FibreUnit::Ribbon ? -cable.unitSize : cable.unitSize);
        m_unit->setCurrentIndex(unit);
        offerRibbons(cable);
        m_cableLabel->setText(text::words(cable.label));
        m_fibres->setText(QString::number(cable.fibreCount));
        m_fibreType->setText(text::words(cable.fibreType));
        check();
    });
    m_sequence = {m_which,     m_label,  m_title,        m_rule,    m_perSplice, m_average,    m_ceiling,
                  m_attempts,  m_cable,  m_cableLabel,   m_fibres,  m_unit,      m_ribbon,     m_order,
                  m_fibreType, m_length, m_closureWhich, m_closure, m_cableB,    m_directions, m_plan};
    for (std::size_t i = 0; i < m_sequence.size(); ++i) {
        m_sequence[i]->installEventFilter(this);
        if (i > 0) setTabOrder(m_sequence[i - 1], m_sequence[i]);
        if (auto* line = qobject_cast<QLineEdit*>(m_sequence[i]))
            connect(line, &QLineEdit::textChanged, this, &JobSheet::check);
    }
    setTabOrder(m_plan, fromFile);
    setTabOrder(fromFile, take);
}

void JobSheet::begin(std::optional<JobId> job) {
    if (auto jobs = m_session.take(m_session.book().jobs())) m_jobs = std::move(*jobs);
    m_which->clear();
    m_which->addItem(tr("a new job"));
    for (const auto& one : m_jobs) {
        m_which->addItem(tr("add to %1").arg(text::words(one.label)));
        if (one.id == job) m_which->setCurrentIndex(m_which->count() - 1);
    }
    fillFromJob();
    // A job without closures wants one; all else has its usual value.
    const bool wantsClosure = m_which->currentIndex() > 0 && m_closures.empty();
    (wantsClosure ? static_cast<QWidget*>(m_closure) : m_which)->setFocus(Qt::OtherFocusReason);
}

void JobSheet::offerRibbons(const std::optional<Cable>& cable) {
    const bool ribbon = cable ? cable->unit == FibreUnit::Ribbon : m_unit->currentData().toInt() < 0;
    m_ribbon->clear();
    if (ribbon) {
        if (cable && !cable->ribbon) m_ribbon->addItem(tr("ribbon, not said which"));
        m_ribbon->addItem(tr("flat ribbon"), static_cast<int>(RibbonKind::Flat));
        m_ribbon->addItem(tr("web-type ribbon: clean after each strip"),
                          static_cast<int>(RibbonKind::WebType));
        if (cable && cable->ribbon)
            m_ribbon->setCurrentIndex(m_ribbon->findData(static_cast<int>(*cable->ribbon)));
    } else {
        m_ribbon->addItem(tr("loose; several at once are ribbonised"),
                          static_cast<int>(RibbonKind::RibbonisedTubes));
    }
    m_ribbon->setEnabled(ribbon);
}

std::optional<RibbonKind> JobSheet::ribbon() const {
    const QVariant chosen = m_ribbon->currentData();
    if (!chosen.isValid()) return std::nullopt;
    return static_cast<RibbonKind>(chosen.toInt());
}

void JobSheet::fillFromJob() {
    m_filledJob = m_which->currentIndex();
    const int index = m_which->currentIndex() - 1;
    m_cables.clear();
    m_closures.clear();
    m_cable->clear();
    m_cable->addItem(tr("a new cable"));
    m_cableB->clear();
    m_cableB->addItem(tr("none, or the same"));
    m_closureWhich->clear();
    m_closureWhich->addItem(tr("a new closure"));
    if (index < 0) {
        m_label->clear();
        m_title->clear();
        fillRules(sampleRuleFor(splicesRibbonsOnly(m_session) ? usualUnit : 1));
        offerCable();
    } else {
        const auto& job = m_jobs[static_cast<std::size_t>(index)];
        m_label->setText(text::words(job.label));
        m_title->setText(text::words(job.title));
        fillRules(job.rule);
        if (auto cables = m_session.take(m_session.book().cables(job.id))) m_cables = std::move(*cables);
        if (auto closures = m_session.take(m_session.book().closures(job.id)))
            m_closures = std::move(*closures);
        for (const auto& cable : m_cables)
            for (auto* one : {m_cable, m_cableB})
                one->addItem(tr("%1, %2 fibres").arg(text::words(cable.label)).arg(cable.fibreCount));
        for (const auto& closure : m_closures)
            m_closureWhich->addItem(tr("change %1").arg(text::words(closure.label)));
        m_closureWhich->addItem(tr("none, only the job"));
        if (m_cables.empty()) {
            offerCable();
        } else {
            m_cable->setCurrentIndex(1);
            Q_EMIT m_cable->activated(1);
        }
    }
    fillFromClosure();
    m_said->clear();
}

/// The usual one, to be changed.
void JobSheet::offerCable() {
    m_cable->setCurrentIndex(0);
    Q_EMIT m_cable->activated(0);
    m_unit->setCurrentIndex(m_unit->findData(splicesRibbonsOnly(m_session) ? -usualUnit : usualUnit));
    m_cableLabel->setText(QStringLiteral("A"));
    m_fibres->setText(QStringLiteral("144"));
    m_fibreType->setText(QStringLiteral("G.652.D"));
}

/// The samples and every contract of this logbook may be chosen; `own` is shown.
void JobSheet::fillRules(const AcceptanceRule& own) {
    m_rules = sampleRules();
    const auto offer = [this](const AcceptanceRule& rule) {
        if (std::ranges::find(m_rules, rule) == m_rules.end()) m_rules.push_back(rule);
    };
    for (const auto& job : m_jobs) offer(job.rule);
    offer(own);
    m_rule->clear();
    for (const auto& rule : m_rules) m_rule->addItem(text::words(rule.name));
    m_rule->setCurrentIndex(static_cast<int>(std::ranges::find(m_rules, own) - m_rules.begin()));
    fillRule(own);
}

void JobSheet::fillRule(const AcceptanceRule& rule) {
    m_perSplice->setText(text::loss(rule.perSplice));
    m_average->setText(text::loss(rule.average));
    m_ceiling->setText(text::loss(rule.ceiling));
    m_attempts->setText(QString::number(rule.attempts));
    m_directions->setCurrentIndex(rule.directions == Directions::TwoWay ? 1 : 0);
}

JobSheet::ClosureChoice JobSheet::closureChoice() const {
    const int index = m_closureWhich->currentIndex();
    if (index <= 0) return ClosureChoice::New;
    return static_cast<std::size_t>(index) <= m_closures.size() ? ClosureChoice::Known : ClosureChoice::None;
}

void JobSheet::fillFromClosure() {
    m_filledClosure = m_closureWhich->currentIndex();
    const auto choice = closureChoice();
    for (auto* part : std::initializer_list<QWidget*>{m_closure, m_plan, m_cableB, m_cable})
        part->setEnabled(choice != ClosureChoice::None);
    m_closure->clear();
    m_plan->clear();
    m_cableB->setCurrentIndex(0);
    if (choice != ClosureChoice::Known) return;
    const auto& closure = m_closures[static_cast<std::size_t>(m_closureWhich->currentIndex() - 1)];
    m_closure->setText(text::words(closure.label));
    m_plan->setText(text::words(planToText(closure.plan)));
    for (std::size_t i = 0; i < m_cables.size(); ++i) {
        const int at = static_cast<int>(i) + 1;
        if (m_cables[i].id == closure.cableA) {
            m_cable->setCurrentIndex(at);
            Q_EMIT m_cable->activated(at);
        }
        if (m_cables[i].id == closure.cableB) m_cableB->setCurrentIndex(at);
    }
}

void JobSheet::choosePlan() {
    chooseFiles(this, tr("Splice plan with the columns fibre_a and fibre_b"),
                {tr("Tables (*.csv *.txt *.tsv)"), tr("All files (*)")},
                [this](const QStringList& files) { readPlan(files.front()); });
}

void JobSheet::readPlan(const QString& name) {
    const auto refuse = [this](const Problem& problem) {
        m_said->setText(asLine(problem));
        setState(m_said, QStringLiteral("drifting"));
    };
    const auto csv = tableText(name);
    if (!csv) return refuse(csv.error());
    const auto plan = planFromCsv(*csv);
    if (!plan) return refuse(plan.error());
    m_plan->setText(text::words(planToText(*plan)));
    m_plan->setFocus(Qt::OtherFocusReason);
}

void JobSheet::check() {
    if (m_plan->text().trimmed().isEmpty()) return m_said->clear();
    const auto plan = planFromText(trimmed(*m_plan));
    if (!plan) {
        m_said->setText(text::spoken(plan.error()));
        setState(m_said, QStringLiteral("watch"));
        return;
    }
    const int count = static_cast<int>(text::typedNumber(m_fibres->text()).value_or(0));
    const int b = m_cableB->currentIndex();
    const auto fits =
        planFits(*plan, count, b > 0 ? m_cables[static_cast<std::size_t>(b - 1)].fibreCount : 0, 0);
    m_said->setText(fits ? tr("%1 splices planned: %2").arg(plan->size()).arg(text::words(planToText(*plan)))
                         : text::spoken(fits.error()));
    setState(m_said, fits ? QStringLiteral("steady") : QStringLiteral("watch"));
}

/// A rule that was changed by hand is the contract's, whatever it began as.
Result<AcceptanceRule> JobSheet::readRule(const std::string& jobLabel) {
    const auto loss = [](double db) { return Loss{static_cast<std::int32_t>(std::lround(db * 1000))}; };
    const auto chosen = static_cast<std::size_t>(std::max(0, m_rule->currentIndex()));
    const AcceptanceRule before = chosen < m_rules.size() ? m_rules[chosen] : AcceptanceRule{};
    AcceptanceRule rule = before;
    const auto perSplice = numberIn(*m_perSplice, lossLimits);
    if (!perSplice) return wrongIn(*m_perSplice, perSplice.error());
    const auto average = numberIn(*m_average, lossLimits);
    if (!average) return wrongIn(*m_average, average.error());
    const auto ceiling = numberIn(*m_ceiling, lossLimits);
    if (!ceiling) return wrongIn(*m_ceiling, ceiling.error());
    const auto attempts = wholeNumberIn(*m_attempts, attemptLimits);
    if (!attempts) return wrongIn(*m_attempts, attempts.error());
    rule.perSplice = loss(*perSplice);
    rule.average = loss(*average);
    rule.ceiling = loss(*ceiling);
    rule.attempts = *attempts;
    rule.directions = m_directions->currentIndex() == 1 ? Directions::TwoWay : Directions::OneWay;
    if (rule != before) {
        rule.name = "Contract of " + jobLabel;
        rule.origin = RuleOrigin::Contract;
    }
    return rule;
}

Result<Closure> JobSheet::readClosure(JobId job, std::optional<Cable>& freshCable) {
    const bool known = closureChoice() == ClosureChoice::Known;
    Closure closure;
    if (known) closure = m_closures[static_cast<std::size_t>(m_closureWhich->currentIndex() - 1)];
    if (!known) closure.id = m_session.newId<ClosureId>();
    closure.job = job;
    closure.label = trimmed(*m_closure);
    if (closure.label.empty())
        return wrongIn(*m_closure, {ProblemCode::BadInput, "the closure needs a label", "", ""});
    for (const auto& other : m_closures)
        if (other.label == closure.label && other.id != closure.id)
            return wrongIn(*m_closure,
                           {ProblemCode::BadInput, "this job has a closure " + other.label + " already", "",
                            "Choose it above to change it"});
    int fibres = 0;
    if (m_cable->currentIndex() > 0) {
        Cable cable = m_cables[static_cast<std::size_t>(m_cable->currentIndex() - 1)];
        closure.cableA = cable.id;
        fibres = cable.fibreCount;
        if (cable.unit == FibreUnit::Ribbon && ribbon() != cable.ribbon) {
            cable.ribbon = ribbon();
            freshCable = cable;
        }
    } else {
        Cable cable;
        cable.id = m_session.newId<CableId>();
        cable.job = job;
        cable.label = trimmed(*m_cableLabel);
        const auto count = wholeNumberIn(*m_fibres, fibreLimits);
        if (!count) return wrongIn(*m_fibres, count.error());
        cable.fibreCount = fibres = *count;
        const int unit = m_unit->currentData().toInt();
        cable.unit = unit < 0 ? FibreUnit::Ribbon : FibreUnit::Tube;
        cable.unitSize = std::abs(unit);
        cable.ribbon = ribbon();
        cable.colourOrder = text::utf8(m_order->currentText());
        cable.fibreType = trimmed(*m_fibreType);
        if (!m_length->text().trimmed().isEmpty()) {
            const auto length = numberIn(*m_length, kmLimits);
            if (!length) return wrongIn(*m_length, length.error());
            cable.lengthKm = *length;
        }
        closure.cableA = cable.id;
        freshCable = cable;
    }
    int fibresB = 0;
    closure.cableB.reset();
    if (m_cableB->currentIndex() > 0) {
        const auto& cable = m_cables[static_cast<std::size_t>(m_cableB->currentIndex() - 1)];
        closure.cableB = cable.id;
        fibresB = cable.fibreCount;
    }
    const std::string planned = trimmed(*m_plan);
    auto plan = planned.empty() && known
                    ? Result<SplicePlan>(SplicePlan{})
                    : planFromText(planned.empty() ? "1-" + std::to_string(fibres) + " straight" : planned);
    if (!plan) return wrongIn(*m_plan, plan.error());
    if (const auto fits = planFits(*plan, fibres, fibresB, 0); !fits) return wrongIn(*m_plan, fits.error());
    closure.plan = *plan;
    const int needed =
        static_cast<int>(plan->size() + static_cast<std::size_t>(closure.perTray) - 1) / closure.perTray;
    closure.trays = known ? std::max(closure.trays, needed) : needed;
    return closure;
}

tl::unexpected<Problem> JobSheet::wrongIn(QWidget& field, Problem problem) {
    field.setFocus(Qt::OtherFocusReason);
    return tl::unexpected(std::move(problem));
}

Result<JobSheet::Drafted> JobSheet::read() {
    Drafted drafted;
    const int which = m_which->currentIndex() - 1;
    drafted.job =
        which >= 0 ? m_jobs[static_cast<std::size_t>(which)] : Job{m_session.newId<JobId>(), {}, {}, {}};
    drafted.job.label = trimmed(*m_label);
    drafted.job.title = trimmed(*m_title);
    if (drafted.job.label.empty())
        return wrongIn(*m_label, {ProblemCode::BadInput, "the job needs a label", "", ""});
    for (const auto& other : m_jobs)
        if (other.label == drafted.job.label && other.id != drafted.job.id)
            return wrongIn(*m_label, {ProblemCode::BadInput, "there is a job " + other.label + " already", "",
                                      "Choose it above to add a closure"});
    auto rule = readRule(drafted.job.label);
    if (!rule) return tl::unexpected(rule.error());
    drafted.job.rule = std::move(*rule);
    if (which < 0 || drafted.job != m_jobs[static_cast<std::size_t>(which)])
        drafted.entries.emplace_back(drafted.job);
    if (closureChoice() != ClosureChoice::None) {
        std::optional<Cable> cable;
        auto closure = readClosure(drafted.job.id, cable);
        if (!closure) return tl::unexpected(closure.error());
        if (cable) drafted.entries.emplace_back(*cable);
        if (std::ranges::find(m_closures, *closure) == m_closures.end())
            drafted.entries.emplace_back(*closure);
        drafted.closure = std::move(*closure);
    }
    if (drafted.entries.empty())
        return fail(ProblemCode::BadInput, "nothing is changed", "", "Change something, or leave with Esc");
    for (const auto& entry : drafted.entries)
        if (const auto valid = validate(entry); !valid) return tl::unexpected(valid.error());
    return drafted;
}

/// What Undo writes: what was there before, or a withdrawal of what was not.
std::vector<Entry> JobSheet::back(const std::vector<Entry>& entries) const {
    std::vector<Entry> before;
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry) {
        std::optional<Entry> old;
        if (const auto* job = std::get_if<Job>(&*entry)) {
            for (const auto& one : m_jobs)
                if (one.id == job->id) old = one;
        } else if (const auto* cable = std::get_if<Cable>(&*entry)) {
            for (const auto& one : m_cables)
                if (one.id == cable->id) old = one;
        } else if (const auto* closure = std::get_if<Closure>(&*entry)) {
            for (const auto& one : m_closures)
                if (one.id == closure->id) old = one;
        }
        before.push_back(opposite(*entry, old));
    }
    return before;
}

void JobSheet::accept() {
    const auto drafted = read();
    if (!drafted) {
        QString said = text::spoken(drafted.error());
        if (!said.isEmpty()) said[0] = said[0].toUpper();
        m_said->setText(said);
        setState(m_said, QStringLiteral("drifting"));
        return;
    }
    const QString job = text::words(drafted->job.label);
    const QString what = drafted->closure
                             ? tr("closure %1 of job %2").arg(text::words(drafted->closure->label), job)
                             : tr("job %1").arg(job);
    if (!m_session.save(drafted->entries, Undo::Offered, back(drafted->entries), what)) return;
    Q_EMIT made(drafted->job.id, drafted->closure ? std::optional(drafted->closure->id) : std::nullopt);
}

bool JobSheet::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return true;
    }
    if (key->key() == Qt::Key_O && key->modifiers() & Qt::ControlModifier) {
        choosePlan();
        return true;
    }
    if (key->key() != Qt::Key_Return && key->key() != Qt::Key_Enter) return false;
    auto at = std::ranges::find(m_sequence, watched);
    if (key->modifiers() & Qt::ControlModifier || at == m_sequence.end() || at + 1 == m_sequence.end()) {
        accept();
        return true;
    }
    do ++at;
    while (at != m_sequence.end() && !(*at)->isEnabled());
    if (at != m_sequence.end()) (*at)->setFocus(Qt::TabFocusReason);
    return true;
}

}  // namespace arc::ui
