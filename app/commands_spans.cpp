// SPDX-License-Identifier: GPL-3.0-or-later
// arcw spans: the spans of a job with their average and link budget; takes spans in from a table.
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <ostream>
#include <string>

#include "app/command.hpp"
#include "core/care/words.hpp"
#include "core/closeout/build.hpp"
#include "core/work/spans.hpp"
#include "storage/plain_file.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::app {
namespace {

using Json = nlohmann::ordered_json;
constexpr std::uint64_t largestTable = 16u << 20;

Result<SpanGround> groundOf(Logbook& book, const Job& job) {
    auto cables = book.cables(job.id);
    if (!cables) return tl::unexpected(cables.error());
    auto closures = book.closures(job.id);
    if (!closures) return tl::unexpected(closures.error());
    auto spans = book.spans(job.id);
    if (!spans) return tl::unexpected(spans.error());
    return SpanGround{job.id, std::move(*cables), std::move(*closures), std::move(*spans)};
}

/// What --add and --remove ask for.
Result<std::vector<Entry>> changesAsked(const Arguments& arguments, Logbook& book, const Job& job,
                                        Environment& environment) {
    std::vector<Entry> entries;
    auto ground = groundOf(book, job);
    if (!ground) return tl::unexpected(ground.error());
    for (const std::string& label : arguments.many("--remove")) {
        const auto known = std::ranges::find(ground->spans, label, &Span::label);
        if (known == ground->spans.end())
            return fail(ProblemCode::NotFound, "job " + job.label + " has no span " + label, "--remove");
        entries.emplace_back(Withdrawal{known->id.uuid, "removed"});
        ground->spans.erase(known);
    }
    if (const auto file = arguments.maybe("--add")) {
        const auto csv = storage::readPlainFile(*file, largestTable);
        if (!csv) return tl::unexpected(csv.error());
        const auto spans = spansFromCsv(
            *csv, *ground, [&] { return makeId<SpanId>(environment.clock, environment.random); });
        if (!spans) return tl::unexpected(spans.error());
        entries.insert(entries.end(), spans->begin(), spans->end());
    }
    return entries;
}

Json budgetJson(const closeout::LinkBudget& budget) {
    return {{"wavelength_nm", budget.wavelengthNm},
            {"allowed_db", budget.allowedDb},
            {"as_spliced_db", budget.asSplicedDb},
            {"splices_measured_both_ways", budget.measured},
            {"splices_estimated", budget.estimated}};
}

Json spanJson(const closeout::Record& record, const closeout::SpanSection& span) {
    const auto maybe = [](const std::optional<double>& value) { return value ? Json(*value) : Json(); };
    Json json{{"span", span.kind == closeout::SpanKind::Named ? Json(span.label) : Json()},
              {"from", span.from},
              {"to", span.to},
              {"cable", span.cable},
              {"length_km", maybe(span.lengthKm)},
              {"closures", Json::array()},
              {"splices", span.splices},
              {"average_db", maybe(span.meanDb)},
              {"average_limit_db", decibels(record.job.rule.average)},
              {"link_budgets", Json::array()},
              {"note", span.budgetNote}};
    for (const std::size_t at : span.sections) json["closures"].push_back(record.closures[at].label);
    for (const auto& budget : span.budgets) json["link_budgets"].push_back(budgetJson(budget));
    return json;
}

void print(const closeout::Record& record, const closeout::SpanSection& span, std::ostream& out) {
    switch (span.kind) {
        case closeout::SpanKind::WholeJob:
            out << "The job has no spans and counts as one";
            break;
        case closeout::SpanKind::Named:
            out << span.label << ", " << span.from << " to " << span.to;
            break;
        case closeout::SpanKind::Rest:
            out << "On no span";
            break;
    }
    if (span.lengthKm) out << fmt::format(", {:.3g} km", *span.lengthKm);
    out << ", " << care::counted(span.sections.size(), "closure", "closures");
    if (span.meanDb)
        out << fmt::format("\n  {} splices, average {:.3f} dB of {:.2f} agreed{}", span.splices, *span.meanDb,
                           decibels(record.job.rule.average),
                           closeout::isOverAverage(span, record.job.rule) ? ": over" : "");
    for (const auto& budget : span.budgets)
        out << fmt::format(
            "\n  {} nm: {:.2f} dB as spliced of {:.2f} allowed; {} splices measured both ways, {} estimated",
            budget.wavelengthNm, budget.asSplicedDb, budget.allowedDb, budget.measured, budget.estimated);
    out << "\n  " << span.budgetNote << '\n';
}

Exit runSpans(const Arguments& arguments, Environment& environment) {
    const bool writes = arguments.has("--add") || arguments.has("--remove");
    auto book = storage::openLogbook(arguments.one("BOOK"),
                                     writes ? storage::OpenMode::ReadWrite : storage::OpenMode::ReadOnly,
                                     environment.clock, environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto job = closeout::jobLabelled(**book, arguments.one("--job"));
    if (!job) return refuse(job.error(), environment);
    const auto changes = changesAsked(arguments, **book, *job, environment);
    if (!changes) return refuse(changes.error(), environment);
    if (!changes->empty()) {
        const auto saved =
            (*book)->append(*changes, {arguments.maybe("--by").value_or(""), "arcw spans", std::nullopt});
        if (!saved) return refuse(saved.error(), environment);
    }
    closeout::BuildSettings settings;
    settings.madeAt = environment.clock.now();
    NoProgress unwatched;
    const auto record = closeout::build(**book, job->id, settings, unwatched);
    if (!record) return refuse(record.error(), environment);
    Json list = Json::array();
    bool over = false;
    for (const auto& span : record->spans) {
        over = over || closeout::isOverAverage(span, job->rule);
        if (arguments.format == Format::Json)
            list.push_back(spanJson(*record, span));
        else
            print(*record, span, environment.out);
    }
    if (arguments.format == Format::Json)
        environment.out << Json{{"job", job->label}, {"changed", changes->size()}, {"spans", std::move(list)}}
                               .dump(-1, ' ', false, Json::error_handler_t::replace)
                        << '\n';
    return over ? Exit::SomethingToReport : Exit::Done;
}

}  // namespace

std::vector<Command> spanCommands() {
    return {{"spans",
             "The spans of a job: average against the contract, link budget as spliced of allowed",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"--job", "label of the job", Takes::One, Needed::Yes},
              {"--add", "CSV of spans to add or change: span,from,to,cable,length_km,closures", Takes::One,
               Needed::No},
              {"--remove", "labels of spans to take back; nothing else is lost", Takes::Many, Needed::No},
              {"--by", "who changes them", Takes::One, Needed::No}},
             runSpans,
             Effect::WritesBook}};
}

}  // namespace arc::app
