package motebook.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import motebook.desk.Ledger;
import motebook.entry.Days;
import motebook.entry.Scene;
import motebook.journal.Book;
import motebook.journal.Changes;
import motebook.model.Action;
import motebook.model.Person;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.report.ActionText;
import motebook.report.Ink;
import motebook.report.Invocation;
import motebook.report.Json;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** What every command shares: the book, the ink, the scene a line is read against. */
final class Desk {
  private final World world;
  private Optional<Book> opened = Optional.empty();

  @Option(
      names = "--book",
      paramLabel = "FILE",
      scope = ScopeType.INHERIT,
      description = "The book's file (else MOTEBOOK_BOOK, else the data folder).")
  private Path chosen;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      scope = ScopeType.INHERIT,
      defaultValue = "auto",
      description = "auto, always or never; NO_COLOR is honoured.")
  private Color color = Color.AUTO;

  Desk(World world) {
    this.world = world;
  }

  Desk(World world, Path book) {
    this(world);
    this.chosen = book;
  }

  World world() {
    return world;
  }

  Clock clock() {
    return world.clock();
  }

  PrintWriter out() {
    return world.out();
  }

  /** The book that is meant: the option, the environment, the XDG data folder. */
  Path bookFile() {
    return chosen != null ? chosen : UsualBook.of(world.environment());
  }

  private static boolean given(String value) {
    return value != null && !value.isBlank();
  }

  Book open() {
    Book book = Book.open(bookFile(), clock());
    opened = Optional.of(book);
    return book;
  }

  /** What went wrong beside the last change, such as a daily copy that could not be made. */
  Optional<String> warning() {
    return opened.map(Book::changes).flatMap(Changes::warning);
  }

  Color color() {
    return color;
  }

  private boolean colored() {
    return switch (color) {
      case ALWAYS -> true;
      case NEVER -> false;
      case AUTO -> world.outIsTerminal() && !given(world.environment().get("NO_COLOR"));
    };
  }

  Ink ink() {
    return colored() ? Ink.BOLD : Ink.PLAIN;
  }

  LocalDate today() {
    return LocalDate.now(clock());
  }

  /** The minute of today that it is. */
  int minuteNow() {
    return LocalDateTime.now(clock()).get(ChronoField.MINUTE_OF_DAY);
  }

  /** A date as a person gives it; today where none is given. */
  LocalDate date(String given) {
    if (given == null) {
      return today();
    }
    if (given.equals(ActionText.DAY)) {
      throw new Refusal("Give the day in the place of DATE, like 2026-03-02, or yesterday.");
    }
    return Days.parse(given, today())
        .orElseThrow(
            () ->
                new Refusal(
                    "\""
                        + Text.clean(given)
                        + "\" is no date: say 2026-03-02, today, yesterday or a weekday."));
  }

  Scene scene(Book book) {
    return new Ledger(book).scene(LocalDateTime.now(clock()), "");
  }

  /** The person's name as the book spells it; the book's own person where none is given. */
  String person(String given, Book book) {
    if (given == null) {
      return book.settings().person();
    }
    List<Person> people = book.premises().people();
    return people.stream()
        .map(Person::name)
        .filter(name -> Text.folded(name).equals(Text.folded(given)))
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    "There is no person \""
                        + Text.clean(given)
                        + "\" in this book. There are: "
                        + String.join(", ", people.stream().map(Person::name).toList())
                        + ".",
                    new Action.AddPerson()));
  }

  /** Prints an answer, as JSON or as lines. */
  void answer(boolean json, Supplier<Object> object, Supplier<List<String>> lines) {
    if (json) {
      out().println(Json.write(object.get()));
    } else {
      lines.get().forEach(out()::println);
    }
  }

  /** How a shell calls the program for this book. */
  Invocation program() {
    Optional<Path> usual = UsualBook.find(world.environment());
    return chosen == null ? Invocation.USUAL : Invocation.of(chosen, usual);
  }

  /** The default of an optional string. */
  static Optional<String> optional(String value) {
    return Optional.ofNullable(value);
  }
}
