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
import motebook.model.Figures;
import motebook.model.MinuteOfDay;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Stopwatch;
import motebook.model.Stopwatch.Doubt;
import motebook.model.Stopwatch.Stretch;
import motebook.model.Work;
import motebook.screen.state.Message;
import motebook.screen.state.Prompt;
import motebook.screen.state.Reading;
import motebook.screen.state.Task;

/** Handles the stopwatches of the book. */
final class Watch {
  private static final String MINUTE = "1m ";
  private static final String PAUSED =
      "The stopwatch is paused. Ctrl-T or go on goes on, Ctrl-X or stop logs it.";

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
    Optional<Doubt> doubt = watch.doubt(clock.instant());
    if (works(watch).isEmpty() && watch.running() && doubt.isEmpty()) {
      return starting(watch, sessions);
    }
    return Timing.of(
        watch,
        doubt,
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

  private Reading said(String text, List<String> completions, Scene scene) {
    try {
      Timed.read(text, scene);
      return new Reading(text, Optional.empty(), Optional.empty(), completions);
    } catch (Refusal refusal) {
      return new Reading(
          text,
          Optional.empty(),
          text.isBlank() ? Optional.empty() : Optional.of(lines.fault(refusal)),
          completions);
    }
  }

  Message start(Task.Start start) {
    try {
      Scene scene = lines.scene(start.person());
      Work work = Timed.read(start.text(), scene);
      Stopwatch watch = book.stopwatches().start(work.person(), SpokenLine.untimed(work, scene));
      return new Message.Timed(
          "The stopwatch runs: "
              + watch.line()
              + ". Ctrl-T or pause pauses it, Ctrl-X or stop ends it.");
    } catch (Refusal refusal) {
      return new Message.PromptRefused(start.text(), lines.fault(refusal));
    }
  }

  Message pauseOrGoOn(Task.PauseOrGoOn task) {
    String person = whose(task.person());
    Optional<Stopwatch> running = book.stopwatches().of(person).filter(Stopwatch::running);
    Optional<Message> asked = running.flatMap(watch -> asked(watch, Prompt.Kind.PAUSED));
    if (asked.isPresent()) {
      return asked.get();
    }
    if (running.isPresent()) {
      book.stopwatches().pause(person);
      return new Message.Timed(PAUSED);
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
    return asked(watch, Prompt.Kind.STOPPED).orElseGet(() -> stop(watch));
  }

  /** The question when the work really was, where the stretch that runs is unsure. */
  private Optional<Message> asked(Stopwatch watch, Prompt.Kind kind) {
    return watch.doubt(clock.instant()).map(doubt -> new Message.EndAsked(kind, why(watch, doubt)));
  }

  private String why(Stopwatch watch, Doubt doubt) {
    LocalDateTime began = LocalDateTime.ofInstant(watch.last().began(), clock.getZone());
    String since = MinuteOfDay.told(began.getHour() * 60 + began.getMinute());
    if (doubt == Doubt.CLOCK_SET) {
      return "The stopwatch was started at "
          + since
          + ", which the clock has not reached again: it was set back. How long did the work take,"
          + " or from when to when? Such as: 40m, 9:00-9:40";
    }
    boolean today = began.toLocalDate().equals(LocalDate.now(clock));
    long minutes = watch.last().until(clock.instant()).toMinutes();
    return "The stopwatch has run for "
        + Figures.duration((int) Math.min(Integer.MAX_VALUE, minutes))
        + ", since "
        + since
        + (today ? "" : " on " + began.toLocalDate())
        + ". When did the work end? Such as: 12:30, or 2h10 for how long, or now";
  }

  /** Ends the stretch that runs as the person says it was, and stops or pauses there. */
  Message end(Task.EndStretch end) {
    String person = whose(end.person());
    Stopwatch watch =
        book.stopwatches()
            .of(person)
            .filter(Stopwatch::running)
            .orElseThrow(() -> new Refusal("No stopwatch of " + person + " runs any more."));
    try {
      Scene scene = lines.scene(watch.person());
      Stretch really = Timed.corrected(watch, end.text(), clock.instant(), clock.getZone(), scene);
      if (end.stops()) {
        return stop(watch.ending(really));
      }
      book.stopwatches().pause(person, really);
      return new Message.Timed(PAUSED);
    } catch (Refusal refusal) {
      return new Message.PromptRefused(end.text(), lines.fault(refusal));
    }
  }

  private Message stop(Stopwatch watch) {
    String person = watch.person();
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
