// SPDX-License-Identifier: GPL-3.0-or-later
// The crew's own limits: from what change of the air on, after how many idle days an arc calibration is owed,
// and the like. An empty line is as shipped.
#pragma once
#include <QDialog>

#include <string_view>
#include <vector>

#include "ui/shell/session.hpp"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace arc::ui {

class LimitsSheet : public QDialog {
    Q_OBJECT
  public:
    explicit LimitsSheet(Session& session, QWidget* parent = nullptr);
    [[nodiscard]] QString said() const;

  private:
    struct Line {
        std::string_view key;
        QLineEdit* edit;
        std::string before;
    };
    void add(QGridLayout& grid, std::string_view key, const QString& name, const QString& shipped);
    void addRibbon(QGridLayout& grid);
    [[nodiscard]] std::string written(std::string_view key);
    void keep();

    Session& m_session;
    std::vector<Line> m_lines;
    QComboBox* m_ribbon = nullptr;
    std::string m_ribbonBefore;
    QLabel* m_said;
};

}  // namespace arc::ui
