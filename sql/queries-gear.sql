-- Masks and filters: respirators, elements, the shop's own filters, upkeep, fit.

-- ---------------------------------------------------------------- taken back

-- name: restore-inserted-respirator
DELETE FROM respirator WHERE id = ?1 ->> 'id';

-- name: restore-updated-respirator
UPDATE respirator SET
  name = ?1 ->> 'name', folded = ?1 ->> 'folded', scheme = ?1 ->> 'scheme', kind = ?1 ->> 'kind',
  facepiece = ?1 ->> 'facepiece', size = ?1 ->> 'size', make = ?1 ->> 'make',
  retired_on = ?1 ->> 'retired_on', retired_why = ?1 ->> 'retired_why'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-respirator
INSERT INTO respirator (
  id, name, folded, scheme, kind, facepiece, size, make, retired_on, retired_why)
SELECT
  ?1 ->> 'id', ?1 ->> 'name', ?1 ->> 'folded', ?1 ->> 'scheme', ?1 ->> 'kind', ?1 ->> 'facepiece',
  ?1 ->> 'size', ?1 ->> 'make', ?1 ->> 'retired_on', ?1 ->> 'retired_why';

-- name: restore-inserted-respirator_person
DELETE FROM respirator_person
WHERE respirator_id = ?1 ->> 'respirator_id' AND position = ?1 ->> 'position';

-- name: restore-updated-respirator_person
UPDATE respirator_person SET person_id = ?1 ->> 'person_id'
WHERE respirator_id = ?1 ->> 'respirator_id' AND position = ?1 ->> 'position';

-- name: restore-deleted-respirator_person
INSERT INTO respirator_person (respirator_id, position, person_id)
SELECT ?1 ->> 'respirator_id', ?1 ->> 'position', ?1 ->> 'person_id';

-- name: restore-inserted-element
DELETE FROM element WHERE id = ?1 ->> 'id';

-- name: restore-updated-element
UPDATE element SET
  name = ?1 ->> 'name', folded = ?1 ->> 'folded', respirator_id = ?1 ->> 'respirator_id',
  class = ?1 ->> 'class', is_pair = ?1 ->> 'is_pair', worn_from = ?1 ->> 'worn_from',
  opened = ?1 ->> 'opened', sealed_until = ?1 ->> 'sealed_until',
  limit_hours = ?1 ->> 'limit_hours', limit_mg = ?1 ->> 'limit_mg', carbon_g = ?1 ->> 'carbon_g',
  worn_from_minute = ?1 ->> 'worn_from_minute', is_single_use = ?1 ->> 'is_single_use',
  retired_on = ?1 ->> 'retired_on', retired_minute = ?1 ->> 'retired_minute',
  retired_why = ?1 ->> 'retired_why'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-element
INSERT INTO element (
  id, name, folded, respirator_id, class, is_pair, worn_from, opened, sealed_until, limit_hours,
  limit_mg, carbon_g, retired_on, retired_why, worn_from_minute, retired_minute, is_single_use)
SELECT
  ?1 ->> 'id', ?1 ->> 'name', ?1 ->> 'folded', ?1 ->> 'respirator_id', ?1 ->> 'class',
  ?1 ->> 'is_pair', ?1 ->> 'worn_from', ?1 ->> 'opened', ?1 ->> 'sealed_until',
  ?1 ->> 'limit_hours', ?1 ->> 'limit_mg', ?1 ->> 'carbon_g', ?1 ->> 'retired_on',
  ?1 ->> 'retired_why', ?1 ->> 'worn_from_minute', ?1 ->> 'retired_minute',
  ?1 ->> 'is_single_use';

-- name: restore-inserted-shop_filter
DELETE FROM shop_filter WHERE id = ?1 ->> 'id';

