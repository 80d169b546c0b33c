-- Every statement the book runs, by name. "?" and "?1" are filled in by the caller.

-- ---------------------------------------------------------------- the file as a whole

-- name: book-state
SELECT
  application_id, user_version, journal_mode, EXISTS (SELECT 1 FROM sqlite_schema) AS holds_tables
FROM pragma_application_id, pragma_user_version, pragma_journal_mode;

-- name: switch-to-wal
PRAGMA journal_mode = WAL;

-- name: begin
BEGIN IMMEDIATE;

-- name: commit
COMMIT;

-- name: roll-back
ROLLBACK;

-- name: data-version
PRAGMA data_version;

-- name: copy-into
VACUUM INTO ?;

-- ---------------------------------------------------------------- changes

-- name: change-begin
INSERT INTO change (at, what, undoes, act, subject, target) VALUES (?, ?, ?, ?, ?, ?) RETURNING id;

-- name: change-open
INSERT INTO open_change (id, change_id) VALUES (1, ?);

-- name: change-drop-if-empty
DELETE FROM change
WHERE id = ?1 AND NOT EXISTS (SELECT 1 FROM change_row WHERE change_id = ?1);

-- name: change-close
DELETE FROM open_change;

-- name: any-change
SELECT EXISTS (SELECT 1 FROM change);

-- name: history
SELECT
  id, at, what, undoes, act, subject, target,
  EXISTS (SELECT 1 FROM change AS later WHERE later.undoes = change.id) AS undone
FROM change ORDER BY id DESC LIMIT ?;

-- name: change-to-undo
SELECT id, at, what, undoes, act, subject, target, TRUE AS undone
FROM change
WHERE undoes IS NULL AND step IS NULL
  AND NOT EXISTS (SELECT 1 FROM change AS later WHERE later.undoes = change.id)
ORDER BY id DESC LIMIT 1;

-- name: rows-to-take-back
SELECT count(*) FROM change_row
WHERE change_id = (
  SELECT id FROM change
  WHERE undoes IS NULL AND step IS NULL
    AND NOT EXISTS (SELECT 1 FROM change AS later WHERE later.undoes = change.id)
  ORDER BY id DESC LIMIT 1);

-- Air speeds outdoors that were written before step 11 come back as that step made them.
-- name: change-rows-backwards
SELECT
  CASE WHEN before IS NULL THEN 'inserted' WHEN after IS NULL THEN 'deleted' ELSE 'updated' END
    || '-' || table_name AS step,
  CASE WHEN table_name = 'place_version'
      AND json_extract(coalesce(before, after), '$.kind') = 'outdoors'
      AND change_id < (SELECT id FROM change WHERE change.step = 11)
    THEN json_set(coalesce(before, after), '$.air_speed_m_per_min',
      CASE json_extract(coalesce(before, after), '$.air_speed_m_per_min')
        WHEN 60 THEN 15.0 WHEN 150 THEN 20.0 WHEN 270 THEN 30.0
        ELSE json_extract(coalesce(before, after), '$.air_speed_m_per_min') END)
    ELSE coalesce(before, after) END AS image
FROM change_row WHERE change_id = ? ORDER BY id DESC;

-- Each takes one row back to what it was; ?1 is the row as JSON.

-- name: restore-inserted-person
DELETE FROM person WHERE id = ?1 ->> 'id';

-- name: restore-updated-person
UPDATE person SET name = ?1 ->> 'name', folded = ?1 ->> 'folded'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-person
INSERT INTO person (id, name, folded)
SELECT ?1 ->> 'id', ?1 ->> 'name', ?1 ->> 'folded';

-- name: restore-inserted-place
DELETE FROM place WHERE id = ?1 ->> 'id';

-- name: restore-updated-place
UPDATE place SET name = ?1 ->> 'name', folded = ?1 ->> 'folded'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-place
INSERT INTO place (id, name, folded)
SELECT ?1 ->> 'id', ?1 ->> 'name', ?1 ->> 'folded';

-- name: restore-inserted-place_version
DELETE FROM place_version WHERE id = ?1 ->> 'id';

-- name: restore-updated-place_version
UPDATE place_version SET
  place_id = ?1 ->> 'place_id', valid_from = ?1 ->> 'valid_from', kind = ?1 ->> 'kind',
  air_speed_m_per_min = ?1 ->> 'air_speed_m_per_min', volume_m3 = ?1 ->> 'volume_m3',
  air_changes_per_hour = ?1 ->> 'air_changes_per_hour',
  open_air_changes_per_hour = ?1 ->> 'open_air_changes_per_hour',
  cleaner_flow_m3_per_min = ?1 ->> 'cleaner_flow_m3_per_min',
  fan_flow_m3_per_min = ?1 ->> 'fan_flow_m3_per_min',
  cleaner_run_on_minutes = ?1 ->> 'cleaner_run_on_minutes'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-place_version
