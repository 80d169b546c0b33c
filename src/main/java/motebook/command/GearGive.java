package motebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Respirator;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "give",
    description = {
      "Says anew whose a respirator is: those named and no others, or anybody's.",
      "Example: motebook gear give \"half mask\" --to Ana --to Zoë"
    })
final class GearGive implements Callable<Integer> {
  private final Desk desk;

  @Parameters(paramLabel = "NAME")
  private String name;

  @Option(names = "--to", paramLabel = "PERSON", description = "Whose; may be given again.")
  private List<String> people = new ArrayList<>();

  @Option(names = "--to-anybody", description = "It is anybody's.")
  private boolean anybody;

  GearGive(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (people.isEmpty() != anybody) {
      throw new Refusal("Say whose it is: --to PERSON, again for each, or --to-anybody.");
    }
    try (Book book = desk.open()) {
      List<String> owners = people.stream().map(one -> desk.person(one, book)).toList();
      Respirator given = book.rack().give(name, owners);
      String whose = anybody ? "anybody's" : "for " + String.join(" and ", given.people());
      desk.out().println(given.name() + " is " + whose + " now.");
    }
    return ExitCode.DONE;
  }
}