-- name: restore-updated-shop_filter
UPDATE shop_filter SET
  name = ?1 ->> 'name', folded = ?1 ->> 'folded', sits_on = ?1 ->> 'sits_on',
  place_id = ?1 ->> 'place_id', counts_from = ?1 ->> 'counts_from',
  clean_every_hours = ?1 ->> 'clean_every_hours', change_at_hours = ?1 ->> 'change_at_hours',
  gauge_clean = ?1 ->> 'gauge_clean', gauge_change = ?1 ->> 'gauge_change',
  retired_on = ?1 ->> 'retired_on', retired_why = ?1 ->> 'retired_why'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-shop_filter
INSERT INTO shop_filter (
  id, name, folded, sits_on, place_id, counts_from, clean_every_hours, change_at_hours,
  gauge_clean, gauge_change, retired_on, retired_why)
SELECT
  ?1 ->> 'id', ?1 ->> 'name', ?1 ->> 'folded', ?1 ->> 'sits_on', ?1 ->> 'place_id',
  ?1 ->> 'counts_from', ?1 ->> 'clean_every_hours', ?1 ->> 'change_at_hours',
  ?1 ->> 'gauge_clean', ?1 ->> 'gauge_change', ?1 ->> 'retired_on', ?1 ->> 'retired_why';

-- name: restore-inserted-upkeep
DELETE FROM upkeep WHERE id = ?1 ->> 'id';

-- name: restore-updated-upkeep
UPDATE upkeep SET
  filter_id = ?1 ->> 'filter_id', date = ?1 ->> 'date', minute = ?1 ->> 'minute',
  what = ?1 ->> 'what', reading = ?1 ->> 'reading'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-upkeep
INSERT INTO upkeep (id, filter_id, date, minute, what, reading)
SELECT
  ?1 ->> 'id', ?1 ->> 'filter_id', ?1 ->> 'date', ?1 ->> 'minute', ?1 ->> 'what', ?1 ->> 'reading';

-- name: restore-inserted-fit_record
DELETE FROM fit_record WHERE id = ?1 ->> 'id';

-- name: restore-updated-fit_record
UPDATE fit_record SET
  kind = ?1 ->> 'kind', person_id = ?1 ->> 'person_id', date = ?1 ->> 'date',
  respirator_id = ?1 ->> 'respirator_id', agent = ?1 ->> 'agent', passed = ?1 ->> 'passed',
  until = ?1 ->> 'until', changed = ?1 ->> 'changed'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-fit_record
INSERT INTO fit_record (id, kind, person_id, date, respirator_id, agent, passed, until, changed)
SELECT
  ?1 ->> 'id', ?1 ->> 'kind', ?1 ->> 'person_id', ?1 ->> 'date', ?1 ->> 'respirator_id',
  ?1 ->> 'agent', ?1 ->> 'passed', ?1 ->> 'until', ?1 ->> 'changed';

-- name: restore-inserted-fit_exercise
DELETE FROM fit_exercise
WHERE fit_record_id = ?1 ->> 'fit_record_id' AND position = ?1 ->> 'position';

-- name: restore-updated-fit_exercise
UPDATE fit_exercise SET factor = ?1 ->> 'factor'
WHERE fit_record_id = ?1 ->> 'fit_record_id' AND position = ?1 ->> 'position';

-- name: restore-deleted-fit_exercise
INSERT INTO fit_exercise (fit_record_id, position, factor)
SELECT ?1 ->> 'fit_record_id', ?1 ->> 'position', ?1 ->> 'factor';

-- ---------------------------------------------------------------- respirators

-- name: respirators
SELECT * FROM respirator ORDER BY id;

-- name: respirator-people
SELECT respirator_id, person.name AS person
FROM respirator_person
JOIN person ON person.id = person_id
ORDER BY respirator_id, position;

-- name: respirator-insert
INSERT INTO respirator (name, folded, scheme, kind, facepiece, size, make)
VALUES (?, ?, ?, ?, ?, ?, ?) RETURNING id;

-- name: respirator-person-insert
INSERT INTO respirator_person (respirator_id, position, person_id) VALUES (?, ?, ?);

