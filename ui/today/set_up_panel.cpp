// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/set_up_panel.hpp"

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

#include "core/care/queues.hpp"
#include "core/kit/life.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/field_cell.hpp"
#include "ui/widgets/typed_range.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

QString nameOf(const Tool& tool) {
    return tool.nickname.empty()
               ? text::words(tool.label)
               : QStringLiteral("%1 “%2”").arg(text::words(tool.label), text::words(tool.nickname));
}

/// An empty line is not known.
Result<std::optional<double>> read(const QLineEdit& line, TypedRange range) {
    if (line.text().trimmed().isEmpty()) return std::optional<double>{};
    return numberIn(line, range);
}

constexpr TypedRange celsiusLimits{-60, 85}, humidityLimits{0, 100}, pressureLimits{300, 1100};

}  // namespace

SetUpPanel::SetUpPanel(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    outer->addWidget(sheet);
    outer->addStretch();
    auto* box = inside(sheet);
    box->setSpacing(theme.px(12));
    auto* head = words(tr("Set up once; it stays until you change it"), TextRole::Strong, sheet);
    box->addWidget(head);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(24));
    grid->setVerticalSpacing(theme.px(4));
    for (int column = 0; column < 3; ++column) grid->setColumnStretch(column, 1);
    box->addLayout(grid);

    m_job = new QComboBox(sheet);
    m_closure = new QComboBox(sheet);
    m_splicer = new QComboBox(sheet);
    m_fibres = new QComboBox(sheet);
    m_cleaver = new QComboBox(sheet);
    m_mode = new QComboBox(sheet);
    m_mode->setEditable(true);
    m_operator = new QLineEdit(sheet);
    m_temperature = new QLineEdit(sheet);
    m_humidity = new QLineEdit(sheet);
    m_pressure = new QLineEdit(sheet);
    addField(*grid, 0, 0, tr("Job"), *m_job);
    addField(*grid, 0, 1, tr("Closure"), *m_closure);
    addField(*grid, 0, 2, tr("Who splices"), *m_operator);
    addField(*grid, 1, 0, tr("Splicer"), *m_splicer);
    addField(*grid, 1, 1, tr("Fibres per arc"), *m_fibres);
    addField(*grid, 1, 2, tr("Splice mode"), *m_mode);
    addField(*grid, 2, 0, tr("Cleaver"), *m_cleaver);
    grid->setRowMinimumHeight(6, theme.px(10));
    addField(*grid, 4, 0, tr("Temperature, °C"), *m_temperature);
    addField(*grid, 4, 1, tr("Humidity, %"), *m_humidity);
    addField(*grid, 4, 2, tr("Air pressure, hPa"), *m_pressure);
    m_order = {m_job,  m_closure, m_operator,    m_splicer,  m_fibres,
               m_mode, m_cleaver, m_temperature, m_humidity, m_pressure};
    for (auto* control : m_order) control->setMinimumHeight(theme.px(Touch::Usual) + theme.px(4));
    for (std::size_t i = 1; i < m_order.size(); ++i) setTabOrder(m_order[i - 1], m_order[i]);

    m_note = words(QString(), TextRole::Body, sheet);
    m_note->setWordWrap(true);
    box->addWidget(m_note);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(theme.px(10));
    m_take = button(tr("Splice with this  Ctrl+Enter"), ButtonKind::Primary, sheet);
    auto* leave = button(tr("Leave as it was  Esc"), ButtonKind::Wide, sheet);
    auto* job = button(tr("New job, cable or closure…"), ButtonKind::Wide, sheet, QStringLiteral("add"));
    buttons->addWidget(m_take);
    buttons->addWidget(leave);
    buttons->addStretch();
    buttons->addWidget(job);
    box->addLayout(buttons);
    setTabOrder(m_pressure, m_take);

    connect(m_job, &QComboBox::currentIndexChanged, this, &SetUpPanel::fillClosures);
    connect(m_splicer, &QComboBox::currentIndexChanged, this, [this] {
        fillFibresPerArc(0);
        fillCleaver();
    });
    for (auto* edit : {m_temperature, m_pressure, m_mode->lineEdit()})
        connect(edit, &QLineEdit::textChanged, this, &SetUpPanel::notice);
    for (auto* choice : {m_splicer, m_fibres, m_closure})
        connect(choice, &QComboBox::currentIndexChanged, this, &SetUpPanel::notice);
    connect(m_take, &QPushButton::clicked, this, &SetUpPanel::accept);
    connect(leave, &QPushButton::clicked, this, &SetUpPanel::left);
    connect(job, &QPushButton::clicked, this, &SetUpPanel::newJobAsked);
    for (auto* control : m_order) control->installEventFilter(this);
    m_mode->lineEdit()->installEventFilter(this);
}

