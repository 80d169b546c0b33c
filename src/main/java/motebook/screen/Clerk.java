package motebook.screen;

import java.io.IOException;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import motebook.journal.Book;
import motebook.journal.BookTrouble;
import motebook.model.Refusal;
import motebook.report.Invocation;
import motebook.report.Words;
import motebook.screen.state.Message;
import motebook.screen.state.Task;

/**
 * Does the tasks: with those it hands them to, the only part of the screens that touches the book.
 */
final class Clerk {
  private final Draft draft;
  private final Lines lines;
  private final Map<Class<? extends Task>, Function<Task, Optional<Message>>> tasks;

  /**
   * One that works on a book.
   *
   * @param program how a shell opens that book
   */
  Clerk(Book book, Clock clock, Draft draft, Invocation program) {
    this.draft = draft;
    this.lines = new Lines(book, clock, program);
    Looking looking = new Looking(book, clock, lines);
    Writing writing = new Writing(book, lines);
    Planning planning = new Planning(lines);
    Watch watch = new Watch(book, clock, lines);
    SessionForm forms = new SessionForm(book, clock, lines);
    Keeping keeping = new Keeping(book, clock, lines);
    SettingsForm settings = new SettingsForm(book, clock, lines);
    GearForm gear = new GearForm(book, clock);
    tasks =
        Map.ofEntries(
            on(Task.ReadDay.class, task -> looking.day(task.date(), task.person())),
            on(Task.ReadHabits.class, looking::habits),
            maybe(Task.LookAgain.class, looking::again),
            on(Task.ReadWeek.class, looking::week),
            on(Task.ReadLine.class, lines::read),
            on(Task.LogLine.class, writing::log),
            on(Task.ReadLines.class, lines::read),
            on(Task.LogLines.class, writing::log),
            on(Task.LogAgain.class, writing::again),
            on(Task.LogAtOnce.class, writing::logAtOnce),
            on(Task.FindUndo.class, task -> looking.undoable()),
            on(Task.Undo.class, task -> writing.undo(task.change())),
            on(Task.Delete.class, writing::delete),
            on(Task.SetAside.class, writing::setAside),
            on(Task.BringBack.class, writing::bringBack),
            on(Task.AddFavourite.class, writing::addFavourite),
            on(Task.RemoveFavourite.class, writing::removeFavourite),
            on(Task.ReadStart.class, watch::read),
            on(Task.ReadPlan.class, planning::read),
            on(Task.Plan.class, planning::plan),
            on(Task.Start.class, watch::start),
            on(Task.PauseOrGoOn.class, watch::pauseOrGoOn),
            on(Task.Stop.class, watch::stop),
            on(Task.EndStretch.class, watch::end),
            on(Task.ReadCare.class, task -> keeping.read()),
            on(Task.ReadEvidence.class, task -> looking.evidence()),
            on(
                Task.ReadWords.class,
                task -> new Message.WordsRead(Words.of(lines.scene(task.person())))),
            on(Task.Settle.class, keeping::settle),
            on(Task.Damaged.class, keeping::damaged),
            on(Task.GoTo.class, looking::goTo),
            on(Task.Find.class, looking::find),
            on(Task.OpenForm.class, forms::open),
            on(Task.ReadForm.class, forms::read),
            on(Task.OpenSettings.class, task -> settings.open(task.kind())),
            on(Task.OpenGear.class, gear::open),
            maybe(Task.CheckField.class, settings::check),
            maybe(Task.OpenFirst.class, task -> settings.openFirst()),
            on(
                Task.SaveForm.class,
                task -> {
                  lines.forget();
                  return task.form().isGear()
                      ? gear.save(task.form())
                      : task.form().isSession() ? forms.save(task) : settings.save(task.form());
                }),
            maybe(Task.KeepDraft.class, this::keep));
  }

  private static <T extends Task>
      Map.Entry<Class<? extends Task>, Function<Task, Optional<Message>>> on(
          Class<T> kind, Function<T, Message> work) {
    return maybe(kind, task -> Optional.of(work.apply(task)));
  }

  private static <T extends Task>
      Map.Entry<Class<? extends Task>, Function<Task, Optional<Message>>> maybe(
          Class<T> kind, Function<T, Optional<Message>> work) {
    return Map.entry(kind, task -> work.apply(kind.cast(task)));
  }

  /** Does a task; empty where there is nothing to tell. */
  Optional<Message> perform(Task task) {
    try {
      return tasks.get(task.getClass()).apply(task);
    } catch (Refusal refusal) {
      return Optional.of(new Message.Failed(lines.told(refusal)));
    } catch (BookTrouble trouble) {
      return Optional.of(new Message.Failed(trouble.getMessage()));
    }
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
