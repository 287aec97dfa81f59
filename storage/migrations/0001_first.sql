-- SPDX-License-Identifier: GPL-3.0-or-later
-- First schema. Units are in the column names. No row of what people wrote is ever changed or removed; the
-- columns that do change are worked out again by the verifier: live (this version shows: the latest by tick
-- and device, and not taken back since), total, and the last_… of a device.

-- Every identity and every much-repeated word once; other tables hold the short key. Keys are of this file
-- alone, hashes are taken over the identities and words themselves.
CREATE TABLE identity(
    key INTEGER PRIMARY KEY,
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16)
) STRICT;
CREATE TABLE word(
    key INTEGER PRIMARY KEY,
    text TEXT NOT NULL UNIQUE
) STRICT;

-- A writer: one copy of a logbook on one machine. Each has its own chain of journal rows.
CREATE TABLE device(
    key INTEGER PRIMARY KEY,
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    name TEXT NOT NULL,
    last_seq INTEGER NOT NULL,
    last_tick INTEGER NOT NULL,
    last_hash BLOB NOT NULL CHECK (length(last_hash) = 32)
) STRICT;

-- This file: who writes into it from here. place tells a copied file from the one it was copied from, so that
-- two copies never go on with one chain. seal is the hash of the other columns.
CREATE TABLE book(
    one INTEGER PRIMARY KEY CHECK (one = 1),
    id BLOB NOT NULL CHECK (length(id) = 16),
    made_ms INTEGER NOT NULL,
    writer INTEGER REFERENCES device(key),
    place BLOB,
    seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;

-- digest: over all rows written under this journal row. hash: over prev and every other column.
-- tick: never smaller than one more than any tick the writer had seen, else its clock in ms: order that a wrong
-- clock cannot break.
CREATE TABLE journal(
    row INTEGER PRIMARY KEY,
    device INTEGER NOT NULL REFERENCES device(key),
    seq INTEGER NOT NULL,
    tick INTEGER NOT NULL,
    at_ms INTEGER NOT NULL,
    offset_min INTEGER NOT NULL,
    who TEXT NOT NULL,
    source TEXT NOT NULL,
    kind TEXT NOT NULL,
    text TEXT NOT NULL,
    retry_key BLOB CHECK (length(retry_key) = 16),
    digest BLOB NOT NULL CHECK (length(digest) = 32),
    prev BLOB NOT NULL CHECK (length(prev) = 32),
    hash BLOB NOT NULL CHECK (length(hash) = 32),
    UNIQUE (device, seq)
) STRICT;
CREATE INDEX journal_retry ON journal(retry_key) WHERE retry_key IS NOT NULL;

-- All kinds of which there are few: tools, jobs, care, decisions, settings … body is JSON.
-- base: first half of the hash of the journal row whose version this one replaces; empty for a first version.
CREATE TABLE record(
    row INTEGER PRIMARY KEY,
    journal INTEGER NOT NULL REFERENCES journal(row),
    kind TEXT NOT NULL,
    id BLOB NOT NULL CHECK (length(id) = 16),
    subject BLOB CHECK (length(subject) = 16),
    at_ms INTEGER,
    body TEXT NOT NULL,
    base BLOB CHECK (length(base) = 16),
    live INTEGER NOT NULL CHECK (live IN (0, 1))
) STRICT;
CREATE INDEX record_id ON record(id, kind);
CREATE INDEX record_journal ON record(journal);
CREATE INDEX record_kind ON record(kind, subject, at_ms) WHERE live = 1;

-- Contents of attachments by their hash.
CREATE TABLE attachment(
    row INTEGER PRIMARY KEY,
    sha256 BLOB NOT NULL UNIQUE CHECK (length(sha256) = 32),
    bytes BLOB NOT NULL
) STRICT;

-- One version of one arc.
CREATE TABLE arc(
    key INTEGER NOT NULL REFERENCES identity(key),
    journal INTEGER NOT NULL REFERENCES journal(row),
    live INTEGER NOT NULL CHECK (live IN (0, 1)),
    at_ms INTEGER NOT NULL,
    offset_min INTEGER NOT NULL,
    splicer INTEGER NOT NULL REFERENCES identity(key),
    cleaver INTEGER REFERENCES identity(key),
    job INTEGER REFERENCES identity(key),
    closure INTEGER REFERENCES identity(key),
    mode INTEGER NOT NULL REFERENCES word(key),
    channels INTEGER NOT NULL,
    counter_arcs INTEGER,
    temp_mk INTEGER,
    humidity_permille INTEGER,
    pressure_pa INTEGER,
    operator INTEGER NOT NULL REFERENCES word(key),
    origin INTEGER NOT NULL,
    base BLOB CHECK (length(base) = 16),
    PRIMARY KEY (key, journal)
) STRICT, WITHOUT ROWID;
CREATE INDEX arc_splicer ON arc(splicer, at_ms, counter_arcs) WHERE live = 1;
CREATE INDEX arc_time ON arc(at_ms) WHERE live = 1;
CREATE INDEX arc_job ON arc(job, at_ms) WHERE live = 1 AND job IS NOT NULL;
CREATE INDEX arc_cleaver ON arc(cleaver, at_ms) WHERE live = 1 AND cleaver IS NOT NULL;

-- One version of one fibre pair of an arc.
CREATE TABLE reading(
    arc INTEGER NOT NULL REFERENCES identity(key),
    channel INTEGER NOT NULL,
    journal INTEGER NOT NULL REFERENCES journal(row),
    live INTEGER NOT NULL CHECK (live IN (0, 1)),
    loss_mdb INTEGER NOT NULL,
    cleave_left_cdeg INTEGER,
    cleave_right_cdeg INTEGER,
    fibre_a TEXT NOT NULL,
    fibre_b TEXT NOT NULL,
    attempt INTEGER NOT NULL,
    state INTEGER NOT NULL,
    note TEXT NOT NULL,
    base BLOB CHECK (length(base) = 16),
    PRIMARY KEY (arc, channel, journal)
) STRICT, WITHOUT ROWID;

-- Rows of files that could not be read, kept with the reason. sha256 is of kind, line and text: the same file
-- again adds nothing.
CREATE TABLE set_aside(
    row INTEGER PRIMARY KEY,
    journal INTEGER NOT NULL REFERENCES journal(row),
    kind TEXT NOT NULL,
    file TEXT NOT NULL,
    line INTEGER NOT NULL,
    column_name TEXT NOT NULL,
    reason TEXT NOT NULL,
    text TEXT NOT NULL,
    sha256 BLOB NOT NULL CHECK (length(sha256) = 32)
) STRICT;
CREATE INDEX set_aside_sha256 ON set_aside(sha256);
CREATE INDEX set_aside_journal ON set_aside(journal);

-- What is live, counted, so that nobody has to count a million rows.
CREATE TABLE total(
    one INTEGER PRIMARY KEY CHECK (one = 1),
    arcs INTEGER NOT NULL,
    readings INTEGER NOT NULL,
    care INTEGER NOT NULL
) STRICT;
INSERT INTO total VALUES (1, 0, 0, 0);
