// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/care_cards.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <nlohmann/json.hpp>
#include <utility>

#include "storage/embedded_files.hpp"
#include "storage/json_lines.hpp"
#include "storage/whole_number.hpp"

namespace arc::storage {
namespace {

using nlohmann::json;
using namespace arc::care;

/// Thrown and caught inside this file only.
struct Broken {
    std::string what;
    std::string pointer;
};

/// One object of the card with the pointer to it.
class Node {
  public:
    Node(const json& value, std::string pointer) : value_(value), pointer_(std::move(pointer)) {
        if (!value_.is_object()) throw Broken{"this must be an object", pointer_};
    }

    void onlyHas(std::initializer_list<std::string_view> members) const {
        for (const auto& item : value_.items())
            if (std::ranges::find(members, item.key()) == members.end())
                throw Broken{"\"" + item.key() + "\" is not a member of this", pointer_ + "/" + item.key()};
    }
    [[nodiscard]] bool has(const char* name) const { return value_.contains(name); }
    [[nodiscard]] std::string at(const std::string& name) const { return pointer_ + "/" + name; }
    [[nodiscard]] const json& member(const char* name) const {
        const auto found = value_.find(name);
        if (found == value_.end()) throw Broken{std::string("\"") + name + "\" is missing", pointer_};
        return *found;
    }

    [[nodiscard]] std::string text(const char* name) const {
        const json& value = member(name);
        if (!value.is_string()) throw Broken{std::string("\"") + name + "\" must be text", at(name)};
        return value.get<std::string>();
    }
    [[nodiscard]] std::string text(const char* name, const char* otherwise) const {
        return has(name) ? text(name) : std::string(otherwise);
    }
    [[nodiscard]] int whole(const char* name) const {
        constexpr int most = 1'000'000'000;
        const auto value = wholeNumber<int>(member(name));
        if (!value || *value < 0 || *value > most)
            throw Broken{std::string("\"") + name + "\" must be a whole number", at(name)};
        return *value;
    }
    [[nodiscard]] int whole(const char* name, int otherwise) const {
        return has(name) ? whole(name) : otherwise;
    }
    [[nodiscard]] std::optional<double> number(const char* name) const {
        if (!has(name)) return std::nullopt;
        const json& value = member(name);
        if (!value.is_number() || !std::isfinite(value.get<double>()))
            throw Broken{std::string("\"") + name + "\" must be a number", at(name)};
        return value.get<double>();
    }
    [[nodiscard]] std::vector<std::string> texts(const char* name) const {
        std::vector<std::string> read;
        for (const json& value : list(name)) {
            if (!value.is_string())
                throw Broken{std::string("\"") + name + "\" holds something that is not text",
                             at(name) + "/" + std::to_string(read.size())};
            read.push_back(value.get<std::string>());
        }
        return read;
    }
    [[nodiscard]] const json& list(const char* name) const {
        const json& value = member(name);
        if (!value.is_array()) throw Broken{std::string("\"") + name + "\" must be a list", at(name)};
        return value;
    }
    template <class Value>
    [[nodiscard]] std::vector<Value> each(const char* name, Value (*read)(const Node&)) const {
        std::vector<Value> all;
        for (const json& value : list(name))
            all.push_back(read(Node(value, at(name) + "/" + std::to_string(all.size()))));
        return all;
    }
    template <class Value>
    [[nodiscard]] Value oneOf(const char* name, std::initializer_list<Value> values) const {
        const std::string given = text(name);
        std::string known;
        for (const Value value : values) {
            if (word(value) == given) return value;
            known += (known.empty() ? "" : ", ") + std::string(word(value));
        }
        throw Broken{"\"" + given + "\" is none of " + known, at(name)};
    }

