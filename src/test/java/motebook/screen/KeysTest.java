package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import motebook.screen.state.Binding;
import motebook.screen.state.Bindings;
import motebook.screen.state.Focus;
import motebook.screen.state.Key;
import motebook.screen.state.Message;
import motebook.screen.state.State;
import motebook.screen.state.Step;
import motebook.screen.state.Update;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeysTest {
  private static final Set<Focus> TYPED_IN = Set.of(Focus.LINE, Focus.PROMPT, Focus.FORM);

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

  // A state in which every key of the focus has something to act on.
  static void reach(Pilot pilot, Focus focus) {
    ShopDay.log(pilot);
    pilot.press("Up", "Up", "k").type("First").press("Enter", "Other");
    Consumer<Pilot> story =
        switch (focus) {
          case DAY -> any -> {};
          case LINE -> p -> p.press("Enter", "Up", "Left", "Left");
          case WEEK -> p -> p.press("w", "Up");
          case FORM -> p -> p.press("f", "Down").type("x");
          case PROMPT -> p -> p.press("s").type("orb sand of m").press("Left", "Left");
          case FAVOURITES -> p -> threeFavourites(p).press("v", "Down");
          case FOUND -> p -> p.press("/").type("an").press("Enter", "Down");
          case CARE ->
              p -> {
                ShopGear.add(p);
                p.press("m", "Right", "Down");
              };
          case EVIDENCE ->
              p -> {
                ShopSamples.add(p);
                p.press("i", "Down");
              };
          case PLAN -> p -> threePlans(p).press("Up", "Page-Down");
          case QUESTION -> p -> p.press("u");
          case NOTES -> p -> p.press("n", "Down", "Down");
          case HELP -> p -> p.press("?", "Down", "Down");
          case WORDS -> p -> p.press("?", "w", "Down");
        };
    story.accept(pilot);
    assertThat(pilot.state().focus()).isEqualTo(focus);
  }

  private static Pilot threeFavourites(Pilot pilot) {
    pilot.press("k").type("Second").press("Enter");
    return pilot.press("k").type("Third").press("Enter");
  }

  private static Pilot threePlans(Pilot pilot) {
    pilot.press("b").paste("2h orbital sanding of mdf at 13:00").press("Enter");
    pilot.press("Enter").paste("2h block sanding of mdf at 13:00").press("Enter");
    return pilot.press("Enter").paste("2h table saw of mdf at 13:00").press("Enter");
  }

  private static boolean works(State state, Key key) {
    Step step = Update.update(state, new Message.Pressed(key));
    return !step.state().equals(state) || !step.tasks().isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Focus.class)
  void every_key_that_is_listed_works_and_every_key_that_works_is_listed(Focus focus) {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      reach(pilot, focus);
      Set<Key> working =
          everyKey().stream()
              .filter(key -> works(pilot.state(), key))
              .filter(key -> !(TYPED_IN.contains(focus) && key.types()))
              .collect(Collectors.toSet());
      Set<Key> listed =
          Bindings.of(focus).stream()
              .flatMap(binding -> binding.keys().stream())
              .collect(Collectors.toSet());
      assertThat(working).containsExactlyInAnyOrderElementsOf(listed);
    }
  }

  @ParameterizedTest
  @EnumSource(Focus.class)
  void every_listed_key_is_in_the_help_with_what_it_does(Focus focus) {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      pilot.open().resize(120, 250).press("?");
      String help = pilot.screen();
      for (Binding binding : Bindings.of(focus)) {
        assertThat(help.lines())
            .anyMatch(
                line ->
                    line.strip().startsWith(binding.label() + " ")
                        && line.endsWith(" " + binding.help()));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Focus.class)
  void a_wide_window_shows_every_key_that_has_a_word(Focus focus) {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      reach(pilot, focus);
      String keys = pilot.resize(300, 24).screen().lines().reduce((a, b) -> b).orElseThrow();
      for (Binding binding : Bindings.of(focus)) {
        if (binding.shown()) {
          assertThat(keys).contains(binding.label() + " " + binding.word());
        }
      }
    }
  }

  @Test
  void no_key_is_listed_twice() {
    for (Focus focus : Focus.values()) {
      List<Key> keys = Bindings.of(focus).stream().flatMap(b -> b.keys().stream()).toList();
      assertThat(keys).doesNotHaveDuplicates();
    }
  }
}
