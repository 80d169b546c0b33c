package motebook.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/**
 * A file or folder that is still being written, hidden beside the one that it will be. It is gone
 * when the writing is given up, also by Ctrl-C; what a killed program left behind goes with the
 * next writing of the same one.
 */
final class Unfinished implements AutoCloseable {
  private static final String ENDING = ".motebook-part";
  private static final String EARLIER = ".motebook-earlier";
  private static final int ATTEMPTS = 100;

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
    Files.createFile(begun.path);
    return begun;
  }

  /** Begins a folder. */
  static Unfinished folder(Path target) throws IOException {
    Unfinished begun = begun(target);
    Files.createDirectory(begun.path);
    return begun;
  }

  private static Unfinished begun(Path target) throws IOException {
    clearEarlier(target);
    String name = begin(target) + ProcessHandle.current().pid() + ENDING;
    return new Unfinished(target, folderOf(target).resolve(name));
  }

  private static Path folderOf(Path target) {
    return target.toAbsolutePath().getParent();
  }

  private static String begin(Path target) {
    return "." + target.getFileName() + "-";
  }

  private static void clearEarlier(Path target) throws IOException {
    Path earlier = aside(target);
    if (Files.exists(earlier) && !Files.exists(target)) {
      Files.move(earlier, target);
    }
    remove(earlier);
    try (Stream<Path> all = Files.list(folderOf(target))) {
      List<Path> left = all.filter(path -> isLeftOf(target, path)).toList();
      for (Path path : left) {
        remove(path);
      }
    }
  }

  private static boolean isLeftOf(Path target, Path path) {
    String name = path.getFileName().toString();
    String begin = begin(target);
    return name.startsWith(begin)
        && name.endsWith(ENDING)
        && name.substring(begin.length(), name.length() - ENDING.length()).matches("\\d+");
  }

  Path path() {
    return path;
  }

  /** Puts it where it belongs, in the place of an earlier one; Ctrl-C waits for that. */
  synchronized void finish() throws IOException {
    if (Files.isDirectory(path) && Files.exists(target)) {
      exchange();
    } else {
      Files.move(path, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A folder cannot be put over another one: the earlier one steps aside, and goes at the end. */
  private void exchange() throws IOException {
    Path earlier = aside(target);
    Files.move(target, earlier);
    try {
      Files.move(path, target);
    } catch (IOException | RuntimeException e) {
      Files.move(earlier, target);
      throw e;
    }
    remove(earlier);
  }

  private static Path aside(Path target) {
    return folderOf(target).resolve("." + target.getFileName() + EARLIER);
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
