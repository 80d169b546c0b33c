package motebook.command;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.model.Upkeep;
import motebook.report.UpkeepReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "upkeep",
    description = {
      "Records what was done to a shop filter: cleaned, replaced, emptied, inspected, or",
      "gauge with its reading.",
      "Example: motebook gear upkeep \"collector bag\" gauge 1.4"
    })
final class GearUpkeep implements Callable<Integer> {
  private final Desk desk;

  @Parameters(index = "0", paramLabel = "NAME")
  private String name;

  @Parameters(index = "1", paramLabel = "WHAT")
  private String deed;

  @Parameters(index = "2", arity = "0..1", paramLabel = "READING")
  private String reading;

  @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
  private String on;

  @Option(names = "--at", paramLabel = "TIME", description = "At what time, as in 17:30.")
  private String at;

  @Mixin private Outcome outcome;

  GearUpkeep(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    OptionalDouble read =
        reading == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(Numbers.within("The reading", reading, -1e6, 1e6));
    Upkeep.What what = done();
    if (outcome.given() && what != Upkeep.What.INSPECTED) {
      throw new Refusal("Only an examination has a --result; leave it out.");
    }
    boolean passed = outcome.passed();
    try (Book book = desk.open()) {
      String filter = book.rack().filter(name).name();
      if (!passed) {
        desk.out()
            .println(
                filter
                    + ": the examination was not passed, so it stays due. Nothing is recorded;"
                    + " record it once what was found is put right.");
        return ExitCode.DONE;
      }
      Upkeep upkeep =
          new Upkeep(0, filter, desk.date(on), Desk.optional(at).map(GearUpkeep::time), what, read);
      book.rack().note(upkeep);
      desk.out().println(filter + ": " + UpkeepReport.told(upkeep));
    }
    return ExitCode.DONE;
  }

  private Upkeep.What done() {
    return Upkeep.What.of(deed)
        .orElseThrow(
            () ->
                new Refusal(
                    "\"%s\" is no upkeep: say %s."
                        .formatted(
                            Text.clean(deed),
                            String.join(
                                ", ",
                                Arrays.stream(Upkeep.What.values())
                                    .map(Upkeep.What::key)
                                    .toList()))));
  }

  private static LocalTime time(String text) {
    try {
      return LocalTime.parse(text.length() == 4 ? "0" + text : text);
    } catch (DateTimeParseException e) {
      throw new Refusal("\"" + Text.clean(text) + "\" is no time of day: say it as 17:30.");
    }
  }
}
