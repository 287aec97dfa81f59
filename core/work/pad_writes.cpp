// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into the logbook, and what takes it back.
#include <algorithm>
#include <utility>

#include "core/work/notes.hpp"
#include "core/work/pad_parts.hpp"
#include "core/work/split.hpp"

namespace arc::pad {

Write Pad::begin() const {
    Write write;
    write.row = current_;
    return write;
}

void Pad::addEntries(Write& write, std::size_t row, Loss loss, std::optional<ArcId>& fresh, Clock& clock,
                     Random& random) const {
    Reading reading;
    reading.channel = channelOf(row);
    reading.loss = loss;
    reading.fibreA = rows_[row].fibre.nameA;
    reading.fibreB = rows_[row].fibre.nameB;
    reading.attempt = nextAttempt(row);
    if (reading.attempt > 1 && !redoReason_.empty())
        reading.note = std::string(note::respliced) + redoReason_;

    const KnownArc* open = redo_ == Redo::Asked ? nullptr : openArc(row);
    if (open && !inArc(row, open->id)) {
        Reading undone = reading;
        undone.state = ReadingState::Voided;
        undone.note = "undone";
        write.entries.push_back(ReadingChange{open->id, reading});
        write.opposite.insert(write.opposite.begin(), ReadingChange{open->id, undone});
        return;
    }
    if (fresh && setUp_.fibresPerArc > 1) {
        std::get<SpliceArc>(write.entries.back()).readings.push_back(reading);
        return;
    }
    SpliceArc arc;
    arc.id = makeId<ArcId>(clock, random);
    arc.at = clock.now();
    arc.splicer = setUp_.splicer;
    arc.cleaver = setUp_.cleaver;
    arc.job = setUp_.job;
    arc.closure = setUp_.closure;
    arc.mode = setUp_.mode;
    arc.channels = std::max(1, setUp_.fibresPerArc);
    arc.ambient = setUp_.ambient;
    arc.operatorName = setUp_.operatorName;
    arc.origin = Origin::Typed;
    if (clockIsBehind(arc.at)) reading.note = note::joined(std::string(note::clockBack), reading.note);
    arc.readings.push_back(reading);
    fresh = arc.id;
    write.opposite.insert(write.opposite.begin(), Withdrawal{arc.id.uuid, "undone"});
    write.entries.push_back(std::move(arc));
}

Result<Write> Pad::enter(Clock& clock, Random& random) {
    if (unanswered_) return *unanswered_;
    if (rows_.empty())
        return fail(ProblemCode::Refused, "there is no fibre to enter", "",
                    "Choose a job and a closure first");
    const Typed typed = readTyped(typed_);
    if (typed.kind == TypedKind::Impossible) return fail(ProblemCode::BadInput, typed.sentence);
    if (typed.kind == TypedKind::Unfinished || (typed.kind == TypedKind::Empty && noted().empty()))
        return fail(ProblemCode::BadInput, "no loss is typed", "", "Type the digits, then Enter");
    if (typed.kind == TypedKind::Doubtful && confirmed_ != typed_) {
        confirmed_ = typed_;
        return fail(ProblemCode::BadInput, typed.sentence);
    }
    Write write = begin();
    if (typed.loss && typing() == Typing::Correction) {
        const Attempt& before = *last(current_);
        Reading after = before.reading;
        after.loss = *typed.loss;
        after.note =
            note::joined(std::string(note::corrected) + plainLoss(before.reading.loss), before.reading.note);
        write.entries.push_back(ReadingChange{before.arc, after});
        write.opposite.push_back(ReadingChange{before.arc, before.reading});
    } else {
        std::optional<ArcId> fresh;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (rows_[r].noted && !(r == current_ && typed.loss))
                addEntries(write, r, *rows_[r].noted, fresh, clock, random);
            if (r == current_ && typed.loss) addEntries(write, r, *typed.loss, fresh, clock, random);
        }
    }
    write.text = arc::text(write.entries.back());
    unanswered_ = write;
    return write;
}

Result<Write> Pad::enterKept(const std::string& reason, Clock& clock, Random& random) {
    if (reason.empty())
        return fail(ProblemCode::BadInput, "a splice over the limit is kept only with a note", "",
                    "Say why it is kept");
    if (typing() == Typing::Correction || preview().verdict != Verdict::KeepBestWithNote)
        return fail(ProblemCode::Refused, "what is typed cannot be kept with a note", "",
                    "A note is for the last allowed attempt, over the limit and below the ceiling");
    unanswered_.reset();
    auto write = enter(clock, random);
    unanswered_.reset();
    if (!write) return write;
    Entry& last = write->entries.back();
    auto* arc = std::get_if<SpliceArc>(&last);
    Reading& reading = arc ? arc->readings.back() : std::get<ReadingChange>(last).reading;
    reading.note = std::string(note::kept) + reason;
    write->text = arc::text(last);
    return write;
}

