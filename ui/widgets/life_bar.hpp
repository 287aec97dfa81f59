// SPDX-License-Identifier: GPL-3.0-or-later
// How much of a life is used: a name, a bar, and the number in words. The bar says nothing the words do not.
#pragma once
#include <QWidget>

#include <optional>

#include "ui/theme/state_mark.hpp"

namespace arc::ui {

class LifeBar : public QWidget {
    Q_OBJECT
  public:
    explicit LifeBar(QWidget* parent = nullptr);
    /// `used` is a share, above 1 when the life is over; empty: not known, the bar stays empty.
    void set(const QString& name, const QString& words, std::optional<double> used, Mark mark = Mark::Steady);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] int heightForWidth(int wide) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] int nameWidth() const;
    [[nodiscard]] int wordsWidth() const;
    [[nodiscard]] int linesIn(int wide) const;

    QString m_name, m_words;
    std::optional<double> m_used;
    Mark m_mark = Mark::Steady;
};

}  // namespace arc::ui
