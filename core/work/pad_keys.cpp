// SPDX-License-Identifier: GPL-3.0-or-later
// Keys: what is typed and noted, and where the pad stands. Nothing here writes.
#include <algorithm>
#include <utility>

#include "core/work/pad_parts.hpp"

namespace arc::pad {

std::string plainLoss(Loss loss) {
    std::string text =
        std::to_string(loss.value / 1000) + "." + std::to_string(1000 + loss.value % 1000).substr(1);
    if (text.back() == '0') text.pop_back();
    return text;
}

void Pad::type(char key) {
    const bool usable = (key >= '0' && key <= '9') || key == '.' || key == ',' || key == '-';
    if (!usable || typed_.size() >= 6 || rows_.empty()) return;
    typed_ += key;
    confirmed_.clear();
    unanswered_.reset();
}

void Pad::erase() {
    if (!typed_.empty()) typed_.pop_back();
    confirmed_.clear();
    unanswered_.reset();
}

void Pad::clear() {
    if (typed_.empty()) {
        std::optional<std::size_t> first;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (!rows_[r].noted) continue;
            if (!first) first = r;
            rows_[r].noted.reset();
        }
        if (first)
            current_ = *first;
        else
            redo_ = Redo::No;
    }
    typed_.clear();
    confirmed_.clear();
    unanswered_.reset();
}

void Pad::restore(std::string typed, const std::vector<Loss>& noted) {
    for (const Loss loss : noted) {
        typed_ = plainLoss(loss);
        confirmed_ = typed_;
        if (!note()) break;
    }
    typed_ = std::move(typed);
}

void Pad::arrive(std::size_t row) {
    current_ = row;
    typed_.clear();
    confirmed_.clear();
    unanswered_.reset();
    redo_ = Redo::No;
    redoReason_.clear();
    if (!rows_.empty() && setUp_.fibresPerArc <= 1 && tooHigh(standing(row))) redo_ = Redo::Asked;
}

Result<void> Pad::moveTo(std::size_t row) {
    if (row >= rows_.size() || row == current_) return {};
    if (!typed_.empty() || !noted().empty())
        return fail(ProblemCode::Refused, "what is typed is not saved yet", "",
                    "Enter saves it, Esc drops it");
    arrive(row);
    return {};
}

Result<void> Pad::note() {
    const Typed typed = readTyped(typed_);
    if (typed.kind == TypedKind::Empty || typed.kind == TypedKind::Unfinished)
        return fail(ProblemCode::BadInput, "no loss is typed", "", "Type the digits first");
    if (typed.kind == TypedKind::Impossible) return fail(ProblemCode::BadInput, typed.sentence);
    if (typed.kind == TypedKind::Doubtful && confirmed_ != typed_) {
        confirmed_ = typed_;
        return fail(ProblemCode::BadInput, typed.sentence);
    }
    if (typing() == Typing::Correction)
        return fail(ProblemCode::Refused, "a correction is saved on its own", "", "Press Enter");
    const auto end = setUp_.fibresPerArc > 1 ? arcEnd(current_) : unitEnd(current_);
    std::size_t next = current_ + 1;
    while (next < end && (rows_[next].noted || (redo_ == Redo::No && last(next) && !tooHigh(standing(next)))))
        ++next;
    if (next >= end)
        return fail(ProblemCode::Refused, "this is the last fibre here", "", "Enter saves them all");
    rows_[current_].noted = typed.loss;
    current_ = next;
    typed_.clear();
    confirmed_.clear();
    unanswered_.reset();
    return {};
}

Result<void> Pad::paste(std::string_view text) {
    auto losses = readTypedList(text);
    if (!losses) return tl::unexpected(losses.error());
    const auto end = setUp_.fibresPerArc > 1 ? arcEnd(current_) : unitEnd(current_);
    if (losses->size() > end - current_)
        return fail(ProblemCode::BadInput,
                    std::to_string(losses->size()) + " values, but only " + std::to_string(end - current_) +
                        " fibres are left here",
                    "", "Nothing was taken");
    const Loss lastLoss = losses->back();
    losses->pop_back();
    for (const Loss loss : *losses) {
        typed_ = plainLoss(loss);
        confirmed_ = typed_;
        if (auto noted = note(); !noted) {
            typed_.clear();
            clear();
            return noted;
        }
    }
    typed_ = plainLoss(lastLoss);
    return {};
}

void Pad::askResplice(std::string reason) {
    if (rows_.empty() || !last(current_)) return;
    unanswered_.reset();
    redo_ = Redo::Asked;
    redoReason_ = std::move(reason);
    if (typed_.empty() && noted().empty()) current_ = arcFirst(current_);
}

}  // namespace arc::pad
