package motebook.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import motebook.desk.Allowed;
import motebook.journal.Book;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.model.ShopFilter;
import motebook.report.GearReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is new on the rack. */
final class GearAdd {
  private GearAdd() {}

  @Command(name = "add", description = "Adds a respirator, an element, a shop filter or a finish.")
  static final class Group extends GroupCommand {}

  @Command(
      name = "respirator",
      description = {
        "Adds a mask or hood. One of another size or make is another respirator.",
        "Example: motebook gear add respirator \"half mask\" --facepiece \"half mask\" --size M"
      })
  static final class OfRespirator implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    @Option(
        names = "--facepiece",
        required = true,
        paramLabel = "PART",
        description = "As the table calls it: \"half mask\", \"full facepiece\", hood, …")
    private String facepiece;

    @Option(
        names = "--kind",
        paramLabel = "KIND",
        defaultValue = "air-purifying",
        description = "air-purifying (as shipped), powered air-purifying, \"supplied air, …\".")
    private String kind;

    @Option(
        names = "--scheme",
        paramLabel = "SCHEME",
        defaultValue = "osha",
        description = "Whose factors and fit tests count: osha (as shipped) or uk.")
    private String scheme;

    @Option(names = "--size", paramLabel = "SIZE", description = "As marked on it.")
    private String size;

    @Option(names = "--make", paramLabel = "MAKE", description = "Maker and model.")
    private String make;

    @Option(
        names = "--for",
        paramLabel = "PERSON",
        description = "Whose it is; may be given again. Anybody's where nobody is named.")
    private List<String> people = new ArrayList<>();

    OfRespirator(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      Allowed allowed = GearCommand.allowed();
      Scheme whose = allowed.scheme(scheme);
      String how = allowed.kind(whose, kind);
      String part = allowed.facepiece(whose, how, facepiece);
      try (Book book = desk.open()) {
        List<String> owners = people.stream().map(one -> desk.person(one, book)).toList();
        Respirator added =
            book.rack()
                .add(
                    new Respirator(
                        0,
                        name,
                        whose,
                        how,
                        part,
                        Desk.optional(size),
                        Desk.optional(make),
                        owners,
                        Optional.empty()));
        String told = new GearReport(allowed).told(added);
        desk.out().println("Added " + added.name() + ": " + told);
      }
      return ExitCode.DONE;
    }
  }

  @Command(
      name = "filter",
      description = {
        "Adds a filter or bag of a dust collector, a vacuum or an air cleaner.",
        "Example: motebook gear add filter \"collector bag\" --on collector --clean-every 10"
      })
  static final class OfFilter implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    @Option(
        names = "--on",
        required = true,
        paramLabel = "CONTROL",
        description = "collector, vacuum or air-cleaner.")
    private String on;

    @Option(
        names = "--place",
        paramLabel = "PLACE",
        description = "Where that stands; the book's own place unless told.")
    private String place;

    @Option(
        names = "--from",
        paramLabel = "DATE",
        description = "First day its hours are counted; today unless told.")
    private String from;

    @Option(names = "--clean-every", paramLabel = "H", description = "Run hours to a cleaning.")
    private String cleanEvery;

    @Option(names = "--change-at", paramLabel = "H", description = "Run hours to a change.")
    private String changeAt;

    @Option(names = "--gauge-clean", paramLabel = "X", description = "The gauge when clean.")
    private String gaugeClean;

    @Option(
        names = "--gauge-change",
        paramLabel = "Y",
        description = "The gauge when it must be changed.")
    private String gaugeChange;

    OfFilter(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      Allowed allowed = GearCommand.allowed();
      String seat = allowed.seat(on);
      try (Book book = desk.open()) {
        ShopFilter added =
            book.rack()
                .add(
                    new ShopFilter(
                        0,
                        name,
                        seat,
                        place(book),
                        desk.date(from),
                        figure("--clean-every", cleanEvery),
                        figure("--change-at", changeAt),
                        reading("--gauge-clean", gaugeClean),
                        reading("--gauge-change", gaugeChange),
                        Optional.empty()));
        String told = new GearReport(allowed).told(added);
        desk.out().println("Added " + added.name() + ": " + told);
      }
      return ExitCode.DONE;
    }

    private String place(Book book) {
      String wanted = place == null ? book.settings().place() : place;
      return book.premises()
          .place(wanted, desk.today())
          .orElseThrow(
              () ->
                  new Refusal(
                      "The book knows no place \"%s\". It knows: %s."
                          .formatted(
                              wanted,
                              String.join(
                                  ", ",
                                  book.premises().places(desk.today()).stream()
                                      .map(p -> p.name())
                                      .toList()))))
          .name();
    }
  }

  static OptionalDouble figure(String option, String text) {
    return text == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(Numbers.positive(option, text));
  }

  private static OptionalDouble reading(String option, String text) {
    return text == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(Numbers.within(option, text, -1e6, 1e6));
  }
}
