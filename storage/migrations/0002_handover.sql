-- SPDX-License-Identifier: GPL-3.0-or-later
-- Journal rows that came in a satchel of one job as headlines: what was written under them is not here (yet).
-- A satchel that has it fills it in. They are part of the journal head.
CREATE TABLE headline(
    journal INTEGER PRIMARY KEY REFERENCES journal(row)
) STRICT;

-- Whatever has a version that does not show has more than one, or was taken back: few, found without a look at
-- every splice.
CREATE INDEX arc_hidden ON arc(key) WHERE live = 0;
CREATE INDEX reading_hidden ON reading(arc, channel) WHERE live = 0;
