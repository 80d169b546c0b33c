-- The book as it begins: people, places, sessions, settings, and the record of every change.
-- Runs inside one transaction, which the last line ends with the version it leads to.

PRAGMA application_id = 1299149925; -- "Mote"

-- ---------------------------------------------------------------- who and where

CREATE TABLE person (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  folded TEXT NOT NULL UNIQUE CHECK (folded <> '')
) STRICT;

CREATE TABLE place (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  folded TEXT NOT NULL UNIQUE CHECK (folded <> '')
) STRICT;

-- What the air of a place does from a day on; '' is from the beginning.
CREATE TABLE place_version (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  place_id INTEGER NOT NULL REFERENCES place (id),
  valid_from TEXT NOT NULL CHECK (
    valid_from = ''
    OR valid_from IS date(valid_from) AND valid_from BETWEEN '1900-01-01' AND '2199-12-31'),
  kind TEXT NOT NULL CHECK (kind IN ('indoors', 'outdoors')),
  air_speed_m_per_min REAL NOT NULL CHECK (air_speed_m_per_min BETWEEN 0.01 AND 10000),
  volume_m3 REAL CHECK (volume_m3 BETWEEN 0.1 AND 1000000),
  air_changes_per_hour REAL CHECK (air_changes_per_hour BETWEEN 0 AND 1000),
  open_air_changes_per_hour REAL CHECK (open_air_changes_per_hour BETWEEN 0 AND 1000),
  cleaner_flow_m3_per_min REAL CHECK (cleaner_flow_m3_per_min BETWEEN 0 AND 100000),
  fan_flow_m3_per_min REAL CHECK (fan_flow_m3_per_min BETWEEN 0 AND 100000),
  cleaner_run_on_minutes INTEGER CHECK (cleaner_run_on_minutes BETWEEN 0 AND 1440),
  UNIQUE (place_id, valid_from),
  CHECK ((kind = 'indoors') = (volume_m3 IS NOT NULL)),
  CHECK ((kind = 'indoors') = (air_changes_per_hour IS NOT NULL)),
  CHECK ((kind = 'indoors') = (open_air_changes_per_hour IS NOT NULL)),
  CHECK ((kind = 'indoors') = (cleaner_run_on_minutes IS NOT NULL)),
  CHECK (kind = 'indoors' OR cleaner_flow_m3_per_min IS NULL AND fan_flow_m3_per_min IS NULL),
  CHECK (kind = 'outdoors' OR air_speed_m_per_min <= 1000)
) STRICT;

-- ---------------------------------------------------------------- what was done

CREATE TABLE session (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person_id INTEGER NOT NULL REFERENCES person (id),
  place_id INTEGER NOT NULL REFERENCES place (id),
  date TEXT NOT NULL CHECK (date IS date(date) AND date BETWEEN '1900-01-01' AND '2199-12-31'),
  start_minute INTEGER NOT NULL CHECK (start_minute BETWEEN 0 AND 1439),
  minutes INTEGER NOT NULL CHECK (minutes BETWEEN 1 AND 960),
  zone TEXT NOT NULL CHECK (length(zone) BETWEEN 1 AND 64),
  starts_at TEXT NOT NULL CHECK (
    starts_at GLOB '[12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]T[0-2][0-9]:[0-5][0-9]:[0-5][0-9]Z'),
  operation TEXT NOT NULL CHECK (length(operation) BETWEEN 1 AND 100),
  material TEXT CHECK (length(material) BETWEEN 1 AND 100),
  respirator TEXT CHECK (length(respirator) BETWEEN 1 AND 40),
  seal_checked INTEGER CHECK (seal_checked IN (0, 1)),
  worn_percent REAL CHECK (worn_percent BETWEEN 1 AND 100),
  note TEXT NOT NULL CHECK (length(note) <= 1000),
  CHECK (start_minute + minutes <= 1440),
  CHECK ((respirator IS NULL) = (seal_checked IS NULL)),
  CHECK ((respirator IS NULL) = (worn_percent IS NULL))
) STRICT;

CREATE INDEX session_by_day ON session (date, start_minute);
CREATE UNIQUE INDEX session_by_person ON session (person_id, date, start_minute);

