package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import motebook.model.FitRecord.FitTest;
import motebook.model.FitRecord.Qualitative;
import motebook.model.FitRecord.Quantitative;
import motebook.model.Respirator;
import motebook.model.Scheme;
import motebook.screen.state.Focus;
import motebook.screen.state.Form;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Masks, their elements and fit tests are put into the book from the page of masks. */
class GearFormTest {
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

  private void addMask() {
    pilot.say("masks").press("Right").say("add mask").type("my mask").press("Enter");
  }

  private List<FitTest> fitTests() {
    return pilot.book().gear().fitTests("me", "my mask");
  }

  @Test
  void a_respirator_is_added_by_its_name_alone() {
    addMask();
    assertThat(pilot.state().focus()).isEqualTo(Focus.CARE);
    assertThat(pilot.screen()).contains("Added my mask.").contains(" > my mask");
    Respirator mask = pilot.book().rack().respirator("my mask");
    assertThat(mask.facepiece()).isEqualTo("half mask");
    assertThat(mask.people()).containsExactly("me");
  }

  @Test
  void a_mask_that_is_set_up_on_the_screens_alone_is_credited() {
    addMask();
    pilot.say("add element").press("Down").type("pads").press("Enter");
    pilot.say("fit test").press("Down", "Down", "Down").type("passed").press("Enter");
    assertThat(pilot.screen()).contains("Written down: the fit test with my mask of me");
    pilot.type("60m orb sand of oak wearing my mask checked at 9:00");
    pilot.press("Enter");
    assertThat(pilot.state().sheet().current().orElseThrow().report().sessions().get(0).credit())
        .satisfies(credit -> assertThat(credit.apf()).isEqualTo(10));
  }

  @Test
  void a_fit_test_that_is_due_opens_its_form_on_enter() {
    addMask();
    pilot.say("masks");
    while (!pilot.state().pages().care().row().orElseThrow().told().contains("fit test")) {
      pilot.press("Down");
    }
    pilot.press("Enter");
    Form form = pilot.state().pages().form().orElseThrow();
    assertThat(form.kind()).isEqualTo(Form.Kind.FIT_TEST);
    assertThat(form.text("mask")).isEqualTo("my mask");
    pilot.press("Down", "Down", "Down").type("200,180,150").press("Enter");
    assertThat(fitTests())
        .extracting(FitTest::method)
        .containsExactly(new Quantitative(List.of(200.0, 180.0, 150.0)));
    assertThat(pilot.screen()).doesNotContain("fit test with my mask, me");
  }

  @Test
  void a_mask_that_is_worn_without_an_element_opens_the_form_of_one_on_enter() {
    addMask();
    pilot.type("20m assembly wearing my mask at 9:00").press("Enter").say("masks");
    while (!pilot.state().pages().care().row().orElseThrow().told().contains("element for")) {
      pilot.press("Down");
    }
    pilot.press("Enter", "Down").type("pads").press("Enter");
    assertThat(pilot.book().gear().elementsOn("my mask", TODAY)).hasSize(1);
  }

  @Test
  void a_failed_test_of_another_day_is_written_down_as_that() {
    addMask();
    pilot
        .say("fit test")
        .press("Down", "Down")
        .type("yesterday")
        .press("Down")
        .type("failed")
        .press("Enter");
    assertThat(fitTests()).hasSize(1);
    assertThat(fitTests().get(0).date()).isEqualTo(TODAY.minusDays(1));
    assertThat(fitTests().get(0).method()).isEqualTo(new Qualitative("saccharin", false));
  }

  @Test
  void a_full_mask_under_the_uk_rule_takes_no_passed_test_by_taste() {
    pilot.say("add mask").type("my mask").press("Down").type("full facepiece");
    pilot.press("Down", "Down").type("uk").press("Enter");
    assertThat(pilot.book().rack().respirator("my mask").scheme()).isEqualTo(Scheme.UK);
    pilot.say("fit test").press("Down", "Down", "Down").type("passed").press("Enter");
    assertThat(pilot.screen()).contains("> result").contains("A fit test by taste or smell");
    assertThat(fitTests()).isEmpty();
  }

  @Test
  void a_finish_that_is_sprayed_is_answered_with_its_mist() {
    pilot.type("20m spraying using 100ml lacquer at 9:00").press("Enter");
    assertThat(pilot.state().notice().toString()).contains("Overspray mist is not estimated");
  }

  @Test
  void a_field_at_fault_is_gone_to_and_nothing_is_written() {
    addMask();
    pilot.say("fit test").press("Enter");
    assertThat(pilot.screen()).contains("> result").contains("Say passed or failed");
    pilot.press("Escape");
    assertThat(pilot.state().focus()).isEqualTo(Focus.CARE);
    assertThat(fitTests()).isEmpty();
    pilot.say("add element").press("Down").type("pads").press("Down").type("Q9").press("Enter");
    assertThat(pilot.screen()).contains("> class").contains("is no class of element");
    assertThat(pilot.book().gear().elements()).isEmpty();
  }

  @Test
  void a_mask_added_by_mistake_is_taken_back() {
    addMask();
    pilot.press("Ctrl-Z", "y", "Enter");
    assertThat(pilot.book().rack().respiratorNames()).isEmpty();
  }

  @Test
  void the_form_refuses_a_cartridge_on_a_filtering_facepiece() {
    pilot.say("add mask").type("cup").press("Down").type("filtering facepiece").press("Enter");
    assertThat(pilot.book().rack().respirator("cup").facepiece()).isEqualTo("filtering facepiece");
    pilot.say("add element").press("Down").type("pads").press("Down").type("OV/N95");
    pilot.press("Enter");
    assertThat(pilot.screen()).contains("holds particles only");
    assertThat(pilot.book().gear().elements()).isEmpty();
  }
}
