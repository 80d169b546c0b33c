-- Rows held against the history. Which columns a table has is asked of the table itself, so that a
-- new one needs nothing here. Where damage made bytes of a text, the bytes are shown.

-- name: recorded-tables
SELECT tbl_name FROM sqlite_schema
WHERE type = 'trigger' AND name = tbl_name || '_inserted' ORDER BY tbl_name;

-- The text of the statement that holds the rows of the table ?1 against their last images; with ?2,
-- of one row and what belongs to it alone. It answers, for each row that is not the same text as
-- its image: the row now, null where there is none; its image, null where the history holds no row;
-- whether the history knows the row; and what stands in columns that the image is older than.
-- name: row-check-text
WITH part AS (
  SELECT
    group_concat(iif(pk, 'coalesce(after, before) ->> ' || quote(name), NULL), ', ') AS image_keys,
    group_concat(iif(pk, 'coalesce(after, before) ->> ' || quote(name) || ' AS k' || pk, NULL), ', ')
      AS named_keys,
    group_concat(iif(pk, '"' || name || '" AS k' || pk, NULL), ', ') AS row_keys,
    group_concat(iif(pk, 'k' || pk, NULL), ' || ''/'' || ') AS shown_key,
    group_concat(iif(pk, 'known.k' || pk || ' = +row.k' || pk, NULL), ' AND ') AS same_key,
    group_concat(iif(pk, 'there."' || name || '" = k' || pk, NULL), ' AND ') AS there,
    max(iif(pk = 1, '"' || name || '"', NULL)) AS owner,
    group_concat(
      quote(name) || ', iif(typeof("' || name || '") = ''blob'', ''bytes '' || hex("' || name
      || '"), "' || name || '")', ', ') AS cells,
    group_concat(quote(name) || ', ' || coalesce(dflt_value, 'NULL'), ', ') AS defaults
  FROM pragma_table_info(?1))
SELECT
  'WITH known AS MATERIALIZED (
    SELECT ' || named_keys || ', after FROM change_row WHERE id IN (
      SELECT max(id) FROM change_row WHERE table_name = ' || quote(?1) || iif(?2,
        ' AND CASE WHEN json_valid(coalesce(after, before)) THEN coalesce(
          json_extract(coalesce(after, before), ''$.id''),
          json_extract(coalesce(after, before), ''$.session_id'')) END = ?1', '')
    || ' GROUP BY ' || image_keys || '))
  SELECT ' || replace(shown_key, 'k', 'row.k') || ' AS key, row.image AS now, known.after AS past,
    known.k1 IS NOT NULL AS known, json_object(' || defaults || ') AS defaults
  FROM (
    SELECT json_object(' || cells || ') AS image, ' || row_keys || '
    FROM "' || ?1 || '" NOT INDEXED' || iif(?2, ' WHERE ' || owner || ' = ?1', '') || ') AS row
  LEFT JOIN known ON ' || same_key || '
  WHERE row.image IS NOT known.after
  UNION ALL
  SELECT ' || shown_key || ', NULL, after, 1, ''{}''
  FROM known
  WHERE after IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM "' || ?1 || '" AS there WHERE ' || there || ')
  ORDER BY 1;'
FROM part;

-- name: row-is-known
SELECT EXISTS (
  SELECT 1 FROM change_row
  WHERE table_name = ? AND CASE WHEN json_valid(coalesce(after, before)) THEN coalesce(
      json_extract(coalesce(after, before), '$.id'),
      json_extract(coalesce(after, before), '$.session_id')) END = ?);

-- name: unreadable-history
SELECT count(*) FROM change_row
WHERE NOT json_valid(coalesce(before, '{}')) OR NOT json_valid(coalesce(after, '{}'));

-- name: defer-foreign-keys
PRAGMA defer_foreign_keys = ON;

-- name: indexes-again
REINDEX;

-- ---------------------------------------------------------------- keys of the shipped tables

-- name: limit-set
SELECT limit_set FROM setting;

-- name: element-classes
SELECT DISTINCT class FROM element ORDER BY class;
