// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/devices_panel.hpp"

#include <QFrame>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

QString standingWords(DeviceStanding standing) {
    switch (standing) {
        case DeviceStanding::ThisOne:
            return DevicesPanel::tr("this laptop");
        case DeviceStanding::Accepted:
            return DevicesPanel::tr("accepted");
        case DeviceStanding::Unknown:
            return DevicesPanel::tr("not accepted");
    }
    return {};
}

}  // namespace

DevicesPanel::DevicesPanel(Session& session, QWidget* parent) : Panel(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box =
        begin(tr("Each laptop signs with a key of its own. Who takes in its satchels compares the key "
                 "by phone once and gives the laptop a name."))
            .first;
    auto* own = card(this);
    inside(own)->addWidget(words(tr("The key of this laptop"), TextRole::Small, own));
    m_own = words(QString(), TextRole::Digits, own);
    m_own->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_own->setAccessibleName(tr("The key of this laptop"));
    inside(own)->addWidget(m_own);
    box->addWidget(own);
    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(10), theme.px(8), theme.px(10));
    m_list = new QListWidget(sheet);
    m_list->setAccessibleName(tr("Laptops"));
    m_list->setFrameShape(QFrame::NoFrame);
    inside(sheet)->addWidget(m_list, 1);
    m_prompt = new PromptBar(sheet);
    inside(sheet)->addWidget(m_prompt);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(theme.px(8), 0, 0, 0);
    m_name = button(tr("Accept or rename  N"), ButtonKind::Usual, sheet);
    row->addWidget(m_name);
    row->addStretch(1);
    inside(sheet)->addLayout(row);
    box->addWidget(sheet, 1);
    m_outcome = new Outcome(this);
    box->addWidget(m_outcome);
    connect(m_name, &QPushButton::clicked, this, &DevicesPanel::name);
    connect(m_list, &QListWidget::currentRowChanged, this,
            [this] { m_name->setEnabled(chosen() && chosen()->standing != DeviceStanding::ThisOne); });
    connect(m_prompt, &PromptBar::closed, this, [this] { m_list->setFocus(); });
    m_session.actions().add({QStringLiteral("logbook.name"),
                             tr("Accept the chosen laptop, or rename it"),
                             Qt::Key_N,
                             {},
                             Screen::Logbook},
                            m_list, [this] { name(); });
}

void DevicesPanel::refresh() {
    auto devices = m_session.workbench().devices();
    if (!devices) return m_outcome->say(devices.error());
    m_all = std::move(*devices);
    const int before = std::max(0, m_list->currentRow());
    m_list->clear();
    for (const auto& device : m_all) {
        if (device.standing == DeviceStanding::ThisOne) m_own->setText(text::words(device.fingerprint));
        m_list->addItem(QStringLiteral("%1   %2   %3")
                            .arg(text::words(device.fingerprint), text::words(device.name),
                                 standingWords(device.standing)));
    }
    if (!m_all.empty()) m_list->setCurrentRow(std::min(before, m_list->count() - 1));
}

QWidget* DevicesPanel::firstFocus() {
    return m_list;
}

const Device* DevicesPanel::chosen() const {
    const int row = m_list->currentRow();
    return row < 0 || row >= static_cast<int>(m_all.size()) ? nullptr : &m_all[static_cast<std::size_t>(row)];
}

void DevicesPanel::name() {
    const auto* device = chosen();
    if (!device) return;
    if (device->standing == DeviceStanding::ThisOne)
        return m_outcome->say(tr("This laptop needs no name here."), Mark::Watch);
    m_prompt->ask(tr("Name of the laptop with the key %1").arg(text::words(device->fingerprint)),
                  {{tr("Name"), text::words(device->name), {}}}, tr("Give the name"),
                  [this, key = device->key](const QStringList& answers) -> QString {
                      const auto done = m_session.workbench().acceptDevice(key, text::utf8(answers[0]));
                      if (!done) return asLine(done.error());
                      m_outcome->say(tr("Satchels of %1 are taken in from now on.").arg(answers[0]),
                                     Mark::Steady);
                      refresh();
                      return {};
                  });
}

}  // namespace arc::ui
