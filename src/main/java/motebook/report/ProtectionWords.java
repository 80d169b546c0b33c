package motebook.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import motebook.desk.DayReport;
import motebook.desk.Foremost;
import motebook.desk.RequiredProtection;
import motebook.desk.Shortfall;
import motebook.desk.VapourReport;
import motebook.desk.VapourReport.AboveIdlh;
import motebook.desk.VapourReport.OfShortTerm;
import motebook.model.Figures;
import motebook.reference.Solvent;

/** How much protection a day needs, what counts, and where no mask of the book is enough. */
public final class ProtectionWords {
  private ProtectionWords() {}

  /** {@code dust needs a factor of 6 (upper end 45); yours counts 10}, and the same for vapour. */
  public static List<String> needs(DayReport day) {
    List<String> lines = new ArrayList<>();
    if (day.uncovered().isEmpty()) { // of dust that no limit covers nobody knows what is enough
      Optional<RequiredProtection> night = day.requiredForNight();
      String when = night.isPresent() ? " over the night as one shift" : "";
      night
          .or(day::requiredForDust)
          .flatMap(one -> needs("dust", one, when, day))
          .ifPresent(lines::add);
    }
    day.vapour()
        .flatMap(ProtectionWords::most)
        .flatMap(most -> needs(most.hazard, most.needed, "", day))
        .ifPresent(lines::add);
    return lines;
  }

  private record Need(String hazard, RequiredProtection needed) {}

  // What is enough for the mean of 8 hours may be too little for its worst quarter of an hour.
  private static Optional<Need> most(VapourReport vapour) {
    List<Need> all = new ArrayList<>();
    vapour.required().ifPresent(needed -> all.add(new Need("vapour", needed)));
    vapour
        .acute()
        .forEach(row -> add(row.required(), VapourText.whose(row.limit()), row.solvent(), all));
    vapour.epa().forEach(row -> add(row.required(), "EPA's limit over 8 h", row.solvent(), all));
    return all.stream().max(Comparator.comparingDouble(need -> need.needed.central()));
  }

  private static void add(
      Optional<RequiredProtection> required, String limit, Solvent solvent, List<Need> all) {
    required.ifPresent(
        needed -> all.add(new Need("vapour (" + solvent.name() + ", " + limit + ")", needed)));
  }

  // Where even the upper end needs nothing, there is nothing to say.
  private static Optional<String> needs(
      String hazard, RequiredProtection needed, String when, DayReport day) {
    if (needed.high90() <= 1) {
      return Optional.empty();
    }
    String upper = factor(needed.high90());
    return Optional.of(
        hazard
            + (needed.central() > 1
                ? " needs a factor of " + factor(needed.central()) + " (upper end " + upper + ")"
                : " needs a factor of " + upper + " at the upper end")
            + when
            + (Wording.masked(day) || needed.counted() > 1
                ? "; yours counts " + factor(needed.counted())
                : "; no mask worn"));
  }

  /** {@code Needs 6; yours counts 10.}; empty where the best estimate needs none. */
  public static Optional<String> brief(DayReport day) {
    return day.requiredForNight()
        .or(day::requiredForDust)
        .filter(needed -> needed.central() > 1 && Wording.masked(day))
        .filter(needed -> day.uncovered().isEmpty())
        .map(
            needed ->
                "Needs "
                    + factor(needed.central())
                    + "; yours counts "
                    + factor(needed.counted())
                    + ".");
  }

  /** A factor, a whole one without decimals: {@code 10}, {@code 3.17}. */
  private static String factor(double value) {
    return Figures.rounded(value).replaceFirst("\\.0+$", "");
  }

  /** What comes before all else on a day: air to leave, fire, and masks that are not enough. */
  public static List<String> alarms(DayReport day) {
    List<String> alarms = new ArrayList<>();
    day.vapour()
        .ifPresent(
            vapour -> {
              vapour.aboveIdlh().forEach(one -> alarms.add(leave(one)));
              vapour
                  .fire()
                  .filter(fire -> fire.stop())
                  .map(VapourText::fire)
                  .ifPresent(alarms::add);
            });
    day.shortfalls().forEach(one -> alarms.add(notEnough(one)));
    return alarms;
  }

  /** That somebody must leave. */
  static String leave(AboveIdlh one) {
    return "Leave the area and ventilate: "
        + one.solvent().name()
        + " may reach "
        + Figures.rounded(one.outside().high90())
        + " ppm over 15 minutes (upper end of the range), and above "
        + Figures.plain(one.solvent().limits().idlhPpm().orElseThrow())
        + " ppm it is immediately dangerous to life or health. No mask in this book counts"
        + " there; entering such air is licensed work.";
  }

  /** That a mask is not enough. */
  static String notEnough(Shortfall one) {
    return (one.certain() ? "This mask is not enough: " : "This mask may not be enough: ")
        + one.respirator()
        + " counts as "
        + Figures.plain(one.apf())
        + ", "
        + over(one);
  }

  private static String over(Shortfall one) {
    if (one.over() instanceof Shortfall.Day day) {
      return "and the day's "
          + (day.hazard() == Foremost.DUST ? "dust" : "vapour")
          + " needs "
          + factor(day.needed())
          + ", however long it is worn.";
    }
    Shortfall.Quarter quarter = (Shortfall.Quarter) one.over();
    return "good for "
        + Figures.plain(one.apf() * quarter.limit().ppm())
        + " ppm of "
        + quarter.solvent().name()
        + " against "
        + VapourText.whose(quarter.limit())
        + (one.certain()
            ? "; the worst 15 minutes held about "
                + Figures.rounded(quarter.outside().central())
                + " ppm."
            : "; the worst 15 minutes may reach "
                + Figures.rounded(quarter.outside().high90())
                + " ppm (upper end of the range).");
  }

  /** {@code toluene 1.2 times NIOSH's short-term limit}; empty where none is passed. */
  static Optional<String> overShortTerm(DayReport day) {
    return day.vapour().stream()
        .flatMap(vapour -> vapour.overShortTerm().stream())
        .findFirst()
        .map(ProtectionWords::times);
  }

  /** The same for each solvent that passes one, each by the limit that it passes most. */
  static Optional<String> allOverShortTerm(DayReport day) {
    Map<Solvent, String> passed = new LinkedHashMap<>();
    day.vapour().stream()
        .flatMap(vapour -> vapour.overShortTerm().stream())
        .forEach(row -> passed.putIfAbsent(row.solvent(), times(row)));
    return passed.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", passed.values()));
  }

  private static String times(OfShortTerm row) {
    return row.solvent().name()
        + " over 15 min "
        + Figures.rounded(row.ratio())
        + " times "
        + VapourText.whose(row.limit());
  }
}