CREATE TABLE session_control (
  session_id INTEGER NOT NULL REFERENCES session (id),
  position INTEGER NOT NULL CHECK (position >= 0),
  control TEXT NOT NULL CHECK (length(control) BETWEEN 1 AND 100 AND instr(control, char(10)) = 0),
  PRIMARY KEY (session_id, position),
  UNIQUE (session_id, control)
) STRICT, WITHOUT ROWID;

CREATE TABLE setting (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  person_id INTEGER NOT NULL REFERENCES person (id),
  place_id INTEGER NOT NULL REFERENCES place (id),
  limit_set TEXT NOT NULL CHECK (length(limit_set) BETWEEN 1 AND 100),
  total_conversion REAL NOT NULL CHECK (total_conversion BETWEEN 1 AND 10),
  gap_minutes INTEGER NOT NULL CHECK (gap_minutes BETWEEN 0 AND 1440)
) STRICT;

-- A session as it is read: names for numbers, controls in the order said, a line each.
CREATE VIEW session_read AS
SELECT
  session.id, session.date, session.start_minute, session.minutes, session.operation,
  session.material, session.respirator, session.seal_checked, session.worn_percent, session.note,
  session.person_id, person.name AS person, place.name AS place,
  (SELECT group_concat(control, char(10) ORDER BY position)
   FROM session_control WHERE session_id = session.id) AS controls
FROM session
JOIN person ON person.id = session.person_id
JOIN place ON place.id = session.place_id;

-- ---------------------------------------------------------------- what was changed

-- One change a person asked for. It counts as taken back once another one undoes it.
CREATE TABLE change (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  at TEXT NOT NULL CHECK (at GLOB '[12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]T*Z'),
  what TEXT NOT NULL CHECK (what <> ''),
  undoes INTEGER UNIQUE REFERENCES change (id) CHECK (undoes < id)
) STRICT;

-- One row of a data table before and after: NULL before it was there and after it was gone.
CREATE TABLE change_row (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  change_id INTEGER NOT NULL REFERENCES change (id),
  table_name TEXT NOT NULL,
  before TEXT CHECK (json_valid(before)),
  after TEXT CHECK (json_valid(after)),
  CHECK (before IS NOT NULL OR after IS NOT NULL)
) STRICT;

CREATE INDEX change_row_by_change ON change_row (change_id);

-- Holds the running change while a transaction writes. No transaction can be committed before
-- this table is empty again: its second reference points at a table that can hold no row.
CREATE TABLE never (id INTEGER PRIMARY KEY CHECK (FALSE)) STRICT;

CREATE TABLE open_change (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  change_id INTEGER NOT NULL REFERENCES change (id) DEFERRABLE INITIALLY DEFERRED,
  must_close INTEGER NOT NULL DEFAULT 1 REFERENCES never (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;

-- ---------------------------------------------------------------- what a fresh book holds

INSERT INTO person (name, folded) VALUES ('me', 'me');
INSERT INTO place (name, folded) VALUES ('shop', 'shop'), ('yard', 'yard');
INSERT INTO place_version (
  place_id, valid_from, kind, air_speed_m_per_min, volume_m3, air_changes_per_hour,
  open_air_changes_per_hour, cleaner_run_on_minutes)
VALUES
  (1, '', 'indoors', 6, 100, 1, 3, 0),
  (2, '', 'outdoors', 60, NULL, NULL, NULL, NULL);
INSERT INTO setting VALUES (1, 1, 1, 'acgih', 1.5, 30);

-- ---------------------------------------------------------------- nothing without its record

CREATE TRIGGER change_row_needs_the_open_change BEFORE INSERT ON change_row
WHEN NEW.change_id IS NULL OR NEW.change_id IS NOT (SELECT change_id FROM open_change)
BEGIN
  SELECT RAISE(ABORT, 'no change is open');
END;

CREATE TRIGGER change_row_stays BEFORE UPDATE ON change_row
BEGIN
  SELECT RAISE(ABORT, 'the record of a change is never rewritten');
END;

CREATE TRIGGER change_row_is_kept BEFORE DELETE ON change_row
BEGIN
  SELECT RAISE(ABORT, 'the record of a change is never deleted');
END;

CREATE TRIGGER change_stays BEFORE UPDATE ON change
BEGIN
  SELECT RAISE(ABORT, 'a change is never rewritten');
END;

-- Only a change that is still open, and so has recorded nothing yet or is rolled back, may go.
CREATE TRIGGER change_is_kept BEFORE DELETE ON change
WHEN OLD.id IS NOT (SELECT change_id FROM open_change)
BEGIN
  SELECT RAISE(ABORT, 'a change is never deleted');
END;

CREATE TRIGGER person_inserted AFTER INSERT ON person
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'person',
    json_object('id', NEW.id, 'name', NEW.name, 'folded', NEW.folded));
END;

CREATE TRIGGER person_updated AFTER UPDATE ON person
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'person',
    json_object('id', OLD.id, 'name', OLD.name, 'folded', OLD.folded),
    json_object('id', NEW.id, 'name', NEW.name, 'folded', NEW.folded));
