-- The view of sessions in words that SQLite knows from 3.37 on, so that a shop's own, older tools
-- can open the book: an ORDER BY inside an aggregate is of 3.44, format() of 3.38. An aggregate
-- over an ordered subquery takes its rows in that order.

DROP VIEW session_read;

CREATE VIEW session_read AS
SELECT
  session.id, session.date, session.start_minute, session.minutes, session.operation,
  session.material, session.respirator, session.seal_checked, session.worn_percent, session.note,
  session.person_id, person.name AS person, place.name AS place,
  (SELECT group_concat(control, char(10))
   FROM (SELECT control FROM session_control WHERE session_id = session.id ORDER BY position)
  ) AS controls,
  (SELECT group_concat(finish || char(9) || printf('%!.17g', millilitres), char(10))
   FROM (
     SELECT finish, millilitres FROM session_finish WHERE session_id = session.id ORDER BY position)
  ) AS amounts
FROM session
JOIN person ON person.id = session.person_id
JOIN place ON place.id = session.place_id;

PRAGMA user_version = 7;
