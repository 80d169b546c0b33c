package motebook.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.journal.Change;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(name = "undo", description = "Takes the last change back; again, the one before it.")
final class UndoCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  UndoCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      Optional<Change> undone = undo(book);
      desk.answer(
          answer.json(),
          () -> Json.object("undone", undone.map(Change::what).orElse(null)),
          () ->
              List.of(
                  undone
                      .map(change -> "Taken back: " + change.what())
                      .orElse("There is nothing to take back.")));
    }
    return 0;
  }

  private Optional<Change> undo(Book book) {
    try (Progress progress =
        Progress.over(desk.world(), "Taking the change back", book.changes().rowsToTakeBack())) {
      return book.changes().undo(progress::step);
    }
  }
}
