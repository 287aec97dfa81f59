// SPDX-License-Identifier: GPL-3.0-or-later
// arcw runlength: the run-length mathematics of our charts, for anyone to check.
#include <charconv>
#include <cmath>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <optional>
#include <ostream>
#include <string>
#include <utility>

#include "app/command.hpp"
#include "core/analytics/run_length.hpp"
#include "core/analytics/run_rules.hpp"

namespace arc::app {
namespace {

using drift::CusumChart;
using drift::EwmaChart;
using drift::RunRule;
using drift::ShewhartChart;
using drift::Sides;

enum class State { Zero, Steady };

/// What is asked of a chart, whichever it is.
struct Question {
    Sides sides = Sides::Both;
    State state = State::Zero;
    double shift = 0;
    std::optional<double> slope;
    std::optional<double> wantedArl;
    std::optional<double> limit;
    bool headStartAsked = false;
    std::optional<double> headStart;  ///< empty although asked: half the limit
};

/// A number and the words and fields it is reported with.
struct Answer {
    nlohmann::ordered_json fields;
    std::string described;  ///< the chart in words
    double arl = 0;
    std::optional<double> solvedLimit;
};

tl::unexpected<Problem> badOption(const std::string& name, const std::string& text, const char* next) {
    return fail(ProblemCode::BadInput, "\"" + text + "\" cannot be used here", "option " + name, next);
}

Result<std::optional<double>> number(const Arguments& arguments, const std::string& name) {
    const std::optional<std::string> text = arguments.maybe(name);
    if (!text) return std::optional<double>{};
    double value = 0;
    const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), value);
    if (error != std::errc{} || end != text->data() + text->size() || !std::isfinite(value))
        return badOption(name, *text, "give a number with a decimal point, such as 0.5");
    return std::optional<double>{value};
}

Result<Question> question(const Arguments& arguments) {
    Question asked;
    const std::string sided = arguments.maybe("--sided").value_or("two");
    if (sided != "one" && sided != "two") return badOption("--sided", sided, "give one or two");
    asked.sides = sided == "one" ? Sides::Upper : Sides::Both;
    const std::string state = arguments.maybe("--state").value_or("zero");
    if (state != "zero" && state != "steady") return badOption("--state", state, "give zero or steady");
    asked.state = state == "zero" ? State::Zero : State::Steady;
    const auto shift = number(arguments, "--shift");
    const auto slope = number(arguments, "--slope");
    const auto wanted = number(arguments, "--for-arl");
    const auto limit = number(arguments, "--limit");
    const auto h = number(arguments, "--h");
    const auto headStart = number(arguments, "--headstart");
    for (const auto* part : {&shift, &slope, &wanted, &limit, &h, &headStart})
        if (!*part) return tl::unexpected(part->error());
    if (*limit && *h)
        return fail(ProblemCode::BadInput, "--limit and --h are two names of one number", "",
                    "give one of them");

    asked.shift = shift->value_or(0);
    asked.slope = *slope;
    asked.wantedArl = *wanted;
    asked.limit = *h ? *h : *limit;
    asked.headStartAsked = arguments.has("--headstart");
    asked.headStart = *headStart;
    if (asked.wantedArl &&
        (asked.limit || asked.slope || *shift || asked.headStartAsked || asked.state == State::Steady))
        return fail(ProblemCode::BadInput, "--for-arl finds the limit in control from the start", "",
                    "leave out limit, shift, slope, head start and state");
    if (asked.slope && (*shift || asked.state == State::Steady))
        return fail(ProblemCode::BadInput, "a slope starts from 0 at the first reading", "",
                    "leave out --shift and --state");
    return asked;
}

/// The one number that describes the chart's memory, under either of its names.
Result<double> memory(const Arguments& arguments, const std::string& name, const std::string& other) {
    const auto own = number(arguments, name);
    if (!own) return tl::unexpected(own.error());
    const auto alias = number(arguments, other);
    if (!alias) return tl::unexpected(alias.error());
    if (*own && *alias)
        return fail(ProblemCode::BadInput, name + " and " + other + " cannot both be given", "",
                    "give " + name);
    if (!*own && !*alias)
        return fail(ProblemCode::BadInput, "this chart needs " + name, "", "give it a number");
    return own->value_or(alias->value_or(0));
}

Result<double> limitOrWanted(const Question& asked, const char* name) {
    if (asked.limit) return *asked.limit;
    if (asked.wantedArl) return 1.0;  // solved for
    return fail(ProblemCode::BadInput, std::string("this chart needs ") + name, "",
                "give it a number, or --for-arl to have it found");
}

