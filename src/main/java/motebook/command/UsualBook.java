package motebook.command;

import java.nio.file.Path;
import java.util.Map;

/** The book that a command opens where it names none. */
public final class UsualBook {
  private UsualBook() {}

  /** What {@code MOTEBOOK_BOOK} names, else {@code motebook/book.db} in the XDG data folder. */
  public static Path of(Map<String, String> environment) {
    if (given(environment.get("MOTEBOOK_BOOK"))) {
      return Path.of(environment.get("MOTEBOOK_BOOK"));
    }
    String data = environment.get("XDG_DATA_HOME");
    Path folder =
        given(data)
            ? Path.of(data)
            : Path.of(environment.getOrDefault("HOME", "."), ".local", "share");
    return folder.resolve("motebook").resolve("book.db");
  }

  private static boolean given(String value) {
    return value != null && !value.isBlank();
  }
}
