// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/find_exceptions.hpp"

#include <algorithm>
#include <map>

#include "core/stats/plain_number.hpp"

namespace arc::closeout {
namespace {

std::string dB(double value) {
    std::string trimmed = stats::fixedNumber(value, 3);
    if (trimmed.back() == '0') trimmed.pop_back();
    return trimmed;
}

/// The last eight digits of an identity: enough to tell one reading from the next in a key people can type.
std::string tail(const Uuid& uuid) {
    return toText(uuid).substr(28);
}

std::string counted(std::size_t count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string pairName(const Splice& splice) {
    if (splice.a.name.empty() && splice.b.name.empty())
        return "groove " + std::to_string(splice.final().channel);
    if (splice.b.name.empty() || splice.a.name == splice.b.name) return splice.a.name;
    if (splice.a.name.empty()) return splice.b.name;
    return splice.a.name + "-" + splice.b.name;
}

std::string fibreWords(const Splice& splice) {
    if (splice.a.name.empty() && splice.b.name.empty()) return pairName(splice);
    return "fibre " + (splice.a.name.empty() ? words(splice.b) : words(splice.a));
}

std::string spliceKey(ExceptionKind kind, const ClosureSection& section, const Splice& splice) {
    return std::string(word(kind)) + "/" + section.label + "/" + pairName(splice) + "/" +
           tail(splice.final().arc.uuid);
}

class Finder {
  public:
    explicit Finder(Record& record) : m_record(record) {}

    void judge() {
        const AcceptanceRule& rule = m_record.job.rule;
        for (ClosureSection& section : m_record.closures) {
            for (Splice& splice : section.splices) {
                judge(splice);
                const double mdb = splice.judgedDb * 1000;
                // Half a thousandth is the finest step a two-way mean has.
                if (mdb > rule.ceiling.value + 0.25) {
                    splice.verdict = SpliceVerdict::OverCeiling;
                    over(section, splice, ExceptionKind::OverCeiling, rule.ceiling);
                } else if (mdb > rule.perSplice.value + 0.25) {
                    splice.verdict = SpliceVerdict::OverLimit;
                    over(section, splice, ExceptionKind::OverLimit, rule.perSplice);
                }
            }
        }
        for (SpanSection& span : m_record.spans) average(span, rule);
    }

    void completeness() {
        for (const ClosureSection& section : m_record.closures) {
            if (!section.completeness) continue;
            const Completeness& found = *section.completeness;
            if (!found.missing.empty()) {
                std::vector<int> numbers;
                for (const PlannedSplice& planned : found.missing) numbers.push_back(planned.fibreA);
                const bool isOne = numbers.size() == 1;
                const std::string which = found.spliced == 0
                                              ? "nothing is spliced yet"
                                              : (isOne ? "fibre " : "fibres ") + ranges(numbers);
                add({"missing/" + section.label + "/" + std::to_string(numbers.size()),
                     ExceptionKind::Missing,
                     section.label,
                     std::to_string(numbers.size()) + " of " + std::to_string(found.planned) +
                         (isOne ? " planned splices is missing: " : " planned splices are missing: ") + which,
                     numbers.size(),
                     {}});
            }
            if (!found.unplanned.empty())
                add({"unplanned/" + section.label + "/" + std::to_string(found.unplanned.size()),
                     ExceptionKind::Unplanned,
                     section.label,
                     counted(found.unplanned.size(), "splice is", "splices are") + " not in the splice plan",
                     found.unplanned.size(),
                     {}});
        }
    }

    void owedCalibrations() {
        // (tool, stretch) → splices made in it
        std::map<std::pair<std::size_t, std::size_t>, std::size_t> counts;
        forEachSplice([&](ClosureSection&, Splice& splice) {
            const Attempt& made = splice.final();
            const auto& owed = m_record.equipment[made.splicer].owed;
            for (std::size_t i = 0; i < owed.size(); ++i) {
                if (made.at < owed[i].from || (owed[i].to && made.at >= *owed[i].to)) continue;
                ++counts[{made.splicer, i}];
                flag(splice, ExceptionKind::CalibrationOwed);
            }
        });
        for (const auto& [place, count] : counts) {
            const Equipment& item = m_record.equipment[place.first];
            const care::OwedStretch& stretch = item.owed[place.second];
            add({"calibration_owed/" + item.tool.label + "/" + toIso(stretch.from) + "/" +
                     std::to_string(count),
                 ExceptionKind::CalibrationOwed,
                 item.tool.label,
                 counted(count, "splice was", "splices were") + " made while an arc calibration was owed (" +
                     stretch.because + ")",
                 count,
                 {}});
        }
    }

    void overrides(const std::vector<HoldOverride>& all) {
        for (const HoldOverride& override_ : all) {
            const auto tool = std::ranges::find_if(
                m_record.equipment, [&](const Equipment& e) { return e.tool.id == override_.tool; });
            if (tool == m_record.equipment.end()) continue;
            const auto index = static_cast<std::uint32_t>(tool - m_record.equipment.begin());
            // A hold ends with the next care that is recorded for the tool.
            std::optional<Instant> end;
            for (const CareLine& care : tool->during)
                if (care.at >= override_.at && !end) end = care.at;
            std::size_t count = 0;
            forEachSplice([&](ClosureSection&, Splice& splice) {
                const Attempt& made = splice.final();
                if (made.splicer != index && made.cleaver != index) return;
                if (made.at < override_.at || (end && made.at >= *end)) return;
                ++count;
                flag(splice, ExceptionKind::OverrideUsed);
            });
            if (count == 0) continue;
            add({"override_used/" + tool->tool.label + "/" + tail(override_.id.uuid) + "/" +
                     std::to_string(count),
                 ExceptionKind::OverrideUsed,
                 tool->tool.label,
                 counted(count, "splice was", "splices were") + " made on hold; " +
                     (override_.by.empty() ? "no name" : override_.by) + ": " + override_.reason,
                 count,
                 {}});
        }
    }

    void oneWay() {
        for (ClosureSection& section : m_record.closures) {
            std::map<int, std::vector<std::string>> byWavelength;
            std::size_t unmeasured = 0;
            for (Splice& splice : section.splices) {
                bool isOneWay = false;
                for (const Measurement& measured : splice.measured) {
                    if (measured.twoWayDb()) continue;
                    byWavelength[measured.wavelengthNm].push_back(pairName(splice));
                    isOneWay = true;
                }
                const bool lacks = m_record.job.rule.directions == Directions::TwoWay &&
                                   splice.judgedBy != JudgedBy::TwoWayMean;
                if (lacks) ++unmeasured;
                if (lacks || isOneWay) flag(splice, ExceptionKind::OneWay);
            }
            for (const auto& [fibre, measured] : section.loose)
                if (!measured.twoWayDb()) byWavelength[measured.wavelengthNm].push_back(fibre);
            for (const auto& [wavelength, fibres] : byWavelength)
                add({"one_way/" + section.label + "/" + std::to_string(wavelength) + "/" +
                         std::to_string(fibres.size()),
                     ExceptionKind::OneWay,
                     section.label,
                     counted(fibres.size(), "fibre", "fibres") + " measured from one end only at " +
                         std::to_string(wavelength) + " nm: " + listed(fibres),
                     fibres.size(),
                     {}});
            if (unmeasured > 0)
                add({"one_way/" + section.label + "/no_mean/" + std::to_string(unmeasured),
                     ExceptionKind::OneWay,
                     section.label,
                     counted(unmeasured, "splice has", "splices have") +
                         " no loss measured from both ends, though the rule asks for it",
                     unmeasured,
                     {}});
        }
    }

    void corrections() {
        forEachSplice([&](ClosureSection& section, Splice& splice) {
            const bool isCorrected = std::ranges::any_of(
                splice.attempts, [](const Attempt& a) { return a.correction == Correction::AfterTheFact; });
            if (isCorrected) {
                flag(splice, ExceptionKind::Corrected);
                const std::string& note = splice.final().note;
                add({spliceKey(ExceptionKind::Corrected, section, splice),
                     ExceptionKind::Corrected,
                     section.label,
                     "A reading of " + fibreWords(splice) + " was corrected after the fact" +
                         (note.empty() ? "" : ": " + note),
                     1,
                     {}});
            }
            const auto firsts = std::ranges::count(splice.attempts, 1, &Attempt::number);
            if (firsts > 1) {
                flag(splice, ExceptionKind::EnteredTwice);
                add({spliceKey(ExceptionKind::EnteredTwice, section, splice),
                     ExceptionKind::EnteredTwice,
                     section.label,
                     std::to_string(firsts) + " first attempts of " + fibreWords(splice) +
                         " are written down; the latest counts",
                     1,
                     {}});
            }
        });
    }

    void settle(const std::vector<ExceptionDisposition>& dispositions) {
        std::map<std::string_view, const ExceptionDisposition*> latest;
        for (const ExceptionDisposition& disposition : dispositions) {
            const ExceptionDisposition*& slot = latest[disposition.exceptionKey];
            if (slot == nullptr || slot->at <= disposition.at) slot = &disposition;
        }
        for (Exception& exception : m_record.exceptions) {
            const auto found = latest.find(exception.key);
            if (found != latest.end()) exception.disposition = *found->second;
        }
        std::ranges::stable_sort(m_record.exceptions, {}, &Exception::kind);
    }

  private:
    static void flag(Splice& splice, ExceptionKind kind) {
        if (!std::ranges::count(splice.flags, kind)) splice.flags.push_back(kind);
    }

    void add(Exception exception) { m_record.exceptions.push_back(std::move(exception)); }

    template <class F>
    void forEachSplice(F&& visit) {
        for (ClosureSection& section : m_record.closures)
            for (Splice& splice : section.splices) visit(section, splice);
    }

    void judge(Splice& splice) const {
        splice.judgedBy = JudgedBy::Estimate;
        splice.judgedDb = decibels(splice.final().loss);
        if (m_record.job.rule.directions != Directions::TwoWay) return;
        std::optional<double> worst;
        for (const Measurement& measured : splice.measured)
            if (const auto mean = measured.twoWayDb(); mean && (!worst || *mean > *worst)) worst = mean;
        if (!worst) return;
        splice.judgedBy = JudgedBy::TwoWayMean;
        splice.judgedDb = *worst;
    }

    /// The average of the contract is over a span.
    void average(SpanSection& span, const AcceptanceRule& rule) {
        double sum = 0;
        for (const std::size_t at : span.sections)
            for (const Splice& splice : m_record.closures[at].splices) {
                sum += splice.judgedDb;
                ++span.splices;
            }
        if (span.splices == 0) return;
        const double mean = sum / static_cast<double>(span.splices);
        span.meanDb = mean;
        if (!isOverAverage(span, rule)) return;
        const std::string where = span.kind == SpanKind::Rest ? std::string(noSpan) : span.label;
        add({"average_over/" + (where.empty() ? "" : where + "/") + dB(mean) + "/" +
                 std::to_string(span.splices),
             ExceptionKind::AverageOver,
             where,
             "The mean of " + counted(span.splices, "splice", "splices") + " is " + dB(mean) +
                 " dB, the limit is " + dB(decibels(rule.average)) + " dB",
             span.splices,
             {}});
    }

    void over(const ClosureSection& section, Splice& splice, ExceptionKind kind, Loss limit) {
        flag(splice, kind);
        const bool isMean = splice.judgedBy == JudgedBy::TwoWayMean;
        std::string fibre = fibreWords(splice);
        fibre.front() = static_cast<char>(fibre.front() - 'a' + 'A');
        add({spliceKey(kind, section, splice),
             kind,
             section.label,
             fibre + ": " + dB(splice.judgedDb) + " dB" + (isMean ? " two-way mean" : "") + " after " +
                 counted(splice.attempts.size(), "attempt", "attempts") + ", limit " + dB(decibels(limit)) +
                 " dB" + (splice.final().note.empty() ? "" : "; " + splice.final().note),
             1,
             {}});
    }

    static std::string listed(const std::vector<std::string>& names) {
        constexpr std::size_t most = 12;
        std::string text;
        for (std::size_t i = 0; i < names.size() && i < most; ++i) text += (i == 0 ? "" : ", ") + names[i];
        if (names.size() > most) text += " and " + std::to_string(names.size() - most) + " more";
        return text;
    }

    Record& m_record;
};

}  // namespace

const Splice* spliceOf(const Record& record, const Exception& exception) {
    for (const ClosureSection& section : record.closures) {
        if (section.label != exception.where) continue;
        for (const Splice& splice : section.splices)
            if (spliceKey(exception.kind, section, splice) == exception.key) return &splice;
    }
    return nullptr;
}

std::string ranges(std::vector<int> numbers) {
    std::ranges::sort(numbers);
    std::string text;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] <= numbers[last] + 1) ++last;
        if (!text.empty()) text += ", ";
        text += std::to_string(numbers[i]);
        if (numbers[last] != numbers[i]) text.append("-").append(std::to_string(numbers[last]));
        i = last + 1;
    }
    return text;
}

void findExceptions(Record& record, const std::vector<HoldOverride>& overrides,
                    const std::vector<ExceptionDisposition>& dispositions) {
    Finder finder(record);
    finder.judge();
    finder.completeness();
    finder.owedCalibrations();
    finder.overrides(overrides);
    finder.oneWay();
    finder.corrections();
    finder.settle(dispositions);
}

}  // namespace arc::closeout
