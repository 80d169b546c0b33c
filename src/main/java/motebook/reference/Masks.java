package motebook.reference;

import java.io.Reader;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Text;
import motebook.reference.ProtectionFactor.FitRule;

/** The shipped tables of respirators: factors, classes of elements, hazards, breathing. */
public final class Masks {
  /** How the layers of carbon in disposable masks are called. */
  private static final List<String> ODOUR = List.of("odour", "odor", "nuisance");

  private final List<ProtectionFactor> factors;
  private final List<ElementClass> classes;
  private final Map<String, ElementClass> byName = new HashMap<>();
  private final List<Hazard> hazards;
  private final Map<Operation.WorkRate, Double> breathing;

  private Masks(Function<String, Reader> table) {
    factors = MaskTables.factors(table.apply(MaskTables.FACTORS));
    classes = MaskTables.elements(table.apply(MaskTables.ELEMENTS));
    classes.forEach(one -> one.names().forEach(name -> byName.putIfAbsent(Text.folded(name), one)));
    Set<String> cautions =
        Tables.cautions(table.apply("cautions.csv")).stream()
            .map(Caution::key)
            .collect(Collectors.toSet());
    hazards = MaskTables.hazards(table.apply(MaskTables.HAZARDS), cautions);
    breathing = MaskTables.breathing(table.apply(MaskTables.BREATHING));
    requireAdvice();
  }

  // A solvent without a hazard would be worn against without a word.
  private void requireAdvice() {
    for (Solvent.Element kind : Solvent.Element.values()) {
      if (hazards.stream().noneMatch(hazard -> hazard.solvents().contains(kind))) {
        throw new WrongTable(MaskTables.HAZARDS, 1, "solvents", "no row for " + kind);
      }
    }
  }

  /** The tables that the program ships. */
  public static Masks shipped() {
    return Shipped.TABLES;
  }

  /**
   * The shipped tables after an edit of their text; what the tests of the tables work with.
   *
   * @throws WrongTable at the first thing that is not as it must be
   */
  static Masks edited(Function<String, UnaryOperator<String>> edit) {
    return new Masks(Reference.editor(edit));
  }

  public List<ProtectionFactor> factors() {
    return factors;
  }

  public List<ElementClass> classes() {
    return classes;
  }

  public List<Hazard> hazards() {
    return hazards;
  }

  /** The facepieces that a scheme knows for a kind of respirator, in the order of the table. */
  public Set<String> facepieces(String scheme, String kind) {
    return factors.stream()
        .filter(factor -> same(factor.scheme(), scheme) && same(factor.kind(), kind))
        .map(ProtectionFactor::facepiece)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The rows of a respirator, one for each rating of its elements; none: not allowed. */
  public List<ProtectionFactor> factors(String scheme, String kind, String facepiece) {
    return factors.stream()
        .filter(factor -> same(factor.scheme(), scheme) && same(factor.kind(), kind))
        .filter(factor -> called(factor, facepiece))
        .toList();
  }

  /** The rows of a respirator of the book; none: not allowed. */
  public List<ProtectionFactor> factors(Respirator mask) {
    return factors(mask.scheme().key(), mask.kind(), mask.facepiece());
  }

  /**
   * Which fit tests give a respirator its factor; the strictest where its elements decide. A
   * respirator that the tables do not know asks for what measures.
   */
  public FitRule fitRule(Respirator mask) {
    List<FitRule> rules = factors(mask).stream().map(ProtectionFactor::fitRule).toList();
    return rules.isEmpty() || rules.contains(FitRule.EACH_EXERCISE)
        ? FitRule.EACH_EXERCISE
        : rules.get(0);
  }

  /** Whether a respirator is a filter itself, so that no gas or vapour class counts on it. */
  public boolean particlesOnly(Respirator mask) {
    return factors(mask).stream().anyMatch(ProtectionFactor::filteringFacepiece);
  }

  /**
   * Sees to it that a class may be on a respirator: nothing but a particulate one is on a filtering
   * facepiece, 42 CFR 84 subpart K and EN 149. A layer of carbon against nuisance odours is neither
   * a gas nor a vapour class.
   *
   * @param elementClass a key or a name of the class
   * @throws Refusal if it is for a gas or a vapour
   */
  public void requireHeldBy(Respirator mask, String elementClass) {
    boolean gas =
        elementClass(elementClass)
            .map(ElementClass::gas)
            .orElseGet(() -> ODOUR.stream().anyMatch(Text.folded(elementClass)::contains));
    if (gas && particlesOnly(mask)) {
      throw new Refusal(
          ("\"%s\" is a filtering facepiece and holds particles only: \"%s\" counts for nothing on"
                  + " it, and so does a layer against odours. Enter the particulate class on its"
                  + " label, such as N95 or FFP3.")
              .formatted(mask.name(), Text.clean(elementClass)));
    }
  }

  /** The facepieces one of whose names begins so, as {@link #facepieces} lists them. */
  public Set<String> facepiecesBegunBy(String scheme, String kind, String beginning) {
    return factors.stream()
        .filter(factor -> same(factor.scheme(), scheme) && same(factor.kind(), kind))
        .filter(factor -> names(factor).anyMatch(name -> begins(name, beginning)))
        .map(ProtectionFactor::facepiece)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static boolean begins(String name, String beginning) {
    return Text.folded(name).startsWith(Text.folded(beginning));
  }

  /** The class that answers to a name or a key, however it is written. */
  public Optional<ElementClass> elementClass(String name) {
    return Optional.ofNullable(byName.get(Text.folded(name)));
  }

  /**
   * The hazard with the key.
   *
   * @throws IllegalArgumentException if no hazard has the key
   */
  public Hazard hazard(String key) {
    return hazards.stream()
        .filter(hazard -> hazard.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no hazard has the key " + key));
  }

  /** What a kind of solvent is to whoever breathes it. */
  public Hazard hazardOf(Solvent solvent) {
    return hazards.stream()
        .filter(hazard -> hazard.solvents().contains(solvent.element()))
        .findFirst()
        .orElseThrow();
  }

  /** What work of a rate makes one breathe, L/min. */
  public double litresPerMin(Operation.WorkRate rate) {
    return breathing.get(rate);
  }

  // The rating of the element may be said with it, as in "half mask P3".
  private static boolean called(ProtectionFactor factor, String facepiece) {
    return names(factor)
        .flatMap(name -> Stream.of(name, name + " " + factor.rating()))
        .anyMatch(name -> same(name, facepiece));
  }

  private static Stream<String> names(ProtectionFactor factor) {
    return Stream.concat(Stream.of(factor.facepiece()), factor.also().stream());
  }

  private static boolean same(String one, String other) {
    return Text.folded(one).equals(Text.folded(other));
  }

  private static final class Shipped {
    static final Masks TABLES = new Masks(Reference::open);
  }
}
