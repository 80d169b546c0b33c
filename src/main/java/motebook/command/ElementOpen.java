package motebook.command;

import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Element;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "open", description = "Opens a sealed element: it is on its mask from then on.")
final class ElementOpen implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "NAME")
  private String name;

  @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
  private String on;

  ElementOpen(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      Element open = book.rack().open(name, desk.date(on));
      desk.out()
          .println(
              "Opened %s on %s: it is on %s now."
                  .formatted(open.name(), open.from(), open.respirator()));
    }
    return ExitCode.DONE;
  }
}
