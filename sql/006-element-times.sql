-- An element may be put on or taken off in the middle of a day, and one may be for a single day.

ALTER TABLE element ADD COLUMN worn_from_minute INTEGER CHECK (worn_from_minute BETWEEN 0 AND 1440);
ALTER TABLE element ADD COLUMN retired_minute INTEGER CHECK (retired_minute BETWEEN 0 AND 1440);
ALTER TABLE element ADD COLUMN is_single_use INTEGER CHECK (is_single_use IN (0, 1));

DROP TRIGGER element_inserted;
DROP TRIGGER element_updated;
DROP TRIGGER element_deleted;

CREATE TRIGGER element_inserted AFTER INSERT ON element
BEGIN
  INSERT INTO change_row (change_id, table_name, after)
  VALUES ((SELECT change_id FROM open_change), 'element',
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'respirator_id', NEW.respirator_id,
      'class', NEW.class, 'is_pair', NEW.is_pair, 'worn_from', NEW.worn_from,
      'worn_from_minute', NEW.worn_from_minute, 'opened', NEW.opened,
      'sealed_until', NEW.sealed_until, 'limit_hours', NEW.limit_hours, 'limit_mg', NEW.limit_mg,
      'carbon_g', NEW.carbon_g, 'is_single_use', NEW.is_single_use, 'retired_on', NEW.retired_on,
      'retired_minute', NEW.retired_minute, 'retired_why', NEW.retired_why));
END;

CREATE TRIGGER element_updated AFTER UPDATE ON element
BEGIN
  INSERT INTO change_row (change_id, table_name, before, after)
  VALUES ((SELECT change_id FROM open_change), 'element',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'respirator_id', OLD.respirator_id,
      'class', OLD.class, 'is_pair', OLD.is_pair, 'worn_from', OLD.worn_from,
      'worn_from_minute', OLD.worn_from_minute, 'opened', OLD.opened,
      'sealed_until', OLD.sealed_until, 'limit_hours', OLD.limit_hours, 'limit_mg', OLD.limit_mg,
      'carbon_g', OLD.carbon_g, 'is_single_use', OLD.is_single_use, 'retired_on', OLD.retired_on,
      'retired_minute', OLD.retired_minute, 'retired_why', OLD.retired_why),
    json_object(
      'id', NEW.id, 'name', NEW.name, 'folded', NEW.folded, 'respirator_id', NEW.respirator_id,
      'class', NEW.class, 'is_pair', NEW.is_pair, 'worn_from', NEW.worn_from,
      'worn_from_minute', NEW.worn_from_minute, 'opened', NEW.opened,
      'sealed_until', NEW.sealed_until, 'limit_hours', NEW.limit_hours, 'limit_mg', NEW.limit_mg,
      'carbon_g', NEW.carbon_g, 'is_single_use', NEW.is_single_use, 'retired_on', NEW.retired_on,
      'retired_minute', NEW.retired_minute, 'retired_why', NEW.retired_why));
END;

CREATE TRIGGER element_deleted AFTER DELETE ON element
BEGIN
  INSERT INTO change_row (change_id, table_name, before)
  VALUES ((SELECT change_id FROM open_change), 'element',
    json_object(
      'id', OLD.id, 'name', OLD.name, 'folded', OLD.folded, 'respirator_id', OLD.respirator_id,
      'class', OLD.class, 'is_pair', OLD.is_pair, 'worn_from', OLD.worn_from,
      'worn_from_minute', OLD.worn_from_minute, 'opened', OLD.opened,
      'sealed_until', OLD.sealed_until, 'limit_hours', OLD.limit_hours, 'limit_mg', OLD.limit_mg,
      'carbon_g', OLD.carbon_g, 'is_single_use', OLD.is_single_use, 'retired_on', OLD.retired_on,
      'retired_minute', OLD.retired_minute, 'retired_why', OLD.retired_why));
END;

PRAGMA user_version = 6;