END;

CREATE TRIGGER person_deleted AFTER DELETE ON person
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'person',
    json_object('id', OLD.id, 'name', OLD.name, 'folded', OLD.folded));
END;

CREATE TRIGGER place_inserted AFTER INSERT ON place
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'place',
    json_object('id', NEW.id, 'name', NEW.name, 'folded', NEW.folded));
END;

CREATE TRIGGER place_updated AFTER UPDATE ON place
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'place',
    json_object('id', OLD.id, 'name', OLD.name, 'folded', OLD.folded),
    json_object('id', NEW.id, 'name', NEW.name, 'folded', NEW.folded));
END;

CREATE TRIGGER place_deleted AFTER DELETE ON place
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'place',
    json_object('id', OLD.id, 'name', OLD.name, 'folded', OLD.folded));
END;

CREATE TRIGGER place_version_inserted AFTER INSERT ON place_version
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'place_version',
    json_object(
      'id', NEW.id, 'place_id', NEW.place_id, 'valid_from', NEW.valid_from, 'kind', NEW.kind,
      'air_speed_m_per_min', NEW.air_speed_m_per_min, 'volume_m3', NEW.volume_m3,
      'air_changes_per_hour', NEW.air_changes_per_hour,
      'open_air_changes_per_hour', NEW.open_air_changes_per_hour,
      'cleaner_flow_m3_per_min', NEW.cleaner_flow_m3_per_min,
      'fan_flow_m3_per_min', NEW.fan_flow_m3_per_min,
      'cleaner_run_on_minutes', NEW.cleaner_run_on_minutes));
END;

CREATE TRIGGER place_version_updated AFTER UPDATE ON place_version
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'place_version',
    json_object(
      'id', OLD.id, 'place_id', OLD.place_id, 'valid_from', OLD.valid_from, 'kind', OLD.kind,
      'air_speed_m_per_min', OLD.air_speed_m_per_min, 'volume_m3', OLD.volume_m3,
      'air_changes_per_hour', OLD.air_changes_per_hour,
      'open_air_changes_per_hour', OLD.open_air_changes_per_hour,
      'cleaner_flow_m3_per_min', OLD.cleaner_flow_m3_per_min,
      'fan_flow_m3_per_min', OLD.fan_flow_m3_per_min,
      'cleaner_run_on_minutes', OLD.cleaner_run_on_minutes),
    json_object(
      'id', NEW.id, 'place_id', NEW.place_id, 'valid_from', NEW.valid_from, 'kind', NEW.kind,
      'air_speed_m_per_min', NEW.air_speed_m_per_min, 'volume_m3', NEW.volume_m3,
      'air_changes_per_hour', NEW.air_changes_per_hour,
      'open_air_changes_per_hour', NEW.open_air_changes_per_hour,
      'cleaner_flow_m3_per_min', NEW.cleaner_flow_m3_per_min,
      'fan_flow_m3_per_min', NEW.fan_flow_m3_per_min,
      'cleaner_run_on_minutes', NEW.cleaner_run_on_minutes));
END;

CREATE TRIGGER place_version_deleted AFTER DELETE ON place_version
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'place_version',
    json_object(
      'id', OLD.id, 'place_id', OLD.place_id, 'valid_from', OLD.valid_from, 'kind', OLD.kind,
      'air_speed_m_per_min', OLD.air_speed_m_per_min, 'volume_m3', OLD.volume_m3,
      'air_changes_per_hour', OLD.air_changes_per_hour,
      'open_air_changes_per_hour', OLD.open_air_changes_per_hour,
      'cleaner_flow_m3_per_min', OLD.cleaner_flow_m3_per_min,
      'fan_flow_m3_per_min', OLD.fan_flow_m3_per_min,
      'cleaner_run_on_minutes', OLD.cleaner_run_on_minutes));
