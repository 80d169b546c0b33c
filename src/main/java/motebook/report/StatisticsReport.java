package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import motebook.desk.Statistics;
import motebook.desk.Statistics.Held;
import motebook.model.Figures;
import motebook.science.ShapiroWilk;

/** The statistics of measured results, as JSON and as text. */
public final class StatisticsReport {
  private static final double SELDOM = 0.05;

  private StatisticsReport() {}

  /** The object of {@code reckon stats --json}. */
  public static Map<String, Object> json(Statistics stats) {
    Map<String, Object> object =
        Json.object(
            "n", stats.results(),
            "gm", stats.sample().gm(),
            "gsd", stats.sample().gsd(),
            "am", orNull(stats.mean()),
            "p95", stats.sample().p95(),
            "utl95_95", stats.upper95(),
            "utl95_70", stats.upper70(),
            "exceedance_percent", of(stats, Held::percentOver),
            "exceedance_low90_percent", of(stats, Held::low90),
            "exceedance_high90_percent", of(stats, Held::high90));
    object.putAll(
        Json.object(
            "mvue", orNull(stats.unbiasedMean()),
            "lognormal_mean", stats.sample().lognormalMean(),
            "shapiro_w", stats.normality().map(ShapiroWilk::w).orElse(null),
            "shapiro_p", stats.normality().map(ShapiroWilk::p).orElse(null),
            "band", of(stats, Held::band),
            "en689", of(stats, held -> held.verdict().key()),
            "censored", stats.censored()));
    return object;
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }

  private static <T> T of(Statistics stats, Function<Held, T> figure) {
    Optional<T> value = stats.held().map(figure);
    return value.orElse(null);
  }

  /** The lines of {@code reckon stats}. */
  public static List<String> text(Statistics stats) {
    List<String> lines = new ArrayList<>();
    lines.add(middle(stats));
    stats.unbiasedMean().ifPresent(mean -> lines.add(means(stats, mean)));
    lines.add(
        "95 % of all lie below "
            + Figures.plain(stats.sample().p95())
            + "; with 95 % confidence below "
            + Figures.plain(stats.upper95())
            + ", with 70 % below "
            + Figures.plain(stats.upper70())
            + (stats.censored() > 0 ? " (by the figures that are known alone)" : ""));
    stats.normality().ifPresent(test -> lines.add(normality(test)));
    stats.held().ifPresent(held -> lines.addAll(against(held, stats)));
    return lines;
  }

  private static String middle(Statistics stats) {
    return stats.results()
        + " results"
        + (stats.censored() > 0
            ? ", " + stats.censored() + " of them below detection (maximum likelihood)"
            : "")
        + ": geometric mean "
        + Figures.plain(stats.sample().gm())
        + ", geometric standard deviation "
        + Figures.plain(stats.sample().gsd())
        + (stats.mean().isPresent()
            ? ", mean " + Figures.plain(stats.mean().getAsDouble())
            : ", lognormal mean " + Figures.plain(stats.sample().lognormalMean()));
  }

  private static String means(Statistics stats, double unbiased) {
    return "Mean of the lognormal "
        + Figures.plain(stats.sample().lognormalMean())
        + ", without bias "
        + Figures.plain(unbiased);
  }

  private static String normality(ShapiroWilk test) {
    return "Shapiro and Wilk on the logarithms: W "
        + Figures.plain(test.w())
        + ", p "
        + Figures.plain(test.p())
        + (test.p() < SELDOM
            ? ": hardly lognormal, one job or two?"
            : ": nothing against lognormal");
  }

  private static List<String> against(Held held, Statistics stats) {
    String limit = Figures.plain(held.limit());
    return List.of(
        Figures.plain(held.percentOver())
            + " % over "
            + limit
            + " (90 % interval "
            + Figures.plain(held.low90())
            + " to "
            + Figures.plain(held.high90())
            + "); the limit is "
            + kept(stats.upper70(), held)
            + " at 70 % confidence, "
            + kept(stats.upper95(), held)
            + " at 95 %",
        "Band " + held.band() + " of 0 to 4 by the 95th percentile; EN 689: " + verdict(held));
  }

  private static String kept(double upper, Held held) {
    return upper <= held.limit() ? "kept" : "not kept";
  }

  static String verdict(Held held) {
    return switch (held.verdict()) {
      case KEPT -> "the limit is kept";
      case NOT_KEPT -> "the limit is not kept";
      case MORE_RESULTS_NEEDED -> "not decided, more results are needed (six for the group test)";
    };
  }
}
