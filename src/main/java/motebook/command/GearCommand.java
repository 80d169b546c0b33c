package motebook.command;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import motebook.desk.Allowed;
import motebook.journal.Book;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.MinuteOfDay;
import motebook.model.Refusal;
import motebook.model.Retirement;
import motebook.model.Text;
import motebook.model.Upkeep;
import motebook.reference.Masks;
import motebook.reference.Reference;
import motebook.report.GearReport;
import motebook.report.UpkeepReport;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The masks and filters of the shop. */
final class GearCommand {
  private GearCommand() {}

  static Allowed allowed() {
    return new Allowed(Masks.shipped(), Reference.shipped());
  }

  /** The command with all that hangs on it. */
  static CommandLine line(Desk desk) {
    CommandLine add =
        new CommandLine(new GearAdd.Group())
            .addSubcommand(new GearAdd.OfRespirator(desk))
            .addSubcommand(new ElementAdd(desk))
            .addSubcommand(new GearAdd.OfFilter(desk))
            .addSubcommand(new FinishCommand.Add(desk));
    return new CommandLine(new Group())
        .addSubcommand(add)
        .addSubcommand(new ListAll(desk))
        .addSubcommand(new GearClocks(desk))
        .addSubcommand(new GearGive(desk))
        .addSubcommand(new Open(desk))
        .addSubcommand(new ChangeIt(desk))
        .addSubcommand(new Retire(desk))
        .addSubcommand(new Remove(desk))
        .addSubcommand(new Tend(desk))
        .addSubcommand(new FinishCommand.ListAll(desk));
  }

  @Command(name = "gear", description = "Respirators, their elements, and the filters of the shop.")
  static final class Group extends GroupCommand {}

  @Command(name = "list", description = "Lists the masks and filters that are in use.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    @Option(names = "--all", description = "Those that were retired too.")
    private boolean all;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Gear gear = book.gear();
        GearReport report = new GearReport(allowed());
        desk.answer(answer.json(), () -> report.object(gear, all), () -> lines(report, gear));
      }
      return ExitCode.DONE;
    }

    private List<String> lines(GearReport report, Gear gear) {
      List<String> lines = report.lines(gear, all);
      return lines.isEmpty()
          ? List.of("No masks or filters yet. Add one with: motebook gear add")
          : lines;
    }
  }

  @Command(name = "open", description = "Opens a sealed element: it is on its mask from then on.")
  static final class Open implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
    private String on;

    Open(Desk desk) {
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

  @Command(
      name = "change",
      description = {
        "Retires an element and puts a fresh one of the same kind in its place. A change that was",
        "forgotten is told with its day: the fresh one is worn until the next one on record."
      })
  static final class ChangeIt implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
    private String on;

    @Option(
        names = "--at",
        paramLabel = "HH:MM",
        description = "Between the work of that day; before all of it unless told.")
    private String at;

    @Option(
        names = "--single-use",
        description = "From then on a fresh one each day, without a change being told.")
    private boolean singleUse;

    ChangeIt(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        int minute = at == null ? 0 : Times.minute("--at", at);
        desk.out().println(told(book.rack().change(name, desk.date(on), minute, singleUse)));
      }
      return ExitCode.DONE;
    }

    private String told(Element fresh) {
      String since =
          fresh.from() + (at == null ? "" : " at " + MinuteOfDay.told(fresh.fromMinute()));
      String what = fresh.singleUse() ? "a fresh one each day" : "a fresh one";
      return "Changed %s: ".formatted(fresh.name())
          + fresh
              .retired()
              .map(
                  end ->
                      "%s was on %s from %s until %s (%s)."
                          .formatted(what, fresh.respirator(), since, end.on(), end.why()))
              .orElse("%s is on %s from %s.".formatted(what, fresh.respirator(), since));
    }
  }

  @Command(name = "retire", description = "Takes a mask, an element or a filter out of use.")
  static final class Retire implements Callable<Integer> {
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

    Retire(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      LocalDate day = desk.date(on);
      try (Book book = desk.open()) {
        Retirement end = new Retirement(day, minute(day), why);
        book.retiring().retire(name, end);
        desk.out()
            .println("Retired %s on %s (%s).".formatted(Text.clean(name), end.on(), end.why()));
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

  @Command(
      name = "remove",
      description = {
        "Deletes what was added by mistake: a mask, an element, a shop filter, the data sheet of a",
        "finish. What sessions, elements, fit tests or upkeep refer to is retired instead."
      })
  static final class Remove implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    Remove(Desk desk) {
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

  @Command(
      name = "upkeep",
      description = {
        "Writes down what was done to a shop filter: cleaned, replaced, emptied, inspected, or",
        "gauge with its reading.",
        "Example: motebook gear upkeep \"collector bag\" gauge 1.4"
      })
  static final class Tend implements Callable<Integer> {
    private final Desk desk;

    @Parameters(index = "0", paramLabel = "NAME")
    private String name;

    @Parameters(index = "1", paramLabel = "WHAT")
    private String what;

    @Parameters(index = "2", arity = "0..1", paramLabel = "READING")
    private String reading;

    @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
    private String on;

    @Option(names = "--at", paramLabel = "TIME", description = "At what time, as in 17:30.")
    private String at;

    Tend(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      OptionalDouble read =
          reading == null
              ? OptionalDouble.empty()
              : OptionalDouble.of(Numbers.within("The reading", reading, -1e6, 1e6));
      try (Book book = desk.open()) {
        String filter = book.rack().filter(name).name();
        Upkeep upkeep =
            new Upkeep(0, filter, desk.date(on), Desk.optional(at).map(Tend::time), done(), read);
        book.rack().note(upkeep);
        desk.out().println(filter + ": " + UpkeepReport.told(upkeep));
      }
      return ExitCode.DONE;
    }

    private Upkeep.What done() {
      return Upkeep.What.of(what)
          .orElseThrow(
              () ->
                  new Refusal(
                      "\"%s\" is no upkeep: say %s."
                          .formatted(
                              Text.clean(what),
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
}