INSERT INTO place_version (
  id, place_id, valid_from, kind, air_speed_m_per_min, volume_m3, air_changes_per_hour,
  open_air_changes_per_hour, cleaner_flow_m3_per_min, fan_flow_m3_per_min, cleaner_run_on_minutes)
SELECT
  ?1 ->> 'id', ?1 ->> 'place_id', ?1 ->> 'valid_from', ?1 ->> 'kind',
  ?1 ->> 'air_speed_m_per_min', ?1 ->> 'volume_m3', ?1 ->> 'air_changes_per_hour',
  ?1 ->> 'open_air_changes_per_hour', ?1 ->> 'cleaner_flow_m3_per_min',
  ?1 ->> 'fan_flow_m3_per_min', ?1 ->> 'cleaner_run_on_minutes';

-- name: restore-inserted-session
DELETE FROM session WHERE id = ?1 ->> 'id';

-- name: restore-updated-session
UPDATE session SET
  person_id = ?1 ->> 'person_id', place_id = ?1 ->> 'place_id', date = ?1 ->> 'date',
  start_minute = ?1 ->> 'start_minute', minutes = ?1 ->> 'minutes', zone = ?1 ->> 'zone',
  starts_at = ?1 ->> 'starts_at', operation = ?1 ->> 'operation', material = ?1 ->> 'material',
  respirator = ?1 ->> 'respirator', seal_checked = ?1 ->> 'seal_checked',
  worn_percent = ?1 ->> 'worn_percent', note = ?1 ->> 'note'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-session
INSERT INTO session (
  id, person_id, place_id, date, start_minute, minutes, zone, starts_at, operation, material,
  respirator, seal_checked, worn_percent, note)
SELECT
  ?1 ->> 'id', ?1 ->> 'person_id', ?1 ->> 'place_id', ?1 ->> 'date', ?1 ->> 'start_minute',
  ?1 ->> 'minutes', ?1 ->> 'zone', ?1 ->> 'starts_at', ?1 ->> 'operation', ?1 ->> 'material',
  ?1 ->> 'respirator', ?1 ->> 'seal_checked', ?1 ->> 'worn_percent', ?1 ->> 'note';

-- name: restore-inserted-session_control
DELETE FROM session_control WHERE session_id = ?1 ->> 'session_id' AND position = ?1 ->> 'position';

-- name: restore-updated-session_control
UPDATE session_control SET control = ?1 ->> 'control'
WHERE session_id = ?1 ->> 'session_id' AND position = ?1 ->> 'position';

-- name: restore-deleted-session_control
INSERT INTO session_control (session_id, position, control)
SELECT ?1 ->> 'session_id', ?1 ->> 'position', ?1 ->> 'control';

-- name: restore-inserted-setting
DELETE FROM setting WHERE id = ?1 ->> 'id';

-- name: restore-updated-setting
UPDATE setting SET
  person_id = ?1 ->> 'person_id', place_id = ?1 ->> 'place_id', limit_set = ?1 ->> 'limit_set',
  total_conversion = ?1 ->> 'total_conversion', gap_minutes = ?1 ->> 'gap_minutes'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-setting
INSERT INTO setting (id, person_id, place_id, limit_set, total_conversion, gap_minutes)
SELECT
  ?1 ->> 'id', ?1 ->> 'person_id', ?1 ->> 'place_id', ?1 ->> 'limit_set',
  ?1 ->> 'total_conversion', ?1 ->> 'gap_minutes';

-- ---------------------------------------------------------------- people and settings

-- name: people
SELECT id, name, folded FROM person ORDER BY id;

-- name: person-insert
INSERT INTO person (name, folded) VALUES (?, ?) RETURNING id;

-- name: person-rename
UPDATE person SET name = ?2, folded = ?3 WHERE id = ?1;

-- name: settings
SELECT person.name AS person, place.name AS place, limit_set, total_conversion, gap_minutes
FROM setting
JOIN person ON person.id = setting.person_id
JOIN place ON place.id = setting.place_id;

-- name: settings-update
UPDATE setting
SET person_id = ?1, place_id = ?2, limit_set = ?3, total_conversion = ?4, gap_minutes = ?5
WHERE (person_id, place_id, limit_set, total_conversion, gap_minutes) IS NOT (?1, ?2, ?3, ?4, ?5);

-- ---------------------------------------------------------------- places

-- name: place-names
SELECT id, name, folded FROM place ORDER BY id;

-- name: places-on
SELECT place.id AS place_id, place.name, place.folded, place_version.*
FROM place
JOIN place_version ON place_version.place_id = place.id
WHERE valid_from = (
  SELECT max(valid_from) FROM place_version AS version
  WHERE version.place_id = place.id AND version.valid_from <= ?)
