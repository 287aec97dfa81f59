// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/limits_sheet.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/care/rules.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

LimitsSheet::LimitsSheet(Session& session, QWidget* parent) : QDialog(parent), m_session(session) {
    const Theme theme = currentTheme();
    const care::Settings shipped;
    const auto whole = [](double value) { return text::number(static_cast<std::int64_t>(value)); };
    setObjectName(QStringLiteral("limits_sheet"));
    setWindowTitle(tr("Limits of care"));
    setAccessibleName(windowTitle());
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(28), theme.px(22), theme.px(28), theme.px(22));
    box->setSpacing(theme.px(Gap::Middle));
    box->addWidget(words(windowTitle(), TextRole::Heading, this));
    auto* explain = words(tr("They hold for this logbook. An empty line is as shipped (common practice). "
                             "What a card says itself, such as every how many arcs, is changed in the card."),
                          TextRole::Soft, this);
    explain->setWordWrap(true);
    box->addWidget(explain);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(16));
    grid->setVerticalSpacing(theme.px(8));
    grid->setColumnStretch(0, 1);
    box->addLayout(grid);
    add(*grid, "care.environment_jump_c", tr("Calibration owed after a change of temperature of, °C"),
        whole(shipped.jumpCelsius));
    add(*grid, "care.environment_jump_hpa", tr("Calibration owed after a change of air pressure of, hPa"),
        whole(shipped.jumpHectopascals));
    add(*grid, "care.idle_days", tr("Calibration owed after days without an arc"), whole(shipped.idleDays));
    add(*grid, "care.self_calibrating_times",
        tr("These three, so many times further out for a splicer that adjusts its arc itself"),
        whole(shipped.selfCalibratingTimes));
    add(*grid, "care.calibration_runs", tr("Calibration runs in vain before a diagnostic run is owed"),
        whole(shipped.calibrationRuns));
    add(*grid, "care.electrode_arcs", tr("Arcs of a pair of electrodes"), tr("as the card says"));
    add(*grid, "care.order_days", tr("Order parts that will be used up within days"),
        whole(shipped.orderWithinDays));
    addRibbon(*grid);
    m_said = words(QString(), TextRole::Bold, this);
    m_said->setWordWrap(true);
    setState(m_said, QStringLiteral("drifting"));
    box->addWidget(m_said);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* leave = button(tr("Leave as it was  Esc"), ButtonKind::Usual, this);
    leave->setAutoDefault(false);
    auto* take = button(tr("Keep these limits"), ButtonKind::Primary, this);
    take->setDefault(true);
    row->addWidget(leave);
    row->addWidget(take);
    box->addLayout(row);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(take, &QPushButton::clicked, this, &LimitsSheet::keep);
    fitTo(*this, theme.px(640));
    m_lines.front().edit->setFocus();
}

QString LimitsSheet::said() const {
    return m_said->text();
}

std::string LimitsSheet::written(std::string_view key) {
    const auto value = m_session.take(m_session.book().setting(key));
    return value && *value ? **value : std::string();
}

void LimitsSheet::add(QGridLayout& grid, std::string_view key, const QString& name, const QString& shipped) {
    const Theme theme = currentTheme();
    const int row = grid.rowCount();
    auto* label = words(name, TextRole::Body, this);
    label->setWordWrap(true);
    auto* edit = new QLineEdit(text::words(written(key)).replace('.', QLocale().decimalPoint()), this);
    edit->setAccessibleName(name);
    edit->setPlaceholderText(shipped);
    edit->setMinimumHeight(theme.px(Touch::Usual));
    edit->setFixedWidth(theme.px(180));
    label->setBuddy(edit);
    grid.addWidget(label, row, 0);
    grid.addWidget(edit, row, 1);
    m_lines.push_back({key, edit, written(key)});
}

void LimitsSheet::addRibbon(QGridLayout& grid) {
    const Theme theme = currentTheme();
    const int row = grid.rowCount();
    const QString name = tr("A ribbon cable that does not say what it is counts as");
    auto* label = words(name, TextRole::Body, this);
    label->setWordWrap(true);
    m_ribbon = new QComboBox(this);
    m_ribbon->setAccessibleName(name);
    m_ribbon->setMinimumHeight(theme.px(Touch::Usual));
    m_ribbon->setFixedWidth(theme.px(180));
    m_ribbon->addItem(tr("flat ribbon"), QStringLiteral("flat"));
    m_ribbon->addItem(tr("web-type ribbon"), QStringLiteral("web"));
    m_ribbon->addItem(tr("ribbonised"), QStringLiteral("ribbonised"));
    m_ribbonBefore = written("care.ribbon");
    m_ribbon->setCurrentIndex(std::max(0, m_ribbon->findData(text::words(m_ribbonBefore))));
    label->setBuddy(m_ribbon);
    grid.addWidget(label, row, 0);
    grid.addWidget(m_ribbon, row, 1);
}

void LimitsSheet::keep() {
    std::vector<Entry> changed, back;
    const auto take = [&](std::string_view key, const std::string& value,
                          const std::string& before) -> Result<void> {
        if (value == before) return {};
        if (!value.empty())
            if (const auto good = care::withSetting({}, key, value); !good)
                return tl::unexpected(good.error());
        changed.emplace_back(Setting{std::string(key), value});
        back.emplace_back(Setting{std::string(key), before});
        return {};
    };
    const auto refuse = [this](const Problem& problem) {
        QString said = text::spoken(problem);
        if (!said.isEmpty()) said[0] = said[0].toUpper();
        m_said->setText(said);
    };
    for (const Line& line : m_lines) {
        const std::string value = text::utf8(line.edit->text().trimmed().replace(',', '.'));
        if (const auto good = take(line.key, value, line.before); !good) {
            line.edit->setFocus();
            return refuse(good.error());
        }
    }
    std::string ribbon = text::utf8(m_ribbon->currentData().toString());
    if (m_ribbonBefore.empty() && ribbon == "flat") ribbon.clear();
    if (const auto good = take("care.ribbon", ribbon, m_ribbonBefore); !good) return refuse(good.error());
    if (!changed.empty() && !m_session.save(changed, Undo::Offered, back, tr("limits of care")))
        return refuse(Problem{ProblemCode::Unavailable, "not saved", "", "Try again"});
    accept();
}

}  // namespace arc::ui
