-- SPDX-License-Identifier: GPL-3.0-or-later
-- Phrases of one control character, which nobody can type, mark the arcs with a reading that was voided or is above
-- a loss: what is seldom is found as words are. See storage/mentions.
INSERT INTO phrase(text)
    WITH level(mark, above) AS (VALUES (char(2), 100), (char(3), 150), (char(4), 200), (char(5), 300), (char(6), 500))
    SELECT mark FROM level WHERE EXISTS (
        SELECT 1 FROM arc a JOIN reading r ON r.arc = a.key AND r.live = 1
        WHERE a.live = 1 AND r.loss_mdb > above);
INSERT INTO phrase(text)
    SELECT char(1) WHERE EXISTS (
        SELECT 1 FROM arc a JOIN reading r ON r.arc = a.key AND r.live = 1 WHERE a.live = 1 AND r.state = 1);
INSERT INTO mention
    WITH level(mark, above) AS (VALUES (char(2), 100), (char(3), 150), (char(4), 200), (char(5), 300), (char(6), 500))
    SELECT DISTINCT p.key, a.at_ms, a.key FROM arc a JOIN reading r ON r.arc = a.key AND r.live = 1
    JOIN level ON r.loss_mdb > level.above JOIN phrase p ON p.text = level.mark WHERE a.live = 1;
INSERT INTO mention
    SELECT DISTINCT p.key, a.at_ms, a.key FROM arc a JOIN reading r ON r.arc = a.key AND r.live = 1
    JOIN phrase p ON p.text = char(1) WHERE a.live = 1 AND r.state = 1;
