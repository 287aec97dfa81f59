// SPDX-License-Identifier: GPL-3.0-or-later
// The state of a watcher as bytes. Each struct lists its fields once, for writing and reading alike.
#include "core/analytics/state_bytes.hpp"
#include "core/analytics/watcher.hpp"

namespace arc {

template <class Archive>
void fields(Archive& a, Uuid& v) {
    a(v.bytes);
}
template <class Archive, class Tag>
void fields(Archive& a, Id<Tag>& v) {
    a(v.uuid);
}
template <class Archive>
void fields(Archive& a, Instant& v) {
    a(v.ms, v.offsetMinutes);
}
template <class Archive>
void fields(Archive& a, CalibrationResult& v) {
    a(v.power, v.position, v.fibreType, v.fibreCount, v.runs);
}
template <class Archive>
void fields(Archive& a, BladePlace& v) {
    a(v.height, v.position);
}
template <class Archive>
void fields(Archive& a, CareRecord& v) {
    a(v.id, v.tool, v.at, v.action, v.cardVersion, v.detail, v.by, v.calibration, v.blade, v.counter,
      v.fields, v.answers);
}

}  // namespace arc

namespace arc::detail {
template <class Archive, class Tag, class Rep>
void fields(Archive& a, Quantity<Tag, Rep>& v) {
    a(v.value);
}
}  // namespace arc::detail

namespace arc::drift {

template <class Archive>
void fields(Archive& a, RawArc& v) {
    a(v.number, v.at, v.counter, v.job, v.cleaver, v.celsius, v.redone, v.lossMask, v.leftMask, v.rightMask,
      v.loss, v.left, v.right);
}
template <class Archive>
void fields(Archive& a, Scores& v) {
    a(v.common, v.shift, v.angle, v.spread, v.apart);
}
template <class Archive>
void fields(Archive& a, Row& v) {
    a(v.raw, v.score);
}
template <class Archive>
void fields(Archive& a, CellGrid& v) {
    a(v.width, v.cells);
}
template <class Archive>
void fields(Archive& a, Grids& v) {
    a(v.loss, v.angle);
}
template <class Archive>
void fields(Archive& a, GammaFit& v) {
    a(v.shape, v.mean);
}
template <class Archive>
void fields(Archive& a, Laws& v) {
    a(v.loss, v.angle);
}
template <class Archive>
void fields(Archive& a, ScoreTables& v) {
    a(v.grooves, v.grids, v.lossP, v.angleP, v.pooledRank, v.pooledShift, v.rank, v.shift, v.angle,
      v.pooledWeight);
}
template <class Archive>
void fields(Archive& a, Learned& v) {
    a(v.mean, v.sd, v.wander, v.perMdb);
}
template <class Archive>
void fields(Archive& a, Direction& v) {
    a(v.common, v.shift);
}
template <class Archive>
void fields(Archive& a, Shapes& v) {
    a(v.up, v.larger, v.correlation);
}
template <class Archive>
void fields(Archive& a, Model& v) {
    a(v.grooves, v.arcs, v.tables, v.laws, v.common, v.shift, v.angle, v.spread, v.redone, v.shapes, v.apart,
      v.ownWeight, v.meanDb, v.grooveMeanDb, v.meanAngleDeg);
}
template <class Archive>
void fields(Archive& a, Chart& v) {
    a(v.statistic, v.index, v.k, v.limit, v.offset, v.sum, v.zeroAt);
}
template <class Archive>
void fields(Archive& a, Explanation& v) {
    a(v.evidence, v.best, v.beganAt, v.low, v.high, v.beganTime, v.ramp, v.riseDb, v.arcsSince, v.beforeDb,
      v.afterDb, v.beforeDeg, v.afterDeg);
}
template <class Archive>
void fields(Archive& a, GrooveFact& v) {
    a(v.groove, v.beforeDb, v.afterDb, v.readings, v.strength);
}
template <class Archive>
void fields(Archive& a, Trigger& v) {
    a(v.action, v.at, v.celsiusBefore, v.celsiusAfter, v.idleHours, v.step);
}
template <class Archive>
void fields(Archive& a, CaseFacts& v) {
    a(v.raising, v.lasting, v.step, v.ramp, v.dirt, v.widening, v.job, v.jobOn, v.grooveAlone, v.angles,
      v.triggers, v.grooves, v.otherGroovesDb, v.jobAtRaise, v.cleaverAtRaise, v.angleSeen, v.counter,
      v.electrodeArcs);
}
template <class Archive>
void fields(Archive& a, Case& v) {
    a(v.key, v.chart, v.channel, v.statistic, v.index, v.zeroAt, v.raisedAt, v.raisedTime, v.state,
      v.answerReason, v.curedBy, v.level, v.noise, v.refires, v.backToNormal, v.rowsSince, v.closed);
}
template <class Archive>
void fields(Archive& a, CareEffect& v) {
    a(v.care, v.action, v.at, v.atArc, v.verdict, v.shiftDb, v.low, v.high, v.before, v.after, v.signalKey);
}
template <class Archive>
void fields(Archive& a, Complaint& v) {
    a(v.statistic, v.index, v.began, v.signalKey);
}
template <class Archive>
void fields(Archive& a, CareFollowed& v) {
    a(v.complaint, v.arcsBefore, v.settled);
}
template <class Archive>
void fields(Archive& a, JobLevel& v) {
    a(v.arcs, v.common, v.shift, v.db);
}
template <class Archive>
void fields(Archive& a, WatchState& v) {
    a(v.baseline, v.candidate, v.renewing, v.model, v.charts, v.window, v.cases, v.effects, v.cares, v.events,
      v.jobs, v.redone, v.baselineFrom, v.baselineTo, v.arcs, v.lastArc, v.lastCareAt);
}

namespace {
const std::string version = "arc.watch.2";
}

std::string Watcher::save() const {
    ByteWriter writer;
    writer(version, state_);
    return writer.bytes;
}

Result<Watcher> Watcher::restore(WatchSettings settings, std::string_view bytes) {
    try {
        ByteReader reader(bytes);
        std::string found;
        reader(found);
        if (found != version)
            return fail(ProblemCode::Damaged, "the stored chart state is of another version", "",
                        "analyse the whole logbook again");
        Watcher watcher(std::move(settings));
        reader(watcher.state_);
        if (reader.atEnd()) return watcher;
    } catch (const std::out_of_range&) {
        // falls through: too short and too long are the same trouble
    }
    return fail(ProblemCode::Damaged, "the stored chart state cannot be read", "",
                "analyse the whole logbook again");
}

}  // namespace arc::drift
