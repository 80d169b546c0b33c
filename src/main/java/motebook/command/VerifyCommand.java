package motebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
    name = "verify",
    description = {
      "Checks that the book is whole: the file, its tables, every name in it, and every row against"
          + " the history of changes.",
      "A row that differs from the history was changed by a disk or by another program. Days leave"
          + " such a session out. --mend puts it back, after asking."
    })
final class VerifyCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Option(names = "--mend", description = "Put rows that differ back to what the history holds.")
  private boolean mend;

  @Option(
      names = "--keep",
      description = "Keep rows that differ as they stand, and enter them into the history.")
  private boolean keep;

  @Option(names = "--yes", description = "Do it without asking; else it is only shown.")
  private boolean yes;

  VerifyCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (mend && keep) {
      throw new Refusal("--mend and --keep are opposites; choose one.");
    }
    try (Book book = desk.open()) {
      List<String> problems = book.verify();
      if (!answer.json()) {
        problems.forEach(desk.out()::println);
      }
      Optional<Integer> rows =
          (mend || keep) && !problems.isEmpty() && wanted(book)
              ? Optional.of(keep ? book.mending().asTheyStand() : book.mending().fromHistory())
              : Optional.empty();
      List<String> left = rows.isPresent() ? book.verify() : problems;
      desk.answer(
          answer.json(),
          () ->
              Json.object("sound", left.isEmpty(), "problems", left, "mended_rows", rows.orElse(0)),
          () -> ending(book, rows, left));
      return left.isEmpty() ? ExitCode.DONE : ExitCode.BOOK;
    }
  }

  private boolean wanted(Book book) {
    int rows = book.mending().rows();
    if (rows == 0) {
      desk.world().err().println("No row differs from the history; there is nothing to put right.");
      return false;
    }
    String question =
        keep
            ? "Keep %s as %s in the book, and enter %s into the history?"
                .formatted(counted(rows), rows == 1 ? "it stands" : "they stand", them(rows))
            : "Put %s back to what the history holds?".formatted(counted(rows));
    if (!yes && !Asking.possible(desk.world())) {
      desk.world()
          .err()
          .println(
              keep
                  ? "Add --yes to keep %s and enter %s into the history."
                      .formatted(counted(rows), them(rows))
                  : "Add --yes to put %s back to what the history holds.".formatted(counted(rows)));
      return false;
    }
    return yes || Asking.yes(desk.world(), question);
  }

  private static String counted(int rows) {
    return rows == 1 ? "this row" : "these " + rows + " rows";
  }

  private static String them(int rows) {
    return rows == 1 ? "it" : "them";
  }

  private List<String> ending(Book book, Optional<Integer> rows, List<String> left) {
    List<String> lines = new ArrayList<>();
    rows.ifPresent(
        n ->
            lines.add(
                (keep ? "Kept and entered into the history: " : "Put right: ")
                    + (n == 1 ? "1 row" : n + " rows")
                    + ". To undo: "
                    + desk.program().command("undo")));
    if (left.isEmpty()) {
      lines.add("The book is whole: " + book.sessionCount() + " sessions in " + book.file());
    } else if (rows.isPresent()) {
      lines.addAll(left);
    } else if (!mend && !keep && differs(book)) {
      lines.add(
          "To put rows back to what the history holds: "
              + desk.program().command("verify --mend")
              + "; to keep them as they stand: "
              + desk.program().command("verify --keep"));
    }
    return lines;
  }

  private static boolean differs(Book book) {
    try {
      return book.mending().rows() > 0;
    } catch (motebook.journal.BookTrouble e) {
      return false;
    }
  }
}
