package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import motebook.model.Amount;
import motebook.model.FitRecord;
import motebook.model.MaskUse;
import motebook.model.OwnFigure;
import motebook.model.OwnFigures;
import motebook.model.OwnFinish;
import motebook.model.Refusal;
import motebook.model.Retirement;
import motebook.model.Sample;
import motebook.model.Session;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;
import motebook.model.Units;
import motebook.model.Upkeep;
import motebook.model.VapourLimits;
import motebook.model.Work;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Whatever is done to a book, undo leads back to exactly what it held. */
class UndoPropertiesTest {
  private static final String[] NOTES = {
    "",
    "plain",
    "quote ' and \" and \\",
    "Zoë ³ 木",
    "{\"a\":1}",
    "=1+1",
    "@x",
    "-5",
    "+49 30",
    "'apart",
    "''twice",
    "a;b=c, d",
    "two\nlines\tand a tab",
    "\\"
  };

  @Property(tries = 60)
  void undo_leads_back_through_any_changes(
      @ForAll @Size(min = 1, max = 25) List<@IntRange(max = 14) Integer> steps, @ForAll long seed) {
    Path folder = Shop.scratch();
    try (Book book = Shop.open(folder)) {
      Random random = new Random(seed);
      Deque<List<String>> before = new ArrayDeque<>();
      for (int step : steps) {
        play(book, folder, random, step, before);
      }
      while (!before.isEmpty()) {
        assertThat(book.changes().undo()).isPresent();
        assertThat(Shop.content(folder)).isEqualTo(before.pop());
      }
      assertThat(book.changes().undo()).isEmpty();
      assertThat(book.verify()).isEmpty();
    } finally {
      Shop.clearAway(folder);
    }
  }

  /** Makes a change, and remembers what was there before if one was made. */
  private static void play(
      Book book, Path folder, Random random, int step, Deque<List<String>> before) {
    List<String> content = Shop.content(folder);
    int changes = book.changes().history(1000).size();
    if (step == 7 && !before.isEmpty()) {
      book.changes().undo();
      assertThat(Shop.content(folder)).isEqualTo(before.pop());
      return;
    }
    try {
      change(book, random, step);
    } catch (Refusal refused) {
      assertThat(Shop.content(folder)).isEqualTo(content);
    }
    if (book.changes().history(1000).size() > changes) {
      before.push(content);
    }
  }

  static void change(Book book, Random random, int step) {
    List<Session> sessions =
        book.sessionsBetween(Shop.MONDAY.minusDays(9), Shop.MONDAY.plusDays(9));
    switch (step) {
      case 0 ->
          book.premises().addPerson(odd(random) + "Person " + (char) ('a' + random.nextInt(26)));
      case 1 -> book.premises().addPlace("Place " + (char) ('a' + random.nextInt(26)), air(random));
      case 2 -> book.log(work(book, random));
      case 3 -> book.logAll(List.of(work(book, random), work(book, random)), "Two");
      case 4 ->
          book.premises().changePlace(place(book, random), s -> air(random), day(random), "Air");
      case 5 ->
          book.change(
              new Settings(
                      person(book, random), place(book, random), "osha", 1 + random.nextDouble(), 7)
                  .withUnits(random.nextBoolean() ? Units.US : Units.METRIC)
                  .withEquipment(List.of("a", "b").subList(0, random.nextInt(3)))
                  .withVapourLimits(
                      random.nextBoolean() ? VapourLimits.NIOSH : VapourLimits.STRICTER)
                  .withFigures(OwnFigures.SHIPPED.with(figure(random), 6)),
              "Settings");
      case 8 -> bench(book, random);
      case 9 -> stopwatch(book, random);
      case 10 -> hang(book, random);
      case 11 -> tend(book, random);
      case 12 -> takeDown(book, random);
      case 13 -> fit(book, random);
      case 14 -> book.samples().add(List.of(sample(book, random)), "A sample");
      default -> {
        if (!sessions.isEmpty()) {
          amendOrDelete(book, random, sessions.get(random.nextInt(sessions.size())));
        }
      }
    }
  }

  private static OwnFigure figure(Random random) {
    return List.of(OwnFigure.SOON_DAYS, OwnFigure.OPENED_GAS_MONTHS).get(random.nextInt(2));
  }

  /** What a name may begin with. */
  private static String odd(Random random) {
    return List.of("", "", "", "=", "'", "@", "x;y=", "\\").get(random.nextInt(8));
  }

  private static Sample sample(Book book, Random random) {
    int from = random.nextInt(1000);
    boolean told = random.nextBoolean();
    return new Sample(
        0,
        person(book, random),
        Shop.MONDAY,
        from,
        from + 1 + random.nextInt(440),
        "inhalable",
        told ? Sample.Kind.DIRECT_READING : Sample.Kind.GRAVIMETRIC,
        told
            ? new Sample.Told(1e-3 + random.nextDouble(), random.nextBoolean())
            : new Sample.Weighed(
                random.nextDouble() - 0.5, -1e-3 / 3, 0.01 + random.nextDouble(), 0.03),
        0.01 + random.nextDouble(),
        NOTES[random.nextInt(NOTES.length)]);
  }

  private static void bench(Book book, Random random) {
    String name = "Line " + (char) ('a' + random.nextInt(3));
    switch (random.nextInt(6)) {
      case 4 -> book.finishes().add(sheet(random));
      case 5 -> book.finishes().replace(sheet(random));
      case 0 -> book.favourites().add(name, "40m planer");
      case 1 -> book.favourites().remove(name);
      case 2 -> book.setAside().put(Shop.MONDAY, person(book, random), List.of("x", "y"));
      default -> book.setAside().bringBack(Shop.MONDAY, person(book, random));
    }
  }

