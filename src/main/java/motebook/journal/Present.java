package motebook.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;

/** The book that is there while a copy takes its place. */
final class Present {
  // Every open connection holds this byte of the file that SQLite shares among programs:
  // https://www.sqlite.org/walformat.html and UNIX_SHM_DMS in its source, os_unix.c.
  private static final long HELD_WHILE_OPEN = 128;
  private static final String SHARED = "-shm";

  private final Path book;
  private final LocalDate today;

  Present(Path book, LocalDate today) {
    this.book = book;
    this.today = today;
  }

  /**
   * Whether there is a book that can be read as one.
   *
   * @throws BookTrouble if it is of a newer program, or the file is somebody else's
   */
  boolean isReadable() {
    if (!isThere()) {
      return false;
    }
    if (!BookFile.beginsAsDatabase(book)) {
      if (Files.isDirectory(Copies.folder(book))) {
        return false;
      }
      throw new BookTrouble(Troubles.foreign(book)); // nothing shows that this ever was a book
    }
    try (Store store = Connections.open(book, Connections.PATIENCE)) {
      Migrations.State state = Migrations.state(store);
      Migrations.shipped().refuseNewer(store, state);
      if (!state.ours()) {
        throw new BookTrouble(Troubles.foreign(book));
      }
      return store.list("integrity", Row::text).equals(List.of("ok"));
    } catch (BookTrouble e) {
      if (Troubles.isDamage(e)) {
        return false;
      }
      throw e;
    }
  }

  boolean isThere() {
    return Files.exists(book) && book.toFile().length() > 0;
  }

  /** Keeps the book as a copy, then puts the other's content into it in one transaction. */
  Path replaceBy(Path staged, DoubleConsumer share) {
    try (Store live = Connections.open(book, Connections.PATIENCE);
        Store beside = Connections.open(book, Connections.PATIENCE)) {
      Copies copies = new Copies(beside);
      Path[] kept = {copies.beforeRestore(today)};
      long before = beside.number("newest-change");
      boolean[] locked = {false};
      live.replaceBy(
          staged,
          (left, all) -> {
            // From now on nobody else can write; what was written since the copy is kept too.
            if (!locked[0] && left > 0 && beside.number("newest-change") != before) {
              kept[0] = copies.beforeRestore(today);
            }
            locked[0] = true;
            share.accept(1 - (double) left / Math.max(1, all));
          });
      return kept[0];
    }
  }

  /** Keeps what cannot be read as it is found, then puts the other file in its place. */
  Optional<Path> exchangeFor(Path staged) {
    try {
      refuseOpen();
      Optional<Path> kept = isThere() ? Optional.of(keptAsFound()) : Optional.empty();
      for (String tail : List.of("-wal", SHARED, "-journal")) {
        Files.deleteIfExists(beside(tail));
      }
      Files.move(staged, book, StandardCopyOption.ATOMIC_MOVE);
      return kept;
    } catch (IOException e) {
      throw Troubles.of("The copy cannot be put in the place of the book " + book, e);
    }
  }

  private Path beside(String tail) {
    return book.resolveSibling(book.getFileName() + tail);
  }

  private Path keptAsFound() throws IOException {
    Path folder = Folders.make(Copies.folder(book));
    Path kept = folder.resolve(today + "-damaged.db");
    for (int next = 2; Files.exists(kept); next++) {
      kept = folder.resolve(today + "-damaged-" + next + ".db");
    }
    Files.copy(book, kept, StandardCopyOption.COPY_ATTRIBUTES);
    Copies.flush(kept);
    if (Files.exists(beside("-wal"))) {
      Path log = kept.resolveSibling(kept.getFileName() + "-wal");
      Files.copy(beside("-wal"), log, StandardCopyOption.COPY_ATTRIBUTES);
    }
    return kept;
  }

  /** A file must not be exchanged under a program that has it open. */
  private void refuseOpen() throws IOException {
    Path shared = beside(SHARED);
    if (!Files.exists(shared)) {
      return;
    }
    try (FileChannel channel =
            FileChannel.open(shared, StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock(HELD_WHILE_OPEN, 1, false)) {
      if (lock == null) {
        throw new BookTrouble(Troubles.inUse(book));
      }
    } catch (OverlappingFileLockException e) {
      throw new BookTrouble(Troubles.inUse(book), e);
    }
  }
}
