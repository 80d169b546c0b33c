package motebook.reference;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A dust control: one row for each group of operations that it serves.
 *
 * @param key stable key
 * @param name listed name
 * @param also other names
 * @param actsOn the source or the room
 * @param advice what to say where it does not serve; may be empty
 * @param rows its rows; one row that serves everything for a control of the room
 */
public record Control(
    String key, String name, List<String> also, ActsOn actsOn, String advice, List<Row> rows)
    implements Named {

  /** The clean-air flow of the place's air cleaner joins the room's loss. */
  public static final String AIR_CLEANER = "air-cleaner";

  /** The open air-change figure of the place counts. */
  public static final String DOORS_OPEN = "doors-open";

  /** The flow of the place's window fan joins the room's loss. */
  public static final String WINDOW_FAN = "window-fan";

  /** What a control acts on. */
  public enum ActsOn {
    /** Catches dust where it arises. */
    SOURCE,
    /** Cleans or changes the room's air. */
    ROOM
  }

  /**
   * The control at one group of operations.
   *
   * @param id stable name of the row, for the doubts that its users share
   * @param serves keys of the operations; empty: every one
   * @param passFactor share of the dust that it lets through, with its range
   * @param grade how sure
   * @param basis source
   */
  public record Row(String id, Set<String> serves, Figure passFactor, Grade grade, String basis) {}

  /** The row that serves an operation, if any does. */
  public Optional<Row> rowFor(String operation) {
    return rows.stream()
        .filter(row -> row.serves().isEmpty() || row.serves().contains(operation))
        .findFirst();
  }
}