Result<Write> Pad::keep(const std::string& reason) const {
    if (rows_.empty()) return fail(ProblemCode::Refused, "there is no splice to keep");
    if (reason.empty())
        return fail(ProblemCode::BadInput, "a splice over the limit is kept only with a note", "",
                    "Say why it is kept");
    Write write = begin();
    for (auto r = arcFirst(current_); r < arcEnd(current_); ++r) {
        const Standing now = standing(r);
        const std::string where = "fibre " + std::to_string(rows_[r].fibre.number);
        if (now == Standing::OverCeiling)
            return fail(
                ProblemCode::Refused,
                "a splice over the ceiling of " + plainLoss(setUp_.rule.ceiling) + " dB is never kept", where,
                "Re-splice it");
        if (now != Standing::TooHigh) continue;
        const Attempt& attempt = *last(r);
        if (attempt.reading.attempt < setUp_.rule.attempts)
            return fail(ProblemCode::Refused,
                        "the rule asks for " + std::to_string(setUp_.rule.attempts) +
                            " attempts before a high splice is kept, this was number " +
                            std::to_string(attempt.reading.attempt),
                        where, "Re-splice it");
        Reading after = attempt.reading;
        after.note = note::joined(std::string(note::kept) + reason, attempt.reading.note);
        write.entries.push_back(ReadingChange{attempt.arc, after});
        write.opposite.insert(write.opposite.begin(), ReadingChange{attempt.arc, attempt.reading});
    }
    if (write.entries.empty())
        return fail(ProblemCode::Refused, "nothing here is over the limit", "", "Go on with the next fibre");
    write.text = arc::text(write.entries.back());
    return write;
}

Result<Write> Pad::voidReading(const std::string& reason) const {
    if (rows_.empty() || !last(current_))
        return fail(ProblemCode::Refused, "this fibre has no reading to void", "",
                    "Choose one with the arrow keys");
    if (reason.empty())
        return fail(ProblemCode::BadInput, "a reading is voided only with a reason", "", "Say why");
    Write write = begin();
    const Attempt& attempt = *last(current_);
    Reading after = attempt.reading;
    after.state = ReadingState::Voided;
    after.note = reason;
    write.entries.push_back(ReadingChange{attempt.arc, after});
    write.opposite.push_back(ReadingChange{attempt.arc, attempt.reading});
    write.text = arc::text(write.entries.back());
    return write;
}

Result<void> Pad::move(Write& write, std::size_t from, const ArcId& arc, std::size_t to, int channel) const {
    const auto& chain = rows_[from].attempts;
    const auto link = std::ranges::find(chain, arc, &Attempt::arc);
    if (link == chain.end()) return {};
    const Fibre& there = rows_[to].fibre;
    auto done = arc::split(chain, static_cast<std::size_t>(link - chain.begin()), rows_[to].attempts,
                           {there.nameA, there.nameB, channel});
    if (!done) return tl::unexpected(done.error());
    write.entries.insert(write.entries.end(), done->changes.begin(), done->changes.end());
    write.opposite.insert(write.opposite.begin(), done->back.begin(), done->back.end());
    return {};
}

Result<Write> Pad::split(int attempt, int fibreNumber) const {
    if (rows_.empty() || !last(current_))
        return fail(ProblemCode::Refused, "this fibre has no attempts to take apart", "",
                    "Choose one with the arrow keys");
    const Row& row = rows_[current_];
    const auto link =
        std::ranges::find_if(row.attempts, [&](const Attempt& a) { return a.reading.attempt == attempt; });
    if (link == row.attempts.end())
        return fail(
            ProblemCode::BadInput,
            "fibre " + std::to_string(row.fibre.number) + " has no attempt " + std::to_string(attempt), "",
            "Its last one is " + std::to_string(last(current_)->reading.attempt));
    const auto target =
        std::ranges::find_if(rows_, [&](const Row& other) { return other.fibre.number == fibreNumber; });
    if (target == rows_.end() || target->fibre.number == row.fibre.number)
        return fail(ProblemCode::BadInput,
                    target == rows_.end() ? "fibre " + std::to_string(fibreNumber) + " is not in this closure"
                                          : "the reading is of this fibre already",
                    "", "Type the number of the fibre it belongs to");
    const auto to = static_cast<std::size_t>(target - rows_.begin());
    const auto known = std::ranges::find(arcs_, link->arc, &KnownArc::id);
    const int size = known == arcs_.end() ? 1 : known->channels;

    Write write = begin();
    write.text = "Split: attempt " + std::to_string(attempt) + " of fibre " +
                 std::to_string(row.fibre.number) + " belongs to fibre " + std::to_string(fibreNumber);
    if (size == 1 || arcFirst(current_, size) == arcFirst(to, size)) {
        const int channel = size == 1 ? link->reading.channel : static_cast<int>(to - arcFirst(to, size)) + 1;
        if (auto moved = move(write, current_, link->arc, to, channel); !moved)
            return tl::unexpected(moved.error());
        return write;
    }
    const auto first = arcFirst(current_, size);
    for (auto r = first; r < arcEnd(current_, size); ++r) {
        if (!inArc(r, link->arc)) continue;
        const auto there = arcFirst(to, size) + (r - first);
        if (there >= arcEnd(to, size))
            return fail(ProblemCode::Refused, "that ribbon has fewer fibres than this arc",
                        "fibre " + std::to_string(fibreNumber), "Void the arc and type it again there");
        if (auto moved = move(write, r, link->arc, there, static_cast<int>(r - first) + 1); !moved)
            return tl::unexpected(moved.error());
    }
    write.text += ", with its whole ribbon";
    return write;
}

std::optional<int> Pad::splitOffer() const {
    if (rows_.size() < 2 || !last(current_)) return std::nullopt;
    for (auto r = current_ + 1; r < rows_.size(); ++r)
        if (!last(r)) return rows_[r].fibre.number;
    return rows_[current_ + 1 < rows_.size() ? current_ + 1 : current_ - 1].fibre.number;
}

bool Pad::clockIsBehind(Instant now) const {
    return std::ranges::any_of(arcs_, [&](const KnownArc& known) { return now < known.at; });
}

void Pad::written(const Write& write) {
    for (const auto& entry : write.entries) apply(entry);
    for (auto& row : rows_) row.noted.reset();
    current_ = write.row;
    goOn();
}

}  // namespace arc::pad
