package motebook.screen;

import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import motebook.desk.Air;
import motebook.desk.Day;
import motebook.desk.DayReckoning;
import motebook.desk.DayReport;
import motebook.desk.Intake;
import motebook.desk.Ledger;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.journal.BookTrouble;
import motebook.journal.Change;
import motebook.journal.Settings;
import motebook.model.Person;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;
import motebook.reference.Reference;
import motebook.screen.state.DayPage;
import motebook.screen.state.Fault;
import motebook.screen.state.Message;
import motebook.screen.state.Reading;
import motebook.screen.state.Reading.Understood;
import motebook.screen.state.Task;
import motebook.screen.state.Undoable;

/** Does the tasks: the only part of the screens that touches the book. */
final class Clerk {
  private static final int RECENT = 200;

  private final Book book;
  private final Clock clock;
  private final Draft draft;
  private final Ledger ledger;
  private long seen;

  Clerk(Book book, Clock clock, Draft draft) {
    this.book = book;
    this.clock = clock;
    this.draft = draft;
    this.ledger = new Ledger(book);
    this.seen = book.dataVersion();
  }

  /** Does a task; empty where there is nothing to tell. */
  Optional<Message> perform(Task task) {
    try {
      return done(task);
    } catch (Refusal | BookTrouble trouble) {
      return Optional.of(new Message.Failed(trouble.getMessage()));
    }
  }

  private Optional<Message> done(Task task) {
    if (task instanceof Task.ReadDay day) {
      return Optional.of(day(day.date(), day.person()));
    } else if (task instanceof Task.LookAgain look) {
      return lookAgain(look);
    } else if (task instanceof Task.ReadLine line) {
      return Optional.of(new Message.LineRead(read(line)));
    } else if (task instanceof Task.LogLine line) {
      return Optional.of(log(line));
    } else if (task instanceof Task.FindUndo) {
      return Optional.of(new Message.UndoFound(undoable()));
    } else if (task instanceof Task.Undo undo) {
      return Optional.of(undo(undo.change()));
    } else if (task instanceof Task.ReadLines lines) {
      return Optional.of(read(lines));
    } else if (task instanceof Task.LogLines lines) {
      return Optional.of(log(lines));
    }
    return keep((Task.KeepDraft) task);
  }

  private Message day(LocalDate date, String person) {
    Settings settings = book.settings();
    List<String> people = book.people().stream().map(Person::name).toList();
    String whose = people.contains(person) ? person : settings.person();
    List<Session> sessions = book.sessionsOn(date);
    DayReckoning day = ledger.reckoning(date, whose);
    boolean empty = sessions.isEmpty() && !book.hasSessions();
    return new Message.DayRead(
        new DayPage(Day.report(day), Air.of(day), sessions, people, settings, empty));
  }

  private Optional<Message> lookAgain(Task.LookAgain look) {
    long version = book.dataVersion();
    if (version == seen) {
      return Optional.empty();
    }
    seen = version;
    return Optional.of(day(look.date(), look.person()));
  }

  private Scene scene(String person) {
    Settings settings = book.settings();
    return new Scene(
        LocalDateTime.now(clock),
        person.isEmpty() ? settings.person() : person,
        settings.place(),
        book.people(),
        book::places,
        book.rack().respiratorNames(),
        Reference.shipped(),
        ledger::finishes);
  }

  private Reading read(Task.ReadLine line) {
    Scene scene = scene(line.person());
    List<String> completions = SpokenLine.complete(line.text(), scene);
    try {
      Work work = SpokenLine.read(line.text(), scene);
      return new Reading(
          line.text(), Optional.of(understood(work, scene)), Optional.empty(), completions);
    } catch (Refusal refusal) {
      return new Reading(line.text(), Optional.empty(), Optional.of(fault(refusal)), completions);
    }
  }

  private static Fault fault(Refusal refusal) {
    return new Fault(refusal.getMessage(), refusal.from(), refusal.to());
  }

  private Understood understood(Work work, Scene scene) {
    List<Session> before = book.sessionsOn(work.date());
    List<Session> after = new java.util.ArrayList<>(before);
    after.add(new Session(0, work));
    DayReport now = Day.report(work.date(), work.person(), before, ledger.shop(work.date()));
    DayReport then = Day.report(work.date(), work.person(), after, ledger.shop(work.date()));
    return new Understood(
        work,
        SpokenLine.say(work, scene),
        now.outside().estimate().central(),
        then.outside().estimate().central(),
        then.outside().chanceOverLimit());
  }

  private Message log(Task.LogLine line) {
    try {
      Scene scene = scene(line.person());
      Work work = book.log(SpokenLine.read(line.text(), scene)).work();
      String warning = book.warning().map(". "::concat).orElse("");
      return new Message.Logged(work, SpokenLine.say(work, scene) + warning);
    } catch (Refusal refusal) {
      return new Message.NotLogged(line.text(), fault(refusal));
    } catch (BookTrouble trouble) {
      return new Message.NotLogged(line.text(), new Fault(trouble.getMessage(), -1, -1));
    }
  }

  private Message read(Task.ReadLines lines) {
    Scene scene = scene(lines.person());
    List<Work> works = Intake.read(scene, lines.lines());
    List<String> said = works.stream().map(work -> SpokenLine.say(work, scene)).toList();
    return works.isEmpty()
        ? new Message.Failed("The pasted lines hold nothing to log.")
        : new Message.LinesRead(lines.lines(), lines.person(), said);
  }

  private Message log(Task.LogLines lines) {
    List<Session> logged = Intake.log(book, scene(lines.person()), lines.lines());
    return new Message.LinesLogged(logged.size(), logged.get(logged.size() - 1).work());
  }

  private Optional<Undoable> undoable() {
    return book.history(RECENT).stream()
        .filter(change -> change.undoes().isEmpty() && !change.undone())
        .findFirst()
        .map(change -> new Undoable(change.id(), change.what()));
  }

  private Message undo(Undoable change) {
    boolean stillLast = undoable().equals(Optional.of(change));
    Optional<Change> undone = stillLast ? book.undo() : Optional.empty();
    return new Message.Undone(undone.map(Change::what));
  }

  private Optional<Message> keep(Task.KeepDraft line) {
    try {
      draft.keep(line.text());
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          new Message.Failed(
              "The unfinished line cannot be kept beside the book: " + e.getMessage()));
    }
  }
}
