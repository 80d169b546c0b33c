-- Masks and filters: respirators with their elements, the shop's own filters, and who is fit to
-- wear what. Runs inside one transaction, which the last line ends with the version it leads to.

-- ---------------------------------------------------------------- what hangs on the rack

CREATE TABLE respirator (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  folded TEXT NOT NULL UNIQUE CHECK (folded <> ''),
  scheme TEXT NOT NULL CHECK (scheme IN ('osha', 'uk')),
  kind TEXT NOT NULL CHECK (length(kind) BETWEEN 1 AND 60),
  facepiece TEXT NOT NULL CHECK (length(facepiece) BETWEEN 1 AND 60),
  size TEXT CHECK (length(size) BETWEEN 1 AND 60),
  make TEXT CHECK (length(make) BETWEEN 1 AND 60),
  retired_on TEXT CHECK (
    retired_on IS date(retired_on) AND retired_on BETWEEN '1900-01-01' AND '2199-12-31'),
  retired_why TEXT CHECK (length(retired_why) BETWEEN 1 AND 60),
  CHECK ((retired_on IS NULL) = (retired_why IS NULL))
) STRICT;

-- Whose a respirator is; nobody's is anybody's.
CREATE TABLE respirator_person (
  respirator_id INTEGER NOT NULL REFERENCES respirator (id),
  position INTEGER NOT NULL CHECK (position >= 0),
  person_id INTEGER NOT NULL REFERENCES person (id),
  PRIMARY KEY (respirator_id, position),
  UNIQUE (respirator_id, person_id)
) STRICT, WITHOUT ROWID;

-- One that was not opened is a spare in its package; one that was taken off leaves its name to the
-- next.
CREATE TABLE element (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  folded TEXT NOT NULL CHECK (folded <> ''),
  respirator_id INTEGER NOT NULL REFERENCES respirator (id),
  class TEXT NOT NULL CHECK (length(class) BETWEEN 1 AND 60),
  is_pair INTEGER NOT NULL CHECK (is_pair IN (0, 1)),
  worn_from TEXT NOT NULL CHECK (
    worn_from IS date(worn_from) AND worn_from BETWEEN '1900-01-01' AND '2199-12-31'),
  opened TEXT CHECK (opened IS date(opened) AND opened BETWEEN '1900-01-01' AND '2199-12-31'),
  sealed_until TEXT CHECK (
    sealed_until IS date(sealed_until) AND sealed_until BETWEEN '1900-01-01' AND '2199-12-31'),
  limit_hours REAL CHECK (limit_hours > 0 AND limit_hours <= 100000),
  limit_mg REAL CHECK (limit_mg > 0 AND limit_mg <= 1000000),
  carbon_g REAL CHECK (carbon_g > 0 AND carbon_g <= 100000),
  retired_on TEXT CHECK (
    retired_on IS date(retired_on) AND retired_on BETWEEN '1900-01-01' AND '2199-12-31'),
  retired_why TEXT CHECK (length(retired_why) BETWEEN 1 AND 60),
  CHECK (opened <= worn_from),
  CHECK (retired_on >= worn_from),
  CHECK ((retired_on IS NULL) = (retired_why IS NULL))
) STRICT;

CREATE UNIQUE INDEX element_in_use ON element (folded) WHERE retired_on IS NULL;

CREATE TABLE shop_filter (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  folded TEXT NOT NULL UNIQUE CHECK (folded <> ''),
  sits_on TEXT NOT NULL CHECK (length(sits_on) BETWEEN 1 AND 60),
  place_id INTEGER NOT NULL REFERENCES place (id),
  counts_from TEXT NOT NULL CHECK (
    counts_from IS date(counts_from) AND counts_from BETWEEN '1900-01-01' AND '2199-12-31'),
  clean_every_hours REAL CHECK (clean_every_hours > 0 AND clean_every_hours <= 100000),
  change_at_hours REAL CHECK (change_at_hours > 0 AND change_at_hours <= 100000),
  gauge_clean REAL CHECK (gauge_clean BETWEEN -1000000 AND 1000000),
  gauge_change REAL CHECK (gauge_change BETWEEN -1000000 AND 1000000),
  retired_on TEXT CHECK (
    retired_on IS date(retired_on) AND retired_on BETWEEN '1900-01-01' AND '2199-12-31'),
  retired_why TEXT CHECK (length(retired_why) BETWEEN 1 AND 60),
  CHECK ((gauge_clean IS NULL) = (gauge_change IS NULL)),
  CHECK (gauge_clean <> gauge_change),
  CHECK (retired_on >= counts_from),
  CHECK ((retired_on IS NULL) = (retired_why IS NULL))
) STRICT;

