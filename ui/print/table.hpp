// SPDX-License-Identifier: GPL-3.0-or-later
// A table that runs over pages and repeats its heading on each.
#pragma once
#include <QString>

#include <optional>
#include <vector>

#include "core/work/fibre.hpp"
#include "ui/print/sheet.hpp"

namespace arc::print {

enum class Fit { Elide, Wrap };

struct Column {
    QString title;
    double width = 20;  ///< mm
    Across across = Across::Left;
    Fit fit = Fit::Elide;
};

struct Cell {
    QString words{};
    QColor colour{};                   ///< invalid: the table's own
    std::optional<FibreLook> fibre{};  ///< its colour stands before the words
    Weight weight = Weight::Normal;
    Face face = Face::Text;
};

class Table {
  public:
    /// `caption` stands above the heading, with "continued" on later pages.
    Table(Sheet& sheet, QString caption, std::vector<Column> columns, double points = 8);
    void row(const std::vector<Cell>& cells);
    /// A little air, for instance where the next tube begins.
    void gap() { m_sheet.y += 1.6; }
    void end() { m_sheet.y += 3; }

  private:
    void heading();
    [[nodiscard]] double rowHeight(const std::vector<Cell>& cells) const;

    Sheet& m_sheet;
    QString m_caption;
    std::vector<Column> m_columns;
    double m_points;
    bool m_isBegun = false;
};

/// Disc of the fibre's colour with rim and tracer marks, in device units.
void paintFibre(QPainter& painter, const QRectF& box, const FibreLook& look);

}  // namespace arc::print
