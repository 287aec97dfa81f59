// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook in memory for tests of what reads one: plain vectors that a test fills, no validation, no
// journal; words are searched as they stand, capitals and all. Writing keeps the entries that closeout makes
// (dispositions, issued records, settings).
#pragma once
#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/logbook.hpp"

namespace arc::test {

class MemoryLogbook final : public Logbook {
  public:
    std::vector<Tool> toolList;
    std::vector<Pairing> pairingList;
    std::vector<Job> jobList;
    std::vector<Cable> cableList;
    std::vector<Closure> closureList;
    std::vector<Span> spanList;
    std::vector<SpliceArc> arcList;  ///< in order of time
    std::map<std::pair<ArcId, int>, int> versions;
    std::vector<CareRecord> careList;
    std::vector<HoldOverride> overrideList;
    std::vector<ExceptionDisposition> dispositionList;
    std::vector<IssuedRecord> issuedList;
    std::vector<MeasuredLoss> measuredList;
    std::map<std::string, std::string, std::less<>> settings;
    std::string head = "00";
    std::vector<Entry> written;  ///< everything that was appended, in order

    using Logbook::append;
    Result<Receipt> append(std::span<const Entry> entries, const Context&) override {
        for (const Entry& entry : entries) {
            written.push_back(entry);
            if (const auto* d = std::get_if<ExceptionDisposition>(&entry)) dispositionList.push_back(*d);
            if (const auto* i = std::get_if<IssuedRecord>(&entry)) issuedList.push_back(*i);
            if (const auto* s = std::get_if<Setting>(&entry)) settings[s->key] = s->value;
        }
        ++changes;
        return Receipt{};
    }
    Result<std::vector<Tool>> tools() override { return toolList; }
    Result<std::vector<Pairing>> pairings() override { return pairingList; }
    Result<std::vector<CounterCorrection>> counterCorrections() override {
        return std::vector<CounterCorrection>{};
    }
    Result<std::vector<Job>> jobs() override { return jobList; }
    Result<std::vector<Cable>> cables(JobId job) override {
        return where(cableList, [&](const Cable& c) { return c.job == job; });
    }
    Result<std::vector<Closure>> closures(JobId job) override {
        return where(closureList, [&](const Closure& c) { return c.job == job; });
    }
    Result<std::vector<Span>> spans(JobId job) override {
        return where(spanList, [&](const Span& s) { return s.job == job; });
    }
    Result<std::vector<CareRecord>> careRecords(std::optional<ToolId> tool) override {
        return where(careList, [&](const CareRecord& c) { return !tool || c.tool == *tool; });
    }
    Result<std::vector<CareRun>> openCareRuns() override { return std::vector<CareRun>{}; }
    Result<std::vector<CardEdition>> cardEditions() override { return std::vector<CardEdition>{}; }
    Result<std::vector<HoldOverride>> holdOverrides() override { return overrideList; }
    Result<std::vector<BaselineChoice>> baselineChoices() override { return std::vector<BaselineChoice>{}; }
    Result<std::vector<SignalAnswer>> signalAnswers() override { return std::vector<SignalAnswer>{}; }
    Result<std::vector<ExceptionDisposition>> dispositions(JobId job) override {
        return where(dispositionList, [&](const ExceptionDisposition& d) { return d.job == job; });
    }
    Result<std::vector<IssuedRecord>> issuedRecords(JobId job) override {
        return where(issuedList, [&](const IssuedRecord& r) { return r.job == job; });
    }
    Result<std::vector<MeasuredLoss>> measuredLosses(std::optional<JobId> job) override {
        return where(measuredList, [&](const MeasuredLoss& m) { return !job || m.job == job; });
    }
    Result<std::optional<std::string>> setting(std::string_view key) override {
        const auto found = settings.find(key);
        if (found == settings.end()) return std::optional<std::string>{};
        return std::optional<std::string>{found->second};
    }
    Result<std::vector<Attachment>> attachments(const Uuid&) override { return std::vector<Attachment>{}; }

