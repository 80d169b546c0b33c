-- What lies ready at the bench: favourites, stopwatches, cautions set aside, further choices.

-- ---------------------------------------------------------------- taken back

-- name: restore-inserted-preference
DELETE FROM preference WHERE id = ?1 ->> 'id';

-- name: restore-updated-preference
UPDATE preference SET key = ?1 ->> 'key', value = ?1 ->> 'value'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-preference
INSERT INTO preference (id, key, value)
SELECT ?1 ->> 'id', ?1 ->> 'key', ?1 ->> 'value';

-- name: restore-inserted-favourite
DELETE FROM favourite WHERE id = ?1 ->> 'id';

-- name: restore-updated-favourite
UPDATE favourite SET name = ?1 ->> 'name', folded = ?1 ->> 'folded', line = ?1 ->> 'line'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-favourite
INSERT INTO favourite (id, name, folded, line)
SELECT ?1 ->> 'id', ?1 ->> 'name', ?1 ->> 'folded', ?1 ->> 'line';

-- name: restore-inserted-stopwatch
DELETE FROM stopwatch WHERE id = ?1 ->> 'id';

-- name: restore-updated-stopwatch
UPDATE stopwatch SET person_id = ?1 ->> 'person_id', line = ?1 ->> 'line'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-stopwatch
INSERT INTO stopwatch (id, person_id, line)
SELECT ?1 ->> 'id', ?1 ->> 'person_id', ?1 ->> 'line';

-- name: restore-inserted-stretch
DELETE FROM stretch WHERE id = ?1 ->> 'id';

-- name: restore-updated-stretch
UPDATE stretch SET stopwatch_id = ?1 ->> 'stopwatch_id', began_at = ?1 ->> 'began_at', ended_at = ?1 ->> 'ended_at'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-stretch
INSERT INTO stretch (id, stopwatch_id, began_at, ended_at)
SELECT ?1 ->> 'id', ?1 ->> 'stopwatch_id', ?1 ->> 'began_at', ?1 ->> 'ended_at';

-- name: restore-inserted-set_aside
DELETE FROM set_aside WHERE id = ?1 ->> 'id';

-- name: restore-updated-set_aside
UPDATE set_aside SET person_id = ?1 ->> 'person_id', date = ?1 ->> 'date', caution = ?1 ->> 'caution'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-set_aside
INSERT INTO set_aside (id, person_id, date, caution)
SELECT ?1 ->> 'id', ?1 ->> 'person_id', ?1 ->> 'date', ?1 ->> 'caution';

-- ---------------------------------------------------------------- further choices

-- name: preferences
SELECT key, value FROM preference ORDER BY key;

-- name: preference-put
INSERT INTO preference (key, value) VALUES (?1, ?2)
ON CONFLICT (key) DO UPDATE SET value = excluded.value WHERE value <> excluded.value;

-- name: preference-drop
DELETE FROM preference WHERE key = ?;

-- ---------------------------------------------------------------- favourites

-- name: favourites
SELECT id, name, folded, line FROM favourite ORDER BY id;

-- name: favourite-insert
INSERT INTO favourite (name, folded, line) VALUES (?, ?, ?) RETURNING id;

-- name: favourite-delete
DELETE FROM favourite WHERE id = ?;

-- ---------------------------------------------------------------- stopwatches

-- name: stopwatches
SELECT stopwatch.id, person.name AS person, line, began_at, ended_at
FROM stopwatch
JOIN person ON person.id = stopwatch.person_id
JOIN stretch ON stretch.stopwatch_id = stopwatch.id
ORDER BY stopwatch.id, stretch.id;

-- name: stopwatch-insert
INSERT INTO stopwatch (person_id, line) VALUES (?, ?) RETURNING id;

-- name: stretch-begin
INSERT INTO stretch (stopwatch_id, began_at) VALUES (?, ?);

-- name: stretch-end
UPDATE stretch SET ended_at = ?2 WHERE stopwatch_id = ?1 AND ended_at IS NULL;

-- name: stretch-correct
UPDATE stretch SET began_at = ?2, ended_at = ?3 WHERE stopwatch_id = ?1 AND ended_at IS NULL;

-- name: stretches-delete
DELETE FROM stretch WHERE stopwatch_id = ?;

-- name: stopwatch-delete
DELETE FROM stopwatch WHERE id = ?;

-- ---------------------------------------------------------------- cautions of a day

-- name: cautions-set-aside
SELECT caution FROM set_aside
WHERE person_id = (SELECT id FROM person WHERE name = ?) AND date = ? ORDER BY id;

-- name: set-aside
INSERT INTO set_aside (person_id, date, caution) VALUES (?, ?, ?)
ON CONFLICT DO NOTHING;

-- name: bring-back
DELETE FROM set_aside WHERE person_id = ? AND date = ?;
