package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import motebook.desk.DayReport;
import motebook.desk.VapourReport;
import motebook.desk.VapourReport.OfSolvent;
import motebook.model.Figures;
import motebook.model.VapourLimits;
import motebook.reference.Solvent;
import motebook.science.Estimate;

/** The vapour of a day as text for a terminal. */
public final class VapourText {
  private static final int MOST_NAMED = 4;

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
    flammable(vapour, ink, lines);
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

  private static void flammable(VapourReport vapour, Ink ink, List<String> lines) {
    vapour
        .flammableShare()
        .ifPresent(
            share ->
                lines.add(
                    "fire      "
                        + ink.warning(
                            "the air at the hand may have reached "
                                + Figures.rounded(100 * share)
                                + " % of the lower flammable limit")
                        + ", where it burns; spray areas are judged at 25 %, in California at 20 %, and nearer"
                        + " the can there is more"));
  }
}
