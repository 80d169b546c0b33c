package motebook.command;

import java.time.LocalDate;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Retirement;
import motebook.model.Text;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "retire", description = "Takes a mask, an element or a filter out of use.")
final class GearRetire implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "NAME")
  private String name;

  @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
  private String on;

  @Option(
      names = "--because",
      paramLabel = "WHY",
      defaultValue = "no longer used",
      description = "damaged, soiled, \"hard to breathe\", …")
  private String why;

  @Option(
      names = "--at",
      paramLabel = "HH:MM",
      description = "Of an element: from when on; today from now, else all of that day.")
  private String at;

  GearRetire(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    LocalDate day = desk.date(on);
    try (Book book = desk.open()) {
      Retirement end = new Retirement(day, minute(day), why);
      book.retiring().retire(name, end);
      desk.out().println("Retired %s on %s (%s).".formatted(Text.clean(name), end.on(), end.why()));
    }
    return ExitCode.DONE;
  }

  // what was done this morning was done with it on
  private int minute(LocalDate day) {
    if (at != null) {
      return Times.minute("--at", at);
    }
    return day.equals(desk.today()) ? desk.minuteNow() : 0;
  }
}
