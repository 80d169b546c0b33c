package motebook.command;

import static motebook.command.Numbers.positive;
import static motebook.command.Numbers.within;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import motebook.desk.CartridgeLife;
import motebook.entry.NearMiss;
import motebook.journal.Book;
import motebook.model.Figures;
import motebook.model.OwnFigure;
import motebook.model.Refusal;
import motebook.model.Text;
import motebook.reference.Hazard;
import motebook.reference.Masks;
import motebook.reference.Solvent;
import motebook.reference.Solvents;
import motebook.report.Json;
import motebook.science.CartridgeUse;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A desk reckoning of the life of a cartridge. */
@Command(
    name = "cartridge",
    description = "How long an organic-vapour cartridge lasts and when to change it.")
final class ReckonCartridge extends Reckoning {
  private static final String CAUTION =
      "An estimate, before any safety fraction: follow the manufacturer's data. Write a change"
          + " schedule and keep to it; odour is not a warning.";

  @Parameters(arity = "1..*", paramLabel = "SOLVENT", description = "Name or CAS number.")
  private List<String> solvent;

  @Option(
      names = "--ppm",
      required = true,
      paramLabel = "N",
      description = "Concentration outside the mask.")
  private String ppm;

  @Option(
      names = "--flow",
      defaultValue = "53.3",
      paramLabel = "Q",
      description = "What the wearer breathes, L/min (default 53.3).")
  private String flow;

  @Option(
      names = "--humidity",
      defaultValue = "50",
      paramLabel = "PERCENT",
      description = "Relative humidity (default 50); above 85 halves the life.")
  private String humidity;

  @Option(
      names = "--carbon",
      defaultValue = "52",
      paramLabel = "G",
      description = "Carbon of the pair, g (default 52).")
  private String carbon;

  @Option(
      names = "--safety",
      paramLabel = "FRACTION",
      description =
          "Share of the life to count on, 0.01 to 1 (default: the book's setting, 0.75 as"
              + " shipped).")
  private String safety;

  ReckonCartridge(Desk desk) {
    super(desk);
  }

  @Override
  public Integer call() {
    CartridgeUse use =
        new CartridgeUse(
            positive("--ppm", ppm),
            positive("--flow", flow),
            within("--humidity", humidity, 0, 100),
            positive("--carbon", carbon));
    Solvent found = found(String.join(" ", solvent));
    refuseAboveIdlh(found, use.ppm());
    refuseAboveElements(found, use.ppm());
    CartridgeLife life = CartridgeLife.of(found, use);
    double share = safety == null ? chosen() : within("--safety", safety, 0.01, 1);
    return answer(json(life), lines(found, life, share).toArray(String[]::new));
  }

  private static void refuseAboveIdlh(Solvent solvent, double ppm) {
    if (solvent.aboveIdlh(ppm)) {
      throw new Refusal(
          "%s ppm of %s is too much: above %s ppm it is immediately dangerous to life or health"
                  .formatted(
                      Figures.plain(ppm),
                      solvent.name(),
                      Figures.plain(solvent.limits().idlhPpm().getAsDouble()))
              + " (IDLH): no cartridge may be used there. Leave the area and ventilate; entering"
              + " such air is licensed work.");
    }
  }

  private static void refuseAboveElements(Solvent solvent, double ppm) {
    Hazard hazard = Masks.shipped().hazardOf(solvent);
    if (hazard.mostPpm().isPresent() && ppm > hazard.mostPpm().getAsDouble()) {
      throw new Refusal(
          "Cartridges for %s are approved up to %s ppm (42 CFR 84.190); %s ppm is above that."
                  .formatted(
                      hazard.name(),
                      Figures.plain(hazard.mostPpm().getAsDouble()),
                      Figures.plain(ppm))
              + " Ventilate; what is left needs supplied air.");
    }
  }

  // Where there is no book yet, none is begun for this.
  private double chosen() {
    OwnFigure figure = OwnFigure.CARTRIDGE_SAFETY_FRACTION;
    if (!Files.exists(desk().bookFile())) {
      return figure.shipped();
    }
    try (Book book = desk().open()) {
      return book.settings().figures().get(figure);
    }
  }

  private static Solvent found(String name) {
    Solvents solvents = Solvents.shipped();
    return solvents
        .find(name)
        .orElseThrow(
            () ->
                new Refusal(
                    "No solvent is called \""
                        + Text.clean(name)
                        + "\". "
                        + nearest(Text.folded(name), solvents)));
  }

  private static String nearest(String typed, Solvents solvents) {
    List<String> all =
        solvents.all().stream().flatMap(s -> s.names().stream()).map(Text::folded).toList();
    Set<String> near = new LinkedHashSet<>(NearMiss.words(typed, all));
    all.stream().filter(name -> !typed.isEmpty() && name.contains(typed)).forEach(near::add);
    return near.isEmpty()
        ? "These are known: "
            + solvents.all().stream().map(Solvent::spoken).collect(Collectors.joining(", "))
            + "."
        : "The nearest: " + String.join(", ", near) + ".";
  }

  private static Object json(CartridgeLife life) {
    return Json.object(
        "minutes",
        life.shortest().map(CartridgeLife.Estimate::minutes).orElse(null),
        "basis",
        life.shortest().map(CartridgeLife.Estimate::basis).orElse(null),
        "table_minutes",
        orNull(life.table()),
        "wheeler_jonas_minutes",
        orNull(life.wheelerJonas()),
        "rule_of_thumb_minutes",
        orNull(life.ruleOfThumb()),
        "note",
        life.notes().isEmpty() ? null : String.join(" ", life.notes()));
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }

  private static List<String> lines(Solvent solvent, CartridgeLife life, double share) {
    List<String> lines = new ArrayList<>();
    lines.add(
        life.shortest()
            .map(best -> solvent.name() + ": about " + minutes(best) + " to 10 % breakthrough")
            .orElse(solvent.name() + ": no cartridge time"));
    if (life.estimates().size() > 1) {
      lines.add(
          "The shortest of: "
              + life.estimates().stream()
                  .map(ReckonCartridge::minutes)
                  .collect(Collectors.joining(", ")));
    }
    if (life.table().isPresent() && life.wheelerJonas().isPresent()) {
      lines.add(
          "The printed table is the output of a model of the same kind, not of measurements: the two"
              + " are not independent.");
    }
    life.shortest()
        .ifPresent(
            best ->
                lines.add(
                    "Change after "
                        + Figures.rounded(share * best.minutes())
                        + " min of wear: "
                        + Figures.plain(share)
                        + " of it is counted on."));
    life.notes().forEach(lines::add);
    if (!life.estimates().isEmpty()) {
      lines.add(CAUTION);
    }
    return lines;
  }

  private static String minutes(CartridgeLife.Estimate estimate) {
    return Figures.rounded(estimate.minutes()) + " min (" + said(estimate.basis()) + ")";
  }

  private static String said(String basis) {
    return switch (basis) {
      case "table" -> "printed table";
      case "wheeler-jonas" -> "Wheeler and Jonas";
      default -> "rule of thumb";
    };
  }
}
