// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/job_bar.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QProgressBar>
#include <QPushButton>

#include <algorithm>
#include <cmath>

#include "ui/shell/background.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr qint64 shownAfterMs = 300;
constexpr int steps = 1000;

QString timeLeft(const JobState& job) {
    if (job.share < 0.02 || job.sinceMs < 2000) return {};
    const double seconds = static_cast<double>(job.sinceMs) / 1000.0 * (1 - job.share) / job.share;
    if (seconds < 60)
        return JobBar::tr("about %n s left", nullptr, std::max(1, static_cast<int>(std::lround(seconds))));
    return JobBar::tr("about %n min left", nullptr, static_cast<int>(std::lround(seconds / 60)));
}

}  // namespace

JobBar::JobBar(Background& background, QWidget* parent) : QWidget(parent), m_background(background) {
    const Theme theme = currentTheme();
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(theme.px(Gap::Edge), theme.px(4), theme.px(Gap::Edge), theme.px(4));
    layout->setSpacing(theme.px(Gap::Middle));
    m_words = words({}, TextRole::Body, this);
    layout->addWidget(m_words);
    m_bar = new QProgressBar(this);
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(tr("Progress"));
    layout->addWidget(m_bar, 1);
    m_stop = button(tr("Stop"), ButtonKind::Usual, this);
    connect(m_stop, &QPushButton::clicked, this, [this] { m_background.cancel(m_job); });
    layout->addWidget(m_stop);
    connect(&m_background, &Background::changed, this, &JobBar::look);
    hide();
}

void JobBar::look() {
    const auto jobs = m_background.jobs();
    const auto it =
        std::ranges::find_if(jobs, [](const JobState& job) { return job.sinceMs >= shownAfterMs; });
    setVisible(it != jobs.end());
    if (it == jobs.end()) return;
    m_job = it->id;
    QStringList parts{it->title};
    if (!it->doing.isEmpty()) parts << text::spoken(it->doing);
    if (const auto left = timeLeft(*it); !left.isEmpty()) parts << left;
    m_words->setText(parts.join(QStringLiteral(" · ")));
    m_stop->setAccessibleName(tr("Stop: %1").arg(it->title));
    m_bar->setRange(0, it->share < 0 ? 0 : steps);
    if (it->share >= 0) m_bar->setValue(static_cast<int>(it->share * steps));
}

void JobBar::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.fillRect(rect(), theme.colour(Role::Card));
    painter.fillRect(QRect(0, 0, width(), 1), theme.colour(Role::Line));
}

}  // namespace arc::ui
