// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/build.hpp"

#include <algorithm>
#include <charconv>
#include <iterator>
#include <map>

#include "core/closeout/chains.hpp"
#include "core/closeout/equipment.hpp"
#include "core/closeout/find_exceptions.hpp"
#include "core/closeout/issued.hpp"
#include "core/closeout/spans.hpp"

namespace arc::closeout {
namespace {

constexpr std::size_t pageSize = 4096;

/// All readings of the job, oldest first.
Result<std::deque<SpliceRow>> readSplices(Logbook& book, JobId job, Progress& progress) {
    std::deque<SpliceRow> rows;
    SpliceFilter filter;
    filter.job = job;
    std::optional<PageKey> after;
    for (;;) {
        if (progress.stopRequested()) return fail(ProblemCode::Cancelled, "stopped; nothing was written");
        Result<std::vector<SpliceRow>> page = book.splices(filter, PageOrder::OldestFirst, after, pageSize);
        if (!page) return tl::unexpected(page.error());
        const bool isLast = page->size() < pageSize;
        if (!page->empty()) after = PageKey{page->back().arc.at.ms, page->back().row};
        std::ranges::move(*page, std::back_inserter(rows));
        progress.report(rows.size(), 0, "reading splices");
        if (isLast) return rows;
    }
}

/// Attaches a job's measured losses to the splices they were taken at.
class Measurements {
  public:
    explicit Measurements(std::vector<ClosureSection>& sections) : m_sections(sections) {
        for (std::size_t s = 0; s < sections.size(); ++s) {
            for (std::size_t i = 0; i < sections[s].splices.size(); ++i) {
                const Splice& splice = sections[s].splices[i];
                remember(m_byNameA, splice.a.name, s, i);
                remember(m_byNameB, splice.b.name, s, i);
                if (splice.a.number && std::to_string(*splice.a.number) != splice.a.name)
                    remember(m_byNameA, std::to_string(*splice.a.number), s, i);
            }
        }
    }

    void attach(const MeasuredLoss& loss) {
        const Measurement measured{loss.id, loss.wavelengthNm, loss.aToB, loss.bToA,
                                   loss.at, loss.instrument,   loss.note};
        // A measured fibre is named by its side A; side B only helps where A says nothing.
        std::vector<Place> places = candidates(m_byNameA, loss);
        if (places.empty()) places = candidates(m_byNameB, loss);
        // Two candidates and no way to tell: listed apart rather than guessed.
        if (places.size() == 1) {
            m_sections[places[0].section].splices[places[0].splice].measured.push_back(measured);
            return;
        }
        for (ClosureSection& section : m_sections) {
            if (loss.closure ? section.closure == loss.closure : !section.closure.has_value()) {
                section.loose.emplace_back(loss.fibre, measured);
                return;
            }
        }
        m_sections.push_back({});
        m_sections.back().label = std::string(noClosure);
        m_sections.back().loose.emplace_back(loss.fibre, measured);
    }

  private:
    struct Place {
        std::size_t section, splice;
    };
    using Names = std::map<std::string, std::vector<Place>>;

    static void remember(Names& names, const std::string& name, std::size_t section, std::size_t splice) {
        if (!name.empty()) names[name].push_back({section, splice});
    }

    [[nodiscard]] std::vector<Place> candidates(const Names& names, const MeasuredLoss& loss) const {
        std::vector<Place> places;
        const auto found = names.find(loss.fibre);
        if (found == names.end()) return places;
        for (const Place& place : found->second)
            if (!loss.closure || m_sections[place.section].closure == loss.closure) places.push_back(place);
        return places;
    }

    std::vector<ClosureSection>& m_sections;
    Names m_byNameA, m_byNameB;
};

void addUp(Record& record) {
    std::vector<Loss> all;
    std::size_t attempts = 0, firstTime = 0;
    for (ClosureSection& section : record.closures) {
        std::vector<Loss> losses;
        std::size_t tries = 0, once = 0;
        for (const Splice& splice : section.splices) {
            losses.push_back(splice.final().loss);
            tries += splice.attempts.size();
            if (splice.attempts.size() == 1) ++once;
        }
        section.averages = average(losses, tries, once);
        all.insert(all.end(), losses.begin(), losses.end());
        attempts += tries;
        firstTime += once;
        if (section.completeness) {
            if (!record.plan) record.plan.emplace();
            record.plan->planned += section.completeness->planned;
            record.plan->spliced += section.completeness->spliced;
            record.plan->unplanned += static_cast<int>(section.completeness->unplanned.size());
        }
    }
    record.averages = average(all, attempts, firstTime);
    record.histogram = histogram(all, record.job.rule.perSplice);
}

RecordVerdict verdictOf(const Record& record) {
    const auto isRefused = [](const Exception& exception) {
        return exception.kind == ExceptionKind::OverCeiling ||
               (exception.disposition && exception.disposition->disposition == dispositionRejected);
    };
    if (std::ranges::any_of(record.exceptions, isRefused)) return RecordVerdict::NotAccepted;
    if (openExceptions(record) > 0 || spliceCount(record) == 0) return RecordVerdict::Open;
    return record.exceptions.empty() ? RecordVerdict::Accepted : RecordVerdict::AcceptedWithExceptions;
}

Result<void> issue(Record& record, const BuildSettings& settings, const std::vector<IssuedRecord>& issued) {
    if (settings.state == RecordState::Draft) return {};
    if (spliceCount(record) == 0)
        return fail(ProblemCode::Refused, "job " + record.job.label + " has no splices", "",
                    "A final record needs at least one");
    if (const std::size_t open = openExceptions(record); open > 0) {
        std::string keys;
        for (const Exception& exception : record.exceptions)
            if (!isDecided(exception)) keys += (keys.empty() ? "" : ", ") + exception.key;
        return fail(ProblemCode::Refused,
                    std::to_string(open) + (open == 1 ? " exception waits" : " exceptions wait") +
                        " for a disposition",
                    keys, "Decide on each with a name and a reason, then issue the record");
    }
    if (settings.issuedBy.empty())
        return fail(ProblemCode::BadInput, "a final record needs the name of who issues it");
    record.state = RecordState::Final;
    record.issuedBy = settings.issuedBy;
    record.number = nextNumber(issued);
    record.supersedes = latestNumber(issued);
    return {};
}

double numberOr(const std::optional<std::string>& text, double otherwise) {
    if (!text) return otherwise;
    double value = 0;
    const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), value);
    if (error != std::errc{} || end != text->data() + text->size() || !(value >= 0) || value > 1000)
        return otherwise;
    return value;
}

}  // namespace

