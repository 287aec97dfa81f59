// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/typed_range.hpp"

#include <QLineEdit>
#include <QLocale>

#include <cmath>
#include <optional>
#include <string>

#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

/// Shortest, as the sentences of core have numbers: "0.001", "5", "6,912".
std::string number(double value) {
    constexpr int digits = 6;
    return text::utf8(QLocale(QLocale::English).toString(value, 'g', digits));
}

bool isWithin(const std::optional<double>& value, TypedRange range) {
    return value && *value >= range.least && *value <= range.most;
}

}  // namespace

Result<double> numberIn(const QLineEdit& line, TypedRange range) {
    const auto value = text::typedNumber(line.text());
    if (!isWithin(value, range))
        return fail(ProblemCode::BadInput, text::utf8(line.accessibleName()) + " must be a number between " +
                                               number(range.least) + " and " + number(range.most));
    return *value;
}

Result<int> wholeNumberIn(const QLineEdit& line, TypedRange range) {
    const auto value = text::typedNumber(line.text());
    if (!isWithin(value, range) || *value != std::floor(*value))
        return fail(ProblemCode::BadInput, text::utf8(line.accessibleName()) +
                                               " must be a whole number between " + number(range.least) +
                                               " and " + number(range.most));
    return static_cast<int>(*value);
}

}  // namespace arc::ui
