// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up of a sitting as a sheet: chosen once, by keyboard. Enter goes to the next line and takes the
// set-up after the last one, Ctrl+Enter takes it from anywhere, Esc leaves it as it was.
#pragma once
#include <QStringList>
#include <QWidget>

#include <vector>

#include "core/care/rules.hpp"
#include "ui/today/sitting.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace arc::ui {

class SetUpPanel : public QWidget {
    Q_OBJECT
  public:
    explicit SetUpPanel(QWidget* parent = nullptr);
    /// Fills the lists from the book and shows what is chosen now. Who is signed on splices, unless somebody
    /// else is named.
    Result<void> fill(Logbook& book, const Sitting& sitting, const std::string& signedOn, Instant now);
    void begin();

  Q_SIGNALS:
    void accepted(const arc::ui::Sitting& sitting);
    void left();
    void newJobAsked();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fillClosures();
    void fillFibresPerArc(int chosen);
    void fillCleaver();
    /// What the choices would owe, before the first splice.
    void notice();
    [[nodiscard]] QStringList jumps(const Splicer& splicer) const;
    [[nodiscard]] QString otherFibre(const Tool& splicer) const;
    void accept();

    Logbook* m_book = nullptr;  ///< only while the panel is open; the page's own
    Sitting m_before;
    Instant m_now;
    std::vector<Tool> m_splicers, m_cleavers;
    std::vector<Pairing> m_pairings;
    std::vector<Job> m_jobs;
    std::vector<Closure> m_closures;
    std::vector<Cable> m_cables;  ///< of the job
    std::vector<CareRecord> m_records;
    care::Settings m_limits;
    QComboBox* m_job;
    QComboBox* m_closure;
    QComboBox* m_splicer;
    QComboBox* m_fibres;
    QComboBox* m_cleaver;
    QComboBox* m_mode;
    QLineEdit* m_operator;
    QLineEdit* m_temperature;
    QLineEdit* m_humidity;
    QLineEdit* m_pressure;
    QLabel* m_note;
    QPushButton* m_take;
    std::vector<QWidget*> m_order;
};

}  // namespace arc::ui
