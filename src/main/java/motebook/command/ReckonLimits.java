package motebook.command;

import static motebook.command.Numbers.notNegative;
import static motebook.command.Numbers.positive;

import java.util.List;
import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.report.Json;
import motebook.science.Dose;
import motebook.science.LongShift;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reckonings of means, mixtures and limits. */
final class ReckonLimits {
  private ReckonLimits() {}

  @Command(
      name = "twa",
      description = "8-hour mean of stretches like 120m@150 (29 CFR 1910.1000(d)(1)).")
  static final class Twa extends Reckoning {
    @Parameters(arity = "1..*", paramLabel = "DURATION@CONCENTRATION")
    private List<String> stretches;

    @Option(names = "--limit", paramLabel = "L", description = "Limit, in the same unit.")
    private String limit;

    Twa(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double twa = Dose.twa(stretches.stream().map(Twa::stretch).toList());
      Double index = limit == null ? null : twa / positive("--limit", limit);
      return answer(
          Json.object("twa", twa, "index", index),
          "8-hour mean "
              + Figures.scaled(twa)
              + (index == null ? "" : ", " + Figures.rounded(index) + " times the limit"));
    }

    private static Dose.Stretch stretch(String text) {
      String[] parts = text.split("@", -1);
      if (parts.length != 2) {
        throw new Refusal(
            "\""
                + Text.clean(text)
                + "\" is no stretch: say 120m@150, a duration at a concentration.");
      }
      return new Dose.Stretch(
          Numbers.minutes("The stretch " + text, parts[0]),
          notNegative("The concentration in " + text, parts[1]));
    }
  }

  @Command(
      name = "mixture",
      description = "Index of a mixture like 500/1000 45/200 (29 CFR 1910.1000(d)(2)).")
  static final class Mixture extends Reckoning {
    @Parameters(arity = "1..*", paramLabel = "CONCENTRATION/LIMIT")
    private List<String> ingredients;

    Mixture(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double index = Dose.mixtureIndex(ingredients.stream().map(Mixture::ingredient).toList());
      return answer(
          Json.object("index", index),
          "Index "
              + Figures.rounded(index)
              + (index > 1 ? ", over the limit" : ", not over the limit"));
    }

    private static Dose.Ingredient ingredient(String text) {
      String[] parts = text.split("/", -1);
      if (parts.length != 2) {
        throw new Refusal(
            "\""
                + Text.clean(text)
                + "\" is no ingredient: say 500/1000, a concentration and its limit.");
      }
      return new Dose.Ingredient(
          notNegative("The concentration in " + text, parts[0]),
          positive("The limit in " + text, parts[1]));
    }
  }

  @Command(name = "shift", description = "A limit for a longer day or week, after Brief and Scala.")
  static final class Shift extends Reckoning {
    @Option(names = "--limit", required = true, paramLabel = "L", description = "The 8-hour limit.")
    private String limit;

    @Option(names = "--hours", paramLabel = "H", description = "Hours worked in the day.")
    private String hours;

    @Option(names = "--week-hours", paramLabel = "H", description = "Hours worked in the week.")
    private String weekHours;

    Shift(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      if ((hours == null) == (weekHours == null)) {
        throw new Refusal("Give either --hours of the day or --week-hours, not both.");
      }
      double factor =
          hours == null
              ? LongShift.weeklyFactor(below("--week-hours", weekHours, 168))
              : LongShift.dailyFactor(below("--hours", hours, 24));
      double adjusted = positive("--limit", limit) * factor;
      return answer(
          Json.object("factor", factor, "adjusted_limit", adjusted),
          "Factor "
              + Figures.rounded(factor)
              + ": hold the mean over the hours worked against "
              + Figures.scaled(adjusted));
    }

    private static double below(String what, String text, double end) {
      double value = positive(what, text);
      if (value >= end) {
        throw new Refusal(what + " must be below " + Figures.plain(end) + ": got " + text + ".");
      }
      return value;
    }
  }
}
