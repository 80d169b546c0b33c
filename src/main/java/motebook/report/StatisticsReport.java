package motebook.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import motebook.desk.Statistics;
import motebook.desk.Statistics.Held;
import motebook.desk.Statistics.Over;
import motebook.model.Figures;
import motebook.science.LimitVerdict;
import motebook.science.LognormalSample;
import motebook.science.ShapiroWilk;

/** The statistics of measured results, as JSON and as text. */
public final class StatisticsReport {
  private static final double SELDOM = 0.05;
  private static final double LEAST_PERCENT = 0.001;
  private static final double MOST_PERCENT = 99.9;

  /** From how many results on an upper tolerance limit is told: of two it is all but boundless. */
  private static final int TOLERABLE = 3;

  /** Said where no two results of a known figure differ. */
  static final String NO_SPREAD =
      "Results that do not differ say nothing about how others scatter: no percentile, no upper"
          + " limit.";

  /** Said where so many results are below detection that no spread is estimated. */
  static final String MOST_BELOW =
      "More than 80 % of the results are below detection: too few have a figure to tell how they"
          + " scatter, so no percentile, no upper limit.";

  private StatisticsReport() {}

  /** The object of {@code reckon stats --json}. */
  public static Map<String, Object> json(Statistics stats) {
    Map<String, Object> object =
        Json.object(
            "n", stats.results(),
            "gm", fitted(stats, LognormalSample::gm),
            "gsd", fitted(stats, LognormalSample::gsd),
            "am", orNull(stats.mean()),
            "p95", fitted(stats, LognormalSample::p95),
            "utl95_95", orNull(stats.upper95()),
            "utl95_70", orNull(stats.upper70()),
            "exceedance_percent", over(stats, Over::percent),
            "exceedance_low90_percent", over(stats, Over::low90),
            "exceedance_high90_percent", over(stats, Over::high90));
    object.putAll(
        Json.object(
            "mvue", orNull(stats.unbiasedMean()),
            "lognormal_mean", fitted(stats, LognormalSample::lognormalMean),
            "shapiro_w", stats.normality().map(ShapiroWilk::w).orElse(null),
            "shapiro_p", stats.normality().map(ShapiroWilk::p).orElse(null),
            "band", over(stats, Over::band),
            "en689", stats.held().map(held -> held.verdict().key()).orElse(null),
            "censored", stats.censored()));
    return object;
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }

  private static Double fitted(Statistics stats, ToDoubleFunction<LognormalSample> figure) {
    return stats.sample().map(figure::applyAsDouble).orElse(null);
  }

  private static <T> T over(Statistics stats, Function<Over, T> figure) {
    Optional<T> value = stats.held().flatMap(Held::over).map(figure);
    return value.orElse(null);
  }

  /** The lines of {@code reckon stats}. */
  public static List<String> text(Statistics stats) {
    List<String> lines = new ArrayList<>();
    lines.add(
        stats.results()
            + " results"
            + (stats.censored() > 0 ? ", " + stats.censored() + " of them below detection" : "")
            + stats.sample().map(sample -> ": " + middle(sample, stats)).orElse(""));
    stats
        .sample()
        .ifPresent(
            sample -> stats.unbiasedMean().ifPresent(mean -> lines.add(means(sample, mean))));
    lines.add(upper(stats));
    if (stats.upper95().isPresent() && stats.results() < LimitVerdict.GROUP) {
      lines.add(
          "Fewer than six results: "
              + (stats.results() < TOLERABLE ? "the percentile rests" : "the upper figures rest")
              + " on the shape of the lognormal alone.");
    }
    stats.normality().ifPresent(test -> lines.add(normality(test)));
    stats.held().ifPresent(held -> lines.addAll(against(held, stats)));
    return lines;
  }

  /** {@code geometric mean 2.48, geometric standard deviation 1.50, mean 2.68}. */
  static String middle(LognormalSample sample, Statistics stats) {
    return "geometric mean "
        + Figures.scaled(sample.gm())
        + ", geometric standard deviation "
        + Figures.rounded(sample.gsd())
        + (stats.mean().isPresent()
            ? ", mean " + Figures.scaled(stats.mean().getAsDouble())
            : ", mean of the lognormal fitted by maximum likelihood "
                + Figures.scaled(sample.lognormalMean()));
  }

  private static String means(LognormalSample sample, double unbiased) {
    return "Mean of the fitted lognormal "
        + Figures.scaled(sample.lognormalMean())
        + ", unbiased estimate "
        + Figures.scaled(unbiased);
  }

  /** The 95th percentile and the limits above it, by their names in the standards. */
  static String upper(Statistics stats) {
    if (stats.upper95().isEmpty()) {
      return stats.mostlyBelow() ? MOST_BELOW : NO_SPREAD;
    }
    return "95th percentile "
        + Figures.scaled(stats.sample().orElseThrow().p95())
        + (stats.results() < TOLERABLE
            ? "; too few results to give an upper tolerance limit"
            : "; upper tolerance limit (95 % of days, 95 % confidence) "
                + Figures.scaled(stats.upper95().getAsDouble())
                + ", at 70 % confidence "
                + Figures.scaled(stats.upper70().getAsDouble()));
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
    List<String> lines = new ArrayList<>();
    String limit = Figures.plain(held.limit());
    held.over()
        .ifPresent(
            over -> lines.add(over(over, limit) + "; 95th percentile " + percentile(stats, held)));
    lines.add(
        held.over()
                .filter(over -> stats.results() >= TOLERABLE)
                .map(over -> compliance(stats, held) + ". ")
                .orElse("")
            + "EN 689: "
            + verdict(held, stats));
    return lines;
  }

  /** {@code 4.24 % over 5 (90 % interval 0.857 % to 15.3 %)}. */
  static String over(Over over, String limit) {
    return exceedance(over.percent())
        + " over "
        + limit
        + " (90 % interval "
        + exceedance(over.low90())
        + " to "
        + exceedance(over.high90())
        + ")";
  }

  /** {@code 0.969 of the limit}. */
  static String percentile(Statistics stats, Held held) {
    return Figures.rounded(stats.sample().orElseThrow().p95() / held.limit()) + " of the limit";
  }

  // A share that a fitted distribution leaves over a limit is never none and never all.
  private static String exceedance(double percent) {
    if (percent < LEAST_PERCENT) {
      return "less than 0.001 %";
    }
    return percent > MOST_PERCENT ? "over 99.9 %" : Figures.rounded(percent) + " %";
  }

  private static String compliance(Statistics stats, Held held) {
    if (stats.upper95().orElseThrow() <= held.limit()) {
      return "Complies at 95 % confidence";
    }
    return stats.upper70().orElseThrow() <= held.limit()
        ? "Complies at 70 % confidence, not at 95 %"
        : "Does not comply at 70 % confidence";
  }

  static String verdict(Held held, Statistics stats) {
    return switch (held.verdict()) {
      case KEPT -> "the limit is kept";
      case NOT_KEPT -> "the limit is not kept";
      case MORE_RESULTS_NEEDED -> "not decided, " + undecided(stats);
    };
  }

  private static String undecided(Statistics stats) {
    if (stats.results() < LimitVerdict.GROUP) {
      return "more results are needed (six for the group test)";
    }
    return stats.mostlyBelow()
        ? "the group test needs more results above detection; a lower limit of detection may help"
        : "the group test needs results that differ";
  }
}
