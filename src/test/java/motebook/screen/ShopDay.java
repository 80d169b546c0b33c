package motebook.screen;

import java.util.Optional;
import java.util.OptionalDouble;
import motebook.model.Surroundings;

/** A day of two people in an invented shop, logged by keys. */
final class ShopDay {
  private ShopDay() {}

  static void log(Pilot pilot) {
    pilot.book().premises().addPerson("Ana");
    pilot
        .book()
        .premises()
        .changePlace(
            "shop",
            before ->
                new Surroundings.Indoors(
                    90, 1, 3, 6, OptionalDouble.of(12), OptionalDouble.empty(), 0),
            Optional.empty(),
            "Gave the shop its air cleaner");
    pilot.open();
    for (String line :
        new String[] {
          "60m orbital sanding of mdf with tool vacuum and air cleaner at 8:00",
          "25m table saw oak with collector at 9:20",
          "45m assembly at 9:45",
          "50m orbital sanding of oak at 8:30 by Ana",
          "15m sweeping at 10:40",
          "30m block sanding of red cedar outdoors at 11:10 by me"
        }) {
      pilot.paste(line).press("Enter");
      pilot.press("Up");
      while (!pilot.state().sheet().person().equals("me")) {
        pilot.say("person");
      }
    }
  }
}
