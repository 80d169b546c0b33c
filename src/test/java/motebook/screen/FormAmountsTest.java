package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import motebook.model.Amount;
import motebook.model.Session;
import motebook.model.Work;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Finishes on the screens. */
class FormAmountsTest {
  private static final List<Amount> TWO =
      List.of(new Amount("lacquer", 250), new Amount("lacquer-thinner", 50));

  @TempDir Path folder;

  private static Work only(Pilot pilot) {
    List<Session> sessions = pilot.book().sessionsOn(Pilot.NOON.toLocalDate());
    assertThat(sessions).hasSize(1);
    return sessions.get(0).work();
  }

  @Test
  void a_session_keeps_its_amounts_when_another_field_is_changed_in_the_form() {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      pilot.open().type(line()).press("Enter");
      assertThat(only(pilot).amounts()).isEqualTo(TWO);
      pilot.press("Up", "Enter", "Ctrl-U").type("30m").press("Enter");
      assertThat(only(pilot).minutes()).isEqualTo(30);
      assertThat(only(pilot).amounts()).isEqualTo(TWO);
    }
  }

  @Test
  void the_page_of_notes_tells_of_the_vapour() {
    try (Pilot pilot = new Pilot(folder.resolve("book.db"))) {
      pilot.open().type(line()).press("Enter").say("notes");
      assertThat(pilot.screen())
          .contains("These solvents burn")
          .contains("mixture   outside about");
    }
  }

  private static String line() {
    return "25m finishing using 250ml lacquer and 50ml lacquer thinner at 9:00";
  }
}
