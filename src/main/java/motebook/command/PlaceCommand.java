package motebook.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import motebook.desk.Unlikely;
import motebook.journal.Book;
import motebook.journal.PlaceVersion;
import motebook.model.Action;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Text;
import motebook.model.Units;
import motebook.report.Json;
import motebook.report.PlaceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The places of the shop. */
final class PlaceCommand {
  private PlaceCommand() {}

  @Command(name = "place", description = "The places where work is done, and what their air does.")
  static final class Group extends GroupCommand {}

  @Command(
      name = "add",
      description = "Adds a place; figures not given are as in the default shop.")
  static final class Add implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    @Mixin private PlaceFigures figures;
    @Mixin private Confirmation confirmation;

    Add(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        Units units = book.settings().units();
        Surroundings surroundings = figures.fresh(units);
        if (confirmation.given(desk.world(), Unlikely.of(surroundings), units)) {
          Place place = book.premises().addPlace(name, surroundings);
          desk.out()
              .println("Added " + place.name() + ": " + PlaceReport.figures(surroundings, units));
        }
      }
      return ExitCode.DONE;
    }
  }

  @Command(
      name = "change",
      description = {
        "Corrects a place on all days, or, with --from, records a change in the shop from that day",
        "on. What is not given stays."
      })
  static final class ChangeIt implements Callable<Integer> {
    private final Desk desk;

    @Parameters(paramLabel = "NAME")
    private String name;

    @Option(names = "--from", paramLabel = "DATE", description = "First day of the change.")
    private String from;

    @Mixin private PlaceFigures figures;
    @Mixin private Confirmation confirmation;

    ChangeIt(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      if (figures.none()) {
        throw new Refusal("Say what changes, for example: place change shop --volume 85");
      }
      Optional<LocalDate> first = Desk.optional(from).map(desk::date);
      try (Book book = desk.open()) {
        Place was = place(name, book, desk.today());
        Units units = book.settings().units();
        List<Unlikely> unlikely =
            new ArrayList<>(Unlikely.of(figures.applied(was.surroundings(), units)));
        unlikely.removeAll(Unlikely.of(was.surroundings()));
        if (!confirmation.given(desk.world(), unlikely, units)) {
          return ExitCode.DONE;
        }
        book.premises()
            .changePlace(
                was.name(),
                surroundings -> figures.applied(surroundings, units),
                first,
                "changed " + was.name());
        Place now = place(name, book, first.orElse(desk.today()));
        desk.out().println(now.name() + ": " + PlaceReport.figures(now.surroundings(), units));
        desk.out().println(since(first));
      }
      return ExitCode.DONE;
    }

    private static String since(Optional<LocalDate> first) {
      return first
          .map(date -> "Days from " + date + " on are reckoned so; earlier days stay as they were.")
          .orElse(
              "All days are reckoned so, past ones too. For a change in the shop from a day on, add"
                  + " --from DATE.");
    }
  }

  @Command(name = "list", description = "Lists the places with their figures.")
  static final class ListAll implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    ListAll(Desk desk) {
      this.desk = desk;
    }

    @Override
    public Integer call() {
      try (Book book = desk.open()) {
        List<Place> places = book.premises().places(desk.today());
        desk.answer(
            answer.json(),
            () -> Json.object("places", places.stream().map(p -> object(p, book)).toList()),
            () ->
                places.stream()
                    .flatMap(
                        p ->
                            PlaceReport.lines(
                                p.name(),
                                book.premises().placeVersions(p.name()),
                                book.settings().units())
                                .stream())
                    .toList());
      }
      return ExitCode.DONE;
    }

    private static Map<String, Object> object(Place place, Book book) {
      List<PlaceVersion> versions = book.premises().placeVersions(place.name());
      return Json.object(
          "name", place.name(), "versions", versions.stream().map(PlaceReport::object).toList());
    }
  }

  private static Place place(String name, Book book, LocalDate on) {
    return book.premises()
        .place(Text.clean(name), on)
        .orElseThrow(
            () ->
                new Refusal(
                    "The book knows no place \""
                        + Text.clean(name)
                        + "\". It knows: "
                        + String.join(
                            ", ", book.premises().places(on).stream().map(Place::name).toList())
                        + ".",
                    new Action.AddPlace()));
  }
}
