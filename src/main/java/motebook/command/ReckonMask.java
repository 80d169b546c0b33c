package motebook.command;

import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.report.FitReport;
import motebook.report.Json;
import motebook.science.FilterLoading;
import motebook.science.FitFactor;
import motebook.science.Protection;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reckonings of masks and their dust filters. */
final class ReckonMask {
  private ReckonMask() {}

  @Command(
      name = "fit",
      description = "Overall fit factor of a quantitative test (29 CFR 1910.134, App. A).")
  static final class Fit extends Reckoning {
    @Parameters(
        arity = "0..*",
        paramLabel = "FACTOR",
        description = "The fit factor of each exercise, grimace left out.")
    private List<String> factors = List.of();

    @Option(
        names = "--facepiece",
        required = true,
        paramLabel = "KIND",
        description = "half (pass from 100) or full (from 500).")
    private String facepiece;

    Fit(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double pass = pass();
      if (factors.isEmpty()) {
        throw new Refusal(
            "No fit factors given: say one for each exercise, like 200 180 150 --facepiece half.");
      }
      double overall =
          FitFactor.overall(
              factors.stream().mapToDouble(f -> positive("A fit factor", f)).toArray());
      boolean passed = overall >= pass;
      List<String> said = new ArrayList<>();
      said.add(
          "Overall fit factor "
              + FitReport.overall(overall, pass)
              + ": "
              + (passed ? "passed" : "not passed")
              + " ("
              + Figures.plain(pass)
              + " is asked of a "
              + facepiece.strip().toLowerCase(Locale.ROOT)
              + " facepiece)");
      if (factors.size() == 1) {
        said.add(
            "One exercise is not a fit test: a test needs the fit factor of each exercise of its"
                + " protocol.");
      }
      return answer(
          Json.object("fit_factor", overall, "pass", passed), said.toArray(String[]::new));
    }

    private double pass() {
      return switch (Text.folded(facepiece)) {
        case "half" -> FitFactor.PASS_HALF;
        case "full" -> FitFactor.PASS_FULL;
        default ->
            throw new Refusal(
                "\""
                    + Text.clean(facepiece)
                    + "\" is no facepiece that is tested so: say --facepiece half or full.");
      };
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
          "Effective protection factor " + Figures.rounded(factor) + " over the whole time");
    }
  }

  @Command(name = "filter", description = "Hours until a dust filter holds a given load.")
  static final class Filter extends Reckoning {
    @Option(names = "--mass", required = true, paramLabel = "MG", description = "The load, mg.")
    private String mass;

    @Option(
        names = "--concentration",
        required = true,
        paramLabel = "C",
        description = "Mean outside the mask while it is worn, mg/m³.")
    private String concentration;

    @Option(
        names = "--flow",
        required = true,
        paramLabel = "Q",
        description = "What the wearer breathes, L/min.")
    private String flow;

    Filter(Desk desk) {
      super(desk);
    }

    @Override
    public Integer call() {
      double mg = positive("--mass", mass);
      double hours =
          FilterLoading.hours(
              mg, positive("--concentration", concentration), positive("--flow", flow));
      return answer(
          Json.object("hours", hours),
          "Holds " + Figures.plain(mg) + " mg after " + Figures.scaled(hours) + " h worn",
          "Sooner when it is damaged, soiled or hard to breathe through.");
    }
  }
}
