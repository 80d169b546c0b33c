-- Finishes: how much of which was used, and what the owner entered from makers' data sheets. Runs
-- inside one transaction, which the last line ends with the version it leads to.

CREATE TABLE session_finish (
  session_id INTEGER NOT NULL REFERENCES session (id),
  position INTEGER NOT NULL CHECK (position >= 0),
  finish TEXT NOT NULL CHECK (
    length(finish) BETWEEN 1 AND 100
    AND instr(finish, char(10)) = 0 AND instr(finish, char(9)) = 0),
  millilitres REAL NOT NULL CHECK (millilitres BETWEEN 0.1 AND 100000),
  PRIMARY KEY (session_id, position),
  UNIQUE (session_id, finish)
) STRICT, WITHOUT ROWID;

-- What the sheet does not tell, how fast it dries and what it warns of, is as the shipped finish
-- that it dries like.
CREATE TABLE finish (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  folded TEXT NOT NULL UNIQUE CHECK (folded <> ''),
  dries_like TEXT NOT NULL CHECK (length(dries_like) BETWEEN 1 AND 100),
  volatile_g_per_l REAL NOT NULL CHECK (volatile_g_per_l BETWEEN 0.1 AND 2000)
) STRICT;

CREATE TABLE finish_solvent (
  finish_id INTEGER NOT NULL REFERENCES finish (id),
  position INTEGER NOT NULL CHECK (position >= 0),
  solvent TEXT NOT NULL CHECK (
    length(solvent) BETWEEN 1 AND 100
    AND instr(solvent, char(10)) = 0 AND instr(solvent, char(9)) = 0),
  weight_share REAL NOT NULL CHECK (weight_share > 0 AND weight_share <= 1),
  PRIMARY KEY (finish_id, position),
  UNIQUE (finish_id, solvent)
) STRICT, WITHOUT ROWID;

-- A session as it is read: names for numbers; controls and amounts in the order said, a line each,
-- an amount as finish, tab, millilitres to the last digit.
DROP VIEW session_read;

CREATE VIEW session_read AS
SELECT
  session.id, session.date, session.start_minute, session.minutes, session.operation,
  session.material, session.respirator, session.seal_checked, session.worn_percent, session.note,
  session.person_id, person.name AS person, place.name AS place,
  (SELECT group_concat(control, char(10) ORDER BY position)
   FROM session_control WHERE session_id = session.id) AS controls,
  (SELECT group_concat(
     finish || char(9) || format('%!.17g', millilitres), char(10) ORDER BY position)
   FROM session_finish WHERE session_id = session.id) AS amounts
FROM session
JOIN person ON person.id = session.person_id
JOIN place ON place.id = session.place_id;

-- ---------------------------------------------------------------- nothing without its record

CREATE TRIGGER session_finish_inserted AFTER INSERT ON session_finish
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'session_finish',
    json_object(
      'session_id', NEW.session_id, 'position', NEW.position, 'finish', NEW.finish, 'millilitres', NEW.millilitres));
END;

CREATE TRIGGER session_finish_updated AFTER UPDATE ON session_finish
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'session_finish',
    json_object(
      'session_id', OLD.session_id, 'position', OLD.position, 'finish', OLD.finish, 'millilitres', OLD.millilitres),
    json_object(
      'session_id', NEW.session_id, 'position', NEW.position, 'finish', NEW.finish, 'millilitres', NEW.millilitres));
END;

CREATE TRIGGER session_finish_deleted AFTER DELETE ON session_finish
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'session_finish',
    json_object(
      'session_id', OLD.session_id, 'position', OLD.position, 'finish', OLD.finish, 'millilitres', OLD.millilitres));
END;

CREATE TRIGGER finish_inserted AFTER INSERT ON finish
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'finish',
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'dries_like', NEW.dries_like, 'volatile_g_per_l', NEW.volatile_g_per_l));
END;

CREATE TRIGGER finish_updated AFTER UPDATE ON finish
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'finish',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'dries_like', OLD.dries_like, 'volatile_g_per_l', OLD.volatile_g_per_l),
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'dries_like', NEW.dries_like, 'volatile_g_per_l', NEW.volatile_g_per_l));
END;

CREATE TRIGGER finish_deleted AFTER DELETE ON finish
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'finish',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'dries_like', OLD.dries_like, 'volatile_g_per_l', OLD.volatile_g_per_l));
END;

CREATE TRIGGER finish_solvent_inserted AFTER INSERT ON finish_solvent
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'finish_solvent',
    json_object(
      'finish_id', NEW.finish_id, 'position', NEW.position, 'solvent', NEW.solvent, 'weight_share', NEW.weight_share));
END;

CREATE TRIGGER finish_solvent_updated AFTER UPDATE ON finish_solvent
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'finish_solvent',
    json_object(
      'finish_id', OLD.finish_id, 'position', OLD.position, 'solvent', OLD.solvent, 'weight_share', OLD.weight_share),
    json_object(
      'finish_id', NEW.finish_id, 'position', NEW.position, 'solvent', NEW.solvent, 'weight_share', NEW.weight_share));
END;

CREATE TRIGGER finish_solvent_deleted AFTER DELETE ON finish_solvent
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'finish_solvent',
    json_object(
      'finish_id', OLD.finish_id, 'position', OLD.position, 'solvent', OLD.solvent, 'weight_share', OLD.weight_share));
END;

PRAGMA user_version = 4;
