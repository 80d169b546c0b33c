-- Measured air results. Runs inside one transaction, which the last line ends with the version it
-- leads to.

-- Either a weighed filter (mass, blank, flow, limit of detection) or a concentration as it was
-- told, with whether it is only known to lie below.
CREATE TABLE sample (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  person_id INTEGER NOT NULL REFERENCES person (id),
  date TEXT NOT NULL CHECK (date IS date(date) AND date BETWEEN '1900-01-01' AND '2199-12-31'),
  from_minute INTEGER NOT NULL CHECK (from_minute BETWEEN 0 AND 1439),
  to_minute INTEGER NOT NULL CHECK (to_minute BETWEEN 1 AND 1440),
  fraction TEXT NOT NULL CHECK (fraction IN ('inhalable', 'respirable', 'total')),
  kind TEXT NOT NULL CHECK (kind IN ('gravimetric', 'direct-reading')),
  mg REAL CHECK (mg BETWEEN -1000 AND 100000),
  blank_mg REAL CHECK (blank_mg BETWEEN -1000 AND 100000),
  litres_per_min REAL CHECK (litres_per_min BETWEEN 0.01 AND 1000),
  detection_limit_mg REAL CHECK (detection_limit_mg BETWEEN 0 AND 1000),
  mg_per_m3 REAL CHECK (mg_per_m3 > 0 AND mg_per_m3 <= 1000000),
  below_detection INTEGER CHECK (below_detection IN (0, 1)),
  cv REAL NOT NULL CHECK (cv BETWEEN 0.01 AND 2),
  note TEXT NOT NULL CHECK (length(note) <= 1000),
  CHECK (from_minute < to_minute),
  CHECK ((mg IS NULL) = (blank_mg IS NULL)),
  CHECK ((mg IS NULL) = (litres_per_min IS NULL)),
  CHECK ((mg IS NULL) = (detection_limit_mg IS NULL)),
  CHECK ((mg IS NULL) = (mg_per_m3 IS NOT NULL)),
  CHECK ((mg_per_m3 IS NULL) = (below_detection IS NULL))
) STRICT;

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
      'below_detection', NEW.below_detection, 'cv', NEW.cv, 'note', NEW.note));
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
      'below_detection', OLD.below_detection, 'cv', OLD.cv, 'note', OLD.note),
    json_object(
      'id', NEW.id, 'person_id', NEW.person_id, 'date', NEW.date, 'from_minute', NEW.from_minute,
      'to_minute', NEW.to_minute, 'fraction', NEW.fraction, 'kind', NEW.kind, 'mg', NEW.mg,
      'blank_mg', NEW.blank_mg, 'litres_per_min', NEW.litres_per_min,
      'detection_limit_mg', NEW.detection_limit_mg, 'mg_per_m3', NEW.mg_per_m3,
      'below_detection', NEW.below_detection, 'cv', NEW.cv, 'note', NEW.note));
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
      'below_detection', OLD.below_detection, 'cv', OLD.cv, 'note', OLD.note));
END;

PRAGMA user_version = 5;
