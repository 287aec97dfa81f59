// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/issued.hpp"

#include <algorithm>

namespace arc::closeout {

std::optional<int> latestNumber(std::span<const IssuedRecord> issued) {
    if (issued.empty()) return std::nullopt;
    return std::ranges::max(issued, {}, &IssuedRecord::number).number;
}

int nextNumber(std::span<const IssuedRecord> issued) {
    return latestNumber(issued).value_or(0) + 1;
}

std::optional<int> supersededBy(const IssuedRecord& record, std::span<const IssuedRecord> issued) {
    std::optional<int> first;
    for (const IssuedRecord& other : issued)
        if (other.supersedes == record.number && other.id != record.id && (!first || other.number < *first))
            first = other.number;
    return first;
}

std::vector<int> numbersGivenTwice(std::span<const IssuedRecord> issued) {
    std::vector<int> numbers;
    for (const IssuedRecord& record : issued) numbers.push_back(record.number);
    std::ranges::sort(numbers);
    std::vector<int> twice;
    for (std::size_t i = 1; i < numbers.size(); ++i)
        if (numbers[i] == numbers[i - 1] && (twice.empty() || twice.back() != numbers[i]))
            twice.push_back(numbers[i]);
    return twice;
}

}  // namespace arc::closeout
