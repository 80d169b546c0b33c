-- A copy that is to take the place of the present book; the copy is open, the book is attached.

-- name: attach-present
ATTACH ? AS present;

-- Sessions are held against each other by what a person would say of them, not by their numbers.
-- name: lost-by-restoring
WITH lost AS (
  SELECT person.name, place.name, date, start_minute, minutes, operation, material, respirator, note
  FROM present.session
  JOIN present.person ON person.id = session.person_id
  JOIN present.place ON place.id = session.place_id
  EXCEPT
  SELECT person.name, place.name, date, start_minute, minutes, operation, material, respirator, note
  FROM main.session
  JOIN main.person ON person.id = session.person_id
  JOIN main.place ON place.id = session.place_id)
SELECT
  count(*) AS sessions, min(date) AS first, max(date) AS last,
  (SELECT count(*) FROM (
    SELECT id, at, what FROM present.change EXCEPT SELECT id, at, what FROM main.change)) AS changes
FROM lost;
