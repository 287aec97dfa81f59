// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/physics/what_if.hpp"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>

#include <cmath>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {
constexpr double sliderSteps = 100;  // a unit, as fine as the number beside it
}

WhatIf::WhatIf(QWidget* parent) : QDialog(parent) {
    const Theme theme = currentTheme();
    setWindowTitle(tr("What would it lose?"));
    setObjectName(QStringLiteral("what-if"));
    setProperty("ground", QStringLiteral("paper"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(theme.px(24), theme.px(20), theme.px(24), theme.px(20));
    outer->setSpacing(theme.px(10));
    outer->addWidget(words(tr("What would it lose?"), TextRole::Heading, this));
    auto* asked = card(this);
    outer->addWidget(asked);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(16));
    grid->setVerticalSpacing(theme.px(8));
    grid->setColumnStretch(2, 1);
    inside(asked)->addLayout(grid);
    m_wavelength = new QComboBox(asked);
    m_wavelength->addItem(tr("1310 nm"));
    m_wavelength->addItem(tr("1550 nm"));
    m_wavelength->setAccessibleName(tr("Wavelength"));
    auto* label = words(tr("Wavelength"), TextRole::Body, asked);
    label->setBuddy(m_wavelength);
    grid->addWidget(label, 0, 0);
    grid->addWidget(m_wavelength, 0, 1);
    m_fieldA = addNumber(grid, 1, tr("Mode-field diameter of fibre A, µm"), 4, 16, 0.1, 9.2);
    m_fieldB = addNumber(grid, 2, tr("Mode-field diameter of fibre B, µm"), 4, 16, 0.1, 9.2);
    m_offset = addNumber(grid, 3, tr("Offset of the cores, µm"), 0, 5, 0.1, 0.5);
    m_tilt = addNumber(grid, 4, tr("Tilt of the axes, degrees"), 0, 3, 0.1, 0);

    auto* answer = card(this);
    outer->addWidget(answer);
    auto* box = inside(answer);
    box->setSpacing(theme.px(4));
    m_total = words(QString(), TextRole::Digits, answer);
    m_total->setAccessibleName(tr("Loss of the splice"));
    m_parts = words(QString(), TextRole::Body, answer);
    m_seen = words(QString(), TextRole::Body, answer);
    for (auto* one : {m_parts, m_seen}) one->setWordWrap(true);
    box->addWidget(m_total);
    box->addWidget(m_parts);
    box->addWidget(m_seen);

    auto* caution = words(
        tr("A model, not a measurement: round light spots, no gap, nothing between the ends. What a splicer "
           "shows is its own estimate; what a link loses is measured from both ends. A cleave angle is not "
           "the "
           "tilt of the axes. Never look into a fibre or a connector; follow local codes and licensed "
           "practice."),
        TextRole::Body, this);
    caution->setWordWrap(true);
    setState(caution, QStringLiteral("watch"));
    outer->addWidget(caution);
    auto* source = words(
        tr("Equal fields of radius w: 4.343 (d/w)² dB for an offset d, 4.343 (π n w θ / λ)² dB for a tilt θ; "
           "unlike fields: -20 log10(2 w1 w2 / (w1² + w2²)) dB, and the parts add. Source: D. Marcuse, Bell "
           "Syst. Tech. J. 56(5), 1977. Readings from one end: IEC 60793-1-40 annex C."),
        TextRole::Soft, this);
    source->setWordWrap(true);
    outer->addWidget(source);
    outer->addStretch();
    auto* away = button(tr("Close  Esc"), ButtonKind::Usual, this);
    away->setAutoDefault(false);
    connect(away, &QPushButton::clicked, this, &QDialog::accept);
    outer->addWidget(away, 0, Qt::AlignRight);
    connect(m_wavelength, &QComboBox::currentIndexChanged, this, &WhatIf::chooseWavelength);
    work();
    fitTo(*this, {theme.px(820), theme.px(700)});
    m_offset->setFocus(Qt::OtherFocusReason);
    m_offset->selectAll();
}

QDoubleSpinBox* WhatIf::addNumber(QGridLayout* grid, int row, const QString& name, double least, double most,
                                  double step, double value) {
    const Theme theme = currentTheme();
    auto* number = new QDoubleSpinBox(this);
    number->setRange(least, most);
    number->setDecimals(2);
    number->setSingleStep(step);
    number->setValue(value);
    number->setAccessibleName(name);
    auto* slider = new QSlider(Qt::Horizontal, this);
    slider->setRange(static_cast<int>(least * sliderSteps), static_cast<int>(most * sliderSteps));
    slider->setSingleStep(static_cast<int>(step * sliderSteps));
    slider->setPageStep(static_cast<int>(10 * step * sliderSteps));
    slider->setValue(static_cast<int>(std::lround(value * sliderSteps)));
    slider->setAccessibleName(name);
    auto* label = words(name, TextRole::Body, this);
    label->setBuddy(number);
    grid->setRowMinimumHeight(row, theme.px(40));
    grid->addWidget(label, row, 0);
    grid->addWidget(number, row, 1);
    grid->addWidget(slider, row, 2);
    connect(slider, &QSlider::valueChanged, number, [number](int at) { number->setValue(at / sliderSteps); });
    connect(number, &QDoubleSpinBox::valueChanged, this, [this, slider](double now) {
        // The slider must not write back into a number that is being typed.
        const QSignalBlocker quiet(slider);
        slider->setValue(static_cast<int>(std::lround(now * sliderSteps)));
        work();
    });
    return number;
}

/// A wavelength brings its own usual mode field.
void WhatIf::chooseWavelength(int index) {
    const auto usual = index == 1 ? optics::typicalAt1550() : optics::typicalAt1310();
    m_fieldA->setValue(usual.diameterUm);
    m_fieldB->setValue(usual.diameterUm);
    work();
}

void WhatIf::work() {
    optics::ModeField a =
        m_wavelength->currentIndex() == 1 ? optics::typicalAt1550() : optics::typicalAt1310();
    optics::ModeField b = a;
    a.diameterUm = m_fieldA->value();
    b.diameterUm = m_fieldB->value();
    const auto parts = optics::spliceLossParts(a, b, {m_offset->value(), m_tilt->value()});
    if (!parts) {
        m_total->setText(text::spoken(parts.error()));
        m_parts->clear();
        m_seen->clear();
        return;
    }
    const double total = parts->totalDb();
    m_total->setText(text::meanLoss(total, text::Unit::Shown));
    m_parts->setText(tr("of this: unlike mode fields %1, offset %2, tilt %3 dB")
                         .arg(text::meanLoss(parts->mismatchDb), text::meanLoss(parts->offsetDb),
                              text::meanLoss(parts->tiltDb)));
    m_seen->setText(tr("measured from A %1, from B %2, mean of both %3 dB: one end alone misleads when the "
                       "mode fields differ")
                        .arg(text::meanLoss(optics::oneWayReadingDb(total, a, b)),
                             text::meanLoss(optics::oneWayReadingDb(total, b, a)), text::meanLoss(total)));
}

}  // namespace arc::ui
