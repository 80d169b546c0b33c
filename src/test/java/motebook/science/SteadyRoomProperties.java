package motebook.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A room reckoned for all its sources at once is the room reckoned for each alone. */
class SteadyRoomProperties {
  private static final int DAY = 1440;

  private record Case(double volume, List<Loss> losses, double from, double to, double mgPerMin) {
    static Case of(Random random) {
      int[] knots = random.ints(7, 1, DAY).sorted().distinct().toArray();
      List<Loss> losses = new ArrayList<>();
      int before = 0;
      for (int knot : knots) {
        losses.add(new Loss(before, knot, rate(random)));
        before = knot;
      }
      losses.add(new Loss(before, DAY, rate(random)));
      int start = random.nextInt(losses.size());
      int end = start + random.nextInt(losses.size() - start);
      return new Case(
          20 + random.nextInt(200),
          losses,
          losses.get(start).fromMinute(),
          losses.get(end).toMinute(),
          random.nextDouble() * 200);
    }

    // Some rooms are sealed for a while.
    private static double rate(Random random) {
      return random.nextInt(4) == 0 ? 0 : random.nextDouble() * 0.3;
    }

    RoomTrace alone() {
      return new RoomTrace(volume, losses, mgPerMin, from, to);
    }

    SteadyRoom.Trace together() {
      return new SteadyRoom(volume, losses).trace(mgPerMin, from, to);
    }
  }

  @Property(tries = 200)
  void the_concentration_is_that_of_the_source_alone(@ForAll Random random) {
    Case any = Case.of(random);
    RoomTrace alone = any.alone();
    SteadyRoom.Trace together = any.together();
    for (int i = 0; i < 40; i++) {
      double minute = random.nextDouble() * DAY;
      double expected = alone.mgPerM3At(minute);
      assertThat(together.mgPerM3At(minute)).isCloseTo(expected, within(1e-9 * (1 + expected)));
    }
  }

  @Property(tries = 200)
  void so_is_its_integral_over_any_time(@ForAll Random random) {
    Case any = Case.of(random);
    double from = random.nextDouble() * DAY;
    double to = from + random.nextDouble() * (DAY - from);
    double expected = any.alone().mgMinPerM3(from, to);
    assertThat(any.together().mgMinPerM3(from, to))
        .isCloseTo(expected, within(1e-9 * (1 + expected)));
  }

  @Property(tries = 200)
  void minute_by_minute_it_is_what_it_is_at_each_minute(@ForAll Random random) {
    Case any = Case.of(random);
    SteadyRoom.Trace trace = any.together();
    double first = random.nextInt(3) * 0.5;
    double[] sums = new double[DAY - 2];
    trace.addMinutes(sums, first);
    for (int minute = 0; minute < sums.length; minute++) {
      double expected = trace.mgPerM3At(first + minute);
      assertThat(sums[minute])
          .as("minute %d", minute)
          .isCloseTo(expected, within(1e-9 * (1 + expected)));
    }
  }
}
