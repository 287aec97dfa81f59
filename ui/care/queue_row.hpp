// SPDX-License-Identifier: GPL-3.0-or-later
// One due item in short: its queue, a shape, what to do and why. A button: click, Space or Enter takes it up.
#pragma once
#include <QAbstractButton>
#include <QStringList>

#include "core/care/due.hpp"
#include "ui/theme/state_mark.hpp"

namespace arc::ui {

/// Hold a triangle, Next gap a diamond, the others a disc.
Mark markOf(care::Queue queue);
QString titleOf(care::Queue queue);

/// Whether the row names its queue; in a list only the first of each does.
enum class Lead { Shown, Hidden };

class QueueRow : public QAbstractButton {
    Q_OBJECT
  public:
    explicit QueueRow(QWidget* parent = nullptr);
    /// `more`: further items in the same queue.
    void setItem(const care::DueItem& item, int more, Lead lead = Lead::Shown);
    /// Nothing is due in this queue.
    void setEmpty(care::Queue queue);
    /// What is due is not known yet.
    void setLooking(care::Queue queue);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Words go on in further lines, so that nothing is left out.
    [[nodiscard]] int heightForWidth(int wide) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

  private:
    enum class Has { Item, Nothing };
    struct Lines {
        QStringList title, why;
        int titleTall = 0, whyTall = 0;
    };
    void setNothing(care::Queue queue, const QString& why);
    void say();
    [[nodiscard]] Lines linesIn(int wide) const;
    [[nodiscard]] int textLeft() const;

    Has m_has = Has::Nothing;
    Lead m_lead = Lead::Shown;
    care::Queue m_queue = care::Queue::Hold;
    QString m_title, m_why, m_more;
    Mark m_mark = Mark::Steady;
};

}  // namespace arc::ui
