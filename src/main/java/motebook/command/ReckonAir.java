package motebook.command;

import static motebook.command.Numbers.notNegative;
import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.util.List;
import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.report.Json;
import motebook.science.Clearing;
import motebook.science.Duct;
import motebook.science.Loss;
import motebook.science.NearField;
import motebook.science.RoomTrace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Reckonings of air in rooms and ducts. */
final class ReckonAir {
  private ReckonAir() {}

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
          Figures.plain(percent)
              + " % is gone after about "
              + Figures.scaled(minutes)
              + " min if the air mixes well");
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
              + Figures.scaled(near + end)
              + " mg/m³ at the worker, "
              + Figures.scaled(end)
              + " in the room; mean "
              + Figures.scaled(near + mean)
              + " and "
              + Figures.scaled(mean));
    }
  }

  @Command(name = "duct", description = "Air flow and air speed in a round duct.")
  static final class RoundDuct extends Reckoning {
    @Option(names = "--airflow", paramLabel = "CFM", description = "ft³/min; or give --velocity.")
    private String airflow;

    @Option(names = "--velocity", paramLabel = "FPM", description = "ft/min; or give --airflow.")
    private String velocity;

    @Option(
        names = "--diameter",
        required = true,
        paramLabel = "INCHES",
        description = "Inner diameter.")
    private String diameter;

    RoundDuct(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      if ((airflow == null) == (velocity == null)) {
        throw new Refusal("Give either --airflow or --velocity, the one that is known, not both.");
      }
      double area = Duct.areaFt2(positive("--diameter", diameter));
      double cfm =
          airflow == null
              ? positive("--velocity", velocity) * area
              : positive("--airflow", airflow);
      double fpm = cfm / area;
      return answer(
          Json.object("velocity_fpm", fpm, "airflow_cfm", cfm),
          Figures.scaled(fpm) + " ft/min at " + Figures.scaled(cfm) + " ft³/min",
          carries(fpm));
    }

    private static String carries(double fpm) {
      String band =
          Figures.plain(Duct.LEAST_TRANSPORT_FPM)
              + " to "
              + Figures.plain(Duct.USUAL_TRANSPORT_FPM)
              + " ft/min, which is usual for wood dust";
      if (fpm < Duct.LEAST_TRANSPORT_FPM) {
        return "Slower than " + band + ": dust may settle in the duct.";
      }
      return (fpm > Duct.USUAL_TRANSPORT_FPM ? "Faster than " : "Within ") + band + ".";
    }
  }
}
