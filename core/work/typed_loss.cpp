// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/typed_loss.hpp"

#include <algorithm>
#include <cstdint>

namespace arc::pad {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

Typed impossible(std::string sentence) {
    return {TypedKind::Impossible, std::nullopt, std::move(sentence)};
}

std::string decimal(std::int64_t thousandths) {
    std::string digits = std::to_string(thousandths % 1000);
    digits.insert(0, 3 - digits.size(), '0');
    if (digits.back() == '0') digits.pop_back();
    return std::to_string(thousandths / 1000) + "." + digits;
}

Typed judged(std::int64_t thousandths, std::string_view digitsOnly) {
    if (thousandths > impossibleAbove.value)
        return impossible(decimal(thousandths) + " dB is more than any splicer shows. Type the loss again.");
    const Loss loss{static_cast<std::int32_t>(thousandths)};
    if (loss <= doubtfulAbove) return {TypedKind::Loss, loss, {}};
    std::string sentence = decimal(thousandths) + " dB is unusual. Enter again if the splicer shows it";
    if (digitsOnly.size() == 3) sentence += ", or type 0." + std::string(digitsOnly);
    return {TypedKind::Doubtful, loss, sentence + "."};
}

}  // namespace

Typed readTyped(std::string_view text) {
    if (text.empty()) return {};
    if (text.front() == '-')
        return impossible("A splicer never estimates a negative loss. Type the loss again.");
    std::string whole, fraction;
    int separators = 0;
    for (const char c : text) {
        if (c == '.' || c == ',')
            ++separators;
        else if (!isDigit(c))
            return impossible("\"" + std::string(text) + "\" is not a number. Type the digits of the loss.");
        else
            (separators ? fraction : whole) += c;
    }
    if (separators > 1) return impossible("Two decimal points. Type the loss again.");
    if (whole.size() > 4) return impossible("That is more than any splicer shows. Type the loss again.");
    if (separators == 0) return judged(std::stoll(whole) * 10, whole);
    if (fraction.empty()) return {TypedKind::Unfinished, std::nullopt, {}};
    if (fraction.size() > 3) return impossible("A loss has at most three places, 0.001 dB. Type it again.");
    fraction.append(3 - fraction.size(), '0');
    return judged((whole.empty() ? 0 : std::stoll(whole) * 1000) + std::stoll(fraction), {});
}

Result<std::vector<Loss>> readTypedList(std::string_view text) {
    const auto apart = [](char c) { return c == ' ' || c == '\t' || c == ';' || c == '\n' || c == '\r'; };
    std::vector<Loss> losses;
    auto from = text.begin();
    while (true) {
        from = std::find_if_not(from, text.end(), apart);
        if (from == text.end()) break;
        const auto to = std::find_if(from, text.end(), apart);
        const std::string_view word(&*from, static_cast<std::size_t>(to - from));
        const Typed typed = readTyped(word);
        if (typed.kind != TypedKind::Loss)
            return fail(ProblemCode::BadInput, "\"" + std::string(word) + "\" is not a usual loss",
                        "value " + std::to_string(losses.size() + 1),
                        "Nothing was taken; correct it and paste again");
        losses.push_back(*typed.loss);
        from = to;
    }
    if (losses.empty())
        return fail(ProblemCode::BadInput, "there is no loss in the text", "", "Copy the values first");
    return losses;
}

}  // namespace arc::pad
