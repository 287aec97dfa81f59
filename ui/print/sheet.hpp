// SPDX-License-Identifier: GPL-3.0-or-later
// Pages as a running sheet: millimetres, a cursor that moves down, headers, footers, watermark and page
// numbers. Everything that is painted goes through here, so that a first, silent pass can count the pages.
#pragma once
#include <QColor>
#include <QFont>
#include <QFontMetricsF>
#include <QGlyphRun>
#include <QHash>
#include <QPainter>
#include <QPdfWriter>
#include <QRectF>
#include <QString>

#include <functional>
#include <map>
#include <tuple>
#include <vector>

#include "ui/print/record_pdf.hpp"
#include "ui/print/tongue.hpp"

namespace arc::print {

enum class Pass { Counting, Painting };
enum class Across { Left, Right, Centre };
enum class Face { Text, Mono };
enum class Weight { Normal, Bold };

struct Type {
    double points = 8.5;
    Weight weight = Weight::Normal;
    QColor colour;
    Face face = Face::Text;
};

/// What stands on every page.
struct Frame {
    QString headLeft, headRight, footLeft;
    QString watermark;  ///< empty: none
};

enum class Rank { Section, Closure };
struct Beginning {
    QString title;
    int page = 1;
    Rank rank = Rank::Section;
};

class Sheet {
  public:
    /// `pages` is the count of the silent pass; 0 in that pass.
    Sheet(QPdfWriter& writer, const Tongue& tongue, Frame frame, Pass pass, int pages);

    [[nodiscard]] const Tongue& tongue() const { return m_tongue; }
    [[nodiscard]] QString tr(const char* english) const { return m_tongue.tr(english); }

    // Millimetres; the cursor starts below the header.
    double y = 0;
    [[nodiscard]] double left() const { return m_left; }
    [[nodiscard]] double width() const { return m_width; }
    [[nodiscard]] double bottom() const { return m_bottom; }
    [[nodiscard]] int page() const { return m_page; }
    [[nodiscard]] Pass pass() const { return m_pass; }

    void newPage();
    /// Goes to a new page when less than that is left; true when it did.
    bool need(double height);

    /// One line, its baseline at `base`; what does not fit ends in an ellipsis.
    void text(double x, double base, double width, const QString& words, const Type& type,
              Across across = Across::Left);
    [[nodiscard]] double textWidth(const QString& words, const Type& type) const;
    /// Wrapped text from `top`; answers its height. `heightOf` is the same without painting.
    double paragraph(double x, double top, double width, const QString& words, const Type& type);
    /// From the top of a paragraph to its first baseline.
    [[nodiscard]] double ascent(const Type& type) const;
    [[nodiscard]] double heightOf(double width, const QString& words, const Type& type) const;
    void line(double x1, double y1, double x2, double y2, const QColor& colour, double thickness = 0.2);
    void box(const QRectF& millimetres, const QColor& fill);
    /// For figures: paints in device units; `px` turns millimetres into them.
    void figure(const std::function<void(QPainter&, double px)>& paint);

    /// The same without putting pen, brush and font back afterwards.
    void bareFigure(const std::function<void(QPainter&, double px)>& paint);

    /// Header rule and title of a section; keeps `follows` mm together with it.
    void section(const QString& title, double follows = 30);
    /// Notes that something begins here, for the contents.
    void begins(const QString& title, Rank rank) { m_contents.push_back({title, m_page, rank}); }
    [[nodiscard]] const std::vector<Beginning>& contents() const { return m_contents; }

  private:
    void dress();
    /// Words on one line, ready to be put on paper.
    struct Shaped {
        QList<QGlyphRun> runs;
        double advance = 0;
    };
    /// A font and its metrics, made once for all cells that use it.
    struct Cut {
        QFont font;
        QFontMetricsF metrics;
        QHash<QString, Shaped> shaped;  ///< tables say the same few words ten thousand times
    };
    [[nodiscard]] Shaped shape(Cut& cut, const QString& words) const;
    [[nodiscard]] Cut& cutOf(const Type& type) const;
    [[nodiscard]] double px(double millimetres) const { return millimetres * m_scale; }

    QPdfWriter& m_writer;
    const Tongue& m_tongue;
    QPainter m_painter;
    Frame m_frame;
    Pass m_pass;
    int m_pages, m_page = 1;
    double m_scale, m_left, m_width, m_top, m_bottom, m_paperWidth, m_paperHeight;
    QString m_family, m_mono;
    std::vector<Beginning> m_contents;
    mutable std::map<std::tuple<double, Weight, Face>, Cut> m_cuts;
};

/// Our colours on paper.
namespace ink {
QColor text();
QColor soft();
QColor accent();
QColor wash();
QColor shade();
QColor hairline();
QColor steady();
QColor watch();
QColor drifting();
QColor recovered();
}  // namespace ink

}  // namespace arc::print
