package motebook.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import motebook.journal.Book;
import motebook.model.FitRecord;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Training;
import motebook.report.FitReport;
import motebook.report.Json;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Who is fit to wear what. */
final class FitCommand {
  private FitCommand() {}

  /** The command with all that hangs on it. */
  static CommandLine line(Desk desk) {
    return new CommandLine(new Group())
        .addSubcommand(new FitTestCommand(desk))
        .addSubcommand(new OfMedical(desk))
        .addSubcommand(new OfTraining(desk))
        .addSubcommand(new FitHair(desk))
        .addSubcommand(new FitChange(desk))
        .addSubcommand(new FitChecked(desk))
        .addSubcommand(new FitWore(desk))
        .addSubcommand(new FitRemove(desk))
        .addSubcommand(new ListAll(desk));
  }

  @Command(
      name = "fit",
      description = "Fit tests, medical clearance, training, and what changed a face.")
  static final class Group extends GroupCommand {}

  /** Whom and when a record is about. */
  static final class WhoAndWhen {
    @Option(
        names = "--person",
        paramLabel = "PERSON",
        description = "Whom; the book's own person unless told.")
    private String person;

    @Option(names = "--on", paramLabel = "DATE", description = "When; today unless told.")
    private String on;

    String person(Desk desk, Book book) {
      return desk.person(person, book);
    }

    LocalDate on(Desk desk) {
      return desk.date(on);
    }
  }

  /** Writes a record and says it back. */
  static void note(FitRecord record, Desk desk, Book book) {
    book.fits().note(record);
    desk.out()
        .println("Wrote down: " + new FitReport(GearCommand.allowed(), book.gear()).line(record));
  }

  /** A record of a person and a day, and nothing more. */
  abstract static class Dated implements Callable<Integer> {
    private final Desk desk;
    private final BiFunction<String, LocalDate, FitRecord> made;
    @Mixin private WhoAndWhen who;

    Dated(Desk desk, BiFunction<String, LocalDate, FitRecord> made) {
      this.desk = desk;
      this.made = made;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        note(made.apply(who.person(desk, book), who.on(desk)), desk, book);
      }
      return ExitCode.DONE;
    }
  }

  @Command(
      name = "medical",
      description = {
        "A medical evaluation cleared somebody for wearing a respirator.",
        "One that did not is not recorded: nothing here asks about anybody's health."
      })
  static final class OfMedical extends Dated {
    private final Desk desk;
    @Mixin private Outcome outcome;

    OfMedical(Desk desk) {
      super(desk, (person, date) -> new Medical(0, person, date));
      this.desk = desk;
    }

    @Override
    public Integer call() {
      if (outcome.passed()) {
        return super.call();
      }
      desk.out()
          .println("Nothing is recorded. Until a doctor has cleared you, wear no respirator.");
      return ExitCode.DONE;
    }
  }

  @Command(name = "training", description = "Somebody was trained in wearing a respirator.")
  static final class OfTraining extends Dated {
    OfTraining(Desk desk) {
      super(desk, (person, date) -> new Training(0, person, date));
    }
  }

  @Command(name = "list", description = "Lists what is on record, oldest first.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    @Option(
        names = "--person",
        paramLabel = "PERSON",
        description = "Only what is on record of somebody.")
    private String person;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Optional<String> whose = Desk.optional(person).map(name -> desk.person(name, book));
        FitReport report = new FitReport(GearCommand.allowed(), book.gear());
        List<FitRecord> records =
            book.gear().fit().stream()
                .filter(record -> whose.map(record.person()::equals).orElse(true))
                .toList();
        desk.answer(
            answer.json(),
            () -> Json.object("records", records.stream().map(report::object).toList()),
            () ->
                records.isEmpty()
                    ? List.of(
                        "Nothing is on record yet. See: " + desk.program().command("fit --help"))
                    : records.stream().map(report::numbered).toList());
      }
      return ExitCode.DONE;
    }
  }
}
