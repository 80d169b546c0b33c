package motebook.journal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import motebook.model.Refusal;
import motebook.model.Text;

/**
 * Checks the rows that come in and writes them. Once one was wrong nothing more is written, but the
 * rest is still checked.
 */
final class Incoming implements Exchange.Receiver, AutoCloseable {
  private static final int MOST_TOLD = 20;

  private final Store store;
  private final Batches batches;
  private final Map<String, Set<String>> names = new HashMap<>();
  private final List<String> complaints = new ArrayList<>();
  private long wrong;
  private long rows;

  Incoming(Store store) {
    this.store = store;
    batches = new Batches(store);
  }

  @Override
  public void row(Kind kind, String where, List<Object> values) {
    rows++;
    try {
      refuseUnknown(kind, values);
      RowChecks.check(new Entry(kind, values));
      if (wrong == 0) {
        write(kind, values);
      }
    } catch (Refusal e) {
      wrong(where, e.getMessage());
    }
  }

  @Override
  public void wrong(String where, String what) {
    wrong++;
    if (complaints.size() < MOST_TOLD) {
      complaints.add(where + ": " + what);
    }
  }

  /** Keeps the name of the row, and sees to it that the names in it are those of earlier rows. */
  private void refuseUnknown(Kind kind, List<Object> values) {
    for (int i = 0; i < values.size(); i++) {
      Column column = kind.columns().get(i);
      if (column.form() == Form.NAME) {
        names.computeIfAbsent(kind.name(), any -> new HashSet<>()).add((String) values.get(i));
      }
      Object value = values.get(i);
      column.refersTo().ifPresent(other -> named(value).forEach(n -> known(other, n)));
    }
  }

  private static List<Object> named(Object value) {
    if (value instanceof List<?> items) {
      return items.stream().map(item -> (Object) ((List<?>) item).get(0)).toList();
    }
    return value == null ? List.of() : List.of(value);
  }

  private void known(String file, Object name) {
    if (!names.getOrDefault(file, Set.of()).contains(name)) {
      throw new Refusal("\"%s\" does not stand among the %s.".formatted(name, file));
    }
  }

  private void write(Kind kind, List<Object> values) {
    List<Object> plain = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      if (!kind.columns().get(i).list()) {
        plain.add(stored(values.get(i)));
      }
    }
    if (kind.named()) {
      plain.add(Text.folded((String) values.get(kind.index("name"))));
    }
    batches.of("import-" + kind.name()).offer(plain.toArray());
    for (int i = 0; i < values.size(); i++) {
      if (values.get(i) instanceof List<?> items) {
        writeList(kind, kind.columns().get(i), values.get(0), items);
      }
    }
  }

  private void writeList(Kind kind, Column column, Object owner, List<?> items) {
    int position = 0;
    for (Object item : items) {
      List<Object> all = new ArrayList<>(List.of(owner, position++));
      ((List<?>) item).forEach(value -> all.add(stored(value)));
      batches.of("import-" + kind.name() + "-" + column.name()).offer(all.toArray());
    }
  }

  private static Object stored(Object value) {
    return value instanceof Boolean yes ? (yes ? 1 : 0) : value;
  }

  /**
   * Ends what came in.
   *
   * @throws Refusal if anything of it was wrong
   */
  void finish() {
    if (wrong == 0) {
      Checkup.contradictions(store).forEach(problem -> wrong("The book as a whole", problem));
    }
    if (wrong > 0) {
      String more = wrong > MOST_TOLD ? "\nand " + (wrong - MOST_TOLD) + " more" : "";
      throw new Refusal(
          String.join("\n", complaints) + more + "\nNothing was written; mend this and try again.");
    }
  }

  long rows() {
    return rows;
  }

  @Override
  public void close() {
    batches.close();
  }
}
