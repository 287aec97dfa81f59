// SPDX-License-Identifier: GPL-3.0-or-later
// "Calibration owed" as stretches of time, and what else is compulsory after a care (see rules.hpp).
#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <utility>

#include "core/care/rules.hpp"
#include "core/care/run.hpp"
#include "core/care/words.hpp"

namespace arc::care {
namespace {

/// At one instant, what begins a chain comes before what ends it.
int rank(const CareRecord& record) {
    if (record.action == action::diagnostic) return 3;
    if (record.action == action::arcCalibration) return 2;
    return record.action == action::stabilise ? 1 : 0;
}

std::vector<const CareRecord*> inOrder(const Tool& tool, std::span<const CareRecord> records) {
    std::vector<const CareRecord*> order;
    for (const CareRecord& record : records)
        if (record.tool == tool.id) order.push_back(&record);
    std::ranges::stable_sort(order, [](const CareRecord* a, const CareRecord* b) {
        return std::pair(a->at.ms, rank(*a)) < std::pair(b->at.ms, rank(*b));
    });
    return order;
}

bool owesCalibration(const Card& card) {
    return std::ranges::find(card.obligations, action::arcCalibration) != card.obligations.end();
}

/// The card a record's obligations come from: a part covered by another card's timer owes nothing by itself.
const Card* wholeCard(const Deck& deck, const CareRecord& record) {
    const Card* card = deck.find(record.action);
    return card && card->isWhole(record.action) ? card : nullptr;
}

std::string lowerFirst(std::string text) {
    if (!text.empty() && text.front() >= 'A' && text.front() <= 'Z') text.front() += 'a' - 'A';
    return text;
}

/// Walks arcs and records in one order of time and keeps what is open.
class Sweep {
  public:
    Sweep(const Tool& tool, const SplicerHistory& history, const Deck& deck, const Settings& settings)
        : tool_(tool),
          splicer_(*asSplicer(tool)),
          history_(history),
          deck_(deck),
          settings_(limitsFor(splicer_, settings)) {}

    std::vector<OwedStretch> over(std::span<const CareRecord* const> records) {
        std::size_t next = 0;
        for (const HistoryArc& arc : history_.arcs) {
            // A record at the instant of an arc was written after it.
            for (; next < records.size() && records[next]->at < arc.at; ++next) take(*records[next]);
            take(arc);
        }
        for (; next < records.size(); ++next) take(*records[next]);
        if (open_) stretches_.push_back(*open_);
        return std::move(stretches_);
    }

  private:
    void owe(Instant from, ActionKey after, std::optional<Condition> condition, std::string because) {
        if (otherFibre()) close(from);
        if (!open_)
            open_ =
                OwedStretch{tool_.id, from, std::nullopt, std::move(after), condition, std::move(because)};
    }

    void close(Instant to) {
        open_->to = to;
        if (open_->from < to) stretches_.push_back(*open_);
        open_.reset();
    }

    /// Owed for the fibre alone: going back to the fibre the arc is calibrated for ends it.
    [[nodiscard]] bool otherFibre() const { return open_ && open_->condition == Condition::OtherFibre; }

    void take(const CareRecord& record) {
        if (record.action == action::environmentChange) {
            if (splicer_.arcControl == ArcControl::Manual)
                owe(record.at, {}, Condition::EnvironmentJump,
                    "the place or the weather changed on " + shortTime(record.at) +
                        " and the arc was not calibrated since");
            return;
        }
        std::erase_if(before_, [&](const ActionKey& key) { return covers(record, key); });
        if (record.action == action::arcCalibration) {
            calibrated(record);
            return;
        }
        const Card* card = wholeCard(deck_, record);
        if (!card || !owesCalibration(*card)) return;
        owe(record.at, record.action, std::nullopt,
            "\"" + lowerFirst(card->title) + "\" was done on " + shortTime(record.at) +
                " and the arc was not calibrated since");
        for (const ActionKey& key : card->obligations) {
            if (key == action::arcCalibration) break;
            if (!covers(record, key)) before_.insert(key);
        }
    }

