-- The history of one row, found without reading all of it: by the row's own number, or by that of
-- the session it belongs to; an image that cannot be read stands under no number. Runs inside one
-- transaction, which the last line ends with the version it leads to.

CREATE INDEX change_row_by_row ON change_row (
  table_name,
  CASE WHEN json_valid(coalesce(after, before)) THEN coalesce(
    json_extract(coalesce(after, before), '$.id'),
    json_extract(coalesce(after, before), '$.session_id')) END);

PRAGMA user_version = 9;
