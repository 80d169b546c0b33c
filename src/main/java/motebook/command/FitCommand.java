package motebook.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import motebook.journal.Book;
import motebook.model.FitRecord;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.Hair;
import motebook.model.FitRecord.Medical;
import motebook.model.FitRecord.Training;
import motebook.model.MaskUse;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Text;
import motebook.model.Work;
import motebook.report.FitReport;
import motebook.report.Json;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Who is fit to wear what. */
final class FitCommand {
  private FitCommand() {}

  /** The command with all that hangs on it. */
  static CommandLine line(Desk desk) {
    return new CommandLine(new Group())
        .addSubcommand(new FitTestCommand(desk))
        .addSubcommand(new OfMedical(desk))
        .addSubcommand(new OfTraining(desk))
        .addSubcommand(new OfHair(desk))
        .addSubcommand(new OfChange(desk))
        .addSubcommand(new Checked(desk))
        .addSubcommand(new Wore(desk))
        .addSubcommand(new Remove(desk))
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
      description = "A medical evaluation cleared somebody for wearing a respirator.")
  static final class OfMedical extends Dated {
    OfMedical(Desk desk) {
      super(desk, (person, date) -> new Medical(0, person, date));
    }
  }

  @Command(name = "training", description = "Somebody was trained in wearing a respirator.")
  static final class OfTraining extends Dated {
    OfTraining(Desk desk) {
      super(desk, (person, date) -> new Training(0, person, date));
    }
  }

  @Command(
      name = "hair",
      description = {
        "There is hair under the seal, from a day on, perhaps to a last day.",
        "With --to alone, the hair that is on record ends."
      })
  static final class OfHair implements Callable<Integer> {
    private final Desk desk;

    @Option(
        names = "--person",
        paramLabel = "PERSON",
        description = "Whose; the book's own person unless told.")
    private String person;

    @Option(names = "--from", paramLabel = "DATE", description = "First day; today unless told.")
    private String from;

    @Option(names = "--to", paramLabel = "DATE", description = "Last day, if it is gone.")
    private String to;

    OfHair(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        String whose = desk.person(person, book);
        Optional<LocalDate> last = Desk.optional(to).map(desk::date);
        if (from == null && last.isPresent()) {
          Hair ended = book.fits().endHair(whose, last.get());
          desk.out()
              .println(
                  "Hair under the seal of %s was there from %s to %s."
                      .formatted(ended.person(), ended.date(), last.get()));
        } else {
          note(new Hair(0, whose, desk.date(from), last), desk, book);
        }
      }
      return ExitCode.DONE;
    }
  }

  @Command(
      name = "change",
      description = {
        "A face changed, so that a new fit test is asked for: weight (20 lb or 9 kg), dental work,",
        "or the face itself."
      })
  static final class OfChange implements Callable<Integer> {
    private final Desk desk;
    @Mixin private WhoAndWhen who;

    @Option(
        names = "--what",
        required = true,
        paramLabel = "WHAT",
        description = "weight, or how much was lost since the test (25lb, 11kg); dental; face.")
    private String what;

    OfChange(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      FaceChange.What changed = changed();
      try (Book book = desk.open()) {
        note(new FaceChange(0, who.person(desk, book), who.on(desk), changed), desk, book);
      }
      return ExitCode.DONE;
    }

    private FaceChange.What changed() {
      if (WeightLost.says(what)) {
        WeightLost.requireMuch(what);
        return FaceChange.What.WEIGHT;
      }
      return FaceChange.What.of(what)
          .orElseThrow(
              () ->
                  new Refusal(
                      "\"%s\" is no change that is kept: say weight, dental, face, or how much was lost, like 25lb or 11kg."
                          .formatted(Text.clean(what))));
    }
  }

  @Command(
      name = "checked",
      description =
          "The seal was checked at the donning of a session, though its line left it out.")
  static final class Checked implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "SESSION", description = "The session's number.")
    private long id;

    Checked(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Work was = work(book, id);
        MaskUse mask =
            was.mask()
                .orElseThrow(() -> new Refusal("No respirator was worn in session " + id + "."));
        book.amend(id, was.withMask(new MaskUse(mask.respirator(), true, mask.wornPercent())));
        desk.out()
            .println("Session %d: the seal of %s was checked.".formatted(id, mask.respirator()));
      }
      return ExitCode.DONE;
    }
  }

  private static Work work(Book book, long id) {
    return book.session(id)
        .map(Session::work)
        .orElseThrow(() -> new Refusal("The book holds no session with the number " + id + "."));
  }

  @Command(
      name = "wore",
      description = {
        "Another respirator was worn in a session than its line says. The seal check and the",
        "percentage stay as they were said; without any, it was worn all the time.",
        "Example: motebook fit wore 12 \"air line\" --checked"
      })
  static final class Wore implements Callable<Integer> {
    private final Desk desk;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's number.")
    private long id;

    @Parameters(index = "1", paramLabel = "RESPIRATOR", description = "What was worn.")
    private String respirator;

    @Option(names = "--checked", description = "Its seal was checked.")
    private boolean checked;

    Wore(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Work was = work(book, id);
        String worn = book.rack().respirator(respirator, was.date()).name();
        boolean sealed = checked || was.mask().map(MaskUse::checked).orElse(false);
        double percent = was.mask().map(MaskUse::wornPercent).orElse(100.0);
        book.amend(id, was.withMask(new MaskUse(worn, sealed, percent)));
        desk.out().println("Session %d: %s was worn.".formatted(id, worn));
      }
      return ExitCode.DONE;
    }
  }

  @Command(
      name = "remove",
      description = "Takes out a record that was wrong, by its number in fit list.")
  static final class Remove implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NUMBER", description = "The number of the record.")
    private long id;

    Remove(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        FitReport report = new FitReport(GearCommand.allowed(), book.gear());
        FitRecord wrong = book.fits().remove(id);
        desk.out().println("Took out: " + report.line(wrong));
      }
      return ExitCode.DONE;
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
                    ? List.of("Nothing is on record yet. See: motebook fit --help")
                    : records.stream().map(report::numbered).toList());
      }
      return ExitCode.DONE;
    }
  }
}