    void calibrated(const CareRecord& record) {
        if (counts(record, splicer_) && before_.empty()) {
            if (open_) close(record.at);
            lastCalibrated_ = record.at;
            madeFor_ = resultOf(record);
            judged_.reset();
            temperature_.reset();
            pressure_.reset();
            return;
        }
        std::string why = "arc power or position was not adequate";
        if (const auto result = resultOf(record))
            if (const auto faults = faultsOf(*result, splicer_, {}); !faults.empty())
                why = sentence(faults.front());
        if (!before_.empty()) why = "the electrodes were not stabilised before it";
        owe(record.at, record.action, std::nullopt,
            "the calibration of " + shortTime(record.at) + " does not count: " + why);
    }

    void take(const HistoryArc& arc) {
        const std::int64_t idle = settings_.idleDays * msPerDay;
        if (lastArc_ && arc.at.ms - lastArc_->ms >= idle &&
            !(lastCalibrated_ && arc.at.ms - lastCalibrated_->ms < idle))
            owe(arc.at, {}, Condition::IdleStretch,
                counted(static_cast<std::uint64_t>((arc.at.ms - lastArc_->ms) / msPerDay), "day", "days") +
                    " without an arc before " + shortTime(arc.at));
        weather(arc);
        fibre(arc);
        lastArc_ = arc.at;
    }

    void fibre(const HistoryArc& arc) {
        if (open_ && !otherFibre()) return;
        if (fits(arc)) {
            if (open_) close(arc.at);
        } else if (!open_) {
            SpliceUse use = useOf(arc, history_);
            owe(arc.at, {}, Condition::OtherFibre,
                counted(arc.channels, "fibre", "fibres") + " at once, " +
                    (use.mode.empty() ? "no mode named" : "mode " + use.mode) + ", from " +
                    shortTime(arc.at) + " on; the arc was calibrated for " + madeFor(*madeFor_));
        }
    }

    /// Arcs of one mode, closure and count are judged once.
    bool fits(const HistoryArc& arc) {
        if (!madeFor_ || splicer_.kind == SplicerKind::SingleFibre) return true;
        const Judged same{arc.mode, arc.closure, arc.channels};
        if (judged_ != same) {
            judged_ = same;
            fits_ = faultsOf(*madeFor_, splicer_, useOf(arc, history_)).empty();
        }
        return fits_;
    }

    void weather(const HistoryArc& arc) {
        if (arc.temperature) {
            if (!temperature_) temperature_ = arc.temperature;
            const double jump = std::abs(celsius(*arc.temperature) - celsius(*temperature_));
            if (jump >= settings_.jumpCelsius)
                owe(arc.at, {}, Condition::EnvironmentJump,
                    plain(jump) + " °C away from " + plain(celsius(*temperature_)) +
                        " °C, where the arc was last in order");
        }
        if (arc.pressure) {
            if (!pressure_) pressure_ = arc.pressure;
            const double jump = std::abs(hectopascals(*arc.pressure) - hectopascals(*pressure_));
            if (jump >= settings_.jumpHectopascals)
                owe(arc.at, {}, Condition::EnvironmentJump,
                    plain(jump) + " hPa away from " + plain(hectopascals(*pressure_)) +
                        " hPa, where the arc was last in order");
        }
    }

