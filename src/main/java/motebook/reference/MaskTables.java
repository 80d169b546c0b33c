package motebook.reference;

import java.io.Reader;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the tables of respirators and their elements hold and must hold. */
final class MaskTables {
  static final String FACTORS = "protection-factors.csv";
  static final String ELEMENTS = "elements.csv";
  static final String HAZARDS = "hazards.csv";
  static final String BREATHING = "breathing-rates.csv";

  private static final Set<String> SCHEMES = Set.of("osha", "uk");
  private static final Set<String> HELD =
      Set.of(
          ElementClass.PARTICULATE,
          "organic-vapour",
          "formaldehyde",
          "ammonia",
          Hazard.SUPPLIED_AIR);

  private MaskTables() {}

  static List<ProtectionFactor> factors(Reader source) {
    Set<List<String>> seen = new HashSet<>();
    return Table.read(
        FACTORS,
        source,
        List.of(
            "scheme", "kind", "facepiece", "also", "element", "seal", "apf", "fit_rule", "source"),
        row -> factor(row, seen));
  }

  private static ProtectionFactor factor(Row row, Set<List<String>> seen) {
    ProtectionFactor factor =
        new ProtectionFactor(
            among(row, "scheme", row.word("scheme"), SCHEMES),
            row.word("kind"),
            row.word("facepiece"),
            row.words("also", ";"),
            row.text("element"),
            row.oneOf(ProtectionFactor.Seal.class, "seal"),
            row.positive("apf"),
            row.oneOf(ProtectionFactor.FitRule.class, "fit_rule"),
            row.word("source"));
    if (factor.apf() <= 1) {
      throw row.wrong("apf", "a factor is above 1: " + factor.apf());
    }
    if (factor.seal().tight() == (factor.fitRule() == ProtectionFactor.FitRule.NONE)) {
      throw row.wrong("fit_rule", "one for what seals on the face, none for what does not");
    }
    if (!seen.add(List.of(factor.scheme(), factor.kind(), factor.facepiece(), factor.rating()))) {
      throw row.wrong("facepiece", "the same respirator comes twice");
    }
    return factor;
  }

  static List<ElementClass> elements(Reader source) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        ELEMENTS,
        source,
        List.of(
            "key",
            "name",
            "also",
            "schemes",
            "holds",
            "letter",
            "efficiency_percent",
            "service",
            "rating",
            "basis"),
        row -> element(unique.key(row), row));
  }

  private static ElementClass element(String key, Row row) {
    Set<String> holds = someOf(row, "holds", HELD);
    double efficiency = row.optional("efficiency_percent").orElse(0);
    if (holds.contains(ElementClass.PARTICULATE) != (efficiency > 0) || efficiency > 100) {
      throw row.wrong("efficiency_percent", "above 0 to 100 for what holds particles, else empty");
    }
    return new ElementClass(
        key,
        row.word("name"),
        row.words("also", ";"),
        someOf(row, "schemes", SCHEMES),
        holds,
        letter(row),
        efficiency,
        service(row, holds),
        row.text("rating"),
        row.word("basis"));
  }

  private static ElementClass.Service service(Row row, Set<String> holds) {
    if (row.text("service").isEmpty()) {
      return ElementClass.Service.OPEN;
    }
    if (!holds.contains(ElementClass.PARTICULATE)) {
      throw row.wrong("service", "only what holds particles has one");
    }
    return row.oneOf(ElementClass.Service.class, "service");
  }

  private static String letter(Row row) {
    String letter = row.text("letter");
    return letter.isEmpty() ? letter : among(row, "letter", letter, Set.of("n", "r", "p"));
  }

  static List<Hazard> hazards(Reader source, Set<String> cautions) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        HAZARDS,
        source,
        List.of(
            "key",
            "name",
            "kind",
            "held_by",
            "least_efficiency_percent",
            "most_ppm",
            "cautions",
            "solvents",
            "advice",
            "source"),
        row -> hazard(unique.key(row), row, cautions));
  }

  private static Hazard hazard(String key, Row row, Set<String> cautions) {
    return new Hazard(
        key,
        row.word("name"),
        row.oneOf(Hazard.Kind.class, "kind"),
        someOf(row, "held_by", HELD),
        row.optional("least_efficiency_percent").orElse(0),
        row.optional("most_ppm"),
        row.text("cautions").isEmpty() ? Set.of() : someOf(row, "cautions", cautions),
        solvents(row),
        row.word("advice"),
        row.word("source"));
  }

  private static Set<Solvent.Element> solvents(Row row) {
    EnumSet<Solvent.Element> kinds = EnumSet.noneOf(Solvent.Element.class);
    for (String word : row.words("solvents", " ")) {
      kinds.add(
          Row.constant(Solvent.Element.class, word)
              .orElseThrow(() -> row.wrong("solvents", "unknown: \"" + word + "\"")));
    }
    return kinds;
  }

  /** Litres a minute that work of each rate makes one breathe; every rate must be there. */
  static Map<Operation.WorkRate, Double> breathing(Reader source) {
    Map<Operation.WorkRate, Double> rates = new EnumMap<>(Operation.WorkRate.class);
    Table.read(
        BREATHING,
        source,
        List.of("work_rate", "litres_per_min", "evidence", "source"),
        row -> {
          row.word("source");
          Operation.WorkRate rate = row.oneOf(Operation.WorkRate.class, "work_rate");
          rates.put(rate, row.positive("litres_per_min"));
          return rate;
        });
    for (Operation.WorkRate rate : Operation.WorkRate.values()) {
      if (!rates.containsKey(rate)) {
        throw new WrongTable(BREATHING, 1, "work_rate", "no row " + rate);
      }
    }
    return rates;
  }

  private static Set<String> someOf(Row row, String column, Set<String> known) {
    List<String> words = row.words(column, " ");
    if (words.isEmpty()) {
      throw row.wrong(column, "empty");
    }
    words.forEach(word -> among(row, column, word, known));
    return Set.copyOf(words);
  }

  private static String among(Row row, String column, String word, Set<String> known) {
    if (!known.contains(word)) {
      throw row.wrong(column, "unknown: \"" + word + "\"");
    }
    return word;
  }
}
