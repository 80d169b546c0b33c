-- What each change did, and to what, beside its sentence, so that nobody reads the sentence back
-- to find out. Sentences about a session no longer hold its number: it is the target.

ALTER TABLE change ADD COLUMN act TEXT NOT NULL DEFAULT 'changed'
  CHECK (act IN ('added', 'changed', 'removed'));
ALTER TABLE change ADD COLUMN subject TEXT NOT NULL DEFAULT 'setting'
  CHECK (subject IN (
    'session', 'stopwatch', 'favourite', 'respirator', 'element', 'shop-filter', 'upkeep',
    'fit-record', 'finish', 'sample', 'person', 'place', 'setting', 'caution', 'book', 'gear'));
ALTER TABLE change ADD COLUMN target TEXT CHECK (target <> '');

DROP TRIGGER change_stays;

-- The sentences of earlier programs, each by how it begins. An undo takes what it undoes, below.
-- A day at the end is ' on 2026-03-02', fourteen characters.
UPDATE change SET act = 'added', subject = 'session'
WHERE what GLOB 'Logged *' OR what GLOB 'logged * lines at once' OR what GLOB 'Imported * session*';
UPDATE change SET
  subject = 'session',
  target = substr(what, 17, instr(what, ' to ') - 17),
  what = 'Changed a session to ' || substr(what, instr(what, ' to ') + 4)
WHERE what GLOB 'Changed session [0-9]* to *';
UPDATE change SET
  act = 'removed',
  subject = 'session',
  target = substr(what, 17, instr(what, ', ') - 17),
  what = 'Deleted ' || substr(what, instr(what, ', ') + 2)
WHERE what GLOB 'Deleted session [0-9]*, *';
UPDATE change SET act = 'added', subject = 'respirator', target = substr(what, 22)
WHERE what GLOB 'Added the respirator *';
UPDATE change SET subject = 'respirator' WHERE what GLOB 'Gave * to *';
UPDATE change SET act = 'added', subject = 'element' WHERE what GLOB 'Added the element * to *';
UPDATE change SET subject = 'element', target = substr(what, 8, length(what) - 21)
WHERE what GLOB 'Opened * on [12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]';
UPDATE change SET subject = 'element', target = substr(what, 9, length(what) - 22)
WHERE what GLOB 'Changed * on [12][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]' AND subject = 'setting';
UPDATE change SET act = 'added', subject = 'shop-filter', target = substr(what, 18)
WHERE what GLOB 'Added the filter *';
UPDATE change SET act = 'added', subject = 'upkeep' WHERE what GLOB 'Wrote down for the filter *';
UPDATE change SET act = 'added', subject = 'fit-record'
WHERE what GLOB 'Wrote down *' AND subject = 'setting';
UPDATE change SET act = 'changed' WHERE what GLOB 'Wrote down the end of hair *';
UPDATE change SET act = 'removed', subject = 'fit-record' WHERE what GLOB 'Took out *';
UPDATE change SET act = 'added', subject = 'finish', target = substr(what, 14)
WHERE what GLOB 'Added finish *';
UPDATE change SET subject = 'finish', target = substr(what, 16) WHERE what GLOB 'Changed finish *';
UPDATE change SET subject = 'finish', target = substr(what, 20) WHERE what GLOB 'Retired the finish *';
UPDATE change SET act = 'removed', subject = 'finish', target = substr(what, 20)
WHERE what GLOB 'Deleted the finish *';
UPDATE change SET subject = 'gear' WHERE what GLOB 'Retired *' AND subject = 'setting';
UPDATE change SET act = 'removed', subject = 'gear', target = substr(what, 9)
WHERE what GLOB 'Deleted *' AND subject = 'setting';
UPDATE change SET act = 'added', subject = 'caution' WHERE what GLOB 'Set aside for *';
UPDATE change SET act = 'removed', subject = 'caution' WHERE what GLOB 'Brought back the cautions *';
UPDATE change SET act = 'added', subject = 'favourite', target = substr(what, 17)
WHERE what GLOB 'Added favourite *';
UPDATE change SET act = 'removed', subject = 'favourite', target = substr(what, 19)
WHERE what GLOB 'Removed favourite *';
UPDATE change SET act = 'added', subject = 'person', target = substr(what, 14)
WHERE what GLOB 'Added person *';
UPDATE change SET subject = 'person' WHERE what GLOB 'Renamed * to *';
UPDATE change SET act = 'added', subject = 'place', target = substr(what, 13)
WHERE what GLOB 'Added place *';
UPDATE change SET subject = 'place', target = substr(what, 9) WHERE what GLOB 'changed *';
UPDATE change SET act = 'added', subject = 'sample'
WHERE what GLOB 'Added a sample*' OR what GLOB 'Imported * sample*' OR what GLOB 'Added * samples*';
UPDATE change SET
  act = 'removed', subject = 'sample', target = substr(what, 16, instr(what, ' of ') - 16)
WHERE what GLOB 'Removed sample [0-9]* of *';
UPDATE change SET act = 'added', subject = 'stopwatch' WHERE what GLOB 'Started the stopwatch of *';
UPDATE change SET subject = 'stopwatch'
WHERE what GLOB 'Paused the stopwatch of *' OR what GLOB 'Went on with the stopwatch of *';
UPDATE change SET act = 'removed', subject = 'stopwatch'
WHERE what GLOB 'Stopped the stopwatch of *' OR what GLOB 'Threw away the stopwatch of *';
UPDATE change SET act = 'added', subject = 'book' WHERE what GLOB 'Imported the book *';

UPDATE change SET (act, subject, target, what) = (
  SELECT undone.act, undone.subject, undone.target, 'Took back: ' || undone.what
  FROM change AS undone WHERE undone.id = change.undoes)
WHERE undoes IS NOT NULL;

CREATE TRIGGER change_stays BEFORE UPDATE ON change
BEGIN
  SELECT RAISE(ABORT, 'a change is never rewritten');
END;

PRAGMA user_version = 10;
