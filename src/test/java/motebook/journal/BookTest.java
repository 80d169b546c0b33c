package motebook.journal;

import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.bare;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Person;
import motebook.model.Place;
import motebook.model.Refusal;
import motebook.model.Session;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;
import motebook.model.Work;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookTest {
  @TempDir Path folder;
  private Book book;

  @BeforeEach
  void open() {
    book = Shop.open(folder);
  }

  @AfterEach
  void close() {
    book.close();
  }

  @Test
  void a_fresh_book_holds_me_the_shop_the_yard_and_the_settings() {
    assertThat(book.premises().people()).containsExactly(new Person(1, "me"));
    assertThat(book.premises().places(MONDAY))
        .containsExactly(
            new Place(
                1,
                "shop",
                new Indoors(100, 1, 3, 6, OptionalDouble.empty(), OptionalDouble.empty(), 0)),
            new Place(2, "yard", new Outdoors(15)));
    assertThat(book.settings()).isEqualTo(new Settings("me", "shop", "acgih", 1.5, 30));
    assertThat(book.hasSessions()).isFalse();
    assertThat(book.sessionCount()).isZero();
    assertThat(book.changes().history(10)).isEmpty();
    assertThat(book.changes().undo()).isEmpty();
    assertThat(book.verify()).isEmpty();
  }

  @Test
  void a_session_comes_back_as_it_was_logged_after_the_book_is_opened_again() {
    Session full = book.log(work("09:15", 40));
    Session plain = book.log(bare("13:00", 25, "sweeping"));
    book.close();
    book = Shop.open(folder);
    assertThat(book.sessionsOn(MONDAY)).containsExactly(full, plain);
    assertThat(full.work()).isEqualTo(work("09:15", 40));
    assertThat(plain.work()).isEqualTo(bare("13:00", 25, "sweeping"));
    assertThat(book.session(full.id())).contains(full);
    assertThat(book.hasSessions()).isTrue();
    assertThat(book.sessionCount()).isEqualTo(2);
  }

  @Test
  void sessions_are_told_by_day_start_and_number_whoever_they_are_of() {
    book.premises().addPerson("Ana");
    Session late = book.log(work("15:00", 10));
    Session early = book.log(work("Ana", MONDAY, "08:00", 10));
    Session same = book.log(work("Ana", MONDAY, "15:00", 10));
    Session tuesday = book.log(work("me", MONDAY.plusDays(1), "07:00", 10));
    assertThat(book.sessionsOn(MONDAY)).containsExactly(early, late, same);
    assertThat(book.sessionsBetween(MONDAY, MONDAY.plusDays(1)))
        .containsExactly(early, late, same, tuesday);
    assertThat(book.lastSessionOf("ana")).contains(same);
    assertThat(book.lastSessionOf("me")).contains(tuesday);
  }

  @Test
  void the_zone_and_the_moment_are_kept_beside_the_time_as_typed() throws SQLException {
    book.log(work("09:15", 40));
    assertThat(Shop.content(folder))
        .anyMatch(row -> row.contains("|2026-03-02|555|40|Europe/Berlin|2026-03-02T08:15:00Z|"));
  }

  @Test
  void names_are_found_whatever_their_case_and_told_as_the_book_has_them() {
    book.premises().addPerson("Zoë");
    Session session = book.log(work("ZOE\u0308", MONDAY, "09:00", 5));
    assertThat(session.work().person()).isEqualTo("Zoë");
    assertThat(book.premises().place("SHOP", MONDAY)).map(Place::name).contains("shop");
    assertThat(book.premises().place("attic", MONDAY)).isEmpty();
  }

  @Test
  void a_name_that_is_taken_in_another_case_or_composition_is_refused() {
    book.premises().addPerson("Zoë");
    assertThatThrownBy(() -> book.premises().addPerson("zoe\u0308"))
        .isInstanceOf(Refusal.class)
        .hasMessage("There is a person \"Zoë\" already. Choose another name.");
    assertThatThrownBy(() -> book.premises().addPlace("Shop", new Outdoors(5)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("There is a place \"shop\" already");
    assertThat(book.premises().people()).hasSize(2);
  }

  @Test
  void a_hostile_name_is_only_a_name() {
    String name = "Robert'); DROP TABLE session;--";
    book.premises().addPerson(name);
    Session session = book.log(work(name, MONDAY, "09:00", 5));
    assertThat(session.work().person()).isEqualTo(name);
    book.changes().undo();
    book.changes().undo();
    assertThat(book.premises().people()).hasSize(1);
    assertThat(book.verify()).isEmpty();
  }

  @Test
  void a_session_that_overlaps_is_refused_and_names_the_other() {
    book.log(work("10:00", 60));
    assertThatThrownBy(() -> book.log(work("10:59", 30)))
        .isInstanceOf(Refusal.class)
        .hasMessage(
            "Overlaps session 1 of me, 2026-03-02 10:00 to 11:00 table saw of oak; 30 minutes"
                + " are free at 11:00, so say: at 11:00.");
    assertThat(book.sessionCount()).isEqualTo(1);
    assertThat(book.changes().history(9)).hasSize(1);
  }

  @Test
  void the_free_time_is_one_where_the_whole_session_fits() {
    book.log(work("10:00", 60));
    book.log(work("11:10", 60));
    assertThatThrownBy(() -> book.log(work("10:30", 10))).hasMessageEndingWith("say: at 11:00.");
    assertThatThrownBy(() -> book.log(work("10:30", 11))).hasMessageEndingWith("say: at 09:49.");
    assertThatThrownBy(() -> book.log(work("10:30", 720)))
        .hasMessageEndingWith("; no 720 minutes are free that day.");
  }

  @Test
  void sessions_may_touch_and_others_may_work_at_the_same_time() {
    book.premises().addPerson("Ana");
    book.log(work("10:00", 60));
    book.log(work("11:00", 60));
    book.log(work("09:00", 60));
    book.log(work("Ana", MONDAY, "10:00", 60));
    assertThat(book.sessionCount()).isEqualTo(4);
  }

  @Test
  void an_unknown_person_or_place_is_refused_and_the_known_ones_are_named() {
    assertThatThrownBy(() -> book.log(work("Zed", MONDAY, "09:00", 5)))
        .isInstanceOf(Refusal.class)
        .hasMessage("The book knows no person \"Zed\". It knows: me.");
    Work work = work("09:00", 5);
    Work nowhere =
        new Work(
            "me",
            "cellar",
            work.date(),
            work.start(),
            5,
            "planer",
            Optional.empty(),
            List.of(),
            Optional.empty(),
            "");
    assertThatThrownBy(() -> book.log(nowhere))
        .hasMessage("The book knows no place \"cellar\". It knows: shop, yard.");
    assertThatThrownBy(() -> book.lastSessionOf("Zed")).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> book.premises().placeVersions("cellar")).isInstanceOf(Refusal.class);
    assertThat(book.hasSessions()).isFalse();
  }

  @Test
  void a_list_is_written_whole_or_not_at_all() {
    List<Session> logged =
        book.logAll(List.of(work("09:00", 60), work("10:00", 60)), "Brought in two");
    assertThat(book.sessionsOn(MONDAY)).isEqualTo(logged);
    assertThat(book.changes().history(9))
        .extracting(Change::what)
        .containsExactly("Brought in two");
    List<Work> bad = List.of(work("12:00", 60), work("13:00", 60), work("13:30", 60));
    assertThatThrownBy(() -> book.logAll(bad, "bad"))
        .isInstanceOf(Refusal.class)
        .hasMessageStartingWith("Entry 3 of 3 (2026-03-02 13:30 to 14:30 table saw of oak by me")
        .hasMessageContaining("Overlaps session");
    assertThat(book.sessionsOn(MONDAY)).isEqualTo(logged);
    assertThat(book.changes().history(9)).hasSize(1);
  }

  @Test
  void a_session_can_be_amended_within_its_own_time() {
    long id = book.log(work("09:00", 60)).id();
    Session amended = book.amend(id, work("09:30", 60));
    assertThat(amended).isEqualTo(new Session(id, work("09:30", 60)));
    book.amend(id, bare("09:30", 20, "sweeping"));
    assertThat(book.sessionsOn(MONDAY))
        .containsExactly(new Session(id, bare("09:30", 20, "sweeping")));
    book.log(work("11:00", 10));
    assertThatThrownBy(() -> book.amend(id, work("10:30", 60))).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> book.amend(77, work("15:00", 60)))
        .hasMessage("The book holds no session with the number 77.");
  }

  @Test
  void a_session_amended_elsewhere_keeps_its_zone_while_its_time_is_the_same() {
    long id = book.log(work("09:00", 60)).id();
    book.close();
    book = Book.open(Shop.file(folder), Shop.CLOCK.withZone(java.time.ZoneId.of("Asia/Tokyo")));
    book.amend(id, work("09:00", 50));
    assertThat(Shop.content(folder)).anyMatch(row -> row.contains("|Europe/Berlin|"));
    book.amend(id, work("09:05", 50));
    assertThat(Shop.content(folder)).anyMatch(row -> row.contains("|Asia/Tokyo|2026-03-02T00:05:"));
  }

  @Test
  void a_deleted_session_is_gone_and_its_number_is_not_used_again() {
    long id = book.log(work("09:00", 60)).id();
    book.delete(id);
    assertThat(book.session(id)).isEmpty();
    assertThat(book.log(work("09:00", 60)).id()).isGreaterThan(id);
    assertThatThrownBy(() -> book.delete(id)).isInstanceOf(Refusal.class);
  }

  @Test
  void settings_are_changed_and_name_only_whom_the_book_knows() {
    book.premises().addPerson("Ana");
    Settings other =
        book.settings()
            .withPerson("Ana")
            .withPlace("yard")
            .withLimitSet("niosh")
            .withTotalConversion(2.5)
            .withGapMinutes(45);
    book.change(other, "Changed the settings");
    assertThat(book.settings()).isEqualTo(new Settings("Ana", "yard", "niosh", 2.5, 45));
    assertThatThrownBy(() -> book.change(other.withPerson("Zed"), "no"))
        .hasMessageContaining("no person \"Zed\"");
    assertThatThrownBy(() -> other.withGapMinutes(-1)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> other.withTotalConversion(Double.NaN)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> other.withLimitSet(" ")).isInstanceOf(Refusal.class);
    assertThat(book.settings()).isEqualTo(other);
  }

  @Test
  void a_change_that_changes_nothing_leaves_no_trace() {
    long id = book.log(work("09:00", 60)).id();
    book.change(book.settings(), "Same settings");
    book.amend(id, work("09:00", 60));
    book.premises().changePlace("shop", s -> s, Optional.empty(), "Same shop");
    book.premises().changePlace("shop", s -> s, Optional.of(MONDAY), "Same shop");
    book.logAll(List.of(), "No sessions");
    assertThat(book.changes().history(9)).hasSize(1);
  }

  @Test
  void the_first_and_last_minute_of_a_day_and_of_the_calendar_can_be_logged() {
    Session midnight = book.log(work("00:00", 1));
    Session last = book.log(work("23:59", 1));
    assertThat(book.sessionsOn(MONDAY)).containsExactly(midnight, last);
    assertThat(midnight.work().start()).isEqualTo(LocalTime.MIDNIGHT);
    assertThatThrownBy(() -> book.log(work("23:59", 1))).hasMessageContaining("23:59 to 24:00");
    book.log(work("me", LocalDate.of(1900, 1, 1), "00:00", 1));
    book.log(work("me", LocalDate.of(2199, 12, 31), "23:00", 60));
    assertThat(book.verify()).isEmpty();
  }
}