ORDER BY place.id;

-- name: place-versions
SELECT * FROM place_version WHERE place_id = ? ORDER BY valid_from;

-- name: place-insert
INSERT INTO place (name, folded) VALUES (?, ?) RETURNING id;

-- name: place-version-insert
INSERT INTO place_version (
  kind, air_speed_m_per_min, volume_m3, air_changes_per_hour, open_air_changes_per_hour,
  cleaner_flow_m3_per_min, fan_flow_m3_per_min, cleaner_run_on_minutes, place_id, valid_from)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?);

-- name: place-version-update
UPDATE place_version SET
  kind = ?, air_speed_m_per_min = ?, volume_m3 = ?, air_changes_per_hour = ?,
  open_air_changes_per_hour = ?, cleaner_flow_m3_per_min = ?, fan_flow_m3_per_min = ?,
  cleaner_run_on_minutes = ?
WHERE place_id = ? AND valid_from = ?;

-- ---------------------------------------------------------------- sessions

-- As session_read has it, with sessions whose person or place is gone, and with one column more:
-- whether a session, its controls or its amounts may differ from what the history last held of them.
-- Equal texts are equal rows; others are held against each other before anything is said. The plus
-- lets the index be used: its numbers have no type of a column.
-- name: sessions-between
SELECT
  session.id, session.date, session.start_minute, session.minutes, session.operation,
  session.material, session.respirator, session.seal_checked, session.worn_percent, session.note,
  session.person_id, person.name AS person, place.name AS place,
  (SELECT group_concat(control, char(10) ORDER BY position)
   FROM session_control WHERE session_id = session.id) AS controls,
  (SELECT group_concat(
     finish || char(9) || format('%!.17g', millilitres), char(10) ORDER BY position)
   FROM session_finish WHERE session_id = session.id) AS amounts,
  CASE WHEN 'blob' IN (
    typeof(session.id), typeof(session.person_id), typeof(session.place_id), typeof(session.date),
    typeof(session.start_minute), typeof(session.minutes), typeof(session.zone),
    typeof(session.starts_at), typeof(session.operation), typeof(session.material),
    typeof(session.respirator), typeof(session.seal_checked), typeof(session.worn_percent),
    typeof(session.note)) THEN 1 ELSE
  (SELECT after FROM change_row
   WHERE table_name = 'session' AND CASE WHEN json_valid(coalesce(after, before)) THEN coalesce(
      json_extract(coalesce(after, before), '$.id'),
      json_extract(coalesce(after, before), '$.session_id')) END = +session.id
   ORDER BY id DESC LIMIT 1)
  IS NOT json_object(
    'id', session.id, 'person_id', session.person_id, 'place_id', place_id,
    'date', session.date, 'start_minute', session.start_minute, 'minutes', session.minutes,
    'zone', zone, 'starts_at', starts_at, 'operation', session.operation,
    'material', session.material, 'respirator', session.respirator,
    'seal_checked', session.seal_checked, 'worn_percent', session.worn_percent,
    'note', session.note) END
  OR (
    SELECT group_concat(after, char(10)) FROM (
      SELECT after FROM change_row
      WHERE table_name = 'session_control'
        AND CASE WHEN json_valid(coalesce(after, before)) THEN coalesce(
        json_extract(coalesce(after, before), '$.id'),
        json_extract(coalesce(after, before), '$.session_id')) END = +session.id
      ORDER BY id))
  IS NOT (
    SELECT group_concat(image, char(10)) FROM (
      SELECT json_object(
          'session_id', session_id,
          'position', iif(typeof(position) = 'blob', 'bytes ' || hex(position), position),
          'control', iif(typeof(control) = 'blob', 'bytes ' || hex(control), control)) AS image
      FROM session_control WHERE session_id = session.id ORDER BY position))
  OR (
    SELECT group_concat(after, char(10)) FROM (
      SELECT after FROM change_row
      WHERE table_name = 'session_finish'
        AND CASE WHEN json_valid(coalesce(after, before)) THEN coalesce(
        json_extract(coalesce(after, before), '$.id'),
        json_extract(coalesce(after, before), '$.session_id')) END = +session.id
      ORDER BY id))
  IS NOT (
    SELECT group_concat(image, char(10)) FROM (
      SELECT json_object(
          'session_id', session_id,
          'position', iif(typeof(position) = 'blob', 'bytes ' || hex(position), position),
          'finish', iif(typeof(finish) = 'blob', 'bytes ' || hex(finish), finish),
          'millilitres', iif(typeof(millilitres) = 'blob', 'bytes ' || hex(millilitres), millilitres)) AS image
      FROM session_finish WHERE session_id = session.id ORDER BY position))
  AS doubted
