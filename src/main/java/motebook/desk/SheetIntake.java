package motebook.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.LongConsumer;
import motebook.entry.Scene;
import motebook.entry.SessionSheet;
import motebook.entry.SheetDateOrder;
import motebook.entry.SheetFault;
import motebook.entry.SheetText;
import motebook.journal.Book;
import motebook.model.Session;
import motebook.model.Work;

/**
 * A hand-made sheet held against a book.
 *
 * @param rows how many the sheet has, blank ones left out
 * @param fresh what is not in the book yet, in the order of the sheet
 * @param known how many rows are in the book already
 * @param repeated how many say the same as an earlier row
 * @param faults what is wrong, by line; nothing is logged while there is any
 * @param remarks what was passed over or guessed
 */
public record SheetIntake(
    int rows,
    List<Work> fresh,
    int known,
    int repeated,
    List<SheetFault> faults,
    List<String> remarks) {

  /**
   * Reads a sheet and holds it against the book; nothing is written.
   *
   * @param order of dates with slashes, if it was said
   * @param upTo told again and again how many characters of the sheet are read
   * @throws motebook.model.Refusal if it has no header that can be understood, or is no CSV
   */
  public static SheetIntake of(
      Book book, Scene scene, SheetText sheet, Optional<SheetDateOrder> order, LongConsumer upTo) {
    Scene cached = scene.with(new PlaceDays(book, scene.now().toLocalDate()));
    SessionSheet.Contents contents = SessionSheet.read(sheet, cached, order, upTo);
    return new SheetCheck(book, contents).intake();
  }

  /** Whether it may be logged. */
  public boolean sound() {
    return faults.isEmpty();
  }

  /**
   * Logs what is new as one change.
   *
   * @param what the change in words
   * @param written told how many are written, now and then
   */
  public List<Session> log(Book book, String what, IntConsumer written) {
    if (!sound()) {
      throw new IllegalStateException("a sheet with faults is not logged");
    }
    return fresh.isEmpty() ? List.of() : book.logAll(fresh, what, written);
  }
}
