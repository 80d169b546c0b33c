package motebook.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that the book knows of masks and filters, as it stood when it was read.
 *
 * @param respirators in the order in which they were added, retired ones among them
 * @param elements likewise
 * @param filters likewise
 * @param upkeep by date, then time, then number; what has no time comes last on its day
 * @param fit by date, then number
 */
public record Gear(
    List<Respirator> respirators,
    List<Element> elements,
    List<ShopFilter> filters,
    List<Upkeep> upkeep,
    List<FitRecord> fit) {
  /** No gear at all. */
  public static final Gear NONE = new Gear(List.of(), List.of(), List.of(), List.of(), List.of());

  public Gear {
    respirators = List.copyOf(respirators);
    elements = List.copyOf(elements);
    filters = List.copyOf(filters);
    upkeep = List.copyOf(upkeep);
    fit = List.copyOf(fit);
  }

  private static boolean same(String a, String b) {
    return a.equals(b) || Text.folded(a).equals(Text.folded(b));
  }

  /** The respirator of that name, retired or not. */
  public Optional<Respirator> respirator(String name) {
    return respirators.stream().filter(r -> same(r.name(), name)).findFirst();
  }

  /** Names of the respirators in use on a day. */
  public List<String> respiratorsOn(LocalDate day) {
    return respirators.stream().filter(r -> r.inUseOn(day)).map(Respirator::name).toList();
  }

  /** The element of that name that was not retired. */
  public Optional<Element> element(String name) {
    return elements.stream().filter(e -> e.retired().isEmpty() && same(e.name(), name)).findFirst();
  }

  /** The element of that name that was on its mask at a minute of a day, retired since or not. */
  public Optional<Element> elementAt(String name, LocalDate day, int minute) {
    return elements.stream()
        .filter(e -> same(e.name(), name) && e.wornAt(day, minute))
        .reduce((earlier, later) -> earlier.retired().isEmpty() ? earlier : later);
  }

  /** What is on record about one respirator and one person alone; what is asked often is little. */
  public Gear about(String respirator, String person) {
    return new Gear(
        respirator(respirator).stream().toList(),
        elementsOf(respirator),
        List.of(),
        List.of(),
        fit.stream().filter(f -> same(f.person(), person)).toList());
  }

  /** Every element a respirator ever had, oldest first as added. */
  public List<Element> elementsOf(String respirator) {
    return elements.stream().filter(e -> same(e.respirator(), respirator)).toList();
  }

  /** The elements on a respirator as a day ends. */
  public List<Element> elementsOn(String respirator, LocalDate day) {
    return elementsOn(respirator, day, 24 * 60);
  }

  /** The elements on a respirator at a minute of a day. */
  public List<Element> elementsOn(String respirator, LocalDate day, int minute) {
    return elements.stream()
        .filter(e -> e.wornAt(day, minute) && same(e.respirator(), respirator))
        .toList();
  }

  /** The shop filter of that name, retired or not. */
  public Optional<ShopFilter> filter(String name) {
    return filters.stream().filter(f -> same(f.name(), name)).findFirst();
  }

  /** Whether a respirator, an element in use or a shop filter has the name. */
  public boolean holds(String name) {
    return respirator(name).isPresent() || element(name).isPresent() || filter(name).isPresent();
  }

  /** What was done to a shop filter, oldest first. */
  public List<Upkeep> upkeepOf(String filter) {
    return upkeep.stream().filter(u -> same(u.filter(), filter)).toList();
  }

  /** All of one kind that is on record about a person, oldest first. */
  public <T extends FitRecord> List<T> fit(Class<T> kind, String person) {
    return fit.stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .filter(f -> same(f.person(), person))
        .toList();
  }

  /** The fit tests of a person with a respirator, oldest first. */
  public List<FitRecord.FitTest> fitTests(String person, String respirator) {
    return fit(FitRecord.FitTest.class, person).stream()
        .filter(test -> same(test.respirator(), respirator))
        .toList();
  }

  /** The fit tests of everybody with a respirator, oldest first. */
  public List<FitRecord.FitTest> fitTestsOf(String respirator) {
    return fit.stream()
        .filter(FitRecord.FitTest.class::isInstance)
        .map(FitRecord.FitTest.class::cast)
        .filter(test -> same(test.respirator(), respirator))
        .toList();
  }

  /** Whether hair under the seal is on record for a person on a day. */
  public boolean hairOn(String person, LocalDate day) {
    return fit(FitRecord.Hair.class, person).stream().anyMatch(hair -> hair.on(day));
  }
}
