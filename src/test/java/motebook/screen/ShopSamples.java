package motebook.screen;

import java.time.LocalDate;
import java.util.List;
import motebook.model.Sample;

/** Two measured results in an invented shop, one of them far off. */
final class ShopSamples {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  private ShopSamples() {}

  static void add(Pilot pilot) {
    pilot
        .book()
        .samples()
        .add(
            List.of(sample(TODAY, 480, 540, 4.0), sample(TODAY.minusDays(1), 780, 825, 90)), "Two");
    pilot.pass(0);
  }

  private static Sample sample(LocalDate date, int from, int to, double mgPerM3) {
    return new Sample(
        0,
        "me",
        date,
        from,
        to,
        "inhalable",
        Sample.Kind.GRAVIMETRIC,
        new Sample.Told(mgPerM3, false),
        Sample.Kind.GRAVIMETRIC.cv(false),
        "");
  }
}
