package motebook.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.entry.SheetDateOrder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "import",
    description = {
      "Reads a sheet of sessions kept by hand (CSV), shows what it would write, and writes it.",
      "Columns in any order: date, start, end or minutes, operation, material, controls, place,"
          + " person, respirator, checked, worn %%, using, note.",
      "Example: motebook import sessions.csv --yes"
    })
final class ImportCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Parameters(paramLabel = "FILE", description = "The file, - for standard input.")
  private Path file;

  @Option(names = "--yes", description = "Write without asking; else it is only shown.")
  private boolean yes;

  @Option(
      names = "--dates",
      paramLabel = "ORDER",
      description = "day-first or month-first, for dates with slashes.")
  private String dates;

  ImportCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Optional<SheetDateOrder> order = SessionsImport.order(Optional.ofNullable(dates));
    return new SessionsImport(desk, file, order, yes, answer.json()).run();
  }
}