CREATE TABLE upkeep (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  filter_id INTEGER NOT NULL REFERENCES shop_filter (id),
  date TEXT NOT NULL CHECK (date IS date(date) AND date BETWEEN '1900-01-01' AND '2199-12-31'),
  minute INTEGER CHECK (minute BETWEEN 0 AND 1439),
  what TEXT NOT NULL CHECK (what IN ('cleaned', 'replaced', 'emptied', 'inspected', 'gauge')),
  reading REAL CHECK (reading BETWEEN -1000000 AND 1000000),
  CHECK ((what = 'gauge') = (reading IS NOT NULL))
) STRICT;

CREATE INDEX upkeep_by_day ON upkeep (date, minute);

-- ---------------------------------------------------------------- whose face it fits

-- A test without an agent was measured; its factors stand in fit_exercise.
CREATE TABLE fit_record (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  kind TEXT NOT NULL CHECK (kind IN ('test', 'medical', 'training', 'hair', 'change')),
  person_id INTEGER NOT NULL REFERENCES person (id),
  date TEXT NOT NULL CHECK (date IS date(date) AND date BETWEEN '1900-01-01' AND '2199-12-31'),
  respirator_id INTEGER REFERENCES respirator (id),
  agent TEXT CHECK (length(agent) BETWEEN 1 AND 60),
  passed INTEGER CHECK (passed IN (0, 1)),
  until TEXT CHECK (until IS date(until) AND until BETWEEN date AND '2199-12-31'),
  changed TEXT CHECK (changed IN ('weight', 'dental', 'face')),
  CHECK ((kind = 'test') = (respirator_id IS NOT NULL)),
  CHECK (kind = 'test' OR agent IS NULL),
  CHECK ((agent IS NULL) = (passed IS NULL)),
  CHECK (kind = 'hair' OR until IS NULL),
  CHECK ((kind = 'change') = (changed IS NOT NULL))
) STRICT;

CREATE INDEX fit_record_by_day ON fit_record (date);

CREATE TABLE fit_exercise (
  fit_record_id INTEGER NOT NULL REFERENCES fit_record (id),
  position INTEGER NOT NULL CHECK (position >= 0),
  factor REAL NOT NULL CHECK (factor > 0 AND factor <= 10000000),
  PRIMARY KEY (fit_record_id, position)
) STRICT, WITHOUT ROWID;

-- ---------------------------------------------------------------- nothing without its record

CREATE TRIGGER respirator_inserted AFTER INSERT ON respirator
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'respirator',
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'scheme', NEW.scheme,
      'kind', NEW.kind, 'facepiece', NEW.facepiece, 'size', NEW.size, 'make', NEW.make,
      'retired_on', NEW.retired_on, 'retired_why', NEW.retired_why));
END;

CREATE TRIGGER respirator_updated AFTER UPDATE ON respirator
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'respirator',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'scheme', OLD.scheme,
      'kind', OLD.kind, 'facepiece', OLD.facepiece, 'size', OLD.size, 'make', OLD.make,
      'retired_on', OLD.retired_on, 'retired_why', OLD.retired_why),
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'scheme', NEW.scheme,
      'kind', NEW.kind, 'facepiece', NEW.facepiece, 'size', NEW.size, 'make', NEW.make,
      'retired_on', NEW.retired_on, 'retired_why', NEW.retired_why));
END;

CREATE TRIGGER respirator_deleted AFTER DELETE ON respirator
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'respirator',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'scheme', OLD.scheme,
      'kind', OLD.kind, 'facepiece', OLD.facepiece, 'size', OLD.size, 'make', OLD.make,
      'retired_on', OLD.retired_on, 'retired_why', OLD.retired_why));
END;

