// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/split.hpp"

#include <algorithm>

#include "core/work/notes.hpp"

namespace arc {
namespace {

std::string nameOf(const std::string& fibreA, const std::string& fibreB) {
    return fibreA.empty() ? fibreB : fibreA;
}

/// Writes the link with another number.
void renumber(Split& split, ChainLink& link, int attempt) {
    const Reading before = link.reading;
    link.reading.attempt = attempt;
    split.changes.push_back({link.arc, link.reading});
    split.back.insert(split.back.begin(), {link.arc, before});
}

Reading voided(Reading reading, std::string why) {
    reading.state = ReadingState::Voided;
    reading.note = std::move(why);
    return reading;
}

}  // namespace

Result<Split> split(const Chain& from, std::size_t which, const Chain& to, const SplitPlace& place) {
    if (which >= from.size())
        return fail(ProblemCode::NotFound, "this fibre has no such attempt", "",
                    "Look at its attempts again");
    ChainLink moved = from[which];
    const std::string name = nameOf(place.fibreA, place.fibreB);
    if (std::ranges::find(to, moved.arc, &ChainLink::arc) != to.end())
        return fail(ProblemCode::Refused, "one arc cannot splice a fibre twice", "fibre " + name,
                    "Move or void the reading that fibre has of the same arc first");
    const Reading before = moved.reading;
    Split done{from, to, {}, {}};
    done.from.erase(done.from.begin() + static_cast<std::ptrdiff_t>(which));

    const auto later =
        std::ranges::find_if(done.to, [&](const ChainLink& link) { return moved.at < link.at; });
    const auto slot = later - done.to.begin();
    moved.reading.fibreA = place.fibreA;
    moved.reading.fibreB = place.fibreB;
    moved.reading.channel = place.channel;
    moved.reading.attempt = slot == 0 ? 1 : done.to[static_cast<std::size_t>(slot - 1)].reading.attempt + 1;
    moved.reading.note =
        note::joined(std::string(note::moved) + nameOf(before.fibreA, before.fibreB), before.note);
    if (before.channel != place.channel) {
        done.changes.push_back({moved.arc, voided(before, "moved to fibre " + name)});
        done.back.push_back({moved.arc, voided(moved.reading, "undone")});
    }
    done.changes.push_back({moved.arc, moved.reading});
    done.back.push_back({moved.arc, before});
    done.to.insert(done.to.begin() + slot, moved);

    for (auto i = which; i < done.from.size(); ++i)
        renumber(done, done.from[i], done.from[i].reading.attempt - 1);
    for (auto i = static_cast<std::size_t>(slot) + 1; i < done.to.size(); ++i) {
        const int least = done.to[i - 1].reading.attempt + 1;
        if (done.to[i].reading.attempt >= least) break;
        renumber(done, done.to[i], least);
    }
    return done;
}

}  // namespace arc
