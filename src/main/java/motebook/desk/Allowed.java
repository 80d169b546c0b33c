package motebook.desk;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.Element;
import motebook.model.FitRecord.Method;
import motebook.model.FitRecord.Qualitative;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.model.Text;
import motebook.reference.Control;
import motebook.reference.ElementClass;
import motebook.reference.Masks;
import motebook.reference.ProtectionFactor;
import motebook.reference.ProtectionFactor.FitRule;
import motebook.reference.ProtectionFactor.Seal;
import motebook.reference.Reference;

/** What the shipped tables allow of masks and filters: a respirator without a figure is none. */
public final class Allowed {
  private static final String TOOL_VACUUM = "tool-vacuum";
  private static final String VACUUM = "vacuum";
  private static final List<String> SEATS = List.of("collector", VACUUM, "air-cleaner");

  private final Masks masks;
  private final Reference reference;

  public Allowed(Masks masks, Reference reference) {
    this.masks = masks;
    this.reference = reference;
  }

  /**
   * The scheme of a word.
   *
   * @throws Refusal if it is none
   */
  public Scheme scheme(String raw) {
    return Scheme.of(raw)
        .orElseThrow(
            () ->
                new Refusal(
                    "\"%s\" is no scheme of protection factors: say osha or uk."
                        .formatted(Text.clean(raw))));
  }

  /**
   * The kind of a respirator as the table calls it; its beginning is enough where it is clear.
   *
   * @throws Refusal if the scheme has no such kind, naming those it has
   */
  public String kind(Scheme scheme, String raw) {
    String folded = Text.folded(raw);
    List<String> kinds =
        masks.factors().stream()
            .filter(factor -> factor.scheme().equals(scheme.key()))
            .map(ProtectionFactor::kind)
            .distinct()
            .toList();
    List<String> begun = kinds.stream().filter(k -> Text.folded(k).startsWith(folded)).toList();
    return kinds.stream()
        .filter(kind -> Text.folded(kind).equals(folded))
        .findFirst()
        .or(() -> only(begun))
        .orElseThrow(
            () ->
                new Refusal(
                    "\"%s\" is no kind of respirator in the %s table. There are: %s."
                        .formatted(Text.clean(raw), scheme.key(), String.join("; ", kinds))));
  }

  private static Optional<String> only(Collection<String> begun) {
    return begun.stream().filter(one -> begun.size() == 1).findFirst();
  }

  /**
   * The facepiece as the table calls it; its beginning is enough where it is clear.
   *
   * @throws Refusal if no factor is assigned to it, naming those that have one
   */
  public String facepiece(Scheme scheme, String kind, String raw) {
    return masks.factors(scheme.key(), kind, raw).stream()
        .map(ProtectionFactor::facepiece)
        .findFirst()
        .or(() -> only(masks.facepiecesBegunBy(scheme.key(), kind, raw)))
        .orElseThrow(
            () ->
                new Refusal(
                    ("The %s table assigns no factor to \"%s\", %s, so it is not"
                            + " allowed. There are: %s.")
                        .formatted(
                            scheme.key(),
                            Text.clean(raw),
                            kind,
                            String.join(", ", masks.facepieces(scheme.key(), kind)))));
  }

  /**
   * The class of an element for a respirator.
   *
   * @throws Refusal if there is no such class, or the respirator takes none or has no factor with
   *     it
   */
  public ElementClass elementClass(Respirator respirator, String raw) {
    List<ProtectionFactor> rows = rows(respirator);
    if (rows.stream().anyMatch(ProtectionFactor::suppliedAir)) {
      throw new Refusal(
          "\"%s\" is fed with supplied air and takes no element.".formatted(respirator.name()));
    }
    masks.requireHeldBy(respirator, raw);
    ElementClass found =
        masks
            .elementClass(raw)
            .filter(one -> one.schemes().contains(respirator.scheme().key()))
            .orElseThrow(() -> noClass(respirator, raw, rows));
    if (rows.stream().noneMatch(row -> row.rating().isEmpty() || rated(row, found))) {
      throw noClass(respirator, raw, rows);
    }
    return found;
  }

