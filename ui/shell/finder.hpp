// SPDX-License-Identifier: GPL-3.0-or-later
// Type a few letters, press Enter: every action of the window, every tool, every job.
#pragma once
#include <QDialog>

#include <functional>
#include <optional>
#include <vector>

class QLineEdit;
class QListWidget;

namespace arc::ui {

class Session;

/// One thing that can be found.
struct Findable {
    QString text;
    QString kind;  ///< "action", "splicer", "job"
    QString key;   ///< its shortcut, may be empty
    QString icon;
    std::function<void()> run;
};

/// How well the letters fit, higher is better; nothing when they do not. Letters of the asked words must
/// occur in order; starts of words count more.
std::optional<int> fit(const QString& asked, const QString& text);

class Finder : public QDialog {
    Q_OBJECT
  public:
    explicit Finder(Session& session, QWidget* parent = nullptr);
    /// Shows it at the top of its window, without blocking.
    void popup();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void gather();
    void gatherCare();
    void filter(const QString& asked);
    void choose();
    void searchSplices();

    Session& m_session;
    QLineEdit* m_asked;
    QListWidget* m_list;
    std::vector<Findable> m_all;
};

}  // namespace arc::ui