CREATE TRIGGER respirator_person_inserted AFTER INSERT ON respirator_person
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'respirator_person',
    json_object(
      'respirator_id', NEW.respirator_id, 'position', NEW.position, 'person_id', NEW.person_id));
END;

CREATE TRIGGER respirator_person_updated AFTER UPDATE ON respirator_person
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'respirator_person',
    json_object(
      'respirator_id', OLD.respirator_id, 'position', OLD.position, 'person_id', OLD.person_id),
    json_object(
      'respirator_id', NEW.respirator_id, 'position', NEW.position, 'person_id', NEW.person_id));
END;

CREATE TRIGGER respirator_person_deleted AFTER DELETE ON respirator_person
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'respirator_person',
    json_object(
      'respirator_id', OLD.respirator_id, 'position', OLD.position, 'person_id', OLD.person_id));
END;

CREATE TRIGGER element_inserted AFTER INSERT ON element
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'element',
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'respirator_id', NEW.respirator_id,
      'class', NEW.class, 'is_pair', NEW.is_pair, 'worn_from', NEW.worn_from,
      'opened', NEW.opened, 'sealed_until', NEW.sealed_until, 'limit_hours', NEW.limit_hours,
      'limit_mg', NEW.limit_mg, 'carbon_g', NEW.carbon_g, 'retired_on', NEW.retired_on,
      'retired_why', NEW.retired_why));
END;

CREATE TRIGGER element_updated AFTER UPDATE ON element
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'element',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'respirator_id', OLD.respirator_id,
      'class', OLD.class, 'is_pair', OLD.is_pair, 'worn_from', OLD.worn_from,
      'opened', OLD.opened, 'sealed_until', OLD.sealed_until, 'limit_hours', OLD.limit_hours,
      'limit_mg', OLD.limit_mg, 'carbon_g', OLD.carbon_g, 'retired_on', OLD.retired_on,
      'retired_why', OLD.retired_why),
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'respirator_id', NEW.respirator_id,
      'class', NEW.class, 'is_pair', NEW.is_pair, 'worn_from', NEW.worn_from,
      'opened', NEW.opened, 'sealed_until', NEW.sealed_until, 'limit_hours', NEW.limit_hours,
      'limit_mg', NEW.limit_mg, 'carbon_g', NEW.carbon_g, 'retired_on', NEW.retired_on,
      'retired_why', NEW.retired_why));
END;

CREATE TRIGGER element_deleted AFTER DELETE ON element
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'element',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'respirator_id', OLD.respirator_id,
      'class', OLD.class, 'is_pair', OLD.is_pair, 'worn_from', OLD.worn_from,
      'opened', OLD.opened, 'sealed_until', OLD.sealed_until, 'limit_hours', OLD.limit_hours,
      'limit_mg', OLD.limit_mg, 'carbon_g', OLD.carbon_g, 'retired_on', OLD.retired_on,
      'retired_why', OLD.retired_why));
END;

CREATE TRIGGER shop_filter_inserted AFTER INSERT ON shop_filter
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'shop_filter',
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'sits_on', NEW.sits_on,
      'place_id', NEW.place_id, 'counts_from', NEW.counts_from,
      'clean_every_hours', NEW.clean_every_hours, 'change_at_hours', NEW.change_at_hours,
      'gauge_clean', NEW.gauge_clean, 'gauge_change', NEW.gauge_change,
      'retired_on', NEW.retired_on, 'retired_why', NEW.retired_why));
END;

CREATE TRIGGER shop_filter_updated AFTER UPDATE ON shop_filter
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'shop_filter',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'sits_on', OLD.sits_on,
      'place_id', OLD.place_id, 'counts_from', OLD.counts_from,
      'clean_every_hours', OLD.clean_every_hours, 'change_at_hours', OLD.change_at_hours,
      'gauge_clean', OLD.gauge_clean, 'gauge_change', OLD.gauge_change,
      'retired_on', OLD.retired_on, 'retired_why', OLD.retired_why),
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'sits_on', NEW.sits_on,
      'place_id', NEW.place_id, 'counts_from', NEW.counts_from,
      'clean_every_hours', NEW.clean_every_hours, 'change_at_hours', NEW.change_at_hours,
      'gauge_clean', NEW.gauge_clean, 'gauge_change', NEW.gauge_change,
      'retired_on', NEW.retired_on, 'retired_why', NEW.retired_why));
