package motebook.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import motebook.desk.DayReport;
import motebook.desk.Fire;
import motebook.desk.ShortTermLimit;
import motebook.desk.VapourReport;
import motebook.desk.VapourReport.OfShortTerm;
import motebook.desk.VapourReport.OfSolvent;
import motebook.model.Figures;
import motebook.model.VapourLimits;
import motebook.reference.Solvent;
import motebook.reference.Solvent.Authority;
import motebook.science.Estimate;

/** The vapour of a day as text for a terminal. */
public final class VapourText {
  private static final int MOST_NAMED = 4;
  private static final String LABEL = "          ";

  private VapourText() {}

  /** The lines of a day's vapour. */
  public static List<String> of(VapourReport vapour, DayReport day, Ink ink) {
    List<String> lines = new ArrayList<>();
    lines.add("vapour    outside " + solvents(vapour, OfSolvent::outsidePpm));
    lines.add(
        "          inside  "
            + (Wording.masked(day)
                ? solvents(vapour, OfSolvent::insidePpm)
                : "the same: no mask worn"));
    lines.add("mixture   outside " + ink.headline(index(vapour.indexOutside(), vapour.limits())));
    lines.add(
        "          inside  "
            + (Wording.masked(day)
                ? index(vapour.indexInside(), vapour.limits())
                : "the same: no mask worn"));
    unjudged(vapour, lines);
    ofEpa(vapour, lines);
    acute(vapour, lines);
    vapour
        .fire()
        .filter(fire -> !fire.stop())
        .ifPresent(fire -> lines.add("fire      " + fire(fire)));
    vapour.remarks().forEach(remark -> lines.add("note      " + remark));
    return lines;
  }

  /** The solvents nearest their limits, in typical 8-hour means. */
  private static String solvents(VapourReport vapour, ToDoubleFunction<OfSolvent> ppm) {
    String named =
        vapour.solvents().stream()
            .limit(MOST_NAMED)
            .map(line -> line.solvent().name() + " " + Figures.rounded(ppm.applyAsDouble(line)))
            .collect(Collectors.joining(", "));
    int more = vapour.solvents().size() - MOST_NAMED;
    return named + " ppm over 8 h" + (more > 0 ? ", and " + more + " more" : "");
  }

  private static String index(Estimate index, VapourLimits limits) {
    return Figures.about(index.central())
        + " times the limits taken together (90 % range "
        + Figures.range(index.low90(), index.high90())
        + "), by "
        + whose(limits);
  }

  private static String whose(VapourLimits limits) {
    return switch (limits) {
      case STRICTER -> "the stricter of OSHA and NIOSH";
      case OSHA -> "OSHA";
      case NIOSH -> "NIOSH";
    };
  }

  private static void unjudged(VapourReport vapour, List<String> lines) {
    if (!vapour.notJudged().isEmpty()) {
      lines.add(
          "          not judged, for want of a limit: "
              + vapour.notJudged().stream().map(Solvent::name).collect(Collectors.joining(", ")));
    }
    if (!vapour.notEstimated().isEmpty()) {
      lines.add(
          "          warned of and not estimated: " + String.join(", ", vapour.notEstimated()));
    }
  }

  // A solvent has one line, with each of its limits in it.
  private static void acute(VapourReport vapour, List<String> lines) {
    Map<Solvent, List<OfShortTerm>> rows = new LinkedHashMap<>();
    vapour.acute().forEach(r -> rows.computeIfAbsent(r.solvent(), x -> new ArrayList<>()).add(r));
    List<List<OfShortTerm>> all = List.copyOf(rows.values());
    for (int line = 0; line < Math.min(MOST_NAMED, all.size()); line++) {
      lines.add((line == 0 ? "15 min    " : LABEL) + acute(all.get(line)));
    }
    if (all.size() > MOST_NAMED) {
      lines.add(LABEL + "and " + (all.size() - MOST_NAMED) + " more, less near their limits");
    }
  }

  private static String acute(List<OfShortTerm> limits) {
    OfShortTerm first = limits.get(0);
    return first.solvent().name()
        + " "
        + ppm(first.outside())
        + (first.inside().equals(first.outside()) ? "" : ", inside " + ppm(first.inside()))
        + ": "
        + limits.stream()
            .map(
                row ->
                    Figures.rounded(row.ratio())
                        + " times "
                        + whose(row.limit())
                        + " of "
                        + Figures.plain(row.limit().ppm()))
            .collect(Collectors.joining(", "))
        + (first.saturated()
            ? "; capped at the "
                + Figures.rounded(first.mostPpm())
                + " ppm that air of 25 °C can hold"
            : "");
  }

  private static String ppm(Estimate ppm) {
    return Figures.about(ppm.central()) + " ppm (" + Figures.range(ppm.low90(), ppm.high90()) + ")";
  }

  /** {@code NIOSH's short-term limit}. */
  static String whose(ShortTermLimit limit) {
    return limit.authority()
        + "'s "
        + switch (limit.kind()) {
          case STEL -> "short-term limit";
          case CEILING -> "ceiling";
        };
  }

  // Where its use may go on at all: the rule itself ends most of it.
  private static void ofEpa(VapourReport vapour, List<String> lines) {
    vapour
        .solvents()
        .forEach(
            line ->
                line.solvent()
                    .limits()
                    .of(Authority.EPA)
                    .eightHour()
                    .ifPresent(
                        ppm ->
                            lines.add(
                                LABEL
                                    + "EPA allows "
                                    + Figures.plain(ppm)
                                    + " ppm of "
                                    + line.solvent().name()
                                    + " over 8 h where its use may go on (40 CFR 751): outside "
                                    + Figures.about(line.outsidePpm())
                                    + " ppm")));
  }

  /** How near the air comes to burning, in a sentence. */
  static String fire(Fire fire) {
    return (fire.stop() ? "Stop, ventilate, no ignition source: the" : "The")
        + " air within arm's length may reach "
        + Figures.rounded(100 * fire.share())
        + " % of the lower flammable limit, the level at which vapour ignites (mean of that air,"
        + " worst minute, upper end of the range"
        + (fire.saturated() ? "; capped at what air of 25 °C can hold" : "")
        + "); at the wet film it is always higher.";
  }
}
