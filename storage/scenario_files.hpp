// SPDX-License-Identifier: GPL-3.0-or-later
// The files a simulated log is handed out as: the same forms that the import reads, and the truth.
#pragma once
#include <cstdint>
#include <string>

#include "core/scenario/simulate.hpp"

namespace arc::storage {

/// UTF-8, RFC 4180, CRLF. Columns: time, splicer, cleaver, job, closure, mode, channels, channel, fibre_a,
/// fibre_b, loss_db, cleave_left_deg, cleave_right_deg, arc_count, temperature_c, humidity_pct, pressure_hpa,
/// operator, attempt.
std::string splicesCsv(const scenario::SimulatedLog& log);
/// time, equipment, action, detail.
std::string eventsCsv(const scenario::SimulatedLog& log);
/// fibre, closure, wavelength_nm, loss_a_to_b_db, loss_b_to_a_db, time, instrument, note.
std::string measuredCsv(const scenario::SimulatedLog& log);
/// {"scenario", "seed", "invented": true, "arcs": {splicer: count}, "faults": [{"cause", "tool", "channels",
/// "size_db"|null, "ended_by", "touched": [{"splicer", "begin_arc", "end_arc"|null, "begin", "end"|null}]}],
/// "care": [{"time", "tool", "action", "effect"}]}; arcs count those of the splicer in the log, from 1.
std::string truthJson(const scenario::Scenario& scenario, const scenario::SimulatedLog& log,
                      std::uint64_t seed);

}  // namespace arc::storage
