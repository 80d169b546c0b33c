package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import motebook.command.Commands;
import motebook.command.World;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.report.Invocation;
import motebook.screen.draw.Aloud;
import motebook.screen.state.Focus;
import motebook.screen.state.Look;
import motebook.screen.state.Size;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the day says of a mask that counts for nothing, and the commands that mend it. */
class MaskNotesTest {
  private static final Pattern COMMAND = Pattern.compile("motebook .*(?= \\(in a shell)");
  private static final Pattern WORD = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|(\\S+)");
  private static final Options OPTIONS = Options.from(Map.of(), Options.Colour.NEVER);

  @TempDir Path folder;
  private Path file;
  private Pilot pilot;

  @BeforeEach
  void open() {
    file = folder.resolve("my own book.db");
    pilot = new Pilot(file).open();
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private void addMask() {
    pilot
        .book()
        .rack()
        .add(
            new Respirator(
                0,
                "half mask",
                Scheme.OSHA,
                "air-purifying",
                "half mask",
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty()));
  }

  private void work(String line) {
    pilot.type(line).press("Enter");
    assertThat(pilot.state().line().blank()).isTrue();
  }

  @Test
  void the_day_says_shortly_why_the_mask_counts_for_nothing() {
    addMask();
    work("60m orbital sanding of oak wearing half mask at 9:00");
    assertThat(pilot.screen())
        .containsSubsequence("mask not credited: no element and 2", "chance over", "more (notes)");
    assertThat(pilot.resize(60, 15).screen()).contains("mask not credited: no element and 2 more");
  }

  @Test
  void a_mask_that_counts_in_part_of_the_day_is_warned_of_below_the_work() {
    ShopGear.add(pilot);
    work("30m drilling of oak wearing half mask checked at 8:00");
    work("60m orbital sanding of oak wearing half mask at 9:00");
    assertThat(pilot.screen())
        .contains("! Mask not credited in 09:00-10:00: no seal check (notes)");
    assertThat(pilot.screen())
        .contains("inside  about 3.17 mg/m³")
        .doesNotContain("mask not credited: ");
  }

  @Test
  void the_notes_list_all_that_is_missing_in_the_order_to_mend_it() {
    addMask();
    work("60m orbital sanding of oak wearing half mask at 9:00");
    assertThat(notes())
        .containsSubsequence(
            "The mask is not credited in 09:00-10:00 orbital sanding of oak:",
            "1. No element is on record on half mask on 2026-03-04.",
            "2. No fit test of me with half mask is on record.",
            "3. No seal check is recorded for this session.",
            "With that and 2 things more, tests and checks passed, it would count as 10.");
    assertThat(notes()).noneMatch(line -> line.contains("motebook "));
  }

  @Test
  void enter_on_the_notes_takes_up_what_is_missing_one_thing_after_the_other() {
    addMask();
    work("60m orbital sanding of oak wearing half mask at 9:00");
    pilot.say("notes").press("Enter");
    assertThat(pilot.screen()).contains("P100 half mask");
    pilot.press("Enter").say("notes").press("Enter");
    assertThat(pilot.state().focus()).isEqualTo(Focus.FORM);
    assertThat(pilot.state().pages().form()).isPresent();
    fill("result", "passed");
    pilot.press("Enter").say("notes").press("Enter");
    assertThat(pilot.screen()).contains("Was the seal checked when the mask was put on");
    pilot.press("y", "Enter");
    assertThat(credited()).isEqualTo(10);
  }

  private void fill(String key, String text) {
    for (int field = 0; field < 9; field++) {
      if (pilot.state().pages().form().orElseThrow().field().key().equals(key)) {
        pilot.type(text);
        return;
      }
      pilot.press("Down");
    }
    throw new AssertionError("no field " + key);
  }

  private double credited() {
    return pilot.state().sheet().current().orElseThrow().report().sessions().get(0).credit().apf();
  }

  private List<String> notes() {
    pilot.say("notes");
    List<String> lines = Aloud.page(pilot.state());
    pilot.press("Escape");
    return lines;
  }

  @Test
  void the_command_that_a_refused_line_tells_works_on_a_book_of_another_name() {
    Path usual = folder.resolve("usual.db");
    Invocation program = OPTIONS.knowing(usual).program(file);
    pilot.close();
    pilot = new Pilot(file, Size.USUAL, Look.UNICODE, program).open();
    pilot.type("60m orbital sanding of oak wearing paper cup at 9:00");
    String told = pilot.screen().replaceAll("\\s+", " ");
    assertThat(told).contains("(in a shell, after quit)");
    String sentence = pilot.state().line().current().orElseThrow().fault().orElseThrow().sentence();
    assertThat(sentence).contains("--book \"" + file + "\"");
    run(commands(sentence).get(0));
    assertThat(pilot.book().rack().respirator("paper cup").facepiece()).isEqualTo("half mask");
    assertThat(usual).doesNotExist();
  }

  @Test
  void the_usual_book_needs_no_naming_in_a_command() {
    assertThat(OPTIONS.knowing(file).program(file)).isEqualTo(Invocation.USUAL);
    assertThat(OPTIONS.program(file)).isEqualTo(Invocation.USUAL);
  }

  @Test
  void what_is_changed_is_told_by_its_time_and_never_by_the_number_in_the_book() {
    work("20m drilling of oak at 11:00");
    work("60m orbital sanding of oak at 9:00");
    pilot.press("Up", "Enter", "Ctrl-U").type("50m").press("Enter", "Ctrl-Z");
    assertThat(pilot.screen()).contains("Take this back? Changed a session to 2026-03-04 09:00");
    pilot.press("Escape", "Delete", "y", "Enter", "Ctrl-Z");
    assertThat(pilot.screen()).contains("Take this back? Deleted 2026-03-04 09:00");
    assertThat(pilot.screen()).doesNotContain("session 2");
  }

  private static List<String> commands(String text) {
    List<String> found = new ArrayList<>();
    Matcher commands = COMMAND.matcher(text);
    while (commands.find()) {
      found.add(commands.group());
    }
    return found;
  }

  private void run(String command) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      words.add(word.group(1) != null ? word.group(1) : word.group(2));
    }
    assertThat(words.remove(0)).isEqualTo("motebook");
    StringWriter told = new StringWriter();
    PrintWriter out = new PrintWriter(told, true);
    Clock noon = Clock.fixed(Pilot.NOON.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
    World world =
        new World(
            noon,
            Map.of("HOME", folder.toString()),
            InputStream.nullInputStream(),
            out,
            out,
            false,
            (book, day, color, plain) -> 1);
    int code = Commands.run(world, words.toArray(String[]::new));
    assertThat(code).as("%s: %s", command, told).isZero();
  }
}
