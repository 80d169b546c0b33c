package motebook.journal;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import motebook.model.Action;
import motebook.model.Element;
import motebook.model.Gear;
import motebook.model.Refusal;
import motebook.model.Respirator;
import motebook.model.Retirement;
import motebook.model.ShopFilter;
import motebook.model.Text;
import motebook.model.Upkeep;

/** What hangs on the rack under which name; a name is one thing's, whatever its kind. */
record GearNames(Gear gear) {

  /**
   * @throws Refusal if something else has the name, or a respirator or filter had it, since
   *     sessions and upkeep go by it
   */
  void requireFresh(String name) {
    gear.element(name).ifPresent(e -> refuseTaken(e.name(), "an element", Optional.empty()));
    gear.respirator(name).ifPresent(r -> refuseTaken(r.name(), "a respirator", r.retired()));
    gear.filter(name).ifPresent(f -> refuseTaken(f.name(), "a shop filter", f.retired()));
  }

  private static void refuseTaken(String name, String kind, Optional<Retirement> retired) {
    throw new Refusal(
        retired
                .map(
                    end ->
                        "\"%s\" was %s until %s, and its past goes by that name."
                            .formatted(name, kind, end.on()))
                .orElse("\"%s\" is %s already.".formatted(name, kind))
            + " Choose another name.");
  }

  /**
   * The respirator of that name, in use.
   *
   * @throws Refusal if there is none, or it was retired
   */
  Respirator respirator(String name) {
    Respirator found =
        gear.respirator(name)
            .orElseThrow(() -> unknown("respirator", name, inUse(gear.respirators())));
    found.retired().ifPresent(end -> refuseRetired(found.name(), end));
    return found;
  }

  /**
   * The respirator of that name, in use on a day, though it may have been retired since.
   *
   * @throws Refusal if there is none, or it was retired before
   */
  Respirator respirator(String name, LocalDate day) {
    return gear.respirator(name).filter(r -> r.inUseOn(day)).orElseGet(() -> respirator(name));
  }

  /** The number of a respirator, retired or not, that elements of the book are on. */
  long numberOf(String respirator) {
    return gear.respirator(respirator).orElseThrow().id();
  }

  /** The element of that number. */
  Element withNumber(long id) {
    return gear.elements().stream().filter(e -> e.id() == id).findFirst().orElseThrow();
  }

  private static List<String> inUse(List<Respirator> respirators) {
    return respirators.stream().filter(r -> r.retired().isEmpty()).map(Respirator::name).toList();
  }

  /** The element of that name that is in use; refuses likewise. */
  Element element(String name) {
    return gear.element(name)
        .orElseThrow(
            () ->
                lastRetired(name)
                    .map(gone -> retired(gone.name(), gone.retired().orElseThrow()))
                    .orElseGet(() -> noElement(name)));
  }

  /** What has the name may be something else, which is looked after in another way. */
  private Refusal noElement(String name) {
    Optional<Refusal> filter = gear.filter(name).map(f -> isFilter(f.name()));
    return filter
        .or(() -> gear.respirator(name).map(r -> isRespirator(r.name())))
        .orElseGet(() -> unknown("element", name, elementNames()));
  }

  private static Refusal isFilter(String name) {
    return new Refusal(
        "\"%s\" is a shop filter.".formatted(name),
        new Action.RecordUpkeep(name, Upkeep.What.REPLACED));
  }

  private Refusal isRespirator(String name) {
    List<String> on =
        gear.elementsOf(name).stream()
            .filter(e -> e.retired().isEmpty())
            .map(Element::name)
            .toList();
    return new Refusal(
        "\"%s\" is a respirator; its elements are changed by their own names: %s."
            .formatted(name, on.isEmpty() ? "it has none" : String.join(", ", on)));
  }

  private Optional<Element> lastRetired(String name) {
    return gear.elements().stream()
        .filter(e -> Text.folded(e.name()).equals(Text.folded(name)))
        .filter(e -> e.retired().isPresent())
        .max(Comparator.comparing(e -> e.retired().orElseThrow().on()));
  }

  private List<String> elementNames() {
    return gear.elements().stream().filter(e -> e.retired().isEmpty()).map(Element::name).toList();
  }

  /** The shop filter of that name, in use; refuses likewise. */
  ShopFilter filter(String name) {
    List<String> known =
        gear.filters().stream().filter(f -> f.retired().isEmpty()).map(ShopFilter::name).toList();
    ShopFilter found = gear.filter(name).orElseThrow(() -> unknown("shop filter", name, known));
    found.retired().ifPresent(end -> refuseRetired(found.name(), end));
    return found;
  }

  /** Refuses a name that nothing in use has. */
  void requireKnown(String name) {
    boolean held =
        gear.element(name).isPresent()
            || gear.respirator(name).isPresent()
            || gear.filter(name).isPresent()
            || lastRetired(name).isPresent();
    if (!held) {
      List<String> filters = gear.filters().stream().map(ShopFilter::name).toList();
      throw unknown(
          "mask or filter",
          name,
          Stream.of(inUse(gear.respirators()), elementNames(), filters)
              .flatMap(List::stream)
              .toList());
    }
  }

  private static void refuseRetired(String name, Retirement end) {
    throw retired(name, end);
  }

  private static Refusal retired(String name, Retirement end) {
    return new Refusal(
        "\"%s\" was retired on %s already (%s).".formatted(name, end.on(), end.why()));
  }

  private static Refusal unknown(String kind, String name, List<String> known) {
    String none = "The book holds no %s \"%s\". ".formatted(kind, Text.clean(name));
    return known.isEmpty()
        ? new Refusal(none + "It holds none yet.", new Action.SeeGearHelp())
        : new Refusal(none + "It holds: " + String.join(", ", known) + ".");
  }
}
