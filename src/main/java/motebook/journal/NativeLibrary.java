package motebook.journal;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Optional;
import java.util.Set;
import org.sqlite.SQLiteConfig;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * Unpacks the database's native library once, into the cache folder, instead of at every start.
 *
 * <p>The folder bears the name and the size of the driver's jar and the platform, the library its
 * own size: so a start that finds it there need not ask the driver, which costs more than it saves.
 * Where the cache cannot be written or is open to others, nothing is set and the library is
 * unpacked the stock way.
 */
final class NativeLibrary {
  private static final String FOLDER = "org.sqlite.lib.path";
  private static final String NAME = "org.sqlite.lib.name";

  private static boolean prepared;

  private NativeLibrary() {}

  /** Points the database driver at the unpacked library; does so once in the life of a program. */
  static synchronized void prepare() {
    if (!prepared && System.getProperty(FOLDER) == null) {
      unpacked(cache()).ifPresent(NativeLibrary::use);
    }
    prepared = true;
  }

  private static void use(Path library) {
    System.setProperty(FOLDER, String.valueOf(library.getParent()));
    System.setProperty(NAME, String.valueOf(library.getFileName()));
  }

  private static Path cache() {
    String named = System.getenv("XDG_CACHE_HOME");
    boolean usable = named != null && Path.of(named).isAbsolute();
    return usable ? Path.of(named) : Path.of(System.getProperty("user.home"), ".cache");
  }

  /** The library within the cache, unpacked if it was not; empty if it cannot be trusted there. */
  static Optional<Path> unpacked(Path cache) {
    try {
      Path folder = Folders.make(cache.resolve("motebook").resolve(driver() + "-" + platform()));
      if (!isPrivate(folder)) {
        return Optional.empty();
      }
      Optional<Path> there = find(folder);
      return there.isPresent() ? there : unpackInto(folder);
    } catch (IOException | URISyntaxException | FileSystemNotFoundException e) {
      return Optional.empty();
    }
  }

  private static String driver() throws IOException, URISyntaxException {
    Path jar =
        Path.of(SQLiteConfig.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    return jar.getFileName() + "-" + Files.size(jar);
  }

  private static String platform() {
    String platform = System.getProperty("os.name") + "-" + System.getProperty("os.arch");
    return platform.replaceAll("[^A-Za-z0-9_-]", "");
  }

  /** The file whose size is the one in its name. */
  private static Optional<Path> find(Path folder) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        if (file.getFileName().toString().startsWith(Files.size(file) + "-")) {
          return Optional.of(file);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Path> unpackInto(Path folder) throws IOException {
    String name = LibraryLoaderUtil.getNativeLibName();
    String packed = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    Path part = Files.createTempFile(folder, "unpacking", ".part");
    try (InputStream in = SQLiteConfig.class.getResourceAsStream(packed)) {
      if (in == null) {
        return Optional.empty();
      }
      long size = Files.copy(in, part, StandardCopyOption.REPLACE_EXISTING);
      return Optional.of(
          Files.move(part, folder.resolve(size + "-" + name), StandardCopyOption.ATOMIC_MOVE));
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Whether the folder is the user's own and nobody else may write into it. */
  private static boolean isPrivate(Path folder) throws IOException {
    PosixFileAttributeView view =
        Files.getFileAttributeView(folder, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (view == null) {
      return true;
    }
    PosixFileAttributes attributes = view.readAttributes();
    Set<PosixFilePermission> allowed = attributes.permissions();
    return attributes.isDirectory()
        && attributes.owner().getName().equals(System.getProperty("user.name"))
        && !allowed.contains(PosixFilePermission.GROUP_WRITE)
        && !allowed.contains(PosixFilePermission.OTHERS_WRITE);
  }
}
