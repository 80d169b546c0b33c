package motebook.command;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.journal.Change;
import motebook.journal.Deed;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "history", description = "What was changed in the book and when, newest first.")
final class HistoryCommand implements Callable<Integer> {
  private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
  private final Desk desk;
  @Mixin private Answer answer;

  @Option(
      names = "--last",
      paramLabel = "N",
      defaultValue = "20",
      description = "How many changes, 20 unless told.")
  private int last;

  HistoryCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      List<Change> changes = book.changes().history(Math.max(1, last));
      desk.answer(
          answer.json(),
          () -> Json.object("changes", changes.stream().map(HistoryCommand::object).toList()),
          () ->
              changes.isEmpty()
                  ? List.of("Nothing was changed yet.")
                  : changes.stream().map(this::line).toList());
    }
    return 0;
  }

  private static Map<String, Object> object(Change change) {
    return Json.object(
        "id", change.id(),
        "at", change.at().toString(),
        "what", change.what(),
        "act", change.deed().act().key(),
        "subject", change.deed().subject().key(),
        "target", change.deed().target().isEmpty() ? null : change.deed().target(),
        "undoes", change.undoes().orElse(null),
        "taken_back", change.undone());
  }

  // A session goes by its number here, and by its time on the screens.
  private static String told(Deed deed) {
    return deed.subject() == Deed.Subject.SESSION && !deed.target().isEmpty()
        ? deed.words() + " [session " + deed.target() + "]"
        : deed.words();
  }

  private String line(Change change) {
    return STAMP.format(change.at().atZone(desk.clock().getZone()))
        + "  "
        + told(change.deed())
        + (change.undone() ? " (taken back)" : "");
  }
}