  private static boolean rated(ProtectionFactor row, ElementClass one) {
    return row.rating().equals(one.rating());
  }

  private Refusal noClass(Respirator respirator, String raw, List<ProtectionFactor> rows) {
    String fitting =
        masks.classes().stream()
            .filter(one -> one.schemes().contains(respirator.scheme().key()))
            .filter(one -> rows.stream().anyMatch(row -> row.rating().isEmpty() || rated(row, one)))
            .map(ElementClass::name)
            .collect(Collectors.joining(", "));
    return new Refusal(
        "\"%s\" is no class of element for \"%s\" (%s, %s). There are: %s."
            .formatted(
                Text.clean(raw),
                respirator.name(),
                respirator.facepiece(),
                respirator.scheme().key(),
                fitting));
  }

  private List<ProtectionFactor> rows(Respirator respirator) {
    return masks.factors(respirator.scheme().key(), respirator.kind(), respirator.facepiece());
  }

  /** How a respirator seals; empty where the tables do not know it. */
  public Optional<Seal> seal(Respirator respirator) {
    return rows(respirator).stream().map(ProtectionFactor::seal).findFirst();
  }

  /** Which fit tests give a respirator its factor. */
  public FitRule fitRule(Respirator respirator) {
    return masks.fitRule(respirator);
  }

  /**
   * Sees to it that a test that was passed can count for a respirator.
   *
   * @throws Refusal if it was by taste or smell and the respirator needs one that measures
   */
  public void requireCounting(Respirator mask, Method method) {
    boolean tasted = method instanceof Qualitative tasting && tasting.passed();
    if (tasted && fitRule(mask) == FitRule.EACH_EXERCISE) {
      throw new Refusal(
          ("A fit test by taste or smell does not count for \"%s\": under the %s rule a %s (%s)"
                  + " needs a quantitative test, one that measures. Give the fit factor of each"
                  + " exercise.")
              .formatted(
                  mask.name(),
                  mask.scheme().key().toUpperCase(Locale.ROOT),
                  mask.facepiece(),
                  mask.kind()));
    }
  }

  /** The factor assigned to a respirator whatever its element; empty where that decides. */
  public Optional<Double> factor(Respirator respirator) {
    return rows(respirator).stream()
        .filter(row -> row.rating().isEmpty())
        .map(ProtectionFactor::apf)
        .findFirst();
  }

  /** The factor assigned to a respirator with an element alone. */
  public Optional<Double> factor(Respirator respirator, Element element) {
    Optional<ElementClass> one = masks.elementClass(element.elementClass());
    return rows(respirator).stream()
        .filter(row -> row.rating().isEmpty() || one.filter(c -> rated(row, c)).isPresent())
        .map(ProtectionFactor::apf)
        .findFirst();
  }

  /** The listed name of a class, or its key where the tables do not know it. */
  public String className(String key) {
    return masks.elementClass(key).map(ElementClass::name).orElse(key);
  }

  /**
   * What a shop filter sits in: "collector", "vacuum" or "air-cleaner", by any name of the control.
   *
   * @throws Refusal if it is none of them
   */
  public String seat(String raw) {
    String folded = Text.folded(raw);
    Stream<String> controls =
        reference.controls().stream()
            .filter(control -> answers(control, folded))
            .map(control -> control.key().equals(TOOL_VACUUM) ? VACUUM : control.key());
    return Stream.concat(Stream.of(folded.replace(' ', '-')), controls)
        .filter(SEATS::contains)
        .findFirst()
        .orElseThrow(
            () ->
                new Refusal(
                    "\"%s\" has no filter to look after: say %s."
                        .formatted(Text.clean(raw), String.join(", ", SEATS))));
  }

  private static boolean answers(Control control, String folded) {
    return control.names().stream().anyMatch(name -> Text.folded(name).equals(folded));
  }
}