    const Tool& tool_;
    const Splicer& splicer_;
    const SplicerHistory& history_;
    const Deck& deck_;
    Settings settings_;
    std::optional<OwedStretch> open_;
    std::vector<OwedStretch> stretches_;
    std::set<ActionKey> before_;  ///< what must be done before a calibration counts
    std::optional<Instant> lastArc_, lastCalibrated_;
    std::optional<Temperature> temperature_;  ///< of the first arc after the last calibration
    std::optional<Pressure> pressure_;
    std::optional<CalibrationResult> madeFor_;  ///< of the last calibration that counts, if it says
    using Judged = std::tuple<std::uint32_t, std::optional<std::uint32_t>, std::uint8_t>;
    std::optional<Judged> judged_;
    bool fits_ = true;
};

/// Of a card whose loop ran out: what is owed then.
ActionKey owedWhenNotReached(const Card& card) {
    for (const Step& step : card.steps)
        if (const auto* repeat = std::get_if<RepeatStep>(&step.what); repeat && !repeat->thenOwed.empty())
            return repeat->thenOwed;
    return {};
}

/// The first record from `from` on (index) that closes the action, or none.
std::optional<std::size_t> closing(std::span<const CareRecord* const> order, std::size_t from,
                                   const ActionKey& wanted, const Splicer* splicer) {
    for (std::size_t i = from; i < order.size(); ++i) {
        if (!covers(*order[i], wanted)) continue;
        if (wanted == action::arcCalibration) {
            if (splicer && counts(*order[i], *splicer)) return i;
            continue;
        }
        // A part covered on the way is done though the rest of its card was not; the action itself must have
        // reached its end. Only a diagnostic run has no end to reach.
        if (order[i]->action != wanted || effectOf(*order[i]) != Effect::NotReached) return i;
    }
    return std::nullopt;
}

}  // namespace

std::vector<OwedStretch> calibrationOwed(const Tool& splicer, std::span<const CareRecord> records,
                                         const SplicerHistory& history, const Deck& deck,
                                         const Settings& settings) {
    if (!asSplicer(splicer)) return {};
    const auto order = inOrder(splicer, records);
    return Sweep(splicer, history, deck, settings).over(order);
}

const OwedStretch* owedAt(std::span<const OwedStretch> stretches, ToolId splicer, Instant at) {
    const auto found = std::ranges::find_if(stretches, [&](const OwedStretch& stretch) {
        return stretch.splicer == splicer && stretch.from <= at && (!stretch.to || at < *stretch.to);
    });
    return found == stretches.end() ? nullptr : &*found;
}

std::vector<Obligation> openObligations(const Tool& tool, std::span<const CareRecord> records,
                                        const Deck& deck, const Settings& settings) {
    const Splicer* splicer = asSplicer(tool);
    const auto order = inOrder(tool, records);
    std::vector<Obligation> open;
    const auto owe = [&](const ActionKey& what, const CareRecord& record) {
        const auto known = std::ranges::find(open, what, &Obligation::action);
        if (known == open.end()) open.push_back({what, record.action, record.at, record.id});
    };
    int runsInVain = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const CareRecord& record = *order[i];
        if (const Card* card = wholeCard(deck, record)) {
            std::optional<std::size_t> from = i;
            for (const ActionKey& next : card->obligations) {
                // The record itself closes only what it covered on the way.
                if (from) from = closing(order, next == record.action ? *from + 1 : *from, next, splicer);
                if (!from) owe(next, record);
            }
            const ActionKey then = owedWhenNotReached(*card);
            if (effectOf(record) == Effect::NotReached && record.action != action::arcCalibration &&
                !then.empty() && !closing(order, i + 1, then, splicer) &&
                !closing(order, i + 1, record.action, splicer))
                owe(then, record);
        }
        if (record.action != action::arcCalibration || !splicer) continue;
        if (counts(record, *splicer)) {
            runsInVain = 0;
            continue;
        }
        // Up to four runs are normal after long disuse; then the splicer must check itself.
        runsInVain += record.calibration ? record.calibration->runs : 1;
        const ActionKey diagnostic(action::diagnostic);
        const ActionKey calibration(action::arcCalibration);
        if (runsInVain < settings.calibrationRuns) continue;
        if (!closing(order, i + 1, diagnostic, splicer) && !closing(order, i + 1, calibration, splicer))
            owe(diagnostic, record);
        if (closing(order, i + 1, diagnostic, splicer)) runsInVain = 0;
    }
    return open;
}

}  // namespace arc::care