END;

CREATE TRIGGER session_inserted AFTER INSERT ON session
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'session',
    json_object(
      'id', NEW.id, 'person_id', NEW.person_id, 'place_id', NEW.place_id, 'date', NEW.date,
      'start_minute', NEW.start_minute, 'minutes', NEW.minutes, 'zone', NEW.zone,
      'starts_at', NEW.starts_at, 'operation', NEW.operation, 'material', NEW.material,
      'respirator', NEW.respirator, 'seal_checked', NEW.seal_checked,
      'worn_percent', NEW.worn_percent, 'note', NEW.note));
END;

CREATE TRIGGER session_updated AFTER UPDATE ON session
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'session',
    json_object(
      'id', OLD.id, 'person_id', OLD.person_id, 'place_id', OLD.place_id, 'date', OLD.date,
      'start_minute', OLD.start_minute, 'minutes', OLD.minutes, 'zone', OLD.zone,
      'starts_at', OLD.starts_at, 'operation', OLD.operation, 'material', OLD.material,
      'respirator', OLD.respirator, 'seal_checked', OLD.seal_checked,
      'worn_percent', OLD.worn_percent, 'note', OLD.note),
    json_object(
      'id', NEW.id, 'person_id', NEW.person_id, 'place_id', NEW.place_id, 'date', NEW.date,
      'start_minute', NEW.start_minute, 'minutes', NEW.minutes, 'zone', NEW.zone,
      'starts_at', NEW.starts_at, 'operation', NEW.operation, 'material', NEW.material,
      'respirator', NEW.respirator, 'seal_checked', NEW.seal_checked,
      'worn_percent', NEW.worn_percent, 'note', NEW.note));
END;

CREATE TRIGGER session_deleted AFTER DELETE ON session
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'session',
    json_object(
      'id', OLD.id, 'person_id', OLD.person_id, 'place_id', OLD.place_id, 'date', OLD.date,
      'start_minute', OLD.start_minute, 'minutes', OLD.minutes, 'zone', OLD.zone,
      'starts_at', OLD.starts_at, 'operation', OLD.operation, 'material', OLD.material,
      'respirator', OLD.respirator, 'seal_checked', OLD.seal_checked,
      'worn_percent', OLD.worn_percent, 'note', OLD.note));
END;

CREATE TRIGGER session_control_inserted AFTER INSERT ON session_control
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'session_control',
    json_object('session_id', NEW.session_id, 'position', NEW.position, 'control', NEW.control));
END;

CREATE TRIGGER session_control_updated AFTER UPDATE ON session_control
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'session_control',
    json_object('session_id', OLD.session_id, 'position', OLD.position, 'control', OLD.control),
    json_object('session_id', NEW.session_id, 'position', NEW.position, 'control', NEW.control));
END;

CREATE TRIGGER session_control_deleted AFTER DELETE ON session_control
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'session_control',
    json_object('session_id', OLD.session_id, 'position', OLD.position, 'control', OLD.control));
END;

CREATE TRIGGER setting_inserted AFTER INSERT ON setting
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'setting',
    json_object(
      'id', NEW.id, 'person_id', NEW.person_id, 'place_id', NEW.place_id,
      'limit_set', NEW.limit_set, 'total_conversion', NEW.total_conversion,
      'gap_minutes', NEW.gap_minutes));
END;

CREATE TRIGGER setting_updated AFTER UPDATE ON setting
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'setting',
    json_object(
      'id', OLD.id, 'person_id', OLD.person_id, 'place_id', OLD.place_id,
      'limit_set', OLD.limit_set, 'total_conversion', OLD.total_conversion,
      'gap_minutes', OLD.gap_minutes),
    json_object(
      'id', NEW.id, 'person_id', NEW.person_id, 'place_id', NEW.place_id,
      'limit_set', NEW.limit_set, 'total_conversion', NEW.total_conversion,
      'gap_minutes', NEW.gap_minutes));
END;

CREATE TRIGGER setting_deleted AFTER DELETE ON setting
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'setting',
    json_object(
      'id', OLD.id, 'person_id', OLD.person_id, 'place_id', OLD.place_id,
      'limit_set', OLD.limit_set, 'total_conversion', OLD.total_conversion,
      'gap_minutes', OLD.gap_minutes));
END;

PRAGMA user_version = 1;
