package motebook.journal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.Amount;
import motebook.model.OwnFinish;
import motebook.model.Work;
import motebook.reference.Control;
import motebook.reference.ElementClass;
import motebook.reference.Finish;
import motebook.reference.Finishes;
import motebook.reference.Masks;
import motebook.reference.Material;
import motebook.reference.Operation;
import motebook.reference.Reference;
import motebook.reference.Solvent;
import motebook.reference.Solvents;

/** The keys of the shipped tables that a book may hold. */
public final class KnownKeys {
  private static final Map<String, Supplier<Set<String>>> TABLES =
      Map.of(
          "operations", () -> keys(Reference.shipped().operations(), Operation::key),
          "materials", () -> keys(Reference.shipped().materials(), Material::key),
          "controls", () -> keys(Reference.shipped().controls(), Control::key),
          "finishes", () -> keys(Finishes.shipped().all(), Finish::key),
          "solvents", () -> keys(Solvents.shipped().all(), Solvent::key),
          "limits", () -> Reference.shipped().limitSets(),
          "elements", () -> keys(Masks.shipped().classes(), ElementClass::key));

  private static final Map<String, Set<String>> READ =
      new java.util.concurrent.ConcurrentHashMap<>();

  private KnownKeys() {}

  private static <T> Set<String> keys(Collection<T> rows, Function<T, String> key) {
    return rows.stream().map(key).collect(Collectors.toUnmodifiableSet());
  }

  /**
   * The keys of a shipped table.
   *
   * @param table its name, as in the table of columns of an export, without the ending
   */
  public static Set<String> of(String table) {
    return READ.computeIfAbsent(table, name -> TABLES.get(name).get());
  }

  /** What a session names that is not known, each with what it is. */
  static List<String> unknown(Work work, Set<String> ownFinishes) {
    List<String> unknown = new ArrayList<>();
    add(unknown, "operation", "operations", Stream.of(work.operation()));
    add(unknown, "material", "materials", work.material().stream());
    add(unknown, "control", "controls", work.controls().stream());
    Stream<String> shipped = work.amounts().stream().map(Amount::finish);
    add(unknown, "finish", "finishes", shipped.filter(finish -> !ownFinishes.contains(finish)));
    return unknown;
  }

  /** What the data sheet of a finish names that is not known. */
  static List<String> unknown(OwnFinish sheet) {
    List<String> unknown = new ArrayList<>();
    add(unknown, "finish", "finishes", Stream.of(sheet.like()));
    add(unknown, "solvent", "solvents", sheet.solvents().keySet().stream());
    return unknown;
  }

  private static void add(List<String> unknown, String what, String table, Stream<String> named) {
    named
        .filter(key -> !of(table).contains(key))
        .forEach(key -> unknown.add(what + " \"" + key + "\""));
  }
}
