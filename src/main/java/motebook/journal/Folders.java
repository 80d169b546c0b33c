package motebook.journal;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Makes folders and files that only their owner may look into. */
final class Folders {
  private Folders() {}

  /** Makes the folder and those above it where missing, each 0700. */
  static Path make(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return folder;
    }
    return Files.createDirectories(folder, mode(folder, "rwx------"));
  }

  /** Makes an empty file, 0600, unless there is one. */
  static void makeFile(Path file) throws IOException {
    try {
      Files.createFile(file, mode(file, "rw-------"));
    } catch (FileAlreadyExistsException e) {
      if (!Files.exists(file)) {
        throw e; // a link that leads nowhere
      }
    }
  }

  private static FileAttribute<?>[] mode(Path path, String mode) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))
        }
        : new FileAttribute<?>[0];
  }
}
