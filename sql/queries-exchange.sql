-- The whole book out and in again. For each file of columns.csv there is an "export-" and an
-- "import-" statement with its columns in that order, lists left out; each list has its own pair,
-- which begins with the number of the row that it belongs to. Where a file has a name, the folded
-- name is the last value of its import.

-- ---------------------------------------------------------------- what the book holds

-- name: begin-reading
BEGIN DEFERRED;

-- 64 MiB, so that what is not yet committed is written once and not over and over.
-- name: roomy-cache
PRAGMA cache_size = -65536;

-- name: rows-to-export
SELECT
  (SELECT count(*) FROM person) + (SELECT count(*) FROM place)
  + (SELECT count(*) FROM place_version) + (SELECT count(*) FROM setting)
  + (SELECT count(*) FROM preference) + (SELECT count(*) FROM favourite)
  + (SELECT count(*) FROM respirator) + (SELECT count(*) FROM element)
  + (SELECT count(*) FROM shop_filter) + (SELECT count(*) FROM upkeep)
  + (SELECT count(*) FROM fit_record) + (SELECT count(*) FROM finish)
  + (SELECT count(*) FROM session) + (SELECT count(*) FROM sample)
  + (SELECT count(*) FROM set_aside) + (SELECT count(*) FROM stopwatch);

-- What a book holds that is more than a fresh one holds or its owner has set.
-- name: in-the-way
SELECT 'sessions' WHERE EXISTS (SELECT 1 FROM session)
UNION ALL SELECT 'samples' WHERE EXISTS (SELECT 1 FROM sample)
UNION ALL SELECT 'respirators' WHERE EXISTS (SELECT 1 FROM respirator)
UNION ALL SELECT 'shop filters' WHERE EXISTS (SELECT 1 FROM shop_filter)
UNION ALL SELECT 'records of fit' WHERE EXISTS (SELECT 1 FROM fit_record)
UNION ALL SELECT 'finishes' WHERE EXISTS (SELECT 1 FROM finish)
UNION ALL SELECT 'favourites' WHERE EXISTS (SELECT 1 FROM favourite)
UNION ALL SELECT 'a stopwatch' WHERE EXISTS (SELECT 1 FROM stopwatch)
UNION ALL SELECT 'cautions set aside' WHERE EXISTS (SELECT 1 FROM set_aside)
UNION ALL SELECT 'more than one person' WHERE (SELECT count(*) FROM person) > 1
UNION ALL SELECT 'places of its own' WHERE (SELECT count(*) FROM place_version) > 2;

-- name: clear-settings
DELETE FROM setting;

-- name: clear-preferences
DELETE FROM preference;

-- name: clear-place-figures
DELETE FROM place_version;

-- name: clear-places
DELETE FROM place;

-- name: clear-people
DELETE FROM person;

-- ---------------------------------------------------------------- people, places, settings

-- name: export-people
SELECT id, name FROM person ORDER BY id;

-- name: import-people
INSERT INTO person (id, name, folded) VALUES (?, ?, ?);

-- name: export-places
SELECT id, name FROM place ORDER BY id;

-- name: import-places
INSERT INTO place (id, name, folded) VALUES (?, ?, ?);

-- name: export-place-figures
SELECT
  place_version.id, place.name, nullif(valid_from, ''), kind, air_speed_m_per_min, volume_m3,
  air_changes_per_hour, open_air_changes_per_hour, cleaner_flow_m3_per_min, fan_flow_m3_per_min,
  cleaner_run_on_minutes
FROM place_version
JOIN place ON place.id = place_id
ORDER BY place_version.id;

-- name: import-place-figures
INSERT INTO place_version (
  id, place_id, valid_from, kind, air_speed_m_per_min, volume_m3, air_changes_per_hour,
  open_air_changes_per_hour, cleaner_flow_m3_per_min, fan_flow_m3_per_min, cleaner_run_on_minutes)
VALUES (
  ?, (SELECT id FROM place WHERE name = ?), coalesce(?, ''), ?, ?, ?, ?, ?, ?, ?, ?);

