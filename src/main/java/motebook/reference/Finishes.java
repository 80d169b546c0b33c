package motebook.reference;

import java.io.Reader;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import motebook.model.OwnFinish;
import motebook.model.Text;

/** The finishes: the shipped ones, and those that the owner entered from a maker's data sheet. */
public final class Finishes {
  private final Map<String, Finish> byKey;

  private Finishes(Map<String, Finish> byKey) {
    this.byKey = byKey;
  }

  private static Finishes of(Function<String, Reader> table, Solvents solvents) {
    FinishTable rows = new FinishTable(solvents, Reference.shipped());
    Map<String, Finish> byKey = new LinkedHashMap<>();
    rows.read(table.apply(FinishTable.NAME)).forEach(row -> byKey.put(row.key(), row));
    return new Finishes(byKey);
  }

  /** The table that the program ships. */
  public static Finishes shipped() {
    return Shipped.TABLE;
  }

  /**
   * The shipped table after an edit of its text; what the tests of the table work with.
   *
   * @throws WrongTable at the first thing that is not as it must be
   */
  static Finishes edited(Function<String, UnaryOperator<String>> edit) {
    return of(Reference.editor(edit), Solvents.shipped());
  }

  /**
   * These and the owner's own. A data sheet under a name that a row answers to takes the place of
   * that row; what a sheet does not tell, how fast it dries, is as the finish it is like.
   *
   * @throws IllegalArgumentException if one is like a finish that is not there
   */
  public Finishes with(List<OwnFinish> own) {
    Map<String, Finish> all = new LinkedHashMap<>(byKey);
    own.forEach(sheet -> all.put(key(sheet.name()), fromSheet(sheet)));
    return new Finishes(all);
  }

  private Finish fromSheet(OwnFinish sheet) {
    Finish like = finish(sheet.like());
    return new Finish(
        key(sheet.name()),
        sheet.name(),
        named(sheet.name()).map(Finish::names).orElse(List.of()),
        like.densityGPerMl(),
        Figure.exactly(sheet.volatileGPerL()),
        like.withinSession(),
        like.laterPerHour(),
        sheet.solvents(),
        like.oil(),
        like.cautions(),
        like.grade(),
        "the maker's data sheet, entered by the owner; dries like " + like.name(),
        true,
        sheet.retiredOn());
  }

  /** The key that a name stands for in a session: that of the row it answers to, or its own. */
  public String key(String name) {
    return named(name).map(Finish::key).orElseGet(() -> Text.folded(name).replace(' ', '-'));
  }

  /** The finish that answers to the whole name, however it is written. */
  public Optional<Finish> named(String name) {
    String folded = Text.folded(name);
    return byKey.values().stream()
        .filter(row -> row.names().stream().map(Text::folded).anyMatch(folded::equals))
        .findFirst();
  }

  public List<Finish> all() {
    return List.copyOf(byKey.values());
  }

  /** Those that may have been used on a day. */
  public List<Finish> inUseOn(LocalDate day) {
    return byKey.values().stream().filter(finish -> finish.inUseOn(day)).toList();
  }

  public boolean holds(String key) {
    return byKey.containsKey(key);
  }

  /**
   * The finish with the key.
   *
   * @throws IllegalArgumentException if no finish has the key
   */
  public Finish finish(String key) {
    Finish finish = byKey.get(key);
    if (finish == null) {
      throw new IllegalArgumentException("no finish has the key " + key);
    }
    return finish;
  }

  private static final class Shipped {
    static final Finishes TABLE = of(Reference::open, Solvents.shipped());
  }
}
