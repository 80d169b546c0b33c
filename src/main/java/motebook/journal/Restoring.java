package motebook.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.LongConsumer;
import motebook.model.Action;
import motebook.model.Refusal;

/**
 * A copy that is to take the place of a book: checked wholly first, brought up to date beside the
 * book, then put in its place in one step. What was there is kept as a copy.
 */
public final class Restoring implements AutoCloseable {
  /** Begins the name of a copy that is being made ready. */
  static final String RESTORING = "restoring";

  private final Path book;
  private final Path staged;
  private final LocalDate today;
  private final Content content;

  private Restoring(Path book, Path staged, LocalDate today, Content content) {
    this.book = book;
    this.staged = staged;
    this.today = today;
    this.content = content;
  }

  private record Content(long sessions, List<String> problems) {}

  /**
   * Checks a copy and makes it ready; nothing of the book is touched.
   *
   * @param copied told now and then how many bytes are made ready
   * @throws Refusal if there is no such file, or it is the book itself
   * @throws BookTrouble if the copy is damaged, no book, or of a newer program
   */
  public static Restoring of(Path book, Path copy, Clock clock, LongConsumer copied) {
    Path target = book.toAbsolutePath().normalize();
    refuseNone(copy, target);
    Path staged = stage(copy, target, copied);
    try {
      return new Restoring(target, staged, LocalDate.now(clock), ready(staged, copy));
    } catch (RuntimeException | Error first) {
      discard(staged);
      throw first;
    }
  }

  private static void refuseNone(Path copy, Path book) {
    if (!Files.isRegularFile(copy)) {
      throw new Refusal("There is no file " + copy + ".", new Action.SeeCopies());
    }
    try {
      if (Files.exists(book) && Files.isSameFile(copy, book)) {
        throw new Refusal(copy + " is the book itself. Name a copy of it.");
      }
    } catch (IOException e) {
      throw Troubles.of("The copy " + copy + " cannot be read", e);
    }
    if (!BookFile.beginsAsDatabase(copy)) {
      throw new BookTrouble(Troubles.foreign(copy));
    }
  }

  /** Copies the copy, through SQLite, into a file beside the book that is ours alone. */
  private static Path stage(Path copy, Path book, LongConsumer copied) {
    try (Store source = Connections.open(copy.toAbsolutePath(), Connections.PATIENCE)) {
      Migrations.State state = Migrations.state(source);
      if (!state.ours()) {
        throw new BookTrouble(Troubles.foreign(copy));
      }
      Migrations.shipped().refuseNewer(source, state);
      if (!Checkup.wholeFile(source)) {
        throw damaged(copy, "");
      }
      Path staged = Leavings.begin(Folders.make(book.getParent()), RESTORING);
      staged.toFile().deleteOnExit(); // where the program is stopped half way
      source.watched(
          () -> copied.accept(staged.toFile().length()), () -> source.run("copy-into", staged));
      Copies.flush(staged);
      return staged;
    } catch (IOException e) {
      throw Troubles.of("The copy " + copy + " cannot be read", e);
    } catch (BookTrouble e) {
      throw Troubles.isDamage(e) ? damaged(copy, "") : e;
    }
  }

  private static BookTrouble damaged(Path copy, String why) {
    return new BookTrouble("The copy %s is damaged%s. Choose another copy.".formatted(copy, why));
  }

  /**
   * Brings the staged copy up to date and checks all that is in it. A row that differs from the
   * history, or names what is not known, keeps nothing else from being restored.
   */
  private static Content ready(Path staged, Path copy) {
    try (Store store = Connections.open(staged, Connections.PATIENCE)) {
      Migrations.shipped().stepsAfter(Migrations.state(store).version(), store);
      List<String> broken = Checkup.broken(store);
      if (!broken.isEmpty()) {
        throw damaged(copy, ": " + broken.get(0).replaceAll("[.]$", ""));
      }
      return new Content(store.number("session-count"), Checkup.problems(store));
    }
  }

  /** How many sessions the copy holds. */
  public long sessions() {
    return content.sessions;
  }

  /** What is wrong with single rows of the copy, a sentence each; they are restored as they are. */
  public List<String> problems() {
    return content.problems;
  }

  /**
   * What becomes of the present book: missing, readable or damaged.
   *
   * @throws BookTrouble if it is of a newer program, or the file is somebody else's
   */
  public Found found() {
    Present present = new Present(book, today);
    if (!present.isThere()) {
      return Found.NONE;
    }
    return present.isReadable() ? Found.READABLE : Found.DAMAGED;
  }

  /** What there is where the copy is to be put. */
  public enum Found {
    /** No book, or an empty file. */
    NONE,
    /** A book. */
    READABLE,
    /** A book that cannot be read; it is kept as it is found. */
    DAMAGED
  }

  /** What a readable present book holds that the copy does not. */
  public Lost lost() {
    try (Store store = Connections.open(staged, Connections.PATIENCE)) {
      store.run("attach-present", book);
      return store.first("lost-by-restoring", Lost::read).orElseThrow();
    }
  }

  /**
   * Puts the copy in the place of the book.
   *
   * @param share told how much of it is done, 0 to 1
   * @return the file in which the book is kept that was there before; empty where there was none
   * @throws BookTrouble if the book is in use, of a newer program, or no book; it is then as it was
   */
  public Optional<Path> run(DoubleConsumer share) {
    Present present = new Present(book, today);
    return switch (found()) {
      case NONE -> present.exchangeFor(staged);
      case READABLE -> Optional.of(present.replaceBy(staged, share));
      case DAMAGED -> present.exchangeFor(staged);
    };
  }

  private static void discard(Path staged) {
    try {
      for (String tail : List.of("", "-wal", "-shm", "-journal")) {
        Files.deleteIfExists(staged.resolveSibling(staged.getFileName() + tail));
      }
    } catch (IOException e) {
      throw Troubles.of("The file " + staged + " cannot be thrown away", e);
    }
  }

  @Override
  public void close() {
    discard(staged);
  }
}
