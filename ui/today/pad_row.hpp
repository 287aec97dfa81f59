// SPDX-License-Identifier: GPL-3.0-or-later
// One fibre of the entry pad: swatch, number and colour word, big digits on the decimal point, attempt,
// verdict as shape and word. Painted by hand; its accessible name says the same.
#pragma once
#include <QWidget>

#include <optional>

#include "core/work/fibre.hpp"
#include "ui/theme/state_mark.hpp"

namespace arc::ui {

enum class Emphasis { None, Current };

struct PadRowView {
    int number = 1;
    QString colour;  ///< "blue", with its tracer: "blue, tracer"
    FibreLook look{FibreColour::Blue, 0};
    QString whole, fraction;  ///< digits left and right of the decimal point
    QString attempt;
    QString earlier;  ///< losses of earlier attempts, may be empty
    std::optional<Mark> mark;
    QString verdict;
    Emphasis emphasis = Emphasis::None;
    bool operator==(const PadRowView& other) const;
};

/// The columns of the pad, in pixels of this width; also used for the header.
struct PadColumns {
    int swatch, number, colour, point, attempt, mark, verdict;
    static PadColumns in(int width);
};

class PadRow : public QWidget {
    Q_OBJECT
  public:
    explicit PadRow(QWidget* parent = nullptr);
    void setView(const PadRowView& view);
    [[nodiscard]] const PadRowView& view() const { return m_view; }
    /// Colour word and verdict are shown in full.
    [[nodiscard]] bool fits() const;

  Q_SIGNALS:
    void chosen();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    [[nodiscard]] Text verdictText() const;

    PadRowView m_view;
};

}  // namespace arc::ui
