package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NativeLibraryTest {
  @TempDir Path cache;

  @Test
  void the_library_is_unpacked_once_for_its_owner_only() throws IOException {
    Path library = NativeLibrary.unpacked(cache).orElseThrow();
    assertThat(library).startsWith(cache.resolve("motebook")).isNotEmptyFile();
    assertThat(library.getParent().getFileName().toString()).startsWith("sqlite-jdbc-3.");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(library.getParent())))
        .isEqualTo("rwx------");
    FileTime then = FileTime.fromMillis(1_000_000);
    Files.setLastModifiedTime(library, then);
    assertThat(NativeLibrary.unpacked(cache)).contains(library);
    assertThat(Files.getLastModifiedTime(library)).isEqualTo(then);
    assertThat(library.getParent()).isDirectoryNotContaining("glob:**.part");
  }

  @Test
  void a_library_of_another_size_is_unpacked_again() throws IOException {
    Path library = NativeLibrary.unpacked(cache).orElseThrow();
    long size = Files.size(library);
    Files.writeString(library, "cut off");
    assertThat(NativeLibrary.unpacked(cache)).contains(library);
    assertThat(library).hasSize(size);
    assertThat(library.getFileName().toString()).startsWith(size + "-");
  }

  @Test
  void a_folder_that_others_may_write_is_not_trusted() throws IOException {
    Path folder = NativeLibrary.unpacked(cache).orElseThrow().getParent();
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxrwxrwx"));
    assertThat(NativeLibrary.unpacked(cache)).isEqualTo(Optional.empty());
  }

  @Test
  void a_cache_that_cannot_be_written_is_done_without() throws IOException {
    Path file = Files.createFile(cache.resolve("file"));
    assertThat(NativeLibrary.unpacked(file)).isEmpty();
    assertThat(NativeLibrary.unpacked(Path.of("/proc/none"))).isEmpty();
  }
}
