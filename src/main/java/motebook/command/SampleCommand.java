package motebook.command;

import static motebook.command.Numbers.notNegative;
import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.desk.Evidence;
import motebook.desk.Ledger;
import motebook.desk.Unlikely;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Sample;
import motebook.report.EvidenceReport;
import motebook.report.Json;
import motebook.report.TeachingReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measured air results. */
final class SampleCommand {
  private SampleCommand() {}

  @Command(name = "sample", description = "Measured air results, which every estimate learns from.")
  static final class Group extends GroupCommand {}

  @Command(
      name = "add",
      description = {
        "Adds a result: a weighed filter, or a concentration as the laboratory or a meter told it.",
        "Example: motebook sample add --from 9:00 --to 10:00 --on 2026-03-02 --mg 1.2 --flow 2.0"
            + " --fraction inhalable"
      })
  static final class Add implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    @Option(
        names = "--person",
        paramLabel = "P",
        description = "Who wore it (else the book's own).")
    private String person;

    @Option(names = "--from", required = true, paramLabel = "HH:MM")
    private String from;

    @Option(names = "--to", required = true, paramLabel = "HH:MM")
    private String to;

    @Option(names = "--on", paramLabel = "DATE", description = "The day (else today).")
    private String on;

    @Option(names = "--mg", paramLabel = "MG", description = "What the filter gained, mg.")
    private String mg;

    @Option(names = "--flow", paramLabel = "Q", description = "Pump, L/min; with --mg.")
    private String flow;

    @Option(names = "--blank", paramLabel = "MG", description = "What the field blank gained, mg.")
    private String blank;

    @Option(
        names = "--mg-m3",
        paramLabel = "C",
        description = "The concentration instead; <C for one below detection.")
    private String concentration;

    @Option(
        names = "--detection-limit",
        paramLabel = "L",
        description = "In mg with --mg (default 0.03, NIOSH 0600), in mg/m³ with --mg-m3.")
    private String detectionLimit;

    @Option(
        names = "--fraction",
        required = true,
        paramLabel = "F",
        description = "inhalable, respirable or total; PM2.5 and its like with --relative.")
    private String fraction;

    @Option(
        names = "--direct-reading",
        description = {
          "Read off an instrument, not weighed: an error of 50 %% instead of 15 %%,",
          "of 30 %% with --factor."
        })
    private boolean direct;

    @Option(names = "--cv", paramLabel = "E", description = "Error as a share, like 0.15.")
    private String cv;

    @Option(
        names = "--stands-for-shift",
        description = "The whole shift was like this time of two hours or more.")
    private boolean wholeShift;

    @Option(names = "--note", paramLabel = "TEXT")
    private String note = "";

    @Mixin private SampleUse use;
    @Mixin private SampleKeeping keeping;

    Add(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Sample.Kind kind =
            direct || use.corrected() ? Sample.Kind.DIRECT_READING : Sample.Kind.GRAVIMETRIC;
        Sample read =
            new Sample(
                0,
                desk.person(person, book),
                desk.date(on),
                Times.minute("--from", from),
                Times.minute("--to", to),
                Sample.fraction(fraction, use.relative()),
                kind,
                mg == null ? told() : weighed(),
                cv == null ? kind.cv(use.corrected()) : within("--cv", cv, 0.01, 2),
                note,
                use.use(book, desk.date(on), wholeShift));
        Optional<SampleKeeping.Kept> kept =
            keeping.keep(
                desk, book, List.of(read), "Added a sample: " + EvidenceReport.describe(read));
        desk.answer(answer.json(), () -> json(kept), () -> text(kept));
      }
      return ExitCode.DONE;
    }

    private static Object json(Optional<SampleKeeping.Kept> kept) {
      return Json.object(
          "id", kept.map(one -> one.samples().get(0).id()).orElse(null),
          "moved", kept.map(one -> TeachingReport.json(one.teaching())).orElse(List.of()));
    }

    private static List<String> text(Optional<SampleKeeping.Kept> kept) {
      List<String> lines = new ArrayList<>();
      kept.ifPresent(
          one -> {
            Sample sample = one.samples().get(0);
            lines.add("Added sample " + sample.id() + ": " + EvidenceReport.describe(sample) + ".");
            lines.addAll(TeachingReport.moved(one.teaching()));
          });
      return lines;
    }

    private Sample.Result weighed() {
      if (concentration != null) {
        throw new Refusal("Give either --mg with --flow or --mg-m3, not both.");
      }
      if (flow == null) {
        throw new Refusal("With --mg give --flow too, the litres a minute of the pump.");
      }
      return new Sample.Weighed(
          within("--mg", mg, -1000, 1e5),
          blank == null ? 0 : within("--blank", blank, -1000, 1e5),
          positive("--flow", flow),
          notNegative("--detection-limit", detectionLimit == null ? "0.03" : detectionLimit));
    }

    private Sample.Result told() {
      if (concentration == null) {
        throw new Refusal("Give what was found: --mg with --flow, or --mg-m3.");
      }
      boolean below = concentration.startsWith("<");
      double value =
          within("--mg-m3", below ? concentration.substring(1) : concentration, -1e6, 1e6);
      double least = detectionLimit == null ? 0 : positive("--detection-limit", detectionLimit);
      return below || value < least
          ? new Sample.Told(below ? value : least, true)
          : new Sample.Told(value, false);
    }
  }

  /** What is unlikely of a sample, held against the work of the day that it may be of. */
  static List<Unlikely> unlikely(Sample sample, Desk desk, Book book) {
    return Unlikely.of(
        sample,
        LocalDateTime.now(desk.clock()),
        book.sessionsOn(sample.date()).stream()
            .filter(
                session ->
                    sample
                        .use()
                        .area()
                        .map(session.work().place()::equals)
                        .orElse(session.work().person().equals(sample.person())))
            .toList());
  }

  @Command(
      name = "list",
      description = "Lists the samples beside the estimates, and what was learned from them.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Evidence evidence = new Ledger(book).evidence();
        desk.answer(
            answer.json(),
            () -> EvidenceReport.json(evidence),
            () -> EvidenceReport.text(evidence, desk.program()));
      }
      return ExitCode.DONE;
    }
  }

  @Command(name = "remove", description = "Removes a sample; undo brings it back.")
  static final class Remove implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "ID", description = "Its number, as sample list shows it.")
    private long id;

    Remove(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Sample removed = book.samples().remove(id);
        desk.out().println("Removed sample " + id + ": " + EvidenceReport.describe(removed) + ".");
      }
      return ExitCode.DONE;
    }
  }
}
