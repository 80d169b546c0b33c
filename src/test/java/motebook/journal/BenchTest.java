package motebook.journal;

import static motebook.journal.Shop.MONDAY;
import static motebook.journal.Shop.work;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import motebook.model.Favourite;
import motebook.model.OwnFigure;
import motebook.model.OwnFigures;
import motebook.model.Refusal;
import motebook.model.Stopwatch;
import motebook.model.Units;
import motebook.model.VapourLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies ready at the bench: favourites, stopwatches, cautions set aside, further choices. */
class BenchTest {
  private static final ZoneId BERLIN = Shop.BERLIN;

  @TempDir Path folder;

  private Book at(String instant) {
    return Book.open(Shop.file(folder), Clock.fixed(Instant.parse(instant), BERLIN));
  }

  @Test
  void favourites_are_kept_in_order_and_their_names_are_unique() {
    try (Book book = Shop.open(folder)) {
      book.favourites().add("Sweep up", "25m sweeping");
      book.favourites().add("Carcass", "1h20 assembly");
      assertThatThrownBy(() -> book.favourites().add("sweep UP", "10m sweeping"))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("There is a favourite \"Sweep up\" already");
      assertThatThrownBy(() -> book.favourites().add("Nothing", " "))
          .hasMessageContaining("needs a line");
      assertThat(book.favourites().all())
          .extracting(Favourite::name, Favourite::line)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple("Sweep up", "25m sweeping"),
              org.assertj.core.groups.Tuple.tuple("Carcass", "1h20 assembly"));
      book.favourites().remove("sweep up");
      assertThat(book.favourites().all()).hasSize(1);
      book.changes().undo();
      assertThat(book.favourites().all()).hasSize(2);
    }
  }

  @Test
  void a_stopwatch_goes_on_while_no_program_runs_and_leaves_its_pauses_out() {
    try (Book book = at("2026-03-02T08:00:00Z")) {
      book.stopwatches().start("me", "table saw of oak");
    }
    try (Book book = at("2026-03-02T08:20:30Z")) {
      Stopwatch found = book.stopwatches().of("ME").orElseThrow();
      assertThat(found.running()).isTrue();
      assertThat(found.worked(Instant.parse("2026-03-02T08:20:30Z")))
          .isEqualTo(Duration.ofSeconds(20 * 60 + 30));
      assertThat(book.stopwatches().pause("me").running()).isFalse();
    }
    try (Book book = at("2026-03-02T09:00:00Z")) {
      assertThat(book.stopwatches().goOn("me").stretches()).hasSize(2);
      assertThat(book.stopwatches().goOn("me").stretches()).hasSize(2);
      assertThat(book.stopwatches().of("me").orElseThrow().worked(at(10)))
          .isEqualTo(Duration.ofMinutes(30).plusSeconds(30));
    }
  }

  private static Instant at(int minutesPastNine) {
    return Instant.parse("2026-03-02T09:00:00Z").plus(Duration.ofMinutes(minutesPastNine));
  }

  @Test
  void each_person_has_one_stopwatch() {
    try (Book book = Shop.open(folder)) {
      book.premises().addPerson("Ana");
      book.stopwatches().start("me", "assembly");
      book.stopwatches().start("Ana", "sweeping");
      assertThatThrownBy(() -> book.stopwatches().start("me", "planer"))
          .isInstanceOf(Refusal.class)
          .hasMessageContaining("under way already: assembly");
      assertThatThrownBy(() -> book.stopwatches().start("Zed", "planer"))
          .hasMessageContaining("no person \"Zed\"");
      assertThat(book.stopwatches().all())
          .extracting(Stopwatch::person)
          .containsExactly("me", "Ana");
    }
  }

  @Test
  void stopping_logs_and_clears_in_one_change_and_a_refusal_leaves_it_running() {
    try (Book book = Shop.open(folder)) {
      book.stopwatches().start("me", "table saw of oak");
      book.log(work("09:00", 60));
      assertThatThrownBy(() -> book.stopwatches().stop("me", List.of(work("09:30", 10))))
          .isInstanceOf(Refusal.class);
      assertThat(book.stopwatches().of("me")).isPresent();
      book.stopwatches().stop("me", List.of(work("10:30", 10), work("11:00", 10)));
      assertThat(book.stopwatches().of("me")).isEmpty();
      assertThat(book.sessionsOn(MONDAY)).hasSize(3);
      book.changes().undo();
      assertThat(book.stopwatches().of("me")).isPresent();
      assertThat(book.sessionsOn(MONDAY)).hasSize(1);
      book.stopwatches().discard("me");
      assertThat(book.stopwatches().of("me")).isEmpty();
      assertThatThrownBy(() -> book.stopwatches().pause("me"))
          .hasMessageContaining("No stopwatch of me is under way");
      assertThat(book.verify()).isEmpty();
    }
  }

  @Test
  void cautions_are_set_aside_for_one_person_and_one_day_and_the_history_says_so() {
    try (Book book = Shop.open(folder)) {
      book.premises().addPerson("Ana");
      book.setAside().put(MONDAY, "me", List.of("formaldehyde", "explosion"));
      book.setAside().put(MONDAY, "me", List.of("formaldehyde"));
      assertThat(book.setAside().on(MONDAY, "me")).containsExactly("formaldehyde", "explosion");
      assertThat(book.setAside().on(MONDAY, "Ana")).isEmpty();
      assertThat(book.setAside().on(MONDAY.plusDays(1), "me")).isEmpty();
      assertThat(book.changes().history(1).get(0).what())
          .isEqualTo("Set aside for 2026-03-02, by me: formaldehyde, explosion");
      book.setAside().bringBack(MONDAY, "me");
      assertThat(book.setAside().on(MONDAY, "me")).isEmpty();
    }
  }

  @Test
  void figures_and_vapour_limits_are_kept_to_the_last_digit_where_they_differ() {
    Settings own;
    try (Book book = Shop.open(folder)) {
      OwnFigures figures =
          OwnFigures.SHIPPED
              .with(OwnFigure.CARTRIDGE_SAFETY_FRACTION, 1 / 3.0)
              .with(OwnFigure.SOON_DAYS, 14);
      own = book.settings().withFigures(figures).withVapourLimits(VapourLimits.NIOSH);
      book.change(own, "Figures");
    }
    try (Book book = Shop.open(folder)) {
      assertThat(book.settings()).isEqualTo(own);
      assertThat(book.settings().figures().chosen())
          .containsOnlyKeys(OwnFigure.CARTRIDGE_SAFETY_FRACTION);
      book.changes().undo();
      assertThat(book.settings().figures()).isEqualTo(OwnFigures.SHIPPED);
      assertThat(book.settings().vapourLimits()).isEqualTo(VapourLimits.STRICTER);
      assertThat(book.verify()).isEmpty();
    }
  }

  @Test
  void units_and_equipment_are_settings_like_the_others() {
    try (Book book = Shop.open(folder)) {
      Settings us =
          book.settings().withUnits(Units.US).withEquipment(List.of("tool-vacuum", "air-cleaner"));
      book.change(us, "Units and equipment");
      assertThat(book.settings()).isEqualTo(us);
      book.change(us.withUnits(Units.METRIC).withEquipment(List.of()), "As shipped");
      assertThat(book.settings().units()).isEqualTo(Units.METRIC);
      book.changes().undo();
      assertThat(book.settings()).isEqualTo(us);
    }
  }
}
