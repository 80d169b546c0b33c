-- Finishes: amounts used in sessions, and the owner's data sheets.

-- ---------------------------------------------------------------- taken back

-- name: restore-inserted-session_finish
DELETE FROM session_finish WHERE session_id = ?1 ->> 'session_id' AND position = ?1 ->> 'position';

-- name: restore-updated-session_finish
UPDATE session_finish SET finish = ?1 ->> 'finish', millilitres = ?1 ->> 'millilitres'
WHERE session_id = ?1 ->> 'session_id' AND position = ?1 ->> 'position';

-- name: restore-deleted-session_finish
INSERT INTO session_finish (session_id, position, finish, millilitres)
SELECT ?1 ->> 'session_id', ?1 ->> 'position', ?1 ->> 'finish', ?1 ->> 'millilitres';

-- name: restore-inserted-finish
DELETE FROM finish WHERE id = ?1 ->> 'id';

-- name: restore-updated-finish
UPDATE finish SET name = ?1 ->> 'name', folded = ?1 ->> 'folded', dries_like = ?1 ->> 'dries_like', volatile_g_per_l = ?1 ->> 'volatile_g_per_l'
WHERE id = ?1 ->> 'id';

-- name: restore-deleted-finish
INSERT INTO finish (id, name, folded, dries_like, volatile_g_per_l)
SELECT ?1 ->> 'id', ?1 ->> 'name', ?1 ->> 'folded', ?1 ->> 'dries_like', ?1 ->> 'volatile_g_per_l';

-- name: restore-inserted-finish_solvent
DELETE FROM finish_solvent WHERE finish_id = ?1 ->> 'finish_id' AND position = ?1 ->> 'position';

-- name: restore-updated-finish_solvent
UPDATE finish_solvent SET solvent = ?1 ->> 'solvent', weight_share = ?1 ->> 'weight_share'
WHERE finish_id = ?1 ->> 'finish_id' AND position = ?1 ->> 'position';

-- name: restore-deleted-finish_solvent
INSERT INTO finish_solvent (finish_id, position, solvent, weight_share)
SELECT ?1 ->> 'finish_id', ?1 ->> 'position', ?1 ->> 'solvent', ?1 ->> 'weight_share';

-- ---------------------------------------------------------------- amounts used

-- name: amount-insert
INSERT INTO session_finish (session_id, position, finish, millilitres) VALUES (?, ?, ?, ?);

-- name: days-with-finishes
SELECT DISTINCT date FROM session_finish JOIN session ON session.id = session_id;

-- name: amounts-delete
DELETE FROM session_finish WHERE session_id = ?;

-- ---------------------------------------------------------------- the owner's data sheets

-- name: finishes
SELECT
  name, dries_like, volatile_g_per_l,
  (SELECT group_concat(
     solvent || char(9) || format('%!.17g', weight_share), char(10) ORDER BY position)
   FROM finish_solvent WHERE finish_id = finish.id) AS solvents,
  (SELECT value FROM preference WHERE key = 'retired-finish:' || folded) AS retired_on
FROM finish ORDER BY id;

-- name: finish-names
SELECT id, name, folded FROM finish ORDER BY id;

-- name: finish-insert
INSERT INTO finish (name, folded, dries_like, volatile_g_per_l) VALUES (?, ?, ?, ?) RETURNING id;

-- name: finish-delete
DELETE FROM finish WHERE id = ?;

-- name: finish-in-sessions
SELECT count(*) FROM session_finish WHERE finish = ?;

-- What is retired is an owner's choice like others; the sheet itself stays as it was entered.
-- name: finish-retire
INSERT INTO preference (key, value) VALUES ('retired-finish:' || ?1, ?2)
ON CONFLICT (key) DO NOTHING;

-- name: finish-take-back
DELETE FROM preference WHERE key = 'retired-finish:' || ?1;

-- name: finish-solvent-insert
INSERT INTO finish_solvent (finish_id, position, solvent, weight_share) VALUES (?, ?, ?, ?);

-- name: finish-solvents-delete
DELETE FROM finish_solvent WHERE finish_id = ?;

-- name: finishes-not-whole
SELECT 'The shares of the finish "' || name || '" do not add to 1.'
FROM finish
WHERE abs(coalesce((SELECT sum(weight_share) FROM finish_solvent WHERE finish_id = finish.id), 0) - 1)
  > 1e-9;
