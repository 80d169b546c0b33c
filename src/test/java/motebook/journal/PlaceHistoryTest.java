package motebook.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import motebook.model.Refusal;
import motebook.model.Surroundings;
import motebook.model.Surroundings.Indoors;
import motebook.model.Surroundings.Outdoors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlaceHistoryTest {
  private static final LocalDate MARCH = LocalDate.of(2026, 3, 1);
  private static final LocalDate MAY = LocalDate.of(2026, 5, 1);
  private static final LocalDate JULY = LocalDate.of(2026, 7, 1);

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

  private static UnaryOperator<Surroundings> volume(double volume) {
    return s -> {
      Indoors in = (Indoors) s;
      return new Indoors(
          volume,
          in.airChangesPerHour(),
          in.openAirChangesPerHour(),
          in.airSpeedMPerMin(),
          in.cleanerFlowM3PerMin(),
          in.fanFlowM3PerMin(),
          in.cleanerRunOnMinutes());
    };
  }

  private static UnaryOperator<Surroundings> cleaner(double flow) {
    return s -> {
      Indoors in = (Indoors) s;
      return new Indoors(
          in.volumeM3(),
          in.airChangesPerHour(),
          in.openAirChangesPerHour(),
          in.airSpeedMPerMin(),
          OptionalDouble.of(flow),
          in.fanFlowM3PerMin(),
          in.cleanerRunOnMinutes());
    };
  }

  private void change(UnaryOperator<Surroundings> change, LocalDate from) {
    book.premises().changePlace("shop", change, Optional.of(from), "Changed the shop");
  }

  private Indoors shop(LocalDate on) {
    return (Indoors) book.premises().place("shop", on).orElseThrow().surroundings();
  }

  private List<Double> volumes() {
    return book.premises().placeVersions("shop").stream()
        .map(version -> ((Indoors) version.surroundings()).volumeM3())
        .toList();
  }

  @Test
  void a_change_holds_from_its_day_on_and_not_before() {
    change(volume(80), MAY);
    assertThat(shop(MAY.minusDays(1)).volumeM3()).isEqualTo(100);
    assertThat(shop(MAY).volumeM3()).isEqualTo(80);
    assertThat(shop(JULY).volumeM3()).isEqualTo(80);
    assertThat(book.premises().placeVersions("SHOP"))
        .extracting(PlaceVersion::from)
        .containsExactly(Optional.empty(), Optional.of(MAY));
  }

  @Test
  void a_change_on_the_day_of_a_version_changes_that_version() {
    change(volume(80), MAY);
    change(volume(70), MAY);
    assertThat(volumes()).containsExactly(100.0, 70.0);
  }

  @Test
  void a_later_version_takes_over_what_it_did_not_change_itself() {
    change(volume(80), MAY);
    change(cleaner(9), MARCH);
    assertThat(shop(MARCH).volumeM3()).isEqualTo(100);
    assertThat(shop(MAY).volumeM3()).isEqualTo(80);
    assertThat(shop(MAY).cleanerFlowM3PerMin()).hasValue(9);
    change(volume(120), MARCH);
    assertThat(volumes()).containsExactly(100.0, 120.0, 80.0);
  }

  @Test
  void a_deliberate_return_to_an_old_figure_stays() {
    change(volume(80), MAY);
    change(volume(100), JULY);
    change(volume(90), MARCH);
    assertThat(volumes()).containsExactly(100.0, 90.0, 80.0, 100.0);
  }

  @Test
  void a_change_without_a_day_is_made_to_every_version() {
    change(volume(80), MAY);
    book.premises().changePlace("shop", cleaner(5), Optional.empty(), "It always had a cleaner");
    assertThat(volumes()).containsExactly(100.0, 80.0);
    assertThat(shop(MARCH).cleanerFlowM3PerMin()).hasValue(5);
    assertThat(shop(JULY).cleanerFlowM3PerMin()).hasValue(5);
  }

  @Test
  void a_room_that_becomes_a_yard_takes_only_equal_later_versions_along() {
    change(cleaner(9), JULY);
    change(s -> new Outdoors(50), MARCH);
    assertThat(book.premises().place("shop", MAY).orElseThrow().outdoors()).isTrue();
    assertThat(shop(JULY).cleanerFlowM3PerMin()).hasValue(9);
  }

  @Test
  void a_room_that_becomes_a_yard_for_good_comes_back_by_undo() {
    book.premises().changePlace("shop", s -> new Outdoors(50), Optional.empty(), "No roof");
    assertThat(book.premises().place("shop", MAY).orElseThrow().surroundings())
        .isEqualTo(new Outdoors(50));
    book.changes().undo();
    assertThat(shop(MAY).volumeM3()).isEqualTo(100);
  }

  @Test
  void an_impossible_figure_is_refused_and_nothing_is_written() {
    assertThatThrownBy(() -> change(volume(-1), MAY)).isInstanceOf(Refusal.class);
    assertThatThrownBy(() -> change(volume(50), LocalDate.of(2200, 1, 1)))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("1900 to 2199");
    assertThat(book.premises().placeVersions("shop")).hasSize(1);
    assertThat(book.changes().history(9)).isEmpty();
  }

  @Test
  void a_new_place_is_so_from_the_beginning() {
    book.premises().addPlace("attic", Shop.ATTIC);
    assertThat(book.premises().placeVersions("attic"))
        .containsExactly(new PlaceVersion(Optional.empty(), Shop.ATTIC));
    assertThat(
            book.premises().place("Attic", LocalDate.of(1900, 1, 1)).orElseThrow().surroundings())
        .isEqualTo(Shop.ATTIC);
  }
}
