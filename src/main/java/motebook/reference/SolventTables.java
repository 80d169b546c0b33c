package motebook.reference;

import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.reference.Solvent.Element;
import motebook.science.Breakthrough;
import motebook.science.WheelerJonas;

/** What the tables of solvents hold and must hold. */
final class SolventTables {
  static final String SOLVENTS = "solvents.csv";
  static final String BREAKTHROUGH = "breakthrough-10-percent.csv";

  private static final List<Double> PPM = List.of(50.0, 100.0, 200.0, 500.0, 1000.0);
  private static final List<String> TIMES =
      List.of("ppm_50", "ppm_100", "ppm_200", "ppm_500", "ppm_1000");

  private SolventTables() {}

  /** The compounds of the breakthrough table, each as a solvent of its own. */
  static List<Solvent> breakthrough(Reader source) {
    List<String> columns =
        new ArrayList<>(List.of("compound", "also", "cas", "boiling_c", "light_alcohol", "basis"));
    columns.addAll(TIMES);
    return Table.read(BREAKTHROUGH, source, columns, SolventTables::printed);
  }

  private static Solvent printed(Row row) {
    String compound = row.word("compound");
    return new Solvent(
        compound.replace(' ', '-'),
        compound,
        row.words("also", ";"),
        row.word("cas"),
        OptionalDouble.empty(),
        Element.ORGANIC_VAPOUR,
        OptionalDouble.of(row.signed("boiling_c")),
        row.yes("light_alcohol"),
        Optional.empty(),
        times(row),
        Solvent.Limits.UNKNOWN,
        "",
        row.word("basis"));
  }

  /** All five times or none. */
  private static Optional<Breakthrough> times(Row row) {
    if (TIMES.stream().allMatch(column -> row.text(column).isEmpty())) {
      return Optional.empty();
    }
    List<Double> minutes = TIMES.stream().map(column -> row.positive(column)).toList();
    for (int i = 1; i < minutes.size(); i++) {
      if (minutes.get(i) >= minutes.get(i - 1)) {
        throw row.wrong(TIMES.get(i), "the time must fall as the concentration rises");
      }
    }
    return Optional.of(new Breakthrough(PPM, minutes));
  }

  static List<Solvent> solvents(Reader source, List<Solvent> printed) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        SOLVENTS,
        source,
        List.of(
            "key",
            "name",
            "also",
            "cas",
            "molar_mass_g_mol",
            "boiling_c",
            "density_g_ml",
            "vapour_kpa_20",
            "vapour_kpa_25",
            "refractive_index",
            "lel_percent",
            "osha_pel_ppm",
            "niosh_rel_ppm",
            "niosh_st_ppm",
            "element",
            "light_alcohol",
            "breakthrough",
            "advice",
            "evidence"),
        row -> solvent(unique.key(row), row, printed));
  }

  private static Solvent solvent(String key, Row row, List<Solvent> printed) {
    Element element = row.oneOf(Element.class, "element");
    if ((element == Element.ORGANIC_VAPOUR) != row.text("advice").isEmpty()) {
      throw row.wrong(
          "advice", "said of what an organic-vapour element does not hold, and only then");
    }
    return new Solvent(
        key,
        row.word("name"),
        row.words("also", ";"),
        row.text("cas"),
        row.optional("molar_mass_g_mol"),
        element,
        row.text("boiling_c").isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(row.signed("boiling_c")),
        row.yes("light_alcohol"),
        element == Element.ORGANIC_VAPOUR ? Optional.of(vapour(row)) : Optional.empty(),
        times(row, printed),
        new Solvent.Limits(
            row.optional("lel_percent"),
            row.optional("osha_pel_ppm"),
            row.optional("niosh_rel_ppm"),
            row.optional("niosh_st_ppm")),
        row.text("advice"),
        row.word("evidence"));
  }

  private static WheelerJonas.Vapour vapour(Row row) {
    WheelerJonas.Vapour vapour =
        new WheelerJonas.Vapour(
            row.positive("molar_mass_g_mol"),
            row.positive("density_g_ml"),
            row.number("refractive_index"),
            row.positive("vapour_kpa_20"),
            row.positive("vapour_kpa_25"));
    if (vapour.refractiveIndex() <= 1) {
      throw row.wrong("refractive_index", "a liquid's is above 1: " + vapour.refractiveIndex());
    }
    if (vapour.kPa25() <= vapour.kPa20()) {
      throw row.wrong("vapour_kpa_25", "must be above that at 20 °C");
    }
    return vapour;
  }

  private static Optional<Breakthrough> times(Row row, List<Solvent> printed) {
    String compound = row.text("breakthrough");
    if (compound.isEmpty()) {
      return Optional.empty();
    }
    return printed.stream()
        .filter(one -> one.name().equals(compound))
        .findFirst()
        .orElseThrow(
            () -> row.wrong("breakthrough", "\"" + compound + "\" is not in " + BREAKTHROUGH))
        .breakthrough();
  }
}