-- name: respirator-retire
UPDATE respirator SET retired_on = ?2, retired_why = ?3 WHERE id = ?1;

-- name: respirator-people-delete
DELETE FROM respirator_person WHERE respirator_id = ?;

-- name: respirator-delete
DELETE FROM respirator WHERE id = ?;

-- name: respirator-in-sessions
SELECT EXISTS (SELECT 1 FROM session WHERE respirator = ?);

-- name: respirator-worn-after
SELECT date FROM session WHERE respirator = ? AND date > ? ORDER BY date DESC LIMIT 1;

-- ---------------------------------------------------------------- elements

-- name: elements
SELECT element.*, respirator.name AS respirator
FROM element
JOIN respirator ON respirator.id = respirator_id
ORDER BY element.id;

-- name: element-insert
INSERT INTO element (
  respirator_id, name, folded, class, is_pair, worn_from, opened, sealed_until, limit_hours,
  limit_mg, carbon_g, worn_from_minute, is_single_use, retired_on, retired_minute, retired_why)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id;

-- name: element-open
UPDATE element SET worn_from = ?2, opened = ?2 WHERE id = ?1;

-- name: element-retire
UPDATE element SET retired_on = ?2, retired_minute = ?3, retired_why = ?4 WHERE id = ?1;

-- name: element-delete
DELETE FROM element WHERE id = ?;

-- name: element-in-sessions
SELECT EXISTS (SELECT 1 FROM session WHERE respirator = ? AND date >= ?);

-- ---------------------------------------------------------------- the shop's own filters

-- name: shop-filters
SELECT shop_filter.*, place.name AS place
FROM shop_filter
JOIN place ON place.id = place_id
ORDER BY shop_filter.id;

-- name: shop-filter-insert
INSERT INTO shop_filter (
  place_id, name, folded, sits_on, counts_from, clean_every_hours, change_at_hours, gauge_clean,
  gauge_change)
VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id;

-- name: shop-filter-retire
UPDATE shop_filter SET retired_on = ?2, retired_why = ?3 WHERE id = ?1;

-- name: shop-filter-delete
DELETE FROM shop_filter WHERE id = ?;

-- name: shop-filter-in-sessions
SELECT EXISTS (
  SELECT 1 FROM session
  JOIN session_control ON session_id = session.id
  WHERE place_id = (SELECT place_id FROM shop_filter WHERE id = ?) AND date >= ?);

-- name: upkeep
SELECT upkeep.*, shop_filter.name AS filter
FROM upkeep
JOIN shop_filter ON shop_filter.id = filter_id
ORDER BY date, minute NULLS LAST, upkeep.id;

-- name: upkeep-insert
INSERT INTO upkeep (filter_id, date, minute, what, reading) VALUES (?, ?, ?, ?, ?) RETURNING id;

-- ---------------------------------------------------------------- fit

-- name: fit-records
SELECT fit_record.*, person.name AS person, respirator.name AS respirator
FROM fit_record
JOIN person ON person.id = person_id
LEFT JOIN respirator ON respirator.id = respirator_id
ORDER BY date, fit_record.id;

-- name: fit-exercises
SELECT fit_record_id, factor FROM fit_exercise ORDER BY fit_record_id, position;

-- name: fit-record-insert
INSERT INTO fit_record (kind, person_id, date, respirator_id, agent, passed, until, changed)
VALUES (?, ?, ?, ?, ?, ?, ?, ?) RETURNING id;

-- name: fit-exercises-delete
DELETE FROM fit_exercise WHERE fit_record_id = ?;

-- name: fit-record-delete
DELETE FROM fit_record WHERE id = ?;

-- name: fit-exercise-insert
INSERT INTO fit_exercise (fit_record_id, position, factor) VALUES (?, ?, ?);

-- name: hair-end
UPDATE fit_record SET until = ?2 WHERE id = ?1 AND until IS NOT ?2;
