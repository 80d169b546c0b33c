package motebook.reference;

import java.io.Reader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the table of finishes holds and must hold. */
final class FinishTable {
  static final String NAME = "finishes.csv";

  private static final double ROUNDING = 1e-9;

  private final Solvents solvents;
  private final Reference reference;

  FinishTable(Solvents solvents, Reference reference) {
    this.solvents = solvents;
    this.reference = reference;
  }

  List<Finish> read(Reader source) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        NAME,
        source,
        List.of(
            "key",
            "name",
            "also",
            "density_g_ml",
            "volatile_g_l",
            "volatile_low",
            "volatile_high",
            "within_session",
            "later_rate_per_h",
            "solvents",
            "oil",
            "cautions",
            "grade",
            "basis"),
        row -> finish(unique.key(row), row));
  }

  private Finish finish(String key, Row row) {
    return new Finish(
        key,
        row.word("name"),
        row.words("also", ";"),
        row.positive("density_g_ml"),
        row.figure("volatile_g_l", "volatile_low", "volatile_high"),
        share(row),
        row.positive("later_rate_per_h"),
        parts(row),
        row.yes("oil"),
        Tables.knownCautions(row, reference.cautionKeys()),
        row.oneOf(Grade.class, "grade"),
        row.word("basis"),
        false,
        Optional.empty());
  }

  private static double share(Row row) {
    double share = row.number("within_session");
    if (share > 1) {
      throw row.wrong("within_session", "a share is at most 1: " + share);
    }
    return share;
  }

  private Map<String, Double> parts(Row row) {
    List<String> words = row.words("solvents", " ");
    Map<String, Double> parts = new LinkedHashMap<>();
    for (int i = 0; i + 1 < words.size(); i += 2) {
      if (parts.put(evaporating(words.get(i), row), part(words.get(i + 1), row)) != null) {
        throw row.wrong("solvents", "\"" + words.get(i) + "\" comes twice");
      }
    }
    double sum = parts.values().stream().mapToDouble(Double::doubleValue).sum();
    if (words.size() % 2 != 0 || Math.abs(sum - 1) > ROUNDING) {
      throw row.wrong("solvents", "solvents and shares that add to 1: got " + sum);
    }
    return parts;
  }

  private String evaporating(String key, Row row) {
    return solvents
        .withKey(key)
        .filter(Solvent::weighed)
        .map(Solvent::key)
        .orElseThrow(
            () ->
                row.wrong("solvents", "\"" + key + "\" is not in solvents.csv with a molar mass"));
  }

  private static double part(String word, Row row) {
    try {
      double part = Double.parseDouble(word);
      if (part > 0 && part <= 1) {
        return part;
      }
    } catch (NumberFormatException e) {
      throw row.wrong("solvents", "no number: \"" + word + "\"");
    }
    throw row.wrong("solvents", "a share lies above 0 and up to 1: " + word);
  }
}
