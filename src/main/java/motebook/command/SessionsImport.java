package motebook.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.desk.SheetIntake;
import motebook.entry.Scene;
import motebook.entry.SheetDateOrder;
import motebook.entry.SheetText;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Text;
import motebook.model.Work;
import motebook.report.Json;

/** Brings a sheet of sessions into the book: shown first, then all of it or nothing. */
final class SessionsImport {
  static final Path STANDARD_INPUT = Path.of("-");
  private static final int SHOWN = 3;

  private final Desk desk;
  private final Path file;
  private final Optional<SheetDateOrder> order;
  private final boolean yes;
  private final boolean json;

  SessionsImport(Desk desk, Path file, Optional<SheetDateOrder> order, boolean yes, boolean json) {
    this.desk = desk;
    this.file = file;
    this.order = order;
    this.yes = yes;
    this.json = json;
  }

  /**
   * The order of dates with slashes, by its word.
   *
   * @throws Refusal if it is none
   */
  static Optional<SheetDateOrder> order(Optional<String> word) {
    return word.map(
        said ->
            switch (Text.folded(said)) {
              case "day first" -> SheetDateOrder.DAY_FIRST;
              case "month first" -> SheetDateOrder.MONTH_FIRST;
              default ->
                  throw new Refusal(
                      "--dates is day-first or month-first: got \"" + Text.clean(said) + "\".");
            });
  }

  /** Shows what the sheet holds and, where it is wanted, writes it; the exit code. */
  int run() {
    SheetText text = SheetText.of(bytes());
    try (Book book = desk.open()) {
      Scene scene = desk.scene(book);
      SheetIntake intake = intake(book, scene, text);
      if (!intake.sound()) {
        return refuse(intake);
      }
      if (json) {
        List<Session> logged = yes ? write(book, intake) : List.of();
        desk.out().println(Json.write(object(intake, yes, logged)));
      } else {
        shown(intake, scene).forEach(desk.out()::println);
        writeIfWanted(book, intake);
      }
    }
    return ExitCode.DONE;
  }

  private SheetIntake intake(Book book, Scene scene, SheetText sheet) {
    long length = sheet.text().length();
    try (Progress progress = Progress.over(desk.world(), "Reading the sheet", length)) {
      Upward upward = new Upward(progress);
      return SheetIntake.of(book, scene, sheet, order, upward::to);
    }
  }

  private byte[] bytes() {
    try (InputStream in = input()) {
      return in.readAllBytes();
    } catch (NoSuchFileException e) {
      throw new Refusal("There is no file " + file + ".");
    } catch (IOException e) {
      throw new Refusal("The file " + file + " cannot be read: " + e.getMessage());
    }
  }

  private InputStream input() throws IOException {
    if (Files.isDirectory(file)) {
      throw new Refusal(file + " is a folder; name the file of the sheet.");
    }
    return file.equals(STANDARD_INPUT) ? desk.world().in() : Files.newInputStream(file);
  }

  /** Every row that is wrong, and that nothing is written. */
  private int refuse(SheetIntake intake) {
    if (json) {
      desk.out().println(Json.write(object(intake, false, List.of())));
    }
    intake.faults().forEach(fault -> desk.world().err().println(fault.said()));
    long bad = bad(intake);
    desk.world()
        .err()
        .println(
            "%d of %s in %s cannot be read as they stand; nothing is written."
                .formatted(bad, counted(intake.rows(), "row"), file.getFileName()));
    return ExitCode.NOT_UNDERSTOOD;
  }

  private static long bad(SheetIntake intake) {
    return intake.faults().stream().mapToLong(fault -> fault.line()).distinct().count();
  }

  private static List<String> people(List<Work> works) {
    return works.stream().map(Work::person).distinct().toList();
  }

  private static Optional<LocalDate> first(List<Work> works) {
    return works.stream().map(Work::date).min(LocalDate::compareTo);
  }

  private static Optional<LocalDate> last(List<Work> works) {
    return works.stream().map(Work::date).max(LocalDate::compareTo);
  }

  private List<String> shown(SheetIntake intake, Scene scene) {
    List<Work> fresh = intake.fresh();
    List<String> lines = new ArrayList<>();
    lines.add(
        counted(intake.rows(), "row")
            + ": "
            + counted(fresh.size(), "new session")
            + (intake.known() > 0 ? ", " + intake.known() + " in the book already" : "")
            + (intake.repeated() > 0 ? ", " + intake.repeated() + " said twice" : ""));
    if (!fresh.isEmpty()) {
      lines.add("by        " + String.join(", ", people(fresh)));
      lines.add("from      " + first(fresh).orElseThrow() + " to " + last(fresh).orElseThrow());
      fresh.stream()
          .limit(SHOWN)
          .forEach(work -> lines.add("reads as  " + SpokenLine.say(work, scene)));
    }
    if (fresh.size() > SHOWN) {
      lines.add("          and " + (fresh.size() - SHOWN) + " more");
    }
    intake.remarks().forEach(remark -> lines.add("note      " + remark));
    return lines;
  }

  private void writeIfWanted(Book book, SheetIntake intake) {
    if (intake.fresh().isEmpty()) {
      desk.out().println("Nothing to write.");
      return;
    }
    boolean askable = !file.equals(STANDARD_INPUT) && Asking.possible(desk.world());
    if (yes || (askable && Asking.yes(desk.world(), "Write this into the book?"))) {
      List<Session> logged = write(book, intake);
      desk.out()
          .println(
              "Logged %s; %s undoes all of it."
                  .formatted(counted(logged.size(), "session"), desk.program().command("undo")));
    } else {
      desk.out().println("Nothing is written yet. Add --yes to write it.");
    }
  }

  private List<Session> write(Book book, SheetIntake intake) {
    int count = intake.fresh().size();
    try (Progress progress = Progress.over(desk.world(), "Writing sessions", count)) {
      Upward upward = new Upward(progress);
      String what = "Imported " + counted(count, "session") + " from " + file.getFileName();
      return intake.log(book, what, upward::to);
    }
  }

  private Object object(SheetIntake intake, boolean written, List<Session> logged) {
    List<Work> fresh = intake.fresh();
    return Json.object(
        "rows", intake.rows(),
        "new", fresh.size(),
        "known", intake.known(),
        "repeated", intake.repeated(),
        "bad_rows", bad(intake),
        "people", people(fresh),
        "from", first(fresh).map(LocalDate::toString).orElse(null),
        "to", last(fresh).map(LocalDate::toString).orElse(null),
        "written", written,
        "ids", logged.stream().map(Session::id).toList(),
        "bad",
            intake.faults().stream()
                .map(
                    f ->
                        Json.object("line", f.line(), "column", f.column(), "message", f.message()))
                .toList(),
        "remarks", intake.remarks());
  }

  private static String counted(int count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