template <class Chart>
Result<double> runLength(const Chart& chart, const Question& asked) {
    if (asked.state == State::Steady) return steadyStateRunLength(chart, asked.shift);
    return averageRunLength(chart, asked.shift);
}

const char* sidedWord(Sides sides) {
    return sides == Sides::Both ? "two" : "one";
}

Result<Answer> answerEwma(const Arguments& arguments, const Question& asked) {
    const auto lambda = memory(arguments, "--lambda", "--k");
    if (!lambda) return tl::unexpected(lambda.error());
    const auto limit = limitOrWanted(asked, "--limit");
    if (!limit) return tl::unexpected(limit.error());
    EwmaChart chart{*lambda, *limit, asked.sides};
    const std::string variance = arguments.maybe("--variance").value_or("fixed");
    if (variance != "fixed" && variance != "exact")
        return badOption("--variance", variance, "give fixed or exact");
    if (variance == "exact") chart.limits = drift::EwmaLimits::ExactVariance;
    if (asked.headStartAsked) chart.headStart = asked.headStart.value_or(chart.limit / 2);
    Answer answer;
    if (asked.wantedArl) {
        const auto solved = limitFor(chart, *asked.wantedArl);
        if (!solved) return tl::unexpected(solved.error());
        chart.limit = *solved;
        answer.solvedLimit = *solved;
    }
    const auto arl = asked.slope ? driftRunLength(chart, *asked.slope) : runLength(chart, asked);
    if (!arl) return tl::unexpected(arl.error());
    answer.arl = *arl;
    answer.fields = {{"chart", "ewma"},        {"sided", sidedWord(chart.sides)},
                     {"lambda", chart.lambda}, {"limit", chart.limit},
                     {"variance", variance},   {"headstart", chart.headStart}};
    answer.described = fmt::format("EWMA {}-sided, lambda {}, limit {:.10g}", sidedWord(chart.sides),
                                   chart.lambda, chart.limit);
    if (variance == "exact") answer.described += ", exact-variance limits";
    if (chart.headStart > 0) answer.described += fmt::format(", head start {}", chart.headStart);
    return answer;
}

Result<Answer> answerCusum(const Arguments& arguments, const Question& asked) {
    const auto k = memory(arguments, "--k", "--lambda");
    if (!k) return tl::unexpected(k.error());
    const auto h = limitOrWanted(asked, "--h");
    if (!h) return tl::unexpected(h.error());
    CusumChart chart{*k, *h, asked.sides};
    if (asked.headStartAsked) chart.headStart = asked.headStart.value_or(chart.h / 2);
    Answer answer;
    if (asked.wantedArl) {
        const auto solved = limitFor(chart, *asked.wantedArl);
        if (!solved) return tl::unexpected(solved.error());
        chart.h = *solved;
        answer.solvedLimit = *solved;
    }
    const auto arl = asked.slope ? driftRunLength(chart, *asked.slope) : runLength(chart, asked);
    if (!arl) return tl::unexpected(arl.error());
    answer.arl = *arl;
    answer.fields = {{"chart", "cusum"},
                     {"sided", sidedWord(chart.sides)},
                     {"k", chart.k},
                     {"h", chart.h},
                     {"headstart", chart.headStart}};
    answer.described =
        fmt::format("CUSUM {}-sided, k {}, h {:.10g}", sidedWord(chart.sides), chart.k, chart.h);
    if (chart.headStart > 0) answer.described += fmt::format(", head start {}", chart.headStart);
    return answer;
}

Result<std::vector<RunRule>> rules(const Arguments& arguments) {
    const std::string text = arguments.maybe("--rules").value_or("1");
    std::vector<RunRule> chosen;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c == ',' && i > 0 && i + 1 < text.size() && text[i - 1] != ',') continue;
        if (c < '1' || c > '4') return badOption("--rules", text, "give some of 1,2,3,4 with commas between");
        chosen.push_back(static_cast<RunRule>(c - '0'));
    }
    if (chosen.empty()) return badOption("--rules", text, "give some of 1,2,3,4 with commas between");
    return chosen;
}

