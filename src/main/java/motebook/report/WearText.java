package motebook.report;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.desk.CareClock;
import motebook.desk.Clocks;
import motebook.desk.WeekWear;
import motebook.desk.WeekWear.OfElement;
import motebook.desk.WeekWear.OfFilter;
import motebook.model.Figures;
import motebook.model.Retirement;

/** What a week used up of masks and filters, a line for each. */
public final class WearText {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);

  private WearText() {}

  /** The lines, masks first; none where nothing was used up. */
  public static List<String> lines(WeekWear wear, String person) {
    return Stream.concat(
            wear.elements().stream().map(used -> element(used, person)),
            wear.filters().stream().map(WearText::filter))
        .toList();
  }

  /** All of it in one line, without loads and limits; empty where nothing was used up. */
  public static String brief(WeekWear wear) {
    return Stream.concat(
            wear.elements().stream().map(WearText::brief),
            wear.filters().stream().map(WearText::brief))
        .collect(Collectors.joining("; "));
  }

  private static String brief(OfElement used) {
    List<String> said = new ArrayList<>();
    if (used.hours() > 0) {
      said.add(Figures.rounded(used.hours()) + " h");
    }
    used.takenOff().ifPresent(gone -> said.add(gone(gone)));
    used.spent().forEach(clock -> said.add("ended " + day(clock)));
    return used.element().name() + " " + (said.isEmpty() ? "put on" : String.join(", ", said));
  }

  private static String brief(OfFilter used) {
    List<String> said = new ArrayList<>(List.of(Figures.rounded(used.runHours()) + " h"));
    used.upkeep().forEach(done -> said.add(done.what().key() + " " + DAY.format(done.date())));
    used.takenOff().ifPresent(gone -> said.add(gone(gone)));
    used.spent().forEach(clock -> said.add("due since " + day(clock)));
    return used.filter().name() + " " + String.join(", ", said);
  }

  private static String day(CareClock clock) {
    return DAY.format(clock.ranOut().orElseThrow().date());
  }

  private static String element(OfElement used, String person) {
    List<String> said = new ArrayList<>();
    if (used.hours() > 0) {
      said.add(
          Figures.rounded(used.hours())
              + " h worn"
              + share(used.hours(), used.hoursLimit(), "h")
              + others(used, person));
    }
    if (used.loadMg().central() > 0) {
      said.add(
          Figures.rounded(used.loadMg().central())
              + " mg of dust"
              + share(used.loadMg().central(), used.loadLimitMg(), "mg"));
    }
    used.vapour()
        .filter(clock -> !used.spent().contains(clock))
        .ifPresent(clock -> said.add("vapour life " + Clocks.left(clock)));
    used.putOn().ifPresent(day -> said.add("put on " + DAY.format(day)));
    used.takenOff().ifPresent(gone -> said.add(gone(gone)));
    used.spent().forEach(clock -> said.add(spent(clock)));
    return used.element().name() + ": " + String.join(", ", said);
  }

  private static String share(double used, OptionalDouble limit, String unit) {
    return limit.isPresent()
        ? " ("
            + Figures.percent(100 * used / limit.getAsDouble())
            + " of "
            + Figures.plain(limit.getAsDouble())
            + " "
            + unit
            + ")"
        : "";
  }

  private static String others(OfElement used, String person) {
    Map<String, Double> all = used.hoursByPerson();
    String others =
        all.entrySet().stream()
            .filter(entry -> !entry.getKey().equals(person))
            .map(entry -> Figures.rounded(entry.getValue()) + " h by " + entry.getKey())
            .collect(Collectors.joining(", "));
    return others.isEmpty() ? "" : ", of it " + others;
  }

  private static String gone(Retirement gone) {
    return (gone.why().equals(Retirement.CHANGED) ? "changed " : "taken off ")
        + DAY.format(gone.on())
        + (gone.why().equals(Retirement.CHANGED) ? "" : " (" + gone.why() + ")");
  }

  private static String spent(CareClock clock) {
    return "came to its end "
        + DAY.format(clock.ranOut().orElseThrow().date())
        + " ("
        + clock.kind().words()
        + ")";
  }

  private static String filter(OfFilter used) {
    List<String> said = new ArrayList<>();
    said.add(Figures.rounded(used.runHours()) + " h run");
    used.upkeep().forEach(done -> said.add(done.what().key() + " " + DAY.format(done.date())));
    used.takenOff().ifPresent(gone -> said.add(gone(gone)));
    used.spent()
        .forEach(
            clock ->
                said.add(
                    "due since "
                        + DAY.format(clock.ranOut().orElseThrow().date())
                        + " ("
                        + clock.kind().words()
                        + ")"));
    return used.filter().name() + ": " + String.join(", ", said);
  }
}
