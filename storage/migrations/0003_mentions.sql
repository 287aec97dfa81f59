-- SPDX-License-Identifier: GPL-3.0-or-later
-- Where a text stands, so that a search need not read every splice. For each arc that shows: the fibre names of
-- its readings that show as one text, a line each (arcs of one closure after the other have the same ones), and
-- each of their notes. Texts that stand nowhere any more are gone. Worked out again by the verifier. Operators
-- are found by their index.
CREATE TABLE phrase(
    key INTEGER PRIMARY KEY,
    text TEXT NOT NULL UNIQUE
) STRICT;
CREATE TABLE mention(
    phrase INTEGER NOT NULL,
    at_ms INTEGER NOT NULL,
    arc INTEGER NOT NULL,
    PRIMARY KEY (phrase, at_ms, arc)
) STRICT, WITHOUT ROWID;
CREATE INDEX arc_operator ON arc(operator, at_ms) WHERE live = 1;

CREATE TABLE arc_names(arc INTEGER PRIMARY KEY, names TEXT NOT NULL) STRICT;
INSERT INTO arc_names
    SELECT arc, names FROM (
        SELECT arc, group_concat(names, char(10)) AS names FROM (
            SELECT r.arc AS arc,
                CASE WHEN r.fibre_b = '' OR r.fibre_b = r.fibre_a THEN nullif(r.fibre_a, '')
                     WHEN r.fibre_a = '' THEN r.fibre_b
                     ELSE r.fibre_a || char(10) || r.fibre_b END AS names
            FROM reading r WHERE r.live = 1 AND EXISTS (SELECT 1 FROM arc a WHERE a.key = r.arc AND a.live = 1)
            ORDER BY r.arc, r.channel)
        GROUP BY arc)
    WHERE names IS NOT NULL;
INSERT OR IGNORE INTO phrase(text) SELECT names FROM arc_names;
INSERT INTO mention
    SELECT p.key, a.at_ms, a.key FROM arc_names n JOIN arc a ON a.key = n.arc AND a.live = 1
    JOIN phrase p ON p.text = n.names;
DROP TABLE arc_names;
INSERT OR IGNORE INTO phrase(text)
    SELECT r.note FROM reading r JOIN arc a ON a.key = r.arc AND a.live = 1 WHERE r.live = 1 AND r.note <> '';
INSERT OR IGNORE INTO mention
    SELECT p.key, a.at_ms, a.key FROM reading r JOIN arc a ON a.key = r.arc AND a.live = 1
    JOIN phrase p ON p.text = r.note WHERE r.live = 1 AND r.note <> '';
