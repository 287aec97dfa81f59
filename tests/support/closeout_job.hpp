// SPDX-License-Identifier: GPL-3.0-or-later
// A small invented job whose closeout can be worked out by hand: one closure with a plan of four splices, one
// splicer, one cleaver. Fibre 1: 0.02. Fibre 2: 0.12 then 0.04. Fibre 3: 0.16 three times, kept with a note.
// Fibre 4 is missing.
#pragma once
#include <string>

#include "tests/support/memory_logbook.hpp"

namespace arc::test {

template <class AnyId>
AnyId idOf(int number) {
    AnyId id;
    id.uuid.bytes[0] = 1;
    id.uuid.bytes[14] = static_cast<std::uint8_t>(number / 256);
    id.uuid.bytes[15] = static_cast<std::uint8_t>(number % 256);
    return id;
}

inline Instant at(const char* iso) {
    return *parseInstant(iso);
}

inline constexpr int splicerNumber = 1, cleaverNumber = 2;

inline SpliceArc arcWith(int number, const char* iso, const std::string& fibre, Loss loss, int attempt) {
    SpliceArc arc;
    arc.id = idOf<ArcId>(number);
    arc.at = at(iso);
    arc.splicer = idOf<ToolId>(splicerNumber);
    arc.cleaver = idOf<ToolId>(cleaverNumber);
    arc.job = idOf<JobId>(1);
    arc.closure = idOf<ClosureId>(1);
    arc.mode = "G.652-G.652";
    arc.operatorName = "Crew 2";
    arc.counter = ArcCount{static_cast<std::uint32_t>(1000 + number)};
    arc.ambient.temperature = Temperature{294650};
    Reading reading;
    reading.loss = loss;
    reading.fibreA = reading.fibreB = fibre;
    reading.attempt = attempt;
    reading.cleaveLeft = Angle{40};
    reading.cleaveRight = Angle{60};
    arc.readings.push_back(reading);
    return arc;
}

inline MemoryLogbook smallJob() {
    MemoryLogbook book;
    book.head = std::string(64, 'a');
    Splicer splicer;
    book.toolList.push_back({idOf<ToolId>(splicerNumber), "S-01", "Heron", splicer, Service::InUse});
    book.toolList.push_back({idOf<ToolId>(cleaverNumber), "C-01", "", Cleaver{}, Service::InUse});
    Job job;
    job.id = idOf<JobId>(1);
    job.label = "HR-B";
    job.title = "Harrow Ridge, section B (invented)";
    job.rule.name = "Sample: single fibre";
    job.rule.average = Loss{100};
    book.jobList.push_back(job);
    Cable cable;
    cable.id = idOf<CableId>(1);
    cable.job = job.id;
    cable.label = "K-1";
    cable.fibreCount = 24;
    cable.lengthKm = 20.0;
    book.cableList.push_back(cable);
    Closure closure;
    closure.id = idOf<ClosureId>(1);
    closure.job = job.id;
    closure.label = "HR-17";
    closure.cableA = closure.cableB = cable.id;
    closure.plan = {{1, 1}, {2, 2}, {3, 3}, {4, 4}};
    book.closureList.push_back(closure);
    book.arcList.push_back(arcWith(1, "2031-03-03T08:00:00+01:00", "1", Loss{20}, 1));
    book.arcList.push_back(arcWith(2, "2031-03-03T08:02:00+01:00", "2", Loss{120}, 1));
    book.arcList.push_back(arcWith(3, "2031-03-03T08:04:00+01:00", "2", Loss{40}, 2));
    book.arcList.push_back(arcWith(4, "2031-03-03T08:06:00+01:00", "3", Loss{160}, 1));
    book.arcList.push_back(arcWith(5, "2031-03-03T08:08:00+01:00", "3", Loss{160}, 2));
    book.arcList.push_back(arcWith(6, "2031-03-03T08:10:00+01:00", "3", Loss{160}, 3));
    book.arcList.back().readings[0].note = "kept, fibre is short";
    return book;
}

}  // namespace arc::test
