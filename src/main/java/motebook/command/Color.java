package motebook.command;

/** When colours and emphasis are used. */
public enum Color {
  AUTO,
  ALWAYS,
  NEVER
}
