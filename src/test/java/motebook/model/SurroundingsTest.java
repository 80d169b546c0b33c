package motebook.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SurroundingsTest {
  @Test
  void open_doors_of_a_room_that_is_already_recorded_count_no_less_than_closed_ones() {
    OptionalDouble none = OptionalDouble.empty();
    assertThat(new Surroundings.Indoors(100, 5, 2, 6, none, none, 0).openAirChangesPerHour())
        .isEqualTo(5);
    assertThat(new Surroundings.Indoors(100, 2, 5, 6, none, none, 0).openAirChangesPerHour())
        .isEqualTo(5);
  }
}
