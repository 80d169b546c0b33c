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
import java.util.zip.CRC32;
import org.sqlite.SQLiteConfig;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * Unpacks the database's native library once, into the cache folder, instead of at every start.
 *
 * <p>The folder bears the name and the size of the driver's jar and the platform, the library its
 * own checksum: so a start that finds it there whole need not ask the driver, which costs more than
 * it saves. One that is damaged, or that somebody else may write, goes and is unpacked again; the
 * machine below would crash on it. Where the cache cannot be written or is open to others, nothing
 * is set and the library is unpacked the stock way.
 */
final class NativeLibrary {
  private static final String FOLDER = "org.sqlite.lib.path";
  private static final String NAME = "org.sqlite.lib.name";

  private static final String UNPACKING = "unpacking";

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
      if (!isOurs(folder, true)) {
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

  /** The file whose checksum is the one in its name; what is not whole goes. */
  private static Optional<Path> find(Path folder) throws IOException {
    Leavings.clear(folder, UNPACKING);
    Optional<Path> found = Optional.empty();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*-*")) {
      for (Path file : files) {
        if (String.valueOf(file.getFileName()).startsWith(UNPACKING)) {
          continue;
        }
        if (isOurs(file, false) && String.valueOf(file.getFileName()).startsWith(sum(file) + "-")) {
          found = Optional.of(file);
        } else {
          Files.deleteIfExists(file);
        }
      }
    }
    return found;
  }

  /** A checksum that a library of some megabytes costs no more than a millisecond or two. */
  private static String sum(Path file) throws IOException {
    CRC32 sum = new CRC32();
    sum.update(Files.readAllBytes(file));
    return Long.toHexString(sum.getValue());
  }

  private static Optional<Path> unpackInto(Path folder) throws IOException {
    String name = LibraryLoaderUtil.getNativeLibName();
    String packed = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    Path part = Leavings.begin(folder, UNPACKING);
    try (InputStream in = SQLiteConfig.class.getResourceAsStream(packed)) {
      if (in == null) {
        return Optional.empty();
      }
      byte[] library = in.readAllBytes();
      CRC32 wanted = new CRC32();
      wanted.update(library);
      Files.write(part, library);
      Copies.flush(part);
      String sum = sum(part);
      if (!sum.equals(Long.toHexString(wanted.getValue()))) {
        return Optional.empty();
      }
      return Optional.of(
          Files.move(part, folder.resolve(sum + "-" + name), StandardCopyOption.ATOMIC_MOVE));
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Whether a file or folder is the user's own and nobody else may write it. */
  private static boolean isOurs(Path path, boolean folder) throws IOException {
    PosixFileAttributeView view =
        Files.getFileAttributeView(path, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (view == null) {
      return true;
    }
    PosixFileAttributes attributes = view.readAttributes();
    Set<PosixFilePermission> allowed = attributes.permissions();
    return (folder ? attributes.isDirectory() : attributes.isRegularFile())
        && attributes.owner().getName().equals(System.getProperty("user.name"))
        && !allowed.contains(PosixFilePermission.GROUP_WRITE)
        && !allowed.contains(PosixFilePermission.OTHERS_WRITE);
  }
}