    Result<std::optional<SpliceArc>> arc(ArcId id) override {
        const auto found = std::ranges::find(arcList, id, &SpliceArc::id);
        if (found == arcList.end()) return std::optional<SpliceArc>{};
        return std::optional<SpliceArc>{*found};
    }
    Result<std::vector<SpliceRow>> splices(const SpliceFilter& filter, PageOrder order,
                                           std::optional<PageKey> after, std::size_t limit) override {
        std::vector<SpliceRow> rows;
        std::uint64_t number = 0;
        for (const SpliceArc& arc : arcList) {
            SpliceArc bare = arc;
            bare.readings.clear();
            for (const Reading& reading : arc.readings) {
                ++number;
                if (!isWanted(filter, arc, reading)) continue;
                const auto version = versions.find({arc.id, reading.channel});
                rows.push_back({bare, reading, version == versions.end() ? 1 : version->second, number});
            }
        }
        const auto key = [](const SpliceRow& row) { return std::pair(row.arc.at.ms, row.row); };
        const bool up = order == PageOrder::OldestFirst;
        std::ranges::sort(rows, [&](const SpliceRow& a, const SpliceRow& b) {
            return up ? key(a) < key(b) : key(a) > key(b);
        });
        if (after)
            std::erase_if(rows, [&, last = std::pair(after->atMs, after->row)](const SpliceRow& row) {
                return up ? key(row) <= last : key(row) >= last;
            });
        if (rows.size() > limit) rows.resize(limit);
        return rows;
    }
    Result<SplicerHistory> history(ToolId, std::optional<std::int64_t>) override { return SplicerHistory{}; }
    Result<std::optional<SpliceArc>> lastArc(ToolId) override { return std::optional<SpliceArc>{}; }
    Result<std::uint64_t> countArcs(ToolId tool, std::int64_t fromMs, std::int64_t toMs) override {
        return static_cast<std::uint64_t>(std::ranges::count_if(arcList, [&](const SpliceArc& a) {
            return (a.splicer == tool || a.cleaver == tool) && a.at.ms >= fromMs && a.at.ms < toMs;
        }));
    }
    Result<Totals> totals() override { return Totals{}; }
    Result<std::vector<JournalLine>> historyOf(const Uuid&) override { return std::vector<JournalLine>{}; }
    Result<std::vector<JournalLine>> journal(std::uint64_t, std::size_t) override {
        return std::vector<JournalLine>{};
    }
    Result<std::optional<Uuid>> recordBehind(std::uint64_t) override { return std::optional<Uuid>{}; }
    Result<std::string> journalHead() override { return head; }
    Result<std::uint64_t> changeCount() override { return changes; }

  private:
    [[nodiscard]] bool isWanted(const SpliceFilter& filter, const SpliceArc& arc,
                                const Reading& reading) const {
        if (filter.job && arc.job != filter.job) return false;
        if (filter.closure && arc.closure != filter.closure) return false;
        if (filter.splicer && arc.splicer != *filter.splicer) return false;
        if (filter.cleaver && arc.cleaver != filter.cleaver) return false;
        if (filter.fromMs && arc.at.ms < *filter.fromMs) return false;
        if (filter.toMs && arc.at.ms >= *filter.toMs) return false;
        if (filter.lossAbove && reading.loss <= *filter.lossAbove) return false;
        if (!filter.text.empty() &&
            (reading.fibreA + '\n' + reading.fibreB + '\n' + reading.note + '\n' + arc.operatorName)
                    .find(filter.text) == std::string::npos)
            return false;
        if (filter.verdicts.empty()) return true;
        const auto job = std::ranges::find_if(jobList, [&](const Job& j) { return arc.job == j.id; });
        const auto rule = job == jobList.end() ? sampleRules().front() : job->rule;
        return std::ranges::count(filter.verdicts, verdictOf(rule, reading)) > 0;
    }
    template <class T, class F>
    static std::vector<T> where(const std::vector<T>& all, F&& keep) {
        std::vector<T> kept;
        std::ranges::copy_if(all, std::back_inserter(kept), keep);
        return kept;
    }
    std::uint64_t changes = 0;
};

}  // namespace arc::test
