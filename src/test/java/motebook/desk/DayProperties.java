package motebook.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.model.Session;
import motebook.model.Surroundings;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.science.Estimate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds for every day in every shop. */
class DayProperties {
  private static final Reference REFERENCE = Reference.shipped();

  @Property(tries = 300)
  void nothing_is_negative_or_not_a_number_and_shares_add_to_100(
      @ForAll("days") List<Work> works, @ForAll("rooms") Surroundings.Indoors room) {
    DayReport day = report(works, room);
    Estimate outside = day.outside().estimate();
    assertThat(
            List.of(
                outside.typical(),
                outside.central(),
                outside.low90(),
                outside.high90(),
                day.respirableOutsideTypical()))
        .allSatisfy(figure -> assertThat(figure).isFinite().isNotNegative());
    day.outside().chanceOverLimit().ifPresent(c -> assertThat(c).isBetween(0.0, 1.0));
    double shares =
        Stream.concat(
                day.sessions().stream().map(DayReport.SessionLine::sharePercent),
                day.others().stream().map(DayReport.OtherSource::sharePercent))
            .mapToDouble(Double::doubleValue)
            .sum();
    assertThat(shares).isCloseTo(outside.typical() > 0 ? 100 : 0, within(1e-9));
  }

  @Property(tries = 200)
  void doubling_every_emission_doubles_every_dose(
      @ForAll("days") List<Work> works, @ForAll("rooms") Surroundings.Indoors room) {
    DayReckoning once = reckoning(works, room, 1);
    DayReckoning twice = reckoning(works, room, 2);
    assertThat(twice.expectedTotal())
        .isCloseTo(2 * once.expectedTotal(), relative(once.expectedTotal()));
    Estimate a = Day.report(once).outside().estimate();
    Estimate b = Day.report(twice).outside().estimate();
    assertThat(b.typical()).isCloseTo(2 * a.typical(), relative(a.typical()));
    assertThat(b.central()).isCloseTo(2 * a.central(), relative(a.central()));
    assertThat(b.sigma()).isCloseTo(a.sigma(), within(1e-9));
  }

  @Property(tries = 200)
  void shifting_the_day_shifts_nothing(
      @ForAll("days") List<Work> works,
      @ForAll("rooms") Surroundings.Indoors room,
      @ForAll @IntRange(min = 1, max = 300) int shift) {
    List<Work> later =
        works.stream().map(w -> at(w, w.startMinute() + shift, w.minutes())).toList();
    assertSame(report(works, room), report(later, room));
  }

  @Property(tries = 300)
  void splitting_a_session_changes_neither_figure_nor_range(
      @ForAll("days") List<Work> works,
      @ForAll("rooms") Surroundings.Indoors room,
      @ForAll @IntRange(min = 0, max = 9) int which,
      @ForAll @DoubleRange(min = 0, max = 1) double where) {
    List<Work> split = new ArrayList<>(works);
    Work whole = split.remove(which % works.size());
    int first = Math.max(1, Math.min(whole.minutes() - 1, (int) (where * whole.minutes())));
    if (whole.minutes() < 2) {
      split.add(whole);
    } else {
      split.add(at(whole, whole.startMinute(), first));
      split.add(at(whole, whole.startMinute() + first, whole.minutes() - first));
    }
    assertSame(report(works, room), report(split, room));
  }

  @Property(tries = 200)
  void more_clean_air_never_raises_a_typical_dose(
      @ForAll("days") List<Work> works,
      @ForAll("rooms") Surroundings.Indoors room,
      @ForAll @DoubleRange(min = 0, max = 20) double more) {
    Surroundings.Indoors airier =
        new Surroundings.Indoors(
            room.volumeM3(),
            room.airChangesPerHour() + more,
            room.openAirChangesPerHour() + more,
            room.airSpeedMPerMin(),
            room.cleanerFlowM3PerMin(),
            room.fanFlowM3PerMin(),
            room.cleanerRunOnMinutes());
    double before = report(works, room).outside().estimate().typical();
    double after = report(works, airier).outside().estimate().typical();
    assertThat(after).isLessThanOrEqualTo(before * (1 + 1e-12));
  }

