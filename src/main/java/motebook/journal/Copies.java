package motebook.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import motebook.model.Refusal;

/** Verified copies of one book, beside it and elsewhere. */
final class Copies {
  /** Begins the name of a copy that is not whole yet. */
  static final String COPYING = "copying";

  private static final String ENDING = ".db";

  private final Store store;
  private LocalDate copied = LocalDate.MIN;

  Copies(Store store) {
    this.store = store;
  }

  /** The folder beside the book that holds its copies. */
  static Path folder(Path book) {
    return book.resolveSibling(book.getFileName() + ".copies");
  }

  /**
   * Makes the day's copy if the book holds something and the day has none yet, and throws away the
   * copies that are no longer worth their room.
   *
   * @throws BookTrouble if the copy cannot be made
   */
  void daily(LocalDate today) {
    if (!today.equals(copied) && store.number("any-change") == 1) {
      Path target = folder(store.file()).resolve(today + ENDING);
      if (!Files.exists(target)) {
        copyTo(target);
        prune();
      }
      copied = today;
    }
  }

  /** The copy from before the book takes on another form; it is never thrown away by itself. */
  void beforeVersion(int version, LocalDate today) {
    copyTo(folder(store.file()).resolve(today + "-before-version-" + version + ENDING));
  }

  /**
   * The copy from before another one takes the book's place; it is never thrown away by itself.
   *
   * @return the file of the copy
   */
  Path beforeRestore(LocalDate today) {
    Path folder = folder(store.file());
    Path file = folder.resolve(today + "-before-restore" + ENDING);
    for (int next = 2; Files.exists(file); next++) {
      file = folder.resolve(today + "-before-restore-" + next + ENDING);
    }
    copyTo(file);
    return file;
  }

  /**
   * A copy where the person wants it.
   *
   * @param target a file that is not there yet or is an earlier copy, or a folder, in which the
   *     copy is named by the day; none for the folder beside the book
   * @param copied told again and again how many bytes are written
   * @return the file of the copy
   * @throws Refusal if there is such a file and it is no earlier copy of a book
   */
  Path backup(Optional<Path> target, LocalDate today, LongConsumer copied) {
    Path named =
        target
            .map(path -> Files.isDirectory(path) ? path.resolve(nameOn(today)) : path)
            .orElse(folder(store.file()).resolve(today + "-asked-for" + ENDING));
    Path file = named.toAbsolutePath().normalize();
    if (Files.exists(file) && !BookFile.isCopy(file)) {
      throw new Refusal(
          "There is a file "
              + file
              + " already that is no earlier copy of a book. Choose another name for the copy.");
    }
    copyTo(file, copied);
    return file;
  }

  private String nameOn(LocalDate today) {
    String name = String.valueOf(store.file().getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0
        ? name.substring(0, dot) + "-" + today + name.substring(dot)
        : name + "-" + today;
  }

  private void copyTo(Path target) {
    copyTo(target, bytes -> {});
  }

  private void copyTo(Path target, LongConsumer copied) {
    try {
      Path part = Leavings.begin(Folders.make(target.getParent()), COPYING);
      part.toFile().deleteOnExit(); // where the program is stopped half way
      try {
        int version = Migrations.state(store).version();
        store.watched(() -> copied.accept(part.toFile().length()), () -> copyInto(part, target));
        verify(part, version);
        flush(part);
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        flushFolder(target.getParent());
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      throw Troubles.of("The copy " + target + " of the book cannot be made", e);
    }
  }

  /** The disk that is full here is that of the copy. */
  private void copyInto(Path part, Path target) {
    try {
      store.run("copy-into", part);
    } catch (BookTrouble e) {
      throw Troubles.isFull(e)
          ? new BookTrouble(
              "The disk that holds "
                  + target.getParent()
                  + " is full; no copy was made there. Make room on it, or name another place.",
              e.getCause())
          : e;
    }
  }

  // Another program may bring the book up to date meanwhile: the copy then has a form in between.
  private void verify(Path copy, int versionBefore) {
    try (Store other = Connections.open(copy, Connections.PATIENCE)) {
      boolean sound = Checkup.wholeFile(other);
      Migrations.State theirs = Migrations.state(other);
      Migrations.State ours = Migrations.state(store);
      if (!sound
          || theirs.application() != ours.application()
          || theirs.version() < versionBefore
          || theirs.version() > ours.version()) {
        throw new BookTrouble(
            Troubles.damaged(store.file()) + " A copy made just now is not sound.");
      }
    }
  }

  /** A copy counts only once it is on the disk. */
  static void flush(Path copy) throws IOException {
    try (FileChannel channel = FileChannel.open(copy, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  private static void flushFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // a folder is not everywhere a thing that can be forced
    }
  }

  private void prune() {
    try {
      Map<LocalDate, Path> copies = dailyCopies();
      Set<LocalDate> kept = Keeping.kept(copies.keySet());
      for (Map.Entry<LocalDate, Path> copy : copies.entrySet()) {
        if (!kept.contains(copy.getKey())) {
          Files.delete(copy.getValue());
        }
      }
    } catch (IOException e) {
      throw Troubles.of("An old copy of the book cannot be thrown away", e);
    }
  }

  private Map<LocalDate, Path> dailyCopies() throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder(store.file()))) {
      all.forEach(files::add);
    }
    Map<LocalDate, Path> daily = new TreeMap<>();
    files.forEach(file -> dayOf(file).ifPresent(day -> daily.put(day, file)));
    return daily;
  }

  private static Optional<LocalDate> dayOf(Path file) {
    String name = String.valueOf(file.getFileName());
    try {
      return name.endsWith(ENDING)
          ? Optional.of(LocalDate.parse(name.substring(0, name.length() - ENDING.length())))
          : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
