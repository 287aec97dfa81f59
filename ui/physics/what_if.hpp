// SPDX-License-Identifier: GPL-3.0-or-later
// What would it lose? Offset, tilt and unlike mode fields, worked out as they are typed. A model to learn
// from, never a measurement, and it says so.
#pragma once
#include <QDialog>

#include <vector>

#include "core/optics/splice_loss.hpp"

class QComboBox;
class QDoubleSpinBox;
class QGridLayout;
class QLabel;

namespace arc::ui {

class WhatIf : public QDialog {
    Q_OBJECT
  public:
    explicit WhatIf(QWidget* parent = nullptr);

  private:
    QDoubleSpinBox* addNumber(QGridLayout* grid, int row, const QString& name, double least, double most,
                              double step, double value);
    void chooseWavelength(int index);
    void work();

    QComboBox* m_wavelength;
    QDoubleSpinBox* m_fieldA;
    QDoubleSpinBox* m_fieldB;
    QDoubleSpinBox* m_offset;
    QDoubleSpinBox* m_tilt;
    QLabel* m_total;
    QLabel* m_parts;
    QLabel* m_seen;
};

}  // namespace arc::ui
