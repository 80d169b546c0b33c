package motebook.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import motebook.model.Refusal;

/** The folder of copies beside a book; it can be looked into whatever became of the book. */
public final class CopyShelf {
  private static final Pattern NAME =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:-(\\D+?)(?:-\\d+)*)?\\.db");

  private final Path folder;

  /** The copies of a book. */
  public CopyShelf(Path book) {
    folder = Copies.folder(book.toAbsolutePath().normalize());
  }

  /** The folder, which need not be there. */
  public Path folder() {
    return folder;
  }

  /** All copies, newest first; of one day the daily one last. */
  public List<Copy> all() {
    List<Path> files = files();
    Set<LocalDate> daily =
        files.stream()
            .map(CopyShelf::name)
            .filter(name -> name.matches() && name.group(2) == null)
            .flatMap(name -> day(name).stream())
            .collect(Collectors.toSet());
    List<Copy> copies = new ArrayList<>();
    for (Path file : files) {
      Matcher name = name(file);
      if (name.matches()) {
        day(name).ifPresent(day -> copies.add(copy(file, day, kind(name.group(2), day, daily))));
      }
    }
    copies.sort(
        Comparator.comparing(Copy::day)
            .thenComparing(copy -> String.valueOf(copy.file().getFileName()))
            .reversed());
    return copies;
  }

  /**
   * The daily copy of a day.
   *
   * @throws Refusal if there is none, naming those there are
   */
  public Path of(LocalDate day) {
    Path file = folder.resolve(day + ".db");
    if (!Files.exists(file)) {
      String days =
          all().stream()
              .filter(copy -> copy.file().equals(folder.resolve(copy.day() + ".db")))
              .map(copy -> copy.day().toString())
              .collect(Collectors.joining(", "));
      throw new Refusal(
          "There is no copy of %s in %s. %s"
              .formatted(
                  day,
                  folder,
                  days.isEmpty() ? "There is none of any day." : "There are: " + days + "."));
    }
    return file;
  }

  private List<Path> files() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    } catch (IOException e) {
      throw Troubles.of("The folder of copies " + folder + " cannot be read", e);
    }
  }

  private static Matcher name(Path file) {
    return NAME.matcher(String.valueOf(file.getFileName()));
  }

  private static Optional<LocalDate> day(Matcher name) {
    try {
      return Optional.of(LocalDate.parse(name.group(1)));
    } catch (DateTimeParseException noDay) {
      return Optional.empty();
    }
  }

  private static Copy.Kind kind(String word, LocalDate day, Set<LocalDate> daily) {
    if (word != null) {
      return switch (word) {
        case "before-version" -> Copy.Kind.BEFORE_MIGRATION;
        case "before-restore" -> Copy.Kind.BEFORE_RESTORE;
        case "damaged" -> Copy.Kind.DAMAGED;
        default -> Copy.Kind.ASKED_FOR;
      };
    }
    if (Keeping.days(daily).contains(day)) {
      return Copy.Kind.DAILY;
    }
    return Keeping.weeks(daily).contains(day) ? Copy.Kind.WEEKLY : Copy.Kind.MONTHLY;
  }

  private static Copy copy(Path file, LocalDate day, Copy.Kind kind) {
    return new Copy(file, day, kind, file.toFile().length(), sessions(file));
  }

  private static OptionalLong sessions(Path file) {
    if (!BookFile.beginsAsDatabase(file)) {
      return OptionalLong.empty();
    }
    try (Store store = Connections.open(file, Connections.PATIENCE)) {
      return Migrations.state(store).ours()
          ? OptionalLong.of(store.number("session-count"))
          : OptionalLong.empty();
    } catch (BookTrouble | IllegalStateException unreadable) {
      return OptionalLong.empty();
    }
  }
}
