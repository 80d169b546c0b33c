package motebook.entry;

import motebook.model.Refusal;

/**
 * What is wrong with one row of a sheet.
 *
 * @param line of the file on which the row begins, from 1
 * @param column as the sheet heads it
 * @param message what is wrong and what would be right
 */
public record SheetFault(long line, String column, String message) {

  /** As it is told. */
  public String said() {
    return "line " + line + ", " + column + ": " + message;
  }

  static SheetFault of(long line, String column, Refusal refusal) {
    return new SheetFault(line, column, refusal.getMessage());
  }
}
