// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/splice_rows.hpp"

namespace arc::storage {

const std::string& arcColumns() {
    static const std::string sql =
        "i.id, a.at_ms, a.offset_min, s.id, c.id, jb.id, cl.id, m.text, a.channels, a.counter_arcs, "
        "a.temp_mk, "
        "a.humidity_permille, a.pressure_pa, o.text, a.origin";
    return sql;
}

const std::string& arcJoins() {
    static const std::string sql =
        " JOIN identity i ON i.key = a.key JOIN identity s ON s.key = a.splicer "
        "LEFT JOIN identity c ON c.key = a.cleaver LEFT JOIN identity jb ON jb.key = a.job "
        "LEFT JOIN identity cl ON cl.key = a.closure JOIN word m ON m.key = a.mode "
        "JOIN word o ON o.key = a.operator ";
    return sql;
}

SpliceArc arcFrom(const Query& q, int first) {
    SpliceArc a;
    a.id.uuid = q.uuid(first);
    a.at = {q.integer(first + 1), static_cast<std::int16_t>(q.integer(first + 2))};
    a.splicer.uuid = q.uuid(first + 3);
    if (!q.isNull(first + 4)) a.cleaver = ToolId{q.uuid(first + 4)};
    if (!q.isNull(first + 5)) a.job = JobId{q.uuid(first + 5)};
    if (!q.isNull(first + 6)) a.closure = ClosureId{q.uuid(first + 6)};
    a.mode = q.text(first + 7);
    a.channels = static_cast<int>(q.integer(first + 8));
    a.counter = maybe<ArcCount>(q, first + 9);
    a.ambient.temperature = maybe<Temperature>(q, first + 10);
    a.ambient.humidity = maybe<Humidity>(q, first + 11);
    a.ambient.pressure = maybe<Pressure>(q, first + 12);
    a.operatorName = q.text(first + 13);
    a.origin = static_cast<Origin>(q.integer(first + 14));
    return a;
}

const std::string& readingColumns() {
    static const std::string sql =
        "r.channel, r.loss_mdb, r.cleave_left_cdeg, r.cleave_right_cdeg, r.fibre_a, r.fibre_b, r.attempt, "
        "r.state, "
        "r.note";
    return sql;
}

Reading readingFrom(const Query& q, int first) {
    Reading r;
    r.channel = static_cast<int>(q.integer(first));
    r.loss.value = static_cast<std::int32_t>(q.integer(first + 1));
    r.cleaveLeft = maybe<Angle>(q, first + 2);
    r.cleaveRight = maybe<Angle>(q, first + 3);
    r.fibreA = q.text(first + 4);
    r.fibreB = q.text(first + 5);
    r.attempt = static_cast<int>(q.integer(first + 6));
    r.state = static_cast<ReadingState>(q.integer(first + 7));
    r.note = q.text(first + 8);
    return r;
}

}  // namespace arc::storage
