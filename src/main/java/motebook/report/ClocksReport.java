package motebook.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.desk.CareClock;
import motebook.desk.Clocks;
import motebook.desk.ElementStanding;
import motebook.desk.FilterStanding;
import motebook.model.Figures;
import motebook.reference.ElementClass;

/** How far the elements of masks and the shop's own filters have run. */
public final class ClocksReport {
  private static final String RULE = "change it when damaged, soiled or hard to breathe through";

  // NIOSH notice of 2 May 1997; 40 h or 30 days: common practice, no source.
  private static final String OILY_P =
      "; where there is oil, after the time that the maker gives (often 40 h of use or 30 days)";

  // NIOSH 96-101.
  private static final String OILY_R = "; once there is oil in the air, after one shift or 8 h";

  private ClocksReport() {}

  /** The lines of {@code gear clocks}: each thing, then its clocks, the first to run out first. */
  public static List<String> lines(List<ElementStanding> elements, List<FilterStanding> filters) {
    List<String> lines = new ArrayList<>();
    for (ElementStanding one : elements) {
      lines.add(one.element().name() + " on " + one.element().respirator() + ": " + worn(one));
      lines.addAll(clocks(one.clocks(), one.first()));
      rule(one.elementClass()).ifPresent(rule -> lines.add("  rule   " + rule));
    }
    for (FilterStanding one : filters) {
      lines.add(one.filter().name() + " in " + one.filter().place() + ": " + run(one));
      lines.addAll(clocks(one.clocks(), one.first()));
    }
    return lines.isEmpty() ? List.of("Nothing with a clock is in use.") : lines;
  }

  /**
   * What ends a dust filter that no clock of its class ends, or none before there was oil; empty
   * for the others.
   */
  public static Optional<String> rule(ElementClass kind) {
    if (!kind.particulate() || kind.gas()) {
      return Optional.empty();
    }
    return switch (kind.service()) {
      case OPEN -> Optional.of(kind.letter().equals("p") ? RULE + OILY_P : RULE);
      case OIL -> Optional.of(RULE + OILY_R);
      case DIRTY, SHIFT -> Optional.empty();
    };
  }

  private static String worn(ElementStanding one) {
    if (one.daysOpen().isEmpty()) {
      return "sealed";
    }
    return Figures.rounded(one.hoursWorn())
        + " h worn, "
        + dust(one)
        + "open "
        + one.daysOpen().getAsLong()
        + " days";
  }

  // Dust goes through what holds gases alone.
  private static String dust(ElementStanding one) {
    return one.elementClass().particulate()
        ? Figures.rounded(one.loadMg().typical())
            + " mg of dust (up to "
            + Figures.rounded(one.loadMg().high90())
            + "), "
        : "";
  }

  private static String run(FilterStanding one) {
    String run = Figures.rounded(one.runHours()) + " h run";
    return one.reading().isPresent()
        ? run + ", gauge " + Figures.plain(one.reading().getAsDouble())
        : run;
  }

  private static List<String> clocks(List<CareClock> clocks, Optional<CareClock> first) {
    List<String> lines = new ArrayList<>();
    first.ifPresent(clock -> lines.add("  first  " + told(clock)));
    clocks.stream()
        .filter(clock -> first.filter(clock::equals).isEmpty())
        .forEach(clock -> lines.add("         " + told(clock)));
    return lines;
  }

  private static String told(CareClock clock) {
    String forecast = Clocks.forecast(clock);
    return Clocks.ended(clock)
        + (forecast.isEmpty() ? "" : ", " + forecast)
        + (clock.ranOut().isPresent() ? ", over" : "");
  }

  /** The object of {@code gear clocks --json}. */
  public static Map<String, Object> object(
      List<ElementStanding> elements, List<FilterStanding> filters) {
    return Json.object(
        "elements", elements.stream().map(ClocksReport::object).toList(),
        "filters", filters.stream().map(ClocksReport::object).toList());
  }

  private static Map<String, Object> object(ElementStanding one) {
    return Json.object(
        "id", one.element().id(),
        "name", one.element().name(),
        "respirator", one.element().respirator(),
        "class", one.element().elementClass(),
        "hours_worn", one.hoursWorn(),
        "load_typical_mg", one.loadMg().typical(),
        "load_central_mg", one.loadMg().central(),
        "load_low90_mg", one.loadMg().low90(),
        "load_high90_mg", one.loadMg().high90(),
        "load_fine_typical_mg", one.typicalMg().fine(),
        "load_coarse_typical_mg", one.typicalMg().coarse(),
        "vapour_used_typical_percent", 100 * one.vapourUsed(),
        "days_open", one.daysOpen().isPresent() ? one.daysOpen().getAsLong() : null,
        "clocks", one.clocks().stream().map(ClocksReport::object).toList(),
        "first", one.first().map(ClocksReport::key).orElse(null));
  }

  private static Map<String, Object> object(FilterStanding one) {
    return Json.object(
        "id", one.filter().id(),
        "name", one.filter().name(),
        "place", one.filter().place(),
        "run_hours", one.runHours(),
        "gauge", orNull(one.reading()),
        "clocks", one.clocks().stream().map(ClocksReport::object).toList(),
        "first", one.first().map(ClocksReport::key).orElse(null));
  }

  private static Map<String, Object> object(CareClock clock) {
    Map<String, Object> object =
        Json.object(
            "clock", key(clock),
            "used", clock.used(),
            "limit", clock.limit(),
            "unit", clock.kind().unit(),
            "used_percent", 100 * clock.share(),
            "over", clock.ranOut().isPresent(),
            "ends", clock.ends().map(LocalDate::toString).orElse(null),
            "working_days_left", orNull(clock.workingDaysLeft()));
    if (clock.kind() == CareClock.Kind.VAPOUR) {
      object.put("hours_left_like_last", orNull(clock.hoursLeft()));
      object.put("working_days_left_like_last", orNull(clock.daysLeft()));
    }
    return object;
  }

  private static String key(CareClock clock) {
    return clock.kind().name().toLowerCase(Locale.ROOT);
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }
}
