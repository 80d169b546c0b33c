package motebook.command;

import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.util.List;
import java.util.OptionalDouble;
import motebook.desk.Statistics;
import motebook.desk.Statistics.Result;
import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.report.Json;
import motebook.report.StatisticsReport;
import motebook.science.MannKendall;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reckonings over rows of measured results. */
final class ReckonStatistics {
  private ReckonStatistics() {}

  @Command(name = "stats", description = "Lognormal statistics of measured results.")
  static final class Stats extends Reckoning {
    @Parameters(
        arity = "0..*",
        paramLabel = "RESULT",
        description = "Two or more, above 0; one below detection as <0.03.")
    private List<String> results = List.of();

    @Option(names = "--limit", paramLabel = "L", description = "Limit, in the same unit.")
    private String limit;

    Stats(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      List<Result> read = results.stream().map(Stats::result).toList();
      if (read.size() < 2) {
        throw tooFew(2, read.size());
      }
      if (!Statistics.enough(read)) {
        throw new Refusal(
            "Beside results below detection that needs two of a known figure that differ.");
      }
      OptionalDouble held =
          limit == null ? OptionalDouble.empty() : OptionalDouble.of(positive("--limit", limit));
      Statistics statistics = Statistics.of(read, held);
      if (!Double.isFinite(statistics.upper95())) {
        throw new Refusal("The results lie too far apart for a limit on them: check their unit.");
      }
      return answer(
          StatisticsReport.json(statistics),
          StatisticsReport.text(statistics).toArray(String[]::new));
    }

    private static Result result(String text) {
      boolean below = text.startsWith("<");
      double value = within("A result", below ? text.substring(1) : text, -1e12, 1e12);
      if (value <= 0) {
        throw new Refusal(
            "A result must be above 0: got "
                + Figures.plain(value)
                + ". One below detection is not zero; give the limit of detection, like <0.03.");
      }
      return new Result(value, below);
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
              trend.senSlope(),
              "sen_low95",
              trend.senLow95(),
              "sen_high95",
              trend.senHigh95()),
          way(trend)
              + ": median step "
              + Figures.plain(trend.senSlope())
              + " (95 % interval "
              + Figures.plain(trend.senLow95())
              + " to "
              + Figures.plain(trend.senHigh95())
              + "), S "
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
      throw tooFew(least, texts.size());
    }
    return texts.stream().mapToDouble(text -> within(what, text, -1e12, 1e12)).toArray();
  }

  private static Refusal tooFew(int least, int got) {
    return new Refusal(
        "That needs " + least + " figures or more, like 0.84 0.98 1.2: got " + got + ".");
  }
}
