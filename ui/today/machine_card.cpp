// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/machine_card.hpp"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/kit/tool_words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/comb.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

const drift::StratumReport* stratumInUse(const drift::SplicerReport& report, const std::string& key) {
    const auto it = std::ranges::find(report.strata, key, &drift::StratumReport::stratum);
    if (it != report.strata.end()) return &*it;
    const auto rank = [](const drift::StratumReport& s) {
        return static_cast<int>(s.standing) * 1000000ULL + s.arcs;
    };
    const auto worst = std::ranges::max_element(report.strata, {}, rank);
    return worst == report.strata.end() ? nullptr : &*worst;
}

const drift::Signal* latestOpen(const drift::StratumReport& stratum) {
    for (auto it = stratum.signals.rbegin(); it != stratum.signals.rend(); ++it)
        if (it->state == drift::SignalState::Open || it->state == drift::SignalState::Answered) return &*it;
    return nullptr;
}

QString where(const drift::Signal& signal) {
    if (signal.channel) return MachineCard::tr("groove %1").arg(*signal.channel);
    if (signal.channels.size() == 1) return MachineCard::tr("groove %1").arg(signal.channels.front());
    if (!signal.channels.empty()) {
        QStringList names;
        for (const int channel : signal.channels) names << QString::number(channel);
        return MachineCard::tr("grooves %1").arg(names.join(QStringLiteral(", ")));
    }
    switch (signal.cause) {
        case drift::Cause::Cleaver:
            return MachineCard::tr("cleaver");
        case drift::Cause::Fibre:
            return MachineCard::tr("fibre");
        case drift::Cause::Electrode:
            return MachineCard::tr("electrodes");
        case drift::Cause::Calibration:
            return MachineCard::tr("calibration");
        case drift::Cause::Groove:
        case drift::Cause::Unknown:
            break;
    }
    return MachineCard::tr("all together");
}

const kit::LifeBar* bar(const kit::ToolLife& life, std::string_view counter) {
    const auto it =
        std::ranges::find_if(life.bars, [&](const kit::LifeBar& b) { return b.counter == counter; });
    return it == life.bars.end() ? nullptr : &*it;
}

}  // namespace

MachineCard::MachineCard(QWidget* parent) : QFrame(parent) {
    const Theme theme = currentTheme();
    setProperty("ground", QStringLiteral("card"));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(22), theme.px(14), theme.px(22), theme.px(14));
    box->setSpacing(theme.px(4));
    m_title = words(QString(), TextRole::Strong, this);
    m_title->setWordWrap(true);
    box->addWidget(m_title);
    auto* state = new QHBoxLayout;
    state->setSpacing(theme.px(10));
    m_mark = new StateMark(Mark::Learning, this);
    m_mark->setFixedSize(theme.px(22), theme.px(22));
    m_state = words(QString(), TextRole::Heading, this);
    m_state->setWordWrap(true);
    state->addWidget(m_mark);
    state->addWidget(m_state, 1);
    box->addLayout(state);
    m_since = words(QString(), TextRole::Soft, this);
    m_since->setWordWrap(true);
    box->addWidget(m_since);
    m_comb = new Comb(this);
    box->addWidget(m_comb);
    auto* facts = new QGridLayout;
    facts->setVerticalSpacing(theme.px(2));
    facts->setColumnStretch(1, 1);
    for (int i = 0; i < 3; ++i) {
        m_names[i] = words(QString(), TextRole::Soft, this);
        m_values[i] = words(QString(), TextRole::Bold, this);
        m_values[i]->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        facts->addWidget(m_names[i], i, 0);
        facts->addWidget(m_values[i], i, 1);
    }
    box->addLayout(facts);
    clear();
}

void MachineCard::clear() {
    m_title->setText(tr("No splicer chosen"));
    m_state->setText(tr("nothing known yet"));
    m_mark->setMark(Mark::Learning);
    m_since->clear();
    m_comb->hide();
    for (int i = 0; i < 3; ++i) setFact(i, {}, {}, {});
}