Result<Job> jobLabelled(Logbook& book, std::string_view label) {
    Result<std::vector<Job>> jobs = book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    const auto found = std::ranges::find(*jobs, label, &Job::label);
    if (found != jobs->end()) return *found;
    std::string known;
    for (std::size_t i = 0; i < jobs->size() && i < 12; ++i) known += (i == 0 ? "" : ", ") + (*jobs)[i].label;
    return fail(ProblemCode::NotFound, "no job " + std::string(label) + " in this logbook", "",
                known.empty() ? "It holds no job yet" : "It holds " + known);
}

Result<LinkAssumptions> linkAssumptions(Logbook& book) {
    LinkAssumptions assumptions;
    for (LinkAssumptions::Attenuation& attenuation : assumptions.attenuation) {
        auto text = book.setting("link.attenuation_db_per_km." + std::to_string(attenuation.wavelengthNm));
        if (!text) return tl::unexpected(text.error());
        attenuation.dbPerKm = numberOr(*text, attenuation.dbPerKm);
    }
    auto connectors = book.setting("link.connectors");
    if (!connectors) return tl::unexpected(connectors.error());
    assumptions.connectors = static_cast<int>(numberOr(*connectors, assumptions.connectors));
    auto each = book.setting("link.db_per_connector");
    if (!each) return tl::unexpected(each.error());
    assumptions.dbPerConnector = numberOr(*each, assumptions.dbPerConnector);
    return assumptions;
}

Result<Record> build(Logbook& book, JobId jobId, const BuildSettings& settings, Progress& progress) {
    const auto jobs = book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    const auto job = std::ranges::find(*jobs, jobId, &Job::id);
    if (job == jobs->end()) return fail(ProblemCode::NotFound, "the job is not in this logbook");
    const auto closures = book.closures(jobId);
    if (!closures) return tl::unexpected(closures.error());
    const auto cables = book.cables(jobId);
    if (!cables) return tl::unexpected(cables.error());
    const auto spans = book.spans(jobId);
    if (!spans) return tl::unexpected(spans.error());
    const auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    const auto losses = book.measuredLosses(jobId);
    if (!losses) return tl::unexpected(losses.error());
    const auto overrides = book.holdOverrides();
    if (!overrides) return tl::unexpected(overrides.error());
    const auto dispositions = book.dispositions(jobId);
    if (!dispositions) return tl::unexpected(dispositions.error());
    const auto issued = book.issuedRecords(jobId);
    if (!issued) return tl::unexpected(issued.error());
    const auto assumptions = linkAssumptions(book);
    if (!assumptions) return tl::unexpected(assumptions.error());
    const auto head = book.journalHead();
    if (!head) return tl::unexpected(head.error());

    Record record;
    record.job = *job;
    record.madeAt = settings.madeAt;
    record.journalHead = *head;
    EquipmentList equipment(*tools);
    auto rows = readSplices(book, job->id, progress);
    if (!rows) return tl::unexpected(rows.error());
    for (const SpliceRow& row : *rows) {
        if (row.reading.state == ReadingState::Voided) {
            ++record.voided;
            continue;
        }
        if (!record.firstSplice) record.firstSplice = row.arc.at;
        record.lastSplice = row.arc.at;
    }
    record.closures = sections(*job, *closures, *cables, std::move(*rows),
                               [&](ToolId tool, Instant at, std::optional<ArcCount> counter) {
                                   return equipment.use(tool, at, counter);
                               });
    Measurements measurements(record.closures);
    for (const MeasuredLoss& loss : *losses) measurements.attach(loss);
    auto tooled = equipment.withCare(book, settings.owed);
    if (!tooled) return tl::unexpected(tooled.error());
    record.equipment = std::move(*tooled);
    addUp(record);
    record.spans = spanSections(record, *spans, *cables, *closures, *assumptions);
    findExceptions(record, *overrides, *dispositions);
    if (Result<void> done = issue(record, settings, *issued); !done) return tl::unexpected(done.error());
    record.verdict = verdictOf(record);
    return record;
}

}  // namespace arc::closeout
