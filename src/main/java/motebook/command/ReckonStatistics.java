package motebook.command;

import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import motebook.desk.Statistics;
import motebook.desk.Statistics.Result;
import motebook.desk.Trend.Found;
import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.report.Json;
import motebook.report.StatisticsReport;
import motebook.science.MannKendall;
import motebook.science.SenSlope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reckonings over rows of measured results. */
final class ReckonStatistics {
  private ReckonStatistics() {}

  @Command(name = "stats", description = "Lognormal statistics of measured results.")
  static final class Stats extends Reckoning {
    private static final int FIRST_TEST = 3;

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
      boolean firstTest = limit != null && read.size() >= FIRST_TEST;
      if (!Statistics.enough(read) && !firstTest) {
        throw new Refusal(
            "With results below detection, at least two different known figures are needed, or"
                + " three results and a --limit for the first test of EN 689.");
      }
      if (!firstTest) {
        refuseUnknownSpread(read);
      }
      OptionalDouble held =
          limit == null ? OptionalDouble.empty() : OptionalDouble.of(positive("--limit", limit));
      Statistics statistics = Statistics.of(read, held);
      if (!Double.isFinite(statistics.upper95().orElse(0))) {
        throw new Refusal("The results lie too far apart for a limit on them: check their unit.");
      }
      return answer(
          StatisticsReport.json(statistics),
          StatisticsReport.text(statistics).toArray(String[]::new));
    }

    private static void refuseUnknownSpread(List<Result> read) {
      long below = read.stream().filter(Result::below).count();
      if (below > Statistics.MOST_BELOW * read.size()) {
        throw new Refusal(
            below
                + " of "
                + read.size()
                + " results are below detection: with more than four in five of them, the spread"
                + " cannot be estimated.");
      }
      if (read.stream().map(Result::value).distinct().count() == 1) {
        throw new Refusal(
            "All results are equal, so their spread cannot be estimated: give them with more"
                + " digits, or more results.");
      }
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
    private static final int APPROXIMATE_BELOW = 10;

    @Parameters(arity = "0..*", paramLabel = "VALUE", description = "Two or more, oldest first.")
    private List<String> values = List.of();

    Trend(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double[] steps = figures("A value", values, 2);
      double[] times = IntStream.range(0, steps.length).asDoubleStream().toArray();
      Found found = new Found(MannKendall.of(steps), SenSlope.of(times, steps));
      return answer(json(found.test()), text(found, steps.length));
    }

    private static Object json(MannKendall test) {
      return Json.object(
          "s",
          test.s(),
          "variance",
          test.variance(),
          "z",
          test.z(),
          "p_two_sided",
          test.pTwoSided(),
          "sen_slope",
          test.senSlope(),
          "sen_low95",
          orNull(test.senLow95()),
          "sen_high95",
          orNull(test.senHigh95()));
    }

    private static Double orNull(OptionalDouble value) {
      return value.isPresent() ? value.getAsDouble() : null;
    }

    private static String text(Found found, int n) {
      if (found.test().variance() == 0) {
        return "No clear trend: all values are equal.";
      }
      boolean enough = n >= motebook.desk.Trend.LEAST;
      return (enough ? way(found.direction()) : tooFew(n))
          + ": median step "
          + Figures.scaled(found.slope().perStep())
          + (enough
              ? " (90 % range "
                  + Figures.scaled(found.slope().low90())
                  + " to "
                  + Figures.scaled(found.slope().high90())
                  + ")"
              : "")
          + ", S "
          + found.test().s()
          + ", z "
          + Figures.rounded(found.test().z())
          + ", two-sided p "
          + Figures.rounded(found.test().pTwoSided())
          + (n < APPROXIMATE_BELOW ? " (approximate below ten values)" : "");
    }

    private static String tooFew(int n) {
      return "Too few values to tell (" + n + " of the " + motebook.desk.Trend.LEAST + " it takes)";
    }

    private static String way(int direction) {
      return direction == 0 ? "No clear trend" : direction > 0 ? "Rising" : "Falling";
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
        "That needs " + least + " figures or more, like 1.3 1.8 1.2: got " + got + ".");
  }
}
