// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pad.hpp"

#include <algorithm>
#include <utility>

namespace arc::pad {

namespace {

bool tooHigh(Standing standing) {
    return standing == Standing::TooHigh || standing == Standing::OverCeiling;
}

std::string joinedNote(std::string_view words, const std::string& reason, const std::string& before) {
    std::string note = std::string(words) + reason;
    if (!before.empty()) note += " (" + before + ")";
    return note;
}

std::string twoPlaces(Loss loss) {
    std::string text =
        std::to_string(loss.value / 1000) + "." + std::to_string(1000 + loss.value % 1000).substr(1);
    if (text.back() == '0') text.pop_back();
    return text;
}

}  // namespace

Pad::Pad(SetUp setUp, std::vector<Fibre> fibres, const std::vector<SpliceArc>& arcs)
    : setUp_(std::move(setUp)) {
    rows_.reserve(fibres.size());
    for (auto& fibre : fibres) rows_.push_back(Row{std::move(fibre), {}, {}});
    for (const auto& arc : arcs) apply(arc);
    current_ = rows_.empty() ? 0 : rows_.size() - 1;
    goOn();
}

void Pad::changeSetUp(SetUp setUp) {
    setUp_ = std::move(setUp);
    unanswered_.reset();
    arrive(current_);
}

void Pad::changeAverage(Loss othersSum, int othersCount) {
    setUp_.othersSum = othersSum;
    setUp_.othersCount = othersCount;
}

void Pad::reload(const std::vector<SpliceArc>& arcs) {
    std::vector<std::vector<Attempt>> before;
    for (auto& row : rows_) before.push_back(std::exchange(row.attempts, {}));
    arcs_.clear();
    for (const auto& arc : arcs) apply(arc);
    unanswered_.reset();
    if (!typed_.empty() || !noted().empty()) return;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        const auto same = [](const Attempt& x, const Attempt& y) {
            return x.arc == y.arc && x.reading == y.reading;
        };
        if (std::ranges::equal(before[r], rows_[r].attempts, same)) continue;
        if (!last(r)) return arrive(r);
        current_ = r;
        return goOn();
    }
}

// --- where it stands ---------------------------------------------------------------------------------------

std::size_t Pad::unitFirst(std::size_t row) const {
    const auto size = static_cast<std::size_t>(std::max(1, setUp_.unitSize));
    return row / size * size;
}

std::size_t Pad::unitEnd(std::size_t row) const {
    return std::min(rows_.size(), unitFirst(row) + static_cast<std::size_t>(std::max(1, setUp_.unitSize)));
}

std::size_t Pad::arcFirst(std::size_t row) const {
    const auto size = static_cast<std::size_t>(std::max(1, setUp_.fibresPerArc));
    const auto unit = unitFirst(row);
    return unit + (row - unit) / size * size;
}

std::size_t Pad::arcEnd(std::size_t row) const {
    return std::min(unitEnd(row), arcFirst(row) + static_cast<std::size_t>(std::max(1, setUp_.fibresPerArc)));
}

int Pad::channelOf(std::size_t row) const {
    return static_cast<int>(row - arcFirst(row)) + 1;
}

const Attempt* Pad::last(std::size_t row) const {
    return rows_[row].attempts.empty() ? nullptr : &rows_[row].attempts.back();
}

bool Pad::inArc(std::size_t row, const ArcId& arc) const {
    const auto& attempts = rows_[row].attempts;
    return std::any_of(attempts.begin(), attempts.end(), [&](const Attempt& a) { return a.arc == arc; });
}

const Pad::KnownArc* Pad::openArc(std::size_t row) const {
    if (setUp_.fibresPerArc <= 1) return nullptr;
    const KnownArc* newest = nullptr;
    for (const auto& arc : arcs_) {
        if (arc.splicer != setUp_.splicer || arc.channels != setUp_.fibresPerArc) continue;
        bool here = false;
        for (auto r = arcFirst(row); r < arcEnd(row) && !here; ++r) here = inArc(r, arc.id);
        if (here) newest = &arc;  // arcs_ is in book order
    }
    return newest;
}

Standing Pad::standing(std::size_t row) const {
    if (rows_[row].noted) return Standing::Noted;
    const Attempt* attempt = last(row);
    if (!attempt) return Standing::Waiting;
    switch (judge(setUp_.rule, attempt->reading.loss, attempt->reading.attempt)) {
        case Verdict::Accept:
            return Standing::Accepted;
        case Verdict::AcceptHigh:
            return Standing::AcceptedHigh;
        case Verdict::OverCeiling:
            return Standing::OverCeiling;
        case Verdict::Resplice:
        case Verdict::KeepBestWithNote:
            break;
    }
    return attempt->reading.note.starts_with(keptWords) ? Standing::Kept : Standing::TooHigh;
}

Typing Pad::typing() const {
    if (rows_.empty() || !last(current_) || redo_ == Redo::Asked) return Typing::NextAttempt;
    if (setUp_.fibresPerArc <= 1) return Typing::Correction;
    const KnownArc* arc = openArc(current_);
    return arc && inArc(current_, arc->id) ? Typing::Correction : Typing::NextAttempt;
}

int Pad::nextAttempt(std::size_t row) const {
    return last(row) ? last(row)->reading.attempt + 1 : 1;
}

