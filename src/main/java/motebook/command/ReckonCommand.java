package motebook.command;

import static motebook.command.Numbers.notNegative;
import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.util.List;
import java.util.concurrent.Callable;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.report.Figures;
import motebook.report.Json;
import motebook.science.Clearing;
import motebook.science.Dose;
import motebook.science.LongShift;
import motebook.science.Loss;
import motebook.science.NearField;
import motebook.science.Protection;
import motebook.science.RoomTrace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A desk calculator over the science; touches no book. */
final class ReckonCommand {
  private ReckonCommand() {}

  @Command(name = "reckon", description = "A desk calculator; touches no book.")
  static final class Group extends GroupCommand {}

  /** What every reckoning shares. */
  abstract static class Reckoning implements Callable<Integer> {
    private final Desk desk;
    @Mixin private Answer answer;

    Reckoning(Desk desk) {
      this.desk = desk;
    }

    /**
     * Prints the answer.
     *
     * @param object its JSON
     * @param line its sentence
     */
    Integer answer(Object object, String line) {
      desk.answer(answer.json(), () -> object, () -> List.of(line));
      return ExitCode.DONE;
    }
  }

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
              + Figures.plain(twa)
              + (index == null ? "" : ", " + Figures.plain(index) + " times the limit"));
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
              + Figures.plain(index)
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

  @Command(name = "clear", description = "How long until a share of the dust is gone, source off.")
  static final class Clear extends Reckoning {
    @Option(
        names = "--air-changes",
        required = true,
        paramLabel = "N",
        description = "All losses together as air changes per hour.")
    private String airChanges;

    @Option(
        names = "--removal",
        required = true,
        paramLabel = "PERCENT",
        description = "Share to be gone, above 0 and below 100.")
    private String removal;

    Clear(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double percent = positive("--removal", removal);
      if (percent >= 100) {
        throw new Refusal("--removal must be below 100: the last of it never quite goes.");
      }
      double minutes = Clearing.minutes(positive("--air-changes", airChanges), percent);
      return answer(
          Json.object("minutes", minutes),
          Figures.plain(percent) + " % are gone after " + Figures.plain(minutes) + " min");
    }
  }

  @Command(name = "air", description = "Air at the worker and in the room while a source runs.")
  static final class Air extends Reckoning {
    @Option(names = "--emission", required = true, paramLabel = "G", description = "mg/min.")
    private String emission;

    @Option(names = "--volume", required = true, paramLabel = "V", description = "m³.")
    private String volume;

    @Option(names = "--air-changes", required = true, paramLabel = "N", description = "Per hour.")
    private String airChanges;

    @Option(names = "--speed", required = true, paramLabel = "S", description = "Air speed, m/min.")
    private String speed;

    @Option(
        names = "--minutes",
        required = true,
        paramLabel = "T",
        description = "Since the start.")
    private String minutes;

    @Option(
        names = "--settling",
        defaultValue = "0",
        paramLabel = "K",
        description = "Loss by settling, per hour (default 0).")
    private String settling;

    Air(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double g = notNegative("--emission", emission);
      double v = positive("--volume", volume);
      double t = within("--minutes", minutes, 0, 1e7);
      double loss =
          Loss.rate(
              notNegative("--air-changes", airChanges), notNegative("--settling", settling), 0, v);
      RoomTrace room = new RoomTrace(v, List.of(new Loss(0, t, loss)), g, 0, t);
      double near = g / NearField.exchangeM3PerMin(positive("--speed", speed));
      double end = room.mgPerM3At(t);
      double mean = t == 0 ? 0 : room.mgMinPerM3(0, t) / t;
      return answer(
          Json.object(
              "near_mg_m3",
              near + end,
              "room_mg_m3",
              end,
              "near_mean_mg_m3",
              near + mean,
              "room_mean_mg_m3",
              mean),
          "At the end "
              + Figures.plain(near + end)
              + " mg/m³ at the worker, "
              + Figures.plain(end)
              + " in the room; mean "
              + Figures.plain(near + mean)
              + " and "
              + Figures.plain(mean));
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
              + Figures.plain(factor)
              + ": hold the mean over the hours worked against "
              + Figures.plain(adjusted));
    }

    private static double below(String what, String text, double end) {
      double value = positive(what, text);
      if (value >= end) {
        throw new Refusal(what + " must be below " + Figures.plain(end) + ": got " + text + ".");
      }
      return value;
    }
  }

  @Command(name = "wear", description = "What a respirator worn part of the time is worth.")
  static final class Wear extends Reckoning {
    @Option(
        names = "--apf",
        required = true,
        paramLabel = "N",
        description = "Assigned protection factor, at least 1.")
    private String apf;

    @Option(
        names = "--worn",
        required = true,
        paramLabel = "PERCENT",
        description = "Share of the time it is worn, 0 to 100.")
    private String worn;

    Wear(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double factor =
          Protection.effectiveFactor(
              within("--apf", apf, 1, 1e6), within("--worn", worn, 0, 100) / 100);
      return answer(
          Json.object("effective_factor", factor),
          "Worth a factor of " + Figures.plain(factor) + " over the whole time");
    }
  }
}
