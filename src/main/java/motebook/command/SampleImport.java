package motebook.command;

import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.desk.SampledStretches;
import motebook.desk.Teaching;
import motebook.entry.InstrumentFile;
import motebook.entry.MinuteMeans.Stretch;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Sample;
import motebook.model.Session;
import motebook.report.EvidenceReport;
import motebook.report.Json;
import motebook.report.TeachingReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "import",
    description = {
      "Reads the CSV file of a direct-reading instrument: a sample for each session it overlaps.",
      "Example: motebook sample import meter.csv --fraction respirable"
    })
final class SampleImport implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Parameters(paramLabel = "FILE", description = "The file, - for standard input.")
  private Path file;

  @Option(names = "--time", paramLabel = "COLUMN", description = "The column of times.")
  private String time;

  @Option(names = "--value", paramLabel = "COLUMN", description = "The column of values.")
  private String value;

  @Option(names = "--unit", paramLabel = "U", description = "mg/m3 or ug/m3.")
  private String unit;

  @Option(
      names = "--fraction",
      required = true,
      paramLabel = "F",
      description = {
        "inhalable, respirable or total, as the instrument samples;",
        "PM2.5 and its like with --relative."
      })
  private String fraction;

  @Option(names = "--person", paramLabel = "P", description = "Who wore it (else the book's own).")
  private String person;

  @Option(names = "--on", paramLabel = "DATE", description = "The day of times without a date.")
  private String on;

  @Option(
      names = "--detection-limit",
      paramLabel = "C",
      description = "Least concentration that the instrument tells, mg/m³.")
  private String detectionLimit;

  @Option(
      names = "--cv",
      paramLabel = "E",
      description = "Error as a share (default 0.50, with --factor 0.30).")
  private String cv;

  @Option(names = "--whole", description = "One sample for the whole, not one for each session.")
  private boolean whole;

  @Mixin private SampleUse use;
  @Mixin private SampleKeeping keeping;

  SampleImport(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      String wearer = desk.person(person, book);
      String of = Sample.fraction(fraction, use.relative());
      Sample.Use purpose = use.use(book, desk.today(), false);
      InstrumentFile.Contents contents = contents();
      if (!use.relative()) {
        contents.channel().ifPresent(channel -> Sample.fraction(channel, false));
      }
      List<Sample> all =
          stretches(contents, wearer, book).stream()
              .map(stretch -> sample(stretch, contents.means().mean(stretch), wearer, of, purpose))
              .toList();
      List<Sample> fresh = all.stream().filter(s -> !book.samples().holds(s)).toList();
      Optional<SampleKeeping.Kept> kept =
          fresh.isEmpty()
              ? Optional.of(new SampleKeeping.Kept(List.of(), Teaching.NONE))
              : keeping.keep(
                  desk, book, fresh, "Imported " + fresh.size() + " samples from " + file);
      tell(contents, kept, all.size() - fresh.size());
    }
    return ExitCode.DONE;
  }

  private InstrumentFile.Contents contents() {
    InstrumentFile.Wish wish =
        new InstrumentFile.Wish(
            Optional.ofNullable(time),
            Optional.ofNullable(value),
            Optional.ofNullable(unit),
            on == null ? Optional.empty() : Optional.of(desk.date(on)));
    try (Progress progress = Progress.over(desk.world(), "Reading " + file, length());
        InputStream in = new Metered(input(), progress);
        BufferedReader text =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()))) {
      return InstrumentFile.read(text, wish);
    } catch (NoSuchFileException e) {
      throw new Refusal("There is no file " + file + ".");
    } catch (CharacterCodingException e) {
      throw new Refusal("The file " + file + " is not UTF-8 text; save it as UTF-8.");
    } catch (IOException e) {
      throw new Refusal("The file " + file + " cannot be read: " + e.getMessage());
    }
  }

  private long length() {
    return file.toFile().length();
  }

  private InputStream input() throws IOException {
    return file.equals(Path.of("-")) ? desk.world().in() : java.nio.file.Files.newInputStream(file);
  }

  private List<Stretch> stretches(InstrumentFile.Contents contents, String wearer, Book book) {
    List<Stretch> found =
        whole
            ? SampledStretches.whole(contents.means())
            : SampledStretches.bySession(contents.means(), day -> own(wearer, day, book));
    if (found.isEmpty()) {
      List<Stretch> read = contents.means().stretches();
      throw new Refusal(
          "No session of "
              + wearer
              + " of five minutes or more lies in the readings, which begin on "
              + read.get(0).date()
              + ". Log the work first, or take the whole with --whole.");
    }
    return found;
  }

  private static List<Session> own(String wearer, LocalDate day, Book book) {
    return book.sessionsOn(day).stream().filter(s -> s.work().person().equals(wearer)).toList();
  }

  private Sample sample(
      Stretch stretch, double mean, String wearer, String of, Sample.Use purpose) {
    double least = detectionLimit == null ? 0 : positive("--detection-limit", detectionLimit);
    if (mean <= 0 && least == 0) {
      throw new Refusal(
          "The readings of "
              + stretch.date()
              + " have no mean above 0. Give the instrument's --detection-limit, and it is kept as"
              + " below that.");
    }
    return new Sample(
        0,
        wearer,
        stretch.date(),
        stretch.fromMinute(),
        stretch.toMinute(),
        of,
        Sample.Kind.DIRECT_READING,
        mean < least ? new Sample.Told(least, true) : new Sample.Told(mean, false),
        cv == null ? Sample.Kind.DIRECT_READING.cv(use.corrected()) : within("--cv", cv, 0.01, 2),
        "",
        purpose);
  }

  private void tell(
      InstrumentFile.Contents contents, Optional<SampleKeeping.Kept> kept, int known) {
    List<Sample> added = kept.map(SampleKeeping.Kept::samples).orElse(List.of());
    desk.answer(
        answer.json(),
        () ->
            Json.object(
                "rows", contents.rows(),
                "ids", added.stream().map(Sample::id).toList(),
                "known", known,
                "complaints", contents.complaints(),
                "moved", kept.map(one -> TeachingReport.json(one.teaching())).orElse(List.of())),
        () -> {
          List<String> lines = new ArrayList<>();
          lines.add(
              contents.rows()
                  + " readings, "
                  + added.size()
                  + (added.size() == 1 ? " new sample" : " new samples")
                  + (known > 0 ? ", " + known + " in the book already" : ""));
          added.forEach(s -> lines.add("  " + s.id() + "  " + EvidenceReport.describe(s)));
          contents.complaints().forEach(complaint -> lines.add("note      " + complaint));
          kept.ifPresent(one -> lines.addAll(TeachingReport.moved(one.teaching())));
          return lines;
        });
  }
}
