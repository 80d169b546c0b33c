package motebook.screen;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.journal.Book;
import motebook.model.Action;
import motebook.model.Action.ChangeElement;
import motebook.model.Action.DiscardSpare;
import motebook.model.Action.EndHair;
import motebook.model.Action.OpenElement;
import motebook.model.Action.RecordMedical;
import motebook.model.Action.RecordSealCheck;
import motebook.model.Action.RecordTraining;
import motebook.model.Action.RecordUpkeep;
import motebook.model.Action.RemoveFitRecord;
import motebook.model.Action.WearInSession;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Training;
import motebook.model.Retirement;
import motebook.model.Upkeep;

/** Writes the actions that a yes is enough for. */
final class Doing {
  private final Book book;
  private final LocalDate today;

  Doing(Book book, LocalDate today) {
    this.book = book;
    this.today = today;
  }

  void done(Action action) {
    if (action instanceof ChangeElement change) {
      book.rack().change(change.element(), change.on(), change.minute(), false);
    } else if (action instanceof DiscardSpare discard) {
      book.retiring().retire(discard.element(), new Retirement(today, "thrown away"));
    } else if (action instanceof OpenElement open) {
      book.rack().open(open.element(), today);
    } else if (action instanceof RecordUpkeep done) {
      book.rack()
          .note(
              new Upkeep(
                  0, done.filter(), today, Optional.empty(), done.what(), OptionalDouble.empty()));
    } else if (action instanceof RecordSealCheck check) {
      book.sealChecked(check.session(), true);
    } else if (action instanceof WearInSession wear) {
      book.wore(wear.session(), wear.respirator(), false);
    } else {
      ofThePerson(action);
    }
  }

  private void ofThePerson(Action action) {
    if (action instanceof RecordMedical medical) {
      book.fits().note(new Medical(0, medical.person(), medical.on()));
    } else if (action instanceof RecordTraining training) {
      book.fits().note(new Training(0, training.person(), training.on()));
    } else if (action instanceof EndHair hair) {
      book.fits().endHair(hair.person(), hair.lastDay().orElse(today));
    } else if (action instanceof RemoveFitRecord wrong) {
      book.fits().remove(wrong.id());
    } else {
      throw new IllegalArgumentException("more than a yes is needed: " + action);
    }
  }
}
