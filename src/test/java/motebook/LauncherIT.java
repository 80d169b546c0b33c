package motebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program, started as a person starts it. */
class LauncherIT {
  private static final Path HOME = Path.of(System.getProperty("motebook.home"));
  private static final String ARCHIVE = "-XX:SharedArchiveFile=";

  @TempDir Path folder;

  private record Said(int code, String out, String err) {}

  private Said run(Map<String, String> environment, Path program, String... words)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(program.toString()));
    command.addAll(List.of(words));
    Path err = Files.createTempFile(folder, "err", ".txt");
    ProcessBuilder builder = new ProcessBuilder(command).redirectError(err.toFile());
    builder.environment().keySet().removeIf(name -> name.startsWith("LC_") || name.equals("LANG"));
    builder.environment().put("MOTEBOOK_BOOK", folder.resolve("book.db").toString());
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Said(process.waitFor(), out, Files.readString(err));
  }

  private Said say(String... words) throws IOException, InterruptedException {
    return run(new HashMap<>(), HOME.resolve("bin/motebook"), words);
  }

  @Test
  void under_the_plain_c_locale_names_and_units_stay_whole() throws Exception {
    Map<String, String> plain = Map.of("LC_ALL", "C");
    Path program = HOME.resolve("bin/motebook");
    assertThat(run(plain, program, "person", "add", "Zoë").code()).isZero();
    Said said =
        run(plain, program, "log", "20m assembly by Zoë at 9:00 on 2026-03-02 note naïve ³ 木");
    assertThat(said.code()).as(said.err()).isZero();
    assertThat(said.out()).contains("by Zoë").contains("naïve ³ 木").contains("mg/m³");
  }

  @Test
  void a_locale_that_is_named_and_not_installed_ruins_no_letter() throws Exception {
    Path home = Files.createDirectories(folder.resolve("Jörg"));
    Map<String, String> named =
        Map.of(
            "LC_ALL", "xx_YY.UTF-8",
            "HOME", home.toString(),
            "XDG_DATA_HOME", "",
            "MOTEBOOK_BOOK", "");
    Path program = HOME.resolve("bin/motebook");
    assertThat(run(named, program, "person", "add", "Zoë").code()).isZero();
    assertThat(home.resolve(".local/share/motebook/book.db")).isNotEmptyFile();
    Said said = run(named, program, "log", "20m assembly by Zoë at 9:00 on 2026-03-02 note ³ 木");
    assertThat(said.code()).as(said.err()).isZero();
    assertThat(said.out()).contains("by Zoë").contains("³ 木");
  }

  @Test
  void an_answer_into_a_full_output_ends_with_1() throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(HOME.resolve("bin/motebook").toString(), "day")
            .redirectOutput(Path.of("/dev/full").toFile());
    builder.environment().put("MOTEBOOK_BOOK", folder.resolve("book.db").toString());
    Process process = builder.start();
    String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isEqualTo(1);
    assertThat(said).contains("The answer could not be written in full");
  }

  @Test
  void it_starts_through_a_link_from_any_folder_with_spaces_in_its_path() throws Exception {
    Path link = Files.createDirectories(folder.resolve("my tools")).resolve("mote");
    Files.createSymbolicLink(link, HOME.resolve("bin/motebook").toAbsolutePath());
    Said said = run(Map.of(), link, "--version");
    assertThat(said.code()).isZero();
    assertThat(said.out()).startsWith("motebook ");
  }

  /** A copy of the whole program. */
  private Path copied() throws IOException {
    Path copy = folder.resolve("a copy");
    try (Stream<Path> all = Files.walk(HOME)) {
      for (Path path : (Iterable<Path>) all::iterator) {
        Files.copy(path, copy.resolve(HOME.relativize(path).toString()));
      }
    }
    return copy;
  }

  @Test
  void copied_elsewhere_it_says_no_word_about_its_own_insides() throws Exception {
    Path copy = copied();
    Said said =
        run(
            Map.of(),
            copy.resolve("bin/motebook"),
            "reckon",
            "wear",
            "--apf",
            "10",
            "--worn",
            "90",
            "--json");
    assertThat(said.code()).as(said.err()).isZero();
    assertThat(said.out()).startsWith("{\"effective_factor\":5.26315789473684");
    assertThat(said.err()).isEmpty();
  }

  @Test
  void an_at_sign_is_no_file_to_expand() throws Exception {
    Said said = say("log", "@book.db");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("@book.db");
  }

  @Test
  void answers_go_to_standard_output_and_messages_to_standard_error() throws Exception {
    Said good = say("day", "--json");
    assertThat(good.out()).startsWith("{\"date\":");
    assertThat(good.err()).isEmpty();
    Said bad = say("log", "40m orbitel sanding");
    assertThat(bad.code()).isEqualTo(2);
    assertThat(bad.out()).isEmpty();
    assertThat(bad.err()).contains("orbital sanding");
  }

  @Test
  void the_screen_without_a_terminal_is_refused_in_plain_words() throws Exception {
    Said said = say();
    assertThat(said.code()).isNotZero();
    assertThat(said.err()).isNotBlank().doesNotContain("\tat ");
  }

  @Test
  void from_inside_its_own_folder_a_plain_sh_starts_it_too() throws Exception {
    Process process =
        new ProcessBuilder("sh", "motebook", "--version")
            .directory(HOME.resolve("bin").toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isZero();
    assertThat(out).startsWith("motebook ");
  }

  @Test
  void the_archive_serves_the_java_that_made_it_where_it_was_made_and_no_other() throws Exception {
    Path own = Path.of(System.getProperty("java.home"));
    Path other = folder.resolve("jdk");
    pretend(Files.createDirectories(other.resolve("bin")).resolve("java"), "printf '%s\\n' \"$@\"");
    assertThat(started(own, HOME)).anyMatch(word -> word.startsWith(ARCHIVE));
    assertThat(started(own, copied())).isNotEmpty().noneMatch(word -> word.startsWith(ARCHIVE));
    assertThat(run(Map.of("JAVA_HOME", other.toString()), HOME.resolve("bin/motebook")).out())
        .contains("motebook.Motebook")
        .doesNotContain(ARCHIVE);
  }

  /** The words that Java was started with, as the system knows them of the running program. */
  private List<String> started(Path javaHome, Path home) throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(
                home.resolve("bin/motebook").toString(),
                "--plain",
                "--book",
                folder.resolve("started.db").toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD);
    builder.environment().put("JAVA_HOME", javaHome.toString());
    Process process = builder.start();
    assertThat(process.getInputStream().read()).isPositive();
    List<String> words = List.of(process.info().arguments().orElse(new String[0]));
    process.getOutputStream().close();
    process.getInputStream().readAllBytes();
    assertThat(process.waitFor()).isZero();
    return words;
  }

  private static void pretend(Path program, String does) throws IOException {
    Files.writeString(program, "#!/bin/sh\n" + does + "\n");
    assertThat(program.toFile().setExecutable(true)).isTrue();
  }

  @Test
  void what_is_due_is_told_without_the_libraries_of_other_jobs_and_from_the_class_data_archive()
      throws Exception {
    List<String> loaded = loaded("due");
    assertThat(loaded).noneMatch(line -> line.contains("lanterna"));
    assertThat(loaded).noneMatch(line -> line.contains("pdfbox"));
    assertThat(loaded).noneMatch(line -> line.contains("ical4j"));
    assertThat(loaded)
        .filteredOn(line -> line.contains(" motebook.desk.Due "))
        .singleElement()
        .asString()
        .contains("shared objects file");
  }

  /** The classes that a command loads, a line of the virtual machine's log each. */
  private List<String> loaded(String command) throws IOException, InterruptedException {
    Path log = folder.resolve("classes.txt");
    Path lib = HOME.toAbsolutePath().resolve("lib");
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:SharedArchiveFile=" + lib.resolve("motebook.jsa"),
                "-Xlog:class+load:file=" + log,
                "-cp",
                lib + "/*",
                "motebook.Motebook",
                command,
                "--book",
                folder.resolve("fresh.db").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said.txt").toFile())
            .start();
    assertThat(java.waitFor()).as(Files.readString(folder.resolve("said.txt"))).isZero();
    return Files.readAllLines(log);
  }

  @Test
  void the_calendar_is_written_by_the_packaged_program() throws Exception {
    Path calendar = folder.resolve("due.ics");
    assertThat(
            say(
                    "gear",
                    "add",
                    "respirator",
                    "mask",
                    "--facepiece",
                    "half mask",
                    "--kind",
                    "air-purifying",
                    "--scheme",
                    "osha",
                    "--for",
                    "me")
                .code())
        .isZero();
    assertThat(say("export", "--calendar", calendar.toString()).code()).isZero();
    assertThat(Files.readString(calendar)).startsWith("BEGIN:VCALENDAR").contains("BEGIN:VEVENT");
  }

  @Test
  void without_a_terminal_no_bar_is_asked_for_whatever_the_environment_says() throws Exception {
    pretend(Files.createDirectories(folder.resolve("jdk/bin")).resolve("java"), "env");
    Map<String, String> environment =
        Map.of(
            "JAVA_HOME", folder.resolve("jdk").toString(),
            "MOTEBOOK_TERMINAL", "1",
            "MOTEBOOK_ERROR_TERMINAL", "1");
    Said said = run(environment, HOME.resolve("bin/motebook"), "day");
    assertThat(said.out()).contains("JAVA_HOME=").doesNotContain("TERMINAL=");
  }
}
