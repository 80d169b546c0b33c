package motebook.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import motebook.journal.Book;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screens follow a person to another name, whoever gave it. */
class RenamedTest {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  @TempDir Path folder;
  private Pilot pilot;

  @BeforeEach
  void open() {
    pilot = new Pilot(folder.resolve("book.db"));
  }

  @AfterEach
  void close() {
    pilot.close();
  }

  private void rename(String name) {
    pilot.say("settings").press("Ctrl-U").type(name).press("Enter");
  }

  private void logsFor(String name) {
    assertThat(pilot.screen()).contains("today  " + name + "  ");
    pilot.type("20m assembly at 8:00").press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
    assertThat(pilot.book().sessionsOn(TODAY).get(0).work().person()).isEqualTo(name);
  }

  private void elsewhere(String old, String name) {
    Clock noon = Clock.fixed(Pilot.NOON.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
    try (Book other = Book.open(folder.resolve("book.db"), noon)) {
      other.premises().renamePerson(old, name);
    }
  }

  @Test
  void the_name_given_at_the_first_run_is_who_logs_from_then_on() {
    pilot.openFresh().press("Ctrl-U").type("Ned").press("Enter");
    logsFor("Ned");
  }

  @Test
  void the_name_changed_in_the_settings_is_who_logs_from_then_on() {
    pilot.open();
    rename("Ned");
    logsFor("Ned");
  }

  @Test
  void a_rename_that_is_taken_back_brings_the_old_name_back() {
    pilot.open();
    rename("Ned");
    pilot.press("Ctrl-Z", "y", "Enter");
    logsFor("me");
  }

  @Test
  void a_rename_in_another_window_is_followed_at_the_next_look() {
    pilot.open();
    elsewhere("me", "Ned");
    pilot.pass(0);
    logsFor("Ned");
  }

  @Test
  void a_line_that_is_being_typed_is_read_again_for_the_new_name() {
    pilot.open().type("20m assembly at 8:00");
    elsewhere("me", "Ned");
    pilot.pass(0);
    assertThat(pilot.screen()).contains("by Ned at 08:00");
    pilot.press("Enter");
    assertThat(pilot.book().sessionsOn(TODAY)).hasSize(1);
  }

  @Test
  void the_week_follows_to_the_new_name_too() {
    pilot.open().type("60m orbital sanding of oak at 8:00").press("Enter").say("week");
    elsewhere("me", "Ned");
    pilot.pass(0);
    assertThat(pilot.state().week().current("Ned")).isPresent();
    assertThat(pilot.screen()).contains("Ned").contains("Wed 4   3.13");
  }

  @Test
  void whoever_is_no_longer_known_gives_way_to_the_books_own_person() {
    pilot.book().premises().addPerson("Ana");
    pilot.open().say("person");
    assertThat(pilot.state().sheet().person()).isEqualTo("Ana");
    elsewhere("Ana", "Anna");
    pilot.pass(0);
    logsFor("me");
  }
}
