// SPDX-License-Identifier: GPL-3.0-or-later
// arcw agreement: what splicers estimated against what was measured from both ends.
#include <charconv>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <ostream>
#include <string>

#include "app/command.hpp"
#include "core/analytics/agreement_report.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::app {
namespace {

using Json = nlohmann::ordered_json;
constexpr double smallestBudget = 10, largestBudget = 1e6;

enum class Direction { Above, Below };

/// Which way the measured loss left the estimate.
Direction direction(const drift::DifferenceChart& chart) {
    return chart.up[*chart.signal] > chart.limit ? Direction::Above : Direction::Below;
}

Json intervalJson(const stats::Interval& interval) {
    return Json::array({interval.low, interval.high});
}

Json splicerJson(const drift::SplicerAgreement& one) {
    Json json = {{"splicer", one.label}, {"wavelength_nm", one.wavelengthNm}, {"n", one.splices.size()}};
    if (one.agreement) {
        json["mean_db"] = one.agreement->meanDb;
        json["mean_interval_db"] = intervalJson(one.agreement->meanInterval);
        json["deviation_db"] = one.agreement->deviationDb;
        json["lower_limit_db"] = one.agreement->lowerDb;
        json["lower_limit_interval_db"] = intervalJson(one.agreement->lowerInterval);
        json["upper_limit_db"] = one.agreement->upperDb;
        json["upper_limit_interval_db"] = intervalJson(one.agreement->upperInterval);
    } else {
        json["mean_db"] = nullptr;
    }
    json["chart_since"] = one.chartSince ? Json(toIso(*one.chartSince)) : Json(nullptr);
    if (one.chart.signal) {
        const auto& raised = one.splices[one.chartFrom + *one.chart.signal];
        const auto& began = one.splices[one.chartFrom + *one.chart.began];
        json["signal"] = {{"direction", direction(one.chart) == Direction::Above ? "above" : "below"},
                          {"raised_at_time", toIso(raised.at)},
                          {"began_at_time", toIso(began.at)},
                          {"splices_since_began", one.splices.size() - one.chartFrom - *one.chart.began}};
    } else {
        json["signal"] = nullptr;
    }
    return json;
}

void writeText(std::ostream& out, const drift::SplicerAgreement& one) {
    out << fmt::format("{}, {} nm: {} splices measured from both ends\n", one.label, one.wavelengthNm,
                       one.splices.size());
    if (!one.agreement) {
        out << "  Too few to judge: three are the least.\n";
        return;
    }
    const auto& found = *one.agreement;
    out << fmt::format("  Measured minus estimated: mean {:+.3f} dB (95 % interval {:+.3f} to {:+.3f}).\n",
                       found.meanDb, found.meanInterval.low, found.meanInterval.high);
    out << fmt::format("  95 % of differences lie from {:+.3f} to {:+.3f} dB.\n", found.lowerDb,
                       found.upperDb);
    if (!one.chart.signal) {
        out << "  Steady: the difference does not drift.\n";
        return;
    }
    const auto& began = one.splices[one.chartFrom + *one.chart.began];
    out << fmt::format("  The measured loss runs {} the estimate since {}: the estimate cannot be trusted.\n",
                       direction(one.chart) == Direction::Above ? "above" : "below", toIso(began.at));
    out << "  Likely the camera lenses: follow their care card, which ends with an arc calibration.\n";
}

Exit run(const Arguments& arguments, Environment& environment) {
    double budget = drift::usualDifferenceBudget;
    if (const auto text = arguments.maybe("--budget")) {
        const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), budget);
        if (error != std::errc{} || end != text->data() + text->size() ||
            !(budget >= smallestBudget && budget <= largestBudget))
            return refuse(
                {ProblemCode::BadInput, "the budget \"" + *text + "\" is not a number from 10 to 1,000,000",
                 "--budget", "give, for example, --budget 500 for one false signal per 500 measured splices"},
                environment);
    }
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadOnly, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    auto report = drift::agreementReport(**book, budget);
    if (!report) return refuse(report.error(), environment);
    if (const auto label = arguments.maybe("--splicer"))
        std::erase_if(report->splicers, [&](const auto& one) { return one.label != *label; });
    bool anySignal = false;
    for (const auto& one : report->splicers) anySignal = anySignal || one.chart.signal.has_value();
    if (arguments.format == Format::Json) {
        Json json = {{"agreement", Json::array()}};
        for (const auto& one : report->splicers) json["agreement"].push_back(splicerJson(one));
        json["one_way_left_out"] = report->oneWay;
        json["without_splice"] = report->unmatched;
        json["budget_splices"] = budget;
        environment.out << json.dump(2) << '\n';
    } else {
        for (const auto& one : report->splicers) writeText(environment.out, one);
        if (report->splicers.empty()) environment.out << "No splice has been measured from both ends yet.\n";
        if (report->oneWay > 0)
            environment.out << fmt::format(
                "{} one-way measurements were left out: they carry the step between "
                "unlike fibres.\n",
                report->oneWay);
    }
    return anySignal ? Exit::SomethingToReport : Exit::Done;
}

}  // namespace

std::vector<Command> agreementCommands() {
    return {{"agreement",
             "What the splicers estimated against what was measured from both ends.",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"--splicer", "only this splicer's label"},
              {"--budget", "measured splices per false signal of a chart (500)"}},
             run}};
}

}  // namespace arc::app
