package motebook.command;

import java.util.List;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(name = "verify", description = "Checks that the book is whole.")
final class VerifyCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  VerifyCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      List<String> problems = book.verify();
      desk.answer(
          answer.json(),
          () -> Json.object("sound", problems.isEmpty(), "problems", problems),
          () ->
              problems.isEmpty()
                  ? List.of(
                      "The book is whole: " + book.sessionCount() + " sessions in " + book.file())
                  : problems);
      return problems.isEmpty() ? 0 : ExitCode.BOOK;
    }
  }
}