Result<Answer> answerShewhart(const Arguments& arguments, const Question& asked) {
    if (asked.headStartAsked || asked.slope)
        return fail(ProblemCode::BadInput,
                    "an individuals chart has no head start and no run length under drift", "",
                    "leave --headstart and --slope out");
    const auto chosen = rules(arguments);
    if (!chosen) return tl::unexpected(chosen.error());
    ShewhartChart chart;
    chart.limit = asked.limit.value_or(3);
    chart.rules = *chosen;
    chart.sides = asked.sides;
    const auto run = number(arguments, "--run");
    if (!run) return tl::unexpected(run.error());
    if (*run && (**run != std::floor(**run) || std::abs(**run) > 1000))
        return badOption("--run", *arguments.maybe("--run"), "give a whole number from 2 to 20");
    chart.sameSide = static_cast<int>(run->value_or(8));
    Answer answer;
    if (asked.wantedArl) {
        const auto solved = limitFor(chart, *asked.wantedArl);
        if (!solved) return tl::unexpected(solved.error());
        chart.limit = *solved;
        answer.solvedLimit = *solved;
    }
    const auto arl = runLength(chart, asked);
    if (!arl) return tl::unexpected(arl.error());
    answer.arl = *arl;
    std::string shown;
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const RunRule rule : chart.rules) {
        list.push_back(static_cast<int>(rule));
        shown += fmt::format("{}{}", shown.empty() ? "" : ", ", static_cast<int>(rule));
    }
    answer.fields = {{"chart", "shewhart"},
                     {"sided", sidedWord(chart.sides)},
                     {"limit", chart.limit},
                     {"rules", list},
                     {"run", chart.sameSide}};
    answer.described = fmt::format("individuals chart {}-sided, limit {:.10g}, rules {}",
                                   sidedWord(chart.sides), chart.limit, shown);
    return answer;
}

Result<Answer> answer(const Arguments& arguments) {
    const auto asked = question(arguments);
    if (!asked) return tl::unexpected(asked.error());
    const std::string& chart = arguments.one("--chart");
    Result<Answer> found = chart == "ewma"    ? answerEwma(arguments, *asked)
                           : chart == "cusum" ? answerCusum(arguments, *asked)
                           : chart == "shewhart"
                               ? answerShewhart(arguments, *asked)
                               : badOption("--chart", chart, "give ewma, cusum or shewhart");
    if (!found) return found;
    if (asked->slope) {
        found->fields["slope"] = *asked->slope;
        found->described += fmt::format(", mean rising by {} a reading", *asked->slope);
    } else {
        found->fields["shift"] = asked->shift;
        found->described += fmt::format(", shift {}", asked->shift);
    }
    const bool steady = asked->state == State::Steady;
    found->fields["state"] = steady ? "steady" : "zero";
    found->described += steady ? ", long after the start" : ", from the start";
    found->fields["arl"] = found->arl;
    return found;
}

Exit run(const Arguments& arguments, Environment& environment) {
    const Result<Answer> found = answer(arguments);
    if (!found) return refuse(found.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << found->fields.dump() << '\n';
        return Exit::Done;
    }
    if (found->solvedLimit) environment.out << fmt::format("limit {:.10g}\n", *found->solvedLimit);
    environment.out << fmt::format("average run length {:.10g}\n{}\n", found->arl, found->described);
    return Exit::Done;
}

}  // namespace

std::vector<Command> runLengthCommands() {
    return {
        {"runlength",
         "Average run length of a chart on independent normal readings, in standard deviations. The reading "
         "that signals is counted; a statistic beyond its limit signals.",
         {
             {"--chart", "ewma, cusum or shewhart (individuals, with run rules)", Takes::One, Needed::Yes},
             {"--sided", "one (upward; an EWMA is then held at 0 from below) or two (the default)"},
             {"--lambda", "EWMA: weight of the new reading, 0.001 to 1"},
             {"--k", "CUSUM: reference value, C = max(0, C + x - k)"},
             {"--limit", "EWMA: limit in its long-run standard deviations; shewhart: limit (3)"},
             {"--h", "CUSUM: limit, signal when C > h"},
             {"--shift", "mean of the readings in standard deviations (0 = in control)"},
             {"--headstart",
              "start in the unit of the limit; alone: half the limit. A two-sided EWMA starts two charts, "
              "one "
              "on each side",
              Takes::MaybeOne},
             {"--state", "zero (from the start, the default) or steady (a shift long after the start)"},
             {"--slope", "the mean of reading i is i times this, instead of --shift"},
             {"--variance", "EWMA limits: fixed (the default) or exact (opening with the variance)"},
             {"--rules",
              "shewhart: 1 beyond the limit, 2 two of three beyond 2/3 of it, 3 four of five beyond 1/3, 4 a "
              "run on one side; for instance 1,2,3,4"},
             {"--run", "shewhart: length of the run of rule 4 (8)"},
             {"--for-arl", "find the limit with this in-control average run length instead"},
         },
         run}};
}

}  // namespace arc::app
