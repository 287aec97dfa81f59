// SPDX-License-Identifier: GPL-3.0-or-later
// From the pad into the logbook; a held splicer asks for a name and a reason first.
#include <QLabel>

#include "ui/attachments/sheet.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/text/format.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/prompt_bar.hpp"
#include "ui/today/today_page.hpp"

namespace arc::ui {

namespace {

QStringList overrideReasons() {
    return {TodayPage::tr("last ribbon of the closure"),
            TodayPage::tr("the client waits, looked at by the supervisor"),
            TodayPage::tr("done, not yet written down")};
}

}  // namespace

void TodayPage::write(const pad::Write& write) {
    if (!m_hold->isHidden()) return askOverride(write);
    m_saving = Saving::Own;
    const bool saved = m_session.save(write.entries, Undo::Offered, write.opposite, text::words(write.text));
    m_saving = Saving::No;
    if (!saved) {
        m_pad->tell(Problem{ProblemCode::Unavailable, "not saved; what you typed is still here", "",
                            "Press Enter to try again"});
        return;
    }
    m_pad->written(write);
}

void TodayPage::askOverride(const pad::Write& write) {
    const auto look = m_desk.look();
    if (!look || !m_sitting.splicer) return;
    const auto holds = look->openHolds(*m_sitting.splicer);
    m_pad->askPrompt(
        tr("%1. Going on is written into the record. Who goes on, and why?").arg(m_holdTitle->text()),
        {{tr("Name"), text::words(m_here->setUp.operatorName), {}}, {tr("Reason"), {}, overrideReasons()}},
        tr("Go on"), [this, holds, write](const QStringList& answers) -> QString {
            std::vector<Entry> entries;
            for (const auto& item : holds) {
                if (m_overridden.contains(item.key)) continue;
                entries.emplace_back(HoldOverride{m_session.newId<EntryId>(), item.tool, item.key,
                                                  text::utf8(answers[0]), text::utf8(answers[1]),
                                                  m_session.clock().now()});
            }
            m_saving = Saving::Own;
            const bool saved = m_session.save(entries, Undo::No);
            m_saving = Saving::No;
            if (!saved) return tr("Not saved. Press Enter to try again.");
            for (const auto& item : holds) m_overridden.insert(item.key);
            showHold();
            this->write(write);
            return {};
        });
}

void TodayPage::saveDraft() {
    if (m_here) remember(m_pad->draft());
}

void TodayPage::care(const care::DueItem& item) {
    Target target;
    target.tool = item.tool;
    target.action = item.action;
    target.answers = {item.key};
    m_session.go(Screen::Care, target);
}

void TodayPage::attach() {
    if (!m_here || !m_pad->pad()) return;
    const auto& pad = *m_pad->pad();
    std::vector<AttachmentSubject> subjects;
    if (!pad.rows().empty()) {
        const auto& row = pad.rows()[pad.current()];
        for (auto attempt = row.attempts.rbegin(); attempt != row.attempts.rend(); ++attempt)
            subjects.push_back(
                {attempt->arc.uuid, tr("Splice of fibre %1, attempt %2, %3 dB, %4")
                                        .arg(row.fibre.number)
                                        .arg(attempt->reading.attempt)
                                        .arg(text::loss(attempt->reading.loss),
                                             text::moment(attempt->at, m_session.clock().now()))});
    }
    if (m_here->closure)
        subjects.push_back(
            {m_here->closure->id.uuid, tr("Closure %1").arg(text::words(m_here->closure->label))});
    if (!subjects.empty()) openAttachments(m_session, std::move(subjects), this);
}

}  // namespace arc::ui
