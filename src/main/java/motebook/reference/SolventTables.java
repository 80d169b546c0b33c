package motebook.reference;

import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.reference.Solvent.Authority;
import motebook.reference.Solvent.Element;
import motebook.reference.Solvent.Ppm;
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
        OptionalDouble.empty(),
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
            "osha_stel_ppm",
            "osha_ceiling_ppm",
            "niosh_st_ppm",
            "niosh_ceiling_ppm",
            "epa_8h_ppm",
            "epa_15min_ppm",
            "idlh_ppm",
            "eu_8h_ppm",
            "eu_15min_ppm",
            "gb_8h_ppm",
            "gb_15min_ppm",
            "acute_evidence",
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
        row.optional("vapour_kpa_25"),
        row.yes("light_alcohol"),
        element == Element.ORGANIC_VAPOUR ? Optional.of(vapour(row)) : Optional.empty(),
        times(row, printed),
        limits(row),
        row.text("advice"),
        row.word("evidence"));
  }

  private static Solvent.Limits limits(Row row) {
    Map<Authority, Ppm> occupational = new EnumMap<>(Authority.class);
    occupational.put(
        Authority.OSHA,
        new Ppm(
            row.optional("osha_pel_ppm"),
            row.optional("osha_stel_ppm"),
            row.optional("osha_ceiling_ppm")));
    occupational.put(
        Authority.NIOSH,
        new Ppm(
            row.optional("niosh_rel_ppm"),
            row.optional("niosh_st_ppm"),
            row.optional("niosh_ceiling_ppm")));
    occupational.put(Authority.EPA, overEightHoursAndFifteenMinutes(row, "epa"));
    occupational.put(Authority.EU, overEightHoursAndFifteenMinutes(row, "eu"));
    occupational.put(Authority.GB, overEightHoursAndFifteenMinutes(row, "gb"));
    occupational.values().removeIf(Ppm.NONE::equals);
    return new Solvent.Limits(
        row.optional("lel_percent"),
        row.optional("idlh_ppm"),
        Map.copyOf(occupational),
        row.text("acute_evidence"));
  }

  private static Ppm overEightHoursAndFifteenMinutes(Row row, String authority) {
    return new Ppm(
        row.optional(authority + "_8h_ppm"),
        row.optional(authority + "_15min_ppm"),
        OptionalDouble.empty());
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
