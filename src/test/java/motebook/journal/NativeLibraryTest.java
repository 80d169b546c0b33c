package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
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
  void a_library_that_is_cut_off_zeroed_or_half_there_is_unpacked_again() throws IOException {
    Path library = NativeLibrary.unpacked(cache).orElseThrow();
    byte[] whole = Files.readAllBytes(library);
    byte[] half = Arrays.copyOf(Arrays.copyOf(whole, whole.length / 2), whole.length);
    for (byte[] damaged : List.of(new byte[0], new byte[whole.length], half)) {
      Files.write(library, damaged);
      assertThat(NativeLibrary.unpacked(cache)).contains(library);
      assertThat(Files.readAllBytes(library)).isEqualTo(whole);
    }
  }

  @Test
  void a_library_that_others_may_write_is_unpacked_again() throws IOException {
    Path library = NativeLibrary.unpacked(cache).orElseThrow();
    Files.setPosixFilePermissions(library, PosixFilePermissions.fromString("rw-rw-rw-"));
    assertThat(NativeLibrary.unpacked(cache)).contains(library);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(library)))
        .isEqualTo("rw-------");
  }

  @Test
  void what_a_killed_program_left_of_its_unpacking_goes() throws IOException {
    Path folder = NativeLibrary.unpacked(cache).orElseThrow().getParent();
    Path left = Files.createFile(folder.resolve("unpacking-999999999-12.part"));
    Path mine =
        Files.createFile(folder.resolve("unpacking-" + ProcessHandle.current().pid() + "-12.part"));
    assertThat(NativeLibrary.unpacked(cache)).isPresent();
    assertThat(left).doesNotExist();
    assertThat(mine).exists();
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
