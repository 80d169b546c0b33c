package motebook.command;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.FitRecord.Hair;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
    name = "hair",
    description = {
      "There is hair under the seal, from a day on, perhaps to a last day.",
      "With --to alone, the hair that is on record ends."
    })
final class FitHair implements Callable<Integer> {
  private final Desk desk;

  @Option(
      names = "--person",
      paramLabel = "PERSON",
      description = "Whose; the book's own person unless told.")
  private String person;

  @Option(names = "--from", paramLabel = "DATE", description = "First day; today unless told.")
  private String from;

  @Option(names = "--to", paramLabel = "DATE", description = "Last day, if it is gone.")
  private String to;

  FitHair(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      String whose = desk.person(person, book);
      Optional<LocalDate> last = Desk.optional(to).map(desk::date);
      if (from == null && last.isPresent()) {
        Hair ended = book.fits().endHair(whose, last.get());
        desk.out()
            .println(
                "Hair under the seal of %s was there from %s to %s."
                    .formatted(ended.person(), ended.date(), last.get()));
      } else {
        FitCommand.note(new Hair(0, whose, desk.date(from), last), desk, book);
      }
    }
    return ExitCode.DONE;
  }
}
