package motebook.command;

import static motebook.command.Numbers.notNegative;
import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import motebook.model.Figures;
import motebook.model.Refusal;
import motebook.report.Json;
import motebook.science.GravimetricSample;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A desk reckoning of a weighed filter. */
@Command(name = "sample", description = "What a weighed filter says about the air.")
final class ReckonSample extends Reckoning {
  @Option(
      names = "--mass",
      required = true,
      paramLabel = "MG",
      description = "What the filter gained, mg.")
  private String mass;

  @Option(names = "--flow", required = true, paramLabel = "Q", description = "Pump, L/min.")
  private String flow;

  @Option(names = "--minutes", required = true, paramLabel = "T", description = "Time sampled.")
  private String minutes;

  @Option(
      names = "--blank",
      defaultValue = "0",
      paramLabel = "MG",
      description = "What the field blank gained, mg (default 0).")
  private String blank;

  @Option(
      names = "--detection-limit",
      defaultValue = "0.03",
      paramLabel = "MG",
      description =
          "Least mass that can be told, mg (default 0.03, NIOSH 0600). A smaller gain is kept as"
              + " below it, and the answer is then the concentration at this limit.")
  private String detectionLimit;

  ReckonSample(Desk desk) {
    super(desk);
  }

  @Override
  public Integer call() {
    GravimetricSample sample =
        new GravimetricSample(
            gain("--mass", mass) - gain("--blank", blank),
            positive("--flow", flow) * positive("--minutes", minutes),
            notNegative("--detection-limit", detectionLimit));
    if (!sample.belowDetection() && sample.netMg() <= 0) {
      throw new Refusal(
          "--mass less --blank leaves nothing, and a result is never zero: give the laboratory's"
              + " --detection-limit, and it is kept as below that.");
    }
    return answer(
        Json.object("mg_m3", sample.mgPerM3(), "below_detection", sample.belowDetection()),
        (sample.belowDetection() ? "Below detection: less than " : "")
            + Figures.scaled(sample.mgPerM3())
            + " mg/m³");
  }

  /** A balance and a damp day can make a filter or a blank lighter. */
  private static double gain(String what, String text) {
    return within(what, text, -1e6, 1e6);
  }
}
