package motebook.reference;

import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import motebook.model.Text;

/** The shipped solvents, those that stand only in the breakthrough table among them. */
public final class Solvents {
  private final List<Solvent> solvents;
  private final Map<String, Solvent> byName = new LinkedHashMap<>();

  private Solvents(Function<String, Reader> table) {
    List<Solvent> printed = SolventTables.breakthrough(table.apply(SolventTables.BREAKTHROUGH));
    List<Solvent> all =
        new ArrayList<>(SolventTables.solvents(table.apply(SolventTables.SOLVENTS), printed));
    printed.stream()
        .filter(alone -> all.stream().noneMatch(solvent -> stand(solvent, alone)))
        .toList()
        .forEach(all::add);
    solvents = List.copyOf(all);
    solvents.forEach(this::index);
  }

  private static boolean stand(Solvent solvent, Solvent alone) {
    return solvent.cas().equals(alone.cas()) || solvent.also().contains(alone.name());
  }

  private void index(Solvent solvent) {
    Stream.concat(solvent.names().stream(), Stream.of(solvent.cas()))
        .filter(name -> !name.isEmpty())
        .map(Text::folded)
        .distinct()
        .forEach(
            name -> {
              if (byName.put(name, solvent) != null) {
                throw new IllegalStateException("two solvents answer to " + name);
              }
            });
  }

  /** The tables that the program ships. */
  public static Solvents shipped() {
    return Shipped.TABLES;
  }

  /**
   * The shipped tables after an edit of their text; what the tests of the tables work with.
   *
   * @throws WrongTable at the first thing that is not as it must be
   */
  static Solvents edited(Function<String, UnaryOperator<String>> edit) {
    return new Solvents(Reference.editor(edit));
  }

  public List<Solvent> all() {
    return solvents;
  }

  /** The solvent that answers to a name, a key or a registry number, however it is written. */
  public Optional<Solvent> find(String name) {
    return Optional.ofNullable(byName.get(Text.folded(name)));
  }

  /** The solvent with the key. */
  public Optional<Solvent> withKey(String key) {
    return solvents.stream().filter(solvent -> solvent.key().equals(key)).findFirst();
  }

  private static final class Shipped {
    static final Solvents TABLES = new Solvents(Reference::open);
  }
}