  private static void assertSame(DayReport a, DayReport b) {
    Estimate one = a.outside().estimate();
    Estimate other = b.outside().estimate();
    assertThat(other.typical()).isCloseTo(one.typical(), relative(one.typical()));
    assertThat(other.central()).isCloseTo(one.central(), relative(one.central()));
    assertThat(other.sigma()).isCloseTo(one.sigma(), within(1e-9));
  }

  private static org.assertj.core.data.Offset<Double> relative(double value) {
    return within(1e-9 * Math.max(value, 1e-12));
  }

  private static DayReport report(List<Work> works, Surroundings.Indoors room) {
    return Day.report(reckoning(works, room, 1));
  }

  private static DayReckoning reckoning(List<Work> works, Surroundings.Indoors room, double emit) {
    List<Source> sources = new ArrayList<>();
    for (Work work : works) {
      Source source = Source.of(new Session(sources.size() + 1, work), false, REFERENCE);
      sources.add(source.emitting(source.mgPerMin() * emit));
    }
    return DayReckoning.ofSources(Shops.DAY, "me", sources, new Shops().in(room).shop());
  }

  private static Work at(Work w, int start, int minutes) {
    return new Work(
        w.person(),
        w.place(),
        w.date(),
        LocalTime.of(start / 60, start % 60),
        minutes,
        w.operation(),
        w.material(),
        w.controls(),
        w.mask(),
        w.note());
  }

  /** Up to three people, each working through the day without overlap. */
  @Provide
  Arbitrary<List<Work>> days() {
    Arbitrary<List<Work>> me = person("me").filter(list -> !list.isEmpty());
    return Combinators.combine(me, person("Ana"), person("Ben"))
        .as((a, b, c) -> Stream.of(a, b, c).flatMap(List::stream).toList());
  }

  private static Arbitrary<List<Work>> person(String name) {
    Arbitrary<Integer> gap = Arbitraries.integers().between(0, 60);
    Arbitrary<Integer> minutes = Arbitraries.integers().between(1, 120);
    return Combinators.combine(gap, minutes, job())
        .as((g, m, job) -> Map.entry(new int[] {g, m}, job))
        .list()
        .ofMaxSize(4)
        .map(
            list -> {
              List<Work> works = new ArrayList<>();
              int now = 360;
              for (var entry : list) {
                now += entry.getKey()[0];
                works.add(at(entry.getValue().of(name), now, entry.getKey()[1]));
                now += entry.getKey()[1];
              }
              return works;
            });
  }

  private record Job(String place, String operation, String material, List<String> controls) {
    Work of(String person) {
      return new Work(
          person,
          place,
          Shops.DAY,
          LocalTime.NOON,
          1,
          operation,
          Optional.of(material),
          controls,
          Optional.empty(),
          "");
    }
  }

  private static Arbitrary<Job> job() {
    return Combinators.combine(
            Arbitraries.of("shop", "shop", "shop", "yard", "barn"),
            Arbitraries.of(REFERENCE.operations()),
            Arbitraries.of(REFERENCE.materials()),
            Arbitraries.of(REFERENCE.controls()).set().ofMaxSize(3))
        .as(
            (place, operation, material, controls) ->
                new Job(place, operation.key(), material.key(), serving(operation, controls)));
  }

  private static List<String> serving(Operation operation, java.util.Set<Control> controls) {
    return controls.stream()
        .filter(control -> control.rowFor(operation.key()).isPresent())
        .map(Control::key)
        .toList();
  }

  /** From a sealed closet to a windy hall. */
  @Provide
  Arbitrary<Surroundings.Indoors> rooms() {
    return Combinators.combine(
            Arbitraries.doubles().between(5, 2000),
            Arbitraries.of(0.0, 0.1, 1.0, 12.0),
            Arbitraries.of(0.0, 5.0),
            Arbitraries.doubles().between(1, 60),
            Arbitraries.doubles().between(0, 50),
            Arbitraries.of(0, 15, 600))
        .as(
            (volume, closed, more, speed, flow, runOn) ->
                Shops.withCleaner(Shops.room(volume, closed, closed + more, speed), flow, runOn));
  }
}
