package motebook.screen;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import motebook.model.Work;

/** Five weeks of two people in an invented shop; the last of them is under way. */
final class ShopWeeks {
  private static final LocalDate TODAY = Pilot.NOON.toLocalDate();

  private ShopWeeks() {}

  static void log(Pilot pilot) {
    ShopDay.log(pilot);
    List<Work> works = new ArrayList<>();
    for (int day = 1; day <= 30; day++) {
      LocalDate date = TODAY.minusDays(day);
      if (date.getDayOfWeek().getValue() <= 5 && day != 9) {
        works.add(work("me", date, 9, 20 + day % 7 * 15, "orbital-sanding", "mdf", "tool-vacuum"));
        works.add(work("me", date, 13, 45, "table-saw", "oak", "collector"));
      }
      if (day % 3 == 0) {
        works.add(work("Ana", date, 10, 40, "sweeping", "pine"));
      }
    }
    pilot.book().logAll(works, "Logged the weeks before");
    pilot.pass(0);
  }

  private static Work work(
      String person,
      LocalDate date,
      int hour,
      int minutes,
      String operation,
      String material,
      String... controls) {
    return new Work(
        person,
        "shop",
        date,
        LocalTime.of(hour, 0),
        minutes,
        operation,
        Optional.of(material),
        List.of(controls),
        Optional.empty(),
        "");
  }
}
