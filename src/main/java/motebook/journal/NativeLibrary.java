package motebook.journal;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Optional;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;
import org.sqlite.util.OSInfo;

/**
 * Unpacks the database's native library once, into the cache folder, instead of at every start.
 *
 * <p>Where the cache cannot be written or is open to others, nothing is set and the library is
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
    String name = LibraryLoaderUtil.getNativeLibName();
    URL packed =
        SQLiteJDBCLoader.class.getResource(
            LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name);
    try {
      return packed == null ? Optional.empty() : unpack(packed, folder(cache).resolve(name));
    } catch (IOException | SecurityException e) {
      return Optional.empty();
    }
  }

  private static Path folder(Path cache) throws IOException {
    String platform = OSInfo.getNativeLibFolderPathForCurrentOS().replace('/', '-');
    String folder = "sqlite-" + SQLiteJDBCLoader.getVersion() + "-" + platform;
    return Folders.make(cache.resolve("motebook").resolve(folder));
  }

  private static Optional<Path> unpack(URL packed, Path library) throws IOException {
    if (!isPrivate(library.getParent())) {
      return Optional.empty();
    }
    if (!Files.isRegularFile(library) || Files.size(library) != size(packed)) {
      replace(packed, library);
    }
    return Optional.of(library);
  }

  private static long size(URL packed) throws IOException {
    return packed.openConnection().getContentLengthLong();
  }

  private static void replace(URL packed, Path library) throws IOException {
    Path part = Files.createTempFile(library.getParent(), "unpacking", ".part");
    try (InputStream in = packed.openStream()) {
      Files.copy(in, part, StandardCopyOption.REPLACE_EXISTING);
      Files.move(part, library, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** Whether the folder is the user's own and nobody else may write into it. */
  private static boolean isPrivate(Path folder) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(folder, PosixFileAttributeView.class);
    if (view == null) {
      return true;
    }
    PosixFileAttributes attributes = view.readAttributes();
    return attributes.owner().getName().equals(System.getProperty("user.name"))
        && !attributes.permissions().contains(PosixFilePermission.GROUP_WRITE)
        && !attributes.permissions().contains(PosixFilePermission.OTHERS_WRITE);
  }
}
