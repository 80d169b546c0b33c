package motebook.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import motebook.desk.Intake;
import motebook.entry.Scene;
import motebook.entry.SpokenLine;
import motebook.journal.Book;
import motebook.journal.BookTrouble;
import motebook.journal.Change;
import motebook.model.Favourite;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Work;
import motebook.screen.state.Fault;
import motebook.screen.state.Message;
import motebook.screen.state.Task;
import motebook.screen.state.Undoable;

/** Writes into the book what the keys ask for. */
final class Writing {
  private final Book book;
  private final Lines lines;

  Writing(Book book, Lines lines) {
    this.book = book;
    this.lines = lines;
  }

  Message log(Task.LogLine line) {
    try {
      return logged(line.text(), lines.scene(line.person()));
    } catch (Refusal refusal) {
      return new Message.NotLogged(line.text(), lines.fault(line.text(), refusal));
    } catch (BookTrouble trouble) {
      return new Message.NotLogged(line.text(), new Fault(trouble.getMessage(), -1, -1));
    }
  }

  private Message logged(String text, Scene scene) {
    Work work = book.log(SpokenLine.read(text, scene)).work();
    lines.forget();
    String advice = SpokenLine.advice(text, work).map(". "::concat).orElse("");
    return new Message.Logged(work, SpokenLine.say(work, scene) + advice + warning());
  }

  private String warning() {
    return book.changes().warning().map(". "::concat).orElse("");
  }

  Message logAtOnce(Task.LogAtOnce line) {
    try {
      return logged(line.text(), lines.scene(line.person()).ofRecord());
    } catch (Refusal refusal) {
      return new Message.NotLoggedAtOnce(line.text(), lines.fault(refusal));
    }
  }

  Message again(Task.LogAgain again) {
    Scene scene = lines.scene(again.person());
    Optional<Session> session =
        again.session() > 0 ? book.session(again.session()) : book.lastSessionOf(scene.person());
    return session
        .map(found -> new Task.LogAtOnce(SpokenLine.again(found.work(), scene), again.person()))
        .map(this::logAtOnce)
        .orElseGet(() -> new Message.Failed("Nothing was logged yet that could be logged again."));
  }

  Message log(Task.LogLines several) {
    List<Session> logged = Intake.log(book, lines.scene(several.person()), several.lines());
    lines.forget();
    return new Message.LinesLogged(
        logged.get(logged.size() - 1).work(),
        "Logged " + logged.size() + " sessions as one change." + warning());
  }

  Message undo(Undoable change) {
    boolean stillLast = Looking.last(book).equals(Optional.of(change));
    Optional<Change> undone = stillLast ? book.changes().undo() : Optional.empty();
    lines.forget();
    return new Message.Undone(undone.map(any -> change.what()));
  }

  Message delete(Task.Delete delete) {
    book.delete(delete.session().id());
    lines.forget();
    return new Message.Changed("Deleted; Ctrl-Z brings it back." + warning());
  }

  Message setAside(Task.SetAside aside) {
    book.setAside().put(aside.date(), whose(aside.person()), aside.cautions());
    return new Message.Changed(
        "Set aside for "
            + day(aside.date())
            + ": "
            + aside.cautions().size()
            + (aside.cautions().size() == 1 ? " caution" : " cautions")
            + "; Ctrl-O brings them back, the word notes shows them.");
  }

  private static String day(LocalDate date) {
    return "the day " + date;
  }

  private String whose(String person) {
    return person.isEmpty() ? book.settings().person() : person;
  }

  Message bringBack(Task.BringBack back) {
    book.setAside().bringBack(back.date(), whose(back.person()));
    return new Message.Changed("The cautions of " + day(back.date()) + " are back.");
  }

  Message addFavourite(Task.AddFavourite add) {
    try {
      Work work = add.session().work();
      Scene scene = lines.scene(work.person());
      Favourite kept = book.favourites().add(add.name(), SpokenLine.again(work, scene));
      int number = book.favourites().all().size();
      String key =
          number <= 8 ? "; F" + (number + 1) + " logs it" : "; the word favourites lists them";
      return new Message.Changed("Kept \"" + kept.name() + "\": " + kept.line() + key + ".");
    } catch (Refusal refusal) {
      return new Message.PromptRefused(add.name(), lines.fault(refusal));
    }
  }

  Message removeFavourite(Task.RemoveFavourite remove) {
    book.favourites().remove(remove.name());
    return new Message.Changed("Forgotten: " + remove.name() + ".");
  }
}
