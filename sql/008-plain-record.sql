-- The record of changes without a check of its images: before SQLite 3.41, json_valid(NULL) is 0,
-- not NULL, so an older program's integrity check complains of every row. The triggers write nothing
-- but JSON; an image that a disk has damaged is copied as it is, and verify reports it.
-- The old table is renamed under the older rule, which leaves the triggers of the data tables
-- alone: they go on naming change_row.

DROP TRIGGER change_row_needs_the_open_change;
DROP TRIGGER change_row_stays;
DROP TRIGGER change_row_is_kept;
DROP INDEX change_row_by_change;

PRAGMA legacy_alter_table = ON;
ALTER TABLE change_row RENAME TO change_row_until_8;
PRAGMA legacy_alter_table = OFF;

CREATE TABLE change_row (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  change_id INTEGER NOT NULL REFERENCES change (id),
  table_name TEXT NOT NULL,
  before TEXT,
  after TEXT,
  CHECK (before IS NOT NULL OR after IS NOT NULL)
) STRICT;

INSERT INTO change_row (id, change_id, table_name, before, after)
SELECT id, change_id, table_name, before, after FROM change_row_until_8 ORDER BY id;

DROP TABLE change_row_until_8;

CREATE INDEX change_row_by_change ON change_row (change_id);

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

PRAGMA user_version = 8;