Result<void> SetUpPanel::fill(Logbook& book, const Sitting& sitting, const std::string& signedOn,
                              Instant now) {
    m_book = &book;
    m_before = sitting;
    m_now = now;
    const auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    const auto pairings = book.pairings();
    if (!pairings) return tl::unexpected(pairings.error());
    const auto jobs = book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    const auto records = book.careRecords(std::nullopt);
    if (!records) return tl::unexpected(records.error());
    const auto limits = care::settingsOf(book);
    if (!limits) return tl::unexpected(limits.error());
    m_records = *records;
    m_limits = limits->settings;
    m_splicers.clear();
    m_cleavers.clear();
    for (const auto& tool : *tools) {
        if (tool.service == Service::OutOfService && tool.id != sitting.splicer && tool.id != sitting.cleaver)
            continue;
        if (asSplicer(tool)) m_splicers.push_back(tool);
        if (asCleaver(tool)) m_cleavers.push_back(tool);
    }
    m_pairings = *pairings;
    m_jobs = *jobs;

    const QSignalBlocker quietJob(m_job), quietSplicer(m_splicer);
    m_job->clear();
    m_job->addItem(tr("unassigned"));
    for (const auto& job : m_jobs) {
        m_job->addItem(job.title.empty()
                           ? text::words(job.label)
                           : QStringLiteral("%1, %2").arg(text::words(job.label), text::words(job.title)));
        if (job.id == sitting.job) m_job->setCurrentIndex(m_job->count() - 1);
    }
    fillClosures();
    m_splicer->clear();
    for (const auto& tool : m_splicers) {
        m_splicer->addItem(nameOf(tool));
        if (tool.id == sitting.splicer) m_splicer->setCurrentIndex(m_splicer->count() - 1);
    }
    fillFibresPerArc(sitting.fibresPerArc);
    m_cleaver->clear();
    m_cleaver->addItem(tr("not known"));
    for (const auto& tool : m_cleavers) {
        m_cleaver->addItem(nameOf(tool));
        if (tool.id == sitting.cleaver) m_cleaver->setCurrentIndex(m_cleaver->count() - 1);
    }
    m_mode->clear();
    m_mode->addItems(
        {QStringLiteral("G.652-G.652"), QStringLiteral("G.657-G.652"), QStringLiteral("G.655-G.655")});
    m_mode->setEditText(text::words(sitting.mode));
    m_operator->setText(text::words(sitting.operatorName));
    m_operator->setPlaceholderText(text::words(signedOn));
    const auto& air = sitting.ambient;
    m_temperature->setText(air.temperature ? text::number(celsius(*air.temperature), 1) : QString());
    m_humidity->setText(air.humidity ? text::number(air.humidity->value / 10.0, 0) : QString());
    m_pressure->setText(
        air.pressure
            ? QLocale().toString(hectopascals(*air.pressure), 'f', 0).remove(QLocale().groupSeparator())
            : QString());
    notice();
    return {};
}

void SetUpPanel::begin() {
    m_job->setFocus(Qt::OtherFocusReason);
}

