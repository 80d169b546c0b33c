package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.List;
import motebook.model.Action;
import motebook.model.FitRecord.FaceChange;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.Refusal;
import motebook.screen.state.CareSheet.Tab;
import motebook.screen.state.Focus;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Masks and filters on the screen: what is due, settled with one key and a yes. */
class CareKeysTest {
  @TempDir Path folder;
  private Pilot pilot;

  private static final List<Double> FACTORS = List.of(200.0, 150.0);

  @BeforeEach
  void open() {
    pilot = new Pilot(folder.resolve("book.db"));
    ShopWeeks.log(pilot);
    ShopGear.add(pilot);
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private void chooseDue(String words) {
    pilot.say("masks");
    int rows = pilot.state().pages().care().rows().size();
    for (int row = 0; row < rows; row++) {
      if (pilot.state().pages().care().row().orElseThrow().told().contains(words)) {
        return;
      }
      pilot.press("Down");
    }
    throw new AssertionError("nothing due is told with " + words);
  }

  @Test
  void a_session_or_a_mask_that_is_gone_is_refused_in_words() {
    Doing doing = new Doing(pilot.book(), LocalDate.of(2026, 3, 2));
    assertThatThrownBy(() -> doing.done(new Action.WearInSession(999, "half mask")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("no session with the number 999");
    assertThatThrownBy(() -> doing.done(new Action.RecordSealCheck(999)))
        .isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> doing.done(new Action.WearInSession(1, "gone")))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("gone");
    assertThatThrownBy(() -> doing.done(new Action.RecordSealCheck(1)))
        .isInstanceOf(Refusal.class)
        .hasMessage("No respirator was worn in session 1.");
  }

  @Test
  void the_line_says_what_is_left_out_of_its_figures() throws Exception {
    pilot.type("20m drilling of oak at 7:00").press("Enter");
    long id = pilot.book().lastSessionOf("me").orElseThrow().id();
    try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.db"));
        Statement statement = raw.createStatement()) {
      statement.executeUpdate("DROP TRIGGER session_updated");
      statement.executeUpdate("UPDATE session SET minutes = 21 WHERE id = " + id);
    }
    pilot.type("20m drilling of oak at 6:00");
    assertThat(pilot.screen()).contains("Session " + id + " is left out. What is left out is in");
  }

  @Test
  void what_is_due_is_flagged_on_every_page_and_listed() {
    pilot.say("masks");
    assertThat(pilot.screen()).contains("What is due").contains("clean bag, shop");
    long due = pilot.state().pages().care().page().orElseThrow().pressing();
    assertThat(due).isPositive();
    assertThat(pilot.press("Home").screen()).contains("! " + due + " due (masks)");
    assertThat(pilot.say("week").screen()).contains("! " + due + " due (masks)");
    assertThat(pilot.press("?").screen()).contains("! " + due + " due (masks)");
  }

  @Test
  void a_due_thing_is_settled_with_one_key_and_a_yes_and_can_be_taken_back() {
    chooseDue("clean bag");
    pilot.press("Enter");
    assertThat(pilot.screen()).contains("Is bag cleaned now?");
    pilot.press("Escape");
    assertThat(pilot.state().focus()).isEqualTo(Focus.CARE);
    assertThat(pilot.book().gear().upkeepOf("bag")).isEmpty();
    pilot.press("Enter", "y", "Enter");
    assertThat(pilot.book().gear().upkeepOf("bag")).hasSize(1);
    assertThat(pilot.screen()).contains("Recorded.").contains("soon        2026-03-0");
    pilot.press("Ctrl-Z", "y", "Enter");
    assertThat(pilot.book().gear().upkeepOf("bag")).isEmpty();
  }

  @Test
  void a_medical_evaluation_is_written_down_for_its_person() {
    pilot.type("20m drilling of oak at 7:00 wearing half mask checked").press("Enter");
    chooseDue("medical evaluation, me");
    pilot.press("Enter", "y", "Enter");
    assertThat(pilot.book().gear().fit(motebook.model.FitRecord.Medical.class, "me")).hasSize(1);
  }

  @Test
  void an_element_is_changed_or_retired_at_once_from_the_page_of_masks() {
    pilot.say("masks").press("Right");
    assertThat(pilot.state().pages().care().tab()).isEqualTo(Tab.MASKS);
    assertThat(pilot.screen()).contains("half mask").contains("pads").contains("fit-tested");
    pilot.press("Down", "Enter");
    assertThat(pilot.screen())
        .contains("pads: changed for a fresh one, on the mask from 2026-03-04?");
    pilot.press("y", "Enter");
    assertThat(pilot.book().gear().elements()).hasSize(3);
    pilot.press("Delete");
    assertThat(pilot.screen()).contains("Take \"pads\" off for good?");
    pilot.press("y", "Enter");
    assertThat(pilot.screen()).contains("Retired pads (damaged, soiled or hard to breathe)");
    assertThat(pilot.book().gear().elementsOn("half mask", Pilot.NOON.toLocalDate())).hasSize(1);
  }

  @Test
  void a_mask_tells_how_it_fits_each_person_by_the_latest_test_alone() {
    LocalDate today = Pilot.NOON.toLocalDate();
    pilot.book().fits().note(new FitTest(0, "half mask", "me", today, new Quantitative(FACTORS)));
    pilot.pass(0);
    pilot.say("masks").press("Right");
    assertThat(pilot.screen())
        .containsOnlyOnce("was fit-tested with it on")
        .contains("me was fit-tested with it on %s; that holds".formatted(today));
    pilot.book().fits().note(new FaceChange(0, "me", today, FaceChange.What.WEIGHT));
    FitTest failed = new FitTest(0, "half mask", "me", today, new Qualitative("saccharin", false));
    pilot.book().fits().note(failed);
    pilot.pass(0);
    pilot.say("masks").press("Right");
    assertThat(pilot.screen()).contains("was not passed.").doesNotContain("that holds");
  }

  @Test
  void the_filters_of_the_shop_show_how_far_they_have_run() {
    pilot.say("masks").press("Left");
    assertThat(pilot.state().pages().care().tab()).isEqualTo(Tab.SHOP);
    assertThat(pilot.screen()).contains("bag").contains("run hours since it was cleaned");
    pilot.press("Delete");
    assertThat(pilot.screen()).contains("That is for an element on a mask.");
  }

  /** The collector ran 16 h: a cleaning is due after 1 h, a change after 400 h. */
  @Test
  void each_clock_of_what_is_pointed_at_has_a_gauge_of_its_own() {
    pilot.say("masks").press("Left");
    for (int[] size : new int[][] {{120, 40}, {80, 24}, {60, 15}}) {
      assertThat(pilot.resize(size[0], size[1]).screen().lines())
          .anySatisfy(
              line -> assertThat(line).matches(" █{12} 999% run hours since it was clean.*"))
          .anySatisfy(
              line -> assertThat(line).matches(" ·{12}   4% run hours since it was repla.*"));
    }
  }

  @Test
  void a_book_without_masks_says_how_to_add_one() {
    try (Pilot empty = new Pilot(folder.resolve("other.db"))) {
      empty.open().say("masks");
      assertThat(empty.screen()).contains("Nothing is due.");
      String said = empty.press("Right").screen().replaceAll("\\s+", " ");
      assertThat(said).contains("in a shell, after quit: motebook gear add respirator");
    }
  }
}
