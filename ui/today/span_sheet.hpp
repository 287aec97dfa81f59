// SPDX-License-Identifier: GPL-3.0-or-later
// The job as it stands: its spans with average and link budget, below each the closures on it. Spans are
// made, changed and taken back here, or read from a table.
#pragma once
#include <QWidget>

#include <optional>
#include <vector>

#include "core/work/spans.hpp"
#include "ui/shell/session.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QTableView;

namespace arc::ui {

class SpanTable;

class SpanSheet : public QWidget {
    Q_OBJECT
  public:
    SpanSheet(Session& session, QWidget* parent = nullptr);
    void begin(JobId job);
    [[nodiscard]] bool settled() const { return m_reading == 0; }

  Q_SIGNALS:
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void startOver();
    void readBook();
    void readRecord();
    [[nodiscard]] QStringList fields() const;
    void fill();
    void fillFrom(const Span& span);
    void choose(const QString& label);
    [[nodiscard]] Result<Span> typed() const;
    void check();
    void accept();
    void remove();
    void chooseTable();
    void takeTable(const QString& file);
    bool save(const std::vector<Entry>& entries, const QString& what);
    void say(const QString& sentence, const QString& state);

    Session& m_session;
    std::optional<Job> m_job;
    SpanGround m_ground;
    int m_reading = 0;
    int m_filled = -1;       ///< what the fields were filled from
    QStringList m_asFilled;  ///< and what stood there then
    SpanTable* m_rows;
    QTableView* m_table;
    QLabel* m_note;
    QComboBox* m_which;
    QLineEdit* m_label;
    QLineEdit* m_from;
    QLineEdit* m_to;
    QComboBox* m_cable;
    QLineEdit* m_length;
    QLineEdit* m_closures;
    QLabel* m_said;
    std::vector<QWidget*> m_sequence;
};

}  // namespace arc::ui