void SetUpPanel::fillClosures() {
    m_closure->clear();
    m_closures.clear();
    m_cables.clear();
    const int index = m_job->currentIndex() - 1;
    if (index < 0 || !m_book) {
        m_closure->addItem(tr("none"));
        return;
    }
    const JobId job = m_jobs[static_cast<std::size_t>(index)].id;
    if (const auto closures = m_book->closures(job)) m_closures = *closures;
    if (const auto cables = m_book->cables(job)) m_cables = *cables;
    for (const auto& closure : m_closures) {
        m_closure->addItem(
            closure.plan.empty()
                ? text::words(closure.label)
                : tr("%1, %2 splices").arg(text::words(closure.label)).arg(closure.plan.size()));
        if (closure.id == m_before.closure) m_closure->setCurrentIndex(m_closure->count() - 1);
    }
    if (m_closures.empty()) m_closure->addItem(tr("none"));
}

void SetUpPanel::fillFibresPerArc(int chosen) {
    m_fibres->clear();
    const int index = m_splicer->currentIndex();
    const int grooves = index >= 0 ? asSplicer(m_splicers[static_cast<std::size_t>(index)])->grooves : 1;
    for (const int fibres : {1, 2, 4, 8, 12, 16}) {
        if (fibres > grooves) break;
        m_fibres->addItem(fibres == 1 ? tr("1, single") : tr("%1, ribbon").arg(fibres), fibres);
        if (fibres == chosen || chosen == 0) m_fibres->setCurrentIndex(m_fibres->count() - 1);
    }
}

void SetUpPanel::fillCleaver() {
    const int index = m_splicer->currentIndex();
    if (index < 0) return;
    const auto paired = kit::pairedCleaver(m_pairings, m_splicers[static_cast<std::size_t>(index)].id, m_now);
    for (std::size_t i = 0; i < m_cleavers.size(); ++i)
        if (paired && m_cleavers[i].id == *paired) m_cleaver->setCurrentIndex(static_cast<int>(i) + 1);
}

QStringList SetUpPanel::jumps(const Splicer& splicer) const {
    const care::Settings limits = care::limitsFor(splicer, m_limits);
    QStringList said;
    const auto& before = m_before.ambient;
    const auto temperature = text::typedNumber(m_temperature->text());
    if (temperature && before.temperature) {
        const double jump = *temperature - celsius(*before.temperature);
        if (std::abs(jump) >= limits.jumpCelsius)
            said << (jump > 0 ? tr("%1 °C warmer than last written down").arg(text::number(jump, 0))
                              : tr("%1 °C colder than last written down").arg(text::number(-jump, 0)));
    }
    const auto pressure = text::typedNumber(m_pressure->text());
    if (pressure && before.pressure) {
        const double jump = *pressure - hectopascals(*before.pressure);
        if (std::abs(jump) >= limits.jumpHectopascals)
            said << tr("air pressure changed by %1 hPa").arg(text::number(std::abs(jump), 0));
    }
    return said;
}

QString SetUpPanel::otherFibre(const Tool& splicer) const {
    const auto* last = care::lastCalibration(splicer, m_records);
    const auto made = last ? care::resultOf(*last) : std::nullopt;
    if (!made || asSplicer(splicer)->kind == SplicerKind::SingleFibre) return {};
    care::SpliceUse use{text::utf8(m_mode->currentText()), m_fibres->currentData().toInt(), {}};
    if (const int at = m_closure->currentIndex(); at >= 0 && static_cast<std::size_t>(at) < m_closures.size())
        for (const auto& cable : m_cables)
            if (cable.id == m_closures[static_cast<std::size_t>(at)].cableA ||
                cable.id == m_closures[static_cast<std::size_t>(at)].cableB)
                use.fibreTypes.push_back(cable.fibreType);
    if (care::faultsOf(*made, *asSplicer(splicer), use).empty()) return {};
    return tr("the arc of %1 was calibrated for %2")
        .arg(text::words(splicer.label), text::spoken(care::madeFor(*made)));
}