void MachineCard::setFact(int row, const QString& name, const QString& value, const QString& state) {
    m_names[row]->setText(name);
    m_values[row]->setText(value);
    setState(m_values[row], state);
}

void MachineCard::setMachine(const Tool& splicer, const drift::SplicerReport* report,
                             const std::string& stratum, const kit::ToolLife* life, Instant now) {
    const auto* traits = asSplicer(splicer);
    QString title = tr("Splicer %1").arg(text::words(splicer.label));
    if (!splicer.nickname.empty()) title += QStringLiteral(" “%1”").arg(text::words(splicer.nickname));
    if (traits && traits->grooves > 1) title += tr(", %1 grooves").arg(traits->grooves);
    m_title->setText(title);

    const auto* inUse = report ? stratumInUse(*report, stratum) : nullptr;
    const Mark mark = inUse ? markOf(inUse->standing) : Mark::Learning;
    m_mark->setMark(mark);
    QString state = inUse ? wordOf(mark) : report ? tr("no arcs yet") : tr("looking…");
    QString since;
    if (inUse) {
        if (const auto* signal = latestOpen(*inUse)) {
            state += QStringLiteral(": ") + where(*signal);
            since = tr("since arc %1 (%2–%3), %4")
                        .arg(text::number(static_cast<std::int64_t>(signal->beganAtArc)),
                             text::number(static_cast<std::int64_t>(signal->beganLow)),
                             text::number(static_cast<std::int64_t>(signal->beganHigh)),
                             text::moment(signal->beganAt, now));
        } else if (inUse->standing == drift::Standing::Learning) {
            since = tr("Arcs in this mode: %1; the charts judge from 60 on")
                        .arg(text::number(static_cast<std::int64_t>(inUse->arcs)));
        } else {
            since = tr("mean of late %1 dB, baseline %2")
                        .arg(text::meanLoss(inUse->recentMeanDb), text::meanLoss(inUse->baselineMeanDb));
        }
    }
    m_state->setText(state);
    setState(m_state, stateName(mark));
    m_since->setText(since);
    m_since->setVisible(!since.isEmpty());
    if (inUse) m_comb->setTeeth(teethOf(*inUse));
    m_comb->setVisible(inUse != nullptr);
    if (!life) return;

    if (const auto* electrodes = bar(*life, "electrodes"); electrodes && electrodes->limit) {
        const QString used = text::number(static_cast<std::int64_t>(electrodes->used));
        const QString value =
            tr("%1 of about %2 arcs").arg(used, text::number(static_cast<std::int64_t>(*electrodes->limit)));
        const bool over = electrodes->used >= *electrodes->limit;
        setFact(0, tr("electrodes"),
                electrodes->certainty == kit::Certainty::AtLeast ? tr("at least %1").arg(value) : value,
                over ? QStringLiteral("watch") : QString());
    }
    if (const auto* grooves = bar(*life, "grooves")) {
        const QString used = text::number(static_cast<std::int64_t>(grooves->used));
        setFact(1, tr("grooves cleaned"),
                grooves->certainty == kit::Certainty::AtLeast ? tr("not known, over %1 arcs").arg(used)
                                                              : tr("%1 arcs ago").arg(used),
                {});
    }
    if (life->calibration) {
        const auto& calibration = *life->calibration;
        const bool owed = calibration.state == care::CalibrationState::Owed;
        const auto said = calibrationWords(calibration, now);
        setFact(2, tr("arc calibration"), owed ? tr("owed") : said.words,
                owed                        ? QStringLiteral("drifting")
                : said.mark == Mark::Steady ? QString()
                                            : QStringLiteral("watch"));
        if (calibration.owed) m_values[2]->setToolTip(text::spoken(calibration.owed->because));
    }
}

}  // namespace arc::ui
