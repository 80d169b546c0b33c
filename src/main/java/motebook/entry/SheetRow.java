package motebook.entry;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import motebook.model.Refusal;

/** One row while it is read: its cells by column, and what is wrong with it. */
final class SheetRow {
  private final SheetHeader header;
  private final List<String> cells;
  private final long line;
  private final List<SheetFault> faults;

  SheetRow(SheetHeader header, List<String> cells, long line, List<SheetFault> faults) {
    this.header = header;
    this.cells = cells;
    this.line = line;
    this.faults = faults;
  }

  /** The text of a cell, stripped; empty where the row or the sheet has none. */
  String cell(SheetColumn column) {
    Integer place = header.places().get(column);
    return place == null || place >= cells.size() ? "" : cells.get(place).strip();
  }

  /** Whether a cell was filled with something else than a sign that there is nothing. */
  boolean filled(SheetColumn column) {
    String cell = cell(column);
    return !cell.isEmpty() && !cell.equals("-") && !cell.equals("–");
  }

  /** What a filled cell says; a cell that cannot be read becomes a fault. */
  <T> Optional<T> read(SheetColumn column, Function<String, T> reader) {
    try {
      return filled(column) ? Optional.of(reader.apply(cell(column))) : Optional.empty();
    } catch (Refusal refusal) {
      fault(column, refusal.getMessage());
      return Optional.empty();
    }
  }

  void fault(SheetColumn column, String message) {
    faults.add(new SheetFault(line, header.name(column), message));
  }

  /** How many faults were found so far, to be held against a later count. */
  int faultCount() {
    return faults.size();
  }

  long line() {
    return line;
  }
}