void SetUpPanel::notice() {
    QStringList said;
    const int at = m_splicer->currentIndex();
    if (at >= 0 && static_cast<std::size_t>(at) < m_splicers.size()) {
        const Tool& splicer = m_splicers[static_cast<std::size_t>(at)];
        said = jumps(*asSplicer(splicer));
        if (const QString other = otherFibre(splicer); !other.isEmpty()) said << other;
    }
    if (!said.isEmpty()) said.front()[0] = said.front()[0].toUpper();
    m_note->setText(said.isEmpty()
                        ? QString()
                        : tr("%1: an arc calibration will be owed.").arg(said.join(QStringLiteral(", "))));
    setState(m_note, QStringLiteral("watch"));
    m_note->setVisible(!said.isEmpty());
}

void SetUpPanel::accept() {
    Sitting sitting = m_before;
    const auto wrong = [this](const Problem& problem, QWidget* where) {
        m_note->setText(text::spoken(problem));
        setState(m_note, QStringLiteral("drifting"));
        m_note->show();
        where->setFocus();
    };
    if (m_splicer->currentIndex() < 0)
        return wrong(Problem{ProblemCode::BadInput, "There is no splicer in the kit", "",
                             "Add one on the Kit screen, F3"},
                     m_splicer);
    const auto temperature = read(*m_temperature, celsiusLimits);
    if (!temperature) return wrong(temperature.error(), m_temperature);
    const auto humidity = read(*m_humidity, humidityLimits);
    if (!humidity) return wrong(humidity.error(), m_humidity);
    const auto pressure = read(*m_pressure, pressureLimits);
    if (!pressure) return wrong(pressure.error(), m_pressure);
    sitting.splicer = m_splicers[static_cast<std::size_t>(m_splicer->currentIndex())].id;
    sitting.fibresPerArc = m_fibres->currentData().toInt();
    sitting.cleaver.reset();
    if (m_cleaver->currentIndex() > 0)
        sitting.cleaver = m_cleavers[static_cast<std::size_t>(m_cleaver->currentIndex() - 1)].id;
    sitting.job.reset();
    sitting.closure.reset();
    if (m_job->currentIndex() > 0)
        sitting.job = m_jobs[static_cast<std::size_t>(m_job->currentIndex() - 1)].id;
    if (m_closure->currentIndex() >= 0 &&
        static_cast<std::size_t>(m_closure->currentIndex()) < m_closures.size())
        sitting.closure = m_closures[static_cast<std::size_t>(m_closure->currentIndex())].id;
    sitting.mode = text::utf8(m_mode->currentText().trimmed());
    sitting.operatorName = text::utf8(m_operator->text().trimmed());
    Ambient air;
    if (*temperature)
        air.temperature = Temperature{static_cast<std::int32_t>(std::lround(**temperature * 1000)) + 273150};
    if (*humidity) air.humidity = Humidity{static_cast<std::int32_t>(std::lround(**humidity * 10))};
    if (*pressure) air.pressure = Pressure{static_cast<std::int32_t>(std::lround(**pressure * 100))};
    if (air != sitting.ambient) sitting.ambientAt = m_now;
    sitting.ambient = air;
    Q_EMIT accepted(sitting);
}

bool SetUpPanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return true;
    }
    if (key->key() != Qt::Key_Return && key->key() != Qt::Key_Enter) return false;
    if (key->modifiers() & Qt::ControlModifier) {
        accept();
        return true;
    }
    auto at = std::ranges::find(m_order, watched == m_mode->lineEdit() ? m_mode : watched);
    if (at == m_order.end()) return false;
    if (++at == m_order.end())
        accept();
    else
        (*at)->setFocus(Qt::TabFocusReason);
    return true;
}

}  // namespace arc::ui
