// SPDX-License-Identifier: GPL-3.0-or-later
// A crew at a closure of 48 fibres: what the pad needs to be typed into.
#pragma once
#include "tests/support/ui_rig.hpp"

namespace arc::test {

using namespace arc::literals;

struct PadCrew {
    ToolId splicer, cleaver;
    JobId job;
    ClosureId closure;
};

inline PadCrew makePadCrew(UiRig& rig, int grooves) {
    PadCrew crew{rig.newId<ToolId>(), rig.newId<ToolId>(), rig.newId<JobId>(), rig.newId<ClosureId>()};
    Splicer splicer;
    splicer.kind = grooves > 1 ? SplicerKind::MassFusion : SplicerKind::SingleFibre;
    splicer.grooves = grooves;
    rig.write(Tool{crew.splicer, "S-01", "Heron", splicer, Service::InUse});
    rig.write(Tool{crew.cleaver, "C-01", "", Cleaver{}, Service::InUse});
    rig.write(Pairing{rig.newId<EntryId>(), crew.splicer, crew.cleaver, rig.clock.now()});
    Job job{crew.job, "HR-B", "Harrow Ridge backbone", {}};
    job.rule.perSplice = 150_mdb;
    job.rule.average = 100_mdb;
    rig.write(job);
    Cable cable;
    cable.id = rig.newId<CableId>();
    cable.job = crew.job;
    cable.label = "A";
    cable.fibreCount = 48;
    cable.unit = grooves > 1 ? FibreUnit::Ribbon : FibreUnit::Tube;
    rig.write(cable);
    Closure closure;
    closure.id = crew.closure;
    closure.job = crew.job;
    closure.label = "HR-17";
    closure.cableA = cable.id;
    closure.trays = 2;
    for (int n = 1; n <= 48; ++n) closure.plan.push_back({n, n});
    rig.write(closure);
    return crew;
}

}  // namespace arc::test
