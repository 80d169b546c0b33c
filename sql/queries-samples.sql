-- Measured air results.

-- ---------------------------------------------------------------- taken back

-- name: restore-inserted-sample
DELETE FROM sample WHERE id = ?1 ->> 'id';

-- A record from before samples had a use says nothing of it: it is of a personal sample.
-- name: restore-updated-sample
UPDATE sample SET
  person_id = ?1 ->> 'person_id', date = ?1 ->> 'date', from_minute = ?1 ->> 'from_minute',
  to_minute = ?1 ->> 'to_minute', fraction = ?1 ->> 'fraction', kind = ?1 ->> 'kind',
  mg = ?1 ->> 'mg', blank_mg = ?1 ->> 'blank_mg', litres_per_min = ?1 ->> 'litres_per_min',
  detection_limit_mg = ?1 ->> 'detection_limit_mg', mg_per_m3 = ?1 ->> 'mg_per_m3',
  below_detection = ?1 ->> 'below_detection', cv = ?1 ->> 'cv', note = ?1 ->> 'note',
  place_id = ?1 ->> 'place_id', factor = ?1 ->> 'factor',
  relative = coalesce(?1 ->> 'relative', 0), whole_shift = coalesce(?1 ->> 'whole_shift', 0)
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-sample
INSERT INTO sample (
  id, person_id, date, from_minute, to_minute, fraction, kind, mg, blank_mg, litres_per_min,
  detection_limit_mg, mg_per_m3, below_detection, cv, note, place_id, factor, relative,
  whole_shift)
SELECT
  ?1 ->> 'id', ?1 ->> 'person_id', ?1 ->> 'date', ?1 ->> 'from_minute', ?1 ->> 'to_minute',
  ?1 ->> 'fraction', ?1 ->> 'kind', ?1 ->> 'mg', ?1 ->> 'blank_mg', ?1 ->> 'litres_per_min',
  ?1 ->> 'detection_limit_mg', ?1 ->> 'mg_per_m3', ?1 ->> 'below_detection', ?1 ->> 'cv',
  ?1 ->> 'note', ?1 ->> 'place_id', ?1 ->> 'factor', coalesce(?1 ->> 'relative', 0),
  coalesce(?1 ->> 'whole_shift', 0);

-- ---------------------------------------------------------------- samples

-- name: samples
SELECT sample.*, person.name AS person, place.name AS place
FROM sample
JOIN person ON person.id = sample.person_id
LEFT JOIN place ON place.id = sample.place_id
ORDER BY date, from_minute, sample.id;

-- name: sample
SELECT sample.*, person.name AS person, place.name AS place
FROM sample
JOIN person ON person.id = sample.person_id
LEFT JOIN place ON place.id = sample.place_id
WHERE sample.id = ?;

-- name: sessions-on-sampled-days
SELECT * FROM session_read WHERE date IN (SELECT date FROM sample)
ORDER BY date, start_minute, id;

-- name: same-sample
SELECT id FROM sample
WHERE (
    person_id, date, from_minute, to_minute, fraction, kind, mg, blank_mg, litres_per_min,
    detection_limit_mg, mg_per_m3, below_detection, cv, place_id, factor, relative, whole_shift)
  IS (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?);

-- The same figure under another kind is the same reading; a filter has none.
-- name: sample-standing
SELECT sample.*, person.name AS person, place.name AS place
FROM sample
JOIN person ON person.id = sample.person_id
LEFT JOIN place ON place.id = sample.place_id
WHERE (person_id, date, from_minute, to_minute, fraction, place_id) IS (?, ?, ?, ?, ?, ?)
  AND (kind = ? OR mg_per_m3 = ?)
ORDER BY sample.id
LIMIT 1;

-- name: sample-insert
INSERT INTO sample (
  person_id, date, from_minute, to_minute, fraction, kind, mg, blank_mg, litres_per_min,
  detection_limit_mg, mg_per_m3, below_detection, cv, place_id, factor, relative, whole_shift,
  note)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id;

-- name: sample-delete
DELETE FROM sample WHERE id = ?;

-- name: newest-change
SELECT coalesce(max(id), 0) FROM change;
