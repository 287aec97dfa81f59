// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/paper.hpp"

namespace arc::closeout {
namespace {

constexpr std::string_view key = "closeout.paper";

}  // namespace

std::string_view word(PaperSize paper) {
    return paper == PaperSize::Letter ? "letter" : "a4";
}

std::string_view title(PaperSize paper) {
    return paper == PaperSize::Letter ? "Letter" : "A4";
}

std::optional<PaperSize> paperNamed(std::string_view named) {
    for (const auto paper : {PaperSize::A4, PaperSize::Letter})
        if (named == word(paper)) return paper;
    return std::nullopt;
}

Result<PaperSize> paperOf(Logbook& book) {
    const auto chosen = book.setting(key);
    if (!chosen) return tl::unexpected(chosen.error());
    return (*chosen ? paperNamed(**chosen) : std::nullopt).value_or(PaperSize::A4);
}

Setting paperSetting(PaperSize paper) {
    return {std::string(key), std::string(word(paper))};
}

}  // namespace arc::closeout
