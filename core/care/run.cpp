// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/run.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <utility>

namespace arc::care {
namespace {

// CareRun::step counts screens: cautions, materials, then the card's steps, then "finished".
constexpr int cautionsAt = 0;
constexpr int materialsAt = 1;
constexpr int stepsAt = 2;
// Names in CareRun::repeats that cannot be a step id.
constexpr const char* swabEndsName = "#swab_ends";
constexpr const char* goingBackName = "#read_to";

int finishedAt(const Card& card) {
    return stepsAt + static_cast<int>(card.steps.size());
}

const Step* stepOf(const Card& card, const CareRun& run) {
    if (run.step < stepsAt || run.step >= finishedAt(card)) return nullptr;
    return &card.steps[static_cast<std::size_t>(run.step - stepsAt)];
}

int indexOf(const Card& card, std::string_view id) {
    return stepsAt + static_cast<int>(card.step(id) - card.steps.data());
}

int repeated(const CareRun& run, const std::string& name) {
    const auto found = run.repeats.find(name);
    return found == run.repeats.end() ? 0 : found->second;
}

std::string timerName(const Step& step) {
    return "timer_started." + step.id;
}

int minutesFor(const TimerStep& timer, const Tool& tool) {
    const Splicer* splicer = asSplicer(tool);
    return splicer && splicer->kind == SplicerKind::MassFusion ? timer.minutesMass : timer.minutesSingle;
}

std::optional<Instant> timerEnd(const Step& step, const TimerStep& timer, const Tool& tool,
                                const CareRun& run) {
    const auto found = run.fields.find(timerName(step));
    if (found == run.fields.end()) return std::nullopt;
    const auto began = parseInstant(found->second);
    if (!began) return std::nullopt;
    return Instant{began->ms + minutesFor(timer, tool) * msPerMinute, began->offsetMinutes};
}

tl::unexpected<Problem> refused(std::string what, std::string next) {
    return fail(ProblemCode::Refused, std::move(what), {}, std::move(next));
}

Result<void> checkValue(const Field& field, const std::string& value) {
    if (value.empty()) {
        if (field.required == Required::Yes)
            return fail(ProblemCode::BadInput, "\"" + field.label + "\" is not written down", field.key,
                        "Fill it in");
        return {};
    }
    if (field.kind == FieldKind::Choice && std::ranges::find(field.choices, value) == field.choices.end())
        return fail(ProblemCode::BadInput, "\"" + value + "\" is none of the choices", field.key,
                    "Choose one of them");
    if (field.kind != FieldKind::Number) return {};
    double number = 0;
    const char* end = value.data() + value.size();
    const auto read = std::from_chars(value.data(), end, number);
    if (read.ec != std::errc{} || read.ptr != end || !std::isfinite(number))
        return fail(ProblemCode::BadInput, "\"" + value + "\" is not a number", field.key,
                    "Write it with digits and a point");
    if (field.unit.empty() && number != std::floor(number))
        return fail(ProblemCode::BadInput, "\"" + field.label + "\" is a whole number", field.key);
    if ((field.least && number < *field.least) || (field.most && number > *field.most))
        return fail(ProblemCode::BadInput, "\"" + value + "\" is out of range", field.key,
                    "Check what the tool shows");
    return {};
}

/// Moves on, and leaves reading back once the step is reached that was open.
void moveTo(CareRun& run, int step) {
    run.step = step;
    if (const auto open = run.repeats.find(goingBackName);
        open != run.repeats.end() && run.step >= open->second)
        run.repeats.erase(open);
}

Result<CareRun> doneWith(const Card& card, const Tool& tool, CareRun run, const Done& done) {
    const Step* step = stepOf(card, run);
    if (!step) return refused("this screen is not a step", "Acknowledge it");
    if (run.repeats.contains(goingBackName)) {
        moveTo(run, run.step + 1);
        return run;
    }
    if (const auto* timer = std::get_if<TimerStep>(&step->what)) {
        const auto end = timerEnd(*step, *timer, tool, run);
        if (!end) return refused("the timer was not started", "Start it");
        if (done.at < *end) return refused("the time is not over", "Wait until the timer ends");
        if (!timer->covers.empty()) {
            std::string& covered = run.fields[std::string(field::covers)];
            covered += (covered.empty() ? "" : ",") + timer->covers;
        }
    } else if (const auto* plain = std::get_if<DoStep>(&step->what)) {
        if (plain->surfaces > 0) ++run.repeats[swabEndsName];
    } else {
        return refused("this step wants an answer", "Answer it");
    }
    ++run.repeats[step->id];
    moveTo(run, run.step + 1);
    return run;
}

Result<CareRun> answered(const Card& card, CareRun run, Outcome outcome) {
    const Step* step = stepOf(card, run);
    if (!step) return refused("this screen asks nothing", "Go on");
    const auto* inspect = std::get_if<InspectStep>(&step->what);
    const auto* repeat = std::get_if<RepeatStep>(&step->what);
    if (!inspect && !repeat) return refused("this step asks nothing", "Go on");
    if (run.repeats.contains(goingBackName)) {
        moveTo(run, run.step + 1);
        return run;
    }
    ++run.repeats[step->id];
    if (inspect) {
        const bool jump = outcome == Outcome::Good && !inspect->goodTo.empty();
        moveTo(run, jump ? indexOf(card, inspect->goodTo) : run.step + 1);
        return run;
    }
    if (outcome == Outcome::NotYet && run.repeats[step->id] < repeat->rounds) {
        const int back = indexOf(card, repeat->backTo);
        for (int i = back; i <= run.step; ++i) {
            const Step& inLoop = card.steps[static_cast<std::size_t>(i - stepsAt)];
            run.fields.erase(timerName(inLoop));  // a wait inside the loop is waited again
        }
        moveTo(run, back);
        return run;
    }
    // Once a loop ran out, the whole run did not reach its end, whatever a later loop says.
    std::string& reached = run.fields[std::string(field::outcome)];
    if (outcome == Outcome::NotYet)
        reached = "not_reached";
    else if (reached.empty())
        reached = "reached";
    moveTo(run, run.step + 1);
    return run;
}

Result<CareRun> written(const Card& card, CareRun run, const WriteDown& down) {
    const Step* step = stepOf(card, run);
    const auto* record = step ? std::get_if<RecordStep>(&step->what) : nullptr;
    if (!record) return refused("nothing is to be written down here", "Go on");
    for (const auto& [key, value] : down.fields)
        if (std::ranges::find(record->fields, key, &Field::key) == record->fields.end())
            return fail(ProblemCode::BadInput, "this step has no field \"" + key + "\"", step->id);
    for (const Field& f : record->fields) {
        const auto given = down.fields.find(f.key);
        const std::string value = given == down.fields.end() ? std::string() : given->second;
        if (auto good = checkValue(f, value); !good) return tl::unexpected(good.error());
        if (value.empty())
            run.fields.erase(f.key);
        else
            run.fields[f.key] = value;
    }
    if (!run.repeats.contains(goingBackName)) ++run.repeats[step->id];
    moveTo(run, run.step + 1);
    return run;
}

Result<CareRun> wentBack(CareRun run) {
    if (run.step == cautionsAt) return refused("this is the first screen", "Go on");
    if (!run.repeats.contains(goingBackName)) run.repeats[goingBackName] = run.step;
    --run.step;
    return run;
}

/// The loop a step is in: the closest repetition after it that goes back to it or before.
const Step* loopAround(const Card& card, int at) {
    for (int i = at; i < finishedAt(card); ++i) {
        const Step& step = card.steps[static_cast<std::size_t>(i - stepsAt)];
        if (const auto* repeat = std::get_if<RepeatStep>(&step.what);
            repeat && indexOf(card, repeat->backTo) <= at)
            return &step;
    }
    return nullptr;
}

}  // namespace

Result<CareRun> start(const Card& card, const Tool& tool, CareId id, Instant at, const std::string& by,
                      std::vector<std::string> answers) {
    if (kindOf(tool) != card.tool)
        return fail(ProblemCode::Refused,
                    "\"" + card.title + "\" is a card for a " + std::string(word(card.tool)), tool.label,
                    "Choose another tool");
    CareRun run;
    run.id = id;
    run.tool = tool.id;
    run.action = card.id;
    run.cardVersion = card.version;
    run.startedAt = at;
    run.by = by;
    run.answers = std::move(answers);
    return run;
}

Result<void> canResume(const Card& card, const Tool& tool, const CareRun& run) {
    if (run.state != RunState::Open) return refused("this run is closed", "Start the card anew");
    if (run.tool != tool.id || run.action != card.id)
        return refused("this run belongs to another tool or card", "Open it from its tool");
    if (run.cardVersion != card.version)
        return refused("the card was changed since this run began (version " +
                           std::to_string(run.cardVersion) + ", now " + std::to_string(card.version) + ")",
                       "Start the card anew");
    if (run.step < 0 || run.step > finishedAt(card))
        return fail(ProblemCode::Damaged, "the run stands at a step the card does not have", card.id,
                    "Start the card anew");
    return {};
}

Screen screenOf(const Card& card, const Tool& tool, const CareRun& run) {
    Screen screen;
    screen.of = static_cast<int>(card.steps.size());
    screen.swabEndsUsed = repeated(run, swabEndsName);
    screen.readingBack = run.repeats.contains(goingBackName);
    if (run.step <= cautionsAt) return screen;
    if (run.step == materialsAt) {
        screen.kind = ScreenKind::Materials;
        return screen;
    }
    screen.step = stepOf(card, run);
    if (!screen.step) {
        screen.kind = ScreenKind::Finished;
        return screen;
    }
    screen.kind = ScreenKind::Step;
    screen.number = run.step - stepsAt + 1;
    if (const Step* loop = loopAround(card, run.step)) {
        screen.rounds = std::get<RepeatStep>(loop->what).rounds;
        screen.round = std::min(screen.rounds, repeated(run, loop->id) + 1);
    }
    if (const auto* plain = std::get_if<DoStep>(&screen.step->what); plain && plain->surfaces > 0)
        screen.swabEnd = screen.swabEndsUsed + 1;
    if (const auto* timer = std::get_if<TimerStep>(&screen.step->what)) {
        screen.timerMinutes = minutesFor(*timer, tool);
        screen.timerEnd = timerEnd(*screen.step, *timer, tool, run);
    }
    return screen;
}

Result<CareRun> advance(const Card& card, const Tool& tool, CareRun run, const Input& input) {
    if (auto good = canResume(card, tool, run); !good) return tl::unexpected(good.error());
    if (std::holds_alternative<Back>(input)) return wentBack(std::move(run));
    if (std::holds_alternative<Acknowledge>(input)) {
        if (run.step >= stepsAt)
            return refused("there is nothing to acknowledge here", "Go on with the step");
        moveTo(run, run.step + 1);
        return run;
    }
    if (run.step < stepsAt)
        return refused(
            run.step == cautionsAt ? "the cautions were not acknowledged" : "the materials were not checked",
            "Read and acknowledge them first");
    if (const auto* done = std::get_if<Done>(&input)) return doneWith(card, tool, std::move(run), *done);
    if (const auto* answer = std::get_if<Answer>(&input))
        return answered(card, std::move(run), answer->outcome);
    if (const auto* down = std::get_if<WriteDown>(&input)) return written(card, std::move(run), *down);
    const auto& timer = std::get<StartTimer>(input);
    const Step* step = stepOf(card, run);
    if (!step || !std::holds_alternative<TimerStep>(step->what))
        return refused("this step has no timer", "Go on");
    // A running timer is never set back: the tool has been waiting since its first start.
    run.fields.try_emplace(timerName(*step), toIso(timer.at));
    return run;
}

CareRun abandoned(CareRun run) {
    run.state = RunState::Abandoned;
    return run;
}

CareRun finished(CareRun run) {
    run.state = RunState::Finished;
    return run;
}

Result<CareRecord> recordOf(const Card& card, const Tool& tool, const CareRun& run, Instant at,
                            std::optional<ArcCount> counter) {
    if (auto good = canResume(card, tool, run); !good) return tl::unexpected(good.error());
    if (run.step != finishedAt(card)) return refused("the card is not done to its end", "Finish its steps");
    CareRecord record;
    record.id = run.id;
    record.tool = run.tool;
    record.at = at;
    record.action = card.id;
    record.cardVersion = card.version;
    record.by = run.by;
    record.counter = counter;
    record.fields = run.fields;
    record.answers = run.answers;
    if (const int ends = repeated(run, swabEndsName); ends > 0)
        record.fields[std::string(field::swabEnds)] = std::to_string(ends);
    int rounds = 0;
    for (const Step& step : card.steps)
        if (std::holds_alternative<RepeatStep>(step.what)) rounds = std::max(rounds, repeated(run, step.id));
    if (rounds > 0) record.fields[std::string(field::rounds)] = std::to_string(rounds);
    if (auto good = readFields(record); !good) return tl::unexpected(good.error());
    return record;
}

}  // namespace arc::care
