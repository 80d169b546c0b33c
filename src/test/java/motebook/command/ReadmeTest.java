package motebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples of the README are what the program says, word for word. */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final Path GOLDEN = Path.of("src/test/resources/golden");
  private static final Pattern SCREEN =
      Pattern.compile("```screen (\\S+)\\n(.*?)```", Pattern.DOTALL);
  private static final Pattern SHEET = Pattern.compile("```csv (\\S+)\\n(.*?)```", Pattern.DOTALL);
  private static final String PROMPT = "$ motebook ";

  /** Where the examples put files; here the folder of the test. */
  private static final String STICK = "/media/stick/";

  @TempDir Path folder;

  @Test
  void every_example_says_what_the_program_says() throws IOException {
    String written = Files.readString(README);
    String played = played(written);
    if (Boolean.getBoolean("golden.accept")) {
      Files.writeString(README, played);
    }
    assertThat(played).isEqualTo(Files.readString(README));
    assertThat(written.lines().filter(line -> line.startsWith(PROMPT)).count()).isGreaterThan(15);
  }

  /** The page with the answer under each prompt replaced by what the program says. */
  private String played(String page) {
    Shell shell = new Shell(folder.resolve("book.db")).at("2026-03-02T17:30");
    List<String> lines = new ArrayList<>();
    boolean inConsole = false;
    writeSheets(page);
    for (String line : page.split("\n", -1)) {
      if (line.startsWith("```")) {
        inConsole = line.equals("```console");
        lines.add(line);
      } else if (!inConsole) {
        lines.add(line);
      } else if (line.startsWith(PROMPT)) {
        lines.add(line);
        String here = folder + "/";
        Shell.Said said = shell.say(here(line.substring(PROMPT.length())).replace(STICK, here));
        (said.out() + said.err()).replace(here, STICK).lines().forEach(lines::add);
      }
    }
    return String.join("\n", lines);
  }

  /** A sheet that the page shows is a file that its commands can name. */
  private void writeSheets(String page) {
    SHEET
        .matcher(page)
        .results()
        .forEach(
            sheet -> {
              try {
                Files.writeString(folder.resolve(sheet.group(1)), sheet.group(2));
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
  }

  private String here(String command) {
    return command.replaceAll("\\b(\\w+\\.csv)\\b", folder + "/$1");
  }

  /** Screens on the page are the accepted ones, so they change with them. */
  @Test
  void every_screen_is_the_one_that_was_accepted() throws IOException {
    Matcher screen = SCREEN.matcher(Files.readString(README));
    StringBuilder shown = new StringBuilder();
    int count = 0;
    while (screen.find()) {
      String golden = Files.readString(GOLDEN.resolve(screen.group(1) + ".txt"));
      String whole = "```screen " + screen.group(1) + "\n" + golden + "```";
      screen.appendReplacement(shown, Matcher.quoteReplacement(whole));
      count++;
    }
    screen.appendTail(shown);
    if (Boolean.getBoolean("golden.accept")) {
      Files.writeString(README, shown.toString());
    }
    assertThat(shown.toString()).isEqualTo(Files.readString(README));
    assertThat(count).as("the day, the week and the plan").isEqualTo(3);
  }

  @Test
  void every_line_of_the_grammar_is_understood() throws IOException {
    Shell shell = new Shell(folder.resolve("lines.db")).at("2026-03-02T17:30");
    shell.say("person add Ana");
    shell.say("place change shop --cleaner-flow 10");
    String block = Files.readString(README).split("```text\n", -1)[1].split("```", -1)[0];
    assertThat(block.lines()).hasSize(6);
    block
        .lines()
        .forEach(
            line -> {
              assertThat(shell.run("log", line).code()).as(line).isZero();
              shell.say("undo");
            });
  }

  @Test
  void the_two_commands_stand_at_the_top() throws IOException {
    assertThat(Files.readString(README))
        .contains("mvn -q package -DskipTests && target/motebook/bin/motebook --sample")
        .contains("```sh\nmvn verify\n```");
  }
}
