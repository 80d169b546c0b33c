package motebook.command;

/** A file that was asked for cannot be written: the command failed, its words were right. */
final class Unwritable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Unwritable(String message) {
    super(message);
  }
}