-- name: export-settings
SELECT person.name, place.name, limit_set, total_conversion, gap_minutes
FROM setting
JOIN person ON person.id = person_id
JOIN place ON place.id = place_id
ORDER BY setting.id;

-- name: import-settings
INSERT INTO setting (id, person_id, place_id, limit_set, total_conversion, gap_minutes)
VALUES (
  1, (SELECT id FROM person WHERE name = ?), (SELECT id FROM place WHERE name = ?), ?, ?, ?);

-- name: export-preferences
SELECT id, key, value FROM preference ORDER BY id;

-- name: import-preferences
INSERT INTO preference (id, key, value) VALUES (?, ?, ?);

-- name: export-favourites
SELECT id, name, line FROM favourite ORDER BY id;

-- name: import-favourites
INSERT INTO favourite (id, name, line, folded) VALUES (?, ?, ?, ?);

-- ---------------------------------------------------------------- masks, filters, fit

-- name: export-respirators
SELECT id, name, scheme, kind, facepiece, size, make, retired_on, retired_why
FROM respirator ORDER BY id;

-- name: import-respirators
INSERT INTO respirator (
  id, name, scheme, kind, facepiece, size, make, retired_on, retired_why, folded)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?);

-- name: export-respirators-people
SELECT respirator_id, person.name
FROM respirator_person
JOIN person ON person.id = person_id
ORDER BY respirator_id, position;

-- name: import-respirators-people
INSERT INTO respirator_person (respirator_id, position, person_id)
VALUES (?, ?, (SELECT id FROM person WHERE name = ?));

-- name: export-elements
SELECT
  element.id, element.name, respirator.name, class, is_pair, worn_from, opened, sealed_until,
  limit_hours, limit_mg, carbon_g, element.retired_on, element.retired_why, worn_from_minute,
  retired_minute, is_single_use
FROM element
JOIN respirator ON respirator.id = respirator_id
ORDER BY element.id;

-- name: import-elements
INSERT INTO element (
  id, name, respirator_id, class, is_pair, worn_from, opened, sealed_until, limit_hours, limit_mg,
  carbon_g, retired_on, retired_why, worn_from_minute, retired_minute, is_single_use, folded)
VALUES (
  ?, ?, (SELECT id FROM respirator WHERE name = ?), ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?);

-- name: export-shop-filters
SELECT
  shop_filter.id, shop_filter.name, sits_on, place.name, counts_from, clean_every_hours,
  change_at_hours, gauge_clean, gauge_change, retired_on, retired_why
FROM shop_filter
JOIN place ON place.id = place_id
ORDER BY shop_filter.id;

-- name: import-shop-filters
INSERT INTO shop_filter (
  id, name, sits_on, place_id, counts_from, clean_every_hours, change_at_hours, gauge_clean,
  gauge_change, retired_on, retired_why, folded)
VALUES (?, ?, ?, (SELECT id FROM place WHERE name = ?), ?, ?, ?, ?, ?, ?, ?, ?);

-- name: export-upkeep
SELECT upkeep.id, shop_filter.name, date, minute, what, reading
FROM upkeep
JOIN shop_filter ON shop_filter.id = filter_id
ORDER BY upkeep.id;

-- name: import-upkeep
INSERT INTO upkeep (id, filter_id, date, minute, what, reading)
VALUES (?, (SELECT id FROM shop_filter WHERE name = ?), ?, ?, ?, ?);

-- name: export-fit-records
SELECT
  fit_record.id, fit_record.kind, person.name, date, respirator.name, agent, passed, until, changed
FROM fit_record
JOIN person ON person.id = person_id
LEFT JOIN respirator ON respirator.id = respirator_id
ORDER BY fit_record.id;

-- name: import-fit-records
INSERT INTO fit_record (
  id, kind, person_id, date, respirator_id, agent, passed, until, changed)
VALUES (
  ?, ?, (SELECT id FROM person WHERE name = ?), ?, (SELECT id FROM respirator WHERE name = ?), ?, ?,
  ?, ?);

-- name: export-fit-records-fit_factors
SELECT fit_record_id, factor FROM fit_exercise ORDER BY fit_record_id, position;

