package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import motebook.model.Surroundings.Indoors;
import motebook.screen.state.Focus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody meets who learns the program from its screens alone. */
class NewcomerTest {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  @TempDir Path folder;
  private Pilot pilot;

  @BeforeEach
  void open() {
    pilot = new Pilot(folder.resolve("book.db")).open();
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private String words() {
    return pilot.screen().replaceAll("\\s+", " ");
  }

  private int minutesLeft() {
    return pilot
        .state()
        .sheet()
        .current()
        .orElseThrow()
        .timing()
        .orElseThrow()
        .minutesLeft()
        .orElseThrow();
  }

  @Test
  void an_empty_book_says_to_begin_with_the_time() {
    assertThat(words()).contains("begin with the time, such as 40m").doesNotContain("just begin");
  }

  @Test
  void what_is_typed_into_a_field_just_gone_to_takes_the_place_of_what_stood_there() {
    pilot.say("settings").press("Down", "Down", "Down").type("70").press("Enter");
    assertThat(words()).contains("Changed: shop");
    Indoors shop =
        (Indoors) pilot.book().premises().place("shop", TODAY).orElseThrow().surroundings();
    assertThat(shop.volumeM3()).isEqualTo(70);
  }

  @Test
  void a_form_that_a_letter_opened_takes_no_letters_before_a_field_is_gone_to() {
    pilot.press("Escape").type("stop").press("Enter");
    assertThat(pilot.book().settings().person()).isEqualTo("me");
    assertThat(pilot.state().focus()).isEqualTo(Focus.FORM);
    pilot.press("Escape").type("op");
    assertThat(words()).contains("Letters change nothing here yet");
    pilot.press("Down").type("Ann").press("Enter");
    assertThat(pilot.book().settings().person()).isEqualTo("Ann");
  }

  @Test
  void a_question_that_is_answered_by_no_leaves_everything_and_an_empty_line() {
    pilot.say("60m orbital sanding of oak at 9:00");
    for (String no : List.of("n", "no", "No")) {
      pilot.press("Delete").type(no);
      assertThat(words()).contains("Enter: leave it as it is");
      pilot.press("Enter");
      assertThat(words()).contains("Nothing was deleted.");
      assertThat(pilot.state().line().text()).isEmpty();
      assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
    }
    pilot.press("Delete").type("now");
    assertThat(pilot.state().question()).isEmpty();
    assertThat(pilot.state().line().text()).isEqualTo("now");
  }

  @Test
  void what_makes_somebody_leave_is_said_in_full_at_every_size() {
    pilot.say("60m finishing using 4000ml lacquer at 9:00");
    for (int[] size : new int[][] {{60, 15}, {80, 24}, {120, 40}}) {
      pilot.resize(size[0], size[1]).press("Up");
      assertThat(words())
          .contains("Leave the area and ventilate:")
          .contains("entering such air is licensed work.");
    }
  }

  @Test
  void backspace_edits_what_stands_in_a_field() {
    pilot.say("settings").press("Backspace").type("y").press("Enter");
    assertThat(pilot.book().settings().person()).isEqualTo("my");
  }

  @Test
  void an_answer_of_the_settings_is_checked_when_its_field_is_left() {
    pilot.say("settings").press("Down", "Down").type("imperial").press("Down");
    assertThat(pilot.screen()).contains("> units").contains("\"imperial\"");
  }

  @Test
  void a_stopwatch_tells_the_minutes_left_from_the_start() {
    pilot.press("Ctrl-T").type("orbital sanding of oak").press("Enter");
    int atFirst = minutesLeft();
    assertThat(words()).contains("Stopwatch 0 min").contains("left before the limit");
    pilot.pass(1);
    assertThat(minutesLeft()).isEqualTo(atFirst - 1);
    assertThat(words()).contains("Day about").contains("If stopped now, fine dust falls");
  }

  @Test
  void a_stopwatch_begun_on_a_day_over_its_limit_says_so_at_once() {
    pilot.type("3h orbital sanding of oak at 8:00").press("Enter");
    pilot.press("Ctrl-T").type("orbital sanding of oak").press("Enter");
    assertThat(words()).contains("The day is over the limit");
  }

  @Test
  void leaving_with_a_stopwatch_running_is_told_that_it_goes_on() {
    assertThat(Parting.words(pilot.book())).isEmpty();
    pilot.press("Ctrl-T").type("table saw of oak").press("Enter", "Ctrl-C");
    assertThat(Parting.words(pilot.book()))
        .contains("The stopwatch goes on; it is in the book (me, table saw of oak).");
    pilot.book().stopwatches().pause("me");
    assertThat(Parting.words(pilot.book())).isEmpty();
  }

  @Test
  void the_form_offers_the_controls_that_serve_the_operation() {
    pilot.say("form").type("20m").press("Down").type("band saw").press("Down", "Down");
    List<String> offered = pilot.state().pages().form().orElseThrow().field().choices();
    assertThat(offered).contains("collector").doesNotContain("tool vacuum");
    pilot.press("Up", "Up", "Ctrl-U").type("orbital sanding").press("Down", "Down");
    assertThat(pilot.state().pages().form().orElseThrow().field().choices())
        .contains("tool vacuum");
  }

  @Test
  void the_day_says_in_words_which_side_of_the_limit_it_probably_is() {
    pilot.type("60m orbital sanding of oak at 9:00").press("Enter");
    assertThat(pilot.screen())
        .contains("Probably over the limit (about 3.13 times); 81 % likely to be over.");
    pilot.press("Delete", "y", "Enter").type("10m drilling of oak at 9:00").press("Enter");
    assertThat(pilot.screen())
        .contains("Probably below the limit (about 0.")
        .contains("; less than 1 % likely to be");
  }

  @Test
  void a_narrow_window_still_shows_how_to_get_help_and_how_to_leave() {
    String keys = pilot.resize(60, 15).screen().lines().toList().get(14);
    assertThat(keys).contains("Enter edit").contains("F1 help").endsWith("Ctrl-C quit");
  }

  @Test
  void below_the_least_size_keys_do_nothing_but_leave() {
    pilot.type("40m").resize(40, 10).type("xyz").press("Enter").paste("60m assembly");
    assertThat(pilot.state().line().text()).isEqualTo("40m");
    pilot.press("Ctrl-C");
    assertThat(pilot.state().over()).isTrue();
  }

  @Test
  void a_favourite_without_a_name_is_told_that_nothing_was_kept() {
    pilot.type("20m assembly at 8:00").press("Enter", "Ctrl-K", "Enter");
    assertThat(pilot.screen()).contains("A favourite needs a name; nothing was kept.");
    assertThat(pilot.book().favourites().all()).isEmpty();
  }

  @Test
  void a_long_title_is_cut_before_the_clock() {
    pilot.say("week").resize(60, 15);
    String title = pilot.screen().lines().findFirst().orElseThrow();
    assertThat(title).contains("… Motebook  12:00");
  }

  private LocalDate gone(String day) {
    pilot.say("go to").type(day).press("Enter");
    return pilot.state().sheet().date();
  }

  @Test
  void a_day_is_gone_to_by_last_and_a_weekday_or_by_day_and_month() {
    assertThat(gone("last tuesday")).isEqualTo(LocalDate.of(2026, 3, 3));
    assertThat(gone("last wednesday")).isEqualTo(LocalDate.of(2026, 2, 25));
    assertThat(gone("17.11.")).isEqualTo(LocalDate.of(2025, 11, 17));
    assertThat(gone("17.11.2024")).isEqualTo(LocalDate.of(2024, 11, 17));
    assertThat(gone("4.3.")).isEqualTo(TODAY);
  }

  @Test
  void a_day_that_can_be_read_two_ways_or_does_not_exist_is_refused() {
    assertThat(gone("11/17")).isEqualTo(TODAY);
    assertThat(words()).contains("could be day and month or month and day");
    pilot.press("Escape");
    assertThat(gone("30.2.")).isEqualTo(TODAY);
    assertThat(words()).contains("is no day");
  }

  @Test
  void the_help_opens_at_the_part_of_the_page_that_one_is_on() {
    pilot.say("masks").press("?");
    assertThat(pilot.screen().lines().toList().get(1)).contains("On masks and filters");
    pilot.press("Escape");
    assertThat(pilot.state().focus()).isEqualTo(Focus.CARE);
    pilot.say("week").press("?");
    assertThat(pilot.screen().lines().toList().get(1)).contains("On the week");
  }

  @Test
  void a_dashed_line_of_the_mask_is_explained_where_there_is_one() {
    ShopGear.add(pilot);
    pilot.type("60m orbital sanding of oak wearing half mask at 9:00").press("Enter");
    assertThat(pilot.screen()).doesNotContain("mask part-time");
    pilot.type("20m drilling of oak wearing half mask 50% at 11:00").press("Enter");
    assertThat(pilot.screen()).contains("┅ mask part-time");
  }

  @Test
  void one_key_in_the_line_shows_the_words_that_can_be_said_there_and_leads_back() {
    pilot.type("20m table saw of oak with ").press("Ctrl-N");
    assertThat(pilot.screen())
        .contains("With what: \"with\" before it")
        .contains("20m table saw of oak with");
    pilot.press("Right");
    assertThat(pilot.screen()).contains("lacquer: gives off 690 g/L of vapour");
    pilot.press("Escape");
    assertThat(pilot.state().focus()).isEqualTo(Focus.DAY);
    pilot.type("coll").press("Tab");
    assertThat(pilot.state().line().text()).isEqualTo("20m table saw of oak with collector");
  }

  @Test
  void the_words_are_a_key_away_from_the_help_and_close_to_where_the_help_was_opened() {
    pilot.type("20m orb").press("F1", "Ctrl-N");
    assertThat(pilot.screen()).contains("orbital sanding: about 25 mg/m³ (9 to 62), grade A");
    pilot.press("Escape");
    assertThat(pilot.state().focus()).isEqualTo(Focus.DAY);
    assertThat(pilot.state().line().text()).isEqualTo("20m orb");
  }

  @Test
  void a_set_of_limits_is_chosen_by_its_figures() {
    pilot.say("settings").press("Down");
    assertThat(pilot.screen()).contains("acgih  1 mg/m³ inhalable, most woods; 0.5 red cedar");
    pilot.press("Right");
    assertThat(pilot.screen()).contains("niosh  1 mg/m³ total, all wood");
    pilot.resize(120, 40);
    assertThat(pilot.screen().lines())
        .anyMatch(line -> line.matches(" +osha +15 mg/m³ total, all wood; 5 mg/m³ respirable, .*"));
  }

  @Test
  void a_wood_without_figures_is_replaced_by_what_stands_for_it_with_one_key() {
    pilot.type("40m table saw of walnut at 9:00");
    assertThat(pilot.screen())
        .contains("There is no material \"walnut\"; hardwood stands for it", "[Tab: hardwood");
    pilot.press("Tab");
    assertThat(pilot.screen()).contains("table saw of hardwood", "at 09:00", "day outside about");
  }
}
