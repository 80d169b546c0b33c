package motebook.command;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import motebook.model.Refusal;

/** The book that a command opens where it names none. */
public final class UsualBook {
  private UsualBook() {}

  /**
   * What {@code MOTEBOOK_BOOK} names, else {@code motebook/book.db} in the XDG data folder.
   *
   * @throws Refusal if neither that folder nor a home is told
   */
  public static Path of(Map<String, String> environment) {
    return find(environment)
        .orElseThrow(
            () ->
                new Refusal(
                    "There is no home folder to keep the book in, for HOME is not set. Name the"
                        + " book with --book FILE or in MOTEBOOK_BOOK."));
  }

  /** The same; empty where nothing tells where it would be. */
  public static Optional<Path> find(Map<String, String> environment) {
    if (given(environment.get("MOTEBOOK_BOOK"))) {
      return Optional.of(Path.of(environment.get("MOTEBOOK_BOOK")));
    }
    Optional<Path> data =
        given(environment.get("XDG_DATA_HOME"))
            ? Optional.of(Path.of(environment.get("XDG_DATA_HOME")))
            : Optional.ofNullable(environment.get("HOME"))
                .filter(UsualBook::given)
                .map(home -> Path.of(home, ".local", "share"));
    return data.map(folder -> folder.resolve("motebook").resolve("book.db"));
  }

  private static boolean given(String value) {
    return value != null && !value.isBlank();
  }
}
