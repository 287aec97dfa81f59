// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/card.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <utility>

namespace arc::care {
namespace {

template <class... Cases>
struct Match : Cases... {
    using Cases::operator()...;
};
template <class... Cases>
Match(Cases...) -> Match<Cases...>;

tl::unexpected<Problem> wrong(std::string what, std::string pointer) {
    return fail(ProblemCode::BadInput, std::move(what), std::move(pointer));
}

bool isKey(std::string_view text) {
    if (text.empty() || text.size() > 60 || text.front() < 'a' || text.front() > 'z') return false;
    return std::ranges::all_of(
        text, [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; });
}

std::optional<std::size_t> indexOf(const Card& card, std::string_view id) {
    for (std::size_t i = 0; i < card.steps.size(); ++i)
        if (card.steps[i].id == id) return i;
    return std::nullopt;
}

Result<void> checkField(const Field& field, const std::string& at) {
    if (!isKey(field.key)) return wrong("a field key must be lower case letters, digits and _", at + "/key");
    if (field.label.empty()) return wrong("a field needs a label", at + "/label");
    if (field.kind == FieldKind::Choice && field.choices.size() < 2)
        return wrong("a choice needs at least two choices", at + "/choices");
    if (field.least && field.most && *field.least > *field.most)
        return wrong("the least value is above the most", at + "/least");
    return {};
}

Result<void> checkStep(const Card& card, std::size_t index, const std::string& at) {
    const Step& step = card.steps[index];
    if (!isKey(step.id)) return wrong("a step id must be lower case letters, digits and _", at + "/id");
    if (*indexOf(card, step.id) != index) return wrong("two steps are called " + step.id, at + "/id");
    if (step.text.empty()) return wrong("a step needs a text", at + "/text");
    return std::visit(Match{
                          [&](const DoStep& s) -> Result<void> {
                              if (s.surfaces < 0 || s.surfaces > surfacesPerSwabEnd)
                                  return wrong("one swab end wipes at most two surfaces", at + "/surfaces");
                              return {};
                          },
                          [&](const InspectStep& s) -> Result<void> {
                              if (s.question.empty())
                                  return wrong("an inspection needs a question", at + "/question");
                              if (s.goodTo.empty()) return {};
                              const auto target = indexOf(card, s.goodTo);
                              if (!target || *target <= index)
                                  return wrong("good_to must name a later step", at + "/good_to");
                              return {};
                          },
                          [&](const RepeatStep& s) -> Result<void> {
                              if (s.question.empty())
                                  return wrong("a repetition needs a question", at + "/question");
                              const auto target = indexOf(card, s.backTo);
                              if (!target || *target >= index)
                                  return wrong("back_to must name an earlier step", at + "/back_to");
                              if (s.rounds < 1 || s.rounds > 9)
                                  return wrong("rounds must be 1 to 9", at + "/rounds");
                              return {};
                          },
                          [&](const RecordStep& s) -> Result<void> {
                              if (s.fields.empty())
                                  return wrong("a record step needs a field", at + "/fields");
                              std::set<std::string> keys;
                              for (std::size_t i = 0; i < s.fields.size(); ++i) {
                                  const std::string here = at + "/fields/" + std::to_string(i);
                                  if (auto good = checkField(s.fields[i], here); !good) return good;
                                  if (!keys.insert(s.fields[i].key).second)
                                      return wrong("two fields are called " + s.fields[i].key, here + "/key");
                              }
                              return {};
                          },
                          [&](const TimerStep& s) -> Result<void> {
                              if (s.minutesSingle < 1 || s.minutesSingle > 240)
                                  return wrong("a timer runs 1 to 240 minutes", at + "/minutes_single");
                              if (s.minutesMass < 1 || s.minutesMass > 240)
                                  return wrong("a timer runs 1 to 240 minutes", at + "/minutes_mass");
                              return {};
                          },
                      },
                      step.what);
}

Result<void> checkRule(const DueRule& rule, const std::string& at) {
    if (rule.otherwise.empty()) return wrong("a due rule says what happens if not", at + "/otherwise");
    if (rule.source.empty()) return wrong("a due rule names its source", at + "/source");
    if (const auto* count = std::get_if<CountRule>(&rule.when)) {
        if (!isKey(count->counter)) return wrong("a counter needs a name", at + "/count/counter");
        if (count->every < 1) return wrong("every must be at least 1", at + "/count/every");
    }
    if (const auto* days = std::get_if<DaysRule>(&rule.when); days && (days->every < 1 || days->every > 3650))
        return wrong("days must be 1 to 3650", at + "/days");
    return {};
}

}  // namespace

std::string_view word(ToolKind kind) {
    switch (kind) {
        case ToolKind::Splicer:
            return "splicer";
        case ToolKind::Cleaver:
            return "cleaver";
        case ToolKind::Stripper:
            return "stripper";
    }
    return "";
}

std::string_view word(Condition condition) {
    switch (condition) {
        case Condition::EnvironmentJump:
            return "environment_jump";
        case Condition::IdleStretch:
            return "idle_stretch";
        case Condition::WebRibbonStrip:
            return "web_ribbon_strip";
        case Condition::OtherFibre:
            return "other_fibre";
    }
    return "";
}

std::string_view word(Per per) {
    return per == Per::Use ? "use" : "fibre";
}

ToolKind kindOf(const Tool& tool) {
    if (asSplicer(tool)) return ToolKind::Splicer;
    return asCleaver(tool) ? ToolKind::Cleaver : ToolKind::Stripper;
}

std::string_view kindWord(const Step& step) {
    return std::visit(Match{[](const DoStep&) { return std::string_view("do"); },
                            [](const InspectStep&) { return std::string_view("inspect"); },
                            [](const RepeatStep&) { return std::string_view("repeat_until"); },
                            [](const RecordStep&) { return std::string_view("record"); },
                            [](const TimerStep&) { return std::string_view("timer"); }},
                      step.what);
}

const Step* Card::step(std::string_view stepId) const {
    const auto found = std::ranges::find(steps, stepId, &Step::id);
    return found == steps.end() ? nullptr : &*found;
}

bool Card::isWhole(std::string_view action) const {
    if (action == id) return true;
    if (std::ranges::find(also, action) == also.end()) return false;
    return std::ranges::none_of(steps, [&](const Step& s) {
        const auto* timer = std::get_if<TimerStep>(&s.what);
        return timer && timer->covers == action;
    });
}

Result<void> check(const Card& card) {
    if (!isKey(card.id)) return wrong("the id must be lower case letters, digits and _", "/id");
    if (card.version < 1) return wrong("the version must be at least 1", "/version");
    if (card.title.empty()) return wrong("the card needs a title", "/title");
    if (card.minutes < 1 || card.minutes > 480) return wrong("minutes must be 1 to 480", "/minutes");
    if (card.source.empty()) return wrong("the card names its source", "/source");
    if (card.cautions.empty()) return wrong("a card has at least one caution", "/cautions");
    for (std::size_t i = 0; i < card.cautions.size(); ++i)
        if (!card.cautions[i].ends_with(cautionEnding) || card.cautions[i].size() <= cautionEnding.size() + 1)
            return wrong("a caution says the danger and ends with \"" + std::string(cautionEnding) + "\"",
                         "/cautions/" + std::to_string(i));
    for (std::size_t i = 0; i < card.materials.size(); ++i)
        if (card.materials[i].name.empty() || card.materials[i].uses < 0 || card.materials[i].lasts < 0)
            return wrong("a material needs a name and counts of at least 0",
                         "/materials/" + std::to_string(i));
    for (std::size_t i = 0; i < card.when.size(); ++i)
        if (auto good = checkRule(card.when[i], "/when/" + std::to_string(i)); !good) return good;
    if (card.steps.empty()) return wrong("a card has at least one step", "/steps");
    std::set<std::string> fields;
    for (std::size_t i = 0; i < card.steps.size(); ++i) {
        const std::string at = "/steps/" + std::to_string(i);
        if (auto good = checkStep(card, i, at); !good) return good;
        if (const auto* record = std::get_if<RecordStep>(&card.steps[i].what))
            for (const Field& field : record->fields)
                if (!fields.insert(field.key).second)
                    return wrong("two fields are called " + field.key, at + "/fields");
    }
    for (std::size_t i = 0; i < card.resets.size(); ++i)
        if (!isKey(card.resets[i])) return wrong("a counter needs a name", "/resets/" + std::to_string(i));
    return {};
}

const Card* Deck::find(std::string_view action) const {
    for (const Card& card : cards)
        if (card.id == action) return &card;
    for (const Card& card : cards)
        if (std::ranges::find(card.also, action) != card.also.end()) return &card;
    return nullptr;
}

Result<void> checkDeck(const Deck& deck) {
    std::set<std::string> ids;
    for (const Card& card : deck.cards) {
        if (!ids.insert(card.id).second) return wrong("two cards are called " + card.id, card.id);
        const auto known = [&](const std::vector<ActionKey>& names,
                               const std::string& member) -> Result<void> {
            for (const ActionKey& name : names)
                if (!deck.find(name)) return wrong("there is no care called " + name, card.id + " " + member);
            return {};
        };
        if (auto good = known(card.obligations, "/obligations"); !good) return good;
        if (auto good = known(card.gentlerFirst, "/gentler_first"); !good) return good;
        for (std::size_t i = 0; i < card.steps.size(); ++i)
            if (const auto* repeat = std::get_if<RepeatStep>(&card.steps[i].what);
                repeat && !repeat->thenOwed.empty())
                if (auto good = known({repeat->thenOwed}, "/steps/" + std::to_string(i) + "/then_owed");
                    !good)
                    return good;
        for (const DueRule& rule : card.when)
            if (const auto* event = std::get_if<EventRule>(&rule.when))
                if (auto good = known({event->after}, "/when"); !good) return good;
    }
    // Neither "owes" nor "gentler first" may lead back to where it began: such work would never end.
    using Edges = std::function<std::vector<ActionKey>(const Card&)>;
    const std::pair<const char*, Edges> kinds[] = {
        {"/obligations", [](const Card& c) { return c.obligations; }},
        {"/gentler_first", [](const Card& c) { return c.gentlerFirst; }}};
    for (const auto& kind : kinds) {
        const Edges& edges = kind.second;
        enum class Mark { Fresh, Open, Closed };
        std::map<const Card*, Mark> marks;
        std::function<bool(const Card&)> circle = [&](const Card& card) {
            if (marks[&card] == Mark::Open) return true;
            if (marks[&card] == Mark::Closed) return false;
            marks[&card] = Mark::Open;
            for (const ActionKey& name : edges(card))
                if (const Card* next = deck.find(name); next && next != &card && circle(*next)) return true;
            marks[&card] = Mark::Closed;
            return false;
        };
        for (const Card& card : deck.cards)
            if (circle(card)) return wrong("the cards go round in a circle", card.id + " " + kind.first);
    }
    return {};
}

}  // namespace arc::care
