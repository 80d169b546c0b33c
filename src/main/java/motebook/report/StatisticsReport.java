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
import motebook.science.LimitVerdict;
import motebook.science.ShapiroWilk;

/** The statistics of measured results, as JSON and as text. */
public final class StatisticsReport {
  private static final double SELDOM = 0.05;
  private static final double LEAST_PERCENT = 0.001;
  private static final double MOST_PERCENT = 99.9;

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
    lines.add(
        stats.results()
            + " results"
            + (stats.censored() > 0
                ? ", " + stats.censored() + " of them below detection (maximum likelihood)"
                : "")
            + ": "
            + middle(stats));
    stats.unbiasedMean().ifPresent(mean -> lines.add(means(stats, mean)));
    lines.add(upper(stats) + (stats.censored() > 0 ? " (by the known figures alone)" : ""));
    if (stats.results() < LimitVerdict.GROUP) {
      lines.add(
          "Fewer than six results: the upper figures rest on the shape of the lognormal alone.");
    }
    stats.normality().ifPresent(test -> lines.add(normality(test)));
    stats.held().ifPresent(held -> lines.addAll(against(held, stats)));
    return lines;
  }

  /** {@code geometric mean 2.48, geometric standard deviation 1.50, mean 2.68}. */
  static String middle(Statistics stats) {
    return "geometric mean "
        + Figures.scaled(stats.sample().gm())
        + ", geometric standard deviation "
        + Figures.rounded(stats.sample().gsd())
        + (stats.mean().isPresent()
            ? ", mean " + Figures.scaled(stats.mean().getAsDouble())
            : ", mean of the fitted lognormal " + Figures.scaled(stats.sample().lognormalMean()));
  }

  private static String means(Statistics stats, double unbiased) {
    return "Mean of the fitted lognormal "
        + Figures.scaled(stats.sample().lognormalMean())
        + ", unbiased estimate "
        + Figures.scaled(unbiased);
  }

  /** The 95th percentile and the limits above it, by their names in the standards. */
  static String upper(Statistics stats) {
    return "95th percentile "
        + Figures.scaled(stats.sample().p95())
        + "; upper tolerance limit (95 % of days, 95 % confidence) "
        + Figures.scaled(stats.upper95())
        + ", at 70 % confidence "
        + Figures.scaled(stats.upper70());
  }

  private static String normality(ShapiroWilk test) {
    return "Shapiro–Wilk (log values): W "
        + Figures.rounded(test.w())
        + ", p "
        + Figures.rounded(test.p())
        + (test.p() < SELDOM
            ? "; not lognormal: are two jobs mixed?"
            : "; consistent with lognormal");
  }

  private static List<String> against(Held held, Statistics stats) {
    String limit = Figures.plain(held.limit());
    return List.of(
        over(held, limit) + "; 95th percentile " + percentile(stats, held),
        compliance(stats.upper70() <= held.limit(), stats.upper95() <= held.limit())
            + ". EN 689: "
            + verdict(held));
  }

  /** {@code 4.24 % over 5 (90 % interval 0.857 % to 15.3 %)}. */
  static String over(Held held, String limit) {
    return exceedance(held.percentOver())
        + " over "
        + limit
        + " (90 % interval "
        + exceedance(held.low90())
        + " to "
        + exceedance(held.high90())
        + ")";
  }

  /** {@code 0.969 of the limit}. */
  static String percentile(Statistics stats, Held held) {
    return Figures.rounded(stats.sample().p95() / held.limit()) + " of the limit";
  }

  // A share that a fitted distribution leaves over a limit is never none and never all.
  private static String exceedance(double percent) {
    if (percent < LEAST_PERCENT) {
      return "less than 0.001 %";
    }
    return percent > MOST_PERCENT ? "over 99.9 %" : Figures.rounded(percent) + " %";
  }

  private static String compliance(boolean at70, boolean at95) {
    if (at95) {
      return "Complies at 95 % confidence";
    }
    return at70 ? "Complies at 70 % confidence, not at 95 %" : "Does not comply at 70 % confidence";
  }

  static String verdict(Held held) {
    return switch (held.verdict()) {
      case KEPT -> "the limit is kept";
      case NOT_KEPT -> "the limit is not kept";
      case MORE_RESULTS_NEEDED -> "not decided, more results are needed (six for the group test)";
    };
  }
}
