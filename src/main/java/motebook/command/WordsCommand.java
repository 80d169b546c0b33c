package motebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.report.WordPart;
import motebook.report.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "words", description = "The words that a line understands.")
final class WordsCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Parameters(
      arity = "0..1",
      paramLabel = "KIND",
      description =
          "operations, materials, woods, controls, finishes, durations, times, names or joints;"
              + " all unless told.")
  private String kind;

  WordsCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      List<WordPart> parts = Words.of(desk.scene(book), Optional.ofNullable(kind));
      desk.answer(answer.json(), () -> Words.object(parts), () -> lines(parts));
    }
    return ExitCode.DONE;
  }

  private static List<String> lines(List<WordPart> parts) {
    List<String> lines = new ArrayList<>();
    for (WordPart part : parts) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.addAll(part.lines());
    }
    return lines;
  }
}
