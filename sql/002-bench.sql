-- What lies ready at the bench: favourites, running stopwatches, cautions set aside for a day, and
-- further choices of the owner, one a row. Runs inside one transaction, which the last line ends
-- with the version it leads to.

CREATE TABLE preference (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  key TEXT NOT NULL UNIQUE CHECK (length(key) BETWEEN 1 AND 100),
  value TEXT NOT NULL CHECK (length(value) BETWEEN 1 AND 1000)
) STRICT;

CREATE TABLE favourite (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  folded TEXT NOT NULL UNIQUE CHECK (folded <> ''),
  line TEXT NOT NULL CHECK (length(line) BETWEEN 1 AND 5000)
) STRICT;

-- One person has one stopwatch; it is gone once it is stopped.
CREATE TABLE stopwatch (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person_id INTEGER NOT NULL UNIQUE REFERENCES person (id),
  line TEXT NOT NULL CHECK (length(line) BETWEEN 1 AND 5000)
) STRICT;

-- From a start or a going on to the pause after it; no end while it runs.
CREATE TABLE stretch (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  stopwatch_id INTEGER NOT NULL REFERENCES stopwatch (id),
  began_at TEXT NOT NULL CHECK (
    began_at GLOB '[12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9]Z'),
  ended_at TEXT CHECK (
    ended_at GLOB '[12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9]Z'
    AND ended_at >= began_at)
) STRICT;

CREATE UNIQUE INDEX stretch_that_runs ON stretch (stopwatch_id) WHERE ended_at IS NULL;

CREATE TABLE set_aside (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person_id INTEGER NOT NULL REFERENCES person (id),
  date TEXT NOT NULL CHECK (date IS date(date) AND date BETWEEN '1900-01-01' AND '2199-12-31'),
  caution TEXT NOT NULL CHECK (length(caution) BETWEEN 1 AND 100),
  UNIQUE (person_id, date, caution)
) STRICT;

-- ---------------------------------------------------------------- nothing without its record

CREATE TRIGGER preference_inserted AFTER INSERT ON preference
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'preference',
    json_object('id', NEW.id, 'key', NEW.key, 'value', NEW.value));
END;

CREATE TRIGGER preference_updated AFTER UPDATE ON preference
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'preference',
    json_object('id', OLD.id, 'key', OLD.key, 'value', OLD.value),
    json_object('id', NEW.id, 'key', NEW.key, 'value', NEW.value));
END;

CREATE TRIGGER preference_deleted AFTER DELETE ON preference
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'preference',
    json_object('id', OLD.id, 'key', OLD.key, 'value', OLD.value));
END;

CREATE TRIGGER favourite_inserted AFTER INSERT ON favourite
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'favourite',
    json_object('id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'line', NEW.line));
END;

CREATE TRIGGER favourite_updated AFTER UPDATE ON favourite
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'favourite',
    json_object('id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'line', OLD.line),
    json_object('id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'line', NEW.line));
END;

CREATE TRIGGER favourite_deleted AFTER DELETE ON favourite
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'favourite',
    json_object('id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'line', OLD.line));
END;

CREATE TRIGGER stopwatch_inserted AFTER INSERT ON stopwatch
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'stopwatch',
    json_object('id', NEW.id, 'person_id', NEW.person_id, 'line', NEW.line));
END;

CREATE TRIGGER stopwatch_updated AFTER UPDATE ON stopwatch
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'stopwatch',
    json_object('id', OLD.id, 'person_id', OLD.person_id, 'line', OLD.line),
    json_object('id', NEW.id, 'person_id', NEW.person_id, 'line', NEW.line));
END;

CREATE TRIGGER stopwatch_deleted AFTER DELETE ON stopwatch
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'stopwatch',
    json_object('id', OLD.id, 'person_id', OLD.person_id, 'line', OLD.line));
END;

CREATE TRIGGER stretch_inserted AFTER INSERT ON stretch
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'stretch',
    json_object('id', NEW.id, 'stopwatch_id', NEW.stopwatch_id, 'began_at', NEW.began_at, 'ended_at', NEW.ended_at));
END;

CREATE TRIGGER stretch_updated AFTER UPDATE ON stretch
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'stretch',
    json_object('id', OLD.id, 'stopwatch_id', OLD.stopwatch_id, 'began_at', OLD.began_at, 'ended_at', OLD.ended_at),
    json_object('id', NEW.id, 'stopwatch_id', NEW.stopwatch_id, 'began_at', NEW.began_at, 'ended_at', NEW.ended_at));
END;

CREATE TRIGGER stretch_deleted AFTER DELETE ON stretch
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'stretch',
    json_object('id', OLD.id, 'stopwatch_id', OLD.stopwatch_id, 'began_at', OLD.began_at, 'ended_at', OLD.ended_at));
END;

CREATE TRIGGER set_aside_inserted AFTER INSERT ON set_aside
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'set_aside',
    json_object('id', NEW.id, 'person_id', NEW.person_id, 'date', NEW.date, 'caution', NEW.caution));
END;

CREATE TRIGGER set_aside_updated AFTER UPDATE ON set_aside
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'set_aside',
    json_object('id', OLD.id, 'person_id', OLD.person_id, 'date', OLD.date, 'caution', OLD.caution),
    json_object('id', NEW.id, 'person_id', NEW.person_id, 'date', NEW.date, 'caution', NEW.caution));
END;

CREATE TRIGGER set_aside_deleted AFTER DELETE ON set_aside
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'set_aside',
    json_object('id', OLD.id, 'person_id', OLD.person_id, 'date', OLD.date, 'caution', OLD.caution));
END;

PRAGMA user_version = 2;
