package motebook.screen;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.desk.Timing;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.entry.Timed;
import motebook.journal.Book;
import motebook.model.MinuteOfDay;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Stopwatch;
import motebook.model.Work;
import motebook.report.Figures;
import motebook.screen.state.Message;
import motebook.screen.state.Reading;
import motebook.screen.state.Task;

/** Handles the stopwatches of the book. */
final class Watch {
  private static final String MINUTE = "1m ";

  private final Book book;
  private final Clock clock;
  private final Lines lines;

  Watch(Book book, Clock clock, Lines lines) {
    this.book = book;
    this.clock = clock;
    this.lines = lines;
  }

  /** What somebody's stopwatch says of today; empty where none is under way. */
  Optional<Timing> timing(String person, List<Session> sessions) {
    return book.stopwatches().of(person).map(watch -> timing(watch, sessions));
  }

  private Timing timing(Stopwatch watch, List<Session> sessions) {
    if (works(watch).isEmpty() && watch.running()) {
      return starting(watch, sessions);
    }
    return Timing.of(
        watch,
        works(watch),
        LocalDateTime.now(clock),
        sessions,
        lines.ledger().shop(LocalDate.now(clock)));
  }

  private Timing starting(Stopwatch watch, List<Session> sessions) {
    LocalDateTime now = LocalDateTime.now(clock);
    Work ahead = works(watch, clock.instant().plusSeconds(60)).get(0);
    return Timing.starting(watch, ahead, now, sessions, lines.ledger().shop(now.toLocalDate()));
  }

  private List<Work> works(Stopwatch watch) {
    return works(watch, clock.instant());
  }

  private List<Work> works(Stopwatch watch, Instant until) {
    return Timed.works(watch, until, clock.getZone(), lines.scene(watch.person()));
  }

  Message read(Task.ReadStart start) {
    Scene scene = lines.scene(start.person());
    return new Message.PromptRead(said(start.text(), completions(start.text(), scene), scene));
  }

  private List<String> completions(String text, Scene scene) {
    return SpokenLine.complete(MINUTE + text, scene, lines.habits(scene)).stream()
        .filter(line -> line.startsWith(MINUTE))
        .map(line -> line.substring(MINUTE.length()))
        .toList();
  }

  private static Reading said(String text, List<String> completions, Scene scene) {
    try {
      Timed.read(text, scene);
      return new Reading(text, Optional.empty(), Optional.empty(), completions);
    } catch (Refusal refusal) {
      return new Reading(
          text,
          Optional.empty(),
          text.isBlank() ? Optional.empty() : Optional.of(Lines.fault(refusal)),
          completions);
    }
  }

  Message start(Task.Start start) {
    try {
      Scene scene = lines.scene(start.person());
      Work work = Timed.read(start.text(), scene);
      Stopwatch watch = book.stopwatches().start(work.person(), SpokenLine.untimed(work, scene));
      return new Message.Timed("The stopwatch runs: " + watch.line() + ". s pauses, x stops it.");
    } catch (Refusal refusal) {
      return new Message.PromptRefused(start.text(), Lines.fault(refusal));
    }
  }

  Message pauseOrGoOn(Task.PauseOrGoOn task) {
    String person = whose(task.person());
    boolean running = book.stopwatches().of(person).map(Stopwatch::running).orElse(false);
    if (running) {
      book.stopwatches().pause(person);
      return new Message.Timed("The stopwatch is paused. s goes on, x stops and logs.");
    }
    book.stopwatches().goOn(person);
    return new Message.Timed("The stopwatch goes on.");
  }

  private String whose(String person) {
    return person.isEmpty() ? book.settings().person() : person;
  }

  Message stop(Task.Stop stop) {
    String person = whose(stop.person());
    Stopwatch watch =
        book.stopwatches()
            .of(person)
            .orElseThrow(() -> new Refusal("No stopwatch of " + person + " is under way."));
    List<Work> works = works(watch);
    if (works.isEmpty()) {
      book.stopwatches().discard(person);
      return new Message.Timed("Stopped after less than half a minute; nothing was logged.");
    }
    book.stopwatches().stop(person, works);
    lines.forget();
    Work last = works.get(works.size() - 1);
    return new Message.LinesLogged(last, stopped(watch, works) + lingers(last));
  }

  private static String stopped(Stopwatch watch, List<Work> works) {
    int minutes = works.stream().mapToInt(Work::minutes).sum();
    String parts = works.size() == 1 ? "" : " in " + works.size() + " parts";
    return "Logged: " + Figures.duration(minutes) + " " + watch.line() + parts + ".";
  }

  private String lingers(Work last) {
    List<Session> sessions = book.sessionsOn(last.date());
    return Timing.clearAt(last, sessions, lines.ledger().shop(last.date())).stream()
        .mapToObj(at -> " Fine dust falls to a tenth by about " + MinuteOfDay.told(at) + ".")
        .findFirst()
        .orElse("");
  }
}
