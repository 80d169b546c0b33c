-- What the result of a sample may be used for. Runs inside one transaction, which the last line
-- ends with the version it leads to.

-- The table is written again, since its checks change. A sample without a place is a personal one;
-- with a place it hung in that room and is compared with the room's air. A factor corrects a
-- meter's reading against a weighed filter. A relative result teaches nothing, and a channel that
-- is called by a particle size is always relative. A result of two hours and more may stand for
-- the whole shift.
CREATE TABLE sample_new (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person_id INTEGER NOT NULL REFERENCES person (id),
  date TEXT NOT NULL CHECK (date IS date(date) AND date BETWEEN '1900-01-01' AND '2199-12-31'),
  from_minute INTEGER NOT NULL CHECK (from_minute BETWEEN 0 AND 1439),
  to_minute INTEGER NOT NULL CHECK (to_minute BETWEEN 1 AND 1440),
  fraction TEXT NOT NULL
    CHECK (fraction IN ('inhalable', 'respirable', 'total', 'PM1', 'PM2.5', 'PM4', 'PM10')),
  kind TEXT NOT NULL CHECK (kind IN ('gravimetric', 'direct-reading')),
  mg REAL CHECK (mg BETWEEN -1000 AND 100000),
  blank_mg REAL CHECK (blank_mg BETWEEN -1000 AND 100000),
  litres_per_min REAL CHECK (litres_per_min BETWEEN 0.01 AND 1000),
  detection_limit_mg REAL CHECK (detection_limit_mg BETWEEN 0 AND 1000),
  mg_per_m3 REAL CHECK (mg_per_m3 > 0 AND mg_per_m3 <= 1000000),
  below_detection INTEGER CHECK (below_detection IN (0, 1)),
  cv REAL NOT NULL CHECK (cv BETWEEN 0.01 AND 2),
  note TEXT NOT NULL CHECK (length(note) <= 1000),
  place_id INTEGER REFERENCES place (id),
  factor REAL CHECK (factor BETWEEN 0.01 AND 100),
  relative INTEGER NOT NULL DEFAULT 0 CHECK (relative IN (0, 1)),
  whole_shift INTEGER NOT NULL DEFAULT 0 CHECK (whole_shift IN (0, 1)),
  CHECK (from_minute < to_minute),
  CHECK ((mg IS NULL) = (blank_mg IS NULL)),
  CHECK ((mg IS NULL) = (litres_per_min IS NULL)),
  CHECK ((mg IS NULL) = (detection_limit_mg IS NULL)),
  CHECK ((mg IS NULL) = (mg_per_m3 IS NOT NULL)),
  CHECK ((mg_per_m3 IS NULL) = (below_detection IS NULL)),
  CHECK (factor IS NULL OR kind = 'direct-reading'),
  CHECK (relative = 1 OR fraction IN ('inhalable', 'respirable', 'total')),
  CHECK (
    whole_shift = 0 OR (to_minute - from_minute >= 120 AND place_id IS NULL AND relative = 0))
) STRICT;

-- A number that a removed sample had is not given again.
INSERT INTO sqlite_sequence (name, seq)
SELECT 'sample_new', seq FROM sqlite_sequence WHERE name = 'sample';

INSERT INTO sample_new (
  id, person_id, date, from_minute, to_minute, fraction, kind, mg, blank_mg, litres_per_min,
  detection_limit_mg, mg_per_m3, below_detection, cv, note)
SELECT
  id, person_id, date, from_minute, to_minute, fraction, kind, mg, blank_mg, litres_per_min,
  detection_limit_mg, mg_per_m3, below_detection, cv, note
FROM sample;

-- Without its triggers: dropping a table first deletes its rows, which no open change records.
DROP TRIGGER sample_deleted;
DROP TABLE sample;
ALTER TABLE sample_new RENAME TO sample;

CREATE INDEX sample_by_day ON sample (date, from_minute);

-- ---------------------------------------------------------------- nothing without its record

CREATE TRIGGER sample_inserted AFTER INSERT ON sample
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'sample',
    json_object(
      'id', NEW.id, 'person_id', NEW.person_id, 'date', NEW.date, 'from_minute', NEW.from_minute,
      'to_minute', NEW.to_minute, 'fraction', NEW.fraction, 'kind', NEW.kind, 'mg', NEW.mg,
      'blank_mg', NEW.blank_mg, 'litres_per_min', NEW.litres_per_min,
      'detection_limit_mg', NEW.detection_limit_mg, 'mg_per_m3', NEW.mg_per_m3,
      'below_detection', NEW.below_detection, 'cv', NEW.cv, 'note', NEW.note,
      'place_id', NEW.place_id, 'factor', NEW.factor, 'relative', NEW.relative,
      'whole_shift', NEW.whole_shift));
END;

CREATE TRIGGER sample_updated AFTER UPDATE ON sample
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'sample',
    json_object(
      'id', OLD.id, 'person_id', OLD.person_id, 'date', OLD.date, 'from_minute', OLD.from_minute,
      'to_minute', OLD.to_minute, 'fraction', OLD.fraction, 'kind', OLD.kind, 'mg', OLD.mg,
      'blank_mg', OLD.blank_mg, 'litres_per_min', OLD.litres_per_min,
      'detection_limit_mg', OLD.detection_limit_mg, 'mg_per_m3', OLD.mg_per_m3,
      'below_detection', OLD.below_detection, 'cv', OLD.cv, 'note', OLD.note,
      'place_id', OLD.place_id, 'factor', OLD.factor, 'relative', OLD.relative,
      'whole_shift', OLD.whole_shift),
    json_object(
      'id', NEW.id, 'person_id', NEW.person_id, 'date', NEW.date, 'from_minute', NEW.from_minute,
      'to_minute', NEW.to_minute, 'fraction', NEW.fraction, 'kind', NEW.kind, 'mg', NEW.mg,
      'blank_mg', NEW.blank_mg, 'litres_per_min', NEW.litres_per_min,
      'detection_limit_mg', NEW.detection_limit_mg, 'mg_per_m3', NEW.mg_per_m3,
      'below_detection', NEW.below_detection, 'cv', NEW.cv, 'note', NEW.note,
      'place_id', NEW.place_id, 'factor', NEW.factor, 'relative', NEW.relative,
      'whole_shift', NEW.whole_shift));
END;

CREATE TRIGGER sample_deleted AFTER DELETE ON sample
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'sample',
    json_object(
      'id', OLD.id, 'person_id', OLD.person_id, 'date', OLD.date, 'from_minute', OLD.from_minute,
      'to_minute', OLD.to_minute, 'fraction', OLD.fraction, 'kind', OLD.kind, 'mg', OLD.mg,
      'blank_mg', OLD.blank_mg, 'litres_per_min', OLD.litres_per_min,
      'detection_limit_mg', OLD.detection_limit_mg, 'mg_per_m3', OLD.mg_per_m3,
      'below_detection', OLD.below_detection, 'cv', OLD.cv, 'note', OLD.note,
      'place_id', OLD.place_id, 'factor', OLD.factor, 'relative', OLD.relative,
      'whole_shift', OLD.whole_shift));
END;

PRAGMA user_version = 12;
