package motebook.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import motebook.journal.CopyShelf;
import motebook.journal.Lost;
import motebook.journal.Restoring;
import motebook.journal.Restoring.Found;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "restore",
    description = {
      "Puts a copy in the place of the book, after checking it and showing what would be lost.",
      "The book that was there is kept as a copy. Example: motebook restore 2026-03-02"
    })
final class RestoreCommand implements Callable<Integer> {
  private static final int PARTS = 1000;

  private final Desk desk;
  @Mixin private Answer answer;

  @Parameters(
      paramLabel = "FILE|DATE",
      description = "A copy, or the day of one that backup --list shows.")
  private String copy;

  @Option(names = "--yes", description = "Do it without asking; else it is only shown.")
  private boolean yes;

  RestoreCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    Path file = file();
    try (Restoring restoring = checked(file)) {
      Found found = restoring.found();
      Optional<Lost> lost =
          found == Found.READABLE ? Optional.of(restoring.lost()) : Optional.empty();
      if (answer.json()) {
        Optional<Path> kept = yes ? run(restoring) : Optional.empty();
        desk.out().println(Json.write(object(file, restoring, lost, kept)));
      } else {
        shown(file, restoring, found, lost).forEach(desk.out()::println);
        runIfWanted(restoring);
      }
    }
    return ExitCode.DONE;
  }

  private Restoring checked(Path file) {
    long size = file.toFile().length();
    try (Progress progress = Progress.over(desk.world(), "Checking the copy", size)) {
      Upward upward = new Upward(progress);
      return Restoring.of(desk.bookFile(), file, desk.clock(), upward::to);
    }
  }

  private Path file() {
    try {
      LocalDate day = LocalDate.parse(copy);
      return Files.exists(Path.of(copy)) ? Path.of(copy) : new CopyShelf(desk.bookFile()).of(day);
    } catch (DateTimeParseException noDay) {
      return Path.of(copy);
    }
  }

  private List<String> shown(Path file, Restoring restoring, Found found, Optional<Lost> lost) {
    List<String> lines = new ArrayList<>();
    String sessions = BackupCommand.sessions(OptionalLong.of(restoring.sessions()));
    if (restoring.problems().isEmpty()) {
      lines.add("The copy %s is whole: %s.".formatted(file, sessions));
    } else {
      lines.add(
          "The copy %s can be restored: %s. Not all of it is sound:".formatted(file, sessions));
      lines.addAll(restoring.problems());
      lines.add(
          "Once it is in place, put such rows right with "
              + desk.program().command("verify --mend")
              + ".");
    }
    lines.add(
        switch (found) {
          case NONE -> "There is no book yet that it would take the place of.";
          case DAMAGED -> "The present book is damaged; it is kept as it is found.";
          case READABLE -> lost.map(RestoreCommand::lostInWords).orElseThrow();
        });
    return lines;
  }

  private static String lostInWords(Lost lost) {
    String changes = lost.changes() == 1 ? "1 change" : lost.changes() + " changes";
    if (lost.sessions() == 0) {
      return lost.changes() == 0
          ? "It lacks nothing that the present book holds."
          : "It lacks no session of the present book, but " + changes + ".";
    }
    LocalDate first = lost.first().orElseThrow();
    LocalDate last = lost.last().orElseThrow();
    return "It lacks %s of the present book, %s, and %s in all."
        .formatted(
            BackupCommand.sessions(OptionalLong.of(lost.sessions())),
            first.equals(last) ? "on " + first : "from " + first + " to " + last,
            changes);
  }

  private void runIfWanted(Restoring restoring) {
    boolean wanted =
        yes
            || (Asking.possible(desk.world())
                && Asking.yes(desk.world(), "Put the copy in the place of the book?"));
    if (!wanted) {
      desk.out().println("Nothing is done yet. Add --yes to put it in the place of the book.");
      return;
    }
    Optional<Path> kept = run(restoring);
    desk.out().println("The book is now as the copy was.");
    kept.ifPresent(path -> desk.out().println("What it held before is kept in " + path));
  }

  private Optional<Path> run(Restoring restoring) {
    try (Progress progress = Progress.over(desk.world(), "Restoring the book", PARTS)) {
      Upward upward = new Upward(progress);
      return restoring.run(share -> upward.to((long) (share * PARTS)));
    }
  }

  private Object object(Path file, Restoring restoring, Optional<Lost> lost, Optional<Path> kept) {
    return Json.object(
        "copy", file.toString(),
        "sessions", restoring.sessions(),
        "problems", restoring.problems(),
        "lost_sessions", lost.map(Lost::sessions).orElse(null),
        "lost_from", lost.flatMap(Lost::first).map(LocalDate::toString).orElse(null),
        "lost_to", lost.flatMap(Lost::last).map(LocalDate::toString).orElse(null),
        "lost_changes", lost.map(Lost::changes).orElse(null),
        "restored", yes,
        "kept", kept.map(Path::toString).orElse(null));
  }
}
