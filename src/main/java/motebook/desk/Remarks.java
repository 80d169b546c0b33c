package motebook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.Sample;
import motebook.model.Surroundings.Outdoors;
import motebook.model.Work;
import motebook.reference.Limit;

/** What a reader must know beside the figures of a day. */
final class Remarks {
  private static final int NAMED = 3;
  private static final String LEAD = "lead";
  private static final Set<String> RAISING = Set.of("sweeping", "blow-down");

  private Remarks() {}

  static List<String> of(DayReckoning day, Optional<HeldLimit> limit) {
    List<String> remarks = new ArrayList<>();
    String set = day.shop().settings().limitSet();
    boolean dusty = day.sources().stream().anyMatch(day::reached);
    boolean uncovered = Uncovered.of(day).map(Uncovered::alone).orElse(false);
    if (!day.shop().reference().limitSets().contains(set)) {
      remarks.add(
          "This Motebook has no limits \""
              + set
              + "\", which the settings name: nothing is held against a limit. Choose others in the"
              + " settings, or with the command limits use.");
    } else if (dusty && limit.isEmpty() && !uncovered) {
      remarks.add(
          "No limit of the set \""
              + set
              + "\" applies to this day's wood on this date; the figures stand without one.");
    }
    limit
        .filter(held -> held.limit().fraction() == Limit.Fraction.TOTAL)
        .ifPresent(
            held ->
                remarks.add(
                    "The limit counts \"total\" dust; inhalable is taken as "
                        + day.shop().settings().totalConversion()
                        + " times total."));
    outdoorNeighbours(day).ifPresent(remarks::add);
    tooFastOutdoors(day).forEach(remarks::add);
    notServed(day).forEach(remarks::add);
    contradiction(day).ifPresent(remarks::add);
    sweptUp(day).forEach(remarks::add);
    day.sources().stream()
        .filter(day::isOwn)
        .flatMap(own -> day.credit(own).notes().stream())
        .distinct()
        .forEach(remarks::add);
    return remarks;
  }

  /** Dry cleaning raises again what anybody's work on lead paint or treated wood left lying. */
  private static Stream<String> sweptUp(DayReckoning day) {
    return day.sources().stream()
        .filter(own -> day.isOwn(own) && RAISING.contains(own.operation().key()))
        .flatMap(own -> day.sources().stream().filter(other -> leftToSweep(other, own)))
        .map(
            left ->
                "Dust of "
                    + left.material().name()
                    + " is left in "
                    + left.session().work().place()
                    + ": no dry sweeping, no blow-down; use a HEPA (class H) vacuum or wipe"
                    + " wet. Follow your local rules for "
                    + (left.material().cautions().contains(LEAD) ? "lead." : "treated wood."))
        .distinct();
  }

  private static boolean leftToSweep(Source left, Source sweeping) {
    Work before = left.session().work();
    Work work = sweeping.session().work();
    return left.operation().dusty()
        && !left.coveredByLimit()
        && before.place().equals(work.place())
        && before.startMinute() < work.endMinute();
  }

  /** A sample that cannot go with the rest moves every estimate, so every day says so. */
  private static Optional<String> contradiction(DayReckoning day) {
    List<Sample> far = day.shop().learned().contradicting();
    return far.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Measured and estimated contradict each other by more than three deviations in "
                + (far.size() == 1 ? "sample " : "samples ")
                + far.stream()
                    .limit(NAMED)
                    .map(sample -> sample.id() + " of " + sample.date())
                    .collect(Collectors.joining(", "))
                + (far.size() > NAMED ? " and " + (far.size() - NAMED) + " more" : "")
                + "; every estimate leans on them: check their times, their unit and what was"
                + " logged then.");
  }

  private static Optional<String> outdoorNeighbours(DayReckoning day) {
    TreeSet<String> names = new TreeSet<>();
    for (Source own : day.sources()) {
      for (Source other : day.sources()) {
        if (day.isOwn(own) && !day.isOwn(other) && besideOutdoors(own, other, day)) {
          names.add(other.session().work().person());
        }
      }
    }
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            String.join(", ", names)
                + " worked outdoors beside "
                + day.person()
                + "; outdoors the dust of others is taken as nothing, which is not quite so.");
  }

  /** Older books hold the wind of the weather report, which says little of the air at the face. */
  private static Stream<String> tooFastOutdoors(DayReckoning day) {
    return day.sources().stream()
        .filter(day::isOwn)
        .map(own -> day.shop().place(own.session().work().place()))
        .distinct()
        .filter(place -> place.surroundings() instanceof Outdoors air && air.capped())
        .map(
            place ->
                "The air at the face in "
                    + place.name()
                    + " is estimated as 60 m/min: outdoors the tool and the body rule it, not the"
                    + " wind.");
  }

  /** What was logged before a control's operations were put right stays, and is worth nothing. */
  private static Stream<String> notServed(DayReckoning day) {
    return day.sources().stream()
        .filter(day::isOwn)
        .flatMap(
            own ->
                own.kind().notServing().stream()
                    .map(
                        control ->
                            "In session %d %s counts as none: it does not help with %s. %s"
                                .formatted(
                                    own.session().id(),
                                    control.spoken(),
                                    own.operation().name(),
                                    control.advice())
                                .strip()));
  }

  private static boolean besideOutdoors(Source own, Source other, DayReckoning day) {
    return day.shop().place(own.session().work().place()).outdoors()
        && own.session().work().place().equals(other.session().work().place())
        && own.session().work().overlaps(other.session().work())
        && other.operation().dusty();
  }
}
