-- Outdoors the tool and the body rule the air at the face, not the wind. The figures that the words
-- still, light air, light breeze and gentle breeze gave before become those they give now, in the
-- yard of a fresh book too; figures of a shop's own stay. The history says so, in a change that the
-- program made and no undo takes back. Runs inside one transaction, which the last line ends with
-- the version it leads to.

-- The version of the book whose step made a change; NULL where a person asked for it.
ALTER TABLE change ADD COLUMN step INTEGER CHECK (step > 0);

DROP TRIGGER place_version_updated;

CREATE TABLE outdoor_air (was REAL PRIMARY KEY, becomes REAL NOT NULL) STRICT;
INSERT INTO outdoor_air (was, becomes) VALUES (60, 15), (150, 20), (270, 30);

-- A book without a history is a fresh one: it begins with the new figure.
INSERT INTO change (at, what, step, act, subject)
SELECT
  strftime('%Y-%m-%dT%H:%M:%fZ', 'now'),
  'The air at the face outdoors is estimated in a new way'
    || coalesce(': ' || (
      SELECT group_concat(said, ', ') FROM (
        SELECT DISTINCT
          place.name || ' ' || printf('%g', was) || ' to ' || printf('%g', becomes) || ' m/min'
            AS said
        FROM place_version
        JOIN place ON place.id = place_version.place_id
        JOIN outdoor_air ON was = air_speed_m_per_min
        WHERE kind = 'outdoors'
        ORDER BY place.id)), ''),
  11, 'changed', 'place'
WHERE EXISTS (SELECT 1 FROM change);

INSERT INTO open_change (id, change_id) SELECT 1, id FROM change WHERE step = 11;

INSERT INTO change_row (change_id, table_name, before, after)
SELECT
  change.id, 'place_version',
  json_object(
    'id', old.id, 'place_id', old.place_id, 'valid_from', old.valid_from, 'kind', old.kind,
    'air_speed_m_per_min', old.air_speed_m_per_min, 'volume_m3', old.volume_m3,
    'air_changes_per_hour', old.air_changes_per_hour,
    'open_air_changes_per_hour', old.open_air_changes_per_hour,
    'cleaner_flow_m3_per_min', old.cleaner_flow_m3_per_min,
    'fan_flow_m3_per_min', old.fan_flow_m3_per_min,
    'cleaner_run_on_minutes', old.cleaner_run_on_minutes),
  json_object(
    'id', old.id, 'place_id', old.place_id, 'valid_from', old.valid_from, 'kind', old.kind,
    'air_speed_m_per_min', becomes, 'volume_m3', old.volume_m3,
    'air_changes_per_hour', old.air_changes_per_hour,
    'open_air_changes_per_hour', old.open_air_changes_per_hour,
    'cleaner_flow_m3_per_min', old.cleaner_flow_m3_per_min,
    'fan_flow_m3_per_min', old.fan_flow_m3_per_min,
    'cleaner_run_on_minutes', old.cleaner_run_on_minutes)
FROM place_version AS old
JOIN outdoor_air ON was = old.air_speed_m_per_min
JOIN change ON step = 11
WHERE kind = 'outdoors'
ORDER BY old.id;

DELETE FROM open_change;

UPDATE place_version
SET air_speed_m_per_min = (SELECT becomes FROM outdoor_air WHERE was = air_speed_m_per_min)
WHERE kind = 'outdoors' AND air_speed_m_per_min IN (SELECT was FROM outdoor_air);

DROP TABLE outdoor_air;

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

PRAGMA user_version = 11;