  private static void stopwatch(Book book, Random random) {
    String person = person(book, random);
    switch (random.nextInt(5)) {
      case 0, 1 -> book.stopwatches().start(person, "planer of oak");
      case 2 -> book.stopwatches().pause(person);
      case 3 -> book.stopwatches().goOn(person);
      default -> book.stopwatches().stop(person, List.of(work(book, random)));
    }
  }

  private static void hang(Book book, Random random) {
    LocalDate day = Shop.MONDAY.minusDays(random.nextInt(30));
    String mask = "Mask " + (char) ('a' + random.nextInt(2));
    switch (random.nextInt(3)) {
      case 0 -> book.rack().add(GearBookTest.mask(mask, person(book, random)));
      case 1 -> book.rack().add(GearBookTest.element(gear(random), mask, day));
      default -> book.rack().add(GearBookTest.filter(gear(random), day));
    }
  }

  private static String gear(Random random) {
    return "Gear " + (char) ('a' + random.nextInt(3));
  }

  private static void tend(Book book, Random random) {
    LocalDate day = Shop.MONDAY.minusDays(random.nextInt(20));
    int step = random.nextInt(3);
    if (step == 0) {
      book.rack().change(gear(random), day);
    } else if (step == 1) {
      book.rack().give("Mask a", List.of(person(book, random)));
    } else {
      OptionalDouble reading = OptionalDouble.of(random.nextDouble());
      book.rack()
          .note(new Upkeep(0, gear(random), day, Optional.empty(), Upkeep.What.GAUGE, reading));
    }
  }

  private static void takeDown(Book book, Random random) {
    LocalDate day = Shop.MONDAY.minusDays(random.nextInt(10));
    String name = random.nextInt(3) == 0 ? "Mask a" : gear(random);
    if (random.nextBoolean()) {
      book.retiring().retire(name, new Retirement(day, "soiled"));
    } else {
      book.retiring().delete(name, day);
    }
  }

  private static void fit(Book book, Random random) {
    String person = person(book, random);
    LocalDate day = Shop.MONDAY.minusDays(random.nextInt(20));
    switch (random.nextInt(4)) {
      case 0 -> book.fits().note(new FitRecord.Medical(0, person, day));
      case 1 -> book.fits().note(new FitRecord.Hair(0, person, day, Optional.empty()));
      case 2 -> book.fits().endHair(person, day);
      default ->
          book.fits()
              .note(
                  new FitRecord.FitTest(
                      0,
                      "Mask a",
                      person,
                      day,
                      new FitRecord.Quantitative(
                          List.of(1e3 * random.nextDouble() + 1, 100 / 3.0))));
    }
  }

  private static void amendOrDelete(Book book, Random random, Session session) {
    if (random.nextBoolean()) {
      book.delete(session.id());
    } else {
      book.amend(session.id(), work(book, random));
    }
  }

  private static Work work(Book book, Random random) {
    Optional<MaskUse> mask =
        random.nextBoolean()
            ? Optional.of(new MaskUse("mask", random.nextBoolean(), 1 + 99 * random.nextDouble()))
            : Optional.empty();
    List<String> controls = new ArrayList<>(List.of("collector", "air-cleaner", "doors-open"));
    controls.subList(0, random.nextInt(4)).clear();
    return new Work(
        person(book, random),
        place(book, random),
        Shop.MONDAY.plusDays(random.nextInt(3)),
        LocalTime.of(random.nextInt(20), random.nextInt(60)),
        1 + random.nextInt(60),
        "planer",
        Optional.of("oak").filter(any -> random.nextBoolean()),
        controls,
        mask,
        amounts(random),
        NOTES[random.nextInt(NOTES.length)]);
  }

  private static List<Amount> amounts(Random random) {
    return Stream.of("lacquer", "shellac", "epoxy")
        .limit(random.nextInt(4))
        .map(key -> new Amount(key, 0.1 + 1000 * random.nextDouble()))
        .toList();
  }

  private static OwnFinish sheet(Random random) {
    double part = random.nextDouble() * 0.9 + 0.05;
    String name = "Can " + (char) ('a' + random.nextInt(3));
    return new OwnFinish(
        name,
        "lacquer",
        1 + 1000 * random.nextDouble(),
        Map.of("toluene", part, "acetone", 1 - part));
  }

  private static String person(Book book, Random random) {
    return book.premises().people().get(random.nextInt(book.premises().people().size())).name();
  }

  private static String place(Book book, Random random) {
    var places = book.premises().places(Shop.MONDAY);
    return places.get(random.nextInt(places.size())).name();
  }

  private static Optional<LocalDate> day(Random random) {
    return random.nextBoolean()
        ? Optional.empty()
        : Optional.of(Shop.MONDAY.plusDays(random.nextInt(5)));
  }

  private static Surroundings air(Random random) {
    double closed = random.nextDouble() * 5;
    return random.nextInt(4) == 0
        ? new Outdoors(Math.exp(random.nextDouble() * 5))
        : new Indoors(
            1 + 1000 * random.nextDouble(),
            closed,
            closed + random.nextDouble(),
            0.01 + random.nextDouble(),
            random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(random.nextDouble()),
            random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(1e-3 / 3),
            random.nextInt(100));
  }
}