-- name: import-fit-records-fit_factors
INSERT INTO fit_exercise (fit_record_id, position, factor) VALUES (?, ?, ?);

-- ---------------------------------------------------------------- finishes

-- name: export-finishes
SELECT id, name, dries_like, volatile_g_per_l FROM finish ORDER BY id;

-- name: import-finishes
INSERT INTO finish (id, name, dries_like, volatile_g_per_l, folded) VALUES (?, ?, ?, ?, ?);

-- name: export-finishes-solvents_weight_share
SELECT finish_id, solvent, weight_share FROM finish_solvent ORDER BY finish_id, position;

-- name: import-finishes-solvents_weight_share
INSERT INTO finish_solvent (finish_id, position, solvent, weight_share) VALUES (?, ?, ?, ?);

-- ---------------------------------------------------------------- what was done and measured

-- name: export-sessions
SELECT
  session.id, date, start_minute, minutes, person.name, place.name, operation, material, respirator,
  seal_checked, worn_percent, note, zone, starts_at
FROM session
JOIN person ON person.id = person_id
JOIN place ON place.id = place_id
ORDER BY session.id;

-- name: import-sessions
INSERT INTO session (
  id, date, start_minute, minutes, person_id, place_id, operation, material, respirator,
  seal_checked, worn_percent, note, zone, starts_at)
VALUES (
  ?, ?, ?, ?, (SELECT id FROM person WHERE name = ?), (SELECT id FROM place WHERE name = ?), ?, ?, ?,
  ?, ?, coalesce(?, ''), ?, ?);

-- name: export-sessions-controls
SELECT session_id, control FROM session_control ORDER BY session_id, position;

-- name: import-sessions-controls
INSERT INTO session_control (session_id, position, control) VALUES (?, ?, ?);

-- name: export-sessions-finishes_ml
SELECT session_id, finish, millilitres FROM session_finish ORDER BY session_id, position;

-- name: import-sessions-finishes_ml
INSERT INTO session_finish (session_id, position, finish, millilitres) VALUES (?, ?, ?, ?);

-- name: export-samples
SELECT
  sample.id, person.name, date, from_minute, to_minute, fraction, kind, mg, blank_mg,
  litres_per_min, detection_limit_mg, mg_per_m3, below_detection, cv, note, place.name, factor,
  relative, whole_shift
FROM sample
JOIN person ON person.id = person_id
LEFT JOIN place ON place.id = place_id
ORDER BY sample.id;

-- name: import-samples
INSERT INTO sample (
  id, person_id, date, from_minute, to_minute, fraction, kind, mg, blank_mg, litres_per_min,
  detection_limit_mg, mg_per_m3, below_detection, cv, note, place_id, factor, relative,
  whole_shift)
VALUES (
  ?, (SELECT id FROM person WHERE name = ?), ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, coalesce(?, ''),
  (SELECT id FROM place WHERE name = ?), ?, coalesce(?, 0), coalesce(?, 0));

-- ---------------------------------------------------------------- what is under way

-- name: export-set-aside
SELECT set_aside.id, person.name, date, caution
FROM set_aside
JOIN person ON person.id = person_id
ORDER BY set_aside.id;

-- name: import-set-aside
INSERT INTO set_aside (id, person_id, date, caution)
VALUES (?, (SELECT id FROM person WHERE name = ?), ?, ?);

-- name: export-stopwatches
SELECT stopwatch.id, person.name, line
FROM stopwatch
JOIN person ON person.id = person_id
ORDER BY stopwatch.id;

-- name: import-stopwatches
INSERT INTO stopwatch (id, person_id, line)
VALUES (?, (SELECT id FROM person WHERE name = ?), ?);

-- The position only keeps the lists alike: a stretch is numbered in the order in which it is put in.
-- name: export-stopwatches-stretches
SELECT stopwatch_id, began_at, ended_at FROM stretch ORDER BY stopwatch_id, id;

-- name: import-stopwatches-stretches
INSERT INTO stretch (stopwatch_id, began_at, ended_at) SELECT ?1, ?3, ?4 WHERE ?2 IS NOT NULL;