END;

CREATE TRIGGER shop_filter_deleted AFTER DELETE ON shop_filter
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'shop_filter',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'sits_on', OLD.sits_on,
      'place_id', OLD.place_id, 'counts_from', OLD.counts_from,
      'clean_every_hours', OLD.clean_every_hours, 'change_at_hours', OLD.change_at_hours,
      'gauge_clean', OLD.gauge_clean, 'gauge_change', OLD.gauge_change,
      'retired_on', OLD.retired_on, 'retired_why', OLD.retired_why));
END;

CREATE TRIGGER upkeep_inserted AFTER INSERT ON upkeep
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'upkeep',
    json_object(
      'id', NEW.id, 'filter_id', NEW.filter_id, 'date', NEW.date, 'minute', NEW.minute,
      'what', NEW.what, 'reading', NEW.reading));
END;

CREATE TRIGGER upkeep_updated AFTER UPDATE ON upkeep
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'upkeep',
    json_object(
      'id', OLD.id, 'filter_id', OLD.filter_id, 'date', OLD.date, 'minute', OLD.minute,
      'what', OLD.what, 'reading', OLD.reading),
    json_object(
      'id', NEW.id, 'filter_id', NEW.filter_id, 'date', NEW.date, 'minute', NEW.minute,
      'what', NEW.what, 'reading', NEW.reading));
END;

CREATE TRIGGER upkeep_deleted AFTER DELETE ON upkeep
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'upkeep',
    json_object(
      'id', OLD.id, 'filter_id', OLD.filter_id, 'date', OLD.date, 'minute', OLD.minute,
      'what', OLD.what, 'reading', OLD.reading));
END;

CREATE TRIGGER fit_record_inserted AFTER INSERT ON fit_record
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'fit_record',
    json_object(
      'id', NEW.id, 'kind', NEW.kind, 'person_id', NEW.person_id, 'date', NEW.date,
      'respirator_id', NEW.respirator_id, 'agent', NEW.agent, 'passed', NEW.passed,
      'until', NEW.until, 'changed', NEW.changed));
END;

CREATE TRIGGER fit_record_updated AFTER UPDATE ON fit_record
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'fit_record',
    json_object(
      'id', OLD.id, 'kind', OLD.kind, 'person_id', OLD.person_id, 'date', OLD.date,
      'respirator_id', OLD.respirator_id, 'agent', OLD.agent, 'passed', OLD.passed,
      'until', OLD.until, 'changed', OLD.changed),
    json_object(
      'id', NEW.id, 'kind', NEW.kind, 'person_id', NEW.person_id, 'date', NEW.date,
      'respirator_id', NEW.respirator_id, 'agent', NEW.agent, 'passed', NEW.passed,
      'until', NEW.until, 'changed', NEW.changed));
END;

CREATE TRIGGER fit_record_deleted AFTER DELETE ON fit_record
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'fit_record',
    json_object(
      'id', OLD.id, 'kind', OLD.kind, 'person_id', OLD.person_id, 'date', OLD.date,
      'respirator_id', OLD.respirator_id, 'agent', OLD.agent, 'passed', OLD.passed,
      'until', OLD.until, 'changed', OLD.changed));
END;

CREATE TRIGGER fit_exercise_inserted AFTER INSERT ON fit_exercise
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'fit_exercise',
    json_object(
      'fit_record_id', NEW.fit_record_id, 'position', NEW.position, 'factor', NEW.factor));
END;

CREATE TRIGGER fit_exercise_updated AFTER UPDATE ON fit_exercise
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'fit_exercise',
    json_object(
      'fit_record_id', OLD.fit_record_id, 'position', OLD.position, 'factor', OLD.factor),
    json_object(
      'fit_record_id', NEW.fit_record_id, 'position', NEW.position, 'factor', NEW.factor));
END;

CREATE TRIGGER fit_exercise_deleted AFTER DELETE ON fit_exercise
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'fit_exercise',
    json_object(
      'fit_record_id', OLD.fit_record_id, 'position', OLD.position, 'factor', OLD.factor));
END;

PRAGMA user_version = 3;
