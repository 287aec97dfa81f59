// SPDX-License-Identifier: GPL-3.0-or-later
// Matches the columns of somebody's table with ours, once: a choice a field, the first rows as they would be
// read below, live. What it finds is saved by name in the logbook; a file with the same header gets it
// offered. Of events, the words for what was done are matched with our care cards as well. Questions that
// only a person can answer (day or month first, offset, dB or mdB) stop the import.
#pragma once
#include <QWidget>

#include <filesystem>
#include <optional>
#include <vector>

#include "core/intake/guess_key.hpp"
#include "core/workbench.hpp"
#include "ui/shell/session.hpp"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace arc::ui {

class ActionWords;
class PreviewTable;

class ColumnKeySheet : public QWidget {
    Q_OBJECT
  public:
    ColumnKeySheet(Session& session, QWidget* parent = nullptr);
    /// `look`: header and many raw rows of the file.
    void begin(const std::filesystem::path& file, FileKind kind, TablePreview look);
    /// As it stands now.
    [[nodiscard]] ColumnKey key() const;

  Q_SIGNALS:
    void accepted(const arc::ColumnKey& key);
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Field {
        OurColumn column;
        QComboBox* theirs;
        QWidget* cell;
    };
    QWidget* add(QGridLayout* grid, int row, int column, const QString& name, QWidget* control);
    void makeFields(FileKind kind);
    void fill(const ColumnKey& key, const std::vector<OpenQuestion>& open);
    void look();
    void askWords(const ColumnKey& now);
    void fitColumns();
    void accept();
    void exportKey();
    void refuse(const QString& why, QWidget* at);
    [[nodiscard]] std::optional<std::string> theirColumn(const QString& typed) const;

    Session& m_session;
    std::filesystem::path m_file;
    FileKind m_kind = FileKind::SpliceLog;
    std::vector<std::string> m_header;
    std::vector<std::vector<std::string>> m_sample;
    std::vector<ColumnKey> m_saved;
    std::map<std::string, std::map<std::string, std::string>> m_values;
    ActionWords* m_actions;
    QLabel* m_offer;
    QLabel* m_said;
    QComboBox* m_keys;
    QComboBox* m_separator;
    QComboBox* m_decimal;
    QComboBox* m_dates;
    QComboBox* m_offset;
    QComboBox* m_unit;
    QComboBox* m_timeOfDay;
    QLineEdit* m_wide;
    QGridLayout* m_grid;
    std::vector<Field> m_fields;
    QWidget* m_wideCell;
    QWidget* m_unitCell;
    PreviewTable* m_rows;
    QTableView* m_table;
    QLineEdit* m_name;
    QPushButton* m_take;
    QPushButton* m_export;
    QPushButton* m_leave;
    enum class Filling { No, Yes } m_filling = Filling::No;
};

}  // namespace arc::ui
