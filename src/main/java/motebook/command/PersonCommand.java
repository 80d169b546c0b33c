package motebook.command;

import java.util.List;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Person;
import motebook.report.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Everybody in the book. */
final class PersonCommand {
  private PersonCommand() {}

  @Command(name = "person", description = "The people of the shop.")
  static final class Group extends GroupCommand {}

  @Command(name = "add", description = "Adds somebody.")
  static final class Add implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    Add(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        desk.out().println("Added " + book.premises().addPerson(name).name() + ".");
      }
      return ExitCode.DONE;
    }
  }

  @Command(name = "rename", description = "Gives somebody another name, on every day.")
  static final class Rename implements Callable<Integer> {
    private final Desk desk;

    @Parameters(index = "0", paramLabel = "OLD")
    private String old;

    @Parameters(index = "1", paramLabel = "NEW")
    private String name;

    Rename(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        String was = desk.person(old, book);
        desk.out().println(was + " is now " + book.premises().renamePerson(was, name).name() + ".");
      }
      return ExitCode.DONE;
    }
  }

  @Command(name = "use", description = "Makes somebody the book's own person.")
  static final class Use implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    Use(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        String own = desk.person(name, book);
        book.change(book.settings().withPerson(own), "made " + own + " the book's own person");
        desk.out().println("Lines and days without a name now mean " + own + ".");
      }
      return ExitCode.DONE;
    }
  }

  @Command(name = "list", description = "Lists everybody.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        List<String> names = book.premises().people().stream().map(Person::name).toList();
        String own = book.settings().person();
        desk.answer(
            answer.json(),
            () -> Json.object("people", names, "own", own),
            () ->
                names.stream()
                    .map(name -> name.equals(own) ? name + "  (the book's own person)" : name)
                    .toList());
      }
      return ExitCode.DONE;
    }
  }
}
