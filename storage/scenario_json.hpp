// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the settings of an invented crew (core/scenario) from JSON. Every key that is left out has the value
// named here; a key that is not known is refused, so that a slip of the pen never runs a different scenario.
//
//   name*, about                text
//   seed                        whole number, taken when none is given (1)
//   start                       ISO 8601, local midnight of day 0; its offset is that of all times
//   weather                     mean_c 14, swing_c 5, day_sd_c 2, humidity_pct 60, pressure_hpa 985,
//                               cold_mornings [{day, celsius}]
//   splicers[]                  label*, nickname, kind* mass|single, grooves (12|1), arc_control
//                               manual|self_calibrating, mode "G.652-G.652", offset_um (0.33|0.17), base_db,
//                               noise_db, setup_sd, setup_arcs, outlier, minutes_per_arc, resolution_db,
//                               counter_start, electrode_arcs, wear_start, wear_scale, wear_power, wear_gain,
//                               last_electrodes (ISO time)
//   cleavers[]                  label*, nickname, positions 16, heights 3, angle_sd_deg 0.45,
//                               blade {height, position}
//   strippers[]                 label*, nickname
//   jobs[]                      label*, title, rule {name, per_splice_db, average_db, ceiling_db, attempts,
//                               directions one_way|two_way}, mode_field_a_um 9.2, mode_field_b_um 9.2,
//                               mode_field_sd_um 0.04, bad_lot false,
//                               cables [{label*, fibres*, unit tube|ribbon, ribbon flat|web|ribbonised,
//                               unit_size, colour_order, fibre_type, length_km}], closures [{label*,
//                               cable_a*, cable_b*, trays, per_tray, plan* "1-144 straight", left_out "5,6"}]
//   work[]                      splicer*, cleaver*, job*, closures* [labels], from_day*, to_day*,
//                               arcs_per_day*, start_hour 7.5, operator
//   faults[]                    cause* groove|calibration|cleaver, tool*, day + hour or arc, channels [],
//                               step_db 0.03, ramp_arcs 0, angle_gain 1.1
//   care[]                      tool*, action*, day + hour or arc, effect helps|nothing|worse,
//                               brings {a fault without its time}, detail, by,
//                               calibration {power, position adequate|not_adequate, fibre_type, fibre_count,
//                               runs}, blade {height, position}
//   routine[]                   tool*, action*, every_days and/or every_uses (uses: arcs), hour 16.5,
//                               from_day, to_day, effect nothing|helps, detail, by
//   measuring[]                 closure*, day*, fibres* "1-12", directions two_way|one_way,
//                               wavelength_nm 1550, noise_db 0.006, instrument, note
//   (* needed; hours are 0 to 24, losses of a rule 0 to 10 dB, other numbers -100000 to 100000, whole ones 0
//   to 1e9)
#pragma once
#include <string_view>

#include "core/scenario/scenario.hpp"

namespace arc::storage {

/// The Problem names the key by its path: "jobs[2].closures[0].plan".
Result<scenario::Scenario> scenarioFromJson(std::string_view text);

}  // namespace arc::storage
