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
                pilot.press("w");
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
                pilot.press("u");
              }),
          new Scene(
              "notes",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("n");
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
                pilot.press("w");
              }),
          new Scene(
              "form",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Up", "Up", "e", "Down", "Down").press("Ctrl-U").type("ma");
              }),
          new Scene(
              "form-at-fault",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("f").type("20m").press("Down").type("drillong");
              }),
          new Scene("settings", pilot -> pilot.open().press("o", "Down", "Down", "Right")),
          new Scene(
              "favourites",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("Up", "k").type("Sweep up").press("Enter");
                pilot.press("Up", "k").type("Carcass").press("Enter", "v", "Down");
              }),
          new Scene(
              "found",
              pilot -> {
                ShopWeeks.log(pilot);
                pilot.press("/").type("sanding").press("Enter", "Down");
              }),
          new Scene(
              "stopwatch",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("s").type("table saw of oak with collector").press("Enter").pass(23);
              }),
          new Scene(
              "starting",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("s").type("table saw of o");
              }),
          new Scene(
              "due",
              pilot -> {
                ShopWeeks.log(pilot);
                ShopGear.add(pilot);
                pilot.press("m");
              }),
          new Scene(
              "masks",
              pilot -> {
                ShopWeeks.log(pilot);
                ShopGear.add(pilot);
                pilot.press("m", "Right", "Down");
              }),
          new Scene(
              "plan",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("b").paste("40m orbital sanding of oak").press("Enter");
                pilot.press("Enter").paste("40m orbital sanding of oak with tool vacuum");
                pilot.press("Enter", "Up");
              }),
          new Scene(
              "plan-asked",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("b").type("40m router t");
              }),
          new Scene(
              "evidence",
              pilot -> {
                ShopWeeks.log(pilot);
                ShopSamples.add(pilot);
                pilot.press("i");
              }),
          new Scene(
              "cautions-aside",
              pilot -> {
                ShopDay.log(pilot);
                pilot.press("c");
              }));

  private static void lacquered(Pilot pilot) {
    ShopDay.log(pilot);
    pilot
        .type("20m finishing with doors open using 250ml lacquer and 50ml thinner at 11:40")
        .press("Enter");
    pilot.press("Escape");
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
