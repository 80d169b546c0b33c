package motebook.screen;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import motebook.desk.Day;
import motebook.desk.DayReport;
import motebook.desk.Intake;
import motebook.desk.Ledger;
import motebook.entry.Habits;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.journal.BookTrouble;
import motebook.journal.Logged;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;
import motebook.report.ActionText;
import motebook.report.Invocation;
import motebook.screen.state.Acts;
import motebook.screen.state.Fault;
import motebook.screen.state.Message;
import motebook.screen.state.Reading;
import motebook.screen.state.Reading.Clash;
import motebook.screen.state.Reading.Understood;
import motebook.screen.state.Task;

/** Reads lines and says what they would make of their day; writes nothing. */
final class Lines {
  private static final int HABITS_FROM = 300;
  private static final String NO_PREVIEW =
      "This line cannot be previewed. It stays as it is; Ctrl-U clears it.";

  private final ActionText words;
  private final Book book;
  private final Clock clock;
  private final Ledger ledger;
  private Optional<Known> known = Optional.empty();

  /** The habits of somebody, as the book stood when they were read. */
  private record Known(Scene scene, Habits habits) {}

  Lines(Book book, Clock clock, Invocation program) {
    this.words = new ActionText(program);
    this.book = book;
    this.clock = clock;
    this.ledger = new Ledger(book);
  }

  Ledger ledger() {
    return ledger;
  }

  Scene scene(String person) {
    return ledger.scene(LocalDateTime.now(clock), person);
  }

  /** What somebody usually does; read anew once the book was changed, by whomever. */
  Habits habits(Scene scene) {
    boolean fits =
        known
            .filter(k -> k.scene().person().equals(scene.person()))
            .filter(k -> k.scene().now().toLocalDate().equals(scene.now().toLocalDate()))
            .isPresent();
    if (!fits) {
      List<Work> past =
          book.recentSessionsOf(scene.person(), HABITS_FROM).stream().map(Session::work).toList();
      known = Optional.of(new Known(scene, Habits.of(past, scene)));
    }
    return known.get().habits();
  }

  /** The book was changed. */
  void forget() {
    known = Optional.empty();
  }

  Message read(Task.ReadLine line) {
    return new Message.LineRead(shielded(line.text(), () -> preview(line)));
  }

  private Reading preview(Task.ReadLine line) {
    Scene scene = scene(line.person());
    List<String> completions =
        Stream.concat(
                SpokenLine.complete(line.text(), scene, habits(scene)).stream(),
                Acts.begun(line.text()).stream())
            .distinct()
            .toList();
    Reading reading =
        reading(
            line.text(), completions, Optional.empty(), () -> SpokenLine.read(line.text(), scene));
    return offeringWood(offeringTime(reading, scene), scene);
  }

  /**
   * What was made of a text that is still being typed. Whatever goes wrong then leaves the text as
   * it is: a preview is never worth the program, and a kept line is read again at every start.
   */
  private Reading shielded(String text, Supplier<Reading> preview) {
    try {
      return preview.get();
    } catch (Refusal refusal) {
      return withFault(text, fault(text, refusal), List.of());
    } catch (BookTrouble trouble) {
      return withFault(text, new Fault(trouble.getMessage(), -1, -1), List.of());
    } catch (RuntimeException unforeseen) {
      return withFault(text, new Fault(NO_PREVIEW, -1, -1), List.of());
    }
  }

  private static Reading withFault(String text, Fault fault, List<String> completions) {
    return new Reading(text, Optional.empty(), Optional.of(fault), completions);
  }

  /** Where a wood has no figures of its own, the line with what stands for it comes first. */
  private static Reading offeringWood(Reading reading, Scene scene) {
    return reading
        .fault()
        .flatMap(fault -> SpokenLine.withKnownWood(reading.text(), scene))
        .map(reading::offering)
        .orElse(reading);
  }

  /** Where the work would overlap other work, the line at a time that is free comes first. */
  private Reading offeringTime(Reading reading, Scene scene) {
    return reading
        .understood()
        .flatMap(Understood::clash)
        .flatMap(Clash::free)
        .flatMap(start -> SpokenLine.startingAt(reading.text(), start, scene))
        .map(reading::offering)
        .orElse(reading);
  }

  /**
   * What was made of a text.
   *
   * @param except a session in whose place the work would come
   */
  Reading reading(
      String text, List<String> completions, Optional<Session> except, Supplier<Work> reader) {
    return shielded(
        text,
        () -> {
          try {
            Understood understood = understood(reader.get(), except);
            return new Reading(text, Optional.of(understood), Optional.empty(), completions);
          } catch (Refusal refusal) {
            return withFault(text, fault(text, refusal), completions);
          }
        });
  }

  /** What is wrong with a line; one that begins with a word of the screens is told of that word. */
  Fault fault(String text, Refusal refusal) {
    return Acts.answer(text).map(said -> new Fault(said, -1, -1)).orElseGet(() -> fault(refusal));
  }

  Fault fault(Refusal refusal) {
    return new Fault(told(refusal), refusal.from(), refusal.to());
  }

  /** What was refused, and where the command is typed that does something about it. */
  String told(Refusal refusal) {
    return words.told(refusal) + (refusal.next().isPresent() ? " (in a shell, after quit)" : "");
  }

  private Understood understood(Work work, Optional<Session> except) {
    Logged logged = book.loggedBetween(work.date(), work.date());
    List<Session> before = logged.sessions();
    List<Session> after = new ArrayList<>(before);
    except.ifPresent(session -> after.removeIf(other -> other.id() == session.id()));
    Optional<Clash> clash = clash(work, after);
    after.add(new Session(0, work));
    DayReport now = report(work, before);
    DayReport then = report(work, after);
    return new Understood(
        work,
        SpokenLine.say(work, scene(work.person())),
        now.outside().estimate().central(),
        then.outside().estimate().central(),
        then.outside().chanceOverLimit(),
        then.uncovered(),
        logged.leftOut(),
        clash);
  }

  private Optional<Clash> clash(Work work, List<Session> others) {
    boolean own = work.person().equals(book.settings().person());
    return Overlap.of(work, others, own, LocalDateTime.now(clock));
  }

  private DayReport report(Work work, List<Session> sessions) {
    return Day.report(work.date(), work.person(), sessions, ledger.shop(work.date()));
  }

  Message read(Task.ReadLines lines) {
    Scene scene = scene(lines.person());
    List<Work> works = Intake.read(scene, lines.lines());
    List<String> said = works.stream().map(work -> SpokenLine.say(work, scene)).toList();
    return works.isEmpty()
        ? new Message.Failed("The pasted lines hold nothing to log.")
        : new Message.LinesRead(lines.lines(), lines.person(), said);
  }
}
