// SPDX-License-Identifier: GPL-3.0-or-later
// What the pad asks before it writes: why a splice is made again, kept, voided, or belongs elsewhere.
#include "ui/text/format.hpp"
#include "ui/today/loss_pad.hpp"

namespace arc::ui {

namespace {

QStringList respliceReasons() {
    return {LossPad::tr("high loss"), LossPad::tr("bubble or line"), LossPad::tr("bad cleave"),
            LossPad::tr("fibre broke"), LossPad::tr("sleeve misplaced")};
}

QStringList voidReasons() {
    return {LossPad::tr("typed at the wrong fibre"), LossPad::tr("fibre broke in the tray"),
            LossPad::tr("test splice"), LossPad::tr("entered twice")};
}

QStringList keepReasons() {
    return {LossPad::tr("same value on every attempt"), LossPad::tr("no fibre left to re-splice"),
            LossPad::tr("mismatched fibre, agreed with the client")};
}

}  // namespace

void LossPad::askWhyResplice() {
    if (!m_pad || m_pad->rows().empty()) return;
    const auto& row = m_pad->rows()[m_pad->current()];
    if (row.attempts.empty())
        return tell(Problem{ProblemCode::Refused, "this fibre has no splice yet", "", "Type its loss"});
    const bool ribbon = m_pad->setUp().fibresPerArc > 1;
    askPrompt(ribbon ? tr("Re-splice the whole ribbon: why?")
                     : tr("Re-splice fibre %1: why?").arg(row.fibre.number),
              {{tr("Reason"), respliceReasons().first(), respliceReasons()}}, tr("Re-splice"),
              [this](const QStringList& answer) {
                  m_pad->askResplice(text::utf8(answer.first()));
                  take({});
                  return QString();
              });
}

void LossPad::askToKeep() {
    if (!m_pad || m_pad->rows().empty()) return;
    // Ask the rule first, so that nobody types a note in vain.
    const auto kept = [this](const std::string& reason) {
        return m_pad->typed().empty() ? m_pad->keep(reason)
                                      : m_pad->enterKept(reason, m_session.clock(), m_session.random());
    };
    if (const auto allowed = kept("?"); !allowed) return tell(allowed.error());
    askPrompt(tr("Keep it although it is over the limit: why?"), {{tr("Note"), {}, keepReasons()}},
              tr("Keep"), [this, kept](const QStringList& answer) {
                  const auto write = kept(text::utf8(answer.first()));
                  if (!write) return text::spoken(write.error());
                  Q_EMIT writeAsked(*write);
                  return QString();
              });
}

void LossPad::askToVoid() {
    if (!m_pad || m_pad->rows().empty()) return;
    if (const auto allowed = m_pad->voidReading("?"); !allowed) return tell(allowed.error());
    askPrompt(tr("Void the last reading of fibre %1: why?").arg(m_pad->rows()[m_pad->current()].fibre.number),
              {{tr("Reason"), {}, voidReasons()}}, tr("Void"), [this](const QStringList& answer) {
                  const auto write = m_pad->voidReading(text::utf8(answer.first()));
                  if (!write) return text::spoken(write.error());
                  Q_EMIT writeAsked(*write);
                  return QString();
              });
}

void LossPad::askToSplit() {
    if (!m_pad || m_pad->rows().empty()) return;
    const auto& row = m_pad->rows()[m_pad->current()];
    const auto offer = m_pad->splitOffer();
    if (!offer) {
        const auto refused = m_pad->split(1, 0);
        return tell(refused ? Problem{} : refused.error());
    }
    if (!m_pad->typed().empty() || !m_pad->noted().empty())
        return tell(Problem{ProblemCode::Refused, "what is typed is not saved yet", "",
                            "Enter saves it, Esc drops it"});
    QStringList attempts, fibres;
    for (const auto& attempt : row.attempts) attempts.prepend(QString::number(attempt.reading.attempt));
    fibres << QString::number(*offer);
    for (const auto& other : m_pad->rows())
        if (other.fibre.number != row.fibre.number && other.fibre.number != *offer)
            fibres << QString::number(other.fibre.number);
    askPrompt(tr("Which attempt of fibre %1 was made at which fibre?").arg(row.fibre.number),
              {{tr("Attempt"), attempts.first(), attempts}, {tr("Fibre"), fibres.first(), fibres}},
              tr("Split"), [this](const QStringList& answers) {
                  const auto write = m_pad->split(answers[0].toInt(), answers[1].toInt());
                  if (!write) return text::spoken(write.error());
                  Q_EMIT writeAsked(*write);
                  return QString();
              });
}

}  // namespace arc::ui
