package motebook.entry;

/** Which comes first where a sheet writes a date with slashes. */
public enum SheetDateOrder {
  /** As in 2/3/2026 for the second of March. */
  DAY_FIRST,
  /** As in 3/2/2026 for the second of March. */
  MONTH_FIRST
}
