package motebook.command;

/** What the program tells the shell when it ends. */
final class ExitCode {
  static final int DONE = 0;
  static final int FAILED = 1;
  static final int NOT_UNDERSTOOD = 2;
  static final int SOMETHING_DUE = 3;
  static final int BOOK = 4;

  private ExitCode() {}
}
