package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Focus;
import motebook.screen.state.Key;
import motebook.screen.state.Message;
import motebook.screen.state.State;
import motebook.screen.state.Step;
import motebook.screen.state.Task;
import motebook.screen.state.Update;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class KeysTest {
  @TempDir Path folder;

  private static List<Key> everyKey() {
    List<Key> keys = new ArrayList<>();
    IntStream.range(' ', 127).mapToObj(Key::of).forEach(keys::add);
    for (char letter = 'a'; letter <= 'z'; letter++) {
      keys.add(Key.control(letter));
    }
    for (Key.Name name : Key.Name.values()) {
      if (name != Key.Name.CHARACTER && name != Key.Name.CONTROL && name != Key.Name.CLOSED) {
        keys.add(Key.of(name));
      }
    }
    return keys;
  }

  /** How the line stands while keys are pressed. */
  enum Stand {
    EMPTY,
    TYPED,
    CLOSED,
    ASKED
  }

  // A state in which every key of the page has something to act on.
  static void reach(Pilot pilot, Focus focus) {
    ShopDay.log(pilot);
    pilot.press("Up", "Up", "Ctrl-K").type("First").press("Enter", "Other");
    Consumer<Pilot> story =
        switch (focus) {
          case DAY -> any -> {};
          case WEEK -> p -> p.say("week").press("Up");
          case FORM -> p -> p.say("form").press("Down").type("x");
          case PROMPT -> p -> p.press("Ctrl-T").type("orb sand of m").press("Left", "Left");
          case FAVOURITES -> p -> threeFavourites(p).say("favourites").press("Down");
          case FOUND -> p -> p.say("find").type("an").press("Enter", "Down");
          case CARE ->
              p -> {
                ShopGear.add(p);
                p.say("masks").press("Right", "Down");
              };
          case EVIDENCE ->
              p -> {
                ShopSamples.add(p);
                p.say("evidence").press("Down");
              };
          case PLAN -> p -> threePlans(p).press("Up", "Page-Down");
          case NOTES -> p -> p.say("notes").press("Down", "Down");
          case HELP -> p -> p.press("?", "Down", "Down");
          case WORDS -> p -> p.press("Ctrl-N", "Down");
        };
    story.accept(pilot);
    assertThat(pilot.state().focus()).isEqualTo(focus);
  }

  private static Pilot threeFavourites(Pilot pilot) {
    pilot.press("Ctrl-K").type("Second").press("Enter");
    return pilot.press("Ctrl-K").type("Third").press("Enter");
  }

  private static Pilot threePlans(Pilot pilot) {
    pilot.say("plan").paste("2h orbital sanding of mdf at 13:00").press("Enter");
    pilot.press("Enter").paste("2h block sanding of mdf at 13:00").press("Enter");
    return pilot.press("Enter").paste("2h table saw of mdf at 13:00").press("Enter");
  }

  /** The same with the line as it may stand; false where it cannot stand so. */
  static boolean reach(Pilot pilot, Focus focus, Stand stand) {
    if (focus.isFilledIn() && stand != Stand.EMPTY) {
      return false;
    }
    reach(pilot, focus);
    switch (stand) {
      case TYPED -> typed(pilot, focus);
      case ASKED -> pilot.press("Ctrl-Z");
      case CLOSED -> closed(pilot, focus);
      default -> {}
    }
    assertThat(pilot.state().focus()).isEqualTo(focus);
    assertThat(pilot.state().where().open()).isEqualTo(stand != Stand.CLOSED);
    assertThat(pilot.state().typing()).isEqualTo(stand == Stand.TYPED);
    assertThat(pilot.state().question().isPresent()).isEqualTo(stand == Stand.ASKED);
    return true;
  }

  // A line said before, with the caret within it and with one before and one after it.
  private static void typed(Pilot pilot, Focus focus) {
    boolean turns = focus == Focus.WORDS;
    pilot.press(turns ? new String[] {"Escape"} : new String[] {});
    pilot.press("Ctrl-P", "Ctrl-P", "Left", "Left");
    pilot.press(turns ? new String[] {"Ctrl-N", "Down"} : new String[] {});
  }

  // Escape closes what lies over a page, and then the line.
  private static void closed(Pilot pilot, Focus focus) {
    pilot.press("Escape");
    switch (focus) {
      case FAVOURITES -> pilot.press("Escape", "v", "Down");
      case FOUND -> pilot.press("Escape", "/").type("an").press("Enter", "Down");
      case NOTES -> pilot.press("Escape", "n", "Down", "Down");
      case HELP -> pilot.press("Escape", "?", "Down", "Down");
      case WORDS -> pilot.press("Escape", "Ctrl-N", "Down");
      default -> {}
    }
  }

  private static boolean works(State state, Key key) {
    Step step = Update.update(state, new Message.Pressed(key));
    return !step.state().equals(state) || !step.tasks().isEmpty();
  }

  static Stream<Arguments> everywhere() {
    return Stream.of(Focus.values())
        .flatMap(focus -> Stream.of(Stand.values()).map(stand -> Arguments.of(focus, stand)))
        .filter(it -> !((Focus) it.get()[0]).isFilledIn() || it.get()[1] == Stand.EMPTY);
  }

  @ParameterizedTest
  @MethodSource("everywhere")
  void every_key_that_is_listed_works_and_every_key_that_works_is_listed(Focus focus, Stand stand) {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      reach(pilot, focus, stand);
      boolean typed = stand != Stand.CLOSED;
      Set<Key> working =
          everyKey().stream()
              .filter(key -> works(pilot.state(), key))
              .filter(key -> !(typed && key.types()))
              .collect(Collectors.toSet());
      Set<Key> listed =
          Bindings.of(pilot.state()).stream()
              .flatMap(binding -> binding.keys().stream())
              .filter(key -> !(typed && key.types()))
              .collect(Collectors.toSet());
      if (stand == Stand.ASKED) {
        // Every other key closes the question and does what it does without one.
        assertThat(working).containsAll(listed);
      } else {
        assertThat(working).containsExactlyInAnyOrderElementsOf(listed);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everywhere")
  void every_listed_key_is_in_the_help_with_what_it_does(Focus focus, Stand stand) {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      reach(pilot, focus, stand);
      List<Binding> listed = Bindings.of(pilot.state());
      pilot.press("F1", "F1").resize(120, 350);
      if (pilot.state().focus() != Focus.HELP) {
        pilot.press("F1");
      }
      List<String> help = pilot.screen().lines().toList();
      for (Binding binding : listed) {
        assertThat(help)
            .anyMatch(
                line ->
                    line.strip().startsWith(binding.label() + " ")
                        && line.endsWith(" " + binding.help()));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everywhere")
  void a_wide_window_shows_every_key_that_has_a_word(Focus focus, Stand stand) {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      reach(pilot, focus, stand);
      String keys = pilot.resize(400, 15).screen().lines().reduce((a, b) -> b).orElseThrow();
      for (Binding binding : Bindings.of(pilot.state())) {
        if (binding.shown()) {
          assertThat(keys).contains(binding.label() + " " + binding.word());
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everywhere")
  void no_key_is_listed_twice(Focus focus, Stand stand) {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      reach(pilot, focus, stand);
      List<Key> keys = Bindings.of(pilot.state()).stream().flatMap(b -> b.keys().stream()).toList();
      assertThat(keys).doesNotHaveDuplicates();
    }
  }

  @Test
  void no_letter_of_a_closed_line_asks_for_a_change_of_the_book() {
    Set<Class<? extends Task>> changing =
        Set.of(
            Task.LogLine.class,
            Task.LogLines.class,
            Task.LogAgain.class,
            Task.LogAtOnce.class,
            Task.Undo.class,
            Task.Delete.class,
            Task.SaveForm.class,
            Task.SetAside.class,
            Task.BringBack.class,
            Task.Start.class,
            Task.PauseOrGoOn.class,
            Task.Stop.class,
            Task.EndStretch.class,
            Task.AddFavourite.class,
            Task.RemoveFavourite.class,
            Task.Settle.class,
            Task.Damaged.class);
    for (Focus focus : Focus.values()) {
      try (Pilot pilot = new Pilot(folder.resolve(focus + ".db"))) {
        if (reach(pilot, focus, Stand.CLOSED)) {
          for (Key key : everyKey()) {
            Step step = Update.update(pilot.state(), new Message.Pressed(key));
            assertThat(key.types() ? step.tasks() : List.of())
                .noneMatch(task -> changing.contains(task.getClass()));
            assertThat(key.types() && step.state().question().isPresent()).isFalse();
          }
        }
      }
    }
  }
}
