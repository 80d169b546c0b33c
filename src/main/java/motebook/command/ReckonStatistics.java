package motebook.command;

import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.util.List;
import java.util.stream.Stream;
import motebook.model.Refusal;
import motebook.report.Figures;
import motebook.report.Json;
import motebook.science.LognormalSample;
import motebook.science.MannKendall;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reckonings over rows of measured results. */
final class ReckonStatistics {
  private ReckonStatistics() {}

  @Command(name = "stats", description = "Lognormal statistics of measured results.")
  static final class Stats extends Reckoning {
    @Parameters(arity = "0..*", paramLabel = "RESULT", description = "Two or more, above 0.")
    private List<String> results = List.of();

    @Option(names = "--limit", paramLabel = "L", description = "Limit, in the same unit.")
    private String limit;

    Stats(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double[] values = figures("A result", results, 2);
      for (double value : values) {
        if (value <= 0) {
          throw new Refusal(
              "A result must be above 0: got "
                  + Figures.plain(value)
                  + ". One below detection is not zero; leave it out and say so.");
        }
      }
      LognormalSample sample = LognormalSample.of(values);
      double confident = sample.upperToleranceLimit(0.95);
      if (!Double.isFinite(confident)) {
        throw new Refusal("The results lie too far apart for a limit on them: check their unit.");
      }
      return told(sample, confident, limit == null ? null : positive("--limit", limit));
    }

    private Integer told(LognormalSample sample, double utl95, Double limit) {
      double utl70 = sample.upperToleranceLimit(0.70);
      Double over = limit == null ? null : 100 * sample.shareOver(limit);
      return answer(
          Json.object(
              "n",
              sample.n(),
              "gm",
              sample.gm(),
              "gsd",
              sample.gsd(),
              "am",
              sample.mean(),
              "p95",
              sample.p95(),
              "utl95_95",
              utl95,
              "utl95_70",
              utl70,
              "exceedance_percent",
              over),
          Stream.of(middle(sample), upper(sample, utl95, utl70), against(limit, utl95, utl70, over))
              .filter(line -> !line.isEmpty())
              .toArray(String[]::new));
    }

    private static String middle(LognormalSample sample) {
      return sample.n()
          + " results: geometric mean "
          + Figures.plain(sample.gm())
          + ", geometric standard deviation "
          + Figures.plain(sample.gsd())
          + ", mean "
          + Figures.plain(sample.mean());
    }

    private static String upper(LognormalSample sample, double utl95, double utl70) {
      return "95 % of all lie below "
          + Figures.plain(sample.p95())
          + "; with 95 % confidence below "
          + Figures.plain(utl95)
          + ", with 70 % below "
          + Figures.plain(utl70);
    }

    private static String against(Double limit, double utl95, double utl70, Double over) {
      if (limit == null) {
        return "";
      }
      return Figures.plain(over)
          + " % over "
          + Figures.plain(limit)
          + "; the limit is "
          + (utl70 <= limit ? "kept" : "not kept")
          + " at 70 % confidence, "
          + (utl95 <= limit ? "kept" : "not kept")
          + " at 95 %";
    }
  }

  @Command(
      name = "trend",
      description = "Whether evenly spaced values rise or fall (Mann-Kendall, slope after Sen).")
  static final class Trend extends Reckoning {
    private static final double PLAIN_ENOUGH = 0.05;
    private static final int ENOUGH = 10;

    @Parameters(arity = "0..*", paramLabel = "VALUE", description = "Two or more, oldest first.")
    private List<String> values = List.of();

    Trend(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      MannKendall trend = MannKendall.of(figures("A value", values, 2));
      return answer(
          Json.object(
              "s",
              trend.s(),
              "variance",
              trend.variance(),
              "z",
              trend.z(),
              "p_two_sided",
              trend.pTwoSided(),
              "sen_slope",
              trend.senSlope()),
          way(trend)
              + ": median step "
              + Figures.plain(trend.senSlope())
              + ", S "
              + trend.s()
              + ", z "
              + Figures.plain(trend.z())
              + ", two-sided p "
              + Figures.plain(trend.pTwoSided())
              + (values.size() < ENOUGH ? " (rough below ten values)" : ""));
    }

    private static String way(MannKendall trend) {
      if (trend.pTwoSided() > PLAIN_ENOUGH) {
        return "No clear trend";
      }
      return trend.s() > 0 ? "Rising" : "Falling";
    }
  }

  private static double[] figures(String what, List<String> texts, int least) {
    if (texts.size() < least) {
      throw new Refusal(
          "That needs "
              + least
              + " figures or more, like 0.84 0.98 1.2: got "
              + texts.size()
              + ".");
    }
    return texts.stream().mapToDouble(text -> within(what, text, -1e12, 1e12)).toArray();
  }
}
