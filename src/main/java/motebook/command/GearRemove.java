package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Text;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "remove",
    description = {
      "Deletes what was added by mistake: a mask, an element, a shop filter, the data sheet of a",
      "finish. What sessions, elements, fit tests or upkeep refer to is retired instead."
    })
final class GearRemove implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "NAME")
  private String name;

  GearRemove(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      boolean finish = book.finishes().holds(name) && !book.gear().holds(name);
      desk.out().println(finish ? finish(book) : rack(book));
    }
    return ExitCode.DONE;
  }

  private String rack(Book book) {
    return book.retiring().delete(name, desk.today())
        ? "Deleted " + Text.clean(name) + "."
        : "The book refers to %s, so it was retired on %s instead of deleted."
            .formatted(Text.clean(name), desk.today());
  }

  private String finish(Book book) {
    String sheet = Text.clean(name);
    return switch (book.finishes().remove(name, desk.today())) {
      case DELETED -> "Deleted the data sheet of " + sheet + ".";
      case SHIPPED_AGAIN ->
          "Deleted the data sheet of %s: the shipped figures count again, on past days too."
              .formatted(sheet);
      case RETIRED ->
          "Sessions used %s, so it was retired on %s instead of deleted: they stay as they are, work after that day cannot use it."
              .formatted(sheet, desk.today());
    };
  }
}
