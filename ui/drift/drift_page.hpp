// SPDX-License-Identifier: GPL-3.0-or-later
// Is it drift or luck, since when, which part, did the last care help: the charts of one splicer with the
// signals beside them.
#pragma once
#include <memory>
#include <string>

#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

class QBoxLayout;
class QStackedWidget;

namespace arc::ui {

class BaselineBar;
class ChartColumn;
class EmptyState;
class PageHead;
class SignalPanel;
class SplicerChips;
struct CareLook;

class DriftPage : public Page {
    Q_OBJECT
  public:
    explicit DriftPage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override;

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void addActions();
    void readAgain();
    void showChosen();
    void chooseSplicer(std::size_t index);
    void startCare();
    void askDismissal();
    void answer(const drift::Signal& signal, SignalAnswerKind kind, const QString& reason);
    void openReadings();
    void openBaseline();
    void writeBaseline();
    void sayHead();
    void saveCharts();
    void copyNumbers();
    [[nodiscard]] const drift::SplicerReport* splicer() const;
    [[nodiscard]] const drift::StratumReport* stratum() const;
    [[nodiscard]] const SplicerHistory* history() const;
    [[nodiscard]] const care::Deck* deck() const;

    Session& m_session;
    std::shared_ptr<const DriftView> m_view;
    std::shared_ptr<const CareLook> m_care;
    std::optional<ToolId> m_splicer;
    std::string m_stratum;
    PageHead* m_head;
    SplicerChips* m_chips;
    BaselineBar* m_baseline;
    QStackedWidget* m_stack;
    EmptyState* m_empty;
    ChartColumn* m_charts;
    SignalPanel* m_panel;
    QBoxLayout* m_sides;
};

}  // namespace arc::ui
