package motebook.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import motebook.journal.Deed.Subject;
import motebook.model.Action;
import motebook.model.FitRecord;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Hair;
import motebook.model.Refusal;
import motebook.model.Text;

/** Who is fit to wear what. Each method makes one change, and undo takes it back. */
public final class Fits {
  private final GearTables tables;
  private final Changes changes;
  private final People people;
  private final Today today;

  Fits(GearTables tables, Changes changes, People people, Today today) {
    this.tables = tables;
    this.changes = changes;
    this.people = people;
    this.today = today;
  }

  /**
   * Writes a record.
   *
   * @throws Refusal if the person or the respirator is unknown, a day is still to come, or hair is
   *     on record already in those days
   */
  public void note(FitRecord record) {
    today.requireCome(record.date(), done(record));
    changes.make(
        Deed.added(
            Subject.FIT_RECORD,
            record.person(),
            "Wrote down %s of %s on %s".formatted(record.told(), record.person(), record.date())),
        () -> write(record));
  }

  private void write(FitRecord record) {
    long person = people.known().idOf(record.person());
    if (record instanceof FitTest test) {
      tables
          .fits()
          .insert(test, tables.names().respirator(test.respirator(), test.date()).id(), person);
    } else {
      writePlain(record, person);
    }
  }

  private void writePlain(FitRecord record, long person) {
    if (record instanceof Hair hair) {
      write(hair, person);
    } else {
      tables.fits().insert(record, person);
    }
  }

  /** Hair from the same first day is the same hair: its end is put right. */
  private void write(Hair hair, long person) {
    hair.to().ifPresent(day -> today.requireCome(day, "shaved"));
    List<Hair> known = tables.read().fit(Hair.class, hair.person());
    Optional<Hair> same =
        known.stream().filter(other -> other.date().equals(hair.date())).findFirst();
    refuseTwice(hair, known.stream().filter(other -> !Optional.of(other).equals(same)).toList());
    same.ifPresentOrElse(
        other -> tables.fits().end(other, hair.to()), () -> tables.fits().insert(hair, person));
  }

  private static void refuseTwice(Hair hair, List<Hair> known) {
    known.stream()
        .filter(hair::overlaps)
        .findFirst()
        .ifPresent(
            other -> {
              String already =
                  "Hair under the seal of %s is on record from %s %s already."
                      .formatted(
                          other.person(),
                          other.date(),
                          other.to().map(day -> "to " + day).orElse("on"));
              throw other.to().isPresent()
                  ? new Refusal(already)
                  : new Refusal(already, new Action.EndHair(other.person(), Optional.empty()));
            });
  }

  /**
   * Ends the hair that is on record without an end.
   *
   * @param last the last day it was there
   * @throws Refusal if none is, or the day is before its first or still to come
   */
  public Hair endHair(String person, LocalDate last) {
    today.requireCome(last, "shaved");
    return changes.make(
        Deed.changed(
            Subject.FIT_RECORD,
            person,
            "Wrote down the end of hair under the seal of %s on %s".formatted(person, last)),
        () -> {
          Hair open = openHair(people.known().get(person).name());
          Hair ended = new Hair(open.id(), open.person(), open.date(), Optional.of(last));
          tables.fits().end(ended, ended.to());
          return ended;
        });
  }

  private Hair openHair(String person) {
    return tables.read().fit(Hair.class, person).stream()
        .filter(hair -> hair.to().isEmpty())
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    "No hair under the seal of %s is on record without an end."
                        .formatted(Text.clean(person))));
  }

  /**
   * Takes out a record that was wrong.
   *
   * @return what it was
   * @throws Refusal if none has the number
   */
  public FitRecord remove(long id) {
    FitRecord wrong =
        tables.read().fit().stream()
            .filter(record -> record.id() == id)
            .findFirst()
            .orElseThrow(
                () ->
                    new Refusal(
                        "The book holds no record of fit with the number %d.".formatted(id),
                        new Action.SeeFit()));
    changes.make(
        Deed.removed(
            Subject.FIT_RECORD,
            wrong.person(),
            "Took out %s of %s on %s".formatted(wrong.told(), wrong.person(), wrong.date())),
        () -> tables.fits().delete(wrong));
    return wrong;
  }

  private static String done(FitRecord record) {
    return record instanceof FitTest ? "tested" : "on record";
  }
}