Preview Pad::preview() const {
    Preview preview;
    preview.typed = readTyped(typed_);
    if (rows_.empty()) return preview;
    preview.attempt =
        typing() == Typing::Correction ? last(current_)->reading.attempt : nextAttempt(current_);
    std::int64_t sum = setUp_.othersSum.value;
    int count = setUp_.othersCount;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        std::optional<Loss> loss = rows_[r].noted;
        if (r == current_ && preview.typed.loss) loss = preview.typed.loss;
        if (!loss && last(r)) loss = last(r)->reading.loss;
        if (!loss) continue;
        sum += loss->value;
        ++count;
    }
    if (count > 0) preview.averageDb = static_cast<double>(sum) / count / 1000.0;
    if (count > 0 && sum > static_cast<std::int64_t>(setUp_.rule.average.value) * count)
        preview.average = AverageNow::Over;
    if (preview.typed.loss) preview.verdict = judge(setUp_.rule, *preview.typed.loss, preview.attempt);
    return preview;
}

std::size_t Pad::done() const {
    return static_cast<std::size_t>(
        std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return !row.attempts.empty(); }));
}

std::size_t Pad::open() const {
    std::size_t count = 0;
    for (std::size_t r = 0; r < rows_.size(); ++r) count += tooHigh(standing(r)) ? 1 : 0;
    return count;
}

std::vector<Loss> Pad::noted() const {
    std::vector<Loss> losses;
    for (const auto& row : rows_)
        if (row.noted) losses.push_back(*row.noted);
    return losses;
}

// --- keys --------------------------------------------------------------------------------------------------

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
        typed_ = twoPlaces(loss);
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
        typed_ = twoPlaces(loss);
        confirmed_ = typed_;
        if (auto noted = note(); !noted) {
            typed_.clear();
            clear();
            return noted;
        }
    }
    typed_ = twoPlaces(lastLoss);
    return {};
}

void Pad::askResplice(std::string reason) {
    if (rows_.empty() || !last(current_)) return;
    unanswered_.reset();
    redo_ = Redo::Asked;
    redoReason_ = std::move(reason);
    if (typed_.empty() && noted().empty()) current_ = arcFirst(current_);
}

// --- what goes into the logbook ----------------------------------------------------------------------------

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
    // A note on the last attempt means "kept"; a reason alone must not read as that.
    if (reading.attempt > 1 && !redoReason_.empty() &&
        judge(setUp_.rule, loss, reading.attempt) != Verdict::KeepBestWithNote)
        reading.note = std::string(respliceWords) + redoReason_;

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
        after.note = joinedNote(correctedWords, twoPlaces(before.reading.loss), before.reading.note);
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
    reading.note = std::string(keptWords) + reason;
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
                "a splice over the ceiling of " + twoPlaces(setUp_.rule.ceiling) + " dB is never kept", where,
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
        after.note = joinedNote(keptWords, reason, attempt.reading.note);
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

void Pad::written(const Write& write) {
    for (const auto& entry : write.entries) apply(entry);
    for (auto& row : rows_) row.noted.reset();
    current_ = write.row;
    goOn();
}

// --- the book as the pad sees it ---------------------------------------------------------------------------

std::optional<std::size_t> Pad::rowOf(const Reading& reading) const {
    for (std::size_t r = 0; r < rows_.size(); ++r)
        if (rows_[r].fibre.nameA == reading.fibreA &&
            (reading.fibreB.empty() || rows_[r].fibre.nameB == reading.fibreB))
            return r;
    return std::nullopt;
}

void Pad::addReading(const KnownArc& arc, const Reading& reading) {
    const auto row = rowOf(reading);
    if (!row) return;
    auto& attempts = rows_[*row].attempts;
    std::erase_if(attempts, [&](const Attempt& a) { return a.arc == arc.id; });
    if (reading.state == ReadingState::Voided) return;
    attempts.push_back({arc.id, arc.at, reading});
    std::stable_sort(attempts.begin(), attempts.end(), [](const Attempt& a, const Attempt& b) {
        return a.reading.attempt < b.reading.attempt;
    });
}

void Pad::apply(const Entry& entry) {
    if (const auto* arc = std::get_if<SpliceArc>(&entry)) {
        std::erase_if(arcs_, [&](const KnownArc& known) { return known.id == arc->id; });
        arcs_.push_back({arc->id, arc->at, arc->splicer, arc->channels});
        for (const auto& reading : arc->readings) addReading(arcs_.back(), reading);
    } else if (const auto* change = std::get_if<ReadingChange>(&entry)) {
        for (const auto& known : arcs_)
            if (known.id == change->arc) addReading(known, change->reading);
    } else if (const auto* withdrawal = std::get_if<Withdrawal>(&entry)) {
        std::erase_if(arcs_, [&](const KnownArc& known) { return known.id.uuid == withdrawal->of; });
        for (auto& row : rows_)
            std::erase_if(row.attempts, [&](const Attempt& a) { return a.arc.uuid == withdrawal->of; });
    }
}

void Pad::goOn() {
    if (rows_.empty()) return;
    const std::size_t from = current_;
    if (setUp_.fibresPerArc <= 1) {
        if (tooHigh(standing(from))) return arrive(from);
    } else if (const KnownArc* arc = openArc(from)) {
        std::optional<std::size_t> high;
        for (auto r = arcFirst(from); r < arcEnd(from); ++r) {
            if (!inArc(r, arc->id)) return arrive(r);
            if (tooHigh(standing(r)) && !high) high = r;
        }
        if (high) {
            arrive(arcFirst(from));
            redo_ = Redo::Asked;
            return;
        }
    }
    for (std::size_t step = 1; step <= rows_.size(); ++step) {
        const auto r = (from + step) % rows_.size();
        if (!last(r)) return arrive(r);
    }
    arrive(from);
}

}  // namespace arc::pad
