package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import motebook.screen.state.Look;
import motebook.screen.state.Size;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class GoldenScreenTest {
  private static final List<Size> SIZES =
      List.of(new Size(80, 24), new Size(60, 15), new Size(120, 40));

  @TempDir Path folder;

  private record Scene(String name, Consumer<Pilot> story) {}

  private static final List<Scene> SCENES =
      List.of(
          new Scene("empty-book", pilot -> pilot.open()),
          new Scene("one-session", pilot -> logged(pilot, "60m orbital sanding of oak at 9:00")),
          new Scene("working-day", ShopDay::log),
          new Scene("lacquered-day", GoldenScreenTest::lacquered),
          new Scene(
              "lacquered-week",
              pilot -> {
                lacquered(pilot);
                pilot.say("week");
              }),
          new Scene(
              "line-understood",
              pilot -> {
                ShopDay.log(pilot);
                pilot.type("20m orb sand of mdf with tool vac at 11:40");
              }),
          new Scene(
              "line-overlap",
              pilot -> {
                ShopDay.log(pilot);
                pilot.type("20m orb sand of mdf with tool vac at 11:20");
              }),
          new Scene(
              "line-at-fault",
              pilot -> {
                ShopDay.log(pilot);
                pilot.type("20m orbitel sanding of oak");
              }),
          new Scene(
              "undo-asked",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Ctrl-Z");
              }),
          new Scene(
              "notes",
              pilot -> {
                ShopDay.log(pilot);
                pilot.say("notes");
              }),
          new Scene("help", pilot -> pilot.open().press("?")),
          new Scene(
              "words",
              pilot -> {
                ShopDay.log(pilot);
                pilot.type("40m orbital sanding of oak with ").press("Ctrl-N");
              }),
          new Scene("first-run", Pilot::openFresh),
          new Scene(
              "first-run-limits",
              pilot -> {
                pilot.openFresh().press("Down", "Right");
              }),
          new Scene(
              "week",
              pilot -> {
                ShopWeeks.log(pilot);
                pilot.say("week");
              }),
          new Scene(
              "form",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Up", "Up", "Enter", "Down", "Down").press("Ctrl-U").type("ma");
              }),
          new Scene(
              "form-at-fault",
              pilot -> {
                ShopDay.log(pilot);
                pilot.say("form").type("20m").press("Down").type("drillong");
              }),
          new Scene(
              "settings", pilot -> pilot.open().say("settings").press("Down", "Down", "Right")),
          new Scene(
              "favourites",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Up", "Ctrl-K").type("Sweep up").press("Enter");
                pilot
                    .press("Up", "Ctrl-K")
                    .type("Carcass")
                    .press("Enter")
                    .say("favourites")
                    .press("Down");
              }),
          new Scene(
              "found",
              pilot -> {
                ShopWeeks.log(pilot);
                pilot.say("find").type("sanding").press("Enter", "Down");
              }),
          new Scene(
              "stopwatch",
              pilot -> {
                ShopDay.log(pilot);
                pilot
                    .press("Ctrl-T")
                    .type("table saw of oak with collector")
                    .press("Enter")
                    .pass(23);
              }),
          new Scene(
              "stopwatch-forgotten",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Ctrl-T").type("table saw of oak").press("Enter").pass(9 * 60);
                pilot.press("Ctrl-X");
              }),
          new Scene(
              "line-closed",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Escape");
              }),
          new Scene(
              "starting",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Ctrl-T").type("table saw of o");
              }),
          new Scene(
              "due",
              pilot -> {
                ShopWeeks.log(pilot);
                ShopGear.add(pilot);
                pilot.say("masks");
              }),
          new Scene(
              "masks",
              pilot -> {
                ShopWeeks.log(pilot);
                ShopGear.add(pilot);
                pilot.say("masks").press("Right", "Down");
              }),
          new Scene(
              "plan",
              pilot -> {
                ShopDay.log(pilot);
                pilot.say("plan").paste("40m orbital sanding of oak").press("Enter");
                pilot.press("Enter").paste("40m orbital sanding of oak with tool vacuum");
                pilot.press("Enter", "Up");
              }),
          new Scene(
              "plan-asked",
              pilot -> {
                ShopDay.log(pilot);
                pilot.say("plan").type("40m router t");
              }),
          new Scene(
              "evidence",
              pilot -> {
                ShopWeeks.log(pilot);
                ShopSamples.add(pilot);
                pilot.say("evidence");
              }),
          new Scene(
              "cautions-aside",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Ctrl-O");
              }));

  private static void lacquered(Pilot pilot) {
    ShopDay.log(pilot);
    pilot
        .type("20m finishing with doors open using 250ml lacquer and 50ml thinner at 11:40")
        .press("Enter");
  }

  private static void logged(Pilot pilot, String... lines) {
    pilot.open();
    for (String line : lines) {
      pilot.type(line).press("Enter");
    }
    pilot.press("Up");
  }

  static Stream<Arguments> scenes() {
    return SCENES.stream().flatMap(s -> Stream.of(Look.values()).map(look -> arguments(s, look)));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void every_screen_is_as_it_was_accepted_at_every_size(Scene scene, Look look) throws IOException {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"), Size.USUAL, look)) {
      scene.story().accept(pilot);
      for (Size size : SIZES) {
        pilot.resize(size.columns(), size.rows());
        check(scene, look, size, pilot.screen());
      }
    }
  }

  private static void check(Scene scene, Look look, Size size, String screen) throws IOException {
    if (look == Look.ASCII) {
      assertThat(screen.chars()).allMatch(c -> c == '\n' || (c >= ' ' && c < 127));
    }
    assertThat(screen.toLowerCase(Locale.ROOT)).doesNotContain("safe");
    String folder = look == Look.ASCII ? "ascii/" : "";
    Golden.check(folder + scene.name() + "-" + size.columns() + "x" + size.rows(), screen);
  }
}
