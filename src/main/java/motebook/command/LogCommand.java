package motebook.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import motebook.desk.DayReport;
import motebook.desk.Intake;
import motebook.desk.Ledger;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Caution;
import motebook.report.DayJson;
import motebook.report.DayText;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "log",
    description = {
      "Writes a session from one spoken line, says it back and shows the day's dose.",
      "Example: motebook log 40m orbital sanding of mdf with tool vacuum in shop at 9:15"
    })
final class LogCommand implements Callable<Integer> {
  private final Desk desk;
  @Mixin private Answer answer;

  @Option(
      names = "--lines",
      paramLabel = "FILE",
      description = "Log every line of a file (- for standard input), all or none.")
  private Path file;

  @Parameters(paramLabel = "LINE", description = "What was done, quoted or not.")
  private List<String> words = new ArrayList<>();

  LogCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    try (Book book = desk.open()) {
      Scene scene = desk.scene(book);
      if (file != null) {
        logFile(book, scene);
      } else {
        logLine(book, scene);
      }
    }
    return 0;
  }

  private void logLine(Book book, Scene scene) {
    Ledger ledger = new Ledger(book);
    String typed = String.join(" ", words);
    Work work = SpokenLine.read(typed, scene);
    Set<Caution> heard = Set.copyOf(ledger.day(work.date(), work.person()).cautions());
    Session session = book.log(work);
    DayReport day = ledger.day(work.date(), work.person());
    String said = SpokenLine.say(work, scene);
    desk.answer(
        answer.json(),
        () -> Json.object("id", session.id(), "line", said, "day", DayJson.of(day)),
        () -> {
          List<String> lines = answer(session, said, day, heard);
          SpokenLine.advice(typed, work).ifPresent(advice -> lines.add("note      " + advice));
          return lines;
        });
  }

  private List<String> answer(Session session, String said, DayReport day, Set<Caution> heard) {
    List<String> lines = new ArrayList<>();
    lines.add("Logged as session " + session.id() + ": " + said);
    lines.addAll(DayText.dose(day, desk.ink()));
    day.sessions().stream()
        .filter(line -> line.source().session().id() == session.id())
        .forEach(line -> lines.addAll(DayText.refused(line, desk.program())));
    List<Caution> fresh = day.cautions().stream().filter(c -> !heard.contains(c)).toList();
    lines.addAll(DayText.warnings(day, fresh));
    return lines;
  }

  private void logFile(Book book, Scene scene) {
    List<String> lines = Files.lines(file, desk.world().in());
    List<Session> logged;
    try (Progress progress = Progress.over(desk.world(), "Logging lines", 2L * lines.size())) {
      Upward upward = new Upward(progress);
      logged = Intake.log(book, scene, lines, upward::to);
    }
    desk.answer(
        answer.json(),
        () -> Json.object("ids", logged.stream().map(Session::id).toList()),
        () -> List.of("Logged " + logged.size() + " sessions."));
  }
}
