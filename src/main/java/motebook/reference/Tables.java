package motebook.reference;

import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import motebook.reference.Control.ActsOn;

/** What each shipped table holds and must hold. */
final class Tables {
  private static final String ALL = "all";
  private static final String ALL_EXCEPT = "all except ";

  private Tables() {}

  static List<Caution> cautions(Reader source) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        "cautions.csv",
        source,
        List.of("key", "sentence", "basis"),
        row -> new Caution(unique.key(row), row.word("sentence"), row.word("basis")));
  }

  static List<Operation> operations(Reader source, Set<String> cautions) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        "operations.csv",
        source,
        List.of(
            "key",
            "name",
            "also",
            "cautions",
            "family",
            "reference_mg_m3",
            "low_mg_m3",
            "high_mg_m3",
            "gsd",
            "grade",
            "where",
            "work_rate",
            "finishes",
            "basis"),
        row ->
            new Operation(
                unique.key(row),
                row.word("name"),
                row.words("also", ";"),
                knownCautions(row, cautions),
                row.oneOf(Operation.Family.class, "family"),
                row.figure("reference_mg_m3", "low_mg_m3", "high_mg_m3"),
                gsd(row),
                row.oneOf(Grade.class, "grade"),
                row.oneOf(Operation.Where.class, "where"),
                row.oneOf(Operation.WorkRate.class, "work_rate"),
                row.yes("finishes"),
                row.word("basis")));
  }

  private static double gsd(Row row) {
    double gsd = row.number("gsd");
    if (gsd < 1) {
      throw row.wrong("gsd", "a geometric standard deviation is at least 1: " + gsd);
    }
    return gsd;
  }

  static List<String> knownCautions(Row row, Set<String> known) {
    List<String> keys = row.words("cautions", " ");
    for (String key : keys) {
      if (!known.contains(key)) {
        throw row.wrong("cautions", "\"" + key + "\" is not in cautions.csv");
      }
    }
    return keys;
  }

  static List<Material> materials(Reader source, Set<String> cautions) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        "materials.csv",
        source,
        List.of(
            "key",
            "name",
            "also",
            "wood_class",
            "sanding_factor",
            "sanding_low",
            "sanding_high",
            "cutting_factor",
            "covered_by_limit",
            "grade",
            "cautions",
            "basis"),
        row ->
            new Material(
                unique.key(row),
                row.word("name"),
                row.words("also", ";"),
                row.oneOf(WoodClass.class, "wood_class"),
                row.figure("sanding_factor", "sanding_low", "sanding_high"),
                row.number("cutting_factor"),
                row.yes("covered_by_limit"),
                row.oneOf(Grade.class, "grade"),
                knownCautions(row, cautions),
                row.word("basis")));
  }

  static List<Control> controls(Reader source, Set<String> operations) {
    Map<String, Control> controls = new LinkedHashMap<>();
    Table.read(
        "controls.csv",
        source,
        List.of(
            "key",
            "name",
            "also",
            "acts_on",
            "serves",
            "pass_factor",
            "pass_low",
            "pass_high",
            "grade",
            "advice",
            "basis"),
        row -> controls.merge(row.word("key"), control(row, operations), Tables::joined));
    return List.copyOf(controls.values());
  }

  private static Control control(Row row, Set<String> operations) {
    ActsOn actsOn = row.oneOf(ActsOn.class, "acts_on");
    List<String> serves = row.words("serves", " ");
    for (String operation : serves) {
      if (!operations.contains(operation)) {
        throw row.wrong("serves", "\"" + operation + "\" is not in operations.csv");
      }
    }
    if (serves.isEmpty() == (actsOn == ActsOn.SOURCE)) {
      throw row.wrong("serves", "a control at the source serves operations, one of the room none");
    }
    String key = row.word("key");
    String id = serves.isEmpty() ? key : key + "/" + serves.get(0);
    Control.Row only =
        new Control.Row(
            id,
            Set.copyOf(serves),
            passFactor(row, actsOn),
            row.oneOf(Grade.class, "grade"),
            row.word("basis"));
    return new Control(
        key, row.word("name"), row.words("also", ";"), actsOn, row.text("advice"), List.of(only));
  }

  private static Figure passFactor(Row row, ActsOn actsOn) {
    if (actsOn == ActsOn.ROOM) {
      return Figure.exactly(1);
    }
    Figure pass = row.figure("pass_factor", "pass_low", "pass_high");
    if (pass.typical() > 1) {
      throw row.wrong("pass_factor", "no control is held to make dust: " + pass.typical());
    }
    return pass;
  }

  private static Control joined(Control a, Control b) {
    List<Control.Row> rows = new ArrayList<>(a.rows());
    rows.addAll(b.rows());
    return new Control(a.key(), a.name(), a.also(), a.actsOn(), a.advice(), List.copyOf(rows));
  }

  static List<Limit> limits(Reader source) {
    Table.Unique unique = new Table.Unique();
    return Table.read(
        "limits.csv",
        source,
        List.of(
            "key",
            "set",
            "body",
            "place",
            "mg_m3",
            "fraction",
            "averaging_min",
            "wood_classes",
            "valid_from",
            "valid_to",
            "judges",
            "edition",
            "evidence",
            "source"),
        row ->
            new Limit(
                unique.key(row),
                row.word("set"),
                row.word("body"),
                row.word("place"),
                row.positive("mg_m3"),
                row.oneOf(Limit.Fraction.class, "fraction"),
                (int) row.positive("averaging_min"),
                woodClasses(row),
                row.date("valid_from"),
                row.date("valid_to"),
                row.yes("judges"),
                row.text("edition"),
                row.word("evidence"),
                row.word("source")));
  }

  private static Set<WoodClass> woodClasses(Row row) {
    String cell = row.word("wood_classes");
    if (cell.equals(ALL)) {
      return EnumSet.allOf(WoodClass.class);
    }
    if (cell.startsWith(ALL_EXCEPT)) {
      return EnumSet.complementOf(EnumSet.of(woodClass(row, cell.substring(ALL_EXCEPT.length()))));
    }
    EnumSet<WoodClass> classes = EnumSet.noneOf(WoodClass.class);
    row.words("wood_classes", ",").forEach(word -> classes.add(woodClass(row, word)));
    return classes;
  }

  private static WoodClass woodClass(Row row, String word) {
    return Row.constant(WoodClass.class, word)
        .orElseThrow(() -> row.wrong("wood_classes", "unknown: \"" + word + "\""));
  }
}
