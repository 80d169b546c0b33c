package motebook.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file or folder that is still being written, hidden beside the one that it will be and readable
 * by its owner alone. It is gone when the writing is given up, also by Ctrl-C; what a killed
 * program left behind goes with the next writing of the same one. Several programs may write the
 * same one at once: the last to finish is what stays.
 */
final class Unfinished implements AutoCloseable {
  private static final String ENDING = ".motebook-part";
  private static final String EARLIER = ".motebook-earlier";
  private static final int ATTEMPTS = 100;
  private static final String FOLDER_MODE = "rwx------";
  private static final String FILE_MODE = "rw-------";
  private static final Pattern OWNER = Pattern.compile("(\\d{1,18})(-\\d+)?");
  private static final AtomicLong BEGUN = new AtomicLong();

  private final Path target;
  private final Path path;
  private final Thread onCtrlC;

  private Unfinished(Path target, Path path) {
    this.target = target;
    this.path = path;
    onCtrlC = new Thread(this::giveUp, "clear away " + path.getFileName());
    Runtime.getRuntime().addShutdownHook(onCtrlC);
  }

  /** Begins a file. */
  static Unfinished file(Path target) throws IOException {
    Unfinished begun = begun(target);
    Files.createFile(begun.path, mode(FILE_MODE));
    return begun;
  }

  /** Begins a folder. */
  static Unfinished folder(Path target) throws IOException {
    Unfinished begun = begun(target);
    Files.createDirectory(begun.path, mode(FOLDER_MODE));
    return begun;
  }

  private static Unfinished begun(Path target) throws IOException {
    clearEarlier(target);
    String name = begin(target) + mine() + ENDING;
    return new Unfinished(target, folderOf(target).resolve(name));
  }

  /** The number of this program, and which of its files. */
  private static String mine() {
    return ProcessHandle.current().pid() + "-" + BEGUN.incrementAndGet();
  }

  private static FileAttribute<?>[] mode(String mode) {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))
        }
        : new FileAttribute<?>[0];
  }

  private static Path folderOf(Path target) {
    return target.toAbsolutePath().getParent();
  }

  private static String begin(Path target) {
    return "." + target.getFileName() + "-";
  }

  private static void clearEarlier(Path target) throws IOException {
    List<Path> left;
    try (Stream<Path> all = Files.list(folderOf(target))) {
      left = all.filter(path -> isLeftOf(target, path)).sorted().toList();
    }
    for (Path path : left) {
      if (String.valueOf(path.getFileName()).endsWith(EARLIER) && !Files.exists(target)) {
        Files.move(path, target);
      } else {
        remove(path);
      }
    }
  }

  /** Whether a program that no longer runs left it behind. */
  private static boolean isLeftOf(Path target, Path path) {
    String name = path.getFileName().toString();
    String begin = begin(target);
    String ending = name.endsWith(EARLIER) ? EARLIER : ENDING;
    if (name.equals("." + target.getFileName() + EARLIER)) {
      return true;
    }
    if (!name.startsWith(begin) || !name.endsWith(ending)) {
      return false;
    }
    Matcher owner =
        OWNER.matcher(
            name.substring(
                begin.length(), Math.max(begin.length(), name.length() - ending.length())));
    return owner.matches() && ProcessHandle.of(Long.parseLong(owner.group(1))).isEmpty();
  }

  Path path() {
    return path;
  }

  /**
   * Puts it where it belongs, in the place of an earlier one, once it is on the disk; Ctrl-C waits
   * for that. Whatever fails, the earlier one is there.
   */
  synchronized void finish() throws IOException {
    if (Files.isDirectory(path)) {
      try (Stream<Path> all = Files.list(path)) {
        for (Path file : all.toList()) {
          flush(file);
        }
      }
      exchange();
    } else {
      keepNarrow();
      flush(path);
      Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
    }
    flush(folderOf(target));
  }

  /** A file that its owner closed to himself is not opened by writing it again. */
  private void keepNarrow() throws IOException {
    PosixFileAttributeView earlier =
        Files.getFileAttributeView(target, PosixFileAttributeView.class);
    if (earlier != null && Files.exists(target)) {
      Set<PosixFilePermission> mode = PosixFilePermissions.fromString(FILE_MODE);
      mode.retainAll(earlier.readAttributes().permissions());
      Files.setPosixFilePermissions(path, mode);
    }
  }

  private static void flush(Path written) throws IOException {
    boolean folder = Files.isDirectory(written);
    try (FileChannel channel =
        FileChannel.open(written, folder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
      channel.force(true);
    } catch (IOException e) {
      if (!folder) {
        throw e; // a folder is not everywhere a thing that can be forced
      }
    }
  }

  /** A folder cannot be put over another one: the earlier one steps aside, and goes at the end. */
  private void exchange() throws IOException {
    for (int attempt = 1; ; attempt++) {
      Optional<Path> earlier = stepAside();
      try {
        Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
        if (earlier.isPresent()) {
          remove(earlier.get());
        }
        return;
      } catch (IOException | RuntimeException e) {
        if (earlier.isPresent() && !Files.exists(target)) {
          Files.move(earlier.get(), target);
        }
        if (attempt == ATTEMPTS || !Files.exists(target)) {
          throw e;
        }
      }
    }
  }

  private Optional<Path> stepAside() throws IOException {
    Path aside = folderOf(target).resolve(begin(target) + mine() + EARLIER);
    try {
      Files.move(target, aside, StandardCopyOption.ATOMIC_MOVE);
      return Optional.of(aside);
    } catch (NoSuchFileException nothingThere) {
      return Optional.empty();
    }
  }

  /** Clears away what was not finished. */
  @Override
  public void close() throws IOException {
    try {
      Runtime.getRuntime().removeShutdownHook(onCtrlC);
    } catch (IllegalStateException e) {
      LockSupport.park(); // the program is being ended: the hook clears away, no more is to be said
      return;
    }
    remove(path);
  }

  /** The work may go on for a moment while the program is being ended. */
  private synchronized void giveUp() {
    for (int i = 0; i < ATTEMPTS && Files.exists(path); i++) {
      try {
        remove(path);
      } catch (IOException | UncheckedIOException e) {
        Thread.onSpinWait();
      }
    }
  }

  private static void remove(Path path) throws IOException {
    if (!Files.exists(path)) {
      return;
    }
    Files.walkFileTree(
        path,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes any) throws IOException {
            Files.deleteIfExists(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, IOException any)
              throws IOException {
            Files.deleteIfExists(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
