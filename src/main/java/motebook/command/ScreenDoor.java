package motebook.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/** The way from the command line to the screen; {@code main} connects the two. */
@FunctionalInterface
public interface ScreenDoor {
  /**
   * Opens the screen and returns when the person leaves it.
   *
   * @param book the book's file
   * @param openAt the day to show first; today where empty
   * @param color when colours are used
   * @param plain whether changes are told in lines instead of drawn
   * @return exit code
   */
  int open(Path book, Optional<LocalDate> openAt, Color color, boolean plain);
}
