package motebook.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** The shipped tables, read once. */
public final class Reference {
  private final Map<String, Caution> cautions;
  private final Map<String, Operation> operations;
  private final Map<String, Material> materials;
  private final Map<String, Control> controls;
  private final List<Limit> limits;

  private Reference(Function<String, Reader> table) {
    cautions = byKey(Tables.cautions(table.apply("cautions.csv")), Caution::key);
    operations =
        byKey(Tables.operations(table.apply("operations.csv"), cautions.keySet()), Operation::key);
    materials =
        byKey(Tables.materials(table.apply("materials.csv"), cautions.keySet()), Material::key);
    controls =
        byKey(Tables.controls(table.apply("controls.csv"), operations.keySet()), Control::key);
    limits = Tables.limits(table.apply("limits.csv"));
    if (!materials.containsKey(Material.UNKNOWN)) {
      throw new WrongTable("materials.csv", 1, "key", "no row " + Material.UNKNOWN);
    }
  }

  /** The tables that the program ships. */
  public static Reference shipped() {
    return Shipped.TABLES;
  }

  /**
   * The shipped tables after an edit of their text; what the tests of the tables work with.
   *
   * @param edit takes the name of a table and gives the edit of its text
   * @throws WrongTable at the first thing that is not as it must be
   */
  static Reference edited(Function<String, UnaryOperator<String>> edit) {
    return new Reference(editor(edit));
  }

  static Function<String, Reader> editor(Function<String, UnaryOperator<String>> edit) {
    return name -> new StringReader(edit.apply(name).apply(text(name)));
  }

  /** Opens a shipped table. */
  static Reader open(String name) {
    return new InputStreamReader(stream(name), StandardCharsets.UTF_8);
  }

  private static String text(String name) {
    try (InputStream in = stream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream stream(String name) {
    InputStream in = Reference.class.getResourceAsStream("/motebook/reference/" + name);
    if (in == null) {
      throw new IllegalStateException("table " + name + " is not in the program");
    }
    return in;
  }

  private static <T> Map<String, T> byKey(List<T> rows, Function<T, String> key) {
    Map<String, T> map = new LinkedHashMap<>();
    rows.forEach(row -> map.put(key.apply(row), row));
    return map;
  }

  public List<Operation> operations() {
    return List.copyOf(operations.values());
  }

  public List<Material> materials() {
    return List.copyOf(materials.values());
  }

  public List<Control> controls() {
    return List.copyOf(controls.values());
  }

  public List<Limit> limits() {
    return limits;
  }

  /**
   * The operation with the key.
   *
   * @throws IllegalArgumentException if no operation has the key
   */
  public Operation operation(String key) {
    return known(operations, "operation", key);
  }

  /**
   * The material with the key, or the row for an unnamed one.
   *
   * @throws IllegalArgumentException if no material has the key
   */
  public Material material(Optional<String> key) {
    return known(materials, "material", key.orElse(Material.UNKNOWN));
  }

  /**
   * The control with the key.
   *
   * @throws IllegalArgumentException if no control has the key
   */
  public Control control(String key) {
    return known(controls, "control", key);
  }

  /**
   * The caution with the key.
   *
   * @throws IllegalArgumentException if no caution has the key
   */
  public Caution caution(String key) {
    return known(cautions, "caution", key);
  }

  Set<String> cautionKeys() {
    return cautions.keySet();
  }

  private static <T> T known(Map<String, T> rows, String kind, String key) {
    T row = rows.get(key);
    if (row == null) {
      throw new IllegalArgumentException("no " + kind + " has the key " + key);
    }
    return row;
  }

  /** The keys of the limit sets, in the order of the table. */
  public Set<String> limitSets() {
    return limits.stream().map(Limit::set).collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The keys of the sets that are recommendations. */
  public Set<String> advisorySets() {
    return limits.stream().filter(Limit::advisory).map(Limit::set).collect(Collectors.toSet());
  }

  /** The limits of a set that are in force on a day and hold for a class in the air. */
  public List<Limit> limits(String set, LocalDate day, Set<WoodClass> inTheAir) {
    return limits.stream()
        .filter(limit -> limit.set().equals(set) && limit.validOn(day))
        .filter(limit -> inTheAir.stream().anyMatch(limit::covers))
        .toList();
  }

  private static final class Shipped {
    static final Reference TABLES = new Reference(Reference::open);
  }
}