FROM session
LEFT JOIN person ON person.id = session.person_id
LEFT JOIN place ON place.id = session.place_id
WHERE session.date BETWEEN ? AND ? ORDER BY session.date, session.start_minute, session.id;

-- name: session
SELECT * FROM session_read WHERE id = ?;

-- name: session-count
SELECT count(*) FROM session;

-- name: any-session
SELECT EXISTS (SELECT 1 FROM session);

-- name: last-session-of
SELECT * FROM session_read WHERE person_id = ? ORDER BY date DESC, start_minute DESC LIMIT 1;

-- name: any-overlap
SELECT EXISTS (
  SELECT 1 FROM session
  WHERE person_id = ? AND date = ? AND start_minute < ? AND start_minute + minutes > ? AND id <> ?);

-- name: sessions-of-on
SELECT * FROM session_read WHERE person_id = ? AND date = ? AND id <> ? ORDER BY start_minute;

-- name: session-insert
INSERT INTO session (
  person_id, place_id, date, start_minute, minutes, zone, starts_at, operation, material,
  respirator, seal_checked, worn_percent, note)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id;

-- Inside a write transaction: the number that the next session will get.
-- name: session-next
SELECT coalesce(max(seq), 0) + 1 FROM sqlite_sequence WHERE name = 'session';

-- name: session-insert-numbered
INSERT INTO session (
  id, person_id, place_id, date, start_minute, minutes, zone, starts_at, operation, material,
  respirator, seal_checked, worn_percent, note)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?);

-- name: stretches-between
SELECT person_id, date, start_minute, minutes FROM session WHERE date BETWEEN ? AND ?;

-- name: session-update
UPDATE session SET
  person_id = ?, place_id = ?, date = ?, start_minute = ?, minutes = ?, zone = ?, starts_at = ?,
  operation = ?, material = ?, respirator = ?, seal_checked = ?, worn_percent = ?, note = ?
WHERE id = ?;

-- name: session-zone
SELECT zone FROM session WHERE id = ?;

-- name: session-delete
DELETE FROM session WHERE id = ?;

-- name: control-insert
INSERT INTO session_control (session_id, position, control) VALUES (?, ?, ?);

-- name: controls-delete
DELETE FROM session_control WHERE session_id = ?;

-- ---------------------------------------------------------------- is the book sound?

-- name: integrity
PRAGMA integrity_check;

-- name: foreign-keys
PRAGMA foreign_key_check;

-- name: schema
SELECT type || ' ' || name AS thing, sql FROM sqlite_schema
WHERE name NOT LIKE 'sqlite\_%' ESCAPE '\' ORDER BY thing;

-- name: overlaps
SELECT 'Sessions ' || earlier.id || ' and ' || later.id || ' of one person overlap.'
FROM session AS later
JOIN session AS earlier
  ON earlier.person_id = later.person_id AND earlier.date = later.date
  AND earlier.start_minute < later.start_minute
  AND earlier.start_minute + earlier.minutes > later.start_minute;

-- name: places-without-beginning
SELECT 'The place "' || name || '" has no figures from the beginning.'
FROM place
WHERE NOT EXISTS (SELECT 1 FROM place_version WHERE place_id = place.id AND valid_from = '');

-- name: settings-missing
SELECT 'The book holds no settings.' WHERE NOT EXISTS (SELECT 1 FROM setting);

-- ---------------------------------------------------------------- looking back

-- name: recent-sessions-of
SELECT * FROM session_read WHERE person_id = ?1 ORDER BY date DESC, start_minute DESC LIMIT ?2;

-- Newest first, from before a session on; ?4 is a list of {word, keys}: each word stands in the row,
-- or one of its keys does. SQLite's lower() knows ASCII only; folded() is the book's own.
-- name: sessions-found
SELECT * FROM session_read AS found
WHERE (date, start_minute, id) < (?1, ?2, ?3)
  AND NOT EXISTS (
    SELECT 1 FROM json_each(?4) AS wanted
    WHERE NOT instr(
        date || ' ' || CASE
            WHEN person || place || coalesce(respirator, '') || note GLOB '*[^ -~]*' THEN
              folded(person || ' ' || place || ' ' || coalesce(respirator, '') || ' ' || note)
            ELSE lower(person || ' ' || place || ' ' || coalesce(respirator, '') || ' ' || note) END
          || ' ' || replace(operation || ' ' || coalesce(material, '') || ' '
          || coalesce(controls, '') || ' ' || coalesce(amounts, ''), '-', ' '),
        wanted.value ->> 'word')
      AND NOT EXISTS (
        SELECT 1 FROM json_each(wanted.value -> 'keys') AS key
        WHERE key.value IN (operation, material)
          OR instr(char(10) || coalesce(controls, '') || char(10),
            char(10) || key.value || char(10))))
ORDER BY date DESC, start_minute DESC, id DESC LIMIT ?5;
