package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import motebook.journal.Book;
import motebook.screen.KeysTest.Stand;
import motebook.screen.state.Focus;
import motebook.screen.state.State;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;
import org.junit.jupiter.api.Assertions;

/**
 * Whatever is typed, wherever and whenever, changes nothing before Enter and stands in the line.
 */
class OpenLinePropertiesTest {
  private static final List<String> SENTENCES =
      List.of(
          "dry sweeping 10 min",
          "assembly 30m",
          "jointer oak",
          "cut plywood",
          "planer pine",
          "undo it",
          "undo",
          "yes",
          "y",
          "quit",
          "delete",
          "stop",
          "start",
          "off",
          "xxx",
          "daceux",
          "40m orbital sanding of oak");

  private static final Map<String, Flight> FLIGHTS = new ConcurrentHashMap<>();

  /** Screens on a book of their own, with a stopwatch under way, as they stood when reached. */
  private record Flight(Pilot pilot, State reached, Object content) {}

  @AfterContainer
  static void land() {
    FLIGHTS.values().forEach(flight -> flight.pilot().close());
    FLIGHTS.clear();
  }

  private static Flight flight(Focus focus, Stand stand) {
    Flight flight = FLIGHTS.computeIfAbsent(focus + " " + stand, any -> begun(focus, stand));
    flight.pilot().back(flight.reached());
    return flight;
  }

  private static Flight begun(Focus focus, Stand stand) {
    try {
      Path book = Files.createTempDirectory("typed").resolve("book.db");
      Pilot pilot = new Pilot(book);
      boolean asked = stand == Stand.ASKED && !focus.isFilledIn();
      boolean empty = asked || focus.isFilledIn();
      KeysTest.reach(pilot, focus, empty ? Stand.EMPTY : stand);
      pilot.book().stopwatches().start("me", "table saw of oak");
      pilot.pass(1);
      // The question is about the last change, so that a yes would do what it asks.
      pilot.press(asked ? new String[] {"Ctrl-Z"} : new String[] {});
      return new Flight(pilot, pilot.state(), content(pilot.book()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All that was ever written. */
  private static Object content(Book book) {
    return List.of(book.changes().history(1000), book.stopwatches().all());
  }

  @Provide
  Arbitrary<String> texts() {
    Arbitrary<Character> characters =
        Arbitraries.chars().range(' ', '~').with("äöüßéøñçµ³½".toCharArray());
    return Arbitraries.oneOf(
        Arbitraries.of(SENTENCES),
        characters.list().ofMaxSize(24).map(OpenLinePropertiesTest::text));
  }

  private static String text(List<Character> characters) {
    StringBuilder text = new StringBuilder();
    characters.forEach(text::append);
    return text.toString();
  }

  @Property(tries = 600)
  void
      nothing_typed_changes_the_book_on_any_page_with_the_line_open_or_closed_or_a_question_standing(
          @ForAll Focus focus, @ForAll Stand stand, @ForAll("texts") String text) {
    Flight flight = flight(focus, stand);
    flight.pilot().type(text);
    assertThat(content(flight.pilot().book())).isEqualTo(flight.content());
    assertThat(flight.pilot().state().over()).isFalse();
  }

  @Property(tries = 600)
  void nothing_typed_with_the_line_closed_changes_the_book_at_the_next_enter_either(
      @ForAll Focus focus, @ForAll("texts") String text) {
    if (focus.isFilledIn()) {
      return;
    }
    Flight flight = flight(focus, Stand.CLOSED);
    flight.pilot().type(text);
    // A digit opens the line in plain sight; what is typed then is a line like any other.
    if (!flight.pilot().state().typing()) {
      flight.pilot().press("Enter");
    }
    assertThat(content(flight.pilot().book())).isEqualTo(flight.content());
  }

  @Property(tries = 400)
  void what_is_typed_stands_in_the_open_line_unaltered(
      @ForAll Focus focus, @ForAll boolean asked, @ForAll("texts") String text) {
    if (focus.isFilledIn() || text.startsWith("?")) {
      return;
    }
    Flight flight = flight(focus, asked ? Stand.ASKED : Stand.EMPTY);
    flight.pilot().type(text);
    assertThat(flight.pilot().state().line().text()).isEqualTo(text);
    assertThat(flight.pilot().state().focus()).isEqualTo(focus);
  }

  @Property(tries = 200)
  void a_question_is_answered_by_y_n_or_no_and_enter_alone(
      @ForAll Focus focus, @ForAll("texts") String text) {
    boolean answered = List.of("y", "n", "no").contains(text.toLowerCase(Locale.ROOT));
    if (focus.isFilledIn() || answered || text.startsWith("?")) {
      return;
    }
    Flight flight = flight(focus, Stand.ASKED);
    flight.pilot().type(text);
    Optional<?> question = flight.pilot().state().question();
    assertThat(question.isPresent()).isEqualTo(text.isEmpty());
  }

  @Property(tries = 100)
  void the_questions_of_the_first_run_write_nothing_before_enter(@ForAll("texts") String text) {
    Flight flight = FLIGHTS.computeIfAbsent("first run", any -> first());
    flight.pilot().back(flight.reached());
    flight.pilot().type(text);
    assertThat(content(flight.pilot().book())).isEqualTo(flight.content());
    assertThat(flight.pilot().book().settings().person()).isEqualTo("me");
  }

  private static Flight first() {
    try {
      Pilot pilot = new Pilot(Files.createTempDirectory("typed").resolve("book.db"));
      pilot.openFresh();
      Assertions.assertEquals(Focus.FORM, pilot.state().focus());
      return new Flight(pilot, pilot.state(), content(pilot.book()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