  private:
    const json& value_;
    std::string pointer_;
};

DueRule readRule(const Node& node) {
    node.onlyHas({"count", "days", "condition", "after", "queue", "otherwise", "source"});
    DueRule rule;
    int kinds = 0;
    if (node.has("count")) {
        ++kinds;
        const Node count(node.member("count"), node.at("count"));
        count.onlyHas({"counter", "every", "per"});
        CountRule read{count.text("counter"), static_cast<std::uint32_t>(count.whole("every")), Per::Use};
        if (count.has("per")) read.per = count.oneOf("per", {Per::Use, Per::Fibre});
        rule.when = read;
    }
    if (node.has("days")) {
        ++kinds;
        rule.when = DaysRule{node.whole("days")};
    }
    if (node.has("condition")) {
        ++kinds;
        rule.when =
            ConditionRule{node.oneOf("condition", {Condition::EnvironmentJump, Condition::IdleStretch,
                                                   Condition::WebRibbonStrip, Condition::OtherFibre})};
    }
    if (node.has("after")) {
        ++kinds;
        rule.when = EventRule{node.text("after")};
    }
    if (kinds != 1) throw Broken{"a due rule has one of count, days, condition, after", node.at("")};
    rule.queue = node.oneOf("queue", {Queue::Hold, Queue::NextGap, Queue::ShiftEnd, Queue::BenchDay});
    rule.otherwise = node.text("otherwise");
    rule.source = node.text("source");
    return rule;
}

Material readMaterial(const Node& node) {
    node.onlyHas({"name", "uses", "unit", "lasts", "order"});
    return {node.text("name"), node.whole("uses"), node.text("unit", ""), node.whole("lasts", 0),
            node.text("order", "")};
}

FieldKind fieldKind(const Node& node) {
    const std::string kind = node.text("kind");
    if (kind == "text") return FieldKind::Text;
    if (kind == "number") return FieldKind::Number;
    if (kind == "choice") return FieldKind::Choice;
    if (kind == "photo") return FieldKind::Photo;
    throw Broken{"\"" + kind + "\" is none of text, number, choice, photo", node.at("kind")};
}

Field readField(const Node& node) {
    node.onlyHas({"key", "label", "kind", "required", "least", "most", "unit", "choices"});
    Field field;
    field.key = node.text("key");
    field.label = node.text("label");
    field.kind = fieldKind(node);
    if (node.has("required")) {
        if (!node.member("required").is_boolean())
            throw Broken{"\"required\" must be true or false", node.at("required")};
        field.required = node.member("required").get<bool>() ? Required::Yes : Required::No;
    }
    field.least = node.number("least");
    field.most = node.number("most");
    field.unit = node.text("unit", "");
    if (node.has("choices")) field.choices = node.texts("choices");
    return field;
}

Step readStep(const Node& node) {
    Step step;
    const std::string kind = node.text("kind");
    if (kind == "do") {
        node.onlyHas({"id", "kind", "text", "hint", "surfaces"});
        step.what = DoStep{node.whole("surfaces", 0)};
    } else if (kind == "inspect") {
        node.onlyHas({"id", "kind", "text", "hint", "question", "good_to"});
        step.what = InspectStep{node.text("question"), node.text("good_to", "")};
    } else if (kind == "repeat_until") {
        node.onlyHas({"id", "kind", "text", "hint", "question", "back_to", "rounds", "then_owed"});
        step.what = RepeatStep{node.text("question"), node.text("back_to"), node.whole("rounds"),
                               node.text("then_owed", "")};
    } else if (kind == "record") {
        node.onlyHas({"id", "kind", "text", "hint", "fields"});
        step.what = RecordStep{node.each<Field>("fields", readField)};
    } else if (kind == "timer") {
        node.onlyHas({"id", "kind", "text", "hint", "minutes_single", "minutes_mass", "covers"});
        step.what =
            TimerStep{node.whole("minutes_single"), node.whole("minutes_mass"), node.text("covers", "")};
    } else {
        throw Broken{"\"" + kind + "\" is none of do, inspect, repeat_until, record, timer", node.at("kind")};
    }
    step.id = node.text("id");
    step.text = node.text("text");
    step.hint = node.text("hint", "");
    return step;
}

Card readCardNode(const Node& node) {
    node.onlyHas({"$schema", "id", "version", "tool", "title", "purpose", "minutes", "also", "cautions",
                  "materials", "when", "steps", "obligations", "resets", "gentler_first", "source"});
    Card card;
    card.id = node.text("id");
    card.version = node.whole("version");
    card.tool = node.oneOf("tool", {ToolKind::Splicer, ToolKind::Cleaver, ToolKind::Stripper});
    card.title = node.text("title");
    card.purpose = node.text("purpose");
    card.minutes = node.whole("minutes");
    if (node.has("also")) card.also = node.texts("also");
    card.cautions = node.texts("cautions");
    card.materials = node.each<Material>("materials", readMaterial);
    card.when = node.each<DueRule>("when", readRule);
    card.steps = node.each<Step>("steps", readStep);
    card.obligations = node.texts("obligations");
    card.resets = node.texts("resets");
    card.gentlerFirst = node.texts("gentler_first");
    card.source = node.text("source");
    return card;
}

tl::unexpected<Problem> refusedAt(const std::string& file, int line, std::string what) {
    return fail(ProblemCode::BadInput, std::move(what), file + ", line " + std::to_string(line),
                "Correct the card; until then the shipped one is used");
}

int lineOfByte(std::string_view text, std::size_t byte) {
    const auto upTo = text.substr(0, std::min(byte, text.size()));
    return 1 + static_cast<int>(std::ranges::count(upTo, '\n'));
}

std::string editionName(const CardEdition& edition) {
    return edition.action + ".json, edition " + std::to_string(edition.version);
}

Result<Card> readEdition(const CardEdition& edition) {
    auto card = readCard(edition.json, editionName(edition));
    if (!card) return card;
    const JsonLines lines = jsonLines(edition.json);
    if (card->id != edition.action)
        return refusedAt(editionName(edition), lines.line("/id"),
                         "the card is called " + card->id + ", not " + edition.action);
    card->version = edition.version;
    return card;
}

/// The deck with one card replaced, or the reason why that does not go.
Result<Deck> withCard(Deck deck, const Card& card, const std::string& name) {
    const auto place = std::ranges::find(deck.cards, card.id, &Card::id);
    if (place == deck.cards.end())
        deck.cards.push_back(card);
    else
        *place = card;
    if (auto good = checkDeck(deck); !good) return refusedAt(name, 1, good.error().what);
    return deck;
}

}  // namespace

Result<Card> readCard(std::string_view text, const std::string& file) {
    const JsonLines lines = jsonLines(text);
    if (lines.firstDuplicate)
        return refusedAt(file, lines.firstDuplicate->line,
                         "\"" + lines.firstDuplicate->key + "\" is there twice");
    try {
        const json document = json::parse(text);
        Card card = readCardNode(Node(document, ""));
        if (auto good = check(card); !good)
            return refusedAt(file, lines.line(good.error().where), good.error().what);
        return card;
    } catch (const Broken& broken) {
        return refusedAt(file, lines.line(broken.pointer), broken.what);
    } catch (const json::parse_error& error) {
        return refusedAt(file, lineOfByte(text, error.byte), "this is not JSON from here on");
    } catch (const json::exception&) {
        return refusedAt(file, 1, "the card holds a number or text that cannot be kept");
    }
}

Result<CardShelf> shippedCards() {
    CardShelf shelf;
    for (const EmbeddedFile& file : embedded_care_cards()) {
        if (!file.name.ends_with(".json") || file.name.ends_with(".schema.json")) continue;
        auto card = readCard(file.text, std::string(file.name));
        if (!card) return tl::unexpected(card.error());
        shelf.deck.cards.push_back(std::move(*card));
    }
    if (auto good = checkDeck(shelf.deck); !good) return tl::unexpected(good.error());
    return shelf;
}

Result<CardShelf> cardsInForce(std::span<const CardEdition> editions) {
    auto shelf = shippedCards();
    if (!shelf) return shelf;
    std::vector<CardEdition> newestFirst(editions.begin(), editions.end());
    std::ranges::stable_sort(newestFirst, [](const CardEdition& a, const CardEdition& b) {
        return std::pair(b.action, b.version) < std::pair(a.action, a.version);
    });
    std::string settled;  // the action a good edition was found for
    for (const CardEdition& edition : newestFirst) {
        if (edition.action == settled) continue;
        auto card = readEdition(edition);
        if (!card) {
            shelf->refused.push_back(card.error());
            continue;
        }
        auto deck = withCard(shelf->deck, *card, editionName(edition));
        if (!deck) {
            shelf->refused.push_back(deck.error());
            continue;
        }
        shelf->deck = std::move(*deck);
        settled = edition.action;
    }
    return shelf;
}

Result<CardShelf> cardsInForce(Logbook& book) {
    auto editions = book.cardEditions();
    if (!editions) return tl::unexpected(editions.error());
    return cardsInForce(*editions);
}

Result<Card> cardOfVersion(std::span<const CardEdition> editions, std::string_view action, int version) {
    for (const CardEdition& edition : editions)
        if (edition.action == action && edition.version == version) return readEdition(edition);
    auto shelf = shippedCards();
    if (!shelf) return tl::unexpected(shelf.error());
    const Card* card = shelf->deck.find(action);
    if (card && card->version == version) return *card;
    return fail(ProblemCode::NotFound,
                "there is no card " + std::string(action) + " of version " + std::to_string(version), {},
                "Start the card anew");
}

Result<std::string> shippedCardText(std::string_view action) {
    for (const EmbeddedFile& file : embedded_care_cards())
        if (file.name == std::string(action) + ".json") return std::string(file.text);
    return fail(ProblemCode::NotFound, "there is no shipped card " + std::string(action));
}

Result<std::string> cardTextInForce(std::span<const CardEdition> editions, std::string_view action) {
    const auto shelf = cardsInForce(editions);
    if (!shelf) return tl::unexpected(shelf.error());
    const Card* card = shelf->deck.find(action);
    if (!card) return shippedCardText(action);
    for (const CardEdition& edition : editions)
        if (edition.action == card->id && edition.version == card->version) return edition.json;
    return shippedCardText(card->id);
}

Result<CardEdition> editionOf(std::string_view text, std::span<const CardEdition> editions, EntryId id) {
    auto card = readCard(text, "the edited card");
    if (!card) return tl::unexpected(card.error());
    auto shelf = cardsInForce(editions);
    if (!shelf) return tl::unexpected(shelf.error());
    if (auto deck = withCard(shelf->deck, *card, "the edited card"); !deck)
        return tl::unexpected(deck.error());
    int newest = 0;
    if (const auto shipped = shippedCards(); shipped)
        if (const Card* old = shipped->deck.find(card->id)) newest = old->version;
    for (const CardEdition& edition : editions)
        if (edition.action == card->id) newest = std::max(newest, edition.version);
    return CardEdition{id, card->id, newest + 1, std::string(text)};
}

}  // namespace arc::storage
